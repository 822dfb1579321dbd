// SPDX-License-Identifier: GPL-3.0-or-later
// Third view of the place Audit: lots drawn for the bench, what was read there, who is to be seen again, and
// the report.
#pragma once

#include "app/desk/places/desk_place.hpp"
#include "app/session/camp.hpp"
#include "core/auditing/follow_up.hpp"

#include <functional>
#include <optional>

class QLabel;
class QPushButton;
class QSpinBox;
class QStandardItemModel;
class QTableView;
class QVBoxLayout;

namespace quarterstep
{

class AuditReports;
class CellsModel;
class LongWork;
class MessageBar;

/// Who is to be seen again, and what came of those who were.
struct DueAtBench {
    std::size_t wearers = 0;
    WearCount wear;
    std::optional<double> coverage; ///< effective, of those who came
    std::vector<FollowUpDue> due;
};

class BenchPanel final : public QWidget
{
    Q_OBJECT

  public:
    explicit BenchPanel(const DeskParts& parts, QWidget* parent = nullptr);

    /// Shows this camp from now on; null: none.
    void take(Camp* camp);
    /// Lots and follow-up of the ledger are read again: now where they are in sight, else when they come into
    /// sight.
    void refresh();

    /// Draws a lot, enters it and writes its sheet. `sample` 0: the smallest that keeps both risks.
    void draw(int sample, const QString& sheet);
    /// Reads a filled-in sheet, judges it, and enters results and decision.
    void readSheet(const QString& sheet);
    [[nodiscard]] AuditReports& reports() { return *reports_; }

  Q_SIGNALS:
    void campChanged();

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void readLedger();
    void buildLots(QVBoxLayout& column);
    void buildDue(QVBoxLayout& column);
    void enterDraw(int sample, const QString& sheet);
    void enterSheet(const QString& sheet);
    void showLots();
    void showDue();
    void tellDue(const DueAtBench& found);
    void askSheet();
    [[nodiscard]] QString askWhereTo(const QString& words, const QString& name, const QString& kinds);

    MessageBar& messages_;
    PinGuard& pins_;
    LongWork& work_;
    AuditReports* reports_;
    Camp* camp_ = nullptr;
    bool stale_ = false; ///< what is shown is not what the ledger has
    int asked_ = 0;      ///< readings asked for; what an earlier one finds is not shown
    QStandardItemModel* lots_;
    CellsModel* due_;
    QTableView* lotsView_ = nullptr;
    QSpinBox* sample_ = nullptr;
    QLabel* dueHeading_ = nullptr;
    QLabel* dueWords_ = nullptr;
    QLabel* lotsWords_ = nullptr;
    QList<QPushButton*> buttons_;
};

} // namespace quarterstep
