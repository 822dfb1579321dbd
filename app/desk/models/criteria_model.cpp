// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/criteria_model.hpp"

#include "app/desk/theme.hpp"
#include "app/desk/words.hpp"
#include "app/session/wording.hpp"

#include <QBrush>
#include <QFont>

namespace quarterstep
{

namespace
{
bool standsOut(Band band)
{
    return band == Band::caution || band == Band::onTrial || band == Band::fails;
}

/// Bold and coloured, beside the word of the band.
QVariant emphasis(Band band, int role)
{
    if (role == Qt::ForegroundRole) {
        const auto colours = coloursOf(themeNow());
        return QBrush(band == Band::onTrial ? colours.trial : colours.caution);
    }
    QFont bold;
    bold.setBold(true);
    return bold;
}
} // namespace

QVariant CriteriaModel::cell(const CriterionResult& result, int column, int role) const
{
    switch (role) {
    case Qt::DisplayRole:
        return shown(result, column);
    case Qt::ToolTipRole:
        if (column == nameColumn)
            return shown(result, nameColumn);
        return result.note.empty()
                   ? QString::fromStdString(result.source)
                   : say(result.note) + QLatin1Char('\n') + QString::fromStdString(result.source);
    case Qt::TextAlignmentRole:
        if (column == measuredColumn || column == limitColumn)
            return atTheEnd();
        return {};
    case Qt::FontRole:
        return standsOut(result.band) && column == bandColumn ? emphasis(result.band, role) : QVariant();
    case Qt::ForegroundRole:
        return standsOut(result.band) ? emphasis(result.band, role) : QVariant();
    case rawRole:
        if (column == measuredColumn)
            return result.measured;
        if (column == limitColumn)
            return result.limit ? QVariant(*result.limit) : QVariant();
        return column == bandColumn ? QVariant(static_cast<int>(result.band))
                                    : QVariant(QLatin1String(quarterstep::infoOf(result.criterion).name));
    default:
        return {};
    }
}

QString CriteriaModel::shown(const CriterionResult& result, int column) const
{
    switch (column) {
    case nameColumn:
        if (!result.eye)
            return say(result.criterion);
        return (*result.eye == Eye::right ? tr("%1, right") : tr("%1, left")).arg(say(result.criterion));
    case measuredColumn:
        return result.band == Band::notMeasured ? QStringLiteral("–") : ltr(DeskWords::size(result.measured));
    case limitColumn:
        return result.limit ? ltr(DeskWords::size(*result.limit)) : QString();
    case unitColumn:
        return ltr(DeskWords::unit(result.criterion));
    case bandColumn:
        return say(result.band);
    default:
        return QString::fromStdString(result.source);
    }
}

QString CriteriaModel::title(int column) const
{
    switch (column) {
    case nameColumn:
        return tr("Criterion");
    case measuredColumn:
        return tr("Value");
    case limitColumn:
        return tr("Limit");
    case unitColumn:
        return tr("Unit");
    case bandColumn:
        return tr("Band");
    case sourceColumn:
        return tr("Source");
    default:
        return {};
    }
}

} // namespace quarterstep
