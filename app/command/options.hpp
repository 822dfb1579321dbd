// SPDX-License-Identifier: GPL-3.0-or-later
// Turns arguments into a CommandLine by the table of verbs.
#pragma once

#include "app/command/command_line.hpp"

#include "core/finding.hpp"

namespace quarterstep
{

/// Arguments without the program's name. `--help` and no arguments at all become the verb `help`; `--version`
/// the verb `version`. Throws Error with exit code 2: verb-unknown, option-unknown, option-value,
/// option-missing, arguments-missing, arguments-too-many.
[[nodiscard]] CommandLine parseCommandLine(const std::vector<std::string>& arguments);

} // namespace quarterstep
