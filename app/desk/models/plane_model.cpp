// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/plane_model.hpp"

#include "app/session/wording.hpp"

namespace quarterstep
{

PlaneModel::PlaneModel(QObject* parent) : QAbstractTableModel(parent) {}

void PlaneModel::show(const PlotData& data)
{
    beginResetModel();
    rows_.clear();
    for (const auto& eye : data.eyes) {
        const auto what = eye.right && eye.left ? tr("need, both eyes")
                          : eye.right           ? tr("need, right eye")
                                                : tr("need, left eye");
        rows_.push_back({what, eye.at, std::nullopt});
    }
    for (const auto& choice : data.choice)
        rows_.push_back(
            {choice.eye == Eye::right ? tr("chosen pair, right eye") : tr("chosen pair, left eye"), choice.at,
             std::nullopt});
    for (const auto& mark : data.stock)
        rows_.push_back({mark.kind == PlaneMarkKind::lens ? tr("lenses") : tr("ready-made pairs"), mark.at,
                         mark.available});
    endResetModel();
}

int PlaneModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int PlaneModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columnCount_;
}

QVariant PlaneModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || (role != Qt::DisplayRole && role != rawRole))
        return {};
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    const bool raw = role == rawRole;
    switch (index.column()) {
    case whatColumn:
        return row.what;
    case meanColumn:
        return raw ? QVariant(row.at.mean) : QVariant(ltr(dioptres(row.at.mean)));
    case astigmatismColumn:
        return raw ? QVariant(row.at.astigmatism) : QVariant(ltr(dioptres(row.at.astigmatism)));
    default:
        return row.count ? QVariant(*row.count) : QVariant();
    }
}

QVariant PlaneModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case whatColumn:
        return tr("What");
    case meanColumn:
        return tr("Mean (D)");
    case astigmatismColumn:
        return tr("Half cylinder (D)");
    case countColumn:
        return tr("Available");
    default:
        return {};
    }
}

} // namespace quarterstep
