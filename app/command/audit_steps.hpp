// SPDX-License-Identifier: GPL-3.0-or-later
// The steps of the verb audit beside the audit itself: draw, sheet, read, lots, due, report.
#pragma once

#include "app/command/command_line.hpp"
#include "app/session/audit.hpp"

namespace quarterstep
{

/// The step named first among the arguments.
int runAuditStep(const CommandLine& line, Output& out);

int runAuditDraw(const CommandLine& line, Output& out);
int runAuditSheet(const CommandLine& line, Output& out);
int runAuditRead(const CommandLine& line, Output& out);
int runAuditLots(const CommandLine& line, Output& out);
int runAuditDue(const CommandLine& line, Output& out);
int runAuditReport(const CommandLine& line, Output& out);

/// --as-of as a moment, the end of that day in local time; now when left out. Throws Error option-value (2).
[[nodiscard]] std::int64_t asOfMs(const CommandLine& line);
/// A day option as ISO date, checked; empty when not given. Throws Error option-value (2).
[[nodiscard]] std::string dayOf(const CommandLine& line, const char* option);
/// --profile and --priors, as every audit takes them.
[[nodiscard]] AuditOptions auditOptions(const CommandLine& line, const Camp& camp, Output& out);

} // namespace quarterstep
