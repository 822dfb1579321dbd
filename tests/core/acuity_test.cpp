// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/optics/acuity.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>

namespace utf = boost::unit_test;

namespace quarterstep
{
namespace
{

double readLogMar(const std::string& text)
{
    const auto read = parseAcuity(text);
    BOOST_TEST_REQUIRE(static_cast<bool>(read), text << ": " << read.complaint().code);
    BOOST_TEST(read.value().asRecorded == text);
    BOOST_TEST_REQUIRE(read.value().logMar.has_value());
    return *read.value().logMar;
}

std::string acuityRefusal(const std::string& text)
{
    const auto read = parseAcuity(text);
    return read ? "accepted" : read.complaint().code;
}

double readPoints(const std::string& text)
{
    const auto read = parseNearAcuity(text);
    BOOST_TEST_REQUIRE(static_cast<bool>(read), text << ": " << read.complaint().code);
    return read.value().points;
}

constexpr double closeEnough = 1e-12;

} // namespace

BOOST_AUTO_TEST_SUITE(acuity)

BOOST_AUTO_TEST_CASE(one_acuity_is_read_in_all_its_spellings, *utf::label("DER"))
{
    const double twelve = std::log10(2.0);
    for (const char* text :
         {"6/12", "20/40", "6 / 12", "dec 0.5", "0.5 decimal", "0,5 dec", "decimal .5", "3/6", "6/12-2",
          "6/12 +1", "6/12(-3)", "6/12p", "6/12 partly", "5/10", " 6/12 "})
        BOOST_TEST(std::fabs(readLogMar(text) - twelve) < closeEnough, text);
    for (const char* text : {"logMAR 0.2", "0.2 logMAR", "logmar 0,20", "LogMAR +0.2"})
        BOOST_TEST(readLogMar(text) == 0.2, text);
    BOOST_TEST(readLogMar("logMAR -0.1") == -0.1);
    BOOST_TEST(readLogMar("-0.1 logMAR") == -0.1);
    BOOST_TEST(std::fabs(readLogMar("3/60") - std::log10(20.0)) < closeEnough);
    BOOST_TEST(!std::signbit(readLogMar("6/6")));
}

BOOST_AUTO_TEST_CASE(counting_fingers_and_hand_movements_have_agreed_values,
                     *utf::label("REF") *
                         utf::description("Holladay JT, J Cataract Refract Surg 2004;30:287-290"))
{
    for (const char* text : {"CF", "CF 2 m", "cf at 1m", "counting fingers", "CF 50 cm"})
        BOOST_TEST(readLogMar(text) == 2.0, text);
    for (const char* text : {"HM", "hand movements"})
        BOOST_TEST(readLogMar(text) == 3.0, text);
}

BOOST_AUTO_TEST_CASE(light_perception_and_none_have_no_number, *utf::label("DER"))
{
    for (const char* text : {"PL", "LP", "NPL", "NLP", "no light perception"}) {
        const auto read = parseAcuity(text);
        BOOST_TEST_REQUIRE(static_cast<bool>(read), text);
        BOOST_TEST(!read.value().logMar.has_value());
        BOOST_TEST(read.value().asRecorded == text);
    }
}

BOOST_AUTO_TEST_CASE(what_does_not_say_its_scale_is_refused, *utf::label("DER"))
{
    for (const char* text : {"0.5", "1.0", "0", "1,0", "6"})
        BOOST_TEST(acuityRefusal(text) == "acuity-scale", text);
    BOOST_TEST(acuityRefusal("") == "acuity-empty");
    BOOST_TEST(acuityRefusal("  ") == "acuity-empty");
    BOOST_TEST(acuityRefusal("good") == "acuity");
    BOOST_TEST(acuityRefusal("6/0") == "acuity");
    BOOST_TEST(acuityRefusal("6/") == "acuity");
    BOOST_TEST(acuityRefusal("dec 0") == "acuity");
    BOOST_TEST(acuityRefusal("logMAR") == "acuity");
    BOOST_TEST(acuityRefusal("9/6") == "acuity-fraction");
    BOOST_TEST(acuityRefusal("60/6") == "acuity-fraction");
    BOOST_TEST(acuityRefusal("6/1") == "acuity-range");
    BOOST_TEST(acuityRefusal("logMAR 20") == "acuity-range");
    BOOST_TEST(acuityRefusal("6/9 6/12") == "text-left-over");
    BOOST_TEST(parseAcuity("6/9 glasses").complaint().offset == 4);
}

BOOST_AUTO_TEST_CASE(near_print_is_read_in_points, *utf::label("DER") * utf::description("N points = 8 M"))
{
    for (const char* text : {"N8", "n 8", "M 1.0", "1.0M", "1 M", "M1", "N8 at 40 cm", "1.0M @ 33cm"})
        BOOST_TEST(std::fabs(readPoints(text) - 8.0) < closeEnough, text);
    BOOST_TEST(std::fabs(readPoints("0.8M") - 6.4) < closeEnough);
    BOOST_TEST(parseNearAcuity("N6 at 40 cm").value().distanceMm.value() == 400.0);
    BOOST_TEST(parseNearAcuity("N6 @ 350 mm").value().distanceMm.value() == 350.0);
    BOOST_TEST(!parseNearAcuity("N6").value().distanceMm.has_value());
}

BOOST_AUTO_TEST_CASE(what_is_not_near_print_is_refused, *utf::label("DER"))
{
    for (const char* text : {"", "6", "N", "N0", "N200", "6/6", "J2"})
        BOOST_TEST(parseNearAcuity(text).complaint().code == "near-acuity", text);
    for (const char* text : {"N6 at 40", "N6 at 4 mm", "N6 at", "N6 good"})
        BOOST_TEST(parseNearAcuity(text).complaint().code == "near-acuity-distance", text);
}

BOOST_AUTO_TEST_CASE(conversions_are_each_other_s_inverse, *utf::label("PROP"))
{
    for (int tenths = -3; tenths <= 20; ++tenths) {
        const double logMar = tenths / 10.0;
        BOOST_TEST(std::fabs(logMarFromDecimal(decimalFromLogMar(logMar)) - logMar) < closeEnough);
        BOOST_TEST(std::fabs(std::log10(snellenDenominator(logMar, 6.0) / 6.0) - logMar) < closeEnough);
    }
    BOOST_TEST(expectedLoss(0.0) == 0.0);
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep
