// SPDX-License-Identifier: GPL-3.0-or-later
// The waiting line as it is kept with the drafts of a window, so that what was promised outlives a restart:
// who waits, as they were written down, and what they were told. Data about persons, like every draft; of the
// same day only.
#pragma once

#include "app/session/assign.hpp"

#include <QByteArray>
#include <QDate>

namespace quarterstep
{

struct KeptLine {
    std::vector<PersonRecord> people; ///< in the order of arrival
    std::vector<Told> told;
    std::vector<std::pair<std::string, Purpose>> left; ///< for which of them nobody waits any more
    [[nodiscard]] bool empty() const { return people.empty(); }
};

/// Empty for an empty line.
[[nodiscard]] QByteArray bytesOfLine(const KeptLine& line, const QDate& day);
/// Empty when these are no line, or not of that day.
[[nodiscard]] KeptLine lineIn(const QByteArray& bytes, const QDate& day);

} // namespace quarterstep
