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
    for (const auto& movement : movements) {
        QJsonObject object{{QStringLiteral("delta"), movement.delta},
                           {QStringLiteral("line"), textOf(movement.line)},
                           {QStringLiteral("part"), textOf(movement.part)}};
        if (movement.held != 0)
            object.insert(QStringLiteral("held"), movement.held);
        if (movement.quarantined != 0)
            object.insert(QStringLiteral("quarantined"), movement.quarantined);
        array.append(object);
    }
    return array;
}

QJsonObject objectOf(const std::map<std::string, std::string>& texts)
{
    QJsonObject object;
    for (const auto& [key, value] : texts)
        object.insert(textOf(key), textOf(value));
    return object;
}

std::map<std::string, std::string> textsIn(const QJsonObject& object, const char* key)
{
    std::map<std::string, std::string> texts;
    const auto inside = object.value(QLatin1String(key)).toObject();
    for (auto it = inside.begin(); it != inside.end(); ++it)
        texts[it.key().toStdString()] = it.value().toString().toStdString();
    return texts;
}

std::vector<Movement> movementsIn(const QJsonObject& object)
{
    std::vector<Movement> movements;
    const auto array = object.value(QLatin1String("movements")).toArray();
    for (const auto& value : array) {
        const auto movement = value.toObject();
        const auto whole = [&](const char* key) { return movement.value(QLatin1String(key)).toInt(); };
        movements.push_back({movement.value(QLatin1String("line")).toString().toStdString(), whole("delta"),
                             movement.value(QLatin1String("part")).toString().toStdString(), whole("held"),
                             whole("quarantined")});
    }
    return movements;
}

std::string stringIn(const QJsonObject& object, const char* key)
{
    return object.value(QLatin1String(key)).toString().toStdString();
}

} // namespace

std::string payloadOf(const PayloadEntry& stored)
{
    const auto& entry = stored.entry;
    QJsonObject object{{QStringLiteral("actor"), textOf(entry.actor)},
                       {QStringLiteral("at"), static_cast<qint64>(entry.atMs)},
                       {QStringLiteral("cancels"), textOf(entry.cancels)},
                       {QStringLiteral("fields"), objectOf(entry.fields)},
                       {QStringLiteral("id"), textOf(entry.id)},
                       {QStringLiteral("kind"), QLatin1String(wordOf(entry.kind))},
                       {QStringLiteral("movements"), movementsOf(entry.movements)},
                       {QStringLiteral("number"), static_cast<qint64>(entry.number)},
                       {QStringLiteral("person"), textOf(entry.person)},
                       {QStringLiteral("site"), textOf(stored.site)},
                       {QStringLiteral("station"), textOf(stored.station)}};
    if (!stored.textHashes.empty())
        object.insert(QStringLiteral("texts"), objectOf(stored.textHashes));
    return QJsonDocument(object)
        .toJson(QJsonDocument::Compact)
        .toStdString(); // QJsonObject keeps keys sorted
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
    entry.fields = textsIn(object, "fields");
    entry.movements = movementsIn(object);
    entry.site = stored.site;
    stored.textHashes = textsIn(object, "texts");
    return stored;
}

std::string chainHash(std::string_view before, std::string_view payload)
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(QByteArrayView(before.data(), static_cast<qsizetype>(before.size())));
    hash.addData(QByteArrayView(payload.data(), static_cast<qsizetype>(payload.size())));
    return hash.result().toStdString();
}

std::string validUtf8(const std::string& text)
{
    return QString::fromStdString(text).toStdString();
}

std::string saltedHash(std::string_view salt, std::string_view words)
{
    return QByteArray::fromStdString(chainHash(salt, words)).toHex().toStdString();
}

std::string chainStart()
{
    return std::string(32, '\0');
}

} // namespace quarterstep
