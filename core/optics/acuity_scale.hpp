// SPDX-License-Identifier: GPL-3.0-or-later
// Acuity on the scale of letters, and models of the acuity lost by blur, side by side, each with its source.
#pragma once

#include "core/finding.hpp"
#include "core/optics/power_vector.hpp"

#include <optional>
#include <span>
#include <string>

namespace quarterstep
{

/// Letters of the visual acuity rating: 100 - 50 logMAR (100 = 6/6); a letter is 0.02 logMAR. Any finite
/// logMAR.
[[nodiscard]] double lettersFromLogMar(double logMar);

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
