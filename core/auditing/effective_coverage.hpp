// SPDX-License-Identifier: GPL-3.0-or-later
// Effective refractive error coverage, an indicator of the World Health Organization (Global Health
// Observatory, indicator 3154): (a + b) / (a + b + c + d), all acuities for distance, better eye, limit 6/12.
// a: unaided worse than 6/12, comes with spectacles or contact lenses, sees 6/12 or better with them. b: had
// refractive surgery and sees 6/12 or better unaided. c: comes with them, sees worse than 6/12, and would see
// 6/12 with pinhole or a new refraction (under-met). d: has none, and would see 6/12 with one (unmet). Bourne
// R et al., Lancet Glob Health 2022;10:e1754-e1763 (met / (met + under-met + unmet)); McCormick I et al.,
// Ophthalmic Physiol Opt 2020;40:1-5 use the letters differently. It is defined for a sample of a population;
// of those who came to a camp it says how they came and how they left, and nothing about the district.
#pragma once

#include "core/fitting/prescription.hpp"

#include <optional>

namespace quarterstep
{

/// 6/12, logMAR; what is recorded as 6/12 is within it.
inline constexpr double goodSight = 0.3010299956639812;

/// Better-eye acuities of one person, logMAR. Empty: not taken.
struct SightOfPerson {
    std::optional<double> unaided;
    std::optional<double> corrected; ///< with what the person came with, or was given
    bool hasCorrection = false;      ///< for distance
    std::optional<double> best;      ///< with pinhole or refraction, the better of the two
    bool refractiveSurgery = false;  ///< no camp record holds it; told as such
};

enum class SightNeed {
    none,       ///< sees 6/12 unaided
    met,        ///< a or b
    underMet,   ///< c
    unmet,      ///< d
    otherCause, ///< no refraction reaches 6/12; not in the indicator
    unknown     ///< an acuity that decides was not taken
};
inline constexpr std::size_t sightNeeds = 6;
[[nodiscard]] SightNeed needOf(const SightOfPerson& person);

struct EffectiveCoverage {
    int count[sightNeeds] = {};
    void add(SightNeed need) { ++count[static_cast<std::size_t>(need)]; }
    [[nodiscard]] int of(SightNeed need) const { return count[static_cast<std::size_t>(need)]; }
    /// a + b + c + d
    [[nodiscard]] int inNeed() const
    {
        return of(SightNeed::met) + of(SightNeed::underMet) + of(SightNeed::unmet);
    }
    /// Empty when nobody known is in need.
    [[nodiscard]] std::optional<double> share() const;
};

/// The better of two eyes, logMAR; light perception and none, and an eye that is artificial or blind, see
/// worse than any figure. Empty where an eye that could be the better one was not measured: `limit` reached
/// by the known one is enough, since the better eye is then at least as good.
[[nodiscard]] std::optional<double> betterEyeIfKnown(const PersonRecord& person,
                                                     std::optional<Acuity> EyeAcuities::*which);

/// As the person came: unaided, own pair, pinhole or best.
[[nodiscard]] SightOfPerson sightBefore(const PersonRecord& person);

} // namespace quarterstep
