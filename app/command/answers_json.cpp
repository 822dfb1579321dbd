// SPDX-License-Identifier: GPL-3.0-or-later
// JSON of recommendations.
#include "app/command/answers.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/words.hpp"

#include <array>

namespace quarterstep
{
namespace
{

template <class Items, class Function>
QJsonArray listOf(const Items& items, Function function)
{
    QJsonArray list;
    for (const auto& item : items)
        list.append(function(item));
    return list;
}

QJsonValue jsonEye(const std::optional<EyeFit>& fit)
{
    if (!fit)
        return QJsonValue::Null;
    QJsonObject eye{{"m", jsonNumber(fit->error.m)},
                    {"j0", jsonNumber(fit->error.j0)},
                    {"j45", jsonNumber(fit->error.j45)},
                    {"blur", jsonNumber(fit->blur)},
                    {"loss_logmar", jsonNumber(fit->loss)}};
    if (fit->nearError)
        eye.insert("near", QJsonObject{{"m", jsonNumber(fit->nearError->m)},
                                       {"j0", jsonNumber(fit->nearError->j0)},
                                       {"j45", jsonNumber(fit->nearError->j45)},
                                       {"blur", jsonNumber(blurStrength(*fit->nearError))},
                                       {"addition_off", jsonNumber(fit->nearError->m - fit->error.m)}});
    return eye;
}

/// Bare eyes and the own pair: candidates that need no stock.
QJsonObject jsonWithoutStock(const Fit& fit)
{
    return {{"verdict", jsonWord(fit.band)},
            {"rank_cost", jsonNumber(fit.cost)},
            {"right", jsonEye(fit.eyes.right)},
            {"left", jsonEye(fit.eyes.left)}};
}

QJsonObject jsonCriterion(const CriterionResult& result)
{
    const auto& info = infoOf(result.criterion);
    const bool measured = result.band != Band::notMeasured;
    return {{"name", info.name},
            {"eye", result.eye ? QJsonValue(*result.eye == Eye::right ? "right" : "left")
                               : QJsonValue(QJsonValue::Null)},
            {"measured", measured ? jsonNumber(result.measured) : QJsonValue(QJsonValue::Null)},
            {"limit", jsonNumber(result.limit)},
            {"unit", info.unit},
            {"verdict", jsonWord(result.band)},
            {"source", jsonTextOrNull(result.source)},
            {"note", result.note.empty() ? QJsonValue(QJsonValue::Null) : QJsonValue(say(result.note))}};
}

QJsonArray lineNames(const std::vector<Part>& parts, std::span<const StockLine> stock)
{
    return listOf(parts, [&](const Part& part) { return jsonText(stock[part.line].name); });
}

} // namespace

QJsonObject jsonCandidate(const Candidate& candidate, std::span<const StockLine> stock)
{
    const auto& fit = candidate.fit;
    const auto axis = [](double mounted) {
        return mounted > 0.0 ? jsonNumber(mounted) : QJsonValue(QJsonValue::Null);
    };
    return {
        {"lines", lineNames(candidate.parts, stock)},
        {"sides", listOf(candidate.parts, [](const Part& part) { return QJsonValue(jsonWord(part.side)); })},
        {"bins",
         listOf(candidate.parts, [&](const Part& part) { return jsonTextOrNull(stock[part.line].bin); })},
        {"acceptable", fit.acceptable()},
        {"on_trial", fit.onTrial()},
        {"rank_cost", jsonNumber(fit.cost)},
        {"right", jsonEye(fit.eyes.right)},
        {"left", jsonEye(fit.eyes.left)},
        {"prism_h_pd", jsonNumber(fit.prism.horizontal)},
        {"prism_v_pd", jsonNumber(fit.prism.vertical)},
        {"chance_right", jsonNumber(candidate.chance.right)},
        {"chance_left", jsonNumber(candidate.chance.left)},
        {"axis_mounted_right", axis(candidate.mountedAxis.right)},
        {"axis_mounted_left", axis(candidate.mountedAxis.left)},
        {"alike", listOf(candidate.alike, [&](const auto& parts) { return lineNames(parts, stock); })},
        {"criteria", listOf(fit.criteria, jsonCriterion)}};
}

QJsonObject jsonFlag(const Flag& flag)
{
    return {
        {"code", jsonText(flag.code)}, {"text", say(flag.sentence)}, {"source", jsonTextOrNull(flag.source)}};
}

const char* jsonWord(Verdict verdict)
{
    constexpr const char* words[] = {"stock", "custom", "none", "incomplete", "refer"};
    return words[static_cast<std::size_t>(verdict)];
}

const char* jsonWord(Referral referral)
{
    return wordOf(referral);
}

const char* jsonWord(Urgency urgency)
{
    constexpr const char* words[] = {"routine", "soon", "same day"};
    return words[static_cast<std::size_t>(urgency)];
}

const char* jsonWord(Purpose purpose)
{
    return wordOf(purpose);
}

const char* jsonWord(Band band)
{
    constexpr const char* words[] = {"fits", "caution", "on_trial", "fails", "shown", "not_measured"};
    return words[static_cast<std::size_t>(band)];
}

const char* jsonWord(PartSide side)
{
    return wordOf(side);
}

const char* jsonWord(LineKind kind)
{
    constexpr std::array words{"ready-made", "lens", "frame", "other"};
    static_assert(words.size() == static_cast<std::size_t>(LineKind::other) + 1);
    return words[static_cast<std::size_t>(kind)];
}

QJsonObject jsonRecommendation(const Recommendation& answer, std::span<const StockLine> stock)
{
    const auto candidate = [&](const Candidate& each) { return jsonCandidate(each, stock); };
    QJsonObject entry{
        {"person", jsonText(answer.person)},
        {"purpose", jsonWord(answer.purpose)},
        {"profile", jsonText(answer.profile)},
        {"verdict", jsonWord(answer.verdict)},
        {"reason", say(answer.reason)},
        {"reason_key", jsonText(answer.reasonKey)},
        {"referral", jsonWord(answer.referral)},
        {"urgency", answer.referral == Referral::no ? QJsonValue(QJsonValue::Null)
                                                    : QJsonValue(jsonWord(answer.urgency))},
        {"recheck", answer.recheck},
        {"second_pair", answer.secondPair},
        {"flags", listOf(answer.flags, jsonFlag)},
        {"needs", listOf(answer.needs, [](const Sentence& need) { return QJsonValue(say(need)); })},
        {"candidates", listOf(answer.candidates.ranked, candidate)},
        {"misses", listOf(answer.candidates.misses, candidate)}};
    if (answer.bareEyes)
        entry.insert("bare_eyes", jsonWithoutStock(*answer.bareEyes));
    if (answer.ownPair)
        entry.insert("own_pair", jsonWithoutStock(*answer.ownPair));
    if (answer.interim) {
        auto interim = candidate(*answer.interim);
        interim.insert("words", temporaryWords());
        entry.insert("interim", interim);
    }
    if (!answer.changes.empty())
        entry.insert("single_changes", listOf(answer.changes, jsonChange));
    if (answer.order)
        entry.insert("order", jsonOrder(*answer.order));
    return entry;
}

} // namespace quarterstep
