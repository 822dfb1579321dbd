// SPDX-License-Identifier: GPL-3.0-or-later
// tolerances.yaml: tolerance sets for the focimeter check. A camp's own file stands over the sets compiled
// in; a set of the same name replaces the one compiled in.
#pragma once

#include "core/optics/lens_tolerance.hpp"

namespace quarterstep
{

/// The sets compiled in, parsed once; a broken default is a programming error (assert).
[[nodiscard]] const ToleranceSets& defaultTolerances();

/// Defaults with the file's sets over them; errors located, all in one run. A set that is enabled and from
/// memory is told (caution tolerances-from-memory).
[[nodiscard]] Reading<ToleranceSets> readToleranceFile(const std::string& path);
[[nodiscard]] Reading<ToleranceSets> readToleranceText(std::string bytes, const std::string& name);

} // namespace quarterstep
