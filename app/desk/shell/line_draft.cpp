// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/shell/line_draft.hpp"

#include "core/fitting/words.hpp"
#include "inventory/text/record_text.hpp"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace quarterstep
{

namespace
{
constexpr auto lineFormat = "quarterstep line 1";

QString textOf(const std::string& text)
{
    return QString::fromStdString(text);
}

std::optional<Purpose> purposeIn(const QJsonObject& object)
{
    const auto word = object.value(QStringLiteral("purpose")).toString().toStdString();
    for (const auto purpose : {Purpose::distance, Purpose::near, Purpose::intermediate, Purpose::bifocal})
        if (word == wordOf(purpose))
            return purpose;
    return std::nullopt;
}

QJsonObject whoAndWhat(const std::string& person, std::optional<Purpose> purpose)
{
    return {{QStringLiteral("person"), textOf(person)},
            {QStringLiteral("purpose"), purpose ? QLatin1String(wordOf(*purpose)) : QLatin1String()}};
}
} // namespace

QByteArray bytesOfLine(const KeptLine& line, const QDate& day)
{
    if (line.empty())
        return {};
    QJsonArray people;
    for (const auto& person : line.people)
        people.append(textOf(recordText(person)));
    QJsonArray told;
    for (const auto& one : line.told) {
        auto object = whoAndWhat(one.person, one.purpose);
        QJsonArray names;
        for (const auto& name : one.lines)
            names.append(textOf(name));
        object.insert(QStringLiteral("lines"), names);
        object.insert(QStringLiteral("reason"), textOf(one.reason));
        told.append(object);
    }
    QJsonArray left;
    for (const auto& [person, purpose] : line.left)
        left.append(whoAndWhat(person, purpose));
    return QJsonDocument(QJsonObject{{QStringLiteral("format"), QLatin1String(lineFormat)},
                                     {QStringLiteral("day"), day.toString(Qt::ISODate)},
                                     {QStringLiteral("people"), people},
                                     {QStringLiteral("told"), told},
                                     {QStringLiteral("left"), left}})
        .toJson();
}

KeptLine lineIn(const QByteArray& bytes, const QDate& day)
{
    KeptLine line;
    const auto root = QJsonDocument::fromJson(bytes).object();
    if (root.value(QStringLiteral("format")).toString() != QLatin1String(lineFormat) ||
        root.value(QStringLiteral("day")).toString() != day.toString(Qt::ISODate))
        return line;
    for (const auto& text : root.value(QStringLiteral("people")).toArray())
        if (auto person = readRecordText(text.toString().toStdString()))
            line.people.push_back(std::move(*person));
    for (const auto& value : root.value(QStringLiteral("told")).toArray()) {
        const auto object = value.toObject();
        Told told;
        told.person = object.value(QStringLiteral("person")).toString().toStdString();
        told.purpose = purposeIn(object);
        told.reason = object.value(QStringLiteral("reason")).toString().toStdString();
        for (const auto& name : object.value(QStringLiteral("lines")).toArray())
            told.lines.push_back(name.toString().toStdString());
        line.told.push_back(std::move(told));
    }
    for (const auto& value : root.value(QStringLiteral("left")).toArray())
        if (const auto purpose = purposeIn(value.toObject()))
            line.left.emplace_back(value.toObject().value(QStringLiteral("person")).toString().toStdString(),
                                   *purpose);
    return line;
}

} // namespace quarterstep
