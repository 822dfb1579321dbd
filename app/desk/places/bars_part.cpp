// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/bars_part.hpp"

#include "app/desk/models/bars_model.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/plots/bars_view.hpp"

#include <QScrollArea>
#include <QTableView>

namespace quarterstep
{

QScrollArea* scrollAround(QWidget* inside, const QString& name, int lines)
{
    auto* area = new QScrollArea;
    area->setObjectName(name);
    area->setProperty("read", true); // by keys: the style sheet shows that it has them
    area->setAccessibleName(BarsView::tr("Bars: why not"));
    area->setToolTip(BarsView::tr("Arrows scroll; the same numbers stand in the table"));
    area->setWidgetResizable(true);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidget(inside);
    inside->setAutoFillBackground(false); // the card behind it is seen
    area->viewport()->setAutoFillBackground(false);
    area->setMinimumHeight(inside->fontMetrics().height() * lines);
    return area;
}

QString legendOf(const ShareBars& picture)
{
    return picture.steps
               ? BarsView::tr("Filled: whole · lines rising: adds · lines falling: takes away.")
               : BarsView::tr("Dots: inside · filled, with a diamond: outside · dashed: the limit.");
}

QTableView* barsTableOf(BarsModel* model, const QString& name)
{
    auto* table = tableOf(model, name, BarsView::tr("The numbers of the bars"));
    table->setToolTip(BarsView::tr("The same numbers as in the picture"));
    giveWidths(*table, {26, 9, 13});
    return table;
}

} // namespace quarterstep
