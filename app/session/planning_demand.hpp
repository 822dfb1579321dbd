// SPDX-License-Identifier: GPL-3.0-or-later
// Whom the next camp is planned for: the people of a table, or those of a ledger, mixed with the published
// mix while they are few. The command line and the desk read the same demand here.
#pragma once

#include "app/session/camp.hpp"
#include "app/session/coverage.hpp"
#include "core/planning/demand.hpp"

#include <QStringList>

namespace quarterstep
{

struct DemandRead {
    Demand demand;
    bool centred = false; ///< an unknown PD is the centres of each pair
    bool usable = true;   ///< false: the table as a whole could not be read; `findings` say why
    int badRows = 0;
    std::vector<Finding> findings; ///< of the table and of its rows
    QStringList told;              ///< where it comes from and what was assumed, one sentence each
};

/// The rows that could be read; those that could not are counted.
[[nodiscard]] std::vector<PersonRecord> usableRows(const PrescriptionTable& table, int& badRows);

/// Said aloud with every answer: the figures are not those of the table alone.
[[nodiscard]] QStringList assumptionWords(const CoverageAssumptions& assumed);

/// A file of prescriptions, or "-".
[[nodiscard]] DemandRead demandFromTable(const std::string& path, const CoverageAssumptions& assumed,
                                         const Settings& settings);
/// Who was served and who went without. Throws Error ledger-missing (3) when there is no ledger.
[[nodiscard]] DemandRead demandFromLedger(const Camp& camp);

/// Mixes the published mix in with the weight of so many people (30 where fewer than 100 were seen and
/// nothing is said), and draws the PDs that were not taken.
void completeDemand(DemandRead& read, std::optional<long> prior);

} // namespace quarterstep
