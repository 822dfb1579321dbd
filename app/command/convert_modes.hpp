// SPDX-License-Identifier: GPL-3.0-or-later
// What convert works out instead of texts: repeated readings, near additions, the centration of a frame, a
// thick lens.
#pragma once

#include "app/command/command_line.hpp"

namespace quarterstep
{

/// --readings FILE [--finals TABLE]: each eye summed up.
int convertReadings(const CommandLine& line, Output& out);
/// --age YEARS and --amplitude DIOPTRES: additions by each model, with their spread.
int convertNearAdditions(const CommandLine& line, Output& out);
/// --box LENS BETWEEN PD: decentration and near centration.
int convertBox(const CommandLine& line, Output& out);
/// --surfaces FRONT BACK MM INDEX: back, front and nominal power.
int convertSurfaces(const CommandLine& line, Output& out);

/// Working distance of --working, mm; 400 when left out. Throws Error working-distance (2).
[[nodiscard]] double workingDistance(const CommandLine& line);

} // namespace quarterstep
