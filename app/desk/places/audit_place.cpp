// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/audit_place.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/findings_model.hpp"
#include "app/desk/places/audit_case.hpp"
#include "app/desk/places/audit_charts.hpp"
#include "app/desk/places/audit_words.hpp"
#include "app/desk/places/bench_panel.hpp"
#include "app/session/wording.hpp"

#include <QButtonGroup>
#include <QComboBox>
#include <QDateTime>
#include <QEventLoop>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QStackedWidget>
#include <QTableView>

#include <algorithm>
#include <utility>

namespace quarterstep
{

namespace
{
constexpr std::size_t mostCases = 5000; ///< kept for looking at; all are counted
} // namespace

AuditPlace::~AuditPlace() = default;

void AuditPlace::take(Camp* camp)
{
    ++asked_;
    camp_ = camp;
    audited_ = false;
    auditing_ = false;
    auditButton_->setEnabled(camp_ != nullptr);
    case_->show(nullptr); // before what it shows goes
    findings_->show({});
    cases_ = std::make_shared<AuditCases>();
    chain_->clear();
    fillClasses();
    charts_->show(cases_);
    bench_->take(camp_);
    refreshLedger();
    if (camp_ != nullptr && isVisible())
        audit();
}

void AuditPlace::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (audited_)
        return;
    refreshLedger();
    audit();
}

void AuditPlace::campMoved()
{
    audited_ = false;
    if (!isVisible())
        return;
    refreshLedger();
    audit();
}

void AuditPlace::refreshLedger()
{
    chainButton_->setEnabled(camp_ != nullptr && camp_->hasLedger());
    bench_->refresh();
}

/// With a reader of the ledger of its own, on another thread: a connection belongs to the thread that opened
/// it.
void AuditPlace::audit()
{
    if (camp_ == nullptr || auditing_)
        return;
    if (!camp_->hasLedger()) {
        figures_->setText(tr("Nothing was handed over in this camp yet, so there is nothing to audit."));
        return;
    }
    AuditOptions options;
    options.nowMs = QDateTime::currentMSecsSinceEpoch();
    const auto cases = std::make_shared<AuditCases>();
    const auto work = [cases, options, folder = camp_->folder()](const Job& job) mutable {
        options.job = job;
        *cases = auditCases(Camp::open(folder, Ledger::Mode::readOnly), options, mostCases);
    };
    const auto end = [this, cases, asked = asked_](const std::exception_ptr& problem, bool stopped) {
        if (asked == asked_)
            ended(problem, stopped, cases);
    };
    auditing_ = true;
    auditButton_->setEnabled(false);
    figures_->setText(tr("Reading the ledger …"));
    parts_.work.start(tr("Judging hand-overs again…"), work, end);
}

void AuditPlace::ended(const std::exception_ptr& problem, bool stopped,
                       const std::shared_ptr<AuditCases>& cases)
{
    auditing_ = false;
    auditButton_->setEnabled(true);
    const bool whole = !stopped && runCommand(parts_.messages, [&problem] {
        if (problem)
            std::rethrow_exception(problem);
    });
    if (whole)
        took(cases);
    else
        figures_->setText(stopped ? tr("Stopped. Nothing was written; audit again with F5.")
                                  : tr("The audit ended before its time; the reason stands above."));
    Q_EMIT auditEnded();
}

void AuditPlace::waitForAudit()
{
    if (!auditing_)
        return;
    QEventLoop loop;
    connect(this, &AuditPlace::auditEnded, &loop, &QEventLoop::quit);
    loop.exec();
}

void AuditPlace::took(const std::shared_ptr<AuditCases>& cases)
{
    audited_ = true;
    case_->show(nullptr);
    const bool told = std::any_of(cases->cases.begin(), cases->cases.end(),
                                  [](const AuditCase& one) { return one.told.has_value(); });
    findingsView_->setColumnHidden(FindingsModel::slipColumn, !told);
    findings_->show(std::move(cases->cases));
    cases_ = cases;
    fillClasses();
    charts_->show(cases_);
    showFigures();
    if (const int row = findings_->rowOfPerson(std::exchange(wanted_, {})); row >= 0)
        choose(row);
    else if (sorted_->rowCount() > 0)
        findingsView_->setCurrentIndex(sorted_->index(0, FindingsModel::personColumn)); // which stands first
}

