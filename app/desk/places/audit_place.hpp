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

namespace quarterstep
{

class AuditCasePanel;
class AuditCharts;
class BenchPanel;
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
    /// Makes the first thing to be said of a person the chosen one, now or when the audit has ended.
    void choosePerson(const QString& person);

  public Q_SLOTS:
    void audit();
    /// Checks the chain of the whole ledger in the background.
    void checkChain();
    void showView(int view);

  Q_SIGNALS:
    void auditEnded();
    void chainCheckEnded();

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    QWidget* buildFindings();
    QWidget* buildHead();
    QWidget* buildRecord();
    QWidget* buildFilter();
    QWidget* buildList();
    void choose(int row);
    void connectParts();
    void took(const std::shared_ptr<AuditCases>& cases);
    void showFigures();
    void refreshLedger();
    void fillClasses();
    void ended(const std::exception_ptr& problem, bool stopped, const std::shared_ptr<AuditCases>& cases);
    void chainChecked(const std::exception_ptr& problem, bool stopped, const ChainCheck& check);

    DeskParts parts_;
    Camp* camp_ = nullptr;
    std::shared_ptr<AuditCases> cases_; ///< without its list, which the model has
    bool audited_ = false;              ///< this camp, since it was opened or changed
    bool auditing_ = false;
    QString wanted_; ///< person to be chosen; empty: the first finding
    int asked_ = 0;  ///< audits asked for; what an earlier one finds is not shown

    FindingsModel* findings_;
    QSortFilterProxyModel* ofClass_;
    QSortFilterProxyModel* sorted_;
    QButtonGroup* viewButtons_ = nullptr;
    QStackedWidget* views_ = nullptr;
    QPushButton* auditButton_ = nullptr;
    QPushButton* chainButton_ = nullptr;
    QComboBox* classes_ = nullptr;
    QLineEdit* filter_ = nullptr;
    QLabel* figures_ = nullptr;
    QLabel* chain_ = nullptr;
    QTableView* findingsView_ = nullptr;
    AuditCharts* charts_ = nullptr;
    BenchPanel* bench_ = nullptr;
    AuditCasePanel* case_ = nullptr;
};

} // namespace quarterstep
