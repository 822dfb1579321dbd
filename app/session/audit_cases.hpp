// SPDX-License-Identifier: GPL-3.0-or-later
// The audit as cases to look at one by one: each hand-over that something is to be said of, with its need,
// the pair given, the pair that was better and the slips weighed, kept as values.
#pragma once

#include "app/session/audit.hpp"
#include "app/session/jobs.hpp"
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

struct AuditCases {
    AuditSummary summary;
    std::vector<AuditCase> cases; ///< in the order of the ledger
    std::int64_t leftOut = 0;     ///< cases beyond the most that are kept
    std::vector<GPoint> runs;     ///< good hand-overs between mismatches
    std::int64_t running = 0;     ///< since the last
};

/// Reads the ledger as auditCamp does and keeps at most `most` cases. Job::done tells hand-overs against 0
/// (unknown). Throws what auditCamp throws, and Error cancelled (1).
[[nodiscard]] AuditCases auditCases(const Camp& camp, const AuditOptions& options, std::size_t most,
                                    const Job& job);

/// The groups of one breakdown ("site", "week" …) for a funnel or a p-chart.
[[nodiscard]] std::vector<GroupTally> groupsBy(const AuditSummary& summary, const std::string& by);

} // namespace quarterstep
