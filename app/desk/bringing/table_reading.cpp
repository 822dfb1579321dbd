// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/bringing/table_reading.hpp"

#include "app/desk/delegates/meaning_delegate.hpp"
#include "app/desk/models/mapped_columns_model.hpp"
#include "app/desk/places/parts.hpp"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace quarterstep
{

namespace
{
constexpr char separators[] = {',', ';', '\t', '|'}; ///< in the order of their choice

/// What was counted, so that a wrong guess is seen.
QString foundWords(const MappedTable& table)
{
    return TableReading::tr("Found: decimal %1; cylinders: %2 minus, %3 plus, %4 without a sign; %5 spheres "
                            "without a sign")
        .arg(table.commaDecimals ? TableReading::tr("comma") : TableReading::tr("point"))
        .arg(table.minusCylinders)
        .arg(table.plusCylinders)
        .arg(table.unsignedCylinders)
        .arg(table.unsignedSpheres);
}
} // namespace

TableReading::TableReading(QWidget* parent) : QWidget(parent), columns_(new MappedColumnsModel(this))
{
    setObjectName(QStringLiteral("tableReading"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    separator_ = choice(*form, "separatorBox", tr("Between columns"), tr("What stands between two cells"),
                        {tr("comma ,"), tr("semicolon ;"), tr("tab"), tr("bar |")});
    decimal_ = choice(*form, "decimalBox", tr("Decimal mark"),
                      tr("When one is chosen, a number with the other one is refused"),
                      {tr("point or comma"), tr("point"), tr("comma")});
    const QStringList meanings{tr("refuse the row"), tr("are plus"), tr("are minus")};
    spheres_ = choice(*form, "unsignedSpheresBox", tr("Spheres without a sign"),
                      tr("Ask whoever made the table before you choose"), meanings);
    cylinders_ = choice(*form, "unsignedCylindersBox", tr("Cylinders without a sign"),
                        tr("Ask whoever made the table before you choose"), meanings);
    column->addLayout(form);
    found_ = hinted({}, QStringLiteral("tableFound"));
    column->addWidget(found_);
    view_ = tableOf(columns_, QStringLiteral("columnsView"), tr("Columns of the table"));
    view_->setToolTip(tr("What each column is taken for; Enter, F2 or a click changes it"));
    view_->setItemDelegateForColumn(MappedColumnsModel::meaningColumn, new MeaningDelegate(view_));
    view_->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::SelectedClicked |
                           QAbstractItemView::DoubleClicked | QAbstractItemView::AnyKeyPressed);
    view_->setSelectionBehavior(QAbstractItemView::SelectItems);
    giveWidths(*view_, {12, 9});
    giveRoom(*view_, 6);
    column->addWidget(view_, 1);
    for (auto* box : {decimal_, spheres_, cylinders_})
        connect(box, &QComboBox::activated, this, &TableReading::corrected);
    connect(separator_, &QComboBox::activated, this, &TableReading::separatorChosen);
    connect(columns_, &MappedColumnsModel::meaningChosen, this, &TableReading::corrected);
}

QComboBox* TableReading::choice(QFormLayout& form, const char* name, const QString& label,
                                const QString& tooltip, const QStringList& items)
{
    auto* box = boxNamed(QLatin1String(name), label, tooltip);
    box->addItems(items);
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents); // they are short
    form.addRow(label, box);
    return box;
}

/// The headings of another separator are others.
void TableReading::separatorChosen()
{
    otherSeparator_ = true;
    Q_EMIT corrected();
}

void TableReading::show(const MappedTable& table)
{
    const auto& map = table.map;
    const auto* separator = std::find(std::begin(separators), std::end(separators), map.separator);
    separator_->setCurrentIndex(separator == std::end(separators) ? 0
                                                                  : static_cast<int>(separator - separators));
    decimal_->setCurrentIndex(static_cast<int>(map.decimal));
    spheres_->setCurrentIndex(static_cast<int>(map.spheres));
    cylinders_->setCurrentIndex(static_cast<int>(map.cylinders));
    found_->setText(foundWords(table));
    otherSeparator_ = false;
    const auto before = view_->currentIndex();
    const bool sameColumns = columns_->rowCount() == static_cast<int>(map.columns.size());
    columns_->show(table);
    if (sameColumns && before.isValid())
        view_->setCurrentIndex(columns_->index(before.row(), before.column()));
}

void TableReading::clear()
{
    columns_->clear();
    found_->clear();
    otherSeparator_ = false;
}

TableMap TableReading::map() const
{
    TableMap map;
    map.separator = separators[std::max(0, separator_->currentIndex())];
    map.decimal = static_cast<DecimalMark>(decimal_->currentIndex());
    map.spheres = static_cast<Unsigned>(spheres_->currentIndex());
    map.cylinders = static_cast<Unsigned>(cylinders_->currentIndex());
    if (!otherSeparator_)
        map.columns = columns_->columns();
    return map;
}

} // namespace quarterstep
