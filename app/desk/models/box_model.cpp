// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/box_model.hpp"

#include "app/desk/models/bin_order.hpp"
#include "app/desk/models/lines_model.hpp"
#include "app/desk/theme.hpp"
#include "app/session/wording.hpp"

#include <QBrush>

#include <algorithm>
#include <set>

namespace quarterstep
{

namespace
{
/// A narrow bin takes two lines, between sphere and cylinder: no axis and no addition is torn from its sign.
QString keptTogether(QString power)
{
    return power.replace(QStringLiteral(" x "), QStringLiteral("\u00A0x\u00A0"))
        .replace(QStringLiteral("ADD "), QStringLiteral("ADD\u00A0"));
}
} // namespace

BoxModel::BoxModel(QObject* parent) : QAbstractTableModel(parent) {}

void BoxModel::show(const std::vector<StockLine>& stock)
{
    beginResetModel();
    bins_.clear();
    std::set<QString> rows;
    std::set<int> columns;
    for (const auto& line : stock)
        if (!line.bin.empty()) {
            const auto place = binPlace(line.bin);
            rows.insert(place.row);
            columns.insert(place.number);
        }
    rows_ = QStringList(rows.begin(), rows.end());
    columns_.assign(columns.begin(), columns.end());
    for (const auto& line : stock) {
        if (line.bin.empty())
            continue;
        const auto place = binPlace(line.bin);
        const auto column =
            std::lower_bound(columns_.begin(), columns_.end(), place.number) - columns_.begin();
        auto& bin = bins_[{static_cast<int>(rows_.indexOf(place.row)), static_cast<int>(column)}];
        bin.name = line.bin;
        bin.lines.push_back(line.name);
        bin.power = bin.lines.size() > 1 ? QString()
                    : line.equalPowers() ? keptTogether(linePowers(line))
                                         : tr("unequal eyes");
        bin.available += line.available();
        bin.onHand += line.onHand;
        const auto level = levelOf(line);
        bin.low = bin.low || level == StockLevel::low || level == StockLevel::out;
    }
    endResetModel();
}

const BoxModel::Bin* BoxModel::binAt(const QModelIndex& index) const
{
    const auto found = bins_.find({index.row(), index.column()});
    return found == bins_.end() ? nullptr : &found->second;
}

std::vector<std::string> BoxModel::linesAt(const QModelIndex& index) const
{
    const auto* bin = binAt(index);
    return bin ? bin->lines : std::vector<std::string>{};
}

QModelIndex BoxModel::cellOf(const std::string& bin) const
{
    for (const auto& [cell, each] : bins_)
        if (each.name == bin)
            return index(cell.first, cell.second);
    return {};
}

int BoxModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int BoxModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

QVariant BoxModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto* bin = binAt(index);
    if (!bin)
        return {};
    const auto counted = bin->available > 0 ? QString::number(bin->available) : tr("none");
    const auto what = !bin->power.isEmpty()    ? bin->power
                      : bin->lines.size() == 1 ? ltr(bin->lines.front())
                                               : tr("%1 lines").arg(bin->lines.size());
    switch (role) {
    case Qt::DisplayRole: // the sign beside the count is the one of the level column in words: low
        return QStringLiteral("%1\n%2\n%3")
            .arg(ltr(bin->name), what, bin->low && bin->available > 0 ? tr("%1 low").arg(counted) : counted);
    case Qt::ToolTipRole: {
        QStringList words;
        for (const auto& line : bin->lines)
            words << ltr(line);
        return words.join(QLatin1Char('\n'));
    }
    case Qt::AccessibleTextRole:
        return tr("bin %1, %2, available %3")
            .arg(QString::fromStdString(bin->name), what)
            .arg(bin->available);
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(Qt::Alignment(Qt::AlignCenter));
    case Qt::ForegroundRole:
        return bin->low ? QVariant(QBrush(coloursOf(themeNow()).caution)) : QVariant();
    case rawRole:
        return bin->available;
    case levelRole:
        return bin->low;
    default:
        return {};
    }
}

QVariant BoxModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role != Qt::DisplayRole)
        return {};
    if (orientation == Qt::Vertical)
        return rows_.value(section).isEmpty() ? tr("no row") : ltr(rows_.value(section));
    const int number = columns_[static_cast<std::size_t>(section)];
    return number == 0 ? QStringLiteral("-") : QString::number(number);
}

Qt::ItemFlags BoxModel::flags(const QModelIndex& index) const
{
    return binAt(index) ? Qt::ItemIsEnabled | Qt::ItemIsSelectable : Qt::NoItemFlags;
}

} // namespace quarterstep
