// SPDX-License-Identifier: GPL-3.0-or-later
// Paper on a printer. Printers are known here alone.
#pragma once

#include "app/paper/render/layout.hpp"

namespace quarterstep
{

/// Names of the printers that are set up here, asked of the system at once: may take a moment.
[[nodiscard]] std::vector<std::string> printersHere();

/// Throws Error printer-missing (4), which names the printers there are, and printer-failed (4).
void printPages(const LaidOut& laid, const std::string& printer, const PaperProgress& progress);

} // namespace quarterstep
