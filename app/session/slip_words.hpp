// SPDX-License-Identifier: GPL-3.0-or-later
// How slips are called in words: about the record or the pair, never about whoever made it.
#pragma once

#include "core/auditing/slip.hpp"

#include <QString>

namespace quarterstep
{

/// Its kind, and the eye where it is of one: "the sign of a sphere (right eye)".
[[nodiscard]] QString slipWords(const SlipMember& member);
/// The likeliest with its eye; each other kind that cannot be told apart from it once, behind a stroke.
[[nodiscard]] QString slipWords(const SlipClass& slip);

} // namespace quarterstep
