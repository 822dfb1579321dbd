// SPDX-License-Identifier: GPL-3.0-or-later
// A typed description of trays becomes a stock file that our own reader takes without a finding, or says
// where it cannot.
#define BOOST_TEST_MODULE tray
#include <boost/test/unit_test.hpp>

#include "app/session/tray.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/source_text.hpp"

#include <QTemporaryDir>

#include <algorithm>
#include <random>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
const StockLine& lineOf(const TrayStock& stock, const std::string& name)
{
    const auto found = std::find_if(stock.lines.begin(), stock.lines.end(),
                                    [&](const StockLine& line) { return line.name == name; });
    BOOST_TEST_REQUIRE((found != stock.lines.end()), name);
    return *found;
}

/// The only finding of a description: "code line:column".
std::string only(const std::string& description)
{
    const auto read = stockOfTray("Here", description);
    BOOST_TEST(!read.usable());
    BOOST_TEST(read.value.bytes.empty());
    BOOST_TEST_REQUIRE(read.findings.size() == 1U, description);
    const auto& finding = read.findings.front();
    return finding.code + " " + std::to_string(finding.position.line) + ":" +
           std::to_string(finding.position.column);
}
} // namespace

BOOST_AUTO_TEST_CASE(a_box_of_five_trays_becomes_lines_with_names_bins_and_counts, *utf::label("PROP"))
{
    const auto read = stockOfTray("North pier", "near +1.00 to +2.00 by 0.50: 10 centres 62\n"
                                                "# a remark, and a blank line\n\n"
                                                "distance -1.00, -1.50 -0.50 x 90: 4 bin K\n"
                                                "lens -2.00 -0.75: 6 round 42\n"
                                                "frame 44-18: 12\n"
                                                "other CASE: 40 bin U1\n");
    BOOST_TEST_REQUIRE(read.usable());
    BOOST_TEST(read.findings.empty());
    BOOST_TEST_REQUIRE(read.value.lines.size() == 8U);
    const auto& reader = lineOf(read.value, "N+150-62");
    BOOST_TEST(reader.power.right.sphere.value() == 1.5);
    BOOST_TEST(reader.onHand == 10);
    BOOST_TEST(reader.bin == "A2");
    BOOST_TEST(reader.centres.value_or(0) == 62.0);
    BOOST_TEST(reader.use == "near");
    const auto& pair = lineOf(read.value, "D-150-050x90");
    BOOST_TEST(pair.power.left.cylinder.value() == -0.5);
    BOOST_TEST(pair.bin == "K2");
    const auto& lens = lineOf(read.value, "L-200-075");
    BOOST_TEST((lens.kind == LineKind::lens));
    BOOST_TEST(lens.anyAxis);
    BOOST_TEST(lens.shape == "round 42");
    BOOST_TEST(lineOf(read.value, "F-4418").takes.front() == "round 44");
    BOOST_TEST((lineOf(read.value, "CASE").kind == LineKind::other));
    BOOST_TEST(lineOf(read.value, "CASE").bin == "U1");
}

BOOST_AUTO_TEST_CASE(what_cannot_be_read_is_said_with_its_line_and_column, *utf::label("PROP"))
{
    BOOST_TEST(only("near +1.00: 5\nnear +1.25 7") == "tray-form 2:1");
    BOOST_TEST(only("near 1.00: 5") == "tray-power 1:6"); // a sphere without its sign
    BOOST_TEST(only("near +1.00, 2.00: 5") == "tray-power 1:13");
    BOOST_TEST(only("distance -1.00 -0.50: 5") == "tray-power 1:10");
    BOOST_TEST(only("near +1.00 to +2.00 by 0.30: 5") == "tray-range 1:6");
    BOOST_TEST(only("near +1.00 to +2.00 by 0: 5") == "tray-range 1:6");
    BOOST_TEST(only("near +1.00: many") == "tray-count 1:12");
    BOOST_TEST(only("near +1.00: 5 centres wide") == "tray-count 1:12");
    BOOST_TEST(only("frame large: 5") == "tray-form 1:7");
    BOOST_TEST(only("near +1.00: 5\nnear +1.00: 6") == "tray-twice 2:6");
    BOOST_TEST(only("") == "tray-empty 1:1");
}

BOOST_AUTO_TEST_CASE(every_fault_of_a_description_is_told_in_one_run, *utf::label("PROP"))
{
    const auto read = stockOfTray("", "near 1.00: 5\nnear +1.25: x\n");
    BOOST_TEST(read.findings.size() == 3U);
}

BOOST_AUTO_TEST_CASE(names_and_bins_with_signs_of_yaml_are_quoted, *utf::label("PROP"))
{
    const auto read = stockOfTray("Pier \"7\": #2", "near +1.00: 5 bin {A,#1}\nother a # b: 2\n");
    BOOST_TEST_REQUIRE(read.usable());
    BOOST_TEST(lineOf(read.value, "N+100").bin == "{A,#1}");
    BOOST_TEST(lineOf(read.value, "a # b").onHand == 2);
}

BOOST_AUTO_TEST_CASE(whatever_is_typed_ends_in_a_stock_our_reader_takes_or_in_a_finding, *utf::label("PROP"))
{
    std::mt19937 random(20261);
    const std::string pieces[] = {"near ", "lens ", "frame ", "other ", "+1.00", "-2.25", " to ",
                                  " by ",  "0.25",  ":",      " 12",    " bin ", "A",     "\n",
                                  "\"",    "{",     "x 90",   "é",      ","};
    int made = 0;
    for (int round = 0; round < 3000; ++round) {
        std::string text = "near +1.00 to +2.00 by 0.25: 12 bin A\nlens -2.25: 4\n";
        for (int count = static_cast<int>(random() % 3); count >= 0; --count)
            text.insert(random() % text.size(), pieces[random() % std::size(pieces)]);
        const auto read = stockOfTray("Here", text);
        BOOST_TEST((read.usable() ? !read.value.bytes.empty() : !read.findings.empty()), text);
        made += read.usable() ? 1 : 0;
    }
    BOOST_TEST(made > 20);
}

BOOST_AUTO_TEST_CASE(a_stock_that_is_there_is_never_overwritten, *utf::label("PROP"))
{
    const QTemporaryDir place;
    const auto folder = place.filePath(QStringLiteral("new camp")).toStdString();
    const auto first = stockOfTray("Here", "near +1.00: 5").value.bytes;
    writeNewStock(folder, first);
    BOOST_TEST(readBytes(folder + "/stock.yaml").value == first);
    try {
        writeNewStock(folder, "other bytes");
        BOOST_ERROR("it was overwritten");
    } catch (const Error& refused) {
        BOOST_TEST(refused.finding().code == "stock-there");
        BOOST_TEST(refused.exitCode() == 3);
    }
    BOOST_TEST(readBytes(folder + "/stock.yaml").value == first);
}
