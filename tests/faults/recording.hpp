// SPDX-License-Identifier: GPL-3.0-or-later
// What the recorder writes and the replayer reads: one fixed head a call, then path and data.
#pragma once

#include <cstdint>

namespace quarterstep::test
{

enum class Call : std::uint32_t { open, write, truncate, sync, rename, unlink, close, mark };

struct CallHead {
    Call call = Call::mark;
    std::int32_t descriptor = -1;
    std::uint64_t offset = 0;     ///< of a write; length of a truncation; flags of an opening
    std::uint32_t pathLength = 0; ///< opened, removed or old name
    std::uint32_t dataLength = 0; ///< bytes written, or the new name
};

} // namespace quarterstep::test
