// SPDX-License-Identifier: GPL-3.0-or-later
// The boxes for the next camp: what to order, how it is packed, and how sure that is. Nothing is written.
#pragma once

#include "app/session/demand_needs.hpp"

namespace quarterstep
{

struct PackQuestion {
    Demand demand;
    SupplierList supplier;
    MatchOptions match;
    long budget = 0;           ///< thousandths of the currency unit
    std::optional<long> grams; ///< of what is bought
    std::optional<int> boxes;  ///< that are carried, what is on hand included
    int piecesInBox = 60;
    int people = 100;   ///< who come next
    int scenarios = 50; ///< draws planned for; as many again, of other people, to check
    std::uint64_t seed = 1;
    PackingEffort effort;
};

struct OrderRow {
    std::string offer;
    int packs = 0;
    int pieces = 0;
    long cost = 0; ///< thousandths
    long grams = 0;
    // Why it is bought; shares of the needs of the whole demand.
    int onHand = 0;          ///< pieces that are there and do the same
    double wanted = 0.0;     ///< a piece of it would do
    double only = 0.0;       ///< nothing else on hand or on offer would do
    double servedMore = 0.0; ///< would go without if it were left out, on draws not planned for
};

struct LineQuantity {
    std::string line;
    int quantity = 0; ///< pieces bought
};

/// One row of the packing list.
struct BoxRow {
    int box = 1;
    std::string bin; ///< of the stock; empty for a line that is new
    std::string line;
    LineKind kind = LineKind::readyMade;
    int quantity = 0; ///< in this box
    int bought = 0;   ///< of these, not yet there
};

/// Shares of needs served on people that were not planned for.
struct Held {
    std::string way;        ///< "plan", "greedy", "newsvendor", "keep-levels", "on-hand"
    double spend = 0.0;     ///< thousandths, mean of both halves
    double share = 0.0;     ///< placed as well as can be
    double firstCome = 0.0; ///< each takes the best that is left
};

struct RunOut {
    std::string line; ///< the first of those that are the same to the eye
    double chance = 0.0;
    double atPerson = 0.0; ///< median number of the person who took the last, on the days on which it ran out
};

/// Who leaves without a pair, first come: means over draws not planned for.
struct Without {
    Purpose purpose = Purpose::distance;
    bool child = false;
    std::string reason; ///< "ran_out", else the key of the recommendation: nothing on hand or on offer serves
    double needs = 0.0; ///< of the people who come once
    double of = 0.0;    ///< all needs of this purpose and age
};

struct LeftOut {
    std::string line;
    bool wanted = false; ///< somebody of the demand could use it; else nobody could
};

struct PackAnswer {
    std::vector<OrderRow> order;
    std::vector<LineQuantity> lines;
    std::vector<BoxRow> boxes;
    long spend = 0;
    long grams = 0;
    int pieces = 0;           ///< bought
    bool heldOut = false;     ///< enough people to plan on one half and check on the other
    double servedShare = 0.0; ///< on people that were not planned for; without two halves: 0
    double fittedShare = 0.0; ///< on the draws planned for; never to be reported alone
    double greedyShare = 0.0; ///< likewise, before repairs
    double bound = 1.0;       ///< no order within the limits serves more of those draws
    std::vector<CurvePoint> curve;
    std::size_t knee = 0;
    std::vector<Held> held;
    std::vector<RunOut> runOuts;
    std::vector<Without> without; ///< most first
    std::vector<LeftOut> leftOut;
    std::map<std::string, double>
        unservable;          ///< share of the needs that nothing offered could serve, by reason
    double servable = 0.0;   ///< share that something offered or on hand could serve
    double inLine = 0.0;     ///< needs a person, of those who come
    bool bundles = false;    ///< lenses in frames took part: the bound is loose for them
    Sentence nothing;        ///< why the plan is empty; empty when it is not
    bool impossible = false; ///< empty because nothing could be planned, not because nothing is needed
};

/// Pure: may be called on a worker. `job.done` comes on the thread that called, `job.cancelled` may be set on
/// any; then Error cancelled is thrown within about a hundredth of the work.
[[nodiscard]] PackAnswer packBoxes(std::span<const StockLine> stock, const FittingRules& rules,
                                   const PackQuestion& question, const Job& job = {});

} // namespace quarterstep
