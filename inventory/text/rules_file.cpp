// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/rules_file.hpp"

#include "core/fitting/criteria/table.hpp"
#include "inventory/defaults/default_texts.hpp"
#include "inventory/text/criterion_rule_reader.hpp"
#include "inventory/text/rules_hash.hpp"

#include <algorithm>
#include <cassert>

namespace quarterstep
{

namespace
{

constexpr const char* rulesFormat = "quarterstep rules 1";

void readRange(YamlMap& map, const char* key, Range& range)
{
    const YamlValue* value = map.find(key);
    if (!value)
        return;
    YamlDocument& document = map.document();
    constexpr double narrowest = 20.0;
    constexpr double widest = 100.0;
    if (value->kind != YamlValue::Kind::list || value->items.size() != 2) {
        document.tell(Severity::error, *value, "range-form",
                      {QS_SAY("core", "write two numbers in mm, for example [54, 74]"), {}});
        return;
    }
    const auto least = document.number(value->items[0], narrowest, widest);
    const auto most = document.number(value->items[1], narrowest, widest);
    if (!least || !most)
        return;
    if (*least > *most)
        document.tell(Severity::error, *value, "range-order",
                      {QS_SAY("core", "the smaller number comes first"), {}});
    range = {*least, *most};
}

void readSettings(YamlMap& top, Settings& settings)
{
    const YamlValue* value = top.find("settings");
    if (!value)
        return;
    YamlMap map(top.document(), *value,
                {"stock vertex", "adult distance pd", "adult near pd", "unknown centres", "use used pairs",
                 "hold back second pair"});
    settings.stockVertex = map.number("stock vertex", 5.0, 25.0).value_or(settings.stockVertex);
    readRange(map, "adult distance pd", settings.adultDistancePd);
    readRange(map, "adult near pd", settings.adultNearPd);
    readRange(map, "unknown centres", settings.unknownCentres);
    settings.useUsedPairs = map.yesNo("use used pairs").value_or(settings.useUsedPairs);
    settings.holdBackSecondPair = map.yesNo("hold back second pair").value_or(settings.holdBackSecondPair);
}

void readLimits(YamlMap& map, Profile& profile)
{
    const YamlValue* value = map.need("limits");
    if (!value)
        return;
    std::vector<const char*> keys;
    for (const auto& info : criterionTable())
        keys.push_back(info.key);
    YamlMap limits(map.document(), *value, keys);
    for (const auto& info : criterionTable())
        if (const YamlValue* written = limits.find(info.key))
            if (auto rule = readCriterionRule(map.document(), *written, info.criterion))
                profile.of(info.criterion) = std::move(*rule);
}

const Profile* named(const std::vector<Profile>& profiles, const std::string& name)
{
    const auto found = std::find_if(profiles.begin(), profiles.end(),
                                    [&](const Profile& profile) { return profile.name == name; });
    return found == profiles.end() ? nullptr : &*found;
}

/// The profile that `based on` names: earlier in the file, else a built-in one.
Profile readBase(YamlMap& map, const std::vector<Profile>& earlier, const std::vector<Profile>& builtIn)
{
    const YamlValue* value = map.find("based on");
    const auto name = value ? map.document().text(*value) : std::nullopt;
    if (!name)
        return {};
    if (const Profile* base = named(earlier, *name))
        return *base;
    if (const Profile* base = named(builtIn, *name))
        return *base;
    std::vector<const char*> names;
    for (const auto* list : {&builtIn, &earlier})
        for (const auto& profile : *list)
            if (std::find(names.begin(), names.end(), profile.name) == names.end())
                names.push_back(profile.name.c_str());
    map.document().tell(
        Severity::error, *value, "base-unknown",
        {QS_SAY("core",
                "there is no profile \"%1\" to begin from; built in, or earlier in this file, are: %2"),
         {shown(*name), listed(names)}});
    return {};
}

void readProfile(YamlDocument& document, const YamlValue& value, const std::vector<Profile>& builtIn,
                 std::vector<Profile>& profiles)
{
    YamlMap map(document, value, {"name", "version", "based on", "prism by decentration", "limits"});
    if (!map.isMap())
        return;
    Profile profile = readBase(map, profiles, builtIn);
    const YamlValue* name = map.need("name");
    const YamlValue* version = map.need("version");
    profile.name = name ? document.text(*name).value_or("") : "";
    profile.version = version ? document.text(*version).value_or("") : "";
    profile.prismByDecentration = map.yesNo("prism by decentration").value_or(profile.prismByDecentration);
    readLimits(map, profile);
    if (name && profile.name.empty())
        document.tell(Severity::error, *name, "profile-empty",
                      {QS_SAY("core", "the profile has no name; write one"), {}});
    if (named(profiles, profile.name) != nullptr && !profile.name.empty()) {
        document.tell(
            Severity::error, *name, "profile-twice",
            {QS_SAY("core", "the profile \"%1\" stands in the file already; give this one another name"),
             {shown(profile.name)}});
        return;
    }
    profiles.push_back(std::move(profile));
}

/// The file's profiles over the built-in ones, which keep their order.
std::vector<Profile> merged(const std::vector<Profile>& builtIn, std::vector<Profile> own)
{
    std::vector<Profile> result = builtIn;
    for (auto& profile : own) {
        const auto same = std::find_if(result.begin(), result.end(),
                                       [&](const Profile& other) { return other.name == profile.name; });
        if (same != result.end())
            *same = std::move(profile);
        else
            result.push_back(std::move(profile));
    }
    return result;
}

Reading<FittingRules> readOver(const FittingRules& builtIn, std::string bytes, const std::string& name)
{
    Reading<FittingRules> reading;
    reading.value.settings = builtIn.settings;
    YamlDocument document(std::move(bytes), name);
    std::vector<Profile> own;
    if (document.readable()) {
        YamlMap top(document, document.root(), {"format", "settings", "profiles"});
        const YamlValue* format = top.need("format");
        if (format && format->text != rulesFormat)
            document.tell(
                Severity::error, *format, "format-unknown",
                {QS_SAY("core", "this is not a rules file of this program; the first key should read "
                                "format: %1"),
                 {rulesFormat}});
        readSettings(top, reading.value.settings);
        const YamlValue* profiles = top.find("profiles");
        if (profiles && profiles->kind != YamlValue::Kind::list)
            document.tell(Severity::error, *profiles, "profiles-not-a-list",
                          {QS_SAY("core", "`profiles` is a list; begin each profile with a dash"), {}});
        if (profiles)
            for (const auto& item : profiles->items)
                if (profiles->kind == YamlValue::Kind::list)
                    readProfile(document, item, builtIn.profiles, own);
    }
    reading.value.profiles = merged(builtIn.profiles, std::move(own));
    reading.value.hash = rulesHash(reading.value);
    reading.findings = document.takeFindings();
    return reading;
}

FittingRules readDefaults()
{
    auto reading = readOver({}, std::string(defaultRulesText()), "rules.yaml (built in)");
    assert(reading.findings.empty());
    return std::move(reading.value);
}

} // namespace

const FittingRules& defaultRules()
{
    static const FittingRules rules = readDefaults();
    return rules;
}

Reading<FittingRules> readRulesFile(const std::string& path)
{
    auto bytes = readBytes(path);
    if (bytes.usable())
        return readRulesText(std::move(bytes.value), path);
    return {defaultRules(), std::move(bytes.findings)};
}

Reading<FittingRules> readRulesText(std::string bytes, const std::string& name)
{
    return readOver(defaultRules(), std::move(bytes), name);
}

} // namespace quarterstep
