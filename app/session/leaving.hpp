// SPDX-License-Identifier: GPL-3.0-or-later
// What leaves a camp: a copy of the folder, tables at three levels of privacy; and what comes from another.
#pragma once

#include "app/session/camp.hpp"
#include "inventory/store/merge.hpp"

namespace quarterstep
{

/// Copies stock.yaml, rules.yaml and the ledger to a new folder that only its owner reads; the camp may be
/// open elsewhere. Returns the names of the files. Throws Error file-exists (3), file-unwritable (4),
/// ledger-full (4); then nothing is left behind.
std::vector<std::string> exportFolder(const Camp& camp, const std::string& target);

enum class ExportLevel {
    aggregate, ///< counts, small ones hidden
    rows,      ///< one row an entry, persons by numbers made for this table, the day alone, no own words
    full       ///< everything, with a reason that stays in the ledger
};

struct ExportTable {
    std::vector<std::string> columns;
    std::vector<std::vector<std::string>> rows;
};

[[nodiscard]] ExportTable exportTable(const Camp& camp, ExportLevel level);
/// CSV, never taken for formulas.
[[nodiscard]] std::string csvOf(const ExportTable& table);
/// The entry that says who exported everything, and why.
[[nodiscard]] Entry exportEntry(const std::string& actor, const std::string& reason);

/// Merges another ledger (a file, an address, or a camp folder) into the camp's and brings stock.yaml up to
/// it.
MergeReport importLedger(Camp& camp, const std::string& path, bool dryRun);

/// Moves the ledger of a camp folder to a shared one that was set up, or back to a new file in the folder,
/// and lets stock.yaml name it. Returns the number of entries. The old one stays as it is and is used from
/// here no more; other stations of a shared one are not moved. Throws what Ledger::moveTo throws, and
/// ledger-not-plain (3).
std::int64_t moveLedger(const std::string& folder, const std::string& target, bool dryRun);

/// Copies of the ledger that lie beside it and are not reached by forgetting: names of files.
[[nodiscard]] std::vector<std::string> copiesBeside(const Camp& camp);

} // namespace quarterstep
