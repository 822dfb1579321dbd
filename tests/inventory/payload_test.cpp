// SPDX-License-Identifier: GPL-3.0-or-later
// The stored text of an entry against Qt's JSON, and its hash against Qt's SHA-256 and a published digest.
#include "inventory/store/entry_id.hpp"
#include "inventory/store/payload.hpp"

#include <QCryptographicHash>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QUuid>

#include <boost/test/unit_test.hpp>

#include <iostream>
#include <random>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

QString in(const std::string& text)
{
    return QString::fromStdString(text);
}

QJsonObject objectOf(const std::map<std::string, std::string>& texts)
{
    QJsonObject object;
    for (const auto& [name, value] : texts)
        object.insert(in(name), in(value));
    return object;
}

std::string asQtWrites(const PayloadEntry& stored)
{
    const auto& entry = stored.entry;
    QJsonArray movements;
    for (const auto& movement : entry.movements) {
        QJsonObject object{
            {"delta", movement.delta}, {"line", in(movement.line)}, {"part", in(movement.part)}};
        if (movement.held != 0)
            object.insert("held", movement.held);
        if (movement.quarantined != 0)
            object.insert("quarantined", movement.quarantined);
        movements.append(object);
    }
    QJsonObject object{{"actor", in(entry.actor)},     {"at", static_cast<qint64>(entry.atMs)},
                       {"cancels", in(entry.cancels)}, {"fields", objectOf(entry.fields)},
                       {"id", in(entry.id)},           {"kind", wordOf(entry.kind)},
                       {"movements", movements},       {"number", static_cast<qint64>(entry.number)},
                       {"person", in(entry.person)},   {"site", in(stored.site)},
                       {"station", in(stored.station)}};
    if (!stored.textHashes.empty())
        object.insert("texts", objectOf(stored.textHashes));
    return QJsonDocument(object).toJson(QJsonDocument::Compact).toStdString();
}

class Random
{
  public:
    explicit Random(unsigned seed) : random_(seed) {}
    int below(int count) { return std::uniform_int_distribution<int>(0, count - 1)(random_); }
    /// Control characters, quotes, letters of several scripts, beyond the first plane, and bytes that are no
    /// UTF-8.
    std::string text()
    {
        static const std::vector<std::string> parts{
            "a",    "-",    "\"",   "\\",           "/", "ü", "س", "न", "\xF0\x9F\x91\x93",
            "\x7F", "\xC3", "\xFF", "\xE2\x80\xA8", " ", "<"};
        std::string text;
        for (int i = below(12); i > 0; --i)
            if (const int part = below(40); part < static_cast<int>(parts.size()))
                text += parts[static_cast<std::size_t>(part)];
            else
                text += static_cast<char>(below(0x20));
        return text;
    }

  private:
    std::mt19937 random_;
};

} // namespace

BOOST_AUTO_TEST_SUITE(payload)

BOOST_AUTO_TEST_CASE(a_payload_is_what_qt_writes_and_is_read_back, *utf::label("PROP"))
{
    const unsigned seed = std::random_device()();
    std::cout << "payload: seed " << seed << "\n";
    Random random(seed);
    for (int i = 0; i < 3000; ++i) {
        PayloadEntry stored;
        auto& entry = stored.entry;
        entry.kind = static_cast<EntryKind>(random.below(static_cast<int>(entryKinds)));
        entry.actor = random.text();
        entry.person = random.text();
        entry.cancels = random.text();
        entry.atMs = 1'700'000'000'000 + random.below(1000);
        entry.number = random.below(100'000);
        stored.site = random.text();
        stored.station = random.text();
        for (const char* name : {"profile", "final", "a"})
            if (random.below(2) == 0)
                entry.fields[name] = random.text();
        for (int k = random.below(4); k > 0; --k)
            entry.movements.push_back(
                {random.text(), random.below(9) - 4, random.text(), random.below(2), random.below(2)});
        if (random.below(2) == 0)
            stored.textHashes["reason"] = "0f";
        const auto written = payloadOf(stored);
        BOOST_TEST_REQUIRE(written == asQtWrites(stored));
        const auto read = readPayload(written);
        BOOST_TEST_REQUIRE(read.has_value());
        BOOST_TEST(payloadOf(*read) == written);
    }
}

BOOST_AUTO_TEST_CASE(a_link_is_sha_256_over_what_was_before_and_the_text, *utf::label("REF"))
{
    const auto hex = [](const std::string& bytes) {
        return QByteArray::fromStdString(bytes).toHex().toStdString();
    };
    // FIPS 180-2, appendix B.1: the message "abc", here in two parts
    BOOST_TEST(hex(chainHash("a", "bc")) ==
               "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    for (const std::size_t length : {0U, 1U, 55U, 56U, 63U, 64U, 65U, 730U}) {
        const std::string text(length, 'x');
        BOOST_TEST(chainHash(chainStart(), text) ==
                   QCryptographicHash::hash(QByteArray::fromStdString(chainStart() + text),
                                            QCryptographicHash::Sha256)
                       .toStdString());
    }
}

BOOST_AUTO_TEST_CASE(an_id_is_written_as_qt_writes_it, *utf::label("PROP"))
{
    for (int i = 0; i < 100; ++i) {
        const auto bytes = randomId();
        BOOST_TEST(idText(bytes) == QUuid::fromRfc4122(QByteArrayView(bytes.data(), 16))
                                        .toString(QUuid::WithoutBraces)
                                        .toStdString());
        BOOST_TEST(idBytes(idText(bytes)) == bytes);
    }
    BOOST_TEST(idText("short").empty());
}

BOOST_AUTO_TEST_SUITE_END()
