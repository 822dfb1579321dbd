// SPDX-License-Identifier: GPL-3.0-or-later
// The safe part of YAML, and maps with known keys. Hostile input is refused with its place, never read.
#include "inventory/text/yaml_map.hpp"
#include "tests/inventory/marked_text.hpp"

#include <boost/test/unit_test.hpp>
#include <chrono>
#include <random>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

void checkYaml(const std::string& marked, const std::vector<std::string>& codes)
{
    const auto text = unmarked(marked);
    YamlDocument document(text.text, "x");
    BOOST_TEST(document.readable() == codes.empty());
    checkTold(document.takeFindings(), text, codes);
}

void checkMap(const std::string& marked, const std::vector<std::string>& codes)
{
    const auto text = unmarked(marked);
    YamlDocument document(text.text, "x");
    BOOST_REQUIRE(document.readable());
    YamlMap map(document, document.root(), {"on hand", "centres", "bin"});
    (void)map.need("on hand");
    checkTold(document.takeFindings(), text, codes);
}

} // namespace

BOOST_AUTO_TEST_SUITE(yaml)

BOOST_AUTO_TEST_CASE(aliases_anchors_and_tags_are_refused_all_in_one_run, *utf::label("DER"))
{
    checkYaml("a: ^&here 1\nb: ^*here\nc: ^!!int 3\nd: ^!mine {x: 1}\ne: ^&two [1]\nf: ^! g\n",
              {"yaml-anchor", "yaml-alias", "yaml-tag", "yaml-tag", "yaml-anchor", "yaml-tag"});
}

BOOST_AUTO_TEST_CASE(a_second_document_is_refused_where_it_begins, *utf::label("DER"))
{
    const YamlDocument two("a: 1\n---\nb: 2\n", "x");
    BOOST_TEST(!two.readable());
    for (const char* text : {"a: 1\n---\nb: 2\n", "a: 1\n...\nb: 2\n", "a: 1\n--- !x\n"}) {
        YamlDocument document(text, "x");
        BOOST_TEST_CONTEXT(text) BOOST_TEST(!document.readable());
        const auto findings = document.takeFindings();
        BOOST_REQUIRE(!findings.empty());
        BOOST_TEST(findings[0].code == "yaml-two-documents");
        BOOST_TEST(findings[0].position.line >= 2);
    }
    checkYaml("---\na: 1\n...\n", {});
}

BOOST_AUTO_TEST_CASE(nesting_beyond_the_cap_is_refused_and_at_the_cap_read, *utf::label("DER"))
{
    const auto nested = [](int depth) {
        return std::string(static_cast<std::size_t>(depth), '[') + "1" +
               std::string(static_cast<std::size_t>(depth), ']');
    };
    checkYaml(nested(deepestYaml), {});
    const std::string beyond = nested(deepestYaml + 1);
    checkYaml(beyond.substr(0, deepestYaml) + "^" + beyond.substr(deepestYaml), {"yaml-depth"});
    for (const char* opening : {"[", "{a: ", "- ", "? "}) {
        std::string text;
        for (int i = 0; i < 100000; ++i)
            text += opening;
        YamlDocument document(text, "x");
        BOOST_TEST_CONTEXT(opening) BOOST_TEST(!document.readable());
        BOOST_TEST(document.takeFindings().size() == 1U);
    }
}

BOOST_AUTO_TEST_CASE(what_is_no_yaml_is_told_with_its_place, *utf::label("DER"))
{
    for (const char* text : {"a: [1, 2\nb: 3\n", "a: b: c\n", "\ta: 1\n", "a: 'x' y\n",
                             "%YAML 9.9\n---\na: 1\n", "a: 1\n- b\n", "*nobody\n", "a: @x\n", "{a: 1}}\n"}) {
        YamlDocument document(text, "x");
        BOOST_TEST_CONTEXT(text)
        {
            BOOST_TEST(!document.readable());
            const auto findings = document.takeFindings();
            BOOST_REQUIRE(findings.size() == 1U);
            BOOST_TEST(findings[0].code == "yaml-syntax");
            BOOST_TEST(findings[0].position.line >= 1);
            BOOST_TEST(findings[0].position.column >= 1);
        }
    }
    checkYaml("^", {"yaml-empty"});
    checkYaml("^# nothing but a comment\n", {"yaml-empty"});
    checkYaml("a: 1\n? ^[x]\n: 2\n", {"yaml-key"});
}

BOOST_AUTO_TEST_CASE(a_quote_that_runs_to_the_end_of_the_file_is_refused,
                     *utf::label("REG") * utf::description("the parser takes it for a whole value"))
{
    checkYaml("a: ^\"open\nb: 1\n", {"yaml-quote-open"});
    checkYaml("a: ^'it''s open\n", {"yaml-quote-open"});
    checkYaml("a: ^\"open \\\"\n", {"yaml-quote-open"});
    checkYaml("a: \"closed \\\"\"\nb: 'it''s'\nc: ''\nd: \"\"\n'e': |\n  \"\n", {});
}

