// SPDX-License-Identifier: GPL-3.0-or-later
// How the audit's report calls counts, groups and steps.
#pragma once

#include "app/session/audit_report.hpp"

#include <QString>

namespace quarterstep
{

/// A count, or that it is too small to be shown.
[[nodiscard]] QString countWords(const ShownCount& count);
/// What "at odds" means, and what such a page is not.
[[nodiscard]] QString atOddsWords();
[[nodiscard]] QString ratioWords(const ReportGroup& group);
[[nodiscard]] QString stepWords(NextStep step);
[[nodiscard]] QString byWords(const std::string& by);
[[nodiscard]] QString byHeading(const std::string& by);
[[nodiscard]] QString groupName(const std::string& by, const std::string& name);
/// Stages, outcomes and needs by their words.
[[nodiscard]] QString cellName(const std::string& name);

} // namespace quarterstep
