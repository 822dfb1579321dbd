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

CrossModel::CrossModel(QObject* parent) : QAbstractTableModel(parent) {}

void CrossModel::show(const PerEye<std::optional<EyeCrosses>>& crosses)
{
    beginResetModel();
    rows_.clear();
    for (const auto eye : bothEyes) {
        const auto& of = crosses.of(eye);
        if (!of)
            continue;
        const bool right = eye == Eye::right;
        rows_.push_back({right ? tr("right, need") : tr("left, need"), of->need});
        rows_.push_back({right ? tr("right, pair") : tr("left, pair"), of->pair});
        rows_.push_back({right ? tr("right, left over") : tr("left, left over"), of->error});
    }
    endResetModel();
}

void CrossModel::clear()
{
    show({});
}

int CrossModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int CrossModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columnCount_;
}

QVariant CrossModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || (role != Qt::DisplayRole && role != rawRole))
        return {};
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    const auto& principal = row.cross.principal;
    const auto along = [](double power, double meridian) {
        return tr("%1 along %2").arg(ltr(dioptres(power))).arg(std::lround(meridian));
    };
    switch (index.column()) {
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

QVariant CrossModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
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
