// SPDX-License-Identifier: GPL-3.0-or-later
// Acuity on other scales, its mean, and models of the acuity lost by blur, side by side.
// Source of means: Holladay JT, J Cataract Refract Surg 2004;30:287-290. Sources of models: at each.
#pragma once

#include "core/finding.hpp"
#include "core/optics/power_vector.hpp"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace quarterstep
{

/// Letters of the visual acuity rating: 100 - 50 logMAR (100 = 6/6); a letter is 0.02 logMAR. Any finite
/// logMAR.
[[nodiscard]] double lettersFromLogMar(double logMar);
[[nodiscard]] double logMarFromLetters(double letters);
/// LogMAR of a line of `lettersInLine` letters with `missed` letters missed (negative: read beyond it).
[[nodiscard]] double logMarWithLetters(double lineLogMar, int missed, int lettersInLine);

/// Mean acuity: the mean of logMAR, which is the geometric mean of the angles. Empty for no values.
[[nodiscard]] std::optional<double> meanLogMar(const std::vector<double>& logMars);
/// Geometric mean of decimal acuities (all > 0). Empty for no values or a value not above zero.
[[nodiscard]] std::optional<double> meanDecimal(const std::vector<double>& decimals);

/// Expected loss of distance acuity, logMAR, from least to most (equal where a model gives one number).
struct LossRange {
    double least = 0.0;
    double most = 0.0;
};

/// A model of the acuity lost by an uncorrected error. The sources disagree by 0.1 to 0.4 logMAR: name the
/// model.
struct BlurModel {
    const char* name;       ///< stable, for machines
    Sentence rule;          ///< formula and what it holds for
    const char* source;     ///< author, journal; or "common practice"
    bool usedForSuggesting; ///< the one in the cost of a pair
    /// Loss from an error; empty where the model says nothing about it.
    std::optional<LossRange> (*loss)(const PowerVector& error);
};

/// All models, the one used for suggesting first.
[[nodiscard]] std::span<const BlurModel> blurModels();

} // namespace quarterstep
