// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/audit_place.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/chart_model.hpp"
#include "app/desk/models/criteria_model.hpp"
#include "app/desk/models/findings_model.hpp"
#include "app/desk/places/bench_panel.hpp"
#include "app/desk/plots/chart_view.hpp"
#include "app/desk/words.hpp"
#include "app/session/wording.hpp"

#include <QButtonGroup>
#include <QComboBox>
#include <QDateTime>
#include <QEventLoop>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QStackedWidget>
#include <QTableView>
#include <QTextBrowser>

namespace quarterstep
{

namespace
{
constexpr std::size_t mostCases = 5000; ///< kept for looking at; all are counted

QString joined(const std::vector<std::string>& words)
{
    QStringList list;
    for (const auto& word : words)
        list << QString::fromStdString(word);
    return ltr(list.join(QStringLiteral(" + ")));
}
} // namespace

AuditPlace::~AuditPlace() = default;

void AuditPlace::take(Camp* camp)
{
    ++asked_;
    camp_ = camp;
    audited_ = false;
    auditing_ = false;
    auditButton_->setEnabled(camp_ != nullptr);
    findings_->show({});
    summary_ = {};
    runs_.clear();
    chain_->clear();
    fillClasses();
    fillGroups();
    showCase(nullptr);
    bench_->take(camp_);
    if (camp_ != nullptr && isVisible())
        audit();
}

void AuditPlace::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (audited_)
        return;
    bench_->refresh();
    audit();
}

void AuditPlace::campMoved()
{
    audited_ = false;
    if (!isVisible())
        return;
    bench_->refresh();
    audit();
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
    const auto work = [cases, options, folder = camp_->folder()](WorkProgress& progress) {
        const auto camp = Camp::open(folder, Ledger::Mode::readOnly);
        Job job;
        std::atomic<bool> stopped{false};
        job.cancelled = &stopped;
        job.done = [&](std::size_t handOvers, std::size_t) {
            stopped = !progress.reached(static_cast<int>(handOvers), 0);
        };
        *cases = auditCases(camp, options, mostCases, job);
    };
    const auto end = [this, cases, asked = asked_](const std::exception_ptr& problem, bool stopped) {
        if (asked == asked_)
            ended(problem, stopped, cases);
    };
    auditing_ = parts_.work.start(tr("Judging hand-overs again…"), work, end);
    auditButton_->setEnabled(!auditing_);
    figures_->setText(auditing_ ? tr("Reading the ledger …")
                                : tr("Other work is going on; audit again when it has ended (F5)."));
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
    shown_ = nullptr;
    summary_ = cases->summary;
    runs_ = std::move(cases->runs);
    running_ = cases->running;
    leftOut_ = cases->leftOut;
    findings_->show(std::move(cases->cases));
    fillClasses();
    fillGroups();
    showFigures();
    if (sorted_->rowCount() > 0)
        findingsView_->setCurrentIndex(sorted_->index(0, 0));
    else
        showCase(nullptr);
}

void AuditPlace::showFigures()
{
    if (summary_.handOvers == 0 && summary_.chain.ok) {
        figures_->setText(tr("Nothing was handed over in this camp yet, so there is nothing to audit."));
        chain_->clear();
        return;
    }
    QStringList words{tr("hand-overs %1, judged again %2").arg(summary_.handOvers).arg(summary_.judged),
                      tr("pair and record at odds: %1").arg(summary_.mismatches),
                      tr("findings %1").arg(findings_->rowCount())};
    if (leftOut_ > 0)
        words << tr("%1 more are counted and not listed").arg(leftOut_);
    figures_->setText(words.join(QStringLiteral("  ·  ")));
    chain_->setText(
        summary_.chain.ok
            ? tr("The record is whole: %1 entries, each follows the one before.").arg(summary_.entries)
            : tr("The record is NOT whole: %1 entries could be read, up to the first bad one. Keep the "
                 "folder and compare it with a copy.")
                  .arg(summary_.entries));
}

void AuditPlace::fillClasses()
{
    const QSignalBlocker quiet(classes_);
    classes_->clear();
    classes_->addItem(tr("Every finding"));
    for (const auto& info : auditClasses())
        if (const auto found = summary_.byClass.find(info.kind);
            found != summary_.byClass.end() && found->second > 0)
            classes_->addItem(QStringLiteral("%1 (%2)").arg(say(Sentence{info.words, {}})).arg(found->second),
                              static_cast<int>(info.kind));
    ofClass_->setFilterRegularExpression(QString());
}

void AuditPlace::fillGroups()
{
    const std::pair<const char*, QString> names[] = {
        {"site", tr("by site")},       {"actor", tr("by who handed over")}, {"week", tr("by week")},
        {"profile", tr("by profile")}, {"purpose", tr("by purpose")},       {"kind", tr("by kind of pair")}};
    {
        const QSignalBlocker quiet(chartBy_);
        chartBy_->clear();
        for (const auto& [by, words] : names)
            if (!groupsBy(summary_, by).empty())
                chartBy_->addItem(words, QLatin1String(by));
    }
    showChart();
}

