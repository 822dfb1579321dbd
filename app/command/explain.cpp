// SPDX-License-Identifier: GPL-3.0-or-later
// The explanation of one fit, for people: crosses, criteria, sources.
#include "app/command/explain.hpp"

#include "app/command/answers.hpp"
#include "app/command/output.hpp"
#include "app/command/picked.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/fit_chance.hpp"
#include "core/fitting/reasons.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace quarterstep
{
namespace
{

QString eyeWord(Eye eye)
{
    return eye == Eye::right ? commandWords(QT_TRANSLATE_NOOP("command", "right"))
                             : commandWords(QT_TRANSLATE_NOOP("command", "left"));
}

QString powerText(const SpheroCylinder& power)
{
    const SpheroCylinder rounded{Dioptres{std::round(power.sphere.value() * 100.0) / 100.0},
                                 Dioptres{std::round(power.cylinder.value() * 100.0) / 100.0},
                                 AxisDegrees{std::max(1.0, std::round(power.axis.value()))}};
    return ltr(writePower(rounded));
}

/// "+2.00 along 180, +1.50 along 90".
QString crossText(const OpticalCross& cross)
{
    const auto meridian = [](double degrees) { return QString::number(std::lround(degrees)); };
    return commandWords(QT_TRANSLATE_NOOP("command", "%1 along %2, %3 along %4"))
        .arg(ltr(dioptres(cross.principal.higher)), meridian(cross.principal.higherMeridian),
             ltr(dioptres(cross.principal.lower)), meridian(cross.principal.lowerMeridian));
}

void showCross(const QString& words, const OpticalCross& cross, Output& out)
{
    out.line(QStringLiteral("  %1  %2  (%3)")
                 .arg(words.leftJustified(9), powerText(cross.power), crossText(cross)));
}

void showEye(Eye eye, const Explained& told, Output& out)
{
    const auto& crosses = told.pair.crosses.of(eye);
    if (!crosses) {
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "%1 eye: not judged")).arg(eyeWord(eye)));
        return;
    }
    const auto& fit = *told.pair.candidate.fit.eyes.of(eye);
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "%1 eye")).arg(eyeWord(eye)));
    showCross(commandWords(QT_TRANSLATE_NOOP("command", "need")), crosses->need, out);
    showCross(commandWords(QT_TRANSLATE_NOOP("command", "pair")), crosses->pair, out);
    showCross(commandWords(QT_TRANSLATE_NOOP("command", "error")), crosses->error, out);
    out.line(commandWords(QT_TRANSLATE_NOOP(
                              "command", "  M %1, J0 %2, J45 %3, blur strength %4 D; expected loss %5 logMAR "
                                         "(Blendowske, Optom Vis Sci 2015)"))
                 .arg(ltr(dioptres(fit.error.m)), ltr(dioptres(fit.error.j0)), ltr(dioptres(fit.error.j45)),
                      QString::fromStdString(twoDecimals(fit.blur)),
                      QString::fromStdString(twoDecimals(fit.loss))));
    if (fit.nearError) {
        const double needed = told.answer.need->eyes.of(eye).addition;
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "  near portion: M %1, blur strength %2 D"))
                     .arg(ltr(dioptres(fit.nearError->m)),
                          QString::fromStdString(twoDecimals(blurStrength(*fit.nearError)))));
        out.line(commandWords(QT_TRANSLATE_NOOP("command",
                                                "  addition: %1 of the pair, %2 needed (shown, not judged)"))
                     .arg(ltr(dioptres(needed + fit.nearError->m - fit.error.m)), ltr(dioptres(needed))));
    }
    if (const auto& chance = told.pair.candidate.chance.of(eye))
        out.line(commandWords(
                     QT_TRANSLATE_NOOP("command", "  chance that the true blur lies within its limit: %1"))
                     .arg(QString::fromStdString(twoDecimals(*chance))));
}

QString amount(const CriterionResult& result, double value)
{
    const QString unit = QString::fromUtf8(infoOf(result.criterion).unit);
    const QString number = QString::fromStdString(twoDecimals(value));
    return unit.isEmpty() ? number : number + QLatin1Char(' ') + unit;
}

void showCriterion(const CriterionResult& result, Output& out)
{
    QStringList cells{QStringLiteral("  ") + say(result.criterion)};
    if (result.eye)
        cells << eyeWord(*result.eye);
    cells << (result.band == Band::notMeasured ? QStringLiteral("–") : amount(result, result.measured));
    if (result.limit)
        cells << commandWords(QT_TRANSLATE_NOOP("command", "limit %1")).arg(amount(result, *result.limit));
    cells << say(result.band);
    if (!result.note.empty())
        cells << say(result.note);
    if (!result.source.empty())
        cells << commandWords(QT_TRANSLATE_NOOP("command", "source: %1"))
                     .arg(QString::fromStdString(result.source));
    out.line(cells.join(QStringLiteral("; ")));
}

