// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/share_bars.hpp"

#include "app/desk/words.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace quarterstep
{
namespace
{

QString barWords(const char* text)
{
    return QCoreApplication::translate("ShareBars", text);
}

QString signedFigure(double value, int decimals)
{
    const auto size = QString::number(std::abs(value), 'f', decimals);
    const bool nothing = size.toDouble() == 0.0;
    return ltr((nothing ? QString() : value < 0.0 ? QStringLiteral("-") : QStringLiteral("+")) + size);
}

QString costFigure(double cost)
{
    return ltr(QString::number(cost, 'f', 3));
}

QString partName(Eye eye, CostKind kind)
{
    const bool right = eye == Eye::right;
    switch (kind) {
    case CostKind::sphere:
        return right ? barWords(QT_TRANSLATE_NOOP("ShareBars", "Right: mean sphere"))
                     : barWords(QT_TRANSLATE_NOOP("ShareBars", "Left: mean sphere"));
    case CostKind::astigmatism:
        return right ? barWords(QT_TRANSLATE_NOOP("ShareBars", "Right: cylinder"))
                     : barWords(QT_TRANSLATE_NOOP("ShareBars", "Left: cylinder"));
    case CostKind::strain:
        return right ? barWords(QT_TRANSLATE_NOOP("ShareBars", "Right: strain"))
                     : barWords(QT_TRANSLATE_NOOP("ShareBars", "Left: strain"));
    case CostKind::nearSphere:
        return right ? barWords(QT_TRANSLATE_NOOP("ShareBars", "Right, near: mean sphere"))
                     : barWords(QT_TRANSLATE_NOOP("ShareBars", "Left, near: mean sphere"));
    case CostKind::nearAstigmatism:
        break;
    }
    return right ? barWords(QT_TRANSLATE_NOOP("ShareBars", "Right, near: cylinder"))
                 : barWords(QT_TRANSLATE_NOOP("ShareBars", "Left, near: cylinder"));
}

/// The error behind a part: mean sphere with its sign, a cylinder as one writes it (twice the length of J),
/// what the eye makes up for.
QString errorWords(CostKind kind, double error)
{
    if (kind == CostKind::strain)
        return barWords(QT_TRANSLATE_NOOP("ShareBars", "the eye makes up for %1 D"))
            .arg(ltr(QString::number(error, 'f', 2)));
    const bool sphere = kind == CostKind::sphere || kind == CostKind::nearSphere;
    return barWords(QT_TRANSLATE_NOOP("ShareBars", "error %1 D"))
        .arg(sphere ? signedFigure(error, 2) : ltr(QString::number(2.0 * error, 'f', 2)));
}

double endOf(const ShareBars& picture)
{
    double end = 0.0;
    for (const auto& bar : picture.bars)
        end = std::max({end, bar.from, bar.to});
    return end;
}

} // namespace

ShareBars costBars(const Need& need, const Fit* first, const QString& firstName, const Fit& second,
                   const QString& secondName)
{
    ShareBars picture;
    picture.steps = true;
    picture.unit = barWords(QT_TRANSLATE_NOOP("ShareBars", "sight lost, logMAR over the eyes"));
    const auto whole = [&picture](const QString& name, double cost) {
        picture.bars.push_back({name, costFigure(cost), {}, 0.0, cost, ShareBar::Kind::whole});
    };
    if (first != nullptr)
        whole(firstName, first->cost);
    for (const auto& step : costSteps(need, first, second))
        picture.bars.push_back({partName(step.eye, step.kind), signedFigure(step.change(), 3),
                                errorWords(step.kind, step.error), step.from, step.to,
                                step.change() > 0.0 ? ShareBar::Kind::more : ShareBar::Kind::less});
    whole(secondName, second.cost);
    picture.most =
        std::max(endOf(picture), 0.02); // a step of the ranking, so that nothing does not look large
    return picture;
}

ShareBars limitBars(const Fit& fit)
{
    ShareBars picture;
    picture.unit = barWords(QT_TRANSLATE_NOOP("ShareBars", "part of the limit used up"));
    picture.mark = 1.0;
    picture.most = 2.0;
    for (const auto& result : fit.criteria) {
        if (!result.limit || *result.limit <= 0.0 || result.band == Band::notMeasured ||
            result.band == Band::shown)
            continue;
        const double part = result.measured / *result.limit;
        const auto name = say(result.criterion);
        picture.bars.push_back(
            {!result.eye                 ? name
             : *result.eye == Eye::right ? barWords(QT_TRANSLATE_NOOP("ShareBars", "%1, right")).arg(name)
                                         : barWords(QT_TRANSLATE_NOOP("ShareBars", "%1, left")).arg(name),
             ltr(QStringLiteral("%1 %").arg(std::lround(100.0 * part))),
             barWords(QT_TRANSLATE_NOOP("ShareBars", "%1 of %2 %3; %4"))
                 .arg(ltr(DeskWords::size(result.measured)), ltr(DeskWords::size(*result.limit)),
                      ltr(DeskWords::unit(result.criterion)), say(result.band)),
             0.0, std::clamp(part, 0.0, picture.most),
             result.band == Band::fails ? ShareBar::Kind::beyond : ShareBar::Kind::within});
    }
    std::stable_sort(picture.bars.begin(), picture.bars.end(), [](const ShareBar& a, const ShareBar& b) {
        const bool outside = a.kind == ShareBar::Kind::beyond;
        if (outside != (b.kind == ShareBar::Kind::beyond))
            return outside;
        return a.to > b.to;
    });
    if (picture.bars.empty())
        picture.whyNot =
            barWords(QT_TRANSLATE_NOOP("ShareBars", "No criterion with a limit could be judged."));
    return picture;
}

ShareBars reasonBars(const std::vector<FirstReason>& reasons, std::int64_t judged)
{
    ShareBars picture;
    picture.steps = true;
    picture.most = 100.0;
    picture.unit = barWords(QT_TRANSLATE_NOOP("ShareBars", "of 100 hand-overs judged"));
    if (judged == 0) {
        picture.whyNot = barWords(QT_TRANSLATE_NOOP("ShareBars", "No hand-over was judged yet."));
        return picture;
    }
    const auto figure = [](double of100) { return ltr(QString::number(of100, 'f', 1)); };
    const auto counted = [judged](std::int64_t count) {
        return barWords(QT_TRANSLATE_NOOP("ShareBars", "%1 of %2")).arg(count).arg(judged);
    };
    picture.bars.push_back({barWords(QT_TRANSLATE_NOOP("ShareBars", "Judged again")), figure(100.0),
                            counted(judged), 0.0, 100.0, ShareBar::Kind::whole});
    std::int64_t left = judged;
    const auto of100 = [judged](std::int64_t count) {
        return 100.0 * static_cast<double>(count) / static_cast<double>(judged);
    };
    for (const auto& reason : reasons) {
        auto name = say(Sentence{infoOf(reason.kind).words, {}});
        if (reason.criterion)
            name += QStringLiteral(": ") + say(*reason.criterion);
        picture.bars.push_back({name, signedFigure(-of100(reason.count), 1), counted(reason.count),
                                of100(left), of100(left - reason.count), ShareBar::Kind::less});
        left -= reason.count;
    }
    picture.bars.push_back({barWords(QT_TRANSLATE_NOOP("ShareBars", "Pair and record agree")),
                            figure(of100(left)), counted(left), 0.0, of100(left), ShareBar::Kind::whole});
    return picture;
}

QString kindOfBar(ShareBar::Kind kind)
{
    switch (kind) {
    case ShareBar::Kind::more:
        return barWords(QT_TRANSLATE_NOOP("ShareBars", "adds"));
    case ShareBar::Kind::less:
        return barWords(QT_TRANSLATE_NOOP("ShareBars", "takes away"));
    case ShareBar::Kind::within:
        return barWords(QT_TRANSLATE_NOOP("ShareBars", "inside"));
    case ShareBar::Kind::beyond:
        return barWords(QT_TRANSLATE_NOOP("ShareBars", "outside"));
    case ShareBar::Kind::whole:
        break;
    }
    return barWords(QT_TRANSLATE_NOOP("ShareBars", "whole"));
}

} // namespace quarterstep
