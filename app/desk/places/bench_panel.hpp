// SPDX-License-Identifier: GPL-3.0-or-later
// Third view of the place Audit: lots drawn for the bench, what was read there, who is to be seen again, and
// the report.
#pragma once

#include "app/desk/places/desk_place.hpp"
#include "app/session/camp.hpp"

#include <functional>

class QLabel;
class QPushButton;
class QSpinBox;
class QStandardItemModel;
class QTableView;
class QVBoxLayout;

namespace quarterstep
{

class AuditReports;
class LongWork;
class MessageBar;

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
    void askSheet();
    [[nodiscard]] QString askWhereTo(const QString& words, const QString& name, const QString& kinds);

    MessageBar& messages_;
    PinGuard& pins_;
    AuditReports* reports_;
    Camp* camp_ = nullptr;
    bool stale_ = false; ///< what is shown is not what the ledger has
    QStandardItemModel* lots_;
    QStandardItemModel* due_;
    QTableView* lotsView_ = nullptr;
    QSpinBox* sample_ = nullptr;
    QLabel* dueHeading_ = nullptr;
    QLabel* dueWords_ = nullptr;
    QLabel* lotsWords_ = nullptr;
    QList<QPushButton*> buttons_;
};

} // namespace quarterstep
