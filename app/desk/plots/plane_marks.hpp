// SPDX-License-Identifier: GPL-3.0-or-later
// The marks of the power plane as small pictures: thousands of marks share a few.
#pragma once

#include "app/desk/plots/plot_data.hpp"
#include "app/desk/theme.hpp"

#include <QFont>
#include <QPixmap>

namespace quarterstep
{

/// Disc for pairs, diamond for lenses, cross where none is left.
[[nodiscard]] QPixmap stockMark(PlaneMarkKind kind, bool any, double radius, double ratio,
                                const Colours& colours);
/// The letter of the eye in a disc, the left one in a square; both letters where the eyes need the same.
[[nodiscard]] QPixmap eyeMark(const PlaneEye& eye, double ratio, const Colours& colours, QFont font);
/// Open ring of the chosen pair; broken for a pair that is only pointed at.
[[nodiscard]] QPixmap choiceMark(double ratio, const Colours& colours, bool broken);
/// Small dot on what ranks for this person.
[[nodiscard]] QPixmap rankedMark(double ratio, const Colours& colours);
/// Five sizes, so that a thousand marks share five pictures.
[[nodiscard]] double radiusFor(int available);

} // namespace quarterstep
