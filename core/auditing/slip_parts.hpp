// SPDX-License-Identifier: GPL-3.0-or-later
// What the files of the slip share.
#pragma once

#include "core/auditing/slip.hpp"

namespace quarterstep
{

/// A final prescription, distance, as a hypothesis has it.
using Finals = PerEye<SpheroCylinder>;

/// What the record should have said, as a hypothesis has it.
struct Truth {
    Finals finals;
    PerEye<std::optional<double>> addition; ///< near power less distance power, D
    std::optional<double> pd;               ///< distance, both eyes together, mm
};
[[nodiscard]] Truth truthOf(const PersonRecord& record);
/// Whether two truths are the same: every component of both eyes and both additions within 0.06 D, PD within
/// 0.6 mm.
[[nodiscard]] bool sameTruth(const Truth& one, const Truth& other);
[[nodiscard]] bool sameFinals(const Finals& one, const Finals& other);

/// One way in which the record may have come about.
struct EntryHypothesis {
    SlipMember member;
    /// With their shares, 1 in all. Empty: the truth is not known, `member.witnesses` is the log of the
    /// density of the readings already.
    std::vector<std::pair<double, Truth>> truths;
    std::string other; ///< entry it came from
};

/// Every entry slip that would have changed this record; their witnesses are not worked out yet.
[[nodiscard]] std::vector<EntryHypothesis> entryHypotheses(const JudgedHandOver& judged,
                                                           const SlipScene& scene, const SlipModel& model);
/// Those of additions and of the PD among them.
void addNearHypotheses(const JudgedHandOver& judged, const SlipScene& scene, const SlipModel& model,
                       std::vector<EntryHypothesis>& all);

/// Log of the density of what was measured beside the record, if this is the truth.
struct WitnessFit {
    double logDensity = 0.0;
    double logBeside = 0.0; ///< all but the readings of the eyes and the card: what a slip of powers leaves
    double worst = 0.0;     ///< largest squared distance in SDs
    bool powers = false;    ///< whether anything speaks of the powers, the additions, the PD
    bool addition = false;
    bool pd = false;

    [[nodiscard]] bool any() const { return powers || addition || pd; }
};
/// @param onFace  the powers worn when acuity was typed
[[nodiscard]] WitnessFit witnessesOf(const JudgedHandOver& judged, const Truth& truth,
                                     const PerEye<SpheroCylinder>& onFace, const SlipModel& model);
/// Log of the density of the readings of one eye (objective and card) where nothing is known of its truth but
/// that it is near `centre` within these SDs.
[[nodiscard]] double logDensityAround(const JudgedHandOver& judged, Eye eye, const PowerVector& centre,
                                      double spreadM, double spreadJ, const SlipModel& model);
/// The same where this is the truth.
[[nodiscard]] double logDensityOfEye(const JudgedHandOver& judged, Eye eye, const PowerVector& truth,
                                     const SlipModel& model);

/// Squared distance in SDs of (M, J0, J45) from which the record is held against its slips: three records in
/// four lie below it (chi-squared, three degrees of freedom) and are left alone. The same for pairs.
inline constexpr double worthAsking = 4.0;

/// Density up to a constant.
[[nodiscard]] double gauss(double difference, double spread);
/// Log of the density in (M, J0, J45) up to a constant: most readings scatter, a few are off by more.
[[nodiscard]] double logScatter(const PowerVector& off, double m, double j, double farShare);
[[nodiscard]] double squaredDistance(const PowerVector& off, double m, double j);
/// Log of the density of the acuities typed, distance and near, with this pair on the face.
[[nodiscard]] WitnessFit acuitiesOf(const JudgedHandOver& judged, const Truth& truth,
                                    const PerEye<SpheroCylinder>& onFace, const SlipModel& model);

[[nodiscard]] std::string finalsText(const Finals& finals); ///< both eyes, as written
/// Finals, additions and PD as far as they are there.
[[nodiscard]] std::string truthText(const Truth& truth);

/// P(pair given | the person was to have what fits best), where `fit` is how the pair given fits.
[[nodiscard]] double givenWhenMeant(const JudgedHandOver& judged, bool suggested, const Fit& fit,
                                    const SlipModel& model);
inline constexpr double linesToPickFrom = 30.0; ///< of an ordinary box, within reach (common practice)

/// Whether two bins are side by side: one letter, numbers that differ by one ("C4", "C5").
[[nodiscard]] bool besides(const std::string& one, const std::string& other);

/// Log of the density of the readings of the pair, and of acuity with it, where the lenses marked are off
/// their labels in a way nobody knows and the others are right.
[[nodiscard]] double logOffLabel(const JudgedHandOver& judged, const Truth& recorded, PerEye<bool> off,
                                 const SlipModel& model);
/// What later quarantine of the line and readings of pairs given about then say of it: P(. | the piece was
/// off) against P(. | it was right).
[[nodiscard]] double lineOffFactor(const JudgedHandOver& judged, const SlipScene& scene,
                                   const std::string& line, const SlipModel& model);

/// P(count of the line | a slip makes it differ by this) against P(count | nothing happened to it).
[[nodiscard]] double countFactor(const SlipScene& scene, const std::string& line, std::int64_t atMs,
                                 int expected, const SlipModel& model);

/// Classes of picking slips; their members' pair likelihoods are against that of the null.
[[nodiscard]] std::vector<SlipClass> pickClasses(const JudgedHandOver& judged, const SlipScene& scene,
                                                 const SlipModel& model);
/// Classes in which the pair on the face is not the one of the record, or was given only once.
[[nodiscard]] std::vector<SlipClass> faceClasses(const JudgedHandOver& judged, const SlipScene& scene,
                                                 const SlipModel& model);
/// Whether counts or acuity can tell a pair scanned as another from another pair given.
[[nodiscard]] bool scanWitnessed(const JudgedHandOver& judged, const SlipScene& scene);

} // namespace quarterstep
