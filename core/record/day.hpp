// SPDX-License-Identifier: GPL-3.0-or-later
// A day in the milliseconds in which entries keep their time.
#pragma once

#include <cstdint>

namespace quarterstep
{

inline constexpr std::int64_t dayMs = 86'400'000;

} // namespace quarterstep
