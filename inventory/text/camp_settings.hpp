// SPDX-License-Identifier: GPL-3.0-or-later
// desk.yaml of a camp folder: how this camp writes powers and acuities, which profile it judges by, and
// whether it is the sample. May be missing. The format is described in app/help/files.md.
#pragma once

#include "core/finding.hpp"

#include <string>

namespace quarterstep
{

enum class ShownCylinder { minus, plus };
enum class ShownAcuity { asRecorded, metres, feet, decimal, logMar };

struct CampSettings {
    ShownCylinder cylinder = ShownCylinder::minus;
    ShownAcuity acuity = ShownAcuity::asRecorded;
    std::string profile; ///< empty = chosen by age and purpose
    bool sample = false; ///< the folder is a copy of the sample: nothing in it is about real people
    bool operator==(const CampSettings&) const = default;
};
/// The file of settings of a camp folder.
[[nodiscard]] std::string campSettingsPath(const std::string& folder);
/// A missing file is a file without settings. Findings with their places, all in one run.
[[nodiscard]] Reading<CampSettings> readCampSettings(const std::string& folder);
[[nodiscard]] Reading<CampSettings> readCampSettingsText(std::string bytes, const std::string& name);
/// Bytes of the file; reads back alike.
[[nodiscard]] std::string writeCampSettings(const CampSettings& settings);

} // namespace quarterstep
