// SPDX-License-Identifier: GPL-3.0-or-later
// Second view of the place Audit: how often, by site, week and kind of pair, and why not, as pictures with
// their numbers; each can be saved.
#pragma once

#include "app/paper/content/chart_paper.hpp"
#include "app/session/audit_cases.hpp"

#include <QWidget>

#include <memory>

class QBoxLayout;
class QComboBox;
class QLabel;
class QPushButton;
class QScrollArea;
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
    /// The chart as a paper (.pdf, .png), or its numbers (.csv), by the end of the name.
    void save(const QString& file);
    /// What is shown now.
    [[nodiscard]] ChartOnPaper onPaper() const;
    void restyle();

  public Q_SLOTS:
    void askAndSave();
    void print();

  Q_SIGNALS:
    /// Into this file, or, without one, on the printer.
    void paperWanted(const ChartOnPaper& chart, const QString& file);

  private:
    void buildTables(QBoxLayout& column);
    void showChart();
    void showPicture(bool drawn, const QString& whyNot);
    [[nodiscard]] bool showsBars() const;
    [[nodiscard]] PictureTwin twin() const;

    MessageBar& messages_;
    std::shared_ptr<const AuditCases> cases_;
    ChartModel* rows_;
    BarsModel* barRows_;
    QComboBox* kind_ = nullptr;
    QComboBox* by_ = nullptr;
    QPushButton* save_ = nullptr;
    QPushButton* print_ = nullptr;
    QLabel* whyNot_ = nullptr;
    ChartView* chart_ = nullptr;
    BarsView* bars_ = nullptr;
    QScrollArea* barsScroll_ = nullptr;
    QLabel* legend_ = nullptr;
    QTableView* chartTable_ = nullptr;
    QTableView* barsTable_ = nullptr;
};

} // namespace quarterstep
