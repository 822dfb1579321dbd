// SPDX-License-Identifier: GPL-3.0-or-later
// The place Audit: every hand-over judged again, what is to be said of each, why, and the charts of it. It
// reads and never writes; the work is done on a thread of its own.
#pragma once

#include "app/desk/places/desk_place.hpp"
#include "app/session/audit_cases.hpp"

#include <memory>

class QButtonGroup;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSortFilterProxyModel;
class QStackedWidget;
class QTableView;
class QTextBrowser;

namespace quarterstep
{

class BenchPanel;
class ChartModel;
class ChartView;
class CriteriaModel;
class FindingsModel;

class AuditPlace final : public DeskPlace
{
    Q_OBJECT

  public:
    explicit AuditPlace(const DeskParts& parts, QWidget* parent = nullptr);
    ~AuditPlace() override;

    void take(Camp* camp) override;
    /// Audited anew when next looked at.
    void campMoved() override;
    void restyle() override;
    /// Waits until the audit that runs has ended; for pictures and tests.
    void waitForAudit();
    /// Makes a hand-over the chosen one; false when nothing is said of that entry.
    bool chooseEntry(const std::string& entry);

  public Q_SLOTS:
    void audit();
    void showView(int view);

  Q_SIGNALS:
    void auditEnded();

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    QWidget* buildFindings();
    QWidget* buildCharts();
    QWidget* buildCase();
    void connectParts();
    void took(const std::shared_ptr<AuditCases>& cases);
    void showFigures();
    void fillClasses();
    void fillGroups();
    void showChart();
    void showCase(const AuditCase* one);
    void showCriteria();
    void ended(const std::exception_ptr& problem, bool stopped, const std::shared_ptr<AuditCases>& cases);
    [[nodiscard]] QString caseWords(const AuditCase& one) const;
    [[nodiscard]] QString slipArithmetic(const AuditCase& one) const;

    DeskParts parts_;
    Camp* camp_ = nullptr;
    AuditSummary summary_;
    std::vector<GPoint> runs_;
    std::int64_t running_ = 0;
    std::int64_t leftOut_ = 0;
    bool audited_ = false; ///< this camp, since it was opened or changed
    bool auditing_ = false;
    int asked_ = 0; ///< audits asked for; what an earlier one finds is not shown
    const AuditCase* shown_ = nullptr;

    FindingsModel* findings_;
    ChartModel* chartRows_;
    CriteriaModel* criteria_;
    QSortFilterProxyModel* ofClass_;
    QSortFilterProxyModel* sorted_;
    QButtonGroup* viewButtons_ = nullptr;
    QStackedWidget* views_ = nullptr;
    QPushButton* auditButton_ = nullptr;
    QComboBox* classes_ = nullptr;
    QLineEdit* filter_ = nullptr;
    QLabel* figures_ = nullptr;
    QLabel* chain_ = nullptr;
    QTableView* findingsView_ = nullptr;
    QComboBox* chartKind_ = nullptr;
    QComboBox* chartBy_ = nullptr;
    ChartView* chart_ = nullptr;
    BenchPanel* bench_ = nullptr;
    QLabel* chartWhyNot_ = nullptr;
    QTableView* chartTable_ = nullptr;
    QLabel* caseHeading_ = nullptr;
    QLabel* caseWords_ = nullptr;
    QButtonGroup* pairButtons_ = nullptr;
    QTableView* criteriaView_ = nullptr;
    QTextBrowser* slips_ = nullptr;
};

} // namespace quarterstep
