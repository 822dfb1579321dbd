// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace quarterstep
{

/// A day at the desk on 5,000 lines: people, waiting line, stock, packing and audit; prints as `bench` does.
/// Returns whether no turn of the loop took longer than a frame may.
[[nodiscard]] bool worksFluently(bool inShort);

} // namespace quarterstep
