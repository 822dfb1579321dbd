// SPDX-License-Identifier: GPL-3.0-or-later
// The worksheet of a lot: written, read back, and refused with its place.
#include "inventory/text/bench_sheet.hpp"

#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

struct BadSheet {
    const char* name;
    const char* text; ///< below the header
    const char* code;
    int line;
    int column;
};

std::ostream& operator<<(std::ostream& out, const BadSheet& sheet)
{
    return out << sheet.name;
}

constexpr const char* sheetHeader = "lot,row,outcome,right,left,centres_mm\n";
constexpr BadSheet badSheets[] = {
    {"impossible sphere", "A,1,,-41.00,-1.00,\n", "power-range", 2, 7},
    {"axis without cylinder", "A,1,,-1.00 x 90,-1.00,\n", "", 2, 12},
    {"sphere without sign", "A,1,,1.00,-1.00,\n", "", 2, 6},
    {"centres impossible", "A,1,,-1.00,-1.00,620\n", "number-range", 2, 18},
    {"one lens only", "A,1,,-1.00,,62\n", "reading-missing", 2, 12},
    {"read without reading", "A,1,read,,,\n", "reading-missing", 2, 5},
    {"not found and read", "A,1,not-found,-1.00,-1.00,\n", "reading-unfound", 2, 5},
    {"word", "A,1,gone,,,\n", "outcome-word", 2, 5},
    {"balance", "A,1,,balance,-1.00,\n", "reading-no-power", 2, 6},
    {"twice", "A,1,,,,\nA,1,,,,\n", "reading-twice", 3, 3},
    {"no lot", ",1,,,,\n", "lot-empty", 2, 1},
    {"row nought", "A,0,,,,\n", "number-range", 2, 3},
    {"short", "A,1,,-1.00\n", "row-short", 2, 11},
    {"long", "A,1,,-1.00,-1.00,62,9\n", "row-long", 2, 21},
};

} // namespace

BOOST_AUTO_TEST_SUITE(bench_sheet)

BOOST_AUTO_TEST_CASE(a_sheet_reads_back_as_written, *utf::label("PROP"))
{
    BenchSheetRow row;
    row.row = 1;
    row.person = "=K-1"; // never a formula
    row.lines = "F-M + L-100 + L-100";
    row.label = {"-1.00 -0.50 x 90", "+2.00"};
    const auto text = benchSheetText("lot-a", {row});
    BOOST_TEST(text.find("'-1.00 -0.50 x 90") != std::string::npos);
    const auto reading = readBenchText(text, "sheet.csv");
    BOOST_REQUIRE(reading.usable());
    BOOST_REQUIRE_EQUAL(reading.value.size(), 1U);
    BOOST_TEST(reading.value[0].lot == "lot-a");
    BOOST_TEST(!reading.value[0].found);
    BOOST_TEST(!reading.value[0].notFoundSaid);
}

BOOST_AUTO_TEST_CASE(a_filled_in_row_has_both_lenses_and_the_centres, *utf::label("DER"))
{
    const auto reading = readBenchText(
        std::string(sheetHeader) + "A,3,read,'-1.00 -0.50 x 90,+2.00 add +1.50,62.5\nA,4,not-found,,,\n",
        "s");
    BOOST_REQUIRE(reading.usable());
    const auto& row = reading.value[0];
    BOOST_TEST(row.row == 3);
    BOOST_TEST(row.read.right.power.cylinder.value() == -0.5);
    BOOST_TEST(row.read.left.addition->value() == 1.5);
    BOOST_TEST(*row.centres == 62.5);
    BOOST_TEST(reading.value[1].notFoundSaid);
}

BOOST_DATA_TEST_CASE(a_bad_row_is_refused_with_its_place, utf::data::make(badSheets), bad)
{
    const auto reading = readBenchText(std::string(sheetHeader) + bad.text, "sheet.csv");
    BOOST_REQUIRE(!reading.usable());
    const auto& finding = reading.findings.front();
    if (*bad.code != '\0')
        BOOST_TEST(finding.code == bad.code);
    BOOST_TEST(finding.position.file == "sheet.csv");
    BOOST_TEST(finding.position.line == bad.line);
    BOOST_TEST(finding.position.column == bad.column);
}

BOOST_AUTO_TEST_CASE(every_row_is_looked_at_in_one_run, *utf::label("PROP"))
{
    const auto reading = readBenchText(std::string(sheetHeader) + "A,1,,9,9,\nA,2,gone,,,\n", "s");
    BOOST_TEST(reading.findings.size() == 3U);
}

BOOST_AUTO_TEST_CASE(a_table_without_its_columns_is_refused, *utf::label("DER"))
{
    BOOST_TEST(readBenchText("", "s").findings.front().code == "table-empty");
    BOOST_TEST(readBenchText("lot,row,right\n", "s").findings.front().code == "column-missing");
    BOOST_TEST(readBenchText("lot,row,right,left,left\n", "s").findings.front().code == "column-twice");
}

BOOST_AUTO_TEST_SUITE_END()
