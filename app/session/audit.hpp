// SPDX-License-Identifier: GPL-3.0-or-later
// The audit of a camp: the ledger replayed entry by entry, every hand-over judged again by the fit that
// matching uses, under the rules of its time and with the stock of its moment.
#pragma once

#include "app/session/camp.hpp"
#include "app/session/jobs.hpp"
#include "core/auditing/ledger_watch.hpp"
#include "core/auditing/rates.hpp"
#include "inventory/text/audit_file.hpp"

namespace quarterstep
{

struct AuditOptions {
    std::string profile;    ///< judge every hand-over by this profile of today's rules instead of its own
    std::int64_t nowMs = 0; ///< later entries are from the future
    AuditSettings settings = defaultAuditSettings();
    int threads = 1; ///< that judge; the answer is the same for any number
    /// What was read again afterwards, by entry.
    std::map<std::string, std::shared_ptr<const LaterWitness>> later;
    /// Told entries read of both readings of the ledger; stopped, the audit throws Error cancelled (1).
    Job job;
};

/// Hand-overs of one site, week, profile or kind of pair.
struct AuditRate {
    std::string by;   ///< "all" "site" "actor" "week" "profile" "purpose" "kind": stable, in JSON
    std::string name; ///< ISO date of the Monday for a week
    Tally tally;
    ShareLimits limits;             ///< exact, 95 %
    Funnel funnel = Funnel::inside; ///< against the share of all; nothing is ranked
};

struct AuditSummary {
    std::int64_t entries = 0;   ///< read, up to the first bad one of the chain
    std::int64_t handOvers = 0; ///< standing
    std::int64_t judged = 0;    ///< of these, with record, pair and rules
    std::int64_t mismatches = 0;
    ChainCheck chain;
    std::map<AuditClass, std::int64_t> byClass;
    std::vector<AuditRate> rates; ///< all first, then by name
};

/// What an audit tells on its way. Memory does not grow with the ledger: nothing is held back but what is
/// open.
struct AuditEars {
    FindingSink finding; ///< what only the course of events shows
    /// Each hand-over with its own findings, in the order of the ledger, once its neighbours are known.
    std::function<void(const JudgedHandOver&, const SlipAnswer&)> judged;
};

/// Reads the ledger once for the chain and once for the entries, as far as the chain is whole. Throws Error
/// ledger-missing (3).
AuditSummary auditCamp(const Camp& camp, const AuditOptions& options, const AuditEars& ears);

/// The whole chain, with the counts, as far as it can be told from the ledger alone. Job as that of the
/// audit.
[[nodiscard]] ChainCheck checkedChain(const Camp& camp, const Job& job);
/// What an audit says of a chain that is not in order: where it stopped.
[[nodiscard]] Sentence auditStopsAt(const ChainCheck& chain);

/// What an entry `handed-over` says.
[[nodiscard]] HandOverFacts factsOf(const Entry& entry);
/// ISO date of the Monday of the week, UTC.
[[nodiscard]] std::string mondayOf(std::int64_t atMs);

} // namespace quarterstep