void AuditPlace::showChart()
{
    Tally all;
    for (const auto& rate : summary_.rates)
        if (rate.by == "all")
            all = rate.tally;
    const auto by = chartBy_->currentData().toString().toStdString();
    ChartData picture;
    switch (chartKind_->currentIndex()) {
    case 0:
        picture = chartOf(funnelChart(groupsBy(summary_, by), all.share()));
        break;
    case 1:
        picture = chartOf(gSeries(runs_, running_, all));
        break;
    default:
        picture = chartOf(pChart(groupsBy(summary_, "week"), all.share()));
    }
    chartBy_->setEnabled(chartKind_->currentIndex() == 0);
    const bool drawn = picture.whyNot.isEmpty();
    chart_->setVisible(drawn);
    chartWhyNot_->setVisible(!drawn);
    chartWhyNot_->setText(picture.whyNot);
    if (drawn)
        chart_->show(picture);
    chartRows_->show(picture);
}

QString AuditPlace::caseWords(const AuditCase& one) const
{
    QStringList lines;
    const auto& judged = one.judged;
    for (const Eye eye : bothEyes) {
        const auto name = eye == Eye::right ? tr("Right") : tr("Left");
        if (!judged.need)
            break;
        const auto& need = judged.need->eyes.of(eye);
        if (!need.seeing) {
            lines << tr("%1: not judged").arg(name);
            continue;
        }
        auto line = tr("%1: needs %2").arg(name, ltr(QString::fromStdString(writePower(need.power))));
        if (judged.facts.supply)
            line += tr(", was given %1")
                        .arg(ltr(QString::fromStdString(writePower(judged.facts.supply->power.of(eye)))));
        if (judged.fit)
            line +=
                QStringLiteral(" · ") + DeskWords::residual(judged.fit->eyes.of(eye), judged.facts.purpose);
        lines << line;
    }
    if (judged.fit)
        lines << tr("Pair %1: %2").arg(joined(one.given), DeskWords::verdict(*judged.fit));
    if (judged.best && !judged.bestLines.empty())
        lines << tr("In the box lay %1 (bin %2): %3")
                     .arg(joined(judged.bestLines), joined(judged.bestBins),
                          DeskWords::verdict(judged.best->fit));
    for (const auto& finding : judged.findings) {
        const auto& info = quarterstep::infoOf(finding.kind);
        lines << QStringLiteral("\u25B8 %1: %2\n      %3")
                     .arg(say(Sentence{info.words, {}}), say(finding.detail), say(Sentence{info.next, {}}));
    }
    return lines.join(QLatin1Char('\n'));
}

QString AuditPlace::slipArithmetic(const AuditCase& one) const
{
    if (one.judged.facts.atMs == 0)
        return {};
    QStringList lines;
    const auto figure = [](double value) { return QString::number(value, 'g', 3); };
    if (one.slips.empty())
        lines << tr("No slip was looked for: record, pair and witnesses agree.");
    for (const auto& group : one.slips.classes) {
        lines << tr("%1  %2: %3")
                     .arg(ltr(QString::number(group.probability, 'f', 3)), FindingsModel::slipWords(group),
                          say(group.detail));
        for (const auto& member : group.members)
            lines << ltr(QStringLiteral("        %1 × %2 × %3 = %4")
                             .arg(figure(member.prior), figure(member.witnesses), figure(member.pair),
                                  figure(member.weight())));
    }
    if (!one.slips.empty())
        lines << tr("Below each: prior × witnesses × pair; the probability is its part of the sum.");
    if (!one.slips.witnessed)
        lines << tr("Slips of the record cannot be tested here: nothing was measured beside it.");
    return lines.join(QLatin1Char('\n'));
}

void AuditPlace::showCase(const AuditCase* one)
{
    shown_ = one;
    for (auto* button : pairButtons_->buttons())
        button->setEnabled(one != nullptr && (pairButtons_->id(button) == 0 ? one->judged.fit.has_value()
                                                                            : one->judged.best.has_value()));
    pairButtons_->button(0)->setChecked(true);
    if (one == nullptr) {
        caseHeading_->setText(tr("No finding is chosen"));
        caseWords_->setText(tr("Choose a finding in the list: what was needed, what was given and what lay "
                               "in the box stand here."));
        slips_->clear();
    } else {
        const auto& facts = one->judged.facts;
        caseHeading_->setText(facts.atMs == 0
                                  ? tr("About the course of events")
                                  : tr("%1, %2, entry %3")
                                        .arg(ltr(QString::fromStdString(facts.person)), say(facts.purpose))
                                        .arg(facts.number));
        caseWords_->setText(caseWords(*one));
        slips_->setPlainText(slipArithmetic(*one));
    }
    showCriteria();
}

void AuditPlace::showCriteria()
{
    const bool better = pairButtons_->checkedId() == 1;
    if (shown_ != nullptr && better && shown_->judged.best)
        criteria_->show(shown_->judged.best->fit);
    else if (shown_ != nullptr && !better && shown_->judged.fit)
        criteria_->show(*shown_->judged.fit);
    else
        criteria_->clear();
}

bool AuditPlace::chooseEntry(const std::string& entry)
{
    const int row = findings_->rowOf(entry);
    if (row < 0)
        return false;
    classes_->setCurrentIndex(0);
    filter_->clear();
    findingsView_->setCurrentIndex(sorted_->mapFromSource(ofClass_->mapFromSource(findings_->index(row, 0))));
    return true;
}

void AuditPlace::showView(int view)
{
    views_->setCurrentIndex(view);
    if (auto* button = viewButtons_->button(view))
        button->setChecked(true);
}

void AuditPlace::restyle()
{
    chart_->restyle();
    for (auto* view : {findingsView_, chartTable_, criteriaView_})
        view->verticalHeader()->setDefaultSectionSize(view->fontMetrics().height() + 8);
}

} // namespace quarterstep
