// SPDX-License-Identifier: GPL-3.0-or-later
// Who may come next time: people as they were seen, each with a weight. From a table, from the ledger (served
// and unserved), and mixed with a prior where few were seen.
#pragma once

#include "core/fitting/prescription.hpp"
#include "core/fitting/stock_line.hpp"
#include "core/record/entry.hpp"

#include <functional>
#include <map>
#include <span>

namespace quarterstep
{

/// Why somebody seen left without a pair from the box.
enum class Unmet { served, stockOut, heldBack, notInBox, ordered, declined, incomplete };

struct DemandPerson {
    PersonRecord record;
    double weight = 1.0; ///< people it stands for
    Unmet cause = Unmet::served;
};

struct Demand {
    std::vector<DemandPerson> people;
    double seen = 0.0;       ///< people it rests on, without the prior
    double priorShare = 0.0; ///< 0 to 1
    std::map<std::string, double>
        raised;                       ///< line -> by how much its demand was raised, for days without stock
    std::map<std::string, int> unmet; ///< cause -> people
    int records = 0;                  ///< entries with the whole record that was judged
    int unread = 0;                   ///< entries whose prescription could not be read

    [[nodiscard]] double weight() const;
};
/// Each person of the table once, with weight 1.
[[nodiscard]] Demand demandOfTable(const std::vector<PersonRecord>& people);

/// The record kept with an entry; empty where none is (older entries, a person who was forgotten).
using RecordReader = std::function<std::optional<PersonRecord>(const Entry&)>;

/// From the entries of a site, in the order of arrival: everyone handed a pair, and everyone who went without
/// (nothing left, nothing that fits, held back, ordered for, declined, incomplete); who went without and was
/// served later is counted once. Where no record was kept, the entry's own fields stand for it, and then the
/// pair given: near power and centres. A line that lay empty for part of the days counts as if it had gone at
/// the pace of the days when it was there (correction for stock-outs as in The Logistics Handbook, USAID
/// DELIVER), at most fourfold, less those who are known to have gone without for want of stock.
[[nodiscard]] Demand demandOfLedger(std::span<const Entry> entries, const std::string& site,
                                    std::span<const StockLine> stock, std::int64_t offsetMs,
                                    const RecordReader& recordOf = {});

/// The published mix of a camp's readers and distance wearers as people: near 84 %, minus 10 %, plus 6 %
/// (Vincent JE, Optom Vis Sci 2006;83:803-810); near powers for clients of 49.5 ± 5.8 years (derived); powers
/// in 0.50 D.
[[nodiscard]] std::vector<DemandPerson> publishedDemand();

/// Adds a prior that weighs as much as `pseudoPeople` people: share = pseudo / (seen + pseudo).
void mixWithPrior(Demand& demand, const std::vector<DemandPerson>& prior, double pseudoPeople);

/// Where a PD was not taken: one drawn at random, so that a box is not packed for one width. Adults 62.5
/// (women) or 64.5 (men) ± 3.3 mm, children by age (Gantz L et al., J Optom 2021;14:299; Dodgson NA, Proc
/// SPIE 2004;5291:36-46; MacLachlan C, Howland HC, Ophthalmic Physiol Opt 2002;22:175-182, quadratics from
/// memory). Returns how many were drawn.
int drawMissingPds(Demand& demand, std::uint64_t seed);

} // namespace quarterstep
