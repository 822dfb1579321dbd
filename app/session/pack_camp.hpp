// SPDX-License-Identifier: GPL-3.0-or-later
// The boxes for the next camp from a camp folder, a supplier's list and a demand, all read where it is
// called: on a worker of its own, with a reader of the ledger of its own.
#pragma once

#include "app/session/pack.hpp"
#include "app/session/planning_demand.hpp"

namespace quarterstep
{

/// What somebody chose. The usual numbers are those of the question.
struct PackWish {
    std::string folder;
    std::string supplier; ///< a supplier's list
    std::string table;    ///< a file of prescriptions; empty: the ledger of the folder
    long budget = 0;      ///< thousandths of the currency unit
    std::optional<long> grams;
    std::optional<int> boxes;
    int piecesInBox = PackQuestion().piecesInBox;
    int people = PackQuestion().people;
    // How the draws are made.
    CoverageAssumptions assumed; ///< of a table; a ledger leaves nothing open
    std::optional<int> prior;    ///< weight of the published mix in people; empty: by how many were seen
    int scenarios = PackQuestion().scenarios;
    std::uint64_t seed = PackQuestion().seed;

    bool operator==(const PackWish&) const = default;
};

struct PackOfCamp {
    PackQuestion question; ///< the supplier's lines among it
    PackAnswer answer;
    std::vector<StockLine> stock; ///< of the folder, as it was when planned
    QStringList told;             ///< about the demand
    int badRows = 0;              ///< rows of the table that could not be read
};

/// Plans. Throws CampNotOpened (3) with what is wrong in folder, supplier's list or table, Error
/// ledger-missing (3), cancelled (1).
[[nodiscard]] PackOfCamp packCamp(const PackWish& wish, const Job& job = {});

} // namespace quarterstep
