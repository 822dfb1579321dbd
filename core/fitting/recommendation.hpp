// SPDX-License-Identifier: GPL-3.0-or-later
// The answer for one person and one purpose: verdict, referral beside it, reasons, candidates.
#pragma once

#include "core/fitting/candidates.hpp"
#include "core/fitting/laboratory_order.hpp"
#include "core/fitting/need.hpp"
#include "core/fitting/single_change.hpp"
#include "core/optics/near_addition.hpp"

namespace quarterstep
{

enum class Verdict { stock, custom, none, incomplete, refer };
enum class Referral { no, with, before };
enum class Urgency { routine, soon, sameDay };

/// A caution, a reason for referral or for another look; `source` as shown to people.
struct Flag {
    std::string code;
    Sentence sentence;
    std::string source;
};

struct Recommendation {
    std::string person;
    Purpose purpose = Purpose::distance;
    std::string profile;
    Verdict verdict = Verdict::incomplete;
    Referral referral = Referral::no;
    Urgency urgency = Urgency::routine;
    bool recheck = false;
    std::vector<Flag> flags;     ///< cautions, referral and recheck reasons, each with its source
    std::vector<Sentence> needs; ///< what is missing when incomplete
    Sentence reason;             ///< one sentence behind the verdict
    /// Stable key for counts: "served", "caution", "on_trial", "none", "refer", "stock_out", "no_stock",
    /// "power_not_in_box", the JSON name of the criterion that fails, or what is missing: "addition_missing",
    /// "addition_unconfirmed", "final_missing", "objective_only_child", "pd_not_taken", "prescriber_missing",
    /// "profile_unknown", "vertex_not_recorded".
    std::string reasonKey;
    std::optional<Need> need;
    std::optional<Fit> bareEyes;
    std::optional<Fit> ownPair;
    CandidateLists candidates;
    std::optional<Candidate> interim; ///< adults only, until a custom order comes
    bool secondPair = false;          ///< the other purpose of a set of two is the first
    // On request (MatchOptions::details), for the verdict custom:
    std::vector<std::optional<SingleChange>> changes; ///< of the nearest misses, at most three
    std::optional<LaboratoryOrder> order;
};

struct MatchOptions {
    std::string profile; ///< empty = chosen by age and purpose
    CandidateOptions candidates;
    std::optional<TrialAcuity> trial; ///< acuity typed with the best candidate on the face
    bool assumeCentred = false;       ///< coverage of tables without PD: an unknown PD is that of each pair
    bool details = false;             ///< chances, single changes of the nearest misses, laboratory order
    CylinderForm form = CylinderForm::minus;          ///< of the laboratory order
    const std::vector<AgeTable>* ageTables = nullptr; ///< additions by age beside Hofstetter's amplitudes
};

/// Name of the profile for this person and purpose: school, adult-distance or adult-near.
[[nodiscard]] std::string profileFor(const PersonRecord& person, Purpose purpose);

/// One recommendation a purpose, in the order of purposesOf. Pure; never throws.
[[nodiscard]] std::vector<Recommendation> recommend(const PersonRecord& person,
                                                    std::span<const StockLine> stock,
                                                    const FittingRules& rules, const MatchOptions& options);

} // namespace quarterstep
