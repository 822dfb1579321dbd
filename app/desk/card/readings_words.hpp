// SPDX-License-Identifier: GPL-3.0-or-later
// Repeated objective readings as typed on the card: "-1.25 -0.50 x 90; -1.50 -0.50 x 85", their mean, and how
// steady they are beside the final, in words.
#pragma once

#include "core/fitting/prescription.hpp"

#include <QString>

namespace quarterstep
{

/// Reads one or several readings, separated by semicolons, into objective (the mean) and repeated (their
/// scatter, from three on). Empty text clears both. Complaint of the first one that cannot be read.
[[nodiscard]] std::optional<Complaint> takeReadings(EyeRecord& eye, const QString& text);

/// How steady the readings are and how far the final stands from their mean; empty without a reading.
[[nodiscard]] QString steadinessWords(const QString& readings, const QString& final, Eye which);

} // namespace quarterstep
