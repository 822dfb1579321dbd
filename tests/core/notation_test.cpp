// SPDX-License-Identifier: GPL-3.0-or-later
// What is read, and what it means.
#include "core/optics/notation.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;

namespace quarterstep
{
namespace
{

/// The power as we write it, or the code of the refusal.
std::string readAs(const std::string& text)
{
    const auto read = parseEye(text);
    return read ? writePower(read.value().power) : read.complaint().code;
}

EyePrism readPrism(const std::string& text, Eye eye = Eye::right)
{
    const auto read = parseEye(text, eye);
    BOOST_TEST_REQUIRE(static_cast<bool>(read), text << ": " << read.complaint().code);
    BOOST_TEST_REQUIRE(read.value().prism.has_value(), text);
    return *read.value().prism;
}

} // namespace

BOOST_AUTO_TEST_SUITE(notation)

BOOST_AUTO_TEST_CASE(one_power_is_read_in_all_its_spellings,
                     *utf::label("DER") * utf::description("common practice"))
{
    for (const char* text :
         {"-1.25 -0.50 x 90", "-1.25/-0.50x90", "-1.25 / -0.50 / 90", "-1.25 -0.50 90", "-1,25 -0,50 x 90",
          "-1.25-0.50x090", "-1.25 DS / -0.50 DC x 90", "-1.25DS -0.50DC X 90\u00b0", "-1.25 -0.50 @ 90",
          "\u22121.25 \u22120.50 \u00d7 90", "- 1.25 - 0.50 x 90", "sph -1.25 cyl -0.50 axis 90",
          "-1.25 -.50 ax 90", "-1.25, -0.50 x 90", "  -1.25   -0.50   x   90  ", "-1.25D -0.5D x 90 deg",
          "-1.25 -0.50 x 90.0"})
        BOOST_TEST(readAs(text) == "-1.25 -0.50 x 90", text);
}

BOOST_AUTO_TEST_CASE(spheres_are_read_with_and_without_words, *utf::label("DER"))
{
    for (const char* text :
         {"-2.00", "-2.00DS", "-2.00 ds", "-2", "-2.00 sph", "-2.00 / - / -", "-2.00 / -", "-2,0",
          "-2.00 0.00", "-2.00 -0.00 x 0", "-2.00 0.00 x 180", "-2.00 / 0.00 / 90"})
        BOOST_TEST(readAs(text) == "-2.00", text);
    for (const char* text : {"plano", "pl", "0.00", "0", "+0.00", "-0.00", "Plano DS", "PL"})
        BOOST_TEST(readAs(text) == "0.00", text);
    BOOST_TEST(readAs("pl -1.25 x175") == "0.00 -1.25 x 175");
    BOOST_TEST(readAs("- / -0.75 / 27") == "0.00 -0.75 x 27");
}

BOOST_AUTO_TEST_CASE(truncated_eighths_mean_the_eighth_and_nothing_else_is_bent, *utf::label("DER"))
{
    BOOST_TEST(readAs("-0.12") == "-0.125");
    BOOST_TEST(readAs("+1.37") == "+1.375");
    BOOST_TEST(readAs("-1.62 +1.75 x 115") == "-1.625 +1.75 x 115");
    BOOST_TEST(readAs("+2.87") == "+2.875");
    BOOST_TEST(readAs("-0.125") == "-0.125");
    BOOST_TEST(readAs("-4.72") == "-4.72");
    BOOST_TEST(readAs("+0.13") == "+0.13");
    BOOST_TEST(readAs("-0.120") == "-0.120");
    BOOST_TEST(readAs("-1.2 -0.8 x 77.5") == "-1.20 -0.80 x 77.5");
    BOOST_TEST(parsePower("-0.12").value().sphere.value() == -0.125);
}

BOOST_AUTO_TEST_CASE(axis_zero_is_read_as_180_and_three_digits_are_one_axis,
                     *utf::label("DER") * utf::description("ISO 8429"))
{
    BOOST_TEST(readAs("-1.00 -0.50 x 0") == "-1.00 -0.50 x 180");
    BOOST_TEST(readAs("-1.00 -0.50 x 000") == "-1.00 -0.50 x 180");
    BOOST_TEST(readAs("-1.00 -0.50 x 005") == "-1.00 -0.50 x 5");
    BOOST_TEST(readAs("-1.00 -0.50 x 180") == "-1.00 -0.50 x 180");
    BOOST_TEST(readAs("-1.00 -0.50 x 0.5") == "-1.00 -0.50 x 0.5");
}

BOOST_AUTO_TEST_CASE(prism_is_read_in_words_letters_and_degrees, *utf::label("DER"))
{
    for (const char* text : {"-1.00 1 base in", "-1.00 1 BI", "-1.00 1\u0394 base in", "-1.00 1 pd BI",
                             "-1.00 / 1 base-in", "-1.00 prism 1 base in", "-1.00 1.0 base 0", "-1.00 +1 BI"})
        BOOST_TEST((readPrism(text) == EyePrism{1.0, 0.0}), text);
    BOOST_TEST((readPrism("-1.00 2 BU") == EyePrism{0.0, 2.0}));
    BOOST_TEST((readPrism("-1.00 2 base down") == EyePrism{0.0, -2.0}));
    BOOST_TEST((readPrism("-1.00 -0.50 x 90 1 BO") == EyePrism{-1.0, 0.0}));
    for (const char* text : {"-1.00 1 base in 0.5 base up", "-1.00 0.5 BU / 1 BI", "-1.00 1 BI and 0.5 BU",
                             "-1.00 1 BI + 0.5 BU", "-1.00 1BI 0.5BU"})
        BOOST_TEST((readPrism(text) == EyePrism{1.0, 0.5}), text);
    BOOST_TEST((readPrism("-1.00 1 base 0", Eye::left) == EyePrism{-1.0, 0.0}));
    BOOST_TEST((readPrism("-1.00 1 base 90", Eye::left) == EyePrism{0.0, 1.0}));
    BOOST_TEST((readPrism("-1.00 1 base 360", Eye::right) == EyePrism{1.0, 0.0}));
    BOOST_TEST(!parseEye("-1.00").value().prism.has_value());
}

BOOST_AUTO_TEST_CASE(an_addition_is_plus_whether_signed_or_not, *utf::label("DER"))
{
    for (const char* text :
         {"-1.00 Add +2.00", "-1.00 add 2.00", "-1.00 -0.50 x 90 ADD 2", "-1.00 / add: +2,00",
          "-1.00 1 BI add 2.00", "-1.00 add 2.00 1 BI", "-1.00, addition 2.00 DS"}) {
        const auto read = parseEye(text);
        BOOST_TEST_REQUIRE(static_cast<bool>(read), text << ": " << read.complaint().code);
        BOOST_TEST_REQUIRE(read.value().addition.has_value(), text);
        BOOST_TEST(read.value().addition->value() == 2.0, text);
    }
    BOOST_TEST(!parseEye("-1.00").value().addition.has_value());
}

BOOST_AUTO_TEST_CASE(eyes_that_are_not_refracted_are_said_in_words, *utf::label("DER"))
{
    const auto stateOf = [](const char* text) { return parseEye(text).value().state; };
    for (const char* text : {"balance", "BAL", "Balance ", "bal"})
        BOOST_TEST((stateOf(text) == EyeState::balance), text);
    for (const char* text : {"artificial", "Artificial eye", "prosthesis"})
        BOOST_TEST((stateOf(text) == EyeState::artificial), text);
    BOOST_TEST((stateOf("blind") == EyeState::blind));
    for (const char* text : {"not measured", "not-measured", "Not  Measured"})
        BOOST_TEST((stateOf(text) == EyeState::notMeasured), text);
    BOOST_TEST((stateOf("-1.00") == EyeState::measured));
}

BOOST_AUTO_TEST_CASE(the_text_is_kept_as_written, *utf::label("PROP"))
{
    for (const char* text : {" -1,25 -0,50 \u00d7 90", "PL", "BAL", "-1.00 1 BI add 2.00"})
        BOOST_TEST(parseEye(text).value().asWritten == text);
    BOOST_TEST((parseEye("+1.00 +0.50 x 5").value().power ==
                SpheroCylinder{Dioptres{1.0}, Dioptres{0.5}, AxisDegrees{5.0}}));
}

BOOST_AUTO_TEST_CASE(a_lens_may_wait_for_its_axis, *utf::label("DER"))
{
    BOOST_TEST(!parseLensPower("-1.00 -0.75").value().axisGiven);
    BOOST_TEST(parseLensPower("-1.00 -0.75 x 90").value().axisGiven);
    BOOST_TEST(parseLensPower("-1.00").value().axisGiven);
    BOOST_TEST(parsePower("-1.00 -0.75").complaint().code == "axis-missing");
}

BOOST_AUTO_TEST_CASE(single_values_need_a_sign_only_where_asked, *utf::label("DER"))
{
    BOOST_TEST(parseDioptres("+2.00", true).value().value() == 2.0);
    BOOST_TEST(parseDioptres("2.00", false).value().value() == 2.0);
    BOOST_TEST(parseDioptres("2.00", true).complaint().code == "power-sign");
    BOOST_TEST(parseDioptres("0", true).value().value() == 0.0);
    BOOST_TEST(parseDioptres("plano", true).value().value() == 0.0);
    BOOST_TEST(parseDioptres("", true).complaint().code == "number");
    BOOST_TEST(parseDioptres("+2.00 x", true).complaint().code == "text-left-over");
}

BOOST_AUTO_TEST_CASE(powers_are_written_with_their_sign_and_zero_without, *utf::label("DER"))
{
    BOOST_TEST(writeDioptres(Dioptres{2.0}) == "+2.00");
    BOOST_TEST(writeDioptres(Dioptres{-0.125}) == "-0.125");
    BOOST_TEST(writeDioptres(Dioptres{-0.0004}) == "0.00");
    BOOST_TEST(writeDioptres(Dioptres{-12.5}) == "-12.50");
    BOOST_TEST(writeDioptres(Dioptres{}) == "0.00");
    BOOST_TEST(writePower(sphereOf(-1.25)) == "-1.25");
    BOOST_TEST(writePower({Dioptres{}, Dioptres{-0.5}, AxisDegrees{180.0}}) == "0.00 -0.50 x 180");
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep
