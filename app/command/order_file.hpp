// SPDX-License-Identifier: GPL-3.0-or-later
// order file TABLE: the order of one person as a file for a laboratory.
#pragma once

#include "app/command/command_line.hpp"

namespace quarterstep
{

int writeOrder(const CommandLine& line, Output& out);

} // namespace quarterstep
