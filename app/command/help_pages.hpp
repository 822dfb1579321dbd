// SPDX-License-Identifier: GPL-3.0-or-later
// The pages of app/help, compiled in.
#pragma once

#include <string_view>

namespace quarterstep
{

/// matching.md: the model of fit.
[[nodiscard]] std::string_view matchingPage();
/// files.md: formats, exit codes and finding codes.
[[nodiscard]] std::string_view filesPage();
/// durability.md: what is promised about records, and how it is tested.
[[nodiscard]] std::string_view durabilityPage();

} // namespace quarterstep
