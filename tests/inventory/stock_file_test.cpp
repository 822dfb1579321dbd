// SPDX-License-Identifier: GPL-3.0-or-later
// stock.yaml as a whole: its keys, the ledger's position, its lines.
#include "inventory/text/stock_file.hpp"
#include "tests/inventory/marked_text.hpp"

#include <boost/test/unit_test.hpp>
#include <filesystem>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

void checkStock(const std::string& marked, const std::vector<std::string>& codes)
{
    const auto text = unmarked(marked);
    checkTold(readStockText(text.text, "stock.yaml").findings, text, codes);
}

const std::string stockHead = "format: quarterstep stock 1\nsite: Orrowen Point box 2\n";

} // namespace

BOOST_AUTO_TEST_SUITE(stock_file)

BOOST_AUTO_TEST_CASE(a_whole_file_is_read_with_everything_in_it, *utf::label("DER"))
{
    const auto reading = readStockText(
        "# box 2\nformat: quarterstep stock 1\nsite: Orrowen Point box 2\nledger: box2.sqlite\n"
        "written: {after: 1234, counts: 9f2c51aa}\nlines:\n"
        "  - line: N+200-62M-BK\n    kind: ready-made\n    power: +2.00\n    use: near\n    centres: 62\n"
        "    centres from: measured\n    heights differ by: -0.5\n"
        "    frame: {lens: 48, height: 32, bridge: 16, side: 140, size: medium, model: Tern, colour: black}\n"
        "    origin: used\n    bin: C4\n    on hand: 14\n    keep: {least: 6, most: 20}\n    cost: 1.10\n"
        "    note: from the spring box\n",
        "stock.yaml");
    BOOST_TEST(told(reading.findings) == std::vector<std::string>{}, boost::test_tools::per_element());
    const StockFile& file = reading.value;
    BOOST_TEST(file.site == "Orrowen Point box 2");
    BOOST_TEST(file.ledger == "box2.sqlite");
    BOOST_TEST(file.writtenAfter == 1234);
    BOOST_TEST(file.countsHash == "9f2c51aa");
    BOOST_REQUIRE(file.lines.size() == 1U);
    const StockLine& line = file.lines[0];
    BOOST_TEST(line.name == "N+200-62M-BK");
    BOOST_TEST((line.kind == LineKind::readyMade));
    BOOST_TEST((line.power.right == sphereOf(2.0) && line.power.left == sphereOf(2.0)));
    BOOST_TEST(line.use == "near");
    BOOST_TEST(line.centres.value() == 62.0);
    BOOST_TEST((line.centresFrom == CentresFrom::measured));
    BOOST_TEST(line.heightsDiffer.value() == -0.5);
    BOOST_TEST((line.frame == FrameData{48, 32, 16, 140, "medium", "Tern", "black"}));
    BOOST_TEST((line.origin == Origin::used));
    BOOST_TEST(line.bin == "C4");
    BOOST_TEST(line.onHand == 14);
    BOOST_TEST(line.keepLeast.value() == 6);
    BOOST_TEST(line.keepMost.value() == 20);
    BOOST_TEST(line.costThousandths.value() == 1100);
    BOOST_TEST(line.position.line == 7);
    BOOST_TEST(line.position.column == 5);
    const ByteSpan span = file.countSpans.at(0);
    BOOST_TEST(file.bytes.substr(span.begin, span.end - span.begin) == "14");
}

BOOST_AUTO_TEST_CASE(what_may_be_left_out_has_its_plain_meaning, *utf::label("DER"))
{
    const auto reading = readStockText(stockHead + "lines: []\n", "stock.yaml");
    BOOST_TEST(reading.findings.empty());
    BOOST_TEST(reading.value.ledger == "ledger.sqlite");
    BOOST_TEST(reading.value.writtenAfter == -1);
    BOOST_TEST(reading.value.countsHash.empty());
    BOOST_TEST(reading.value.lines.empty());
}

