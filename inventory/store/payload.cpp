// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/payload.hpp"

#include <QCryptographicHash>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace quarterstep
{

namespace
{

QString textOf(const std::string& text)
{
    return QString::fromStdString(text);
}

QJsonArray movementsOf(const std::vector<Movement>& movements)
{
    QJsonArray array;
    for (const auto& movement : movements)
        array.append(QJsonObject{{QStringLiteral("delta"), movement.delta},
                                 {QStringLiteral("line"), textOf(movement.line)},
                                 {QStringLiteral("part"), textOf(movement.part)}});
    return array;
}

std::string stringIn(const QJsonObject& object, const char* key)
{
    return object.value(QLatin1String(key)).toString().toStdString();
}

} // namespace

std::string payloadOf(const PayloadEntry& stored)
{
    const auto& entry = stored.entry;
    QJsonObject fields;
    for (const auto& [key, value] : entry.fields)
        fields.insert(textOf(key), textOf(value));
    const QJsonObject object{{QStringLiteral("actor"), textOf(entry.actor)},
                             {QStringLiteral("at"), static_cast<qint64>(entry.atMs)},
                             {QStringLiteral("cancels"), textOf(entry.cancels)},
                             {QStringLiteral("fields"), fields},
                             {QStringLiteral("id"), textOf(entry.id)},
                             {QStringLiteral("kind"), QLatin1String(wordOf(entry.kind))},
                             {QStringLiteral("movements"), movementsOf(entry.movements)},
                             {QStringLiteral("number"), static_cast<qint64>(entry.number)},
                             {QStringLiteral("person"), textOf(entry.person)},
                             {QStringLiteral("site"), textOf(stored.site)},
                             {QStringLiteral("station"), textOf(stored.station)}};
    return QJsonDocument(object).toJson(QJsonDocument::Compact).toStdString(); // QJsonObject keeps keys sorted
}

std::optional<PayloadEntry> readPayload(std::string_view payload)
{
    const auto document =
        QJsonDocument::fromJson(QByteArray(payload.data(), static_cast<qsizetype>(payload.size())));
    const auto object = document.object();
    const auto kind = entryKindFrom(stringIn(object, "kind"));
    if (!document.isObject() || !kind)
        return std::nullopt;
    PayloadEntry stored;
    stored.site = stringIn(object, "site");
    stored.station = stringIn(object, "station");
    auto& entry = stored.entry;
    entry.kind = *kind;
    entry.id = stringIn(object, "id");
    entry.number = object.value(QLatin1String("number")).toInteger();
    entry.atMs = object.value(QLatin1String("at")).toInteger();
    entry.actor = stringIn(object, "actor");
    entry.person = stringIn(object, "person");
    entry.cancels = stringIn(object, "cancels");
    const auto fields = object.value(QLatin1String("fields")).toObject();
    for (auto it = fields.begin(); it != fields.end(); ++it)
        entry.fields[it.key().toStdString()] = it.value().toString().toStdString();
    const auto movements = object.value(QLatin1String("movements")).toArray();
    for (const auto& value : movements) {
        const auto movement = value.toObject();
        entry.movements.push_back({stringIn(movement, "line"), movement.value(QLatin1String("delta")).toInt(),
                                   stringIn(movement, "part")});
    }
    return stored;
}

std::string chainHash(std::string_view before, std::string_view payload)
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(QByteArrayView(before.data(), static_cast<qsizetype>(before.size())));
    hash.addData(QByteArrayView(payload.data(), static_cast<qsizetype>(payload.size())));
    return hash.result().toStdString();
}

std::string chainStart()
{
    return std::string(32, '\0');
}

} // namespace quarterstep
