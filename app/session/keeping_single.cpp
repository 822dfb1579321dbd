// SPDX-License-Identifier: GPL-3.0-or-later
// What is entered one at a time, what is taken back, and the steps of orders.
#include "app/session/keeping.hpp"

#include <QDateTime>

#include <algorithm>
#include <map>

namespace quarterstep
{

namespace
{

std::vector<Movement> movementsOf(const SingleWork& work)
{
    const int n = work.quantity;
    switch (work.kind) {
    case EntryKind::returned:
        return {{work.line, n, "", 0, work.straightToStock ? 0 : n}};
    case EntryKind::exchanged:
        return {{work.back, n, "", 0, n}, {work.line, -n, "", 0, 0}};
    case EntryKind::writtenOff:
        return {{work.line, -n, "", 0, work.fromQuarantine ? -n : 0}};
    case EntryKind::held:
        return {{work.line, 0, "", n, 0}};
    case EntryKind::quarantined:
        return {{work.line, 0, "", 0, n}};
    case EntryKind::released:
        return {{work.line, 0, "", work.fromQuarantine ? 0 : -n, work.fromQuarantine ? -n : 0}};
    case EntryKind::ordered:
        return work.line.empty() ? std::vector<Movement>{}
                                 : std::vector<Movement>{{work.line, 0, "frame", n, 0}};
    default:
        return {};
    }
}

/// Orders and their steps.
std::vector<Order> allOrders(const Camp& camp)
{
    return camp.hasLedger() ? ordersOf(camp.ledger()) : std::vector<Order>{};
}

QDateTime momentOf(std::int64_t atMs)
{
    return QDateTime::fromMSecsSinceEpoch(atMs);
}

std::int64_t nowMs()
{
    return QDateTime::currentMSecsSinceEpoch();
}

/// An order goes with its steps, the last one first.
void refuseWithSteps(const Camp& camp, const std::string& id)
{
    for (const auto& order : allOrders(camp))
        if (order.id == id && order.lastEntry != id)
            throw errorSaying("order-step",
                              {QS_SAY("core", "this order is “%1” already; take back its last step %2 first"),
                               {wordOf(order.state), order.lastEntry}},
                              1);
}

} // namespace

std::vector<Order> ordersOf(const Ledger& ledger)
{
    return ordersIn(
        ledger.entriesOfKinds({EntryKind::ordered, EntryKind::orderArrived, EntryKind::orderChecked,
                               EntryKind::delivered, EntryKind::remade, EntryKind::notCollected}));
}

std::vector<Entry> flyingIn(const Ledger& ledger)
{
    return inTheAir(ledger.entriesOfKinds({EntryKind::transferredOut, EntryKind::transferredIn}));
}

std::int64_t localOffsetMs(std::int64_t atMs)
{
    return std::int64_t{momentOf(atMs).offsetFromUtc()} * 1000;
}

std::string localDay(std::int64_t atMs)
{
    return momentOf(atMs).date().toString(Qt::ISODate).toStdString();
}

Entry singleEntry(const SingleWork& work)
{
    Entry entry;
    entry.kind = work.kind;
    entry.actor = work.actor;
    entry.person = work.person;
    for (const auto& [name, value] :
         {std::pair{"cause", work.cause}, {"lot", work.lot}, {"until", work.until}})
        if (!value.empty())
            entry.fields[name] = value;
    entry.texts = {{"reason", work.reason}, {"note", work.note}};
    entry.movements = movementsOf(work);
    return entry;
}

Entry quarantineOfLot(const Camp& camp, const SingleWork& work)
{
    const auto entries =
        camp.hasLedger() ? camp.ledger().entriesOfKinds({EntryKind::received}) : std::vector<Entry>{};
    const auto gone = takenBack(entries);
    std::map<std::string, int> received;
    for (const auto& entry : entries)
        if (const auto lot = entry.fields.find("lot");
            entry.kind == EntryKind::received && entry.site == camp.site() && gone.count(entry.id) == 0 &&
            lot != entry.fields.end() && lot->second == work.lot)
            for (const auto& movement : entry.movements)
                received[movement.line] += movement.delta;
    auto entry = singleEntry(work);
    entry.movements.clear();
    for (const auto& [line, count] : received)
        if (const auto index = camp.lineNamed(line))
            if (const int n = std::min(count, camp.stock()[*index].available()); n > 0)
                entry.movements.push_back({line, 0, "", 0, n});
    if (entry.movements.empty())
        throw errorSaying("lot-unknown",
                          {QS_SAY("core", "nothing that was received of lot %1 is available"), {work.lot}},
                          3);
    return entry;
}

Entry undoOf(const Camp& camp, const std::string& id, const std::string& actor, const std::string& reason)
{
    const auto posted = camp.ledger().entry(id);
    if (!posted)
        throw errorSaying("entry-gone", {QS_SAY("core", "there is no entry %1 to take back"), {id}}, 3);
    if (posted->kind == EntryKind::handedOver && localDay(posted->atMs) != localDay(nowMs()))
        throw errorSaying(
            "undo-too-late",
            {QS_SAY("core", "this hand-over is of %1; a hand-over is taken back on its day only; "
                            "if the pair came back, enter it as returned"),
             {localDay(posted->atMs)}},
            1);
    if (posted->kind == EntryKind::ordered)
        refuseWithSteps(camp, id);
    Entry entry;
    entry.kind = EntryKind::enteredInError;
    entry.person = posted->person;
    entry.actor = actor;
    entry.cancels = id;
    entry.texts["reason"] = reason;
    entry.movements = turnedRound(posted->movements);
    return entry;
}

std::string handOverToday(const Camp& camp, const std::string& person)
{
    const auto entries = camp.hasLedger() ? camp.ledger().entriesOfPerson(person) : std::vector<Entry>{};
    const auto gone = takenBack(entries);
    const auto today = localDay(nowMs());
    std::vector<std::string> ids;
    for (const auto& entry : entries)
        if (entry.kind == EntryKind::handedOver && entry.person == person && gone.count(entry.id) == 0 &&
            localDay(entry.atMs) == today)
            ids.push_back(entry.id);
    if (ids.empty())
        throw errorSaying("entry-gone", {QS_SAY("core", "nothing was handed over to %1 today"), {person}}, 3);
    if (ids.size() > 1)
        throw errorSaying("entry-unclear",
                          {QS_SAY("core", "%1 was given %2 pairs today; say which with --entry %3"),
                           {person, std::to_string(ids.size()), ids.back()}},
                          3);
    return ids.front();
}

int heldFor(const Camp& camp, const std::string& person, const StockLine& line)
{
    if (line.held == 0 || person.empty() || !camp.hasLedger())
        return 0;
    int count = 0;
    for (const auto& hold : holdsIn(camp.ledger().entriesHolding()))
        if (hold.site == camp.site() && hold.line == line.name && hold.person == person)
            count += hold.quantity;
    return count;
}

Order orderNamed(const Camp& camp, const std::string& id)
{
    for (auto& order : allOrders(camp))
        if (order.id == id)
            return order;
    throw errorSaying("order-gone", {QS_SAY("core", "there is no order %1"), {id}}, 3);
}

Entry orderStep(const Camp& camp, const std::string& order, EntryKind step, const SingleWork& words)
{
    const auto found = orderNamed(camp, order);
    if (!mayFollow(found, step))
        throw errorSaying(
            "order-step",
            {QS_SAY("core", "this order is “%1”; “%2” cannot follow"), {wordOf(found.state), wordOf(step)}},
            1);
    Entry entry;
    entry.kind = step;
    entry.actor = words.actor;
    entry.person = found.person;
    entry.fields["order"] = order;
    entry.texts = {{"reason", words.reason}, {"note", words.note}};
    if (step == EntryKind::delivered || step == EntryKind::notCollected)
        for (const auto& frame : found.held) // made up with lenses it is no frame of the stock any more
            entry.movements.push_back({frame.line, -frame.held, frame.part, -frame.held, 0});
    return entry;
}

Order openOrderOf(const Camp& camp, const std::string& person)
{
    std::vector<Order> open;
    for (auto& order : allOrders(camp))
        if (order.person == person && order.open())
            open.push_back(std::move(order));
    if (open.empty())
        throw errorSaying("order-gone", {QS_SAY("core", "%1 has no open order"), {person}}, 3);
    if (open.size() > 1)
        throw errorSaying("order-unclear",
                          {QS_SAY("core", "%1 has %2 open orders; say which with --order %3"),
                           {person, std::to_string(open.size()), open.back().id}},
                          3);
    return open.front();
}

} // namespace quarterstep
