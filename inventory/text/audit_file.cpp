// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/audit_file.hpp"

#include "inventory/defaults/default_texts.hpp"
#include "inventory/text/source_text.hpp"
#include "inventory/text/yaml_map.hpp"

#include <cassert>

namespace quarterstep
{

namespace
{

constexpr const char* auditFormat = "quarterstep audit 1";
constexpr double leastForNull = 0.9; ///< of all hand-overs are meant as they are, whatever a file says

/// A name of the file and where its value goes.
struct AuditName {
    const char* name;
    double least;
    double most;
    double* place;
};

std::vector<AuditName> thresholdNames(AuditSettings& settings)
{
    auto& limits = settings.thresholds;
    return {{"regret", 0.0, 2.0, &limits.regret},
            {"acuity shortfall", 0.0, 2.0, &limits.acuityShortfall},
            {"collect days", 0.0, 3650.0, &limits.collectDays},
            {"interim days", 0.0, 3650.0, &limits.interimDays},
            {"letter days", 0.0, 3650.0, &limits.letterDays},
            {"duplicate days", 0.0, 3650.0, &limits.duplicateDays},
            {"corrections a day", 1.0, 1000.0, &limits.correctionsADay},
            {"off label", 0.01, 5.0, &limits.offLabel}};
}

std::vector<AuditName> witnessNames(AuditSettings& settings)
{
    auto& model = settings.slips;
    return {{"objective M", 0.05, 5.0, &model.objectiveM},
            {"objective J", 0.05, 5.0, &model.objectiveJ},
            {"far share", 0.0, 0.5, &model.farShare},
            {"worn M", 0.05, 5.0, &model.wornM},
            {"worn J", 0.05, 5.0, &model.wornJ},
            {"acuity", 0.02, 1.0, &model.acuity},
            {"worn addition", 0.05, 5.0, &model.wornAddition},
            {"near acuity", 0.02, 1.0, &model.nearAcuity},
            {"PD", 0.1, 10.0, &model.pd},
            {"focimeter M", 0.01, 1.0, &model.focimeterM},
            {"focimeter J", 0.01, 1.0, &model.focimeterJ},
            {"card wrong", 1e-4, 0.5, &model.cardWrong},
            {"count differs", 1e-4, 0.9, &model.countDiffers}};
}

std::vector<AuditName> habitNames(AuditSettings& settings)
{
    auto& model = settings.slips;
    return {{"suggested given", 0.5, 0.999, &model.suggestedGiven},
            {"outside given", 1e-6, 0.5, &model.outsideGiven},
            {"outside with reason", 1e-6, 1.0, &model.outsideWithReason},
            {"second pair", 1e-6, 0.5, &model.secondPair},
            {"told from", 0.1, 1.0, &model.told}};
}

std::vector<AuditName> priorNames(AuditSettings& settings)
{
    std::vector<AuditName> names;
    for (const auto& info : slipTable())
        if (info.kind != SlipKind::none)
            names.push_back(
                {info.word, 0.0, 0.1, &settings.slips.prior[static_cast<std::size_t>(info.kind)]});
    return names;
}

void readAuditRow(YamlDocument& document, const YamlValue& item, const std::vector<AuditName>& names,
                  AuditSettings& settings)
{
    YamlMap map(document, item, {"name", "value", "source"});
    const auto* name = map.need("name");
    const auto* value = map.need("value");
    const auto* source = map.need("source");
    if (name == nullptr || value == nullptr || source == nullptr)
        return;
    const auto text = document.text(*name).value_or("");
    for (const auto& known : names)
        if (text == known.name) {
            if (const auto number = document.number(*value, known.least, known.most))
                *known.place = *number;
            settings.sources[text] = document.text(*source).value_or("");
            return;
        }
    std::vector<const char*> words;
    words.reserve(std::size(names));
    for (const auto& known : names)
        words.push_back(known.name);
    document.tell(
        Severity::error, *name, "audit-name",
        {QS_SAY("core", "\"%1\" is not a name here; write one of %2"), {shown(text), listed(words)}});
}

void readPart(YamlMap& top, const char* key, const std::vector<AuditName>& names, AuditSettings& settings)
{
    const auto* list = top.find(key);
    if (list == nullptr)
        return;
    if (list->kind != YamlValue::Kind::list) {
        top.document().tell(Severity::error, *list, "audit-not-a-list",
                            {QS_SAY("core", "write a list: one name, value and source a line"), {}});
        return;
    }
    for (const auto& item : list->items)
        readAuditRow(top.document(), item, names, settings);
}

Reading<AuditSettings> readAuditOver(const AuditSettings& builtIn, const std::string& bytes,
                                     const std::string& name)
{
    Reading<AuditSettings> reading;
    reading.value = builtIn;
    YamlDocument document(bytes, name);
    if (document.readable()) {
        YamlMap top(document, document.root(), {"format", "thresholds", "witnesses", "habits", "priors"});
        const auto* format = top.need("format");
        if (format != nullptr && format->text != auditFormat)
            document.tell(
                Severity::error, *format, "format-unknown",
                {QS_SAY("core", "this is not an audit file of this program; the first key should read "
                                "format: %1"),
                 {auditFormat}});
        readPart(top, "thresholds", thresholdNames(reading.value), reading.value);
        readPart(top, "witnesses", witnessNames(reading.value), reading.value);
        readPart(top, "habits", habitNames(reading.value), reading.value);
        readPart(top, "priors", priorNames(reading.value), reading.value);
        if (reading.value.slips.priorOf(SlipKind::none) < leastForNull)
            document.tell(
                Severity::error, document.root(), "audit-priors",
                {QS_SAY("core", "these priors say that more than one hand-over in ten holds a slip; make "
                                "them smaller"),
                 {}});
    }
    reading.findings = document.takeFindings();
    return reading;
}

AuditSettings readDefaultAudit()
{
    auto reading = readAuditOver({}, std::string(defaultAuditText()), "audit.yaml (built in)");
    assert(reading.findings.empty());
    return std::move(reading.value);
}

} // namespace

const AuditSettings& defaultAuditSettings()
{
    static const AuditSettings settings = readDefaultAudit();
    return settings;
}

Reading<AuditSettings> readAuditText(const std::string& bytes, const std::string& name)
{
    return readAuditOver(defaultAuditSettings(), bytes, name);
}

Reading<AuditSettings> readAuditFile(const std::string& path)
{
    const auto bytes = readBytes(path);
    if (bytes.usable())
        return readAuditText(bytes.value, path);
    return {defaultAuditSettings(), bytes.findings};
}

} // namespace quarterstep
