// SPDX-License-Identifier: GPL-3.0-or-later
// Stated choices about a line (--first, --weigh, --least), and its answers in words: shared by assign and
// simulate.
#pragma once

#include "app/command/inputs.hpp"
#include "app/session/assign.hpp"
#include "app/session/planning_demand.hpp"

#include <QJsonObject>

namespace quarterstep
{

/// Throws Error option-value (2).
[[nodiscard]] PlanOptions planOptions(const CommandLine& line, const Settings& settings);

/// Stable words.
[[nodiscard]] const char* jsonWord(Priority priority);
[[nodiscard]] const char* jsonWord(PlanMethod method);

/// Which choices stand behind the answer, one sentence each.
[[nodiscard]] QStringList choiceWords(const PlanOptions& options);
[[nodiscard]] QString proofWords(const Proof& proof);
[[nodiscard]] QJsonObject jsonProof(const Proof& proof);

} // namespace quarterstep
