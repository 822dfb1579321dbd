// SPDX-License-Identifier: GPL-3.0-or-later
// The audit as cases to look at one by one: each hand-over that something is to be said of, with its need,
// the pair given, the pair that was better and the slips weighed, kept as values.
#pragma once

#include "app/session/audit.hpp"
#include "core/auditing/charts.hpp"

namespace quarterstep
{

/// One hand-over, or one thing that only the course of events shows (then without need and pair).
struct AuditCase {
    JudgedHandOver judged;          ///< without its profile, which does not outlive the audit
    SlipAnswer slips;               ///< all classes weighed
    std::optional<SlipClass> told;  ///< the class told in a report
    std::vector<std::string> given; ///< lines, as the movements name them
    [[nodiscard]] std::string entry() const;
};

/// Hand-overs judged by what first puts pair and record at odds; where a limit is passed, by the criterion
/// that fails first.
struct FirstReason {
    AuditClass kind{};
    std::optional<Criterion> criterion;
    std::int64_t count = 0;
};

struct AuditCases {
    AuditSummary summary;
    std::vector<AuditCase> cases;     ///< in the order of the ledger
    std::int64_t leftOut = 0;         ///< cases beyond the most that are kept
    std::vector<GPoint> runs;         ///< good hand-overs between mismatches
    std::int64_t running = 0;         ///< since the last
    std::vector<FirstReason> reasons; ///< most frequent first; their sum is the number of runs
    std::int64_t judged = 0;          ///< hand-overs that the reasons are of
};

/// Reads the ledger as auditCamp does and keeps at most `most` cases. Throws what auditCamp throws.
[[nodiscard]] AuditCases auditCases(const Camp& camp, const AuditOptions& options, std::size_t most);

/// The groups of one breakdown ("site", "week" …) for a funnel or a p-chart.
[[nodiscard]] std::vector<GroupTally> groupsBy(const AuditSummary& summary, const std::string& by);

} // namespace quarterstep
