// SPDX-License-Identifier: GPL-3.0-or-later
// Hand-overs with known slips: real refractions of the public survey, handed over as matching suggests, and
// slips put in at known rates. Statistical use only, see tests/open_data/NOTICE. What the survey does not
// have is made up: PD uniform 56 to 68 mm, a final that scatters about the reading (SD 0.25 D in M, 0.12 D in
// J0 and J45, common practice, rounded to 0.25 D and 5 degrees), an addition by age, a prescriber.
#pragma once

#include "core/auditing/slip.hpp"

#include <random>

namespace quarterstep::testing
{

struct TruthCase {
    JudgedHandOver judged;
    SlipKind slip = SlipKind::none; ///< put in
    std::optional<Eye> eye;         ///< entry slips of one eye
    double moved = 0.0; ///< D: most in M, J0 or J45 of an eye against the pair that was to be given
    std::optional<std::size_t> partner; ///< pairs exchanged: index of the other
};

struct TruthPlan {
    unsigned seed = 1;
    double rate = 0.0; ///< of each slip
    int rounds = 1;    ///< how often the survey is gone through
};

/// A box with every quarter from -6 to +6 in three widths of centres, and lenses with and without cylinder.
[[nodiscard]] const std::vector<StockLine>& truthBox();
/// The slips that are put in.
[[nodiscard]] const std::vector<SlipKind>& slipsPutIn();

[[nodiscard]] std::vector<TruthCase> injectedTruth(const TruthPlan& plan);

/// slipOf with the ten hand-overs before and after as neighbours.
[[nodiscard]] SlipAnswer answerTo(const std::vector<TruthCase>& cases, std::size_t which,
                                  const SlipModel& model);

} // namespace quarterstep::testing
