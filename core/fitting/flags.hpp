// SPDX-License-Identifier: GPL-3.0-or-later
// What the record alone says, before any stock is looked at: referral, another look, cautions, what is
// missing, whether anything is needed. Every rule names its source.
#pragma once

#include "core/fitting/recommendation.hpp"

namespace quarterstep
{

/// Sets referral, urgency, recheck and their flags.
void addReferral(const PersonRecord& person, Recommendation& answer);
/// Sets cautions that belong to the person and purpose.
void addCautions(const PersonRecord& person, Recommendation& answer);
/// Cautions that compare the record with itself and with published figures: change from the own pair,
/// addition for the age, near print read, readings without cycloplegia, risk of amblyopia.
void addRecordCautions(const PersonRecord& person, const MatchOptions& options, Recommendation& answer);
/// Something that must be known first, with a stable key for counts.
struct Lack {
    std::string key;
    Sentence sentence;
};
/// What must be known before stock may be suggested; empty = nothing.
[[nodiscard]] std::vector<Lack> missingFor(const PersonRecord& person, Purpose purpose);
/// Why nothing is needed, or empty. Fits of bare eyes and of the own pair are taken from the answer.
[[nodiscard]] Sentence whyNothingNeeded(const PersonRecord& person, const Recommendation& answer);

} // namespace quarterstep
