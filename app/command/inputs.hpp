// SPDX-License-Identifier: GPL-3.0-or-later
// What the reading verbs work on: stock and rules, from a camp folder or from files alone, and the table.
#pragma once

#include "app/command/command_line.hpp"
#include "app/session/camp.hpp"

namespace quarterstep
{

struct Box {
    std::vector<StockLine> stock;
    FittingRules rules;
};

/// Opens --camp for reading, or --stock and --rules. What was found on the way is told. Throws Error (2, 3,
/// 4).
[[nodiscard]] Box openBox(const CommandLine& line, Output& out);

/// Reads the table named first among the arguments, with today's date. Findings of the file and of every row
/// are told. Throws FilesNotRead when the table as a whole is unusable.
[[nodiscard]] PrescriptionTable readTable(const CommandLine& line, Output& out);

/// Ends a verb after its findings were told.
class FilesNotRead : public Error
{
  public:
    FilesNotRead() : Error({}, Exit::badData) {}
};

/// --form: minus when left out. Throws Error option-value (2).
[[nodiscard]] CylinderForm cylinderFormOf(const CommandLine& line);

/// Options of matching; an unknown --profile throws Error profile-unknown (2).
[[nodiscard]] MatchOptions matchOptions(const CommandLine& line, const FittingRules& rules);

} // namespace quarterstep
