// SPDX-License-Identifier: GPL-3.0-or-later
// Bars as a picture of a paper.
#pragma once

#include "app/desk/plots/share_bars.hpp"
#include "app/paper/content/picture.hpp"

namespace quarterstep
{

/// `rows`: the table below it, names of the columns first.
[[nodiscard]] PictureTwin barsTwin(const ShareBars& bars, const QString& title,
                                   std::vector<QStringList> rows);

} // namespace quarterstep
