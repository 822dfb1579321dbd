// SPDX-License-Identifier: GPL-3.0-or-later
// What a chart would say for a refraction: expected loss log10(1 + b^2) (Blendowske R, Optom Vis Sci 2015),
// after as much hyperopia as a person of that age accommodates away, rounded to a line of the chart.
#pragma once

#include <string>

namespace quarterstep::samples
{

/// Quarter dioptres; cylinder never positive.
struct Refraction {
    int sphere = 0;
    int cylinder = 0;
    int axis = 180;

    [[nodiscard]] double meanSphere() const { return 0.25 * sphere + 0.125 * cylinder; }
};

/// Half of the least amplitude expected at this age, 15 - age/4 (Hofstetter HW, Optom World 1950, as commonly
/// quoted): what is kept up without strain. Never negative, at most 4 D.
[[nodiscard]] double comfortableAccommodation(double age);
/// logMAR without spectacles of an eye that reaches `best` with them.
[[nodiscard]] double unaidedDistance(const Refraction& eye, double age, double best);
/// logMAR at the near distance through a pair that leaves `blur` dioptres.
[[nodiscard]] double nearWithBlur(double blur, double best);

/// The line of the chart nearest to this logMAR: "6/9", "3/60", "CF 1 m".
[[nodiscard]] std::string distanceLine(double logMar);
/// The print size nearest to this logMAR at 40 cm: "N8" is 0.4.
[[nodiscard]] std::string nearLine(double logMar);
[[nodiscard]] std::string written(const Refraction& eye);
[[nodiscard]] std::string writtenQuarters(int quarters);

} // namespace quarterstep::samples
