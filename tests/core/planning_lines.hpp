// SPDX-License-Identifier: GPL-3.0-or-later
// Lines of people drawn at random, the same on every machine: needs and powers on a quarter-dioptre grid, so
// that many pairs are equally good, as in a real box.
#pragma once

#include "core/planning/waiting_line.hpp"

#include <random>

namespace quarterstep::check
{

struct DrawnLine {
    std::vector<Waiting> people;
    std::vector<int> available;
};

struct DrawnSize {
    int people = 5;
    int pairs = 4;     ///< ready-made resources
    int lenses = 0;    ///< lens resources
    int frames = 0;    ///< frame resources
    double pieces = 1; ///< mean pieces a resource
    int mostWays = 60; ///< ways to serve one person, at most
};

[[nodiscard]] DrawnLine drawLine(std::uint32_t seed, const DrawnSize& size);

/// Needs in powers and widths, as many lines as asked for over the same powers and widths: about one line in
/// twenty does for somebody. `pieces`: of all lines together, for each person.
[[nodiscard]] DrawnLine drawWideLine(std::uint32_t seed, int people, int lines, double pieces);

/// Served and least loss (1e-4 logMAR) by trying everything.
struct Exhaustive {
    int served = 0;
    long loss = 0;
};
[[nodiscard]] Exhaustive tryEverything(const DrawnLine& line);

/// Loss of a plan in whole units.
[[nodiscard]] long lossOfPlan(const DrawnLine& line, const LinePlan& plan);

/// Whether no piece is given twice and everybody gets one of their own choices.
[[nodiscard]] bool canBeDone(const DrawnLine& line, const LinePlan& plan);

} // namespace quarterstep::check
