// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/given_before.hpp"

#include "app/session/entry_words.hpp"
#include "app/session/keeping.hpp"
#include "app/session/wording.hpp"

#include <QDateTime>
#include <QStringList>

namespace quarterstep
{

QString linesOf(const Entry& entry)
{
    QStringList names;
    for (const auto& movement : entry.movements)
        names << ltr(movement.line);
    return names.join(QStringLiteral(", "));
}

std::optional<Entry> lastGivenToday(const std::vector<Entry>& entries)
{
    const auto gone = takenBack(entries);
    const auto today = localDay(QDateTime::currentMSecsSinceEpoch());
    std::optional<Entry> last;
    for (const auto& entry : entries)
        if (entry.kind == EntryKind::handedOver && gone.count(entry.id) == 0 && localDay(entry.atMs) == today)
            last = entry;
    return last;
}

WaitingModel::Outcome outcomeOf(const std::vector<Entry>& entries)
{
    using State = WaitingModel::State;
    const auto cancelled = takenBack(entries);
    WaitingModel::Outcome outcome;
    for (const auto& entry : entries) {
        if (cancelled.count(entry.id) > 0)
            continue;
        switch (entry.kind) {
        case EntryKind::handedOver:
            if (entry.movements.empty())
                break;
            outcome.words = outcome.state == State::given
                                ? outcome.words + QStringLiteral(", ") + linesOf(entry)
                                : linesOf(entry);
            outcome.state = State::given;
            break;
        case EntryKind::notNeeded:
        case EntryKind::declined:
        case EntryKind::ordered:
        case EntryKind::orderArrived:
        case EntryKind::orderChecked:
        case EntryKind::delivered:
        case EntryKind::remade:
        case EntryKind::notCollected:
        case EntryKind::notServed:
            if (outcome.state != State::given)
                outcome = {State::settled, kindWords(entry.kind)};
            break;
        case EntryKind::referred:
        case EntryKind::incomplete:
            if (outcome.state == State::waiting)
                outcome.words = kindWords(entry.kind);
            break;
        default:
            break;
        }
    }
    return outcome;
}

} // namespace quarterstep
