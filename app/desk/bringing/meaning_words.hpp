// SPDX-License-Identifier: GPL-3.0-or-later
// What a column of somebody else's table can hold, in words.
#pragma once

#include "core/fitting/prescription.hpp"

#include <QString>

namespace quarterstep
{

/// "Right eye: sphere" for "right sphere", "kept, not used" for "-"; a column of the prescription table is
/// named as the manual names it.
[[nodiscard]] QString meaningWords(const std::string& target);

/// What was read of a person, in one line.
[[nodiscard]] QString readingWords(const PersonRecord& person);

} // namespace quarterstep
