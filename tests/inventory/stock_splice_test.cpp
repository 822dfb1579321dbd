// SPDX-License-Identifier: GPL-3.0-or-later
// New counts go into the bytes of stock.yaml; every other byte stays.
#include "inventory/text/stock_file.hpp"
#include "tests/inventory/marked_text.hpp"

#include <boost/test/unit_test.hpp>
#include <random>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

StockFile read(const std::string& bytes)
{
    auto reading = readStockText(bytes, "stock.yaml");
    BOOST_TEST_CONTEXT(bytes)
    BOOST_TEST(told(reading.findings) == std::vector<std::string>{}, boost::test_tools::per_element());
    BOOST_REQUIRE(reading.usable());
    return std::move(reading.value);
}

std::string withCounts(const std::string& bytes, const std::vector<int>& counts, std::int64_t after)
{
    return spliceCounts(read(bytes), counts, after);
}

std::string hashFor(std::vector<std::pair<std::string, int>> pairs)
{
    std::vector<StockLine> lines;
    for (auto& [name, count] : pairs) {
        StockLine line;
        line.name = name;
        line.onHand = count;
        lines.push_back(line);
    }
    return countsHash(lines);
}

/// A random stock file in pieces: text[0] count[0] text[1] count[1] … text[n].
struct Pieces {
    std::vector<std::string> texts;
    std::vector<int> counts;
    std::vector<std::string> names;

    [[nodiscard]] std::string joined(const std::vector<int>& with) const
    {
        std::string bytes = texts[0];
        for (std::size_t i = 0; i < with.size(); ++i)
            bytes += std::to_string(with[i]) + texts[i + 1];
        return bytes;
    }
};

std::string oneOf(std::mt19937& random, const std::vector<std::string>& choices)
{
    return choices[random() % choices.size()];
}

std::string converted(std::string text, bool carriageReturns)
{
    if (!carriageReturns)
        return text;
    std::string result;
    for (const char c : text)
        result += c == '\n' ? std::string("\r\n") : std::string(1, c);
    return result;
}

Pieces randomFile(std::mt19937& random)
{
    const bool returns = random() % 2 == 0;
    Pieces pieces;
    std::string text = random() % 3 == 0 ? "\xEF\xBB\xBF" : "";
    text += oneOf(random, {"", "# on hand: 7 is only a comment\n", "---\n", "# ünïcödé 👓\n\n"});
    text +=
        "format: quarterstep stock 1\nsite: " + oneOf(random, {"Orrowen", "\"Häfen 14\"", "'on hand: 3'"}) +
        "\n";
    text += oneOf(random, {"", "# lines: not these\n"}) +
            oneOf(random, {"lines:", "\"lines\":", "lines: # 14"}) + "\n";
    const std::size_t count = 1 + random() % 8;
    for (std::size_t i = 0; i < count; ++i) {
        const std::string name = oneOf(random, {"A", "é", "N+200-", "on hand ", "14-"}) + std::to_string(i);
        const std::string key = oneOf(random, {"on hand", "\"on hand\"", "'on hand'"});
        const int onHand = static_cast<int>(random() % 3 == 0 ? random() % 12 : random() % 100000);
        if (random() % 2 == 0) {
            text += "  - {line: \"" + name + "\", kind: other, " + key + oneOf(random, {": ", ":   "});
            pieces.texts.push_back(converted(text, returns));
            text = oneOf(random, {"}", ", note: 14}", " , bin: \"14\" }  # 14"}) + "\n";
        } else {
            text += "  - line: \"" + name + "\"\n" + oneOf(random, {"", "    # was 14\n"}) +
                    "    kind: other\n    " + key + ": ";
            pieces.texts.push_back(converted(text, returns));
            text = oneOf(random, {"\n", "   # 14\n", "\n\n", "\n    note: é 14\n"});
        }
        pieces.counts.push_back(onHand);
        pieces.names.push_back(name);
    }
    text += oneOf(random, {"", "# the end: 14\n", "...\n"});
    pieces.texts.push_back(converted(text, returns));
    return pieces;
}

} // namespace

BOOST_AUTO_TEST_SUITE(stock_splice)

BOOST_AUTO_TEST_CASE(the_counts_hash_is_sha256_over_names_and_counts,
                     *utf::label("DER") * utf::description("printf 'A\\t14\\nB\\t0\\n' | sha256sum"))
{
    BOOST_TEST(hashFor({{"A", 14}, {"B", 0}}) == "ccc616f5");
    BOOST_TEST(hashFor({}) == "e3b0c442"); // of nothing: FIPS 180-4
}

BOOST_AUTO_TEST_CASE(the_first_time_a_written_line_goes_in_above_lines, *utf::label("DER"))
{
    const std::string start =
        "format: quarterstep stock 1\nsite: x\n# boxes\nlines:\n  - {line: A, kind: other, on hand: 9}\n";
    BOOST_TEST(withCounts(start, {10}, 7) ==
               "format: quarterstep stock 1\nsite: x\n# boxes\nwritten: {after: 7, counts: " +
                   hashFor({{"A", 10}}) + "}\nlines:\n  - {line: A, kind: other, on hand: 10}\n");
}

