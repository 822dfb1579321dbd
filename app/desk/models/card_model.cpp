// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/card_model.hpp"

#include "app/session/entry_words.hpp"
#include "app/session/wording.hpp"

#include <QStringList>

#include <algorithm>

namespace quarterstep
{

void CardModel::show(std::vector<CardRow> rows)
{
    std::reverse(rows.begin(), rows.end()); // newest first
    setRows(std::move(rows));
}

QString CardModel::wordsOf(const CardRow& row)
{
    const auto& entry = row.entry;
    QStringList words;
    if (row.movement.held != 0)
        words << tr("held %1").arg(ltr(signedCount(row.movement.held)));
    if (row.movement.quarantined != 0)
        words << tr("in quarantine %1").arg(ltr(signedCount(row.movement.quarantined)));
    if (!entry.person.empty())
        words << ltr(entry.person);
    if (const auto cause = entry.fields.find("cause"); cause != entry.fields.end())
        words << causeWords(cause->second);
    for (const auto* name : {"from", "to"})
        if (const auto found = entry.fields.find(name); found != entry.fields.end())
            words << QString::fromStdString(found->second);
    for (const auto* name : {"reason", "note"})
        if (const auto found = entry.texts.find(name); found != entry.texts.end() && !found->second.empty())
            words << QString::fromStdString(found->second);
    if (!entry.actor.empty())
        words << tr("by %1").arg(ltr(entry.actor));
    return words.join(QStringLiteral("; "));
}

QVariant CardModel::cell(const CardRow& row, int column, int role) const
{
    const bool number = column == changeColumn || column == balanceColumn;
    if (role == Qt::TextAlignmentRole)
        return number ? atTheEnd() : QVariant();
    if (role == rawRole && number)
        return column == changeColumn ? QVariant(row.movement.delta)
                                      : QVariant(static_cast<qlonglong>(row.balance));
    if (role == Qt::ToolTipRole)
        return wordsOf(row);
    if (role != Qt::DisplayRole)
        return {};
    switch (column) {
    case whenColumn:
        return ltr(momentWords(row.entry.atMs));
    case whatColumn:
        return kindWords(row.entry.kind);
    case changeColumn:
        return ltr(signedCount(row.movement.delta));
    case balanceColumn:
        return QString::number(row.balance);
    default:
        return wordsOf(row);
    }
}

QString CardModel::title(int column) const
{
    switch (column) {
    case whenColumn:
        return tr("When");
    case whatColumn:
        return tr("What");
    case changeColumn:
        return tr("Change");
    case balanceColumn:
        return tr("On hand");
    case wordsColumn:
        return tr("Words");
    default:
        return {};
    }
}

} // namespace quarterstep
