// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/cross_model.hpp"

#include "app/session/wording.hpp"

#include <cmath>

namespace quarterstep
{

namespace
{
/// To a hundredth and a whole degree.
QString shownPower(const SpheroCylinder& power)
{
    const auto hundredth = [](Dioptres d) { return Dioptres{std::round(d.value() * 100.0) / 100.0}; };
    const double axis = std::round(power.axis.value());
    return ltr(writePower(
        {hundredth(power.sphere), hundredth(power.cylinder), AxisDegrees{axis < 1.0 ? 180.0 : axis}}));
}
} // namespace

void CrossModel::show(const PerEye<std::optional<EyeCrosses>>& crosses)
{
    std::vector<CrossRow> rows;
    for (const auto eye : bothEyes) {
        const auto& of = crosses.of(eye);
        if (!of)
            continue;
        const bool right = eye == Eye::right;
        rows.push_back({right ? tr("right, need") : tr("left, need"), of->need});
        rows.push_back({right ? tr("right, pair") : tr("left, pair"), of->pair});
        rows.push_back({right ? tr("right, left over") : tr("left, left over"), of->error});
    }
    setRows(std::move(rows));
}

void CrossModel::clear()
{
    show({});
}

QVariant CrossModel::cell(const CrossRow& row, int column, int role) const
{
    if (role != Qt::DisplayRole && role != rawRole)
        return {};
    const auto& principal = row.cross.principal;
    const auto along = [](double power, double meridian) {
        return tr("%1 along %2").arg(ltr(dioptres(power))).arg(std::lround(meridian));
    };
    switch (column) {
    case whatColumn:
        return row.what;
    case powerColumn:
        return shownPower(row.cross.power);
    case higherColumn:
        return role == rawRole ? QVariant(principal.higher)
                               : QVariant(along(principal.higher, principal.higherMeridian));
    default:
        return role == rawRole ? QVariant(principal.lower)
                               : QVariant(along(principal.lower, principal.lowerMeridian));
    }
}

QString CrossModel::title(int column) const
{
    switch (column) {
    case whatColumn:
        return tr("What");
    case powerColumn:
        return tr("Power (D)");
    case higherColumn:
        return tr("Higher (D)");
    case lowerColumn:
        return tr("Lower (D)");
    default:
        return {};
    }
}

} // namespace quarterstep
