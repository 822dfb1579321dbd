// SPDX-License-Identifier: GPL-3.0-or-later
// Hand-overs as rows of the worksheet of an audit.
#pragma once

#include "app/paper/content/papers.hpp"
#include "app/session/camp.hpp"

namespace quarterstep
{

[[nodiscard]] AuditRow auditRowOf(const Entry& entry);

/// The worksheet of a lot, in the order of its draw; spares are marked. Throws Error lot-not-drawn (3).
[[nodiscard]] std::vector<AuditRow> lotRows(const Camp& camp, const std::string& lot);

} // namespace quarterstep
