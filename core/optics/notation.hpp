// SPDX-License-Identifier: GPL-3.0-or-later
// Written prescriptions, read and written. Text is kept as written; what is ambiguous is refused with what
// was read and what to write.
#pragma once

#include "core/finding.hpp"
#include "core/optics/prism.hpp"
#include "core/optics/sphero_cylinder.hpp"

#include <optional>
#include <string>

namespace quarterstep
{

/// Whether an eye was refracted at all. Anything but `measured` is not judged.
enum class EyeState { measured, balance, artificial, blind, notMeasured };

/// One eye as written.
struct WrittenEye {
    EyeState state = EyeState::measured;
    SpheroCylinder power;             ///< form as written (either cylinder sign)
    std::optional<EyePrism> prism;    ///< only when written
    std::optional<Dioptres> addition; ///< only when written ("Add +2.00")
    std::string asWritten;
};

/// Reads one eye: "-1.25 -0.50 x 90", "pl -1.25 x175", "-2.25 / -0.75 / 27", "-2.00DS", "+1.00 DS / -0.50 DC
/// x 5", "plano", "0.00", "-1.00 1 base in", "-1.00 2 base 90", "balance", "artificial", "blind", "not
/// measured"; decimal comma accepted. -0.12 … -0.87 ending in 12, 37, 62, 87 mean the eighth (0.125 …), the
/// way the trade truncates; everything else is kept to a thousandth. Refused: sphere or cylinder without sign
/// (zero excepted), axis outside 1..180 (0 is read as 180), cylinder without axis, axis without cylinder,
/// |sphere| > 40, |cylinder| > 20, a dropped decimal point, anything left over. `eye` gives base angles their
/// meaning. The text may begin with the eye's name (right, R, RE, OD, left, L, LE, OS, or OU for both; a
/// colon after it): the other eye's is refused.
[[nodiscard]] Parsed<WrittenEye> parseEye(const std::string& text, Eye eye = Eye::right);
/// The eye that a text names at its beginning; empty where it names none or both.
[[nodiscard]] std::optional<Eye> eyeNamed(const std::string& text);

/// Reads a power without prism, addition or words (stock labels, own pairs, readings); as parseEye otherwise.
[[nodiscard]] Parsed<SpheroCylinder> parsePower(const std::string& text);
/// A lens mounted by us: "-1.00 -0.75" has no axis yet (`axisGiven` false).
struct LensPower {
    SpheroCylinder power;
    bool axisGiven = true;
};
[[nodiscard]] Parsed<LensPower> parseLensPower(const std::string& text);
/// Reads one signed dioptre value ("+2.00", "0.00", "plano"). `signNeeded` false for additions, where plus is
/// implied.
[[nodiscard]] Parsed<Dioptres> parseDioptres(const std::string& text, bool signNeeded);

/// Sign always, two decimals (three where needed): "+2.00", "-0.125", "0.00" for zero. Reads back as the same
/// thousandths, hence "-0.120" for -0.120, since "-0.12" is read as an eighth.
[[nodiscard]] std::string writeDioptres(Dioptres power);
/// The same with eighths as the trade writes them, the last digit dropped: "-0.12" for -0.125; reads back
/// alike.
[[nodiscard]] std::string writeTruncated(Dioptres power);
/// "-1.25 -0.50 x 90"; without cylinder "-1.25".
[[nodiscard]] std::string writePower(const SpheroCylinder& power);
/// The plus-cylinder form: "-1.75 +0.50 x 180".
[[nodiscard]] std::string writePlusForm(const SpheroCylinder& power);
/// Two cylinders crossed at right angles, the more minus first, axis where each has no power:
/// "-1.75 DC x 90 / -1.25 DC x 180"; a sphere is written as a sphere.
[[nodiscard]] std::string writeCrossed(const SpheroCylinder& power);
/// "2.00 base in 1.00 base up", "0.00" for no prism; as read back by parseEye, to a hundredth.
[[nodiscard]] std::string writePrism(const EyePrism& prism);
/// The same as one prism in degrees of ISO 8429 for that eye: "2.24 base 27"; to a hundredth and a whole
/// degree.
[[nodiscard]] std::string writePrismDegrees(const EyePrism& prism, Eye eye);

} // namespace quarterstep
