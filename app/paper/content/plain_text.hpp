// SPDX-License-Identifier: GPL-3.0-or-later
// The blocks of a paper as lines of text: for a terminal, for the manual and for whoever reads by ear.
#pragma once

#include "app/paper/content/paper.hpp"

namespace quarterstep
{

/// Lines of at most `width` characters where blanks allow it. Isolates stay in a right-to-left language and
/// are left out elsewhere.
[[nodiscard]] QString plainText(const Paper& paper, bool rightToLeft, int width = 72);

/// Without the marks of direction.
[[nodiscard]] QString withoutIsolates(QString text);

} // namespace quarterstep
