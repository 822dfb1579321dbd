// SPDX-License-Identifier: GPL-3.0-or-later
// Hand-overs with known slips: real refractions of the public survey, handed over as matching suggests, and
// slips put in at known rates. Statistical use only, see tests/open_data/NOTICE. What the survey does not
// have is made up: PD uniform 56 to 68 mm, a final that scatters about the reading (SD 0.25 D in M, 0.12 D in
// J0 and J45, common practice, rounded to 0.25 D and 5 degrees), an addition by age, a prescriber. Witnesses
// are there for some only: near PD and acuity with the pair for one in two, the own pair's addition for three
// in five, a focimeter reading of the pair for three in ten; the box is counted on every second day of 60
// hand-overs.
#pragma once

#include "core/auditing/slip.hpp"

#include <random>

namespace quarterstep::testing
{

struct TruthCase {
    JudgedHandOver judged;
    SlipKind slip = SlipKind::none; ///< put in
    std::optional<Eye> eye;         ///< entry slips of one eye
    double moved = 0.0;    ///< D: most in M, J0 or J45 of an eye against the pair that was to be given
    bool witnessed = true; ///< whether anything measured speaks of this kind of slip
    PerEye<SpheroCylinder> onFace;      ///< what was really given
    std::vector<std::string> gone;      ///< lines of which a piece really left the box
    std::optional<std::size_t> partner; ///< pairs exchanged: index of the other
};

struct TruthPlan {
    unsigned seed = 1;
    double rate = 0.0;   ///< of each slip
    int rounds = 1;      ///< how often the survey is gone through
    bool uneven = false; ///< rates from a quarter to seven quarters of `rate` instead
};
[[nodiscard]] double rateOf(const TruthPlan& plan, std::size_t place);

/// Hand-overs, and what counts and returns say of the lines.
struct Truths {
    std::vector<TruthCase> cases;
    LineHistory lines;
};

/// A box with every quarter from -6 to +6 in three widths of centres, and lenses with and without cylinder.
[[nodiscard]] const std::vector<StockLine>& truthBox();
/// Everybody of the survey with a reading of both eyes.
[[nodiscard]] const std::vector<PersonRecord>& surveyPeople();
[[nodiscard]] double rounded(double value, double step);
/// Written as the trade writes: quarters, whole five degrees, minus cylinder.
[[nodiscard]] SpheroCylinder writtenAs(const PowerVector& vector);
/// The slips that are put in.
[[nodiscard]] const std::vector<SlipKind>& slipsPutIn();

[[nodiscard]] Truths injectedTruth(const TruthPlan& plan);

/// slipOf with the ten hand-overs of the day before and after as neighbours.
[[nodiscard]] SlipAnswer answerTo(const Truths& truths, std::size_t which, const SlipModel& model);

} // namespace quarterstep::testing