BOOST_AUTO_TEST_CASE(the_written_line_keeps_the_line_ending_and_the_indentation, *utf::label("DER"))
{
    const std::string hash = hashFor({});
    BOOST_TEST(withCounts("format: quarterstep stock 1\r\nsite: x\r\nlines: []\r\n", {}, 0) ==
               "format: quarterstep stock 1\r\nsite: x\r\nwritten: {after: 0, counts: " + hash +
                   "}\r\nlines: []\r\n");
    BOOST_TEST(withCounts("format: quarterstep stock 1\r\nsite: x\r\nlines: []", {}, 0) ==
               "format: quarterstep stock 1\r\nsite: x\r\nwritten: {after: 0, counts: " + hash +
                   "}\r\nlines: []");
    BOOST_TEST(withCounts("  format: quarterstep stock 1\n  site: x\n  lines: []\n", {}, 0) ==
               "  format: quarterstep stock 1\n  site: x\n  written: {after: 0, counts: " + hash +
                   "}\n  lines: []\n");
    BOOST_TEST(withCounts("\xEF\xBB\xBFlines: []\nformat: quarterstep stock 1\nsite: x\n", {}, 0) ==
               "\xEF\xBB\xBFwritten: {after: 0, counts: " + hash +
                   "}\nlines: []\nformat: quarterstep stock 1\nsite: x\n");
    BOOST_TEST(withCounts("{format: quarterstep stock 1, site: x, lines: []}", {}, 5) ==
               "{format: quarterstep stock 1, site: x, written: {after: 5, counts: " + hash +
                   "}, lines: []}");
}

BOOST_AUTO_TEST_CASE(lines_behind_a_question_mark_has_no_place_for_the_written_line, *utf::label("DER"))
{
    const auto text = unmarked("format: quarterstep stock 1\nsite: x\n? ^lines\n: []\n");
    checkTold(readStockText(text.text, "s").findings, text, {"lines-place"});
    const auto flow = unmarked("{format: quarterstep stock 1, site: x, ? ^lines : []}");
    checkTold(readStockText(flow.text, "s").findings, flow, {"lines-place"});
}

BOOST_AUTO_TEST_CASE(afterwards_only_the_digits_of_its_two_values_change, *utf::label("DER"))
{
    const std::string start =
        "written:   {counts:  00000000 ,after:  9 }  # kept\nformat: quarterstep stock 1\nsite: x\n"
        "lines: [{line: A, kind: other, on hand: 100}]\n";
    BOOST_TEST(withCounts(start, {99}, 10) ==
               "written:   {counts:  " + hashFor({{"A", 99}}) +
                   " ,after:  10 }  # kept\nformat: quarterstep stock 1\nsite: x\n"
                   "lines: [{line: A, kind: other, on hand: 99}]\n");
}

BOOST_AUTO_TEST_CASE(every_other_byte_stays_in_random_files, *utf::label("PROP"))
{
    const unsigned seed = std::random_device{}();
    BOOST_TEST_MESSAGE("seed " << seed);
    std::mt19937 random(seed);
    for (int round = 0; round < 1500; ++round) {
        const Pieces pieces = randomFile(random);
        const std::string start = pieces.joined(pieces.counts);
        BOOST_TEST_CONTEXT("seed " << seed << " round " << round << "\n" << start)
        {
            const StockFile first = read(start);
            BOOST_REQUIRE(first.lines.size() == pieces.counts.size());
            std::vector<int> counts = pieces.counts;
            for (int& count : counts)
                if (random() % 2 == 0)
                    count = static_cast<int>(random() % 1000000);
            const std::string once = spliceCounts(first, counts, 41);
            const StockFile second = read(once);
            BOOST_TEST(second.writtenAfter == 41);
            BOOST_TEST(second.countsHash == countsHash(second.lines));
            const std::size_t inserted = once.find("written:");
            const std::size_t end = once.find('\n', inserted) + 1;
            BOOST_TEST(once.substr(0, inserted) + once.substr(end) == pieces.joined(counts));
            for (int& count : counts)
                count = static_cast<int>(random() % 100);
            const std::string twice = spliceCounts(second, counts, 1234567);
            const StockFile third = read(twice);
            for (std::size_t i = 0; i < counts.size(); ++i)
                BOOST_TEST(third.lines[i].onHand == counts[i]);
            const std::size_t secondEnd = twice.find('\n', inserted) + 1;
            BOOST_REQUIRE(twice.substr(0, inserted) + twice.substr(secondEnd) == pieces.joined(counts));
        }
    }
}

BOOST_AUTO_TEST_CASE(splicing_what_is_there_already_changes_nothing, *utf::label("PROP"))
{
    const std::string start =
        "format: quarterstep stock 1\nsite: x\nlines:\n  - {line: A, kind: other, on hand: 9}\n";
    const std::string once = withCounts(start, {8}, 3);
    BOOST_TEST(withCounts(once, {8}, 3) == once);
}

BOOST_AUTO_TEST_SUITE_END()
