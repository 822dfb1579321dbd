// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/given_before.hpp"

#include "app/session/wording.hpp"

#include <QStringList>

#include <set>

namespace quarterstep
{

QString linesOf(const Entry& entry)
{
    QStringList names;
    for (const auto& movement : entry.movements)
        names << ltr(movement.line);
    return names.join(QStringLiteral(", "));
}

std::map<std::string, QString> givenBefore(const std::vector<Entry>& entries)
{
    std::set<std::string> cancelled;
    for (const auto& entry : entries)
        if (entry.kind == EntryKind::enteredInError)
            cancelled.insert(entry.cancels);
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
