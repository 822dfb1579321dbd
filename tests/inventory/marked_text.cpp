// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/inventory/marked_text.hpp"

#include <algorithm>
#include <boost/test/unit_test.hpp>

namespace quarterstep::testing
{

MarkedText unmarked(const std::string& marked)
{
    MarkedText result;
    int line = 1;
    int column = 1;
    for (const char c : marked) {
        if (c == '^') {
            result.places.push_back(std::to_string(line) + ":" + std::to_string(column));
            continue;
        }
        result.text += c;
        const bool firstByte = (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
        column += firstByte ? 1 : 0;
        if (c == '\n') {
            ++line;
            column = 1;
        }
    }
    return result;
}

std::vector<std::string> told(const std::vector<Finding>& findings)
{
    std::vector<std::string> result;
    for (const auto& finding : findings) {
        const char* word = finding.severity == Severity::error     ? ""
                           : finding.severity == Severity::caution ? "caution "
                                                                   : "note ";
        result.push_back(std::to_string(finding.position.line) + ":" +
                         std::to_string(finding.position.column) + " " + word + finding.code);
    }
    return result;
}

void checkTold(const std::vector<Finding>& findings, const MarkedText& marked,
               const std::vector<std::string>& codes)
{
    BOOST_REQUIRE_EQUAL(marked.places.size(), codes.size());
    std::vector<std::string> expected;
    for (std::size_t i = 0; i < codes.size(); ++i)
        expected.push_back(marked.places[i] + " " + codes[i]);
    const auto found = told(findings);
    BOOST_TEST_CONTEXT(marked.text)
    BOOST_CHECK_EQUAL_COLLECTIONS(found.begin(), found.end(), expected.begin(), expected.end());
    for (const auto& finding : findings) {
        const std::string& text = finding.sentence.text;
        BOOST_TEST(!text.empty());
        for (std::size_t i = 1; i <= finding.sentence.arguments.size(); ++i)
            BOOST_TEST_CONTEXT(text)
        BOOST_TEST((text.find("%" + std::to_string(i)) != std::string::npos));
        BOOST_TEST_CONTEXT(text)
        BOOST_TEST(
            (text.find("%" + std::to_string(finding.sentence.arguments.size() + 1)) == std::string::npos));
    }
}

} // namespace quarterstep::testing
