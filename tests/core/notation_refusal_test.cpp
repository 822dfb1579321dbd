// SPDX-License-Identifier: GPL-3.0-or-later
// What is refused: the code, the place and what to write instead.
#include "core/optics/notation.hpp"

#include <boost/test/unit_test.hpp>

#include <random>
#include <tuple>

namespace utf = boost::unit_test;

namespace quarterstep
{
namespace
{

void expectRefusal(const std::string& text, const std::string& code, int offset)
{
    const auto read = parseEye(text);
    BOOST_TEST(!read, text << " is accepted");
    BOOST_TEST(read.complaint().code == code, text << ": " << read.complaint().code);
    BOOST_TEST(read.complaint().offset == offset, text << " at " << read.complaint().offset);
    BOOST_TEST(!read.complaint().sentence.empty());
}

} // namespace

BOOST_AUTO_TEST_SUITE(notation_refusals)

BOOST_AUTO_TEST_CASE(a_power_without_its_sign_is_refused, *utf::label("DER"))
{
    expectRefusal("1.25", "power-sign", 0);
    expectRefusal(" 2.00 -0.50 x 90", "power-sign", 1);
    expectRefusal("-2.00 1.00 x 90", "cylinder-sign", 6);
    expectRefusal("+1.00 Add -2.00", "addition-sign", 10);
}

BOOST_AUTO_TEST_CASE(a_sign_beyond_the_first_plane_is_quoted_as_it_was_written, *utf::label("DER"))
{
    const auto read = parseEye("-1.00 \U0001F453");
    BOOST_TEST_REQUIRE(!read);
    BOOST_TEST(read.complaint().offset == 6);
    BOOST_TEST(read.complaint().sentence.arguments.at(0) == "\U0001F453");
    BOOST_TEST(writePrismDegrees({}, Eye::right) == "0.00");
}

BOOST_AUTO_TEST_CASE(a_text_of_the_other_eye_is_refused, *utf::label("DER"))
{
    for (const auto& [text, asked, eye] :
         {std::tuple{"L -1.00", Eye::right, "left"}, {"R -1.00", Eye::left, "right"}}) {
        const auto read = parseEye(text, asked);
        BOOST_TEST_REQUIRE(!read, text);
        BOOST_TEST(read.complaint().code == "eye-other");
        BOOST_TEST(read.complaint().sentence.text.find(std::string("says it is the ") + eye) !=
                   std::string::npos);
    }
}

BOOST_AUTO_TEST_CASE(an_axis_must_be_there_once_and_in_range, *utf::label("DER"))
{
    expectRefusal("-2.00-2.00 x 195", "axis-range", 13);
    expectRefusal("-1.00 -0.50 x 181", "axis-range", 14);
    expectRefusal("-1.00 -0.50 x -5", "axis-range", 14);
    expectRefusal("-1.00 -0.50 x 360", "axis-range", 14);
    expectRefusal("-1.25 -0.50", "axis-missing", 6);
    expectRefusal("-1.25 / -0.50 / -", "axis-missing", 8);
    expectRefusal("-1.25 -0.50 x", "axis-missing", 6);
    expectRefusal("-1.25 -0.50 1 base in", "axis-missing", 6);
    expectRefusal("-1.25 -0.50 / 1 BI", "axis-missing", 6);
    expectRefusal("-1.25 x 90", "cylinder-missing", 6);
    expectRefusal("-1.25 90", "cylinder-missing", 6);
    expectRefusal("-1.25DS @ 5", "cylinder-missing", 8);
    expectRefusal("-1.25 / 27", "cylinder-missing", 8);
}

BOOST_AUTO_TEST_CASE(a_dropped_decimal_point_is_asked_about, *utf::label("DER"))
{
    expectRefusal("-75", "decimal-point", 1);
    expectRefusal("-125", "decimal-point", 1);
    expectRefusal("-075", "decimal-point", 1);
    expectRefusal("-25", "decimal-point", 1);
    expectRefusal("+50", "decimal-point", 1);
    expectRefusal("-1.00 -50 x 90", "decimal-point", 7);
    expectRefusal("-1.00 -21 x 90", "decimal-point", 7);
    expectRefusal("plano add 200", "decimal-point", 10);
    expectRefusal("- / -75 / 27", "decimal-point", 5);
    const auto asked = parseEye("-125").complaint().sentence;
    BOOST_TEST(asked.text == "%1 has no decimal point; write %2");
    BOOST_TEST((asked.arguments == std::vector<std::string>{"-125", "-1.25"}));
    const auto either = parseEye("-25").complaint().sentence;
    BOOST_TEST((either.arguments == std::vector<std::string>{"-25", "-0.25", "-25.00"}));
}

BOOST_AUTO_TEST_CASE(powers_beyond_any_lens_are_refused, *utf::label("DER"))
{
    expectRefusal("-40.25", "power-range", 1);
    expectRefusal("+125.00", "power-range", 1);
    expectRefusal("-1.00 -20.25 x 90", "power-range", 7);
    BOOST_TEST(static_cast<bool>(parseEye("-40.00")));
    BOOST_TEST(static_cast<bool>(parseEye("-20")));
    BOOST_TEST(static_cast<bool>(parseEye("-1.00 -20.00 x 90")));
}

BOOST_AUTO_TEST_CASE(a_prism_needs_one_readable_base_a_direction, *utf::label("DER"))
{
    expectRefusal("-1.00 2 base 361", "prism-base", 8);
    expectRefusal("-1.00 2 base", "prism-base", 8);
    expectRefusal("-1.00 2 base left", "prism-base", 8);
    expectRefusal("-1.00 1 BI 2 BO", "prism-base", 13);
    expectRefusal("-1.00 1 base 45 1 BU", "prism-base", 18);
    expectRefusal("-1.00 1 pd", "prism-base", 10);
    expectRefusal("-1.00 -1 base in", "prism-amount", 6);
    expectRefusal("-1.00 31 base in", "prism-amount", 6);
}

BOOST_AUTO_TEST_CASE(an_empty_eye_is_an_error_and_never_a_balance_eye, *utf::label("DER"))
{
    expectRefusal("", "empty-eye", 0);
    expectRefusal("   ", "empty-eye", 0);
    BOOST_TEST(parsePower("").complaint().code == "number");
    BOOST_TEST(parseLensPower(" ").complaint().code == "number");
}

BOOST_AUTO_TEST_CASE(whatever_is_left_over_is_shown, *utf::label("DER"))
{
    expectRefusal("-1.25 -0.50 x 90 glasses", "text-left-over", 17);
    expectRefusal("+5.50DS / -6.00DCx90 / -7.50DCx180", "text-left-over", 21);
    expectRefusal("-1.25.50", "number", 0);
    expectRefusal("-2.", "number", 0);
    expectRefusal("-1.25 -0.50. x 90", "number", 6);
    expectRefusal("balance -1.00", "text-left-over", 8);
    expectRefusal("plano INT add +1.00", "text-left-over", 6);
    expectRefusal("-1.00e3", "text-left-over", 5);
    expectRefusal("-1.00 add 2.00 add 1.00", "text-left-over", 15);
    BOOST_TEST(parsePower("-1.00 1 BI").complaint().code == "text-left-over");
    BOOST_TEST(parsePower("-1.00 add 2.00").complaint().code == "text-left-over");
    BOOST_TEST((parseEye("-1.00 gl\u00e4s").complaint().sentence.arguments ==
                std::vector<std::string>{"gl\u00e4s"}));
}

BOOST_AUTO_TEST_CASE(what_is_no_number_is_refused, *utf::label("DER"))
{
    for (const char* text : {"-", "+", "x", "nan", "NaN", "inf", "-inf", "+infinity", "+1e308", "-1e308",
                             "1e3", "--1.00", "+-1.00", "abc", "\xff\xfe", "-/-/-", "\u2212"})
        BOOST_TEST(!parseEye(text), text);
    expectRefusal("nan", "number", 0);
    expectRefusal("-abc", "number", 0);
    expectRefusal("-1234567890123", "number", 0);
    expectRefusal("+1e308", "text-left-over", 2);
    expectRefusal("+" + std::string(308, '9') + ".00", "number", 0);
}

BOOST_AUTO_TEST_CASE(no_text_whatever_crashes_the_readers, *utf::label("PROP"))
{
    constexpr unsigned seed = 77001;
    BOOST_TEST_MESSAGE("seed " << seed);
    std::mt19937 engine(seed);
    const std::string signs = "0123456789+-.,/ x@DSdcplanobseiuADt\xe2\x88\x92\xc3\x97";
    std::uniform_int_distribution<std::size_t> which(0, signs.size() - 1);
    std::uniform_int_distribution<int> length(0, 24);
    int accepted = 0;
    for (int i = 0; i < 200000; ++i) {
        std::string text;
        for (int k = length(engine); k > 0; --k)
            text += signs[which(engine)];
        const auto eye = parseEye(text);
        accepted += eye ? 1 : 0;
        (void)parseLensPower(text);
        if (!eye && (eye.complaint().code.empty() || eye.complaint().offset < 0 ||
                     eye.complaint().offset > static_cast<int>(text.size())))
            BOOST_ERROR("complaint without code or place: " << text);
        if (eye && eye.value().state == EyeState::measured) {
            const auto again = parsePower(writePower(eye.value().power));
            BOOST_TEST((again && again.value() == eye.value().power), text);
        }
    }
    BOOST_TEST(accepted > 0);
}

BOOST_AUTO_TEST_CASE(a_long_text_is_quoted_in_forty_characters, *utf::label("REG"))
{
    const std::string blanks(80, '\n');
    for (const auto& text : {std::string(300, 'x'), "-" + blanks + "85", "-1.00 " + std::string(200, '?')}) {
        const auto read = parsePower(text);
        BOOST_TEST_REQUIRE(!read);
        for (const auto& argument : read.complaint().sentence.arguments)
            BOOST_TEST(argument.size() <= 42U, argument); // 39 letters and an ellipsis of three bytes
    }
    BOOST_TEST(parsePower("+" + blanks + "085").complaint().sentence.arguments.back() == "+0.85");
    const auto huge = parsePower(std::string(10000000, '7'));
    BOOST_TEST(!huge);
    BOOST_TEST(huge.complaint().sentence.arguments.at(0).size() <= 42U);
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep
