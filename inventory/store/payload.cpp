// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/payload.hpp"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <sodium.h>

#include <algorithm>

namespace quarterstep
{

namespace
{

/// Adds a text in quotes as QJsonDocument writes it: short names of control characters where JSON has them,
/// everything beyond ASCII as it is.
void addText(std::string& json, std::string_view text)
{
    static constexpr char digits[] = "0123456789abcdef";
    json += '"';
    for (const char byte : text) {
        static constexpr std::string_view escaped = "\"\\\b\f\n\r\t";
        static constexpr std::string_view names = "\"\\bfnrt";
        if (const auto place = escaped.find(byte); place != std::string_view::npos) {
            json += '\\';
            json += names[place];
        } else if (const auto code = static_cast<unsigned char>(byte); code < 0x20) {
            json.append("\\u00");
            json += digits[code >> 4U];
            json += digits[code & 15U];
        } else {
            json += byte;
        }
    }
    json += '"';
}

void addKey(std::string& json, std::string_view key)
{
    if (json.back() != '{')
        json += ',';
    addText(json, key);
    json += ':';
}

void add(std::string& json, std::string_view key, std::string_view text)
{
    addKey(json, key);
    isAscii(text) ? addText(json, text) : addText(json, validUtf8(std::string(text)));
}

void add(std::string& json, std::string_view key, std::int64_t whole)
{
    addKey(json, key);
    json += std::to_string(whole);
}

void add(std::string& json, std::string_view key, const std::map<std::string, std::string>& texts)
{
    addKey(json, key);
    json += '{';
    for (const auto& [name, value] : texts) // names are ours and ASCII: sorted as JSON's are
        add(json, name, value);
    json += '}';
}

void add(std::string& json, std::string_view key, const std::vector<Movement>& movements)
{
    addKey(json, key);
    json += '[';
    for (const auto& movement : movements) {
        json.append(json.back() == '[' ? "{" : ",{");
        add(json, "delta", std::int64_t{movement.delta});
        if (movement.held != 0)
            add(json, "held", std::int64_t{movement.held});
        add(json, "line", movement.line);
        add(json, "part", movement.part);
        if (movement.quarantined != 0)
            add(json, "quarantined", std::int64_t{movement.quarantined});
        json += '}';
    }
    json += ']';
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
    std::string json;
    json.reserve(768);
    json += '{'; // keys sorted
    add(json, "actor", entry.actor);
    add(json, "at", entry.atMs);
    add(json, "cancels", entry.cancels);
    add(json, "fields", entry.fields);
    add(json, "id", entry.id);
    add(json, "kind", std::string_view(wordOf(entry.kind)));
    add(json, "movements", entry.movements);
    add(json, "number", entry.number);
    add(json, "person", entry.person);
    add(json, "site", stored.site);
    add(json, "station", stored.station);
    if (!stored.textHashes.empty())
        add(json, "texts", stored.textHashes);
    json += '}';
    return json;
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
    // The hash is the dearest step of a hand-over that is no statement, and that of Qt 6.4 is slower.
    const auto bytesOf = [](std::string_view text) {
        return reinterpret_cast<const unsigned char*>(text.data()); // NOLINT
    };
    crypto_hash_sha256_state state;
    crypto_hash_sha256_init(&state);
    crypto_hash_sha256_update(&state, bytesOf(before), before.size());
    crypto_hash_sha256_update(&state, bytesOf(payload), payload.size());
    std::string hash(crypto_hash_sha256_BYTES, '\0');
    crypto_hash_sha256_final(&state, reinterpret_cast<unsigned char*>(hash.data())); // NOLINT
    return hash;
}

bool isAscii(std::string_view text)
{
    return std::none_of(text.begin(), text.end(),
                        [](char byte) { return (static_cast<unsigned char>(byte) & 0x80U) != 0; });
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
