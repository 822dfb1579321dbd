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
    return limitText(bands.fits) + "|" + limitText(bands.caution) + "|" + limitText(bands.trial);
}

std::string optionalText(const std::optional<double>& value)
{
    return value ? writeNumber(*value) : "-";
}

std::string ruleText(const CriterionRule& rule)
{
    std::string text = std::string(rule.judged ? "judged" : "shown") + "\t" + bandsText(rule.bands);
    text += "\t" + std::string(rule.neverFails ? "never fails" : "-");
    text += "\t" + optionalText(rule.olderFrom) + "\t" + bandsText(rule.older);
    text += "\t" + optionalText(rule.hyperopicChildUnder) + "\t" + optionalText(rule.needsPrismUnder);
    text += "\t" + optionalText(rule.vertexAbove) + "\t";
    for (const auto& step : rule.byCylinder)
        text += writeNumber(step.cylinder) + ":" + writeNumber(step.fits) + ";";
    return text + "\t" + rule.source + "\n";
}

std::string rangeText(const Range& range)
{
    return writeNumber(range.least) + ".." + writeNumber(range.most);
}

} // namespace

std::string canonicalRules(const FittingRules& rules)
{
    const Settings& settings = rules.settings;
    std::string text = "settings\t" + writeNumber(settings.stockVertex) + "\t" +
                       rangeText(settings.adultDistancePd) + "\t" + rangeText(settings.adultNearPd) + "\t" +
                       rangeText(settings.unknownCentres) + "\t" + (settings.useUsedPairs ? "yes" : "no") +
                       "\t" + (settings.holdBackSecondPair ? "yes" : "no") + "\n";
    std::vector<const Profile*> profiles;
    for (const auto& profile : rules.profiles)
        profiles.push_back(&profile);
    std::sort(profiles.begin(), profiles.end(),
              [](const Profile* a, const Profile* b) { return a->name < b->name; });
    for (const Profile* profile : profiles) {
        text += "profile\t" + profile->name + "\t" + profile->version + "\t" +
                (profile->prismByDecentration ? "yes" : "no") + "\n";
        for (const auto& info : criterionTable())
            text += std::string(info.name) + "\t" + ruleText(profile->of(info.criterion));
    }
    return text;
}

std::string rulesHash(const FittingRules& rules)
{
    constexpr int digits = 16;
    const auto bytes = QByteArray::fromStdString(canonicalRules(rules));
    return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().left(digits).toStdString();
}

} // namespace quarterstep
