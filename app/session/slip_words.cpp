// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/slip_words.hpp"

#include "app/session/wording.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <set>

namespace quarterstep
{

QString slipWords(const SlipMember& member)
{
    auto kind = say(Sentence{infoOf(member.kind).words, {}});
    if (!member.eye)
        return kind;
    const auto eye = *member.eye == Eye::right ? QCoreApplication::translate("words", "right eye")
                                               : QCoreApplication::translate("words", "left eye");
    return QStringLiteral("%1 (%2)").arg(kind, eye);
}

QString slipWords(const SlipClass& slip)
{
    QStringList words;
    std::set<SlipKind> told;
    for (const auto& member : slip.members)
        if (told.insert(member.kind).second)
            words << (words.isEmpty() ? slipWords(member) : slipWords(SlipMember{member.kind, {}}));
    return words.join(QStringLiteral(" / "));
}

} // namespace quarterstep
