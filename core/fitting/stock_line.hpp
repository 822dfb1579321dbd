// SPDX-License-Identifier: GPL-3.0-or-later
// One line of the stock: what the label says, where it lies, how many there are.
#pragma once

#include "core/finding.hpp"
#include "core/optics/sphero_cylinder.hpp"

#include <optional>
#include <string>
#include <vector>

namespace quarterstep
{

enum class LineKind { readyMade, lens, frame, other };
enum class LensSide { either, right, left };
enum class CentresFrom { measured, label, assumed };
enum class Origin { fresh, used };

/// Boxed size in mm; 0 = not given. sizeClass: small | medium | large or empty.
struct FrameData {
    double lens = 0.0;
    double height = 0.0;
    double bridge = 0.0;
    double side = 0.0;
    std::string sizeClass;
    std::string model;
    std::string colour;
    bool operator==(const FrameData&) const = default;
};

struct StockLine {
    std::string name; ///< unique in the file; what the label says
    LineKind kind = LineKind::readyMade;
    PerEye<SpheroCylinder> power; ///< ready-made: both lenses; lens: the same in both; frame: unused
    std::optional<Dioptres> bifocalAddition; ///< set = bifocal, power is the distance portion
    std::string use;                         ///< a label for people, never a filter
    std::optional<double> centres; ///< mm between optical centres; frame: lens + bridge unless measured
    CentresFrom centresFrom = CentresFrom::label;
    std::optional<double> heightsDiffer; ///< mm, right centre above left positive; empty = not measured
    FrameData frame;
    Origin origin = Origin::fresh;
    std::string bin;
    int onHand = 0;
    int held = 0;        ///< from the ledger
    int quarantined = 0; ///< from the ledger
    std::optional<int> keepLeast;
    std::optional<int> keepMost;
    std::optional<long> costThousandths; ///< of the currency unit
    std::string shape;                   ///< lens: "round 44"
    LensSide side = LensSide::either;
    bool anyAxis = false;           ///< lens: the axis is set when mounting
    std::vector<std::string> takes; ///< frame: shapes
    double axisStep = 5.0;          ///< frame: degrees between marks
    std::string code;               ///< thirteen digits with their check digit (line_code.hpp), or empty
    Position position;

    [[nodiscard]] int available() const { return onHand - held - quarantined; }
    [[nodiscard]] bool equalPowers() const { return power.right == power.left; }
};

} // namespace quarterstep
