// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/bars_part.hpp"

#include "app/desk/models/bars_model.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/plots/bars_view.hpp"

#include <QScrollArea>
#include <QTableView>

namespace quarterstep
{

QScrollArea* scrollAround(QWidget* picture, const QString& name)
{
    auto* area = new QScrollArea;
    area->setObjectName(name);
    area->setAccessibleName(BarsView::tr("Bars: why not"));
    area->setToolTip(BarsView::tr("Arrows scroll; the same numbers stand in the table"));
    area->setWidgetResizable(true);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidget(picture);
    area->setMinimumHeight(picture->fontMetrics().height() * 5);
    return area;
}

QString legendOfBars()
{
    return BarsView::tr(
        "Filled: whole, or outside with a diamond · lines rising: adds · lines falling: takes away · "
        "dots: inside · dashed line: the limit.");
}

QTableView* barsTableOf(BarsModel* model, const QString& name)
{
    auto* table = tableOf(model, name, BarsView::tr("The numbers of the bars"));
    table->setToolTip(BarsView::tr("The same numbers as in the picture"));
    giveWidths(*table, {26, 9, 11});
    return table;
}

} // namespace quarterstep
