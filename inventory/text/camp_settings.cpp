// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/camp_settings.hpp"

#include "inventory/text/source_text.hpp"
#include "inventory/text/yaml_map.hpp"

namespace quarterstep
{

namespace
{

constexpr const char* deskFormat = "quarterstep desk 1";
constexpr const char* cylinderWords[] = {"minus", "plus"};
constexpr const char* acuityWords[] = {"as recorded", "metres", "feet", "decimal", "logMAR"};

std::string doubleQuoted(const std::string& text)
{
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\')
            quoted += '\\';
        quoted += c;
    }
    return quoted + '"';
}

} // namespace

std::string campSettingsPath(const std::string& folder)
{
    return folder + "/desk.yaml";
}

Reading<CampSettings> readCampSettings(const std::string& folder)
{
    auto bytes = readBytes(campSettingsPath(folder));
    if (bytes.usable())
        return readCampSettingsText(std::move(bytes.value), campSettingsPath(folder));
    if (bytes.findings.front().code == "file-missing")
        return {};
    return {{}, std::move(bytes.findings)};
}

Reading<CampSettings> readCampSettingsText(std::string bytes, const std::string& name)
{
    Reading<CampSettings> result;
    YamlDocument document(std::move(bytes), name);
    if (document.readable()) {
        YamlMap map(document, document.root(), {"format", "sample", "cylinder", "acuity", "profile"});
        if (const auto* format = map.isMap() ? map.need("format") : nullptr;
            format != nullptr && document.text(*format).value_or("") != deskFormat)
            document.tell(Severity::error, *format, "format-unknown",
                          {QS_SAY("core", "the format is \"%1\", not \"%2\""),
                           {deskFormat, shown(document.text(*format).value_or(""))}});
        auto& settings = result.value;
        settings.sample = map.yesNo("sample").value_or(false);
        if (const auto word = map.word("cylinder", {cylinderWords[0], cylinderWords[1]}))
            settings.cylinder = static_cast<ShownCylinder>(*word);
        if (const auto word = map.word(
                "acuity", {acuityWords[0], acuityWords[1], acuityWords[2], acuityWords[3], acuityWords[4]}))
            settings.acuity = static_cast<ShownAcuity>(*word);
        settings.profile = map.text("profile").value_or("");
    }
    result.findings = document.takeFindings();
    return result;
}

std::string writeCampSettings(const CampSettings& settings)
{
    std::string text = "# How the desk shows this camp; written by its settings.\n";
    text += std::string("format: ") + deskFormat + "\n";
    if (settings.sample)
        text += "sample: yes\n";
    text += std::string("cylinder: ") + cylinderWords[static_cast<std::size_t>(settings.cylinder)] + "\n";
    text += std::string("acuity: ") + acuityWords[static_cast<std::size_t>(settings.acuity)] + "\n";
    if (!settings.profile.empty())
        text += "profile: " + doubleQuoted(settings.profile) + "\n";
    return text;
}

} // namespace quarterstep
