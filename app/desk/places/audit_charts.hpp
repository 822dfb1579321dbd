// SPDX-License-Identifier: GPL-3.0-or-later
// Second view of the place Audit: how often, by site, week and kind of pair, and why not, as pictures with
// their numbers; each can be saved.
#pragma once

#include "app/session/audit_cases.hpp"

#include <QWidget>

#include <memory>

class QComboBox;
class QLabel;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QTableView;

namespace quarterstep
{

class BarsModel;
class BarsView;
class ChartModel;
class ChartView;
class MessageBar;

class AuditCharts final : public QWidget
{
    Q_OBJECT

  public:
    explicit AuditCharts(MessageBar& messages, QWidget* parent = nullptr);

    void show(std::shared_ptr<const AuditCases> cases);
    /// The picture shown as .png, or its numbers as .csv, by the end of the name.
    void save(const QString& file);
    void restyle();

  private:
    QWidget* buildTables();
    void showChart();
    void showPicture(bool drawn, const QString& whyNot);
    [[nodiscard]] bool showsBars() const;
    void askAndSave();

    MessageBar& messages_;
    std::shared_ptr<const AuditCases> cases_;
    ChartModel* rows_;
    BarsModel* barRows_;
    QComboBox* kind_ = nullptr;
    QComboBox* by_ = nullptr;
    QPushButton* save_ = nullptr;
    QLabel* whyNot_ = nullptr;
    ChartView* chart_ = nullptr;
    BarsView* bars_ = nullptr;
    QScrollArea* barsScroll_ = nullptr;
    QLabel* legend_ = nullptr;
    QStackedWidget* tables_ = nullptr;
    QTableView* chartTable_ = nullptr;
    QTableView* barsTable_ = nullptr;
};

} // namespace quarterstep
