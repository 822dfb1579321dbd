// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/parts.hpp"

#include <QButtonGroup>
#include <QComboBox>
#include <QFrame>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace quarterstep
{

QFrame* framed(const QString& name, const QString& title, QVBoxLayout*& column)
{
    auto* box = new QFrame;
    box->setObjectName(name);
    box->setProperty("panel", true);
    column = new QVBoxLayout(box);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(4);
    if (!title.isEmpty()) {
        auto* heading = new QLabel(title, box);
        heading->setProperty("role", QStringLiteral("heading"));
        column->addWidget(heading);
    }
    return box;
}

QTableView* tableOf(QAbstractItemModel* model, const QString& name, const QString& accessible)
{
    auto* view = new QTableView;
    view->setModel(model);
    view->setObjectName(name);
    view->setAccessibleName(accessible);
    view->setSelectionBehavior(QAbstractItemView::SelectRows);
    view->setSelectionMode(QAbstractItemView::SingleSelection);
    view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view->setShowGrid(false);
    view->setTabKeyNavigation(false);
    view->setAlternatingRowColors(true);
    view->verticalHeader()->hide();
    view->verticalHeader()->setDefaultSectionSize(view->fontMetrics().height() + 8);
    view->horizontalHeader()->setHighlightSections(false);
    view->horizontalHeader()->setDefaultAlignment(Qt::AlignLeading | Qt::AlignVCenter);
    view->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    view->setWordWrap(false);
    // A list with nothing in it has nothing to scroll to.
    const auto scroll = [view] {
        view->setHorizontalScrollBarPolicy(view->model()->rowCount() > 0 ? Qt::ScrollBarAsNeeded
                                                                         : Qt::ScrollBarAlwaysOff);
    };
    QObject::connect(model, &QAbstractItemModel::modelReset, view, scroll);
    QObject::connect(model, &QAbstractItemModel::rowsInserted, view, scroll);
    QObject::connect(model, &QAbstractItemModel::rowsRemoved, view, scroll);
    scroll();
    return view;
}

void giveWidths(QTableView& table, std::initializer_list<int> characters)
{
    auto* header = table.horizontalHeader();
    header->setSectionResizeMode(QHeaderView::Interactive);
    int at = 0;
    for (const int width : characters) { // the heading of another language may need more
        table.setColumnWidth(
            at, std::max(width * table.fontMetrics().averageCharWidth(), header->sectionSizeHint(at)));
        ++at;
    }
    header->setStretchLastSection(true);
}

QComboBox* boxNamed(const QString& name, const QString& accessible, const QString& tooltip)
{
    auto* box = new QComboBox;
    box->setObjectName(name);
    box->setAccessibleName(accessible);
    box->setToolTip(tooltip);
    box->setSizeAdjustPolicy(
        QComboBox::AdjustToMinimumContentsLengthWithIcon); // long items do not widen the page
    box->setMinimumContentsLength(8);
    return box;
}

QSpinBox* countBox(const QString& name, const QString& spoken, const QString& tooltip, int least, int most,
                   int value)
{
    auto* box = new QSpinBox;
    box->setObjectName(name);
    box->setAccessibleName(spoken);
    box->setToolTip(tooltip);
    box->setLocale(QLocale::c());
    box->setMinimumHeight(leastField);
    box->setRange(least, most);
    box->setValue(value);
    return box;
}

QButtonGroup* oneOf(QWidget* owner, QLayout& row,
                    std::initializer_list<std::tuple<QString, QString, QString>> choices)
{
    auto* group = new QButtonGroup(owner);
    for (const auto& [name, words, tooltip] : choices) {
        auto* button = new QPushButton(words);
        button->setObjectName(name);
        button->setToolTip(tooltip);
        button->setCheckable(true);
        button->setChecked(group->buttons().isEmpty());
        group->addButton(button, static_cast<int>(group->buttons().size()));
        row.addWidget(button);
    }
    return group;
}

void giveRoom(QTableView& view, int lines)
{
    view.setMinimumHeight((view.fontMetrics().height() + 8) * lines);
}

QLabel* hinted(const QString& text, const QString& name)
{
    auto* label = new QLabel(text);
    label->setObjectName(name);
    label->setProperty("role", QStringLiteral("hint"));
    label->setWordWrap(true);
    return label;
}

} // namespace quarterstep
