// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/audit_report.hpp"

#include "app/session/keeping.hpp"
#include "core/record/masking.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

/// Hides small counts unless the report is the supervisor's.
std::vector<ShownCount> shownOf(const std::vector<std::int64_t>& counts, bool all)
{
    std::vector<ShownCount> shown;
    if (all) {
        shown.assign(counts.begin(), counts.end());
        return shown;
    }
    std::vector<CountCell> cells;
    cells.reserve(counts.size());
    for (const auto count : counts)
        cells.push_back({"", static_cast<int>(count)});
    for (const auto& cell : masked(cells))
        shown.push_back(cell.count ? ShownCount(*cell.count) : std::nullopt);
    return shown;
}

std::vector<ReportCell> cellsOf(const std::vector<std::pair<std::string, std::int64_t>>& counts, bool all)
{
    std::vector<std::int64_t> numbers;
    numbers.reserve(counts.size());
    for (const auto& [name, count] : counts)
        numbers.push_back(count);
    const auto shown = shownOf(numbers, all);
    std::vector<ReportCell> cells;
    cells.reserve(counts.size());
    for (std::size_t i = 0; i < counts.size(); ++i)
        cells.push_back({counts[i].first, shown[i]});
    return cells;
}

/// A group is hidden as a whole where it is small; its mismatches also where those or the good ones are few.
std::vector<ReportGroup> groupsOf(const std::vector<GroupTally>& tallies, bool all)
{
    std::vector<std::int64_t> judged;
    std::vector<std::int64_t> bad;
    std::vector<std::int64_t> good;
    for (const auto& each : tallies) {
        judged.push_back(each.tally.judged);
        bad.push_back(each.tally.mismatches);
        good.push_back(each.tally.judged - each.tally.mismatches);
    }
    const auto judgedShown = shownOf(judged, all);
    const auto badShown = shownOf(bad, all);
    const auto goodShown = shownOf(good, all);
    std::vector<ReportGroup> groups;
    for (std::size_t i = 0; i < tallies.size(); ++i) {
        const bool both = judgedShown[i] && badShown[i] && goodShown[i];
        groups.push_back({tallies[i].name, judgedShown[i], both ? badShown[i] : std::nullopt});
    }
    return groups;
}

std::vector<GroupTally> shownTallies(const std::vector<ReportGroup>& groups)
{
    std::vector<GroupTally> tallies;
    for (const auto& group : groups)
        if (group.shown())
            tallies.push_back({group.name, {*group.judged, *group.mismatches}});
    return tallies;
}

Sentence hiddenSentence()
{
    return {QS_SAY("core", "not drawn: counts under %1 are hidden on this page"),
            {std::to_string(leastShown)}};
}

/// Hears an audit and keeps what a report needs.
class ReportMaker
{
  public:
    ReportMaker(const Camp& camp, const AuditOptions& options, bool detail) : camp_(camp), options_(options)
    {
        report_.detail = detail;
        report_.site = camp.site();
        report_.profile = options.profile;
        report_.day = localDay(options.nowMs);
    }

    AuditReport make()
    {
        AuditEars ears;
        ears.finding = [this](AuditFinding finding) { keep({std::move(finding), 0, {}, {}, 0.0}); };
        ears.judged = [this](const JudgedHandOver& judged, const SlipAnswer& slips) { hear(judged, slips); };
        const auto summary = auditCamp(camp_, options_, ears);
        report_.chain = summary.chain;
        report_.entries = summary.entries;
        report_.handOvers = summary.handOvers;
        report_.all = groupsOf({{"", all_}}, report_.detail).front();
        takeSteps(summary);
        takeRates(summary);
        takeRuns();
        takeFollowUp();
        report_.lots = lotsOf(camp_);
        std::reverse(report_.lots.begin(), report_.lots.end());
        return std::move(report_);
    }

  private:
    void hear(const JudgedHandOver& judged, const SlipAnswer& slips)
    {
        const auto day = localDay(judged.facts.atMs);
        if (judged.fit) {
            report_.first = report_.first.empty() ? day : std::min(report_.first, day);
            report_.last = std::max(report_.last, day);
            ++all_.judged;
            countRun(judged);
        }
        const auto* told = slips.told(options_.settings.slips);
        for (const auto& finding : judged.findings) {
            const bool slip = told != nullptr && infoOf(finding.kind).mismatch;
            keep({finding, judged.facts.number, day, slip ? infoOf(told->kind()).word : "",
                  slip ? told->probability : 0.0});
        }
    }

    void countRun(const JudgedHandOver& judged)
    {
        if (!judged.mismatch()) {
            ++running_;
            return;
        }
        ++all_.mismatches;
        runs_.push_back({running_, report_.detail ? judged.facts.entry : std::string(), false});
        running_ = 0;
        if (runs_.size() > 2 * mostRuns)
            runs_.erase(runs_.begin(), runs_.end() - mostRuns);
    }

    void keep(ReportFinding finding)
    {
        if (!report_.detail || isOnlyCounted(finding.finding.kind))
            return;
        if (report_.findings.size() == mostFindings)
            ++report_.findingsLeftOut;
        else
            report_.findings.push_back(std::move(finding));
    }

