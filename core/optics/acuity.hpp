// SPDX-License-Identifier: GPL-3.0-or-later
// Visual acuity: as recorded, with its logMAR. A line is 0.1 logMAR.
// Sources: ISO 8596; Holladay JT, J Cataract Refract Surg 2004;30:287-290 (counting fingers, hand
// movements).
#pragma once

#include "core/finding.hpp"

#include <optional>
#include <string>

namespace quarterstep
{

/// Distance acuity of one eye. logMar is empty for light perception and none, which have no number.
struct Acuity {
    std::optional<double> logMar;
    std::string asRecorded;
    bool operator==(const Acuity&) const = default;
};

/// Near acuity: print size in N points (M × 8) at the distance read.
struct NearAcuity {
    double points = 0.0;
    std::optional<double> distanceMm;
    std::string asRecorded;
    bool operator==(const NearAcuity&) const = default;
};

/// Reads 6/9, 20/30, 3/60, 6/9-2 (suffix kept, no number), "dec 0.5", "0.5 decimal", "logMAR 0.2", CF 2 m or
/// counting fingers (2.0), HM (3.0), PL or LP, NPL or NLP. A bare number is refused: it does not say its
/// scale.
[[nodiscard]] Parsed<Acuity> parseAcuity(const std::string& text);
/// Reads N6, N 8, M 0.8, 0.8M, with "at 40 cm" after it if wanted.
[[nodiscard]] Parsed<NearAcuity> parseNearAcuity(const std::string& text);
/// logMAR = -log10(decimal), and back; decimal above 0 (ISO 8596).
[[nodiscard]] double logMarFromDecimal(double decimal);
[[nodiscard]] double decimalFromLogMar(double logMar);
/// Denominator of 6/x and 20/x.
[[nodiscard]] double snellenDenominator(double logMar, double numerator);

/// Expected loss in logMAR from blur b (D): log10(1 + b^2). Model: Blendowske R, Optom Vis Sci 2015
/// (PMID 25955640); valid at low blur, no axis or pupil term.
[[nodiscard]] double expectedLoss(double blur);

} // namespace quarterstep
