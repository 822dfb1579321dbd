// SPDX-License-Identifier: GPL-3.0-or-later
// The one way in which the desk carries out what somebody asked for: whatever goes wrong becomes an inline
// message with its code, and no exception reaches the event loop.
#pragma once

#include <functional>

namespace quarterstep
{

class MessageBar;

/// Runs `command`; returns whether it ended without an error. While another program holds the ledger it is
/// run again for up to ten seconds, with the window alive: a command must do nothing before it writes, or
/// nothing that cannot be done twice.
bool runCommand(MessageBar& messages, const std::function<void()>& command);

} // namespace quarterstep
