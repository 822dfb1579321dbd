// SPDX-License-Identifier: GPL-3.0-or-later
// Lists of lines and quantities in their three forms.
#include "inventory/text/quantity_list.hpp"
#include "tests/inventory/marked_text.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

std::string rowsOf(const std::string& text)
{
    std::string rows;
    for (const auto& row : readQuantityText(text, "l").value.rows)
        rows += row.line + "=" + std::to_string(row.quantity) + (row.reason.empty() ? "" : " " + row.reason) +
                (row.cause.empty() ? "" : " " + row.cause) + "; ";
    return rows;
}

void checkList(const std::string& marked, const std::vector<std::string>& codes)
{
    const auto text = unmarked(marked);
    checkTold(readQuantityText(text.text, "l").findings, text, codes);
}

const std::string yamlHead = "format: quarterstep list 1\nlines:\n";

} // namespace

BOOST_AUTO_TEST_SUITE(quantity_list)

BOOST_AUTO_TEST_CASE(the_three_forms_say_the_same, *utf::label("PROP"))
{
    const std::string expected = "N+200=2; L-100=1; ";
    BOOST_TEST(rowsOf("line,quantity\nN+200,2\nL-100,1\n") == expected);
    BOOST_TEST(rowsOf("\xef\xbb\xbf"
                      "bin,quantity,line\r\nC4,2,N+200\r\n,1,\"L-100\"\r\n") == expected);
    BOOST_TEST(rowsOf(yamlHead + "  - {line: N+200, quantity: 2}\n  - line: L-100\n    quantity: 1\n") ==
               expected);
    BOOST_TEST(rowsOf("N+200\nL-100\n\nN+200\n") == expected);
    BOOST_TEST(readQuantityText("N+200\n", "l").value.scanned);
}

BOOST_AUTO_TEST_CASE(reasons_and_causes_are_kept, *utf::label("DER"))
{
    BOOST_TEST(rowsOf("line,quantity,reason,cause\nA,0,\"fell, broke\",damaged\nB,1,,\n") ==
               "A=0 fell, broke damaged; B=1; ");
    BOOST_TEST(rowsOf("# a note\n" + yamlHead +
                      "  - {line: A, quantity: 0, reason: fell, cause: damaged}\n") == "A=0 fell damaged; ");
}

BOOST_AUTO_TEST_CASE(what_is_wrong_with_a_list_is_told_at_its_place, *utf::label("PROP"))
{
    checkList("^", {"table-empty"});
    checkList("line^\nA\n", {"column-missing"});
    checkList("line,quantity,^colour\nA,1,red\n", {"note column-unknown"});
    checkList("line,quantity,^line\nA,1,B\n", {"column-twice"});
    checkList("line,quantity\nA,^-1\nB,^1.5\n^,2\nC,^\nD,^014\n",
              {"number-negative", "number-not-whole", "line-empty", "number-empty", "number-leading-zero"});
    checkList("line,quantity\nA,1\n^A,2\n", {"line-twice"});
    checkList("line,quantity\nA^\nB,1,^2\n", {"row-short", "row-long"});
    checkList("line,quantity,cause\nA,1,^bored\n", {"cause-word"});
    checkList("line,quantity\nA,^9999999\n", {"number-range"});
    checkList("A,^3\n", {"row-long"});
    checkList("A\n\"\"^p\n", {"csv-after-quote"});
    checkList("format: ^something\nlines: []\n", {"format-unknown"});
    checkList("format: quarterstep list 1\nlines: ^3\n", {"lines-not-a-list"});
    checkList(yamlHead + "  - ^{line: A}\n", {"key-missing"});
    checkList(yamlHead + "  - {line: A, quantity: ^-2}\n", {"number-negative"});
    checkList(yamlHead + "  - {line: A, quantity: 1}\n  - {line: ^A, quantity: 1}\n", {"line-twice"});
    checkList(yamlHead + "  - {line: A, quantity: 1, cause: ^bored}\n", {"cause-word"});
}

BOOST_AUTO_TEST_SUITE_END()
