// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/stock_power_reader.hpp"

#include "core/optics/notation.hpp"

namespace quarterstep
{

namespace
{

constexpr double largestBifocalAddition = 6.0;

std::optional<SpheroCylinder> powerOf(YamlDocument& document, const YamlValue& value)
{
    const auto written = document.text(value);
    if (!written)
        return std::nullopt;
    const auto parsed = parsePower(*written);
    if (!parsed) {
        document.tell(value, parsed.complaint());
        return std::nullopt;
    }
    return parsed.value();
}

void readBifocal(YamlMap& power, StockLine& line)
{
    YamlDocument& document = power.document();
    const YamlValue* value = power.find("bifocal");
    const auto written = document.text(*value);
    if (const YamlValue* distance = power.find("distance")) {
        const auto read = powerOf(document, *distance);
        line.power.right = line.power.left = read.value_or(SpheroCylinder{});
    }
    if (!written)
        return;
    const auto addition = parseDioptres(*written, false);
    if (!addition) {
        document.tell(*value, addition.complaint());
        return;
    }
    if (addition.value() <= Dioptres{} || addition.value() > Dioptres{largestBifocalAddition})
        document.tell(Severity::error, *value, "addition-range",
                      {QS_SAY("core", "the addition %1 is outside +0.25 to +6.00"), {shown(*written)}});
    line.bifocalAddition = addition.value();
}

void readMap(YamlMap& map, const YamlValue& value, StockLine& line)
{
    YamlMap power(map.document(), value, {"right", "left", "bifocal", "distance"});
    const bool bifocal = power.find("bifocal") != nullptr;
    const bool sides = power.find("right") != nullptr || power.find("left") != nullptr;
    if (bifocal == sides || (sides && power.find("distance") != nullptr)) {
        map.document().tell(
            Severity::error, value, "power-form",
            {QS_SAY("core", "write one power, or {right: …, left: …}, or {bifocal: +2.00, distance: 0.00}"),
             {}});
        return;
    }
    if (bifocal) {
        readBifocal(power, line);
        return;
    }
    const YamlValue* right = power.need("right");
    const YamlValue* left = power.need("left");
    if (right)
        line.power.right = powerOf(map.document(), *right).value_or(SpheroCylinder{});
    if (left)
        line.power.left = powerOf(map.document(), *left).value_or(SpheroCylinder{});
}

void readReadyMade(YamlMap& map, StockLine& line)
{
    const YamlValue* value = map.need("power");
    if (!value)
        return;
    if (value->kind == YamlValue::Kind::map)
        readMap(map, *value, line);
    else if (const auto power = powerOf(map.document(), *value))
        line.power = {*power, *power};
    if (line.use == "bifocal" && !line.bifocalAddition && value->kind != YamlValue::Kind::map)
        map.document().tell(
            Severity::error, *value, "bifocal-power",
            {QS_SAY("core", "a bifocal's power is written {bifocal: +2.00, distance: 0.00}"), {}});
}

/// `axis: any`, or the degrees at which the lens is mounted.
void readAxis(YamlMap& map, const YamlValue& power, const LensPower& lens, StockLine& line)
{
    YamlDocument& document = map.document();
    const bool cylinder = !(lens.power.cylinder == Dioptres{});
    const YamlValue* axis = map.find("axis");
    if (!axis) {
        if (cylinder && !lens.axisGiven)
            document.tell(Severity::error, power, "lens-axis-missing",
                          {QS_SAY("core", "a lens with a cylinder needs axis: any (turned when mounting) or "
                                          "axis: degrees as mounted"),
                           {}});
        return;
    }
    const auto written = document.text(*axis);
    if (!written)
        return;
    if (cylinder && lens.axisGiven) {
        document.tell(Severity::error, *axis, "lens-axis-twice",
                      {QS_SAY("core", "the axis stands in the power already; keep one of the two"), {}});
        return;
    }
    if (*written == "any") {
        line.anyAxis = cylinder;
        return;
    }
    if (const auto degrees = document.wholeNumber(*axis, 0, 180)) {
        const AxisDegrees mounted{*degrees == 0 ? 180.0 : static_cast<double>(*degrees)};
        if (cylinder)
            line.power.right.axis = line.power.left.axis = mounted;
    }
}

void readLens(YamlMap& map, StockLine& line)
{
    const YamlValue* value = map.need("power");
    const auto written = value ? map.document().text(*value) : std::nullopt;
    if (!written)
        return;
    const auto parsed = parseLensPower(*written);
    if (!parsed) {
        map.document().tell(*value, parsed.complaint());
        return;
    }
    line.power = {parsed.value().power, parsed.value().power};
    readAxis(map, *value, parsed.value(), line);
}

} // namespace

void readStockPower(YamlMap& map, StockLine& line)
{
    if (line.kind == LineKind::readyMade)
        readReadyMade(map, line);
    if (line.kind == LineKind::lens)
        readLens(map, line);
}

} // namespace quarterstep
