// SPDX-License-Identifier: GPL-3.0-or-later
// One command from arguments to exit code. Every exception ends here as a finding.
#pragma once

#include <string>
#include <vector>

namespace quarterstep
{

/// Before the application is made: text in and out is UTF-8 in any locale; Qt warns on standard error when
/// the locale is not.
void speakUtf8();

/// `arguments` without the program's name. Needs a QCoreApplication.
[[nodiscard]] int runCommand(const std::vector<std::string>& arguments);

} // namespace quarterstep
