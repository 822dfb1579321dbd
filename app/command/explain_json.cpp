// SPDX-License-Identifier: GPL-3.0-or-later
// The explanation of one fit as JSON.
#include "app/command/answers.hpp"
#include "app/command/explain.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"

#include <cmath>

namespace quarterstep
{
namespace
{

QJsonObject jsonCross(const OpticalCross& cross)
{
    const bool cylinder = cross.power.cylinder != Dioptres{};
    return {{"sphere", jsonNumber(cross.power.sphere.value())},
            {"cylinder", jsonNumber(cross.power.cylinder.value())},
            {"axis", cylinder ? jsonNumber(cross.power.axis.value()) : QJsonValue(QJsonValue::Null)},
            {"higher", jsonNumber(cross.principal.higher)},
            {"higher_meridian", jsonNumber(cross.principal.higherMeridian)},
            {"lower", jsonNumber(cross.principal.lower)},
            {"lower_meridian", jsonNumber(cross.principal.lowerMeridian)}};
}

QJsonValue jsonCrosses(const std::optional<EyeCrosses>& crosses)
{
    if (!crosses)
        return QJsonValue::Null;
    return QJsonObject{{"need", jsonCross(crosses->need)},
                       {"pair", jsonCross(crosses->pair)},
                       {"error", jsonCross(crosses->error)}};
}

const char* wordOf(RankStep step)
{
    constexpr const char* words[] = {"outside_limit",
                                     "on_trial",
                                     "cost",
                                     "cautions",
                                     "worse_side",
                                     "balance",
                                     "horizontal_prism",
                                     "base_out_at_near",
                                     "frame_size",
                                     "scarcity",
                                     "exact_cost",
                                     "pieces",
                                     "name",
                                     "same"};
    return words[static_cast<std::size_t>(step)];
}

QJsonValue jsonClear(const std::optional<Range>& clear)
{
    if (!clear)
        return QJsonValue::Null;
    return QJsonObject{
        {"from_mm", jsonNumber(clear->least)},
        {"to_mm", std::isinf(clear->most) ? QJsonValue(QJsonValue::Null) : jsonNumber(clear->most)}};
}

} // namespace

QJsonObject jsonExplained(const Explained& told, std::span<const StockLine> stock)
{
    const auto& fit = told.pair.candidate.fit;
    QJsonArray flags;
    for (const auto& flag : told.answer.flags)
        flags.append(jsonFlag(flag));
    QJsonObject object{
        {"person", jsonText(told.answer.person)},
        {"purpose", jsonWord(told.answer.purpose)},
        {"profile", jsonText(told.answer.profile)},
        {"profile_version", jsonText(told.profileVersion)},
        {"verdict", jsonWord(told.answer.verdict)},
        {"band", jsonWord(fit.band)},
        {"crosses", QJsonObject{{"right", jsonCrosses(told.pair.crosses.right)},
                                {"left", jsonCrosses(told.pair.crosses.left)}}},
        {"pair", jsonCandidate(told.pair.candidate, stock)},
        {"reading_level", QJsonObject{{"pair_pd", jsonNumber(std::abs(fit.readingLevelPair))},
                                      {"full_correction_pd", jsonNumber(std::abs(fit.readingLevelFull))},
                                      {"excess_pd", jsonNumber(told.pair.readingLevelExcess)}}},
        {"clear", jsonClear(told.pair.clear)},
        {"single_change", jsonChange(told.pair.change)},
        {"flags", flags}};
    if (told.above)
        object.insert("above", QJsonObject{{"stands_above", told.above->firstAbove},
                                           {"step", wordOf(told.above->step)},
                                           {"text", say(told.above->sentence)},
                                           {"why_outside", told.otherFails ? QJsonValue(say(*told.otherFails))
                                                                           : QJsonValue(QJsonValue::Null)}});
    return object;
}

} // namespace quarterstep
