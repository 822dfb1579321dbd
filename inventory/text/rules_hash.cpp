// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/rules_hash.hpp"

#include "core/fitting/criteria/table.hpp"
#include "inventory/text/numbers.hpp"

#include <QCryptographicHash>
#include <algorithm>

namespace quarterstep
{

namespace
{

std::string limitText(const std::optional<Limit>& limit)
{
    std::string text = limit && limit->open ? "<" : "";
    return text.append(limit ? writeNumber(limit->value) : "-");
}

std::string bandsText(const Bands& bands)
{
    return limitText(bands.fits)
        .append("|")
        .append(limitText(bands.caution))
        .append("|")
        .append(limitText(bands.trial));
}

std::string optionalText(const std::optional<double>& value)
{
    return value ? writeNumber(*value) : "-";
}

/// Fields of one line, parted by tabs.
std::string row(const std::vector<std::string>& fields)
{
    std::string text;
    for (const auto& field : fields)
        text.append(text.empty() ? "" : "\t").append(field);
    return text.append("\n");
}

std::string yesNo(bool value)
{
    return value ? "yes" : "no";
}

std::string rangeText(const Range& range)
{
    return writeNumber(range.least).append("..").append(writeNumber(range.most));
}

std::string ruleRow(const char* name, const CriterionRule& rule)
{
    std::string steps;
    for (const auto& step : rule.byCylinder)
        steps.append(writeNumber(step.cylinder)).append(":").append(writeNumber(step.fits)).append(";");
    return row({name, yesNo(rule.judged), bandsText(rule.bands), yesNo(rule.neverFails),
                optionalText(rule.olderFrom), bandsText(rule.older), bandsText(rule.minus.value_or(Bands{})),
                optionalText(rule.hyperopicChildUnder), optionalText(rule.needsPrismUnder),
                optionalText(rule.vertexAbove), steps, rule.source});
}

} // namespace

std::string canonicalRules(const FittingRules& rules)
{
    const Settings& settings = rules.settings;
    std::string text =
        row({"settings", writeNumber(settings.stockVertex), rangeText(settings.adultDistancePd),
             rangeText(settings.adultNearPd), rangeText(settings.unknownCentres),
             yesNo(settings.useUsedPairs), yesNo(settings.holdBackSecondPair)});
    std::vector<const Profile*> profiles;
    profiles.reserve(rules.profiles.size());
    for (const auto& profile : rules.profiles)
        profiles.push_back(&profile);
    std::sort(profiles.begin(), profiles.end(),
              [](const Profile* a, const Profile* b) { return a->name < b->name; });
    for (const Profile* profile : profiles) {
        text += row({"profile", profile->name, profile->version, yesNo(profile->prismByDecentration)});
        for (const auto& info : criterionTable())
            text += ruleRow(info.name, profile->of(info.criterion));
    }
    return text;
}

std::string rulesHash(const FittingRules& rules)
{
    return rulesHash(canonicalRules(rules));
}

std::string rulesHash(const std::string& canonicalText)
{
    constexpr int digits = 16;
    const auto bytes = QByteArray::fromStdString(canonicalText);
    return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().left(digits).toStdString();
}

} // namespace quarterstep
