// SPDX-License-Identifier: GPL-3.0-or-later
// What a scanner types selects a line; digits that do not go together select none.
#include "core/fitting/line_code.hpp"
#include "tests/session/people.hpp"

#include <boost/test/unit_test.hpp>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

BOOST_AUTO_TEST_SUITE(line_codes)

BOOST_AUTO_TEST_CASE(check_digits_are_those_of_worked_examples,
                     *utf::label("REF") * utf::description("GS1 check digit calculator and General "
                                                           "Specifications 7.9.1: weights 3 and 1"))
{
    const std::pair<const char*, char> examples[] = {
        {"629104150021", '3'}, {"123456789012", '8'}, {"400638133393", '1'}, {"978096409230", '3'},
        {"931234567890", '7'}, {"973594056482", '4'}, {"200000000001", '5'}};
    for (const auto& [digits, check] : examples)
        BOOST_TEST(checkDigitOf(digits) == check, digits);
}

BOOST_AUTO_TEST_CASE(one_wrong_digit_is_always_found, *utf::label("PROP"))
{
    const std::string code = "2000000000015";
    for (std::size_t at = 0; at < code.size(); ++at)
        for (char digit = '0'; digit <= '9'; ++digit) {
            auto other = code;
            other[at] = digit;
            BOOST_TEST(static_cast<bool>(parseLineCode(other)) == (other == code), other);
        }
}

BOOST_AUTO_TEST_CASE(a_line_is_found_by_name_and_by_code, *utf::label("PROP"))
{
    std::vector<StockLine> stock{pairOf("A", 1.0), pairOf("B", 2.0), pairOf("036000291452", 3.0)};
    stock[1].code = "2000000000015";
    BOOST_TEST(lineScanned(stock, "B").value() == 1U);
    BOOST_TEST(lineScanned(stock, "2000000000015").value() == 1U);
    BOOST_TEST(lineScanned(stock, "036000291452").value() == 2U); // a name that looks like a code is a name
    BOOST_TEST(lineScanned(stock, "2000000000016").complaint().code == "code-check-digit");
    BOOST_TEST(lineScanned(stock, "2000000000022").complaint().code == "unknown-line");
    BOOST_TEST(lineScanned(stock, "C").complaint().code == "unknown-line");
}

BOOST_AUTO_TEST_CASE(twelve_digits_are_thirteen_with_a_nought_before_them, *utf::label("REF"))
{
    std::vector<StockLine> stock{pairOf("A", 1.0)};
    stock[0].code = parseLineCode("036000291452").value(); // worked example of UPC-A, from memory
    BOOST_TEST(stock[0].code == "0036000291452");
    BOOST_TEST(lineScanned(stock, "036000291452").value() == 0U);
}

BOOST_AUTO_TEST_SUITE_END()
