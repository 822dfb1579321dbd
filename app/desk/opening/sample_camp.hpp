// SPDX-License-Identifier: GPL-3.0-or-later
// The sample camp, compiled in, and the copy of it that people work with. The copy calls itself SAMPLE in its
// site, so that every window, list and paper made from it says so.
#pragma once

#include <QString>

namespace quarterstep
{

/// Where the copy of the person at this laptop lies; made by `makeSampleCamp`.
[[nodiscard]] QString sampleFolder();
/// Makes the copy when it is missing; one that is there stays as it was left. Throws Error (4).
void makeSampleCamp();
/// Throws away what was done in the copy and makes it anew. Touches nothing that is not a marked sample.
/// Throws Error (4).
void renewSampleCamp();

} // namespace quarterstep
