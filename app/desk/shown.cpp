// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/shown.hpp"

#include "core/optics/notation.hpp"

#include <cmath>

namespace quarterstep
{

namespace
{
CampSettings& shownSettings()
{
    static CampSettings settings; // of the one window; set on its thread
    return settings;
}

/// At most `decimals` digits after the point, none that say nothing.
QString trimmedNumber(double value, int decimals)
{
    auto text = QString::number(value, 'f', decimals);
    while (text.contains(QLatin1Char('.')) &&
           (text.endsWith(QLatin1Char('0')) || text.endsWith(QLatin1Char('.'))))
        text.chop(1);
    return text == QLatin1String("-0") ? QStringLiteral("0") : text;
}
} // namespace

const CampSettings& shownNow()
{
    return shownSettings();
}

void setShownNow(const CampSettings& settings)
{
    shownSettings() = settings;
}

QString shownPower(const SpheroCylinder& power)
{
    return QString::fromStdString(shownNow().cylinder == ShownCylinder::plus ? writePlusForm(power)
                                                                             : writePower(power));
}

/// Snellen's denominator is shown with two figures (6/9.5, 6/12, 20/30), a decimal and logMAR with two
/// decimals: finer than a line of the chart, which is 0.1 logMAR.
QString shownAcuity(const Acuity& acuity)
{
    if (!acuity.logMar)
        return QString::fromStdString(acuity.asRecorded);
    const double value = *acuity.logMar;
    const auto denominator = [value](double numerator) {
        const double exact = snellenDenominator(value, numerator);
        return trimmedNumber(exact < 10.0 ? std::round(exact * 10.0) / 10.0 : std::round(exact), 1);
    };
    switch (shownNow().acuity) {
    case ShownAcuity::metres:
        return QStringLiteral("6/") + denominator(6.0);
    case ShownAcuity::feet:
        return QStringLiteral("20/") + denominator(20.0);
    case ShownAcuity::decimal:
        return QStringLiteral("dec ") + trimmedNumber(decimalFromLogMar(value), 2);
    case ShownAcuity::logMar:
        return QStringLiteral("logMAR ") + trimmedNumber(value, 2);
    case ShownAcuity::asRecorded:
        break;
    }
    return QString::fromStdString(acuity.asRecorded);
}

} // namespace quarterstep
