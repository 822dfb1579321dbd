// SPDX-License-Identifier: GPL-3.0-or-later
// What a table leaves out and the keeper lets be taken as given (--assume): shared by coverage, pack and
// simulate.
#pragma once

#include "app/command/command_line.hpp"
#include "app/session/coverage.hpp"

namespace quarterstep
{

/// Throws Error option-value (2).
[[nodiscard]] CoverageAssumptions assumptionsOf(const CommandLine& line);

} // namespace quarterstep
