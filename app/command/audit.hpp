// SPDX-License-Identifier: GPL-3.0-or-later
// What the files of the verb audit share.
#pragma once

#include "app/command/command_line.hpp"
#include "app/session/audit.hpp"

namespace quarterstep
{

/// A finding with the slip that likely explains it.
struct ToldFinding {
    AuditFinding finding;
    std::optional<SlipClass> slip;
};

/// Everything an audit told, for showing.
struct AuditAnswer {
    AuditSummary summary;
    std::vector<ToldFinding> findings;
};

void showAuditJson(const AuditAnswer& answer, Output& out);
void showAuditText(const AuditAnswer& answer, Output& out);

/// One hand-over in full: its findings and the arithmetic of every class. Throws Error entry-gone (3).
int explainAudit(const CommandLine& line, const Camp& camp, const AuditOptions& options, Output& out);

} // namespace quarterstep
