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

void OrdersModel::show(std::vector<Order> orders, const QString& find)
{
    std::erase_if(orders, [&find](const Order& order) {
        return find.isEmpty() ? !order.open()
                              : !QString::fromStdString(order.person).contains(find, Qt::CaseInsensitive);
    });
    std::stable_sort(orders.begin(), orders.end(),
                     [](const Order& a, const Order& b) { return a.changedMs > b.changedMs; });
    setRows(std::move(orders));
}

const Order* OrdersModel::orderAt(int row) const
{
    return row >= 0 && row < rowCount() ? &at(row) : nullptr;
}

int OrdersModel::rowOf(const std::string& id) const
{
    const auto found =
        std::find_if(rows().begin(), rows().end(), [&id](const Order& order) { return order.id == id; });
    return found == rows().end() ? -1 : static_cast<int>(found - rows().begin());
}

QVariant OrdersModel::cell(const Order& order, int column, int role) const
{
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
    switch (column) {
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

QString OrdersModel::title(int column) const
{
    switch (column) {
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
