// SPDX-License-Identifier: GPL-3.0-or-later
// Lots: hand-overs drawn by seed, read again at the bench, and the decision. Draw and results are entries of
// the ledger: they travel with it, are merged with it, stand in its chain, and are taken back as any other
// entry.
#pragma once

#include "app/session/audit.hpp"
#include "core/auditing/lot.hpp"
#include "inventory/text/bench_sheet.hpp"

namespace quarterstep
{

struct LotWish {
    std::optional<int> sample;  ///< empty: the smallest that keeps both risks
    std::optional<int> allowed; ///< empty: the number that makes the larger risk smallest
    double fine = 0.05;
    double bad = 0.25;
    double risk = 0.12; ///< most, of provider and consumer, where no sample is given
    std::uint64_t seed = 1;
    std::string since; ///< ISO day, first of the lot; empty: from the beginning
    std::string until; ///< ISO day, last of the lot
    std::string actor;
};

struct Lot {
    std::string id;          ///< of its entry; empty while only wished for
    std::int64_t number = 0; ///< of its entry
    std::int64_t atMs = 0;
    std::string site;
    LotPlan plan;
    int size = 0; ///< hand-overs it was drawn from
    std::uint64_t seed = 0;
    std::string since;
    std::string until;
    std::vector<std::string> handOvers; ///< ids in the order of the draw, spares last
    std::string readBy;                 ///< id of the entry with its results, empty: not read yet
    LotCount count;                     ///< as decided when the results were entered
};

/// Draws from the standing hand-overs of this site whose pair is recorded. Throws Error lot-nobody (3: none),
/// lot-too-small (3: the plan asks for more than there are), lot-plan (2: no plan keeps such risks).
[[nodiscard]] Lot drawLot(const Camp& camp, const LotWish& wish);
/// The entry that keeps a draw.
[[nodiscard]] Entry lotEntry(const Lot& lot, const std::string& actor);

/// Every lot that stands, oldest first, with its results.
[[nodiscard]] std::vector<Lot> lotsOf(const Camp& camp);
/// One of them by id; empty: the newest. Throws Error lot-not-drawn (3).
[[nodiscard]] Lot lotNamed(const Camp& camp, const std::string& id);
/// The rows of its worksheet.
[[nodiscard]] std::vector<BenchSheetRow> sheetOf(const Camp& camp, const Lot& lot);

/// What came of one pair at the bench.
struct JudgedRow {
    int row = 0;
    std::string handOver; ///< id
    RowOutcome outcome = RowOutcome::unread;
    std::vector<Sentence> why; ///< what failed
};

struct LotResult {
    Lot lot;
    std::vector<BenchRow> rows;
    std::vector<JudgedRow> judged; ///< every row of the lot, in the order of the draw
    LotCount count;
    std::vector<Finding>
        findings; ///< lot-not-drawn, lot-mixed, lot-read-twice, reading-no-row; nothing is judged then
    [[nodiscard]] bool usable() const { return findings.empty(); }
};

/// Holds the readings against the pair as recorded (tolerance set) and against the person's record (the fit
/// of matching, rules of the time). A row fails when the pair does not read as recorded, or is outside a
/// limit although no reason was given.
[[nodiscard]] LotResult judgeLot(const Camp& camp, const std::vector<BenchRow>& rows, const ToleranceSet& set,
                                 const AuditOptions& options);
/// The entry that keeps results and decision.
[[nodiscard]] Entry lotReadEntry(const LotResult& result, const std::string& actor);

} // namespace quarterstep
