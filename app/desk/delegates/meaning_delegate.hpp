// SPDX-License-Identifier: GPL-3.0-or-later
// Chooses what a column of a table holds from the list of all that it can hold.
#pragma once

#include <QStyledItemDelegate>

namespace quarterstep
{

class MeaningDelegate final : public QStyledItemDelegate
{
    Q_OBJECT

  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

  private:
    void commitAndClose();
};

} // namespace quarterstep
