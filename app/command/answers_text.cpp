// SPDX-License-Identifier: GPL-3.0-or-later
// One line for people: person, purpose, verdict, referral, lines with bin and side, error per eye, prism,
// reason.
#include "app/command/answers.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/fit_chance.hpp"
#include "core/fitting/reasons.hpp"

#include <QCoreApplication>
#include <QStringList>

namespace quarterstep
{
namespace
{

QString eyeWords(Eye eye, const std::optional<EyeFit>& fit)
{
    const QString side = eye == Eye::right ? commandWords(QT_TRANSLATE_NOOP("command", "R"))
                                           : commandWords(QT_TRANSLATE_NOOP("command", "L"));
    if (!fit)
        return side + QStringLiteral(" –");
    return side + QLatin1Char(' ') + ltr(dioptres(fit->error.m)) + QStringLiteral(" b ") +
           QString::number(fit->blur, 'f', 2);
}

/// Where the PD or the centres are not known, the prism that may come at worst.
QString prismOf(const Fit& fit)
{
    if (fit.horizontalPrismRange)
        return commandWords(QT_TRANSLATE_NOOP("command", "prism up to %1"))
            .arg(QString::fromStdString(twoDecimals(fit.prismSize)));
    return commandWords(QT_TRANSLATE_NOOP("command", "prism %1")).arg(prismWords(fit.prism.horizontal));
}

QString fitWords(const Fit& fit)
{
    return QStringLiteral("%1, %2, ")
               .arg(eyeWords(Eye::right, fit.eyes.right), eyeWords(Eye::left, fit.eyes.left)) +
           prismOf(fit);
}

/// Only where it was asked for.
QString chanceWords(const std::optional<double>& chance)
{
    if (!chance)
        return {};
    const auto number = QString::fromStdString(twoDecimals(*chance));
    return QStringLiteral(", ") +
           (*chance < surelyEnough
                ? commandWords(QT_TRANSLATE_NOOP("command", "chance %1: repeat the readings")).arg(number)
                : commandWords(QT_TRANSLATE_NOOP("command", "chance %1")).arg(number));
}

QString pulled(const std::vector<Part>& parts, std::span<const StockLine> stock)
{
    QStringList words;
    for (const auto& part : parts)
        words << pullWords(part, stock);
    return words.join(QStringLiteral(", "));
}

/// The nearest misses, each with the one change that would bring it in.
QStringList changeWords(const Recommendation& answer, std::span<const StockLine> stock)
{
    QStringList words;
    for (std::size_t i = 0; i < answer.changes.size(); ++i)
        if (const auto& change = answer.changes[i])
            words << commandWords(QT_TRANSLATE_NOOP("command", "%1 %2"))
                         .arg(pulled(answer.candidates.misses[i].parts, stock), say(change->sentence));
    return words;
}

} // namespace

QString recommendationLine(const Recommendation& answer, std::span<const StockLine> stock)
{
    QStringList cells{ltr(answer.person), say(answer.purpose), say(answer.verdict)};
    if (answer.referral != Referral::no)
        cells << say(answer.referral) + QStringLiteral(" (") + say(answer.urgency) + QLatin1Char(')');
    if (answer.recheck)
        cells << commandWords(QT_TRANSLATE_NOOP("command", "measure again"));
    const auto& ranked = answer.candidates.ranked;
    if (!ranked.empty() && (answer.verdict == Verdict::stock || answer.reasonKey == "on_trial"))
        cells << pulled(ranked.front().parts, stock)
              << fitWords(ranked.front().fit) + chanceWords(leastChance(ranked.front().chance));
    if (!answer.reason.empty())
        cells << say(answer.reason);
    if (answer.verdict == Verdict::custom)
        cells << changeWords(answer, stock);
    if (answer.interim)
        cells << temporaryWords() + QLatin1Char(' ') + pulled(answer.interim->parts, stock);
    return cells.join(QStringLiteral("; "));
}

QString temporaryWords()
{
    return commandWords(QT_TRANSLATE_NOOP("command", "Temporary pair. Not for driving."));
}

} // namespace quarterstep
