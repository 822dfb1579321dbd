// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/orders_model.hpp"

#include "app/session/entry_words.hpp"
#include "app/session/wording.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{
QString stateWords(const Order& order)
{
    constexpr EntryKind kinds[] = {EntryKind::ordered, EntryKind::orderArrived, EntryKind::orderChecked,
                                   EntryKind::delivered, EntryKind::notCollected};
    auto words = kindWords(kinds[static_cast<std::size_t>(order.state)]);
    if (order.remakes > 0)
        words += QStringLiteral(", ") + OrdersModel::tr("remade %n time(s)", nullptr, order.remakes);
    return words;
}
} // namespace

OrdersModel::OrdersModel(QObject* parent) : QAbstractTableModel(parent) {}

void OrdersModel::show(std::vector<Order> orders, const QString& find)
{
    beginResetModel();
    orders_ = std::move(orders);
    std::erase_if(orders_, [&find](const Order& order) {
        return find.isEmpty() ? !order.open()
                              : !QString::fromStdString(order.person).contains(find, Qt::CaseInsensitive);
    });
    std::stable_sort(orders_.begin(), orders_.end(),
                     [](const Order& a, const Order& b) { return a.changedMs > b.changedMs; });
    endResetModel();
}

const Order* OrdersModel::orderAt(int row) const
{
    return row >= 0 && row < rowCount() ? &orders_[static_cast<std::size_t>(row)] : nullptr;
}

int OrdersModel::rowOf(const std::string& id) const
{
    const auto found =
        std::find_if(orders_.begin(), orders_.end(), [&id](const Order& order) { return order.id == id; });
    return found == orders_.end() ? -1 : static_cast<int>(found - orders_.begin());
}

int OrdersModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(orders_.size());
}

int OrdersModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columnCount_;
}

QVariant OrdersModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& order = orders_[static_cast<std::size_t>(index.row())];
    if (role == Qt::ToolTipRole) {
        QStringList words{tr("ordered %1").arg(ltr(momentWords(order.orderedMs))), ltr(order.id)};
        for (const auto& movement : order.held)
            words << tr("frame held: %1").arg(ltr(movement.line));
        return words.join(QLatin1Char('\n'));
    }
    if (role == Qt::AccessibleTextRole)
        return QStringLiteral("%1 %2").arg(QString::fromStdString(order.person), stateWords(order));
    const bool raw = role == rawRole;
    if (!raw && role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case personColumn:
        return raw ? QString::fromStdString(order.person) : ltr(order.person);
    case stateColumn:
        return raw ? QVariant(static_cast<int>(order.state)) : QVariant(stateWords(order));
    case sinceColumn:
        return raw ? QVariant(static_cast<qlonglong>(order.changedMs))
                   : QVariant(ltr(momentWords(order.changedMs)));
    default:
        return raw ? QVariant(static_cast<qlonglong>(order.orderedMs))
                   : QVariant(ltr(momentWords(order.orderedMs)));
    }
}

QVariant OrdersModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case personColumn:
        return tr("Person");
    case stateColumn:
        return tr("State");
    case sinceColumn:
        return tr("Since");
    case orderedColumn:
        return tr("Ordered");
    default:
        return {};
    }
}

} // namespace quarterstep
