// SPDX-License-Identifier: GPL-3.0-or-later
// Handing over: one entry, its movements, the counts in stock.yaml. All or nothing.
#pragma once

#include "app/session/camp.hpp"
#include "app/session/pair_reading.hpp"

namespace quarterstep
{

/// What the optician did before letting the person go. Batch hand-over records none.
struct HandOverChecks {
    bool powerByFocimeter = false;
    bool fitOnFace = false;
    bool acuityWithPair = false;
    bool instructionsGiven = false;
};

struct HandOver {
    const Recommendation* recommendation = nullptr;
    std::vector<Part> parts; ///< into camp.stock()
    std::string reason;      ///< needed when the pair is outside a limit or not the suggested one
    std::optional<TrialAcuity> trial;
    HandOverChecks checks;
    PairReading reading; ///< of the very pair, where it was read before it went
    std::string actor;
    std::string finalAsWritten; ///< both eyes, for the record
    std::string record = {};    ///< recordText of the person, so that an audit can judge the hand-over again
};

/// Why parts cannot be handed over as they are; empty = they can. `reasonHelps`: a typed reason would allow
/// it.
struct Objection {
    Sentence sentence;
    bool reasonHelps = false;
};
[[nodiscard]] std::vector<Objection> objectionsTo(const Camp& camp, const HandOver& handOver);

/// Posts the hand-over. Throws Error hand-over-refused (1) when an objection stands, and the ledger's own.
Entry handOver(Camp& camp, const HandOver& handOver);

/// The entry of a hand-over as it would be posted, no objections asked: batches give acceptable candidates
/// only.
[[nodiscard]] Entry entryFor(const Camp& camp, const HandOver& handOver);

/// One person and purpose of a batch.
struct BatchAnswer {
    Recommendation recommendation;
    std::optional<Entry> entry;     ///< when handed over
    std::vector<std::string> lines; ///< given, as JSON and people see them
    bool heldBack = false;          ///< a second pair waits while somebody has none
    bool ranOut = false;            ///< would have been served at the day's start
    bool givenBefore = false;       ///< handed over today already, for this purpose and prescription
    std::string wentWithout;        ///< id of the entry that says so, now or from before; empty in a dry run
};

struct BatchResult {
    std::vector<BatchAnswer> answers; ///< in the order of the table
    std::optional<Error> stopped;     ///< the ledger failed on the way; `answers` are those before it
    std::vector<std::pair<std::string, int>> before; ///< line, on hand
    std::vector<std::pair<std::string, int>> after;
};

/// The entry of somebody who goes without a pair from stock, so that demand which was not met is known:
/// not-needed, incomplete, referred, or not-served (custom order, none left, second pair held back).
[[nodiscard]] Entry unservedEntry(const Camp& camp, const PersonRecord& person, const Recommendation& answer,
                                  bool heldBack);

/// Hands over the best acceptable candidate to each person in order: first pairs first, then second pairs.
/// Never on trial, incomplete or refer; checks: none. Who goes without is entered too. Repeated with the same
/// table nothing is doubled: who was given a pair today for the same purpose and prescription is not given
/// another, and who went without for the same reason is not entered again. With `dryRun` nothing is written.
BatchResult dispenseTable(Camp& camp, const std::vector<PersonRecord>& people, const MatchOptions& options,
                          const std::string& actor, bool dryRun);

} // namespace quarterstep
