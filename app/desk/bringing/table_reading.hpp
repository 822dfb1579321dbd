// SPDX-License-Identifier: GPL-3.0-or-later
// How a table of others is read: separator, decimal mark, numbers without a sign, and what each column holds;
// found out by the program, to be corrected by people.
#pragma once

#include "app/session/exchange.hpp"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QTableView;

namespace quarterstep
{

class MappedColumnsModel;

class TableReading final : public QWidget
{
    Q_OBJECT

  public:
    explicit TableReading(QWidget* parent = nullptr);

    /// Shows how a table was understood.
    void show(const MappedTable& table);
    void clear();
    /// As it stands now: what was found out, with what people corrected.
    [[nodiscard]] TableMap map() const;

  Q_SIGNALS:
    /// Somebody corrected something: the table is to be read again.
    void corrected();

  private:
    QComboBox* choice(QFormLayout& form, const char* name, const QString& label, const QString& tooltip,
                      const QStringList& items);
    void separatorChosen();

    MappedColumnsModel* columns_;
    QComboBox* separator_ = nullptr;
    QComboBox* decimal_ = nullptr;
    QComboBox* spheres_ = nullptr;
    QComboBox* cylinders_ = nullptr;
    QLabel* found_ = nullptr;
    QTableView* view_ = nullptr;
    bool otherSeparator_ = false; ///< the columns shown are those of the separator before
};

} // namespace quarterstep
