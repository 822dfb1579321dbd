// SPDX-License-Identifier: GPL-3.0-or-later
// What holds for every power: transposition, round trips, turning, distances, vertex there and back,
// decentring.
#include "core/optics/angle.hpp"
#include "core/optics/combined_power.hpp"
#include "core/optics/decentration.hpp"
#include "core/optics/effectivity.hpp"
#include "core/optics/lens_form.hpp"
#include "core/optics/notation.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>
#include <random>

namespace utf = boost::unit_test;

namespace quarterstep::check
{
namespace
{

constexpr unsigned seed = 20261125;
constexpr int trials = 20000;

SpheroCylinder written(double sphere, double cylinder, double axis)
{
    return {Dioptres{sphere}, Dioptres{cylinder}, AxisDegrees{axis}};
}

class Random
{
  public:
    double between(double least, double most)
    {
        return std::uniform_real_distribution<double>(least, most)(engine_);
    }
    SpheroCylinder power() { return written(between(-20, 20), between(-6, 6), between(0.001, 180)); }
    PowerVector vector() { return {between(-20, 20), between(-4, 4), between(-4, 4)}; }
    Eye eye() { return between(0, 1) < 0.5 ? Eye::right : Eye::left; }

  private:
    std::mt19937 engine_{seed};
};

double apart(const PowerVector& a, const PowerVector& b)
{
    return blurStrength(a - b);
}

/// The lens turned in its plane by `degrees`.
SpheroCylinder turned(const SpheroCylinder& power, double degrees)
{
    return {power.sphere, power.cylinder, foldAxis(power.axis.value() + degrees)};
}

} // namespace

BOOST_AUTO_TEST_SUITE(depth_properties)

// The eighths as the trade writes them (common practice): the last digit dropped, and nothing else changed.
BOOST_AUTO_TEST_CASE(eighths_lose_their_last_digit_and_read_back_alike, *utf::label("PROP"))
{
    BOOST_TEST(writeTruncated(Dioptres{-0.125}) == "-0.12");
    BOOST_TEST(writeTruncated(Dioptres{0.375}) == "+0.37");
    BOOST_TEST(writeTruncated(Dioptres{1.625}) == "+1.62");
    BOOST_TEST(writeTruncated(Dioptres{-2.875}) == "-2.87");
    BOOST_TEST(writeTruncated(Dioptres{-1.25}) == "-1.25");
    BOOST_TEST(writeTruncated(Dioptres{0.115}) == writeDioptres(Dioptres{0.115})); // no eighth
    for (long eighth = -80; eighth <= 80; ++eighth) {
        const Dioptres power{static_cast<double>(eighth) / 8.0};
        const auto read = parsePower(writeTruncated(power));
        BOOST_TEST_REQUIRE(static_cast<bool>(read));
        BOOST_TEST((read.value().sphere == power));
    }
}

// Where a surface ends or is flat (by the definitions in the header).
BOOST_AUTO_TEST_CASE(a_lens_has_no_edge_beyond_its_surfaces, *utf::label("PROP"))
{
    BOOST_TEST(std::isinf(surfaceRadius(0.0, 1.5)));
    BOOST_TEST(!surfaceSag(0.02, 51.0).has_value()); // radius 50 mm
    BOOST_TEST(!edgeThickness(0.02, 0.01, 2.0, 51.0).has_value());
    BOOST_TEST(!shapeFactor(0.01, 0.01).has_value());
}

BOOST_AUTO_TEST_CASE(a_transposed_form_is_the_same_vector_bit_for_bit_over_the_whole_grid,
                     *utf::label("PROP"))
{
    long differing = 0;
    long forms = 0;
    for (int eighths = -48; eighths <= 48; ++eighths)
        for (int axis = 1; axis <= 180; ++axis)
            for (const double sphere : {-30.0, -7.625, -0.125, 0.0, 0.875, 6.0, 30.0}) {
                const auto power = written(sphere, eighths / 8.0, axis);
                differing += toPowerVector(power) == toPowerVector(transposed(power)) ? 0 : 1;
                differing += transposed(transposed(power)) == power ? 0 : 1;
                ++forms;
            }
    BOOST_TEST(forms == 97L * 180L * 7L);
    BOOST_TEST(differing == 0);
}

BOOST_AUTO_TEST_CASE(written_to_vector_and_back_gives_the_same_text_over_the_whole_grid, *utf::label("PROP"))
{
    for (int eighths = -48; eighths < 0; ++eighths)
        for (int axis = 1; axis <= 180; ++axis) {
            const auto power = written(1.375, eighths / 8.0, axis);
            const auto back = toSpheroCylinder(toPowerVector(power));
            const auto rounded = written(back.sphere.value(), back.cylinder.value(),
                                         std::round(back.axis.value() * 1e6) / 1e6);
            BOOST_TEST(writePower(rounded) == writePower(power));
        }
}

BOOST_AUTO_TEST_CASE(plus_form_and_crossed_form_read_back_as_the_same_power, *utf::label("PROP"))
{
    for (int eighths = -40; eighths <= 40; ++eighths)
        for (int axis = 1; axis <= 180; axis += 7) {
            const auto power = written(-2.25, eighths / 8.0, axis);
            const auto plus = parsePower(writePlusForm(power));
            BOOST_TEST_REQUIRE(static_cast<bool>(plus), writePlusForm(power));
            BOOST_TEST(plus.value().cylinder.value() >= 0.0);
            BOOST_TEST((toPowerVector(plus.value()) == toPowerVector(power)));
            const auto crossed = writeCrossed(power);
            const auto slash = crossed.find(" / ");
            BOOST_TEST((slash == std::string::npos) == (eighths == 0), crossed);
            if (eighths == 0)
                continue;
            const auto first = parsePower("0.00 / " + crossed.substr(0, slash));
            const auto second = parsePower("0.00 / " + crossed.substr(slash + 3));
            BOOST_TEST_REQUIRE((first && second), crossed);
            const auto sum = toPowerVector(first.value()) + toPowerVector(second.value());
            BOOST_TEST(apart(sum, toPowerVector(power)) < 1e-12, crossed);
        }
}

BOOST_AUTO_TEST_CASE(crossed_and_plus_forms_are_written_as_the_trade_does, *utf::label("DER"))
{
    BOOST_TEST(writeCrossed(written(-1.25, -0.50, 90)) == "-1.75 DC x 90 / -1.25 DC x 180");
    BOOST_TEST(writeCrossed(written(-2.00, 5.00, 90)) == "-2.00 DC x 180 / +3.00 DC x 90");
    BOOST_TEST(writeCrossed(written(2.00, 0.0, 45)) == "+2.00");
    BOOST_TEST(writePlusForm(written(-1.25, -0.50, 90)) == "-1.75 +0.50 x 180");
    BOOST_TEST(writePlusForm(written(2.00, 0.0, 45)) == "+2.00");
}

BOOST_AUTO_TEST_CASE(turning_a_lens_turns_its_power_in_every_meridian, *utf::label("PROP"))
{
    Random random;
    BOOST_TEST_MESSAGE("seed " << seed);
    for (int i = 0; i < trials; ++i) {
        const auto power = random.power();
        const double degrees = random.between(-180, 180);
        const double meridian = random.between(0, 180);
        const double still = powerInMeridian(toPowerVector(power), meridian);
        const double after = powerInMeridian(toPowerVector(turned(power, degrees)), meridian + degrees);
        BOOST_TEST(std::fabs(still - after) < 1e-10);
        BOOST_TEST(std::fabs(blurStrength(toPowerVector(power)) -
                             blurStrength(toPowerVector(turned(power, degrees)))) < 1e-10);
    }
}

BOOST_AUTO_TEST_CASE(principal_powers_bound_the_power_in_every_meridian, *utf::label("PROP"))
{
    Random random;
    for (int i = 0; i < trials; ++i) {
        const auto power = random.power();
        const auto principal = principalPowers(power);
        const auto vector = toPowerVector(power);
        const double any = powerInMeridian(vector, random.between(0, 180));
        BOOST_TEST(any <= principal.higher + 1e-10);
        BOOST_TEST(any >= principal.lower - 1e-10);
        BOOST_TEST(std::fabs(powerInMeridian(vector, principal.higherMeridian) - principal.higher) < 1e-10);
        BOOST_TEST(std::fabs(powerInMeridian(vector, principal.lowerMeridian) - principal.lower) < 1e-10);
    }
}

BOOST_AUTO_TEST_CASE(distances_between_powers_obey_the_triangle_inequality, *utf::label("PROP"))
{
    Random random;
    for (int i = 0; i < trials; ++i) {
        const auto a = random.vector();
        const auto b = random.vector();
        const auto c = random.vector();
        BOOST_TEST(apart(a, c) <= apart(a, b) + apart(b, c) + 1e-12);
    }
}

BOOST_AUTO_TEST_CASE(an_over_refraction_and_a_residual_undo_each_other, *utf::label("PROP"))
{
    Random random;
    for (int i = 0; i < trials; ++i) {
        const auto worn = random.power();
        const auto needed = random.power();
        const auto found = residualRefraction(needed, worn);
        BOOST_TEST(apart(toPowerVector(overRefracted(worn, found)), toPowerVector(needed)) < 1e-12);
        BOOST_TEST(apart(toPowerVector(combined({worn, needed})), toPowerVector(combined({needed, worn}))) <
                   1e-12);
    }
    BOOST_TEST((toPowerVector(combined({})) == PowerVector{}));
}

BOOST_AUTO_TEST_CASE(vertex_there_and_back_is_the_same_power, *utf::label("PROP"))
{
    Random random;
    for (int i = 0; i < trials; ++i) {
        const auto power = random.power();
        const auto there = atVertexDistance(power, Millimetres{14}, Millimetres{12});
        BOOST_TEST_REQUIRE(there.has_value());
        const auto back = atVertexDistance(*there, Millimetres{12}, Millimetres{14});
        BOOST_TEST_REQUIRE(back.has_value());
        BOOST_TEST(apart(toPowerVector(*back), toPowerVector(power)) < 1e-11);
    }
}

BOOST_AUTO_TEST_CASE(worn_where_it_was_found_nothing_changes_and_plus_gains_farther_out, *utf::label("PROP"))
{
    const auto same = asWorn(written(-6, -2, 30), Millimetres{12}, Millimetres{12});
    BOOST_TEST_REQUIRE(same.has_value());
    BOOST_TEST((same->change == PowerVector{}));
    for (double sphere = 0.5; sphere < 20; sphere += 0.5)
        for (const double sign : {-1.0, 1.0}) {
            const auto out = asWorn(written(sign * sphere, 0, 180), Millimetres{12}, Millimetres{16});
            BOOST_TEST_REQUIRE(out.has_value());
            BOOST_TEST(out->change.m > 0.0); // any lens moved away from the eye acts as more plus
        }
    BOOST_TEST(!asWorn(written(200, 0, 180), Millimetres{17}, Millimetres{12}).has_value());
}

BOOST_AUTO_TEST_CASE(a_thin_lens_has_one_vertex_power_and_a_turned_lens_exchanges_them, *utf::label("PROP"))
{
    Random random;
    for (int i = 0; i < trials; ++i) {
        const ThickLens lens{random.between(-10, 20), random.between(-20, 10),
                             Millimetres{random.between(0, 8)}, random.between(1.45, 1.9)};
        const ThickLens reversed{lens.back, lens.front, lens.thickness, lens.index};
        BOOST_TEST(backVertexPower(lens).value() == frontVertexPower(reversed).value());
        const ThickLens thin{lens.front, lens.back, Millimetres{0}, lens.index};
        BOOST_TEST(backVertexPower(thin).value() == nominalPower(lens));
    }
    BOOST_TEST(!backVertexPower({5, 5, Millimetres{2}, 1.0}).has_value());
    BOOST_TEST(!backVertexPower({5, 5, Millimetres{-2}, 1.5}).has_value());
}

BOOST_AUTO_TEST_CASE(decentring_for_a_prism_gives_that_prism, *utf::label("PROP"))
{
    Random random;
    int solved = 0;
    for (int i = 0; i < trials; ++i) {
        const auto matrix = toPowerMatrix(random.power());
        const EyePrism wanted{random.between(-5, 5), random.between(-5, 5)};
        const Eye eye = random.eye();
        const auto answer = decentrationFor(matrix, eye, wanted);
        const auto given = prismFromDecentration(matrix, eye, answer.moved);
        BOOST_TEST(std::fabs(given.in + answer.missing.in - wanted.in) < 1e-9);
        BOOST_TEST(std::fabs(given.up + answer.missing.up - wanted.up) < 1e-9);
        solved += answer.kind == DecentrationAnswer::Kind::one ? 1 : 0;
    }
    BOOST_TEST(solved > trials * 9 / 10);
}

BOOST_AUTO_TEST_CASE(an_oblique_plano_cylinder_gives_prism_along_one_line_only, *utf::label("PROP"))
{
    Random random;
    for (int i = 0; i < 2000; ++i) {
        const auto matrix =
            toPowerMatrix(written(0.0, random.between(-6, -0.25), random.between(0.001, 180)));
        const Eye eye = random.eye();
        const auto reached =
            prismFromDecentration(matrix, eye, {random.between(-9, 9), random.between(-9, 9)});
        const auto line = decentrationFor(matrix, eye, reached);
        BOOST_TEST((line.kind == DecentrationAnswer::Kind::line));
        const EyePrism across{reached.in - reached.up - 1.0, reached.up + reached.in + 1.0};
        const auto none = decentrationFor(matrix, eye, across);
        BOOST_TEST((none.kind == DecentrationAnswer::Kind::none));
        // what is missing stands at right angles to what is given
        BOOST_TEST(std::fabs(none.missing.in * none.given.in + none.missing.up * none.given.up) < 1e-9);
    }
}

BOOST_AUTO_TEST_CASE(prism_in_words_and_in_degrees_reads_back, *utf::label("PROP"))
{
    Random random;
    for (int i = 0; i < 3000; ++i) {
        const Eye eye = random.eye();
        const EyePrism prism{std::round(random.between(-500, 500)) / 100,
                             std::round(random.between(-500, 500)) / 100};
        const auto words = parseEye("-1.00 " + writePrism(prism), eye);
        if (writePrism(prism) == "0.00")
            continue;
        BOOST_TEST_REQUIRE(static_cast<bool>(words), writePrism(prism));
        BOOST_TEST(std::fabs(words.value().prism->in - prism.in) < 1e-9);
        BOOST_TEST(std::fabs(words.value().prism->up - prism.up) < 1e-9);
        const auto degrees = parseEye("-1.00 " + writePrismDegrees(prism, eye), eye);
        BOOST_TEST_REQUIRE(static_cast<bool>(degrees), writePrismDegrees(prism, eye));
        const double far =
            std::hypot(degrees.value().prism->in - prism.in, degrees.value().prism->up - prism.up);
        BOOST_TEST(far < 0.005 + 0.0088 * std::hypot(prism.in, prism.up)); // half a hundredth, half a degree
    }
}

BOOST_AUTO_TEST_CASE(prism_at_the_reading_level_is_the_difference_of_both_eyes, *utf::label("DER"))
{
    const auto pair = prismAtReadingLevel(toPowerMatrix(written(2.0, 0, 180)),
                                          toPowerMatrix(written(1.0, 0, 180)), 10.0, 0.0);
    BOOST_TEST(pair.vertical == 1.0); // 1.00 D of difference, 10 mm below: McCarthy P, 2013
    const auto both = compounded({{1.0, 0.5}, {-0.25, 0.5}});
    BOOST_TEST(both.in == 0.75);
    BOOST_TEST(both.up == 1.0);
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep::check
