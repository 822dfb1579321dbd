// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/entry_words.hpp"

#include <QCoreApplication>
#include <QDateTime>

namespace quarterstep
{

namespace
{
QString entryWords(const char* text)
{
    return QCoreApplication::translate("entry", text);
}
} // namespace

QString kindWords(EntryKind kind)
{
    static const char* const words[entryKinds] = {
        QT_TRANSLATE_NOOP("entry", "opened"),
        QT_TRANSLATE_NOOP("entry", "received"),
        QT_TRANSLATE_NOOP("entry", "handed over"),
        QT_TRANSLATE_NOOP("entry", "returned"),
        QT_TRANSLATE_NOOP("entry", "exchanged"),
        QT_TRANSLATE_NOOP("entry", "counted"),
        QT_TRANSLATE_NOOP("entry", "written off"),
        QT_TRANSLATE_NOOP("entry", "held"),
        QT_TRANSLATE_NOOP("entry", "quarantined"),
        QT_TRANSLATE_NOOP("entry", "released"),
        QT_TRANSLATE_NOOP("entry", "transferred out"),
        QT_TRANSLATE_NOOP("entry", "transferred in"),
        QT_TRANSLATE_NOOP("entry", "no spectacles needed"),
        QT_TRANSLATE_NOOP("entry", "declined"),
        QT_TRANSLATE_NOOP("entry", "incomplete"),
        QT_TRANSLATE_NOOP("entry", "repaired or adjusted"),
        QT_TRANSLATE_NOOP("entry", "ordered"),
        QT_TRANSLATE_NOOP("entry", "order arrived"),
        QT_TRANSLATE_NOOP("entry", "order checked"),
        QT_TRANSLATE_NOOP("entry", "delivered"),
        QT_TRANSLATE_NOOP("entry", "sent back to be remade"),
        QT_TRANSLATE_NOOP("entry", "not collected"),
        QT_TRANSLATE_NOOP("entry", "referred"),
        QT_TRANSLATE_NOOP("entry", "not served from stock"),
        QT_TRANSLATE_NOOP("entry", "exported"),
        QT_TRANSLATE_NOOP("entry", "drawn for the bench"),
        QT_TRANSLATE_NOOP("entry", "read at the bench"),
        QT_TRANSLATE_NOOP("entry", "seen again"),
        QT_TRANSLATE_NOOP("entry", "entered in error"),
    };
    return entryWords(words[static_cast<std::size_t>(kind)]);
}

QString causeWords(const std::string& cause)
{
    static const char* const words[] = {
        QT_TRANSLATE_NOOP("entry", "damaged"),     QT_TRANSLATE_NOOP("entry", "missing"),
        QT_TRANSLATE_NOOP("entry", "stolen"),      QT_TRANSLATE_NOOP("entry", "found"),
        QT_TRANSLATE_NOOP("entry", "miscounted"),  QT_TRANSLATE_NOOP("entry", "off its label"),
        QT_TRANSLATE_NOOP("entry", "mislabelled"), QT_TRANSLATE_NOOP("entry", "sample"),
        QT_TRANSLATE_NOOP("entry", "given away"),  QT_TRANSLATE_NOOP("entry", "recalled"),
    };
    const auto& causes = causesOfLoss();
    for (std::size_t i = 0; i < causes.size() && i < std::size(words); ++i)
        if (cause == causes[i])
            return entryWords(words[i]);
    return QString::fromStdString(cause);
}

QString momentWords(std::int64_t atMs)
{
    return QDateTime::fromMSecsSinceEpoch(atMs).toString(QStringLiteral("yyyy-MM-dd HH:mm"));
}

QString signedCount(int count)
{
    return count > 0 ? QStringLiteral("+%1").arg(count) : QString::number(count);
}

} // namespace quarterstep
