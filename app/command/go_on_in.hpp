// SPDX-License-Identifier: GPL-3.0-or-later
// Verbs that need a heavy library go on in a program of their own, with the same words, so that the others
// start quickly.
#pragma once

#include <string>

namespace quarterstep
{

/// Path and reason, when it could not be started.
struct NotStarted {
    std::string path;
    std::string why;
};

/// Becomes the program of that name: in the folder for programs that nobody types where this one was
/// installed, else beside this one, where it was built. Returns only when that fails.
[[nodiscard]] NotStarted goOnIn(const char* program);

} // namespace quarterstep
