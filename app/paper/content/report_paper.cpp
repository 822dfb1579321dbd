// SPDX-License-Identifier: GPL-3.0-or-later
// The audit's report, a function a section (over 300 lines: one paper, one class). Its words are about the
// record and the next step; no name, no initials, nobody ranked.
#include "app/paper/content/chart_paper.hpp"
#include "app/paper/content/paper_words.hpp"
#include "app/paper/content/picture.hpp"
#include "app/paper/content/plain_text.hpp"
#include "app/paper/content/report_words.hpp"
#include "app/session/audit_report.hpp"
#include "app/session/keeping.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/words.hpp"
#include "core/record/masking.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace quarterstep
{
namespace
{

// The site's report stays on one page.
constexpr std::size_t rowsOnPage = 7;    ///< the last weeks
constexpr std::size_t classesOnPage = 6; ///< those found most often
constexpr double pageHeight = 42.0;      ///< mm, of its picture

class ReportPaper
{
  public:
    ReportPaper(const AuditReport& report, const PaperSource& source) : report_(report), source_(source) {}

    Paper make()
    {
        paper_ = {PaperKind::auditReport, {titled(paperName(PaperKind::auditReport))}};
        head();
        steps();
        for (const auto& breakdown : report_.breakdowns)
            if (report_.detail || breakdown.by == pageBreakdown())
                groups(breakdown);
        course();
        lots();
        followUp();
        coverage();
        if (report_.detail)
            findings();
        add(smallPrint(atOddsWords()));
        addFoot(source_, paper_.blocks);
        return std::move(paper_);
    }

  private:
    /// What the site's page shows: weeks, or kinds of pairs while there is one week alone.
    [[nodiscard]] std::string pageBreakdown() const
    {
        for (const auto& breakdown : report_.breakdowns)
            if (breakdown.by == "week" && breakdown.groups.size() > 1)
                return report_.weeks.drawn() ? "" : "week"; // the p-chart has them
        return "kind";
    }

    void add(Block block) { paper_.blocks.push_back(std::move(block)); }

    void head()
    {
        add(field(paperWords(QT_TRANSLATE_NOOP("paper", "Day and place")),
                  ltr(report_.day) + QStringLiteral(" · ") + typed(report_.site)));
        if (!report_.first.empty())
            add(field(paperWords(QT_TRANSLATE_NOOP("paper", "Hand-overs")),
                      paperWords(QT_TRANSLATE_NOOP("paper", "%1 from %2 to %3"))
                          .arg(figure(report_.handOvers), ltr(report_.first), ltr(report_.last))));
        if (!report_.profile.empty())
            add(field(paperWords(QT_TRANSLATE_NOOP("paper", "Judged by")), ltr(report_.profile)));
        add(field(paperWords(QT_TRANSLATE_NOOP("paper", "Record and pair at odds")),
                  ratioWords(report_.all)));
        if (!report_.chain.ok)
            add(warning(
                paperWords(QT_TRANSLATE_NOOP("paper", "Entry %1 is not as it was written; only what stands "
                                                      "before it was judged."))
                    .arg(figure(report_.chain.firstBad.value_or(0)))));
    }

    void steps()
    {
        add(headed(paperWords(QT_TRANSLATE_NOOP("paper", "What to do next"))));
        if (report_.steps.empty())
            return add(saying(paperWords(QT_TRANSLATE_NOOP("paper", "Nothing was found."))));
        Block table{BlockKind::table, {}, {}, {}, {3, 6, 2, 8}};
        table.rows.push_back({paperWords(QT_TRANSLATE_NOOP("paper", "Where")),
                              paperWords(QT_TRANSLATE_NOOP("paper", "What the records show")),
                              paperWords(QT_TRANSLATE_NOOP("paper", "Times")),
                              paperWords(QT_TRANSLATE_NOOP("paper", "Next"))});
        const auto shown = classesShown();
        int more = 0;
        for (const auto& step : report_.steps)
            for (const auto& each : step.classes) {
                if (shown.count(each.kind) == 0) {
                    ++more;
                    continue;
                }
                table.rows.push_back({stepWords(step.step), say({infoOf(each.kind).words, {}}),
                                      countWords(each.count), say({infoOf(each.kind).next, {}})});
            }
        add(std::move(table));
        if (more > 0)
            add(smallPrint(paperWords(QT_TRANSLATE_NOOP("paper", "Kinds found less often, in the detail: %1"))
                               .arg(figure(more))));
    }

    /// The classes that stand here: all of them, or those found most often.
    [[nodiscard]] std::set<AuditClass> classesShown() const
    {
        std::vector<ReportClass> classes;
        for (const auto& step : report_.steps)
            classes.insert(classes.end(), step.classes.begin(), step.classes.end());
        std::stable_sort(classes.begin(), classes.end(), [](const ReportClass& a, const ReportClass& b) {
            return a.count.value_or(0) > b.count.value_or(0);
        });
        if (!report_.detail)
            classes.resize(std::min(classes.size(), classesOnPage));
        std::set<AuditClass> shown;
        for (const auto& each : classes)
            shown.insert(each.kind);
        return shown;
    }

    /// Groups that are hidden stand in the table and not in the picture.
    void groups(ReportBreakdown breakdown)
    {
        auto& chart = breakdown.funnel;
        auto& all = breakdown.groups;
        if (!report_.detail && all.size() > rowsOnPage) {
            all.erase(all.begin(), all.end() - static_cast<std::ptrdiff_t>(rowsOnPage));
            std::erase_if(chart.points, [&](const FunnelPoint& point) {
                return std::none_of(all.begin(), all.end(),
                                    [&](const ReportGroup& group) { return group.name == point.name; });
            });
        }
        const bool drawn = chart.points.size() > 1;
        for (auto& point : chart.points)
            point.name = withoutIsolates(groupName(breakdown.by, point.name)).toStdString();
        auto twin = funnelTwin(chart, byHeading(breakdown.by), byWords(breakdown.by),
                               report_.detail ? usualHeight : pageHeight);
        for (const auto& group : all)
            if (!group.shown() || chart.points.empty())
                twin.rows.push_back({groupName(breakdown.by, group.name), countWords(group.judged),
                                     countWords(group.mismatches), QStringLiteral("–"), QStringLiteral("–"),
                                     QStringLiteral("–")});
        add(headed(byHeading(breakdown.by)));
        if (drawn)
            return addTwin(std::move(twin), paper_.blocks);
        add({BlockKind::table, {}, {}, std::move(twin.rows), std::move(twin.widths)});
    }

    void course()
    {
        add(headed(paperWords(QT_TRANSLATE_NOOP("paper", "Over time"))));
        if (report_.weeks.drawn()) {
            auto weeks = report_.weeks;
            if (!report_.detail && weeks.points.size() > rowsOnPage)
                weeks.points.erase(weeks.points.begin(),
                                   weeks.points.end() - static_cast<std::ptrdiff_t>(rowsOnPage));
            addTwin(pChartTwin(weeks, paperWords(QT_TRANSLATE_NOOP("paper", "p-chart by week")),
                               report_.detail ? usualHeight : pageHeight),
                    paper_.blocks);
        } else
            add(saying(
                paperWords(QT_TRANSLATE_NOOP("paper", "p-chart: %1")).arg(told(report_.weeks.whyNot))));
        if (!report_.runs.drawn())
            add(saying(paperWords(QT_TRANSLATE_NOOP("paper", "g-chart: %1")).arg(told(report_.runs.whyNot))));
        else if (report_.detail)
            addTwin(runsTwin(report_.runs, paperWords(QT_TRANSLATE_NOOP("paper", "g-chart"))), paper_.blocks);
        else
            add(saying(paperWords(QT_TRANSLATE_NOOP(
                                      "paper", "g-chart: half of the runs between two at odds are %1 good "
                                               "ones or fewer; one longer than %2 is better than the "
                                               "share says"))
                           .arg(figure(std::int64_t(report_.runs.limits.centre)),
                                figure(report_.runs.limits.upper))));
    }

    void lots()
    {
        add(headed(paperWords(QT_TRANSLATE_NOOP("paper", "Read again at the bench"))));
        if (report_.lots.empty())
            add(saying(paperWords(QT_TRANSLATE_NOOP("paper", "No lot was drawn yet."))));
        const std::size_t most =
            report_.detail ? report_.lots.size() : std::min<std::size_t>(1, report_.lots.size());
        for (std::size_t i = 0; i < most; ++i) {
            const auto& lot = report_.lots[i];
            add(field(
                ltr(localDay(lot.atMs)),
                paperWords(QT_TRANSLATE_NOOP("paper", "%1 of %2 hand-overs, at most %3 may fail"))
                        .arg(figure(lot.plan.plan.sample), figure(lot.size), figure(lot.plan.plan.allowed)) +
                    QStringLiteral(": ") + decisionWords(lot)));
            if (report_.detail)
                addTwin(curveTwin(operatingCurve(lot.plan.plan, lot.size), lot.plan,
                                  paperWords(QT_TRANSLATE_NOOP("paper", "Operating curve"))),
                        paper_.blocks);
        }
    }

    /// On the site's page without the number that failed.
    [[nodiscard]] QString decisionWords(const Lot& lot) const
    {
        if (lot.readBy.empty())
            return paperWords(QT_TRANSLATE_NOOP("paper", "no results yet"));
        if (report_.detail)
            return told(decisionSentence(lot.count, lot.plan.plan));
        switch (decide(lot.count, lot.plan.plan)) {
        case LotDecision::accepted:
            return paperWords(QT_TRANSLATE_NOOP("paper", "accepted"));
        case LotDecision::refused:
            return paperWords(QT_TRANSLATE_NOOP("paper", "refused: read every pair of these days"));
        case LotDecision::open:
            break;
        }
        return paperWords(QT_TRANSLATE_NOOP("paper", "open"));
    }

    void cells(const QString& first, const QString& second, const std::vector<ReportCell>& each)
    {
        Block table{BlockKind::table, {}, {}, {{first, second}}, {6, 2}};
        for (const auto& cell : each)
            table.rows.push_back({cellName(cell.name), countWords(cell.count)});
        add(std::move(table));
    }

    void followUp()
    {
        add(headed(paperWords(QT_TRANSLATE_NOOP("paper", "Seen again"))));
        add(field(paperWords(QT_TRANSLATE_NOOP("paper", "With the pair when seen")),
                  ratioWords({{}, report_.met, report_.wearing})));
        if (report_.detail) {
            cells(paperWords(QT_TRANSLATE_NOOP("paper", "Due")),
                  paperWords(QT_TRANSLATE_NOOP("paper", "Persons")), report_.due);
            return cells(paperWords(QT_TRANSLATE_NOOP("paper", "Found")),
                         paperWords(QT_TRANSLATE_NOOP("paper", "Persons")), report_.wear);
        }
        QStringList due;
        for (const auto& cell : report_.due)
            due << cellName(cell.name) + QStringLiteral(" ") + countWords(cell.count);
        add(field(paperWords(QT_TRANSLATE_NOOP("paper", "Due now")), due.join(QStringLiteral(" · "))));
    }

    void coverage()
    {
        add(headed(paperWords(QT_TRANSLATE_NOOP("paper", "Effective coverage, distance, of %1 who came"))
                       .arg(figure(report_.people))));
        Block table{BlockKind::table, {}, {}, {}, {4, 3, 2, 2, 2, 2, 3, 2}};
        QStringList head{{}, paperWords(QT_TRANSLATE_NOOP("paper", "Coverage"))};
        for (const auto& cell : report_.before)
            head << cellName(cell.name);
        table.rows.push_back(head);
        const auto row = [&](const QString& name, const std::vector<ReportCell>& from,
                             const std::optional<double>& share) {
            QStringList texts{name, share ? shareWords(*share) : QStringLiteral("–")};
            for (const auto& cell : from)
                texts << countWords(cell.count);
            table.rows.push_back(texts);
        };
        row(paperWords(QT_TRANSLATE_NOOP("paper", "as they came")), report_.before, report_.shareBefore);
        row(paperWords(QT_TRANSLATE_NOOP("paper", "as they are now")), report_.after, report_.shareAfter);
        add(std::move(table));
        if (report_.detail)
            add(smallPrint(paperWords(QT_TRANSLATE_NOOP(
                "paper",
                "Met over met, under-met and unmet, better eye, 6/12 (World Health Organization, indicator "
                "3154). It is defined for a sample of a population; here it is of those who came."))));
    }

    void findings()
    {
        add(headed(paperWords(QT_TRANSLATE_NOOP("paper", "Findings"))));
        Block table{BlockKind::table, {}, {}, {}, {4, 5, 9, 4}};
        table.rows.push_back({paperWords(QT_TRANSLATE_NOOP("paper", "Entry")),
                              paperWords(QT_TRANSLATE_NOOP("paper", "What the records show")),
                              paperWords(QT_TRANSLATE_NOOP("paper", "In figures")),
                              paperWords(QT_TRANSLATE_NOOP("paper", "Likeliest slip"))});
        for (const auto& each : report_.findings)
            table.rows.push_back({entryWords(each), say({infoOf(each.finding.kind).words, {}}),
                                  told(each.finding.detail), slipWords(each)});
        add(table.rows.size() > 1
                ? std::move(table)
                : saying(paperWords(QT_TRANSLATE_NOOP("paper", "None to be listed one by one."))));
        if (report_.findingsLeftOut > 0)
            add(saying(paperWords(QT_TRANSLATE_NOOP(
                                      "paper", "%1 more are not listed here; `audit --json` has them all."))
                           .arg(figure(report_.findingsLeftOut))));
        add(smallPrint(
            paperWords(QT_TRANSLATE_NOOP("paper", "A slip is a mistake in a record or in a pick, named by "
                                                  "its likelihood and never proved by it."))));
    }

    static QString entryWords(const ReportFinding& each)
    {
        if (each.number == 0)
            return ltr(each.finding.entry.substr(0, 13));
        return ltr("#" + std::to_string(each.number)) + QLatin1Char('\n') + ltr(each.day);
    }

    static QString slipWords(const ReportFinding& each)
    {
        if (each.slip.empty())
            return QStringLiteral("–");
        for (std::size_t i = 0; i < slipKinds; ++i)
            if (each.slip == infoOf(static_cast<SlipKind>(i)).word)
                return say({infoOf(static_cast<SlipKind>(i)).words, {}}) + QStringLiteral(", ") +
                       shareWords(each.probability);
        return ltr(each.slip);
    }

    const AuditReport& report_;
    const PaperSource& source_;
    Paper paper_;
};

} // namespace

Paper auditReportPaper(const AuditReport& report, const PaperSource& source)
{
    return ReportPaper(report, source).make();
}

} // namespace quarterstep