void showPairLevel(const Explained& told, Output& out)
{
    const auto& fit = told.pair.candidate.fit;
    if (fit.eyes.right && fit.eyes.left) {
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "horizontal prism %1, vertical prism %2"))
                     .arg(prismWords(fit.prism.horizontal),
                          told.pair.candidate.supply.heightsDiffer
                              ? QString::fromStdString(twoDecimals(fit.prism.vertical))
                              : say(Band::notMeasured)));
        out.line(commandWords(QT_TRANSLATE_NOOP("command",
                                                "vertical imbalance 10 mm below the centres: %1, of the "
                                                "full correction %2, excess %3"))
                     .arg(QString::fromStdString(twoDecimals(std::abs(fit.readingLevelPair))),
                          QString::fromStdString(twoDecimals(std::abs(fit.readingLevelFull))),
                          QString::fromStdString(twoDecimals(told.pair.readingLevelExcess))));
    }
    if (const auto& clear = told.pair.clear)
        out.line(std::isinf(clear->most)
                     ? commandWords(QT_TRANSLATE_NOOP("command", "clear from %1 cm on"))
                           .arg(std::lround(clear->least / 10.0))
                     : commandWords(QT_TRANSLATE_NOOP("command", "clear from %1 to %2 cm"))
                           .arg(std::lround(clear->least / 10.0))
                           .arg(std::lround(clear->most / 10.0)));
}

void showExplained(const Explained& told, std::span<const StockLine> stock, Output& out)
{
    const auto& answer = told.answer;
    const auto& candidate = told.pair.candidate;
    QStringList pulled;
    for (const auto& part : candidate.parts)
        pulled << pullWords(part, stock);
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "%1, %2, by the rules %3 (version %4): %5"))
                 .arg(ltr(answer.person), say(answer.purpose), ltr(answer.profile), ltr(told.profileVersion),
                      pulled.join(QStringLiteral(", "))));
    out.line(say(candidate.fit.band));
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "answer for this person: %1; %2"))
                 .arg(say(answer.verdict), say(answer.reason)));
    for (const Eye eye : bothEyes)
        showEye(eye, told, out);
    showPairLevel(told, out);
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "criteria:")));
    for (const auto& result : candidate.fit.criteria)
        showCriterion(result, out);
    if (told.pair.change)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "single change: %1"))
                     .arg(say(told.pair.change->sentence)));
    else if (candidate.fit.band == Band::fails)
        out.line(
            commandWords(QT_TRANSLATE_NOOP("command", "no single change would bring it within the limits")));
    if (told.above)
        out.line(say(told.above->sentence));
    if (told.otherFails)
        out.line(say(*told.otherFails));
    const Eye seeing = answer.need->eyes.right.seeing ? Eye::right : Eye::left;
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "scatter of the refraction from: %1"))
                 .arg(QString::fromUtf8(answer.need->eyes.of(seeing).scatterSource)));
    for (const auto& flag : answer.flags)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "note: %1; source: %2"))
                     .arg(say(flag.sentence), QString::fromStdString(flag.source)));
}

Error refusal(const char* code, Sentence sentence)
{
    return errorSaying(code, std::move(sentence), Exit::badData);
}

Explanation explained(const std::string& names, const Recommendation& answer, const Box& box,
                      const Profile& profile, const std::optional<TrialAcuity>& trial)
{
    const auto parts = partsNamed(linesTyped(names), box.stock);
    auto pair =
        explainPair(*answer.need, parts, box.stock, profile, box.rules.settings, trial ? &*trial : nullptr);
    if (!pair)
        throw refusal(
            "not-a-pair",
            {QS_SAY("core", "%1 does not make a pair; name a ready-made pair, or frame, right lens, left "
                            "lens separated by commas"),
             {names}});
    return *std::move(pair);
}

void compare(const CommandLine& line, const Box& box, const Profile& profile,
             const std::optional<TrialAcuity>& trial, const MatchOptions& options, Explained& told)
{
    const auto other = explained(line.value("--above"), told.answer, box, profile, trial);
    told.above = whyAbove(*told.answer.need, box.stock, profile, options.candidates, told.pair.candidate,
                          other.candidate);
    if (told.above->step != RankStep::outsideLimit)
        return;
    const auto& lower = told.above->firstAbove ? other.candidate : told.pair.candidate;
    if (const auto* failing = lower.fit.firstWith(Band::fails))
        told.otherFails = failingSentence(*failing);
}

} // namespace

int runExplain(const CommandLine& line, const Box& box, const MatchOptions& options,
               const std::vector<PersonRecord>& people, Output& out)
{
    const auto& typed = line.values.at("--explain");
    const auto& person = personNamed(typed.at(0), line, people);
    const auto trial = trialOf(line, person);
    Explained told;
    told.answer = chosenPurpose(line, recommend(person, box.stock, box.rules, options));
    const auto* profile = box.rules.find(told.answer.profile);
    if (!told.answer.need || profile == nullptr)
        throw refusal("nothing-to-judge",
                      {QS_SAY("core", "nothing can be judged for %1 yet: the prescription is not complete"),
                       {person.person}});
    told.profileVersion = profile->version;
    told.pair = explained(typed.at(1), told.answer, box, *profile, trial);
    if (line.has("--above"))
        compare(line, box, *profile, trial, options, told);
    if (line.has("--json"))
        out.json(jsonExplained(told, box.stock));
    else
        showExplained(told, box.stock, out);
    return told.pair.candidate.fit.acceptable() ? Exit::done : Exit::unserved;
}

} // namespace quarterstep
