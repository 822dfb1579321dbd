// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/given_before.hpp"

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

std::map<std::string, QString> givenBefore(const std::vector<Entry>& entries)
{
    const auto cancelled = takenBack(entries);
    std::map<std::string, QString> given;
    for (const auto& entry : entries) {
        if (entry.kind != EntryKind::handedOver || entry.movements.empty() || cancelled.count(entry.id) > 0)
            continue;
        auto& words = given[entry.person];
        words = words.isEmpty() ? linesOf(entry) : words + QStringLiteral(", ") + linesOf(entry);
    }
    return given;
}

} // namespace quarterstep
