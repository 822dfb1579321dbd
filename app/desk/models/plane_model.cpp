// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/plane_model.hpp"

#include "app/session/wording.hpp"

namespace quarterstep
{

void PlaneModel::show(const PlotData& data)
{
    std::vector<PlaneRow> rows;
    for (const auto& eye : data.eyes) {
        const auto what = eye.right && eye.left ? tr("need, both eyes")
                          : eye.right           ? tr("need, right eye")
                                                : tr("need, left eye");
        rows.push_back({what, eye.at, std::nullopt});
    }
    for (const auto& choice : data.choice)
        rows.push_back({choice.eye == Eye::right ? tr("chosen pair, right eye") : tr("chosen pair, left eye"),
                        choice.at, std::nullopt});
    for (const auto& mark : data.stock)
        rows.push_back({mark.kind == PlaneMarkKind::lens ? tr("lenses") : tr("ready-made pairs"), mark.at,
                        mark.available});
    setRows(std::move(rows));
}

QVariant PlaneModel::cell(const PlaneRow& row, int column, int role) const
{
    if (role != Qt::DisplayRole && role != rawRole)
        return {};
    const bool raw = role == rawRole;
    switch (column) {
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

QString PlaneModel::title(int column) const
{
    switch (column) {
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
