// SPDX-License-Identifier: GPL-3.0-or-later
// Limits of plausibility (mm, counts) are common practice; powers are read by core/optics/notation.
#include "inventory/text/stock_line_reader.hpp"

#include "core/fitting/line_code.hpp"
#include "core/optics/notation.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/stock_power_reader.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr long mostOnHand = 999999;
constexpr double narrowestCentres = 30.0;
constexpr double widestCentres = 100.0;
constexpr double centresNarrowerBy =
    12.0;                               ///< ready-made: centres up to this under lens + bridge are plausible
constexpr double frameCentresOff = 2.0; ///< frame: measured centres this near to lens + bridge are plausible

void readCount(YamlMap& map, StockLineRead& read)
{
    const YamlValue* value = map.need("on hand");
    if (!value)
        return;
    const auto count = map.document().wholeNumber(*value, 0, mostOnHand);
    if (!count)
        return;
    const std::string_view text = map.document().source().text();
    if (!value->plain || text.substr(value->begin, value->text.size()) != value->text) {
        map.document().tell(
            Severity::error, *value, "count-not-plain",
            {QS_SAY("core", "write the count as plain digits, without quotes: %1"), {value->text}});
        return;
    }
    read.line.onHand = static_cast<int>(*count);
    read.count = {value->begin, value->begin + value->text.size()};
}

void readKeep(YamlMap& map, StockLine& line)
{
    const YamlValue* value = map.find("keep");
    if (!value)
        return;
    YamlMap keep(map.document(), *value, {"least", "most"});
    if (const auto least = keep.wholeNumber("least", 0, mostOnHand))
        line.keepLeast = static_cast<int>(*least);
    if (const auto most = keep.wholeNumber("most", 0, mostOnHand))
        line.keepMost = static_cast<int>(*most);
    if (line.keepLeast && line.keepMost && *line.keepLeast > *line.keepMost)
        map.document().tell(Severity::error, *value, "keep-order",
                            {QS_SAY("core", "least (%1) is above most (%2); exchange them"),
                             {std::to_string(*line.keepLeast), std::to_string(*line.keepMost)}});
}

void readFrame(YamlMap& map, FrameData& frame)
{
    const YamlValue* value = map.find("frame");
    if (!value)
        return;
    YamlMap fields(map.document(), *value, {"lens", "height", "bridge", "side", "size", "model", "colour"});
    frame.lens = fields.number("lens", 20.0, 80.0).value_or(0.0);
    frame.height = fields.number("height", 10.0, 70.0).value_or(0.0);
    frame.bridge = fields.number("bridge", 5.0, 40.0).value_or(0.0);
    frame.side = fields.number("side", 80.0, 180.0).value_or(0.0);
    constexpr std::array sizes{"small", "medium", "large"};
    if (const auto size = fields.word("size", {sizes[0], sizes[1], sizes[2]}))
        frame.sizeClass = sizes.at(*size);
    frame.model = fields.text("model").value_or("");
    frame.colour = fields.text("colour").value_or("");
}

void readTakes(YamlMap& map, StockLine& line)
{
    const YamlValue* value = line.kind == LineKind::frame ? map.need("takes") : map.find("takes");
    if (!value)
        return;
    if (value->kind != YamlValue::Kind::list || value->items.empty()) {
        map.document().tell(Severity::error, *value, "takes-not-a-list",
                            {QS_SAY("core", "write the lens shapes as a list, for example [round 44]"), {}});
        return;
    }
    for (const auto& item : value->items)
        if (auto shape = map.document().text(item))
            line.takes.push_back(*shape);
}

void readCentres(YamlMap& map, StockLine& line)
{
    line.centres = map.number("centres", narrowestCentres, widestCentres);
    constexpr std::array from{CentresFrom::measured, CentresFrom::label, CentresFrom::assumed};
    if (const auto word = map.word("centres from", {"measured", "label", "assumed"}))
        line.centresFrom = from.at(*word);
    if (const YamlValue* differ = map.find("heights differ by"))
        line.heightsDiffer = map.document().number(*differ, -20.0, 20.0);
    if (line.frame.lens <= 0.0 || line.frame.bridge <= 0.0)
        return;
    const double boxed = line.frame.lens + line.frame.bridge;
    if (!line.centres) {
        if (line.kind == LineKind::frame)
            line.centres = boxed;
        return;
    }
    const bool frame = line.kind == LineKind::frame;
    const double least = frame ? boxed - frameCentresOff : boxed - centresNarrowerBy;
    const double most = frame ? boxed + frameCentresOff : boxed;
    if (*line.centres < least || *line.centres > most)
        map.document().tell(
            Severity::caution, *map.find("centres"), "centres-implausible",
            {QS_SAY("core",
                    "centres %1 mm do not go with lens + bridge = %2 mm; expected are %3 to %4: measure "
                    "the pair again"),
             {writeNumber(*line.centres), writeNumber(boxed), writeNumber(least), writeNumber(most)}});
}

