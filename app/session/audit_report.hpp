// SPDX-License-Identifier: GPL-3.0-or-later
// What an audit says on paper, as values: one page for the site with small counts hidden, all of it for the
// supervisor. No name and no initials stand in it: those who handed over are numbered anew.
#pragma once

#include "app/session/follow_up.hpp"
#include "app/session/lot.hpp"
#include "core/auditing/charts.hpp"

class QJsonObject;

namespace quarterstep
{

/// A count that may be hidden, as the export hides it.
using ShownCount = std::optional<std::int64_t>;

struct ReportGroup {
    std::string name;
    ShownCount judged;
    ShownCount mismatches;
    [[nodiscard]] bool shown() const { return judged && mismatches; }
};

/// Hand-overs by one thing. The funnel has the groups that are shown.
struct ReportBreakdown {
    std::string by; ///< as AuditRate::by
    std::vector<ReportGroup> groups;
    FunnelChart funnel;
};

struct ReportClass {
    AuditClass kind{};
    ShownCount count;
};

/// Where to look next, and for which classes.
struct ReportStep {
    NextStep step{};
    std::vector<ReportClass> classes;
};

/// A finding of the supervisor's list.
struct ReportFinding {
    AuditFinding finding;
    std::int64_t number = 0; ///< of the entry, 0 where the finding is about the course of events
    std::string day;         ///< ISO, may be empty
    std::string slip;        ///< word of the likeliest slip told, or empty
    double probability = 0.0;
};

struct ReportCell {
    std::string name;
    ShownCount count;
};

struct AuditReport {
    std::string site;
    std::string day;   ///< ISO, of the report
    std::string first; ///< day of the first hand-over judged, empty when there is none
    std::string last;
    std::string profile; ///< where all were judged by one, else empty
    bool detail = false;
    ChainCheck chain;
    std::int64_t entries = 0;
    std::int64_t handOvers = 0;
    ReportGroup all; ///< name empty
    std::vector<ReportStep> steps;
    std::vector<ReportBreakdown> breakdowns;
    GSeries runs;                 ///< at most the last mostRuns; whyNot where hidden
    PChart weeks;                 ///< by week; whyNot where hidden
    std::vector<Lot> lots;        ///< newest first
    std::vector<ReportCell> due;  ///< by stage
    std::vector<ReportCell> wear; ///< by outcome, then "not-found" and "not-seen"
    ShownCount met;
    ShownCount wearing;
    int people = 0;                 ///< with a record
    std::vector<ReportCell> before; ///< "met" "under-met" "unmet" "no-need" "other-cause" "unknown"
    std::vector<ReportCell> after;
    std::optional<double> shareBefore; ///< of effective coverage; empty: nobody in need, or hidden
    std::optional<double> shareAfter;
    std::vector<ReportFinding> findings; ///< detail alone; without those that are only counted
    std::int64_t findingsLeftOut = 0;    ///< beyond mostFindings
};

inline constexpr std::size_t mostRuns = 100;
inline constexpr std::size_t mostFindings = 400;

/// Classes that are counted and not listed one by one: every hand-over by table has them.
[[nodiscard]] bool isOnlyCounted(AuditClass kind);

/// Reads the ledger. Throws what auditCamp throws.
[[nodiscard]] AuditReport auditReport(const Camp& camp, const AuditOptions& options, bool detail);

/// The report as rows for a spreadsheet: section, by, name, count, of, share, lower_95, upper_95, flag.
[[nodiscard]] std::string reportCsv(const AuditReport& report);
/// The same in JSON: `audit report --json`.
[[nodiscard]] QJsonObject reportJson(const AuditReport& report);

[[nodiscard]] const char* wordOf(NextStep step);

} // namespace quarterstep
