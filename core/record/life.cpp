// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/life.hpp"

#include "core/record/judgement.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

/// The state a step leads to; empty when the kind is no step of an order.
std::optional<OrderState> stateAfter(EntryKind step)
{
    switch (step) {
    case EntryKind::orderArrived:
        return OrderState::arrived;
    case EntryKind::orderChecked:
        return OrderState::checked;
    case EntryKind::delivered:
        return OrderState::delivered;
    case EntryKind::notCollected:
        return OrderState::notCollected;
    case EntryKind::remade:
        return OrderState::ordered;
    default:
        return std::nullopt;
    }
}

void take(Order& order, const Entry& step)
{
    order.state = *stateAfter(step.kind);
    order.remakes += step.kind == EntryKind::remade ? 1 : 0;
    order.changedMs = step.atMs;
    order.lastEntry = step.id;
    if (!step.movements.empty())
        order.held.clear(); // the frame left with it
}

void letGo(std::vector<Hold>& holds, const Entry& entry, const Movement& movement)
{
    int left = -movement.held;
    for (const bool anybody : {false, true})
        for (auto& hold : holds) {
            if (hold.site != entry.site || hold.line != movement.line ||
                (!anybody && (entry.person.empty() || hold.person != entry.person)))
                continue;
            const int now = std::min(left, hold.quantity);
            hold.quantity -= now;
            left -= now;
        }
}

} // namespace

std::set<std::string> takenBack(std::span<const Entry> entries)
{
    std::set<std::string> ids;
    for (const auto& entry : entries)
        if (!entry.cancels.empty())
            ids.insert(entry.cancels);
    return ids;
}

std::vector<Entry> inTheAir(std::span<const Entry> entries)
{
    const auto gone = takenBack(entries);
    std::set<std::string> arrived;
    for (const auto& entry : entries)
        if (entry.kind == EntryKind::transferredIn && gone.count(entry.id) == 0)
            arrived.insert(fieldNamed(entry, "sent"));
    std::vector<Entry> flying;
    for (const auto& entry : entries)
        if (entry.kind == EntryKind::transferredOut && gone.count(entry.id) == 0 &&
            arrived.count(entry.id) == 0)
            flying.push_back(entry);
    return flying;
}

std::vector<Hold> holdsIn(std::span<const Entry> entries)
{
    const auto gone = takenBack(entries);
    std::vector<Hold> holds;
    for (const auto& entry : entries) {
        if (gone.count(entry.id) > 0 || entry.kind == EntryKind::enteredInError)
            continue;
        for (const auto& movement : entry.movements)
            if (movement.held > 0)
                holds.push_back({entry.id, entry.site, movement.line, entry.person,
                                 fieldNamed(entry, "until"), movement.held});
            else if (movement.held < 0)
                letGo(holds, entry, movement);
    }
    std::erase_if(holds, [](const Hold& hold) { return hold.quantity == 0; });
    return holds;
}

const char* wordOf(OrderState state)
{
    constexpr EntryKind kinds[] = {EntryKind::ordered, EntryKind::orderArrived, EntryKind::orderChecked,
                                   EntryKind::delivered, EntryKind::notCollected};
    return wordOf(kinds[static_cast<std::size_t>(state)]);
}

std::vector<Order> ordersIn(std::span<const Entry> entries)
{
    const auto gone = takenBack(entries);
    std::vector<Order> orders;
    for (const auto& entry : entries) {
        if (gone.count(entry.id) > 0)
            continue;
        if (entry.kind == EntryKind::ordered) {
            orders.push_back({entry.id, entry.person, entry.site, OrderState::ordered, 0, entry.movements,
                              entry.atMs, entry.atMs, entry.id});
            continue;
        }
        if (!stateAfter(entry.kind))
            continue;
        const auto id = fieldNamed(entry, "order");
        const auto order =
            std::find_if(orders.begin(), orders.end(), [&](const Order& each) { return each.id == id; });
        if (order != orders.end())
            take(*order, entry);
    }
    return orders;
}

bool mayFollow(const Order& order, EntryKind step)
{
    switch (step) {
    case EntryKind::orderArrived:
        return order.state == OrderState::ordered;
    case EntryKind::orderChecked:
        return order.state == OrderState::arrived;
    case EntryKind::delivered:
    case EntryKind::notCollected:
        return order.state == OrderState::checked;
    case EntryKind::remade:
        return order.state == OrderState::arrived || order.state == OrderState::checked ||
               order.state == OrderState::delivered;
    default:
        return false;
    }
}

} // namespace quarterstep
