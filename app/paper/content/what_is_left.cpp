// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/content/what_is_left.hpp"

#include "app/paper/content/paper_words.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/clear_range.hpp"
#include "core/fitting/reasons.hpp"

#include <QCoreApplication>

#include <cmath>

namespace quarterstep
{
namespace
{

constexpr double told125 = 0.125 - 1e-6; // D
constexpr double toldPrism = 0.5 - 1e-6; // prism dioptres
constexpr double mmPerCm = 10.0;

QString amount(double value)
{
    return ltr(twoDecimals(std::abs(value)));
}

QString sphereWords(double m, bool near)
{
    const char* const text =
        near ? (m > 0.0
                    ? QT_TRANSLATE_NOOP("paper", "%1 stronger than written: hold things a little nearer")
                    : QT_TRANSLATE_NOOP("paper", "%1 weaker than written: hold things a little further away"))
             : (m > 0.0 ? QT_TRANSLATE_NOOP("paper",
                                            "%1 more plus than written: far things are a little less sharp")
                        : QT_TRANSLATE_NOOP(
                              "paper", "%1 more minus than written: the eye has to focus a little more"));
    return paperWords(text).arg(amount(m));
}

QString cylinderWords(double cylinder)
{
    return paperWords(QT_TRANSLATE_NOOP("paper", "%1 of the cylinder is not in the lens: fine lines are a "
                                                 "little less sharp"))
        .arg(amount(cylinder));
}

/// What is left in one eye; empty when nothing is worth telling.
QStringList leftIn(const PowerVector& error, bool near)
{
    QStringList words;
    if (std::abs(error.m) >= told125)
        words << sphereWords(error.m, near);
    const double cylinder = 2.0 * std::hypot(error.j0, error.j45);
    if (cylinder >= 2.0 * told125)
        words << cylinderWords(cylinder);
    return words;
}

QStringList eyeLines(const Need& need, const Fit& fit)
{
    QStringList lines;
    PerEye<QString> words;
    int judged = 0;
    for (const Eye eye : bothEyes)
        if (const auto& each = fit.eyes.of(eye)) {
            ++judged;
            auto found = leftIn(each->error, need.nearWork());
            if (each->nearError && std::abs(each->nearError->m) >= told125)
                found << paperWords(QT_TRANSLATE_NOOP("paper", "near part: %1"))
                             .arg(sphereWords(each->nearError->m, true));
            words.of(eye) = found.join(QStringLiteral("; "));
        }
    if (judged == 2 && words.right == words.left) {
        if (!words.right.isEmpty())
            lines << paperWords(QT_TRANSLATE_NOOP("paper", "Both eyes")) + QStringLiteral(": ") +
                         words.right + QLatin1Char('.');
        return lines;
    }
    for (const Eye eye : bothEyes)
        if (!words.of(eye).isEmpty())
            lines << eyeName(eye) + QStringLiteral(": ") + words.of(eye) + QLatin1Char('.');
    return lines;
}

QString clearWords(const Range& clear)
{
    const auto cm = [](double mm) { return ltr(QString::number(std::lround(mm / mmPerCm))); };
    if (std::isinf(clear.most))
        return paperWords(QT_TRANSLATE_NOOP("paper", "Things are clear from about %1 cm."))
            .arg(cm(clear.least));
    return paperWords(QT_TRANSLATE_NOOP("paper", "Things are clear from about %1 to %2 cm."))
        .arg(cm(clear.least), cm(clear.most));
}

} // namespace

QStringList whatIsLeft(const Need& need, const Fit& fit)
{
    QStringList lines = eyeLines(need, fit);
    if (lines.isEmpty())
        lines << paperWords(
            QT_TRANSLATE_NOOP("paper", "The lenses have the power that was written for you."));
    if (std::abs(fit.prism.horizontal) >= toldPrism)
        lines << paperWords(QT_TRANSLATE_NOOP("paper", "The middle of the lenses is not quite before the "
                                                       "middle of the eyes: the first days may feel odd."));
    if (const auto clear = clearRange(need, fit))
        lines << clearWords(*clear);
    return lines;
}

} // namespace quarterstep
