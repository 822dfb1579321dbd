// SPDX-License-Identifier: GPL-3.0-or-later
// Our reader of JSON against the one of Qt, which reads RFC 8259 but knows no places.
#include "inventory/exchange/json_text.hpp"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <boost/test/unit_test.hpp>
#include <random>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

QJsonValue ofQt(const JsonValue& value)
{
    switch (value.kind()) {
    case JsonKind::boolean:
        return value.text() == "true";
    case JsonKind::number:
        return QString::fromStdString(value.text()).toDouble();
    case JsonKind::text:
        return QString::fromStdString(value.text());
    case JsonKind::array: {
        QJsonArray array;
        for (const auto& item : value.children())
            array.append(ofQt(item));
        return array;
    }
    case JsonKind::object: {
        QJsonObject object;
        for (const auto& member : value.children())
            object.insert(QString::fromStdString(member.name()), ofQt(member));
        return object;
    }
    default:
        return QJsonValue::Null;
    }
}

std::string randomJson(std::mt19937& random, int depth)
{
    const char* blanks[] = {"", "", " ", "\n\t", "  "};
    const auto blank = [&] { return std::string(blanks[random() % 5]); };
    const char* texts[] = {"\"\"",         "\"a\"",      "\"\\u00e9\\n\\\"\"", "\"\\ud83d\\ude00\"",
                           "\"\xc3\xa9\"", "\"\\/\\\\\""};
    const char* numbers[] = {"0", "-0", "1", "-12.50", "1e3", "2.5E-2", "0.125", "123456789"};
    const auto kind = random() % (depth > 4 ? 4U : 6U);
    if (kind < 1)
        return blank() + numbers[random() % 8];
    if (kind < 2)
        return blank() + texts[random() % 6];
    if (kind < 4)
        return std::string(kind == 2 ? "true" : "null") + blank();
    std::string text = kind == 4 ? "[" : "{";
    const auto count = random() % 5;
    for (unsigned i = 0; i < count; ++i) {
        text += i == 0 ? blank() : "," + blank();
        if (kind == 5)
            text += "\"k" + std::to_string(i) + "\"" + blank() + ":" + blank();
        text += randomJson(random, depth + 1) + blank();
    }
    return text + (kind == 4 ? "]" : "}");
}

} // namespace

BOOST_AUTO_TEST_SUITE(json_text)

BOOST_AUTO_TEST_CASE(random_documents_are_read_as_another_library_reads_them, *utf::label("PROP"))
{
    std::mt19937 random(411);
    for (int i = 0; i < 3000; ++i) {
        auto text = randomJson(random, 0);
        if (i % 2 == 1 && !text.empty()) // damaged
            text[random() % text.size()] = "{}[]:,\"\\0-e. tx"[random() % 15];
        const auto source = checkText(text, "t");
        if (!source.usable())
            continue; // the damage broke a character
        const auto ours = JsonDocument::parse(source.value);
        QJsonParseError error;
        // Qt wraps only objects and arrays: an array around it takes any value.
        const auto theirs = QJsonDocument::fromJson("[" + QByteArray::fromStdString(text) + "]", &error);
        const bool beyondDouble =
            error.error == QJsonParseError::IllegalNumber && text.find_first_of("eE") != std::string::npos;
        BOOST_REQUIRE_MESSAGE(ours.usable() || i % 2 == 1, text); // undamaged
        if (!ours.usable() || beyondDouble)
            continue; // Qt also takes -.5, \\. and a name twice: ours may be stricter, never laxer
        BOOST_REQUIRE_MESSAGE(error.error == QJsonParseError::NoError, text);
        BOOST_REQUIRE_MESSAGE(ofQt(ours.value.root()) == theirs.array().at(0), text);
    }
}

BOOST_AUTO_TEST_CASE(places_and_numbers_stay_as_written, *utf::label("DER"))
{
    const auto source = checkText("{\n  \"é\": [1.00,\n -2.50e0]}", "t");
    const auto read = JsonDocument::parse(source.value);
    const auto items = read.value.root().member("é").children();
    BOOST_REQUIRE_EQUAL(items.size(), 2U);
    BOOST_TEST(items[0].raw() == "1.00");
    BOOST_TEST(items[0].place().line == 2);
    BOOST_TEST(items[0].place().column == 9);
    BOOST_TEST(items[1].raw() == "-2.50e0");
    BOOST_TEST(items[1].place().line == 3);
}

BOOST_AUTO_TEST_CASE(quoted_texts_come_back, *utf::label("PROP"))
{
    const std::string text = "a \"b\" \\ \n\t\x01 é";
    const auto source = checkText(jsonQuoted(text), "t");
    BOOST_TEST(JsonDocument::parse(source.value).value.root().text() == text);
}

BOOST_AUTO_TEST_SUITE_END()
