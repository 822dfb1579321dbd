// SPDX-License-Identifier: GPL-3.0-or-later
// The generated files of samples/orrowen_coast, as text.
#pragma once

#include <string>

namespace quarterstep::samples
{

[[nodiscard]] std::string stockSample();
[[nodiscard]] std::string peopleSample();
[[nodiscard]] std::string supplierSample();

} // namespace quarterstep::samples
