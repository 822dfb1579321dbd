// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/audit_cases.hpp"

#include "app/session/audit_report.hpp"

#include <algorithm>
#include <map>

namespace quarterstep
{
namespace
{

bool isWorthACase(const std::vector<AuditFinding>& findings)
{
    return std::any_of(findings.begin(), findings.end(),
                       [](const AuditFinding& finding) { return !isOnlyCounted(finding.kind); });
}

std::vector<std::string> givenBy(const HandOverFacts& facts)
{
    std::vector<std::string> lines;
    for (const auto& movement : facts.movements)
        if (movement.delta < 0)
            lines.push_back(movement.line);
    return lines;
}

/// Gathers while the ledger is read.
class Gathering
{
  public:
    Gathering(AuditCases& cases, const AuditOptions& options, std::size_t most)
        : cases_(cases), options_(options), most_(most)
    {
    }

    void hear(const JudgedHandOver& judged, const SlipAnswer& slips)
    {
        countRun(judged);
        const auto* told = slips.told(options_.settings.slips);
        if (told == nullptr && !isWorthACase(judged.findings))
            return;
        AuditCase kept{judged, slips, told == nullptr ? std::nullopt : std::optional(*told),
                       givenBy(judged.facts)};
        kept.judged.profile = nullptr;
        keep(std::move(kept));
    }

    void hear(AuditFinding finding)
    {
        AuditCase kept;
        kept.judged.facts.entry = finding.entry;
        kept.judged.findings.push_back(std::move(finding));
        keep(std::move(kept));
    }

  private:
    void keep(AuditCase&& kept)
    {
        if (cases_.cases.size() < most_)
            cases_.cases.push_back(std::move(kept));
        else
            ++cases_.leftOut;
    }

    void countRun(const JudgedHandOver& judged)
    {
        if (!judged.fit)
            return;
        ++cases_.judged;
        if (!judged.mismatch()) {
            ++cases_.running;
            return;
        }
        countReason(judged);
        cases_.runs.push_back({cases_.running, judged.facts.entry, false});
        cases_.running = 0;
    }

    void countReason(const JudgedHandOver& judged)
    {
        const auto first =
            std::find_if(judged.findings.begin(), judged.findings.end(),
                         [](const AuditFinding& finding) { return infoOf(finding.kind).mismatch; });
        if (first == judged.findings.end())
            return;
        const bool outside =
            first->kind == AuditClass::outsideWithoutReason || first->kind == AuditClass::outsideWithReason;
        std::optional<Criterion> criterion;
        if (const auto* failing = outside ? judged.fit->firstWith(Band::fails) : nullptr)
            criterion = failing->criterion;
        auto& reasons = cases_.reasons;
        auto found = std::find_if(reasons.begin(), reasons.end(), [&](const FirstReason& reason) {
            return reason.kind == first->kind && reason.criterion == criterion;
        });
        if (found == reasons.end())
            found = reasons.insert(found, {first->kind, criterion, 0});
        ++found->count;
    }

    AuditCases& cases_;
    const AuditOptions& options_;
    std::size_t most_;
};

/// What the course of events says of a hand-over that is a case already goes to that case.
void joinCourse(std::vector<AuditCase>& cases)
{
    std::map<std::string, std::size_t> handOvers;
    for (std::size_t at = 0; at < cases.size(); ++at)
        if (cases[at].judged.facts.atMs != 0)
            handOvers.emplace(cases[at].entry(), at);
    for (auto& one : cases)
        if (const auto found = handOvers.find(one.entry());
            one.judged.facts.atMs == 0 && found != handOvers.end()) {
            auto& findings = cases[found->second].judged.findings;
            findings.insert(findings.end(), one.judged.findings.begin(), one.judged.findings.end());
            one.judged.findings.clear();
        }
    cases.erase(std::remove_if(cases.begin(), cases.end(),
                               [](const AuditCase& one) {
                                   return one.judged.facts.atMs == 0 && one.judged.findings.empty();
                               }),
                cases.end());
}

} // namespace

std::string AuditCase::entry() const
{
    return judged.facts.entry;
}

AuditCases auditCases(const Camp& camp, const AuditOptions& options, std::size_t most)
{
    AuditCases cases;
    Gathering gathering(cases, options, most);
    AuditEars ears;
    ears.finding = [&](AuditFinding finding) { gathering.hear(std::move(finding)); };
    ears.judged = [&](const JudgedHandOver& judged, const SlipAnswer& slips) {
        gathering.hear(judged, slips);
    };
    cases.summary = auditCamp(camp, options, ears);
    joinCourse(cases.cases);
    std::stable_sort(cases.reasons.begin(), cases.reasons.end(),
                     [](const FirstReason& a, const FirstReason& b) { return a.count > b.count; });
    return cases;
}

std::vector<GroupTally> groupsBy(const AuditSummary& summary, const std::string& by)
{
    std::vector<GroupTally> groups;
    for (const auto& rate : summary.rates)
        if (rate.by == by)
            groups.push_back({rate.name, rate.tally});
    return groups;
}

} // namespace quarterstep
