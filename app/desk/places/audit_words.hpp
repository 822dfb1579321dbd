// SPDX-License-Identifier: GPL-3.0-or-later
// What the place Audit says of one hand-over and of the record.
#pragma once

#include "app/session/audit_cases.hpp"

#include <QString>

namespace quarterstep
{

/// Need, pair given, the pair that lay in the box, and every finding with what to do next.
[[nodiscard]] QString auditCaseWords(const AuditCase& one);
/// Probability of each class of slips and how it comes about; empty for what only the course of events shows.
[[nodiscard]] QString slipArithmetic(const AuditCase& one);
/// Lines or bins in one text that keeps its direction.
[[nodiscard]] QString joinedNames(const std::vector<std::string>& names);
/// What was found of the whole chain; broken, as the command line says it.
[[nodiscard]] QString chainWords(const ChainCheck& chain);

} // namespace quarterstep
