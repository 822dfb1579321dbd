// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/bars_model.hpp"

namespace quarterstep
{

QVariant BarsModel::cell(const ShareBar& bar, int column, int role) const
{
    if (role == rawRole)
        return column == figureColumn ? QVariant(bar.to - bar.from) : QVariant();
    if (role == Qt::TextAlignmentRole)
        return column == figureColumn ? atTheEnd() : QVariant();
    if (role == Qt::AccessibleTextRole)
        return column == nameColumn
                   ? QStringLiteral("%1 %2, %3 %4").arg(bar.name, bar.figure, kindOfBar(bar.kind), bar.words)
                   : cell(bar, column, Qt::DisplayRole);
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole)
        return {};
    switch (column) {
    case nameColumn:
        return bar.name;
    case figureColumn:
        return bar.figure;
    case kindColumn:
        return kindOfBar(bar.kind);
    default:
        return bar.words;
    }
}

QString BarsModel::title(int column) const
{
    switch (column) {
    case nameColumn:
        return tr("Part");
    case figureColumn:
        return tr("Figure");
    case kindColumn:
        return tr("Does");
    default:
        return tr("Of what");
    }
}

} // namespace quarterstep
