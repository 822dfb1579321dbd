// SPDX-License-Identifier: GPL-3.0-or-later
// Cells of the prescription table read into their place; each leaves the target alone when it complains.
#pragma once

#include "core/fitting/prescription.hpp"

namespace quarterstep
{

using Said = std::optional<Complaint>;

inline constexpr double mostPd = 100.0;       ///< mm, binocular
inline constexpr double mostMonocular = 50.0; ///< mm
/// A number within these ends; empty text clears it.
[[nodiscard]] Said readNumber(std::optional<double>& target, const std::string& text, double least,
                              double most);
/// A pupillary distance in mm from 20 to `most`; slips of unit and notation get their own words (pd-in-cm,
/// pd-two-numbers, pd-range).
[[nodiscard]] Said readPd(std::optional<double>& target, const std::string& text, double most);
[[nodiscard]] Said readPower(std::optional<SpheroCylinder>& target, const std::string& text);
/// 0.00 to +6.00, sign optional; minus is refused (addition-negative, addition-range).
[[nodiscard]] Said readAddition(std::optional<Dioptres>& target, const std::string& text);
[[nodiscard]] Said readAcuity(std::optional<Acuity>& target, const std::string& text);
[[nodiscard]] Said readNear(std::optional<NearAcuity>& target, const std::string& text);

// Words and dates.
[[nodiscard]] Said setPurpose(PersonRecord& record, const std::string& text);
[[nodiscard]] Said setLensImplant(PersonRecord& record, const std::string& text);
/// Words parted by ";".
[[nodiscard]] Said setSigns(PersonRecord& record, const std::string& text);
[[nodiscard]] Said setCycloplegia(PersonRecord& record, const std::string& text);
[[nodiscard]] Said setSource(PersonRecord& record, const std::string& text);
[[nodiscard]] Said setFrameSize(PersonRecord& record, const std::string& text);
/// ISO date; takes monthsSinceWritten away, since today is not known here.
[[nodiscard]] Said setWrittenOn(PersonRecord& record, const std::string& text);
void clearWrittenOn(PersonRecord& record);

} // namespace quarterstep
