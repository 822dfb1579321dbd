// SPDX-License-Identifier: GPL-3.0-or-later
// What the files of the verb audit share.
#pragma once

#include "app/command/command_line.hpp"
#include "app/session/audit.hpp"

namespace quarterstep
{

/// Everything an audit told, for showing.
struct AuditAnswer {
    AuditSummary summary;
    std::vector<AuditFinding> findings;
};

void showAuditJson(const AuditAnswer& answer, Output& out);
void showAuditText(const AuditAnswer& answer, Output& out);

} // namespace quarterstep