    void takeSteps(const AuditSummary& summary)
    {
        std::vector<std::int64_t> counts;
        counts.reserve(summary.byClass.size());
        for (const auto& [kind, count] : summary.byClass)
            counts.push_back(count);
        const auto shown = shownOf(counts, report_.detail);
        std::map<NextStep, ReportStep> steps;
        std::size_t at = 0;
        for (const auto& [kind, count] : summary.byClass) {
            auto& step = steps[infoOf(kind).step];
            step.step = infoOf(kind).step;
            step.classes.push_back({kind, shown[at++]});
        }
        for (auto& [step, value] : steps)
            report_.steps.push_back(std::move(value));
    }

    /// Those who handed over get numbers; who reads the page cannot tell whose they are.
    void takeRates(const AuditSummary& summary)
    {
        std::map<std::string, std::vector<GroupTally>> tallies;
        for (const auto& rate : summary.rates) {
            auto& groups = tallies[rate.by];
            groups.push_back(
                {rate.by == "actor" ? std::to_string(groups.size() + 1) : rate.name, rate.tally});
        }
        const bool shareShown = report_.all.shown();
        for (const char* by : {"site", "week", "profile", "purpose", "kind", "actor"}) {
            if (tallies.count(by) == 0 || (std::string(by) == "actor" && !report_.detail))
                continue;
            ReportBreakdown breakdown{by, groupsOf(tallies[by], report_.detail), {}};
            if (shareShown)
                breakdown.funnel = funnelChart(shownTallies(breakdown.groups), all_.share());
            report_.breakdowns.push_back(std::move(breakdown));
        }
        report_.weeks = shareShown ? pChart(tallies["week"], all_.share()) : PChart{};
        if (!shareShown)
            report_.weeks.whyNot = hiddenSentence();
        const auto& points = report_.weeks.points;
        const bool hidden = std::any_of(points.begin(), points.end(), [&](const PPoint& point) {
            return !groupsOf({{"", point.tally}}, report_.detail).front().shown();
        });
        if (hidden) {
            report_.weeks.whyNot = hiddenSentence();
            report_.weeks.points.clear();
        }
    }

    void takeRuns()
    {
        if (report_.all.shown()) {
            const std::size_t from = runs_.size() > mostRuns ? runs_.size() - mostRuns : 0;
            report_.runs = gSeries(std::span(runs_).subspan(from), running_, all_);
        } else
            report_.runs.whyNot = hiddenSentence();
    }

    void takeFollowUp()
    {
        const auto facts = followUpFacts(camp_);
        std::vector<std::pair<std::string, std::int64_t>> stages;
        for (const auto& stage : stagesOfFollowUp())
            stages.emplace_back(stage.word, 0);
        for (const auto& due : followUpsDue(facts.wearers, facts.seen, options_.nowMs))
            stages[due.stage].second += due.state == DueState::soon ? 0 : 1;
        report_.due = cellsOf(stages, report_.detail);
        const auto wear = countWear(facts.wearers, facts.seen);
        std::vector<std::pair<std::string, std::int64_t>> outcomes;
        for (std::size_t i = 0; i < wearOutcomes; ++i)
            if (static_cast<Wear>(i) != Wear::notFound)
                outcomes.emplace_back(wordOf(static_cast<Wear>(i)), wear.by[i]);
        outcomes.emplace_back("not-found", wear.notFound);
        outcomes.emplace_back("not-seen", wear.notSeen);
        report_.wear = cellsOf(outcomes, report_.detail);
        const auto met = groupsOf({{"", {wear.met, wear.wearing}}}, report_.detail).front();
        report_.met = met.judged;
        report_.wearing = met.mismatches;
        takeCoverage();
    }

    void takeCoverage()
    {
        const auto coverage = coverageOfCamp(camp_);
        report_.people = coverage.people;
        const auto take = [&](const EffectiveCoverage& of, std::vector<ReportCell>& cells,
                              std::optional<double>& share) {
            cells = cellsOf({{"met", of.of(SightNeed::met)},
                             {"under-met", of.of(SightNeed::underMet)},
                             {"unmet", of.of(SightNeed::unmet)},
                             {"no-need", of.of(SightNeed::none)},
                             {"other-cause", of.of(SightNeed::otherCause)},
                             {"unknown", of.of(SightNeed::unknown)}},
                            report_.detail);
            const bool shown = cells[0].count && cells[1].count && cells[2].count;
            share = shown ? of.share() : std::nullopt;
        };
        take(coverage.before, report_.before, report_.shareBefore);
        take(coverage.after, report_.after, report_.shareAfter);
    }

    const Camp& camp_;
    const AuditOptions& options_;
    AuditReport report_;
    Tally all_;
    std::vector<GPoint> runs_;
    std::int64_t running_ = 0;
};

} // namespace

bool isOnlyCounted(AuditClass kind)
{
    return kind == AuditClass::checksNotRecorded || kind == AuditClass::centresNotMeasured;
}

const char* wordOf(NextStep step)
{
    constexpr const char* words[] = {"refraction", "dispensing", "bin",   "supplier",
                                     "stock",      "follow-up",  "record"};
    return words[static_cast<std::size_t>(step)];
}

AuditReport auditReport(const Camp& camp, const AuditOptions& options, bool detail)
{
    return ReportMaker(camp, options, detail).make();
}

} // namespace quarterstep
