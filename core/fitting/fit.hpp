// SPDX-License-Identifier: GPL-3.0-or-later
// How well one pair serves one need: error = supplied - needed per eye at the wearing plane, every criterion
// with what was measured, its limit, band and source. The only judge of fit: matching, planning and audit all
// use it.
#pragma once

#include "core/fitting/fitting_rules.hpp"
#include "core/fitting/prescription.hpp"
#include "core/optics/covariance.hpp"

namespace quarterstep
{

/// What one purpose asks for. Made by needFor (need.hpp).
struct EyeNeed {
    bool seeing = true;
    SpheroCylinder power;                    ///< at the stock's vertex distance
    std::optional<SpheroCylinder> nearPower; ///< bifocal only
    EyePrism prism;                          ///< prescribed
    double addition = 0.0;      ///< of the purpose, D; near by trial: near power less distance power
    double accommodation = 0.0; ///< usable without strain at this age, D
    Covariance scatter;         ///< of `power` as measured, D² (fit_chance.hpp)
    const char* scatterSource = "";
};

struct Need {
    Purpose purpose = Purpose::distance; ///< never unstated or both
    PerEye<EyeNeed> eyes;
    Range pd;                       ///< binocular, at this purpose; least == most when known
    PerEye<double> share{0.5, 0.5}; ///< part of the PD on each side of the nose
    bool pdKnown = false;
    bool pdComputed = false; ///< near or intermediate from the distance PD
    /// Assumed for tables without PD (coverage): each pair's centres are this person's PD. Never for
    /// hand-over.
    bool pdFollowsCentres = false;
    std::optional<double> age;
    bool childRules = false;
    bool cycloplegic = false;
    bool vertexRecorded = false;
    std::string frameSize;
    std::optional<double> meanSphereLoss; ///< logMAR, worst eye: mean-sphere acuity against best

    [[nodiscard]] bool nearWork() const
    {
        return purpose == Purpose::near || purpose == Purpose::intermediate;
    }
    [[nodiscard]] bool pairLevel() const { return eyes.right.seeing && eyes.left.seeing; }
};

/// What a pair supplies. Made from stock lines, from bare eyes or from the person's own pair.
struct Supply {
    PerEye<SpheroCylinder> power;
    std::optional<Dioptres> bifocalAddition;
    std::optional<Range> centres; ///< mm; empty = none (bare eyes)
    bool centresAssumed = false;
    std::optional<double> heightsDiffer; ///< mm, right above left
    bool equalPair = true;               ///< sold as one power; false for separate lenses and unequal pairs
    std::string frameSize;
};

enum class Band { fits, caution, onTrial, fails, shown, notMeasured };

/// A measurement that was not taken and decides.
enum class Missing { nothing, pd, vertex };

/// One criterion at work. measured and limit are sizes in the criterion's unit; `eye` empty = pair level.
struct CriterionResult {
    Criterion criterion{};
    std::optional<Eye> eye;
    double measured = 0.0;
    std::optional<double> worstOf; ///< best end when `measured` is the worst end of an interval
    std::optional<double> limit;   ///< the limit passed or kept to, of the band told
    Band band = Band::shown;
    std::string source; ///< filled by nameSources
    Sentence note;
    Missing missing = Missing::nothing; ///< what, if measured, might turn a failure round
};

struct EyeFit {
    PowerVector needed;
    PowerVector supplied;
    PowerVector error; ///< supplied - needed
    double blur = 0.0;
    double loss = 0.0;                    ///< expected, logMAR, Blendowske
    std::optional<PowerVector> nearError; ///< bifocal
};

struct Fit {
    PerEye<std::optional<EyeFit>> eyes;        ///< empty for an eye not judged
    PairPrism prism;                           ///< total error at the nominal PD
    std::optional<Range> horizontalPrismRange; ///< when PD or centres are an interval
    std::vector<CriterionResult> criteria;
    Band band = Band::fits; ///< worst of all
    int cautions = 0;
    double cost = 0.0;             ///< signed cost of app/help/matching.md, sum over seeing eyes
    int worseSideEyes = 0;         ///< seeing eyes on the direction to avoid
    double prismSize = 0.0;        ///< horizontal prism as measured, at its worst end
    double sizeSteps = 0.0;        ///< frame size classes off
    double readingLevelPair = 0.0; ///< vertical prism 10 mm below the centres, and of the full correction
    double readingLevelFull = 0.0;

    [[nodiscard]] bool acceptable() const { return band == Band::fits || band == Band::caution; }
    [[nodiscard]] bool onTrial() const { return band == Band::onTrial; }
    [[nodiscard]] const CriterionResult* firstWith(Band wanted) const
    {
        for (const auto& result : criteria)
            if (result.band == wanted)
                return &result;
        return nullptr;
    }
};

/// Acuity typed with the very pair on the face; decides an on-trial pair.
struct TrialAcuity {
    PerEye<std::optional<Acuity>> distance;
    std::optional<NearAcuity> near;
    PerEye<std::optional<Acuity>> best; ///< what "within one line of best" compares with
};

/// Fills the source of every criterion from the profile (left out of judge, which runs for every pair in the
/// box).
void nameSources(Fit& fit, const Profile& profile);

/// Where the need takes every pair as centred (`pdFollowsCentres`) and the centres are known: puts the PD and
/// the centres at the middle of the centres. Nothing otherwise.
void followCentres(Need& need, Supply& supply);

/// Judges a supply against a need under a profile. Pure; never throws.
[[nodiscard]] Fit judge(const Need& need, const Supply& supply, const Profile& profile,
                        const TrialAcuity* trial = nullptr);

/// What a search knows of a supply before it is judged, to the last bit as `judge` would find it.
struct KnownSupply {
    PerEye<PowerVector> power;
    double cost = 0.0; ///< both eyes
};
/// The verdict alone, for a search that judges thousands: band, cost and what the order of candidates looks
/// at are those of `judge`; criteria and expected losses are left out. Of a pair that fails only band and
/// cost are told, since nothing is measured after the first failure.
void judgeBriefly(Fit& fit, const Need& need, const Supply& supply, const Profile& profile,
                  const KnownSupply* known = nullptr);

/// Dioptres of too much minus that accommodation forgives at this need's distance, >= 0.
[[nodiscard]] double forgivenMinus(const Need& need);
/// Cost of an error at distance or near, given what is forgiven.
[[nodiscard]] double costOfError(PowerVector error, double forgiven);
/// What one eye adds to Fit::cost with this power, to the last bit: with e = supplied - needed and d =
/// min(forgivenMinus, -e.M) where e.M < 0, at least log10(1 + (M + d)^2 + J0^2 + J45^2).
[[nodiscard]] double costOf(const Need& need, Eye eye, const SpheroCylinder& power,
                            std::optional<Dioptres> addition);

} // namespace quarterstep
