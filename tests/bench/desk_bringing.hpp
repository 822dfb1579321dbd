// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace quarterstep
{

/// Brings 10,000 rows in at the desk with the watch over its loop on; prints as `bench` does. Returns whether
/// no frame was longer than people see.
[[nodiscard]] bool bringsInFluently(bool inShort);

} // namespace quarterstep
