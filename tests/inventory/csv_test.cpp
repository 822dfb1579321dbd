// SPDX-License-Identifier: GPL-3.0-or-later
// Comma-separated values after RFC 4180.
#include "inventory/text/csv.hpp"
#include "tests/inventory/marked_text.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

std::vector<std::vector<std::string>> cellsOf(const std::string& text)
{
    std::vector<std::vector<std::string>> result;
    const SourceText source("x", text, 0);
    for (const auto& row : parseCsv(source).value) {
        result.emplace_back();
        for (const auto& cell : row.cells)
            result.back().push_back(cell.text);
    }
    return result;
}

using Rows = std::vector<std::vector<std::string>>;

} // namespace

BOOST_AUTO_TEST_SUITE(csv)

BOOST_AUTO_TEST_CASE(cells_lines_and_quotes_are_read,
                     *utf::label("REF") * utf::description("RFC 4180, section 2, rules 1 to 7"))
{
    BOOST_TEST(
        (cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") == Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    BOOST_TEST((cellsOf("aaa,bbb\nzzz,yyy") == Rows{{"aaa", "bbb"}, {"zzz", "yyy"}}));
    BOOST_TEST((cellsOf("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
                Rows{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    BOOST_TEST((cellsOf("\"aaa\",\"b\"\"bb\",\"c,c\"") == Rows{{"aaa", "b\"bb", "c,c"}}));
    BOOST_TEST((cellsOf("a,,c,\n") == Rows{{"a", "", "c", ""}}));
}

BOOST_AUTO_TEST_CASE(blanks_around_cells_and_empty_lines_are_left_out, *utf::label("DER"))
{
    BOOST_TEST((cellsOf("\n a , \"b\" ,c\t\n\r\n\nd,e,f\n\n") == Rows{{"a", "b", "c"}, {"d", "e", "f"}}));
    BOOST_TEST(cellsOf("").empty());
}

BOOST_AUTO_TEST_CASE(cells_know_their_places_also_behind_line_breaks_in_quotes, *utf::label("DER"))
{
    const SourceText source("x", "é, b\n\"one\ntwo\", \"c\"\nd\n", 0);
    const auto rows = parseCsv(source).value;
    BOOST_REQUIRE(rows.size() == 3U);
    BOOST_TEST(rows[0].cells[1].place.column == 4);
    BOOST_TEST(rows[1].line == 2);
    BOOST_TEST(rows[1].cells[1].place.line == 3);
    BOOST_TEST(rows[1].cells[1].place.column == 8);
    BOOST_TEST(rows[2].line == 4);
}

BOOST_AUTO_TEST_CASE(broken_quotes_are_told, *utf::label("DER"))
{
    const auto inside = unmarked("a,b^\"c\",d\n");
    checkTold(parseCsv(SourceText("x", inside.text, 0)).value.at(0).findings, inside, {"csv-quote-inside"});
    const auto after = unmarked("\"a\" ^b,c\n");
    checkTold(parseCsv(SourceText("x", after.text, 0)).value.at(0).findings, after, {"csv-after-quote"});
    const auto open = unmarked("a,b\nc,^\"d\ne,f\n");
    checkTold(parseCsv(SourceText("x", open.text, 0)).findings, open, {"csv-quote-open"});
    const auto old = unmarked("a,b^\rc,d\r");
    checkTold(parseCsv(SourceText("x", old.text, 0)).findings, old, {"csv-lone-return"});
}

BOOST_AUTO_TEST_SUITE_END()
