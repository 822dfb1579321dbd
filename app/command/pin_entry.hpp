// SPDX-License-Identifier: GPL-3.0-or-later
// Asking for a PIN: from a file descriptor (--pin-fd), from QUARTERSTEP_PIN, or at the terminal without
// showing it; never from the command line, where others can read it.
#pragma once

#include "app/command/command_line.hpp"
#include "app/session/camp.hpp"
#include "app/session/pins.hpp"

namespace quarterstep
{

/// Asks for the PIN of the role for which this verb writes, when one is set. Throws Error pin-missing (2)
/// when none was given, pin-wrong (4).
void requirePin(const CommandLine& line, const Camp& camp);

/// --set-pin and --remove-pin. Once the supervisor has a PIN, it is that one which is asked for; before, the
/// present PIN of the role itself. Throws likewise; pin-form (3), option-value (2: no such role).
int settlePin(const CommandLine& line, Output& out);

} // namespace quarterstep