void AuditPlace::showFigures()
{
    const auto& summary = cases_->summary;
    if (summary.handOvers == 0 && summary.chain.ok) {
        figures_->setText(tr("Nothing was handed over in this camp yet, so there is nothing to audit."));
        chain_->clear();
        return;
    }
    QStringList words{tr("hand-overs %1, judged again %2").arg(summary.handOvers).arg(summary.judged),
                      tr("pair and record at odds: %1").arg(summary.mismatches),
                      tr("findings %1").arg(findings_->rowCount())};
    if (cases_->leftOut > 0)
        words << tr("%1 more are counted and not listed").arg(cases_->leftOut);
    figures_->setText(words.join(QStringLiteral("  ·  ")));
    chain_->setText(summary.chain.ok ? chainWords(summary.chain) : say(auditStopsAt(summary.chain)));
}

/// The whole chain once more, without the hand-overs: what `stock --check` says.
void AuditPlace::checkChain()
{
    if (camp_ == nullptr || !camp_->hasLedger())
        return;
    const auto check = std::make_shared<ChainCheck>();
    const auto work = [check, folder = camp_->folder()](const Job& job) {
        *check = checkedChain(Camp::open(folder, Ledger::Mode::readOnly), job);
    };
    const auto end = [this, check, asked = asked_](const std::exception_ptr& problem, bool stopped) {
        chainButton_->setEnabled(true);
        if (asked == asked_)
            chainChecked(problem, stopped, *check);
        Q_EMIT chainCheckEnded();
    };
    chainButton_->setEnabled(false);
    chain_->setText(tr("Checking the record, entry by entry …"));
    parts_.work.start(tr("Checking the record…"), work, end);
}

void AuditPlace::chainChecked(const std::exception_ptr& problem, bool stopped, const ChainCheck& check)
{
    if (stopped)
        return chain_->setText(tr("The check was stopped before its end."));
    chain_->clear();
    if (!runCommand(parts_.messages, [&problem] {
            if (problem)
                std::rethrow_exception(problem);
        }))
        return;
    chain_->setText(chainWords(check));
    if (!check.ok)
        parts_.messages.showError(chainWords(check), QStringLiteral("chain-broken"));
}

void AuditPlace::fillClasses()
{
    const auto& summary = cases_->summary;
    const QSignalBlocker quiet(classes_);
    classes_->clear();
    classes_->addItem(tr("Every finding"));
    for (const auto& info : auditClasses())
        if (const auto found = summary.byClass.find(info.kind);
            found != summary.byClass.end() && found->second > 0)
            classes_->addItem(QStringLiteral("%1 (%2)").arg(say(Sentence{info.words, {}})).arg(found->second),
                              static_cast<int>(info.kind));
    ofClass_->setFilterRegularExpression(QString());
}

bool AuditPlace::chooseEntry(const std::string& entry)
{
    const int row = findings_->rowOf(entry);
    if (row >= 0)
        choose(row);
    return row >= 0;
}

void AuditPlace::choosePerson(const QString& person)
{
    const int row = audited_ ? findings_->rowOfPerson(person) : -1;
    if (row >= 0)
        return choose(row);
    wanted_ = person;
}

void AuditPlace::choose(int row)
{
    classes_->setCurrentIndex(0);
    filter_->clear();
    findingsView_->setCurrentIndex(
        sorted_->mapFromSource(ofClass_->mapFromSource(findings_->index(row, FindingsModel::personColumn))));
}

void AuditPlace::showView(int view)
{
    views_->setCurrentIndex(view);
    for (int at = 0; at < views_->count(); ++at) { // what is not shown asks for no room
        const auto asked = at == view ? QSizePolicy::Preferred : QSizePolicy::Ignored;
        views_->widget(at)->setSizePolicy(asked, asked);
    }
    if (auto* button = viewButtons_->button(view))
        button->setChecked(true);
}

void AuditPlace::restyle()
{
    charts_->restyle();
    case_->restyle();
}

} // namespace quarterstep