void readLensFields(YamlMap& map, StockLine& line)
{
    const bool lens = line.kind == LineKind::lens;
    if (const YamlValue* shape = lens ? map.need("shape") : map.find("shape"))
        line.shape = map.document().text(*shape).value_or("");
    constexpr std::array sides{LensSide::either, LensSide::right, LensSide::left};
    const YamlValue* side = map.find("side");
    if (const auto word = map.word("side", {"either", "right", "left"}))
        line.side = sides.at(*word);
    const bool round = line.shape.rfind("round", 0) == 0;
    if (lens && !side && !line.shape.empty() && !round)
        map.document().tell(
            Severity::caution, map.value(), "side-not-said",
            {QS_SAY("core",
                    "a lens of shape \"%1\" may fit one side only; write side: right, left or either"),
             {shown(line.shape)}});
    readTakes(map, line);
    line.axisStep = map.number("axis step", 1.0, 90.0).value_or(line.axisStep);
}

void readCost(YamlMap& map, StockLine& line)
{
    if (const YamlValue* cost = map.find("cost"))
        line.costThousandths = map.document().thousandths(*cost, 0.0, 1e6);
}

/// Keys that say nothing for this kind of line.
void checkUseless(YamlMap& map, LineKind kind)
{
    const auto useless = [&](std::initializer_list<const char*> keys) {
        for (const char* key : keys)
            if (const YamlValue* value = map.find(key))
                map.document().tell(
                    Severity::caution, *value, "key-unused",
                    {QS_SAY("core", "\"%1\" says nothing for a line of this kind and is not used"), {key}});
    };
    if (kind == LineKind::readyMade)
        useless({"shape", "side", "axis", "takes", "axis step"});
    if (kind == LineKind::lens)
        useless({"use", "centres", "centres from", "heights differ by", "frame", "takes", "axis step"});
    if (kind == LineKind::frame)
        useless({"power", "use", "shape", "side", "axis"});
    if (kind == LineKind::other)
        useless({"power", "use", "centres", "centres from", "heights differ by", "shape", "side", "axis",
                 "takes", "axis step"});
}

void readLabels(YamlMap& map, StockLine& line)
{
    constexpr std::array uses{"distance", "near", "intermediate", "bifocal"};
    if (const auto word = map.word("use", {uses[0], uses[1], uses[2], uses[3]}))
        line.use = uses.at(*word);
    if (const auto word = map.word("origin", {"new", "used"}))
        line.origin = *word == 0 ? Origin::fresh : Origin::used;
    line.bin = map.text("bin").value_or("");
    if (const YamlValue* value = map.find("code")) {
        const auto code = parseLineCode(map.document().text(*value).value_or(""));
        if (code)
            line.code = code.value();
        else
            map.document().tell(Severity::error, *value, code.complaint().code, code.complaint().sentence);
    }
    (void)map.text("note");
}

/// What stock and supplier lists say alike: everything but counts.
void readDescription(YamlMap& map, StockLineRead& read)
{
    auto& document = map.document();
    if (const YamlValue* name = map.need("line")) {
        read.line.name = document.text(*name).value_or("");
        read.nameBegin = name->begin;
        if (name->text.empty())
            document.tell(Severity::error, *name, "line-empty",
                          {QS_SAY("core", "the line has no name; write what its label says"), {}});
    }
    constexpr std::array kinds{LineKind::readyMade, LineKind::lens, LineKind::frame, LineKind::other};
    const YamlValue* kind = map.need("kind");
    const auto word = kind ? document.word(*kind, {"ready-made", "lens", "frame", "other"}) : std::nullopt;
    readCost(map, read.line);
    readLabels(map, read.line);
    readFrame(map, read.line.frame);
    if (!word)
        return;
    read.line.kind = kinds.at(*word);
    checkUseless(map, read.line.kind);
    readStockPower(map, read.line);
    readCentres(map, read.line);
    readLensFields(map, read.line);
}

} // namespace

StockLineRead readStockLine(YamlDocument& document, const YamlValue& value)
{
    YamlMap map(document, value,
                {"line",  "kind",   "power", "use",       "centres", "centres from", "heights differ by",
                 "frame", "origin", "bin",   "on hand",   "keep",    "cost",         "shape",
                 "side",  "axis",   "takes", "axis step", "note",    "code"});
    StockLineRead read;
    read.line.position = document.at(value);
    read.nameBegin = value.begin;
    if (!map.isMap())
        return read;
    readCount(map, read);
    readKeep(map, read.line);
    readDescription(map, read);
    return read;
}

OfferedLine readOfferedLine(YamlDocument& document, const YamlValue& value)
{
    constexpr long mostInPack = 10000;
    constexpr long heaviestPiece = 100000; // grams
    YamlMap map(document, value,
                {"line", "kind", "power", "use", "centres", "centres from", "heights differ by", "frame",
                 "origin", "bin", "cost", "shape", "side", "axis", "takes", "axis step", "note", "pack",
                 "weight"});
    StockLineRead read;
    OfferedLine offered;
    read.line.position = document.at(value);
    offered.namePlace = read.line.position;
    if (!map.isMap())
        return offered;
    readDescription(map, read);
    (void)map.need("cost");
    offered.pack = static_cast<int>(map.wholeNumber("pack", 1, mostInPack).value_or(1));
    offered.weight = map.wholeNumber("weight", 0, heaviestPiece).value_or(0);
    offered.line = std::move(read.line);
    return offered;
}

} // namespace quarterstep
