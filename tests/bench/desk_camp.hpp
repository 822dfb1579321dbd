// SPDX-License-Identifier: GPL-3.0-or-later
// Camps for the benches of the desk.
#pragma once

#include <QString>

namespace quarterstep
{

/// A camp of that many lines, in fifties: every power of a kind in one tray, its centres from 50 mm on. It
/// was opened before, as on the second day of a camp.
void makeCamp(const QString& folder, int lines);

/// People who come to it: that many were given their pairs today, and that many wait; and the list of a
/// supplier.
void makeDay(const QString& folder, int served, int waiting);

/// So many hand-overs before that day, one a minute, of what these people are given, and the deliveries for
/// them.
void makeSeason(const QString& folder, int handOvers);

} // namespace quarterstep
