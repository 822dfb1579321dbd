// SPDX-License-Identifier: GPL-3.0-or-later
// audit.yaml: when an audit says something, and the priors of slips, each with its source.
#pragma once

#include "core/auditing/slip.hpp"

#include <map>

namespace quarterstep
{

struct AuditSettings {
    AuditThresholds thresholds;
    SlipModel slips;
    std::map<std::string, std::string> sources; ///< by name, as in the file
};

/// Those built in.
[[nodiscard]] const AuditSettings& defaultAuditSettings();

/// A file of a camp: what it names replaces what is built in. Findings: those of every YAML file, and
/// audit-name (a name that is not one of ours), number-range, audit-priors (they leave less than nine in ten
/// for hand-overs meant as they are).
[[nodiscard]] Reading<AuditSettings> readAuditText(const std::string& bytes, const std::string& name);
[[nodiscard]] Reading<AuditSettings> readAuditFile(const std::string& path);

} // namespace quarterstep
