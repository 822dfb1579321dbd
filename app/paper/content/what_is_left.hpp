// SPDX-License-Identifier: GPL-3.0-or-later
// What a pair leaves over, in words for the person who wears it. The numbers are those of `judge`; from
// 0.125 D (half a step of the trade) a difference is told, prism from 0.50 prism dioptres: common practice.
#pragma once

#include "app/paper/content/papers.hpp"

#include <QStringList>

namespace quarterstep
{

/// Never empty: a pair that leaves nothing is told as such.
[[nodiscard]] QStringList whatIsLeft(const Need& need, const Fit& fit);

} // namespace quarterstep
