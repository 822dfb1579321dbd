// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers drawn from a seed, the same on every machine: SplitMix64 (Steele GL, Lea D, Flood CH, Fast
// splittable pseudorandom number generators, OOPSLA 2014).
#pragma once

#include <cmath>
#include <cstdint>
#include <vector>

namespace quarterstep
{

class Draw
{
  public:
    explicit Draw(std::uint64_t seed) : state_(seed) {}
    /// A stream of its own for each number.
    Draw(std::uint64_t seed, std::uint64_t stream) : state_(seed ^ (0xd1342543de82ef95ULL * (stream + 1)))
    {
        next();
    }

    std::uint64_t next()
    {
        std::uint64_t mixed = (state_ += 0x9e3779b97f4a7c15ULL);
        mixed = (mixed ^ (mixed >> 30)) * 0xbf58476d1ce4e5b9ULL;
        mixed = (mixed ^ (mixed >> 27)) * 0x94d049bb133111ebULL;
        return mixed ^ (mixed >> 31);
    }
    /// [0, 1)
    double unit() { return static_cast<double>(next() >> 11) * 0x1.0p-53; }
    /// 0 … most - 1; most > 0
    std::size_t below(std::size_t most) { return static_cast<std::size_t>(next() % most); }
    /// Standard normal, sum of twelve uniforms less six (exact arithmetic only; tails end at 6).
    double normal()
    {
        double sum = -6.0;
        for (int i = 0; i < 12; ++i)
            sum += unit();
        return sum;
    }

  private:
    std::uint64_t state_;
};

/// Draws places with given weights, by their running sum.
class WeightedDraw
{
  public:
    explicit WeightedDraw(const std::vector<double>& weights)
    {
        double sum = 0.0;
        for (const double weight : weights)
            sums_.push_back(sum += weight);
    }
    [[nodiscard]] std::size_t place(Draw& draw) const
    {
        const double at = draw.unit() * sums_.back();
        std::size_t low = 0;
        std::size_t high = sums_.size() - 1;
        while (low < high) {
            const auto middle = (low + high) / 2;
            if (sums_[middle] > at)
                high = middle;
            else
                low = middle + 1;
        }
        return low;
    }

  private:
    std::vector<double> sums_;
};

} // namespace quarterstep
