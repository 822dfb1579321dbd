// SPDX-License-Identifier: GPL-3.0-or-later
// One hand-over judged again by the fit that matching uses, under the rules of the time and the stock of the
// moment, and what is to be said of it. Sentences speak of the record, never of whoever made it.
#pragma once

#include "core/auditing/hand_over_facts.hpp"
#include "core/fitting/recommendation.hpp"

#include <array>
#include <functional>

namespace quarterstep
{

/// What an audit may find. Words, meaning and what to do next: auditClasses().
enum class AuditClass {
    outsideWithoutReason,
    outsideWithReason,
    betterPairInBox,
    offLabel,
    acuityWorse,
    onTrialWithoutAcuity,
    notNeeded,
    checksNotRecorded,
    centresNotMeasured,
    quarantinedLine,
    interimNotReplaced,
    orderNotCollected,
    letterNotWritten,
    duplicateHandOver,
    correctionsClustered,
    countDifference,
    witnessAgainstRecord, ///< a slip is likely although the pair fits the record
    verdictDiffers,       ///< judged again, the entry says something else
    rulesMissing,
    recordMissing,
    fromTheFuture
};
inline constexpr std::size_t auditClassCount = static_cast<std::size_t>(AuditClass::fromTheFuture) + 1;

/// Whom the next step belongs to when a class piles up (protocol of the quality of refractive error care,
/// phase 7).
enum class NextStep { refraction, dispensing, bin, supplier, stock, followUp, record };

struct AuditClassInfo {
    AuditClass kind;
    const char* word;  ///< stable, in JSON
    const char* words; ///< QS_SAY("core", …), short
    const char* next;  ///< QS_SAY("core", …), what to do
    NextStep step;
    bool mismatch; ///< counts as a mismatch of person and pair in rates
};
[[nodiscard]] const std::array<AuditClassInfo, auditClassCount>& auditClasses(); ///< in their order
[[nodiscard]] const AuditClassInfo& infoOf(AuditClass kind);

struct AuditFinding {
    std::string entry;
    AuditClass kind{};
    Sentence detail;
};
using FindingSink = std::function<void(AuditFinding)>;

/// When something is worth telling. Sources stand in inventory/defaults/audit.yaml.
struct AuditThresholds {
    double regret = 0.10;         ///< logMAR over the seeing eyes that a pair in the box would have saved
    double acuityShortfall = 0.2; ///< logMAR worse than predicted
    double collectDays = 28;      ///< an order that waits to be collected
    double interimDays = 56;      ///< an interim pair that waits for its order
    double letterDays = 1;        ///< a letter of referral that was not written
    double duplicateDays = 7;     ///< a second hand-over for the same purpose
    double correctionsADay = 3;   ///< taken back by one person on one day
    double offLabel = 0.13;       ///< D: a reading of the pair away from its label, in M, J0 or J45
};

/// One hand-over, judged again.
struct JudgedHandOver {
    HandOverFacts facts;
    const Profile* profile = nullptr; ///< of the rules of the time; null when they are missing
    std::optional<Need> need;
    std::optional<Fit> fit;
    bool nothingNeeded = false;
    std::optional<Candidate>
        best; ///< acceptable, from what was in the box; looked for only where it can matter
    std::vector<std::string> bestLines;
    std::vector<std::string> bestBins;
    std::size_t acceptableGroups = 0; ///< of the short list behind `best`
    bool suggested = false;           ///< given what would be suggested, or its equal
    std::vector<AuditFinding> findings;

    [[nodiscard]] bool outside() const { return fit && fit->band == Band::fails; }
    [[nodiscard]] bool mismatch() const;
};

struct BoxThen {
    std::span<const StockLine> lines; ///< counts as they were before the hand-over
    const StockIndex* index = nullptr;
};

/// Judges under `rules`, which are those of the entry's hash (null: missing, a finding names the hash).
[[nodiscard]] JudgedHandOver judgeAgain(HandOverFacts facts, const FittingRules* rules, const BoxThen& box,
                                        const AuditThresholds& thresholds);

/// Whether a fit is what would be suggested where `best` is the best: same step of cost, no more cautions, no
/// more prism.
[[nodiscard]] bool asGoodAs(const Need& need, const Profile& profile, const Fit& fit, const Fit& best);

} // namespace quarterstep
