// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/words.hpp"

#include "app/desk/shown.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/reasons.hpp"

#include <QStringList>

#include <algorithm>
#include <cmath>
#include <map>

namespace quarterstep
{

namespace
{
/// Hundredths, half away from zero, so that nothing prints as -0.00.
long hundredths(double value)
{
    return std::lround(value * 100.0);
}

/// Not to be broken into lines.
QString together(QString text)
{
    return text.replace(QLatin1Char(' '), QChar(QChar::Nbsp));
}
} // namespace

QString DeskWords::size(double value)
{
    return QString::fromStdString(twoDecimals(std::abs(value)));
}

QString DeskWords::powers(const Supply& supply)
{
    const auto right = ltr(shownPower(supply.power.right));
    const auto left = ltr(shownPower(supply.power.left));
    auto text = together(right);
    if (right != left) // right before left in any language, as it is written on a prescription
        text = together(tr("R %1").arg(right)) + QStringLiteral("  ") + together(tr("L %1").arg(left));
    if (supply.bifocalAddition)
        text = tr("%1 add %2").arg(text, ltr(writeDioptres(*supply.bifocalAddition)));
    return ltr(text);
}

QString DeskWords::pull(const std::vector<Part>& parts, std::span<const StockLine> stock)
{
    auto ordered = parts; // pair, right, left, frame: the order in which they are fetched and mounted
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](const Part& a, const Part& b) { return a.side < b.side; });
    QStringList words;
    for (const auto& part : ordered)
        words << pullWords(part, stock)
                     .replace(QLatin1Char(' '), QChar(QChar::Nbsp)); // lines break between parts only
    return words.join(QStringLiteral(" · "));
}

int DeskWords::available(const std::vector<Part>& parts, std::span<const StockLine> stock)
{
    std::map<std::size_t, int> uses;
    for (const auto& part : parts)
        ++uses[part.line];
    int least = parts.empty() ? 0 : 1'000'000;
    for (const auto& [line, times] : uses)
        least = std::min(least, line < stock.size() ? std::max(0, stock[line].available()) / times : 0);
    return least;
}

QString DeskWords::residual(const std::optional<EyeFit>& eye, Purpose purpose)
{
    if (!eye)
        return tr("not judged");
    const bool near = purpose == Purpose::near || purpose == Purpose::intermediate;
    const auto mean = hundredths(eye->error.m);
    const auto cylinder = cylinderSize(eye->error);
    QStringList words;
    if (mean > 0)
        words << (near ? tr("%1 too strong") : tr("%1 too plus")).arg(ltr(size(eye->error.m)));
    if (mean < 0)
        words << (near ? tr("%1 too weak") : tr("%1 too minus")).arg(ltr(size(eye->error.m)));
    if (hundredths(cylinder) > 0)
        words << tr("cylinder %1 left").arg(ltr(size(cylinder)));
    return words.isEmpty() ? tr("nothing left") : words.join(tr(", "));
}

QString DeskWords::prism(const Fit& fit)
{
    return ltr(prismWords(fit.prism.horizontal));
}

QString DeskWords::verdict(const Fit& fit)
{
    switch (fit.band) {
    case Band::fits:
    case Band::shown:
    case Band::notMeasured:
        return tr("Suggested");
    case Band::caution:
        return tr("Fits with caution");
    case Band::onTrial:
        return tr("On trial: type the acuity");
    case Band::fails:
        break;
    }
    return tr("Outside limit");
}

QString DeskWords::triedVerdict(const Fit& fit)
{
    if (fit.onTrial())
        return verdict(fit);
    return fit.acceptable() ? tr("Tried on: acceptable") : tr("Tried on: outside limit");
}

QString DeskWords::unit(Criterion criterion)
{
    const auto name = QLatin1String(infoOf(criterion).unit);
    if (name == QLatin1String("pd"))
        return QStringLiteral("Δ");
    if (name == QLatin1String("degrees"))
        return QStringLiteral("°");
    if (name == QLatin1String("logmar"))
        return QStringLiteral("logMAR");
    return name;
}

QString DeskWords::reason(const Fit& fit)
{
    const auto* result = fit.band == Band::fits ? nullptr : fit.firstWith(fit.band);
    if (!result)
        return {};
    auto sentence = say(fit.band == Band::fails ? failingSentence(*result) : cautionSentence(*result));
    if (!result->eye)
        return sentence;
    return (*result->eye == Eye::right ? tr("right eye: %1") : tr("left eye: %1")).arg(sentence);
}

} // namespace quarterstep
