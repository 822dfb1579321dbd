// SPDX-License-Identifier: GPL-3.0-or-later
// What the files of the slip share.
#pragma once

#include "core/auditing/slip.hpp"

namespace quarterstep
{

/// A final prescription, distance, as a hypothesis has it.
using Finals = PerEye<SpheroCylinder>;

/// One way in which the record may have come about.
struct EntryHypothesis {
    SlipMember member;
    std::optional<Finals> truth; ///< empty: the truth is not known, `member.witnesses` is set already
    std::string other;           ///< entry it came from
};

/// Every entry slip that would have changed this record; their witnesses are not worked out yet.
[[nodiscard]] std::vector<EntryHypothesis> entryHypotheses(const JudgedHandOver& judged,
                                                           const SlipScene& scene, const SlipModel& model);

/// Log of the density of what was measured beside the record, if this is the truth. `far` counts the squared
/// distance in SDs of the worst eye.
struct WitnessFit {
    double logDensity = 0.0;
    double logBeside = 0.0; ///< the part of own pair and acuity
    double worst = 0.0;
    bool any = false;
};
[[nodiscard]] WitnessFit witnessesOf(const JudgedHandOver& judged, const Finals& truth,
                                     const SlipModel& model);
/// The same where nothing is known of the truth of `eye` but that it is near `centre` within these SDs.
[[nodiscard]] double logDensityAround(const PersonRecord& record, Eye eye, const PowerVector& centre,
                                      double spreadM, double spreadJ);

[[nodiscard]] Finals finalsOf(const PersonRecord& record);
[[nodiscard]] std::string finalsText(const Finals& finals);
/// Whether two finals are the same truth: every component of both eyes within 0.06 D.
[[nodiscard]] bool sameTruth(const Finals& one, const Finals& other);

/// Classes of picking slips; their members' pair likelihoods are against that of the null.
[[nodiscard]] std::vector<SlipClass> pickClasses(const JudgedHandOver& judged, const SlipScene& scene,
                                                 const SlipModel& model);

} // namespace quarterstep
