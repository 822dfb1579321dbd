// SPDX-License-Identifier: GPL-3.0-or-later
// The same checks as source_text for files that machines write: ten thousand prescriptions as FHIR are 18 MB.
#pragma once

#include "inventory/text/source_text.hpp"

namespace quarterstep
{

/// Largest file of other programs read, bytes.
inline constexpr std::size_t largestMachineFile = std::size_t{64} * 1024 * 1024;

/// As readBytes and checkText, up to largestMachineFile.
[[nodiscard]] Reading<std::string> readLargeBytes(const std::string& path);
[[nodiscard]] Reading<SourceText> checkLargeText(std::string bytes, const std::string& name);

} // namespace quarterstep
