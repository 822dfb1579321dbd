// SPDX-License-Identifier: GPL-3.0-or-later
// Random numbers that come out the same on every machine: integer arithmetic, and of floating point only
// + - * / and the square root, which IEEE 754 rounds exactly. No library logarithm, no library distribution.
// Sources: Steele GL, Lea D, Flood CH, OOPSLA 2014:453-472 (generator); Wichura MJ, Appl Stat
// 1988;37:477-484, AS 241 (inverse normal, the seven-figure form).
#pragma once

#include <cstdint>
#include <initializer_list>

namespace quarterstep::samples
{

class Random
{
  public:
    /// A stream of its own for each (sample, member), so that one more member does not change the others.
    Random(std::uint64_t sample, std::uint64_t member);

    /// Uniform in (0, 1), never an end.
    double uniform();
    /// Uniform whole number in [least, most].
    int between(int least, int most);
    bool chance(double probability);
    double normal(double mean, double deviation);
    /// Normal, drawn again until it lies within [least, most].
    double normalWithin(double mean, double deviation, double least, double most);
    double exponential(double mean);
    /// Index drawn with these weights.
    int pick(std::initializer_list<double> weights);
    template <class T>
    T oneOf(std::initializer_list<T> values)
    {
        return *(values.begin() + between(0, static_cast<int>(values.size()) - 1));
    }

  private:
    std::uint64_t next();
    std::uint64_t state_;
};

/// Natural logarithm of x > 0 by the series of the inverse hyperbolic tangent; absolute error below 1e-15
/// times (1 + |ln x|).
[[nodiscard]] double naturalLog(double x);
[[nodiscard]] double log10Of(double x);
/// The z with this share of a standard normal below it; share in (1e-10, 1 - 1e-10); about seven figures.
[[nodiscard]] double normalQuantile(double share);

} // namespace quarterstep::samples
