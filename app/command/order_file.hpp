// SPDX-License-Identifier: GPL-3.0-or-later
// order file [TABLE]: the order of one person as a file for a laboratory, from a table or from the ledger.
#pragma once

#include "app/command/command_line.hpp"

namespace quarterstep
{

/// The words of the line without the first, as verbs take them that read a TABLE.
[[nodiscard]] CommandLine tableOf(const CommandLine& line);
int writeOrder(const CommandLine& line, Output& out);

} // namespace quarterstep
