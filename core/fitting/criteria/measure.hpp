// SPDX-License-Identifier: GPL-3.0-or-later
// What every criterion measures: one function each, called in the order of the table. Each appends its
// results to the fit; nothing else decides a band.
#pragma once

#include "core/fitting/fit.hpp"

#include <array>
#include <memory>
#include <type_traits>

namespace quarterstep
{

/// Inclusive limits hold within this, in the criterion's unit.
inline constexpr double limitTolerance = 1e-6;
/// "Within one line": charts print rounded steps (6/9 to 6/12 is 0.125), 6/6 to 6/9 (0.176) is more than a
/// line.
inline constexpr double oneLine = 0.13;
/// "Two lines or more": just under 0.2, so that 6/9.5 to 6/6 counts and 6/9 to 6/6 does not.
inline constexpr double twoLines = 0.195;

/// A CriterionResult without words: nothing in it asks for memory, since a search measures for thousands of
/// pairs.
struct Measured {
    Criterion criterion{};
    std::optional<Eye> eye;
    double measured = 0.0;
    std::optional<double> worstOf;
    std::optional<double> limit;
    Band band = Band::shown;
    const char* note = nullptr; ///< template of a Sentence; %1, where it has one, is the limit
    Missing missing = Missing::nothing;
};

/// Results in the order of the table: at most one an eye and criterion.
class Results
{
  public:
    Results() {} // NOLINT(modernize-use-equals-default): leaves the room as it is
    Measured& add() { return *std::construct_at(room_.data() + count_++); }
    [[nodiscard]] std::size_t size() const { return count_; }
    [[nodiscard]] const Measured* begin() const { return room_.data(); }
    [[nodiscard]] const Measured* end() const { return room_.data() + count_; }

  private:
    static_assert(std::is_trivially_destructible_v<Measured>);
    union {
        std::array<Measured, 2 * criterionCount> room_; ///< filled up to count_
    };
    std::size_t count_ = 0;
};

struct Case {
    const Need& need;
    const Supply& supply;
    const Profile& profile;
    const TrialAcuity* trial;
    const Fit& fit; ///< eyes and prism
    Results& results;

    [[nodiscard]] const CriterionRule& rule(Criterion criterion) const { return profile.of(criterion); }
};
/// Whether a size keeps to a limit: inclusive to 1e-6, unless the limit is open.
[[nodiscard]] bool within(double size, const Limit& limit);
/// The bands that count at this age; unknown age takes the older, stricter ones.
[[nodiscard]] const Bands& bandsAt(const CriterionRule& rule, std::optional<double> age);
/// Appends a result for `size`; band and limit follow from the bands (or `shown` when the rule is not
/// judged).
Measured& tell(const Case& c, Criterion criterion, std::optional<Eye> eye, double size, const Bands& bands,
               bool neverFails = false);
Measured& tell(const Case& c, Criterion criterion, std::optional<Eye> eye, double size);

/// Whether a prism of 0.25 or more, in either direction, is part of the need.
[[nodiscard]] bool prescribedPrism(const Need& need);
/// The criteria, in the order of the table; what each measures stands in app/help/matching.md, section 5.
void measureResidualCylinder(const Case& c);
void measureNeedDifference(const Case& c);
void measurePowerSize(const Case& c);
void measureBlur(const Case& c);
void measureTooPlus(const Case& c);
void measureTooMinus(const Case& c);
void measureSuppliedDifference(const Case& c);
void measureBalance(const Case& c);
void measureSuppliedCylinder(const Case& c);
void measureAxisTurn(const Case& c);
void measureHorizontalPrism(const Case& c);
void measureVerticalPrism(const Case& c);
void measureCentres(const Case& c);
void measureReadingLevel(const Case& c);
void measureFrameSize(const Case& c);
void measureNearBlur(const Case& c);
void measureNearTooPlus(const Case& c);
void measureNearTooMinus(const Case& c);
void measureSphereError(const Case& c);
void measureCylinderError(const Case& c);
void measureAxisError(const Case& c);
void measureMeanSphereAcuity(const Case& c);
void measureTrialAcuity(const Case& c);

} // namespace quarterstep
