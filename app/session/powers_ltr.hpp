// SPDX-License-Identifier: GPL-3.0-or-later
// Powers that stand loose in words from right to left.
#pragma once

#include <QString>

namespace quarterstep
{

/// Words from right to left in which powers, axes and dates that stand loose are kept left-to-right: else
/// "-1.50" reads 1.50- and "+0.75 x 90" begins with its axis. Other words come back as they are.
[[nodiscard]] QString powersLtr(const QString& text);

} // namespace quarterstep