BOOST_AUTO_TEST_CASE(needed_keys_and_the_format_are_asked_for, *utf::label("DER"))
{
    checkStock("^^lines: []\n", {"key-missing", "key-missing"});
    checkStock("^format: quarterstep stock 1\nsite: x\n", {"key-missing"});
    checkStock("format: ^something else\nsite: x\nlines: []\n", {"format-unknown"});
    checkStock("format: quarterstep stock 1\nsite: ^\"\"\nlines: []\n", {"site-empty"});
    checkStock("format: quarterstep stock 1\n^site:\nlines: []\n", {"value-missing"});
    checkStock(stockHead + "^ledgr: a.sqlite\nlines: ^{A: 1}\n", {"unknown-key", "lines-not-a-list"});
    checkStock("^- a\n- b\n", {"not-a-map"});
    checkStock(stockHead + "lines: []\n^lines: []\n", {"key-twice"});
}

BOOST_AUTO_TEST_CASE(the_written_entry_is_checked_before_it_is_trusted, *utf::label("DER"))
{
    checkStock(stockHead + "written: ^{after: 12}\nlines: []\n", {"key-missing"});
    checkStock(stockHead + "^written:\nlines: []\n", {"value-missing"});
    checkStock(stockHead + "written: {after: ^-1, counts: 9f2c51aa}\nlines: []\n", {"number-negative"});
    checkStock(stockHead + "written: {after: ^012, counts: 9f2c51aa}\nlines: []\n", {"number-leading-zero"});
    checkStock(stockHead + "written: {after: 1, counts: ^9F2C51AA}\nlines: []\n", {"counts-hash"});
    checkStock(stockHead + "written: {after: ^\"1\", counts: ^'9f2c51aa'}\nlines: []\n",
               {"written-not-plain", "written-not-plain"});
    checkStock(stockHead + "written: {after: 1, counts: 00000001}\nlines: []\n", {});
    checkStock(stockHead + "written: {after: 1, counts: 5e100000}\nlines: []\n",
               {}); // text, whatever it looks like
}

BOOST_AUTO_TEST_CASE(a_line_named_twice_is_told_at_the_second_with_the_place_of_the_first, *utf::label("DER"))
{
    const auto text = unmarked(stockHead + "lines:\n  - {line: A, kind: other, on hand: 1}\n"
                                           "  - {line: B, kind: other, on hand: 1}\n"
                                           "  - {on hand: 2, line: ^A, kind: other}\n");
    const auto reading = readStockText(text.text, "stock.yaml");
    checkTold(reading.findings, text, {"line-twice"});
    BOOST_TEST(reading.findings.at(0).sentence.arguments.at(1) == "4");
}

BOOST_AUTO_TEST_CASE(every_error_of_a_file_is_told_in_one_run_in_order, *utf::label("DER"))
{
    checkStock("format: quarterstep stock 1\n"
               "site: x\n"
               "lines:\n"
               "  - {line: A, kind: ^reader, power: +1.00, on hand: ^-3}\n"
               "  - ^{line: B, kind: ready-made, on hand: ^1.5}\n"
               "  - {line: C, kind: ready-made, power: +1.00, on hand: ^014, ^onhand: 3}\n"
               "  - ^just text\n",
               {"unknown-word", "number-negative", "key-missing", "number-not-whole", "number-leading-zero",
                "unknown-key", "not-a-map"});
}

BOOST_AUTO_TEST_CASE(files_that_are_not_there_are_findings_too, *utf::label("DER"))
{
    const auto folder = std::filesystem::temp_directory_path();
    const auto missing = readStockFile((folder / "none" / "stock.yaml").string());
    BOOST_TEST(!missing.usable());
    BOOST_TEST(missing.findings.at(0).code == "file-missing");
    BOOST_TEST(readStockFile(folder.string()).findings.at(0).code == "file-is-folder");
}

BOOST_AUTO_TEST_SUITE_END()
