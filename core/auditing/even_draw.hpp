// SPDX-License-Identifier: GPL-3.0-or-later
// Draws by lot, the same for the same seed on every machine. SplitMix64: Steele, Lea, Flood, OOPSLA
// 2014:453-472.
#pragma once

#include <cstdint>

namespace quarterstep
{

class EvenDraw
{
  public:
    explicit EvenDraw(std::uint64_t seed) : state_(seed) {}

    /// Even among 0 … most: what would lean is drawn again.
    std::uint64_t upTo(std::uint64_t most)
    {
        const std::uint64_t count = most + 1;
        const std::uint64_t fair = UINT64_MAX - UINT64_MAX % count;
        std::uint64_t draw = next();
        while (draw >= fair)
            draw = next();
        return draw % count;
    }

  private:
    std::uint64_t next()
    {
        state_ += 0x9E3779B97F4A7C15U;
        std::uint64_t mixed = state_;
        mixed = (mixed ^ (mixed >> 30U)) * 0xBF58476D1CE4E5B9U;
        mixed = (mixed ^ (mixed >> 27U)) * 0x94D049BB133111EBU;
        return mixed ^ (mixed >> 31U);
    }

    std::uint64_t state_;
};

} // namespace quarterstep
