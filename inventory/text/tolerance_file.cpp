// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/tolerance_file.hpp"

#include "inventory/defaults/default_texts.hpp"
#include "inventory/text/tolerance_rows.hpp"

#include <algorithm>
#include <cassert>

namespace quarterstep
{

namespace
{

constexpr const char* tolerancesFormat = "quarterstep tolerances 1";

std::string neededText(YamlMap& map, const char* key)
{
    const YamlValue* value = map.need(key);
    return value ? map.document().text(*value).value_or("") : "";
}

void readScope(YamlMap& map, ToleranceSet& set)
{
    const YamlValue* value = map.find("powers");
    if (value == nullptr)
        return;
    constexpr double largest = 40.0;
    if (value->kind != YamlValue::Kind::list || value->items.size() != 2) {
        map.document().tell(Severity::error, *value, "scope-form",
                            {QS_SAY("core", "write two powers, for example [1.00, 3.50]"), {}});
        return;
    }
    set.leastPower = map.document().number(value->items[0], -largest, largest);
    set.mostPower = map.document().number(value->items[1], -largest, largest);
}

/// Whether it is used at all, and why not.
void readEnabled(YamlMap& map, ToleranceSet& set)
{
    constexpr Confidence confidences[] = {Confidence::seenInSource, Confidence::secondHand,
                                          Confidence::fromMemory};
    if (map.need("confidence") != nullptr)
        set.confidence =
            confidences[map.word("confidence", {"seen in source", "second-hand", "from memory"}).value_or(2)];
    if (map.need("enabled") != nullptr)
        set.enabled = map.yesNo("enabled").value_or(false);
    set.why = map.text("why").value_or("");
    if (!set.enabled && map.isMap() && set.why.empty())
        map.document().tell(Severity::error, map.value(), "set-why",
                            {QS_SAY("core", "a set that is not enabled says why; add: why"), {}});
    if (set.enabled && set.confidence == Confidence::fromMemory)
        map.document().tell(
            Severity::caution, map.value(), "tolerances-from-memory",
            {QS_SAY("core", "this set is enabled though its figures are from memory; once they are "
                            "compared with the standard, say so under confidence"),
             {}});
}

ToleranceSet readSet(YamlDocument& document, const YamlValue& value)
{
    YamlMap map(document, value,
                {"name", "standard", "edition", "covers", "confidence", "provenance", "enabled", "why",
                 "powers", "meridians", "meridian", "cylinder", "axis", "addition", "horizontal prism",
                 "vertical prism"});
    ToleranceSet set;
    if (!map.isMap())
        return set;
    set.name = neededText(map, "name");
    set.standard = neededText(map, "standard");
    set.edition = neededText(map, "edition");
    set.covers = neededText(map, "covers");
    set.provenance = neededText(map, "provenance");
    readEnabled(map, set);
    readScope(map, set);
    if (map.need("meridians") != nullptr)
        set.meridians = map.word("meridians", {"sphere", "both"}).value_or(1) == 0 ? MeridianRule::sphere
                                                                                   : MeridianRule::both;
    set.meridian = readToleranceRows(map, "meridian");
    set.cylinder = readToleranceRows(map, "cylinder");
    set.axis = readToleranceRows(map, "axis");
    set.addition = readToleranceRows(map, "addition");
    set.horizontal = readPrismRule(map, "horizontal prism");
    set.vertical = readPrismRule(map, "vertical prism");
    return set;
}

void putSet(YamlDocument& document, const YamlValue& item, std::vector<std::string>& own, ToleranceSets& sets)
{
    auto set = readSet(document, item);
    if (set.name.empty())
        return;
    if (std::find(own.begin(), own.end(), set.name) != own.end()) {
        document.tell(
            Severity::error, item, "set-twice",
            {QS_SAY("core", "the set \"%1\" stands in the file already; give this one another name"),
             {shown(set.name)}});
        return;
    }
    own.push_back(set.name);
    const auto same = std::find_if(sets.sets.begin(), sets.sets.end(),
                                   [&set](const ToleranceSet& other) { return other.name == set.name; });
    if (same != sets.sets.end())
        *same = std::move(set);
    else
        sets.sets.push_back(std::move(set));
}

void readUsual(YamlMap& top, ToleranceSets& sets)
{
    const YamlValue* value = top.find("default");
    if (value == nullptr)
        return;
    const auto name = top.document().text(*value);
    if (!name)
        return;
    const auto chosen = chooseTolerances(sets, *name);
    if (chosen)
        sets.usual = *name;
    else
        top.document().tell(*value, chosen.complaint());
}

void readTop(YamlDocument& document, ToleranceSets& sets)
{
    YamlMap top(document, document.root(), {"format", "default", "sets"});
    const YamlValue* format = top.need("format");
    if (format && format->text != tolerancesFormat)
        document.tell(
            Severity::error, *format, "format-unknown",
            {QS_SAY("core", "this is not a tolerance file of this program; the first key should read "
                            "format: %1"),
             {tolerancesFormat}});
    const YamlValue* list = top.find("sets");
    if (list && list->kind != YamlValue::Kind::list) {
        document.tell(Severity::error, *list, "sets-not-a-list",
                      {QS_SAY("core", "`sets` is a list; begin each set with a dash"), {}});
        return;
    }
    std::vector<std::string> own;
    if (list)
        for (const auto& item : list->items)
            putSet(document, item, own, sets);
    readUsual(top, sets);
}

Reading<ToleranceSets> readOver(const ToleranceSets& builtIn, std::string bytes, const std::string& name)
{
    Reading<ToleranceSets> reading;
    reading.value = builtIn;
    YamlDocument document(std::move(bytes), name);
    if (document.readable())
        readTop(document, reading.value);
    reading.findings = document.takeFindings();
    return reading;
}

ToleranceSets readDefaults()
{
    auto reading = readOver({}, std::string(defaultTolerancesText()), "tolerances.yaml (built in)");
    assert(reading.findings.empty());
    return std::move(reading.value);
}

} // namespace

const ToleranceSets& defaultTolerances()
{
    static const ToleranceSets sets = readDefaults();
    return sets;
}

Reading<ToleranceSets> readToleranceFile(const std::string& path)
{
    auto bytes = readBytes(path);
    if (bytes.usable())
        return readToleranceText(std::move(bytes.value), path);
    return {defaultTolerances(), std::move(bytes.findings)};
}

Reading<ToleranceSets> readToleranceText(std::string bytes, const std::string& name)
{
    return readOver(defaultTolerances(), std::move(bytes), name);
}

} // namespace quarterstep
