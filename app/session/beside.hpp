// SPDX-License-Identifier: GPL-3.0-or-later
// Programs that nobody types, in which heavy libraries live.
#pragma once

#include <QString>

namespace quarterstep
{

/// The path of such a program: in the folder for them where this one was installed, else beside this one,
/// where it was built.
[[nodiscard]] QString programBeside(const char* program);

} // namespace quarterstep
