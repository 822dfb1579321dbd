// SPDX-License-Identifier: GPL-3.0-or-later
// Bytes before anything reads them; numbers as they may stand in files.
#include "inventory/text/numbers.hpp"
#include "inventory/text/source_text.hpp"
#include "tests/inventory/marked_text.hpp"

#include <boost/test/unit_test.hpp>
#include <filesystem>
#include <fstream>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

void checkBytes(const std::string& marked, const std::vector<std::string>& codes)
{
    const auto text = unmarked(marked);
    checkTold(checkText(text.text, "x").findings, text, codes);
}

[[nodiscard]] std::string codeOf(const Parsed<long>& parsed)
{
    return parsed ? std::to_string(parsed.value()) : parsed.complaint().code;
}

[[nodiscard]] std::string codeOf(const Parsed<double>& parsed)
{
    return parsed ? writeNumber(parsed.value()) : parsed.complaint().code;
}

} // namespace

BOOST_AUTO_TEST_SUITE(source_text)

BOOST_AUTO_TEST_CASE(bytes_of_a_file_are_compared_to_the_last_one, *utf::label("PROP"))
{
    const auto path = (std::filesystem::temp_directory_path() / "qs-holds-bytes").string();
    std::string bytes(200'000, 'a'); // more than one piece
    std::ofstream(path, std::ios::binary) << bytes;
    BOOST_TEST(holdsBytes(path, bytes));
    BOOST_TEST(!holdsBytes(path, bytes.substr(1)));
    BOOST_TEST(!holdsBytes(path, bytes + "a"));
    bytes.back() = 'b';
    BOOST_TEST(!holdsBytes(path, bytes));
    std::ofstream(path, std::ios::binary).flush();
    BOOST_TEST(holdsBytes(path, ""));
    std::filesystem::remove(path);
    BOOST_TEST(!holdsBytes(path, ""));
    BOOST_TEST(!holdsBytes(std::filesystem::temp_directory_path().string(), ""));
}

BOOST_AUTO_TEST_CASE(good_text_passes_in_any_script, *utf::label("DER"))
{
    checkBytes("a: é — हिन्दी 👓\n", {});
    checkBytes("", {});
}

BOOST_AUTO_TEST_CASE(bytes_that_are_no_utf8_are_refused_where_they_stand,
                     *utf::label("REF") * utf::description("RFC 3629, section 4: the allowed byte sequences"))
{
    checkBytes("é\né: ^\xE9\n", {"text-not-utf8"});      // Latin-1
    checkBytes("a^\xC0\xAF", {"text-not-utf8"});         // overlong
    checkBytes("a^\xE0\x80\xAF", {"text-not-utf8"});     // overlong
    checkBytes("a^\xF0\x80\x80\xAF", {"text-not-utf8"}); // overlong
    checkBytes("a^\xED\xA0\x80", {"text-not-utf8"});     // surrogate
    checkBytes("a^\xF4\x90\x80\x80", {"text-not-utf8"}); // beyond U+10FFFF
    checkBytes("a^\xF5\x80\x80\x80", {"text-not-utf8"}); // no such lead byte
    checkBytes("a^\xE2\x82", {"text-not-utf8"});         // cut short
    checkBytes("a^\x80", {"text-not-utf8"});             // continuation alone
}

BOOST_AUTO_TEST_CASE(control_characters_are_refused, *utf::label("DER"))
{
    checkBytes(std::string("a\n^") + '\0' + "b", {"text-control-character"});
    checkBytes("# ^\x04 ends a stream in some readers", {"text-control-character"});
    checkBytes("ab^\x1B[31m", {"text-control-character"});
    checkBytes("ab^\x7F", {"text-control-character"});
    checkBytes("tab\tand\r\nline ends\n", {});
}

BOOST_AUTO_TEST_CASE(utf16_and_a_second_mark_are_refused, *utf::label("DER"))
{
    checkBytes(std::string("^\xFF\xFE", 3) + "a" + '\0', {"text-utf16"});
    checkBytes(std::string("^\xFE\xFF", 3) + '\0' + "a", {"text-utf16"});
    checkBytes("^\xEF\xBB\xBF\xEF\xBB\xBFz", {"text-mark-twice"});
}

BOOST_AUTO_TEST_CASE(a_byte_order_mark_is_taken_off_and_counted, *utf::label("DER"))
{
    const auto checked = checkText("\xEF\xBB\xBF"
                                   "abc",
                                   "x");
    BOOST_TEST(checked.usable());
    BOOST_TEST(checked.value.text() == "abc");
    BOOST_TEST(checked.value.markBytes() == 3U);
    BOOST_TEST(checked.value.at(1).column == 2);
}

BOOST_AUTO_TEST_CASE(a_file_beyond_the_cap_is_refused_unread, *utf::label("DER"))
{
    const auto checked = checkText(std::string(largestTextFile + 1, 'a'), "x");
    BOOST_REQUIRE(checked.findings.size() == 1U);
    BOOST_TEST(checked.findings[0].code == "file-too-large");
    BOOST_TEST(checkText(std::string(largestTextFile, 'a'), "x").usable());
}

BOOST_AUTO_TEST_CASE(columns_count_characters_also_far_along_a_line, *utf::label("DER"))
{
    std::string text = "first\n";
    for (int i = 0; i < 3000; ++i)
        text += "é";
    const SourceText source("x", text + "!\nlast", 0);
    BOOST_TEST(source.at(text.size()).line == 2);
    BOOST_TEST(source.at(text.size()).column == 3001);
    BOOST_TEST(source.at(text.size() + 2).line == 3);
    BOOST_TEST(source.at(text.size() + 2).column == 1);
    BOOST_TEST(source.at(1U << 30U).column == 5); // beyond the end is the end
}

BOOST_AUTO_TEST_CASE(a_missing_file_a_folder_and_a_closed_door_are_told_apart, *utf::label("DER"))
{
    const auto folder = std::filesystem::temp_directory_path();
    BOOST_TEST(readBytes((folder / "no-such-file.yaml").string()).findings.at(0).code == "file-missing");
    BOOST_TEST(readBytes(folder.string()).findings.at(0).code == "file-is-folder");
    BOOST_TEST(readBytes((folder / std::string(300, 'a')).string()).findings.at(0).code == "file-unreadable");
}

BOOST_AUTO_TEST_CASE(whole_numbers_are_digits_and_nothing_else, *utf::label("DER"))
{
    BOOST_TEST(codeOf(parseWholeNumber("14", 0, 99)) == "14");
    BOOST_TEST(codeOf(parseWholeNumber("0", 0, 99)) == "0");
    BOOST_TEST(codeOf(parseWholeNumber("014", 0, 99)) == "number-leading-zero");
    BOOST_TEST(codeOf(parseWholeNumber("00", 0, 99)) == "number-leading-zero");
    BOOST_TEST(codeOf(parseWholeNumber("1.5", 0, 99)) == "number-not-whole");
    BOOST_TEST(codeOf(parseWholeNumber("-1", 0, 99)) == "number-negative");
    BOOST_TEST(codeOf(parseWholeNumber("+1", 0, 99)) == "number-not-a-number");
    BOOST_TEST(codeOf(parseWholeNumber("1e1", 0, 99)) == "number-not-a-number");
    BOOST_TEST(codeOf(parseWholeNumber("0x1F", 0, 99)) == "number-not-a-number");
    BOOST_TEST(codeOf(parseWholeNumber("", 0, 99)) == "number-empty");
    BOOST_TEST(codeOf(parseWholeNumber("100", 0, 99)) == "number-range");
    BOOST_TEST(codeOf(parseWholeNumber("99999999999999999999999", 0, 99)) == "number-range");
}

BOOST_AUTO_TEST_CASE(the_words_about_a_leading_zero_say_what_to_write, *utf::label("DER"))
{
    const auto complaint = parseWholeNumber("014", 0, 99).complaint();
    BOOST_TEST(complaint.sentence.arguments.at(0) == "014");
    BOOST_TEST(complaint.sentence.arguments.at(1) == "14");
}

BOOST_AUTO_TEST_CASE(decimal_numbers_are_plain_and_finite, *utf::label("DER"))
{
    BOOST_TEST(codeOf(parseNumber("62", 0, 100)) == "62");
    BOOST_TEST(codeOf(parseNumber("+62.5", 0, 100)) == "62.5");
    BOOST_TEST(codeOf(parseNumber("-0", -1, 1)) == "0");
    BOOST_TEST(codeOf(parseNumber("62,5", 0, 100)) == "number-comma");
    BOOST_TEST(codeOf(parseNumber("62,5", 0, 100, Decimals::dotOrComma)) == "62.5");
    for (const char* bad : {"nan", "inf", ".nan", "1e3", ".5", "5.", "0x10", "1.2.3", "--1", "6 2", "٣"})
        BOOST_TEST_CONTEXT(bad) BOOST_TEST(codeOf(parseNumber(bad, -1e6, 1e6)) == "number-not-a-number");
    BOOST_TEST(codeOf(parseNumber("101", 0, 100)) == "number-range");
    BOOST_TEST(codeOf(parseNumber("", 0, 100)) == "number-empty");
}

BOOST_AUTO_TEST_CASE(money_is_kept_in_whole_thousandths, *utf::label("DER"))
{
    BOOST_TEST(codeOf(parseThousandths("1.10", 0, 100)) == "1100");
    BOOST_TEST(codeOf(parseThousandths("0.005", 0, 100)) == "5");
    BOOST_TEST(codeOf(parseThousandths("-2.5", -10, 100)) == "-2500");
    BOOST_TEST(codeOf(parseThousandths("1.0050", 0, 100)) == "1005");
    BOOST_TEST(codeOf(parseThousandths("1.0005", 0, 100)) == "number-too-fine");
}

BOOST_AUTO_TEST_CASE(what_is_shown_in_messages_is_short_and_harmless, *utf::label("DER"))
{
    BOOST_TEST(shown("a\x1B[31mb\nc") == "a?[31mb?c");
    BOOST_TEST(shown(std::string(100, 'x')) == std::string(60, 'x') + "…");
}

BOOST_AUTO_TEST_SUITE_END()
