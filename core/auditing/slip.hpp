// SPDX-License-Identifier: GPL-3.0-or-later
// Which slip explains a hand-over that is at odds with itself. An entry slip: the record is wrong, the pair
// fits the record; it needs a witness beside the record. A picking slip: the record is right, the pair is
// another one than would be suggested. The null: the record and the pair are meant as they are.
//
// Posterior of a hypothesis = prior x P(witnesses | truth it implies) x P(pair | hypothesis), over their sum.
// Hypotheses that imply the same truth (to 0.06 D in every component of both eyes) or the same intended pair
// cannot be told apart: they form one class, and probabilities are told per class with its members.
//
// Witnesses of the record: objective reading, own pair (powers and addition), acuity with the pair against
// the predicted, near PD beside the distance PD, the card read again. Witnesses of the pair: the pair against
// the fit, a focimeter reading of it, acuity with it, neighbours in time, counts of the lines, pieces that
// came back, other hand-overs of the line.
#pragma once

#include "core/auditing/line_history.hpp"
#include "core/auditing/mismatch.hpp"

namespace quarterstep
{

enum class SlipKind {
    none, ///< meant as it is
    // entry slips
    sphereSign,
    cylinderSign,
    halfTranspositionUnturned, ///< S + C, -C, axis not turned
    halfTranspositionTurned,   ///< sphere kept, -C, axis turned
    axisTurned90,
    axisMirrored,
    axisDigits,
    columnsExchanged,
    decimalShift,
    powerMisread,
    additionOnDistance,
    eyesSwapped,
    rightIntoLeft,
    previousPerson,
    additionLeftOut,
    additionAsNearPower,
    monocularPd,
    nearPdAsDistance,
    otherEntry, ///< the record is wrong in a way that is none of these
    // picking slips
    neighbouringBin,
    otherCentresOrSize,
    cylinderIgnored,
    cylinderAddedWhole,
    cylinderSubtracted,
    otherPurpose,
    pairsExchanged,
    lensesExchanged,
    axisTurnedMounting,
    returnedWrongBin,
    otherLineScanned,
    lineOffLabel,
    recordedTwice,
    otherPick ///< another pair than meant, in no way listed
};
inline constexpr std::size_t slipKinds = static_cast<std::size_t>(SlipKind::otherPick) + 1; ///< in all

struct SlipInfo {
    SlipKind kind;
    const char* word;  ///< stable, in JSON and in the file of priors
    const char* words; ///< QS_SAY("core", …): about the record or the pair, never about whoever made it
    bool entry;
};
[[nodiscard]] const std::array<SlipInfo, slipKinds>& slipTable(); ///< in the order of SlipKind
[[nodiscard]] const SlipInfo& infoOf(SlipKind kind);

/// What the arithmetic rests on; read from inventory/defaults/audit.yaml, where each has its source.
struct SlipModel {
    std::array<double, slipKinds> prior{}; ///< per hand-over; that of `none` is what the others leave
    double objectiveM = 0.35;              ///< SD of objective minus final, D
    double objectiveJ = 0.18;              ///< each of J0 and J45
    double farShare = 0.02;                ///< share of readings that are off by more, at three times the SD
    double wornM = 0.90;                   ///< SD of own pair minus final, D (own pairs are outdated)
    double wornJ = 0.40;
    double acuity = 0.12;       ///< SD of acuity typed minus predicted, logMAR
    double wornAddition = 0.60; ///< SD of the own pair's addition minus the final one, D
    double nearAcuity = 0.15;   ///< SD of near acuity typed minus predicted, logMAR
    double pd = 0.85;           ///< SD between two PD readings of one person, mm
    double focimeterM = 0.09;   ///< SD of a focimeter reading minus the label, D, where the label is right
    double focimeterJ = 0.08;   ///< each of J0 and J45, with the setting of the axis
    double cardWrong = 0.01;    ///< share of cards read again that are read wrongly
    double countDiffers = 0.05; ///< share of counts of a line that differ from the book for other reasons
    double secondPair = 0.003;  ///< share of hand-overs that repeat an earlier one within days on purpose
    double suggestedGiven =
        0.97; ///< share of hand-overs that give what would be suggested, where nothing slipped
    double outsideGiven = 0.002;    ///< share that give a pair outside a limit on purpose, without a reason
    double outsideWithReason = 0.9; ///< of pairs outside a limit with a reason: meant as they are
    double told = 0.5;              ///< a class is named in the report from this probability

    [[nodiscard]] double priorOf(SlipKind kind) const;
};

struct SlipMember {
    SlipKind kind{};
    std::optional<Eye> eye; ///< empty: both, or the pair
    double prior = 0.0;
    double witnesses = 1.0; ///< P(witnesses | this), densities against that of `none`
    double pair = 1.0;      ///< P(pair | this), against that of `none`
    [[nodiscard]] double weight() const { return prior * witnesses * pair; }
};

struct SlipClass {
    std::vector<SlipMember> members; ///< likeliest first; one of kind `none` is the null
    double probability = 0.0;
    std::string other; ///< entry of the other hand-over (pairs exchanged, previous person), or empty
    Sentence detail;   ///< what the record or the pair would have been

    [[nodiscard]] SlipKind kind() const { return members.front().kind; }
};

/// Classes by probability, the null among them. Empty when nothing speaks against the null: then nothing was
/// worked out.
struct SlipAnswer {
    std::vector<SlipClass> classes;
    bool witnessed = false;         ///< whether slips of the powers recorded could be tested at all
    bool additionWitnessed = false; ///< the same of an addition
    bool pdWitnessed = false;       ///< the same of the PD
    bool pairWitnessed = false;     ///< whether anything was read of the pair that was given

    [[nodiscard]] bool empty() const { return classes.empty(); }
    /// The class told in the report: the likeliest, when it is no null and likely enough.
    [[nodiscard]] const SlipClass* told(const SlipModel& model) const;
};

/// A hand-over to the same person for the same purpose before, within the days of a duplicate.
struct EarlierHandOver {
    std::string entry;
    std::int64_t atMs = 0;
    std::vector<Movement> movements;
};

/// What lies around a hand-over.
struct SlipScene {
    const JudgedHandOver* before = nullptr;  ///< the hand-over before, of another person
    std::vector<const JudgedHandOver*> near; ///< hand-overs close in time at the same site
    BoxThen box;                             ///< lines of the camp; counts do not matter here
    const Settings* settings = nullptr;
    const EarlierHandOver* earlier = nullptr;
    const LineHistory* lines = nullptr; ///< null: nothing is known of counts and returns
};
/// Every class of slips with its probability; empty where the record cannot be judged or nothing speaks up.
[[nodiscard]] SlipAnswer slipOf(const JudgedHandOver& judged, const SlipScene& scene, const SlipModel& model);

} // namespace quarterstep