BOOST_AUTO_TEST_CASE(unknown_keys_come_with_the_nearest_known_one, *utf::label("DER"))
{
    checkMap("on hand: 1\n^on_hand: 2\n^centers: 62\n^colour of the box: red\n",
             {"unknown-key", "unknown-key", "unknown-key"});
    YamlDocument document("on hand: 1\ncenters: 62\n", "x");
    const YamlMap map(document, document.root(), {"on hand", "centres"});
    const auto findings = document.takeFindings();
    BOOST_REQUIRE(findings.size() == 1U);
    BOOST_TEST(findings[0].sentence.text == "the key \"%1\" is not known here; did you mean \"%2\"?");
    BOOST_TEST(findings[0].sentence.arguments.at(1) == "centres");
}

BOOST_AUTO_TEST_CASE(duplicate_missing_and_empty_keys_are_told, *utf::label("DER"))
{
    checkMap("on hand: 1\nbin: C4\n^on hand: 2\n", {"key-twice"});
    checkMap("^bin: C4\n", {"key-missing"});
    checkMap("bin: C4\n^on hand:\n", {"value-missing"});
    checkMap("^[1, 2]\n", {"not-a-map"});
    checkMap("on hand: 1\n^<<: {bin: C4}\n", {"unknown-key"}); // merge keys are keys like any other
}

BOOST_AUTO_TEST_CASE(places_count_characters_behind_a_byte_order_mark_and_in_quotes, *utf::label("DER"))
{
    YamlDocument document("\xEF\xBB\xBFsité: {\"é\": 1, b: \"xyz\"}\r\nlast: 2\r\n", "x");
    BOOST_REQUIRE(document.readable());
    const auto& inner = document.root().items.at(0);
    BOOST_TEST(document.at(inner.keys.at(1)).column == 16);
    BOOST_TEST(document.at(inner.items.at(1)).column == 19);    // the quote
    BOOST_TEST(document.at(inner.items.at(1), 2).column == 22); // z
    BOOST_TEST(document.at(document.root().items.at(1)).line == 2);
}

BOOST_AUTO_TEST_CASE(values_of_the_wrong_sort_are_told, *utf::label("DER"))
{
    const auto text = unmarked("{n: ^1e3, w: ^maybe, t: ^[x], m: ^\"a\\nb\", y: ^on}");
    YamlDocument document(text.text, "x");
    YamlMap map(document, document.root(), {"n", "w", "t", "m", "y"});
    BOOST_TEST(!map.number("n", 0, 1e6));
    BOOST_TEST(!map.word("w", {"yes", "no"}));
    BOOST_TEST(!map.text("t"));
    BOOST_TEST(!map.text("m"));
    BOOST_TEST(!map.yesNo("y"));
    checkTold(document.takeFindings(), text,
              {"number-not-a-number", "unknown-word", "not-a-text", "text-several-lines", "unknown-word"});
}

BOOST_AUTO_TEST_CASE(broken_text_never_crashes_and_always_says_why, *utf::label("PROP"))
{
    const unsigned seed = std::random_device{}();
    BOOST_TEST_MESSAGE("seed " << seed);
    std::mt19937 random(seed);
    const std::string start =
        "format: x\nlines:\n  - {line: \"A\", on hand: 14, takes: [round 44]} # é\n  - line: 'B'\n"
        "    power: {right: -1.00, left: >\n      -2.00}\n";
    const std::string spice = "{}[]:,-?&*!|>'\"%@`# \n\t\r~<0é\\";
    for (int round = 0; round < 3000; ++round) {
        std::string text = start;
        for (int edit = 0; edit < 4; ++edit) {
            const std::size_t at = random() % text.size();
            const char c = spice[random() % spice.size()];
            if (random() % 2 == 0)
                text[at] = c;
            else
                text.insert(at, 1, c);
        }
        YamlDocument document(text, "x");
        const bool readable = document.readable();
        BOOST_TEST_CONTEXT("seed " << seed << " text " << text)
        BOOST_REQUIRE(readable != !document.takeFindings().empty());
    }
}

BOOST_AUTO_TEST_CASE(a_large_hostile_line_is_answered_in_time, *utf::label("PROP"))
{
    std::string text = "{";
    for (int i = 0; i < 200000; ++i)
        text += "k" + std::to_string(i % 100000) + ": 1, ";
    text += "z: 1}";
    const auto begin = std::chrono::steady_clock::now();
    YamlDocument document(text, "x");
    const YamlMap map(document, document.root(), {"on hand"});
    BOOST_TEST(document.takeFindings().size() == 200001U);
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
    BOOST_TEST(took.count() < 60.0); // generous: this is about quadratic growth, not speed
}

BOOST_AUTO_TEST_SUITE_END()
