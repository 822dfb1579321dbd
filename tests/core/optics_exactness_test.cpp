// SPDX-License-Identifier: GPL-3.0-or-later
// Exactness promised by core/optics, and properties over random powers (seed printed).
#include "core/optics/angle.hpp"
#include "core/optics/effectivity.hpp"
#include "core/optics/notation.hpp"
#include "core/optics/power_matrix.hpp"
#include "core/optics/power_vector.hpp"
#include "core/optics/prism.hpp"

#include <boost/test/unit_test.hpp>

#include <random>

namespace utf = boost::unit_test;

namespace quarterstep
{
namespace
{

constexpr unsigned seed = 20260714;
constexpr int randomPowers = 20000;

bool identical(double a, double b)
{
    return a == b && std::signbit(a) == std::signbit(b);
}

bool identical(const PowerVector& a, const PowerVector& b)
{
    return identical(a.m, b.m) && identical(a.j0, b.j0) && identical(a.j45, b.j45);
}

bool minusZero(double value)
{
    return value == 0.0 && std::signbit(value);
}

SpheroCylinder eighths(int sphere, int cylinder, double axis)
{
    return {Dioptres{0.125 * sphere}, Dioptres{0.125 * cylinder}, AxisDegrees{axis}};
}

/// Random powers in steps of an eighth, whole-degree axes.
class RandomPowers
{
  public:
    RandomPowers() { BOOST_TEST_MESSAGE("seed " << seed); }
    SpheroCylinder next() { return eighths(sphere_(engine_), cylinder_(engine_), axis_(engine_)); }

  private:
    std::mt19937 engine_{seed};
    std::uniform_int_distribution<int> sphere_{-160, 160};
    std::uniform_int_distribution<int> cylinder_{-80, 80};
    std::uniform_int_distribution<int> axis_{1, 180};
};

} // namespace

BOOST_AUTO_TEST_SUITE(optics_exactness)

BOOST_AUTO_TEST_CASE(transposed_forms_of_eighths_give_identical_vectors, *utf::label("PROP"))
{
    long different = 0;
    long minusZeros = 0;
    for (int axis = 1; axis <= 180; ++axis)
        for (int cylinder = -80; cylinder <= 80; ++cylinder)
            for (int sphere = -240; sphere <= 240; sphere += 16) {
                const auto power = eighths(sphere, cylinder, axis);
                const auto vector = toPowerVector(power);
                different += identical(vector, toPowerVector(transposed(power))) ? 0 : 1;
                minusZeros += minusZero(vector.m) || minusZero(vector.j0) || minusZero(vector.j45) ? 1 : 0;
            }
    BOOST_TEST(different == 0);
    BOOST_TEST(minusZeros == 0);
}

BOOST_AUTO_TEST_CASE(components_vanish_exactly_at_right_and_half_right_angles, *utf::label("PROP"))
{
    for (int cylinder = -80; cylinder <= 80; ++cylinder) {
        for (const double axis : {90.0, 180.0})
            BOOST_TEST(identical(toPowerVector(eighths(3, cylinder, axis)).j45, 0.0));
        for (const double axis : {45.0, 135.0})
            BOOST_TEST(identical(toPowerVector(eighths(3, cylinder, axis)).j0, 0.0));
    }
}

BOOST_AUTO_TEST_CASE(sines_and_cosines_are_exact_where_they_can_be, *utf::label("DER"))
{
    for (int turn = -3; turn <= 3; ++turn) {
        const double full = 360.0 * turn;
        BOOST_TEST(identical(sineOfDegrees(full), 0.0));
        BOOST_TEST(identical(sineOfDegrees(full + 180.0), 0.0));
        BOOST_TEST(identical(cosineOfDegrees(full + 90.0), 0.0));
        BOOST_TEST(identical(cosineOfDegrees(full - 90.0), 0.0));
        BOOST_TEST(sineOfDegrees(full + 30.0) == 0.5);
        BOOST_TEST(sineOfDegrees(full + 210.0) == -0.5);
        BOOST_TEST(cosineOfDegrees(full + 120.0) == -0.5);
        BOOST_TEST(cosineOfDegrees(full + 180.0) == -1.0);
    }
    for (int tenths = -7200; tenths <= 7200; ++tenths) {
        const double degrees = tenths / 10.0;
        const double radians = degrees * 3.14159265358979323846 / 180.0;
        // The library's own reduction of radians costs a few units in the last place of numbers up to 12.
        BOOST_TEST(std::fabs(sineOfDegrees(degrees) - std::sin(radians)) < 4e-15, degrees);
        BOOST_TEST(std::fabs(cosineOfDegrees(degrees) - std::cos(radians)) < 4e-15, degrees);
    }
}

BOOST_AUTO_TEST_CASE(axes_fold_into_one_to_180,
                     *utf::label("DER") * utf::description("ISO 8429: 0 is written 180"))
{
    BOOST_TEST(foldAxis(0.0).value() == 180.0);
    BOOST_TEST(foldAxis(-0.0).value() == 180.0);
    BOOST_TEST(foldAxis(180.0).value() == 180.0);
    BOOST_TEST(foldAxis(181.0).value() == 1.0);
    BOOST_TEST(foldAxis(-90.0).value() == 90.0);
    BOOST_TEST(foldAxis(360.0).value() == 180.0);
    BOOST_TEST(turnBetween(AxisDegrees{5.0}, AxisDegrees{175.0}) == 10.0);
    BOOST_TEST(turnBetween(AxisDegrees{90.0}, AxisDegrees{180.0}) == 90.0);
    BOOST_TEST(turnBetween(AxisDegrees{20.0}, AxisDegrees{20.0}) == 0.0);
}

BOOST_AUTO_TEST_CASE(a_written_power_survives_the_way_through_its_vector, *utf::label("PROP"))
{
    RandomPowers powers;
    int lost = 0;
    for (int i = 0; i < randomPowers; ++i) {
        const auto written = minusCylinderForm(powers.next());
        const auto back = toSpheroCylinder(toPowerVector(written));
        const bool same = back == written && (written.cylinder == Dioptres{} ||
                                              std::fabs(back.axis.value() - written.axis.value()) < 1e-9);
        lost += same && !minusZero(back.sphere.value()) ? 0 : 1;
    }
    BOOST_TEST(lost == 0);
}

BOOST_AUTO_TEST_CASE(text_survives_reading_and_writing, *utf::label("PROP"))
{
    RandomPowers powers;
    int lost = 0;
    for (int i = 0; i < randomPowers; ++i) {
        const auto power = powers.next();
        const auto read = parsePower(writePower(power));
        lost += read && read.value() == power && writePower(read.value()) == writePower(power) ? 0 : 1;
    }
    BOOST_TEST(lost == 0);
}

BOOST_AUTO_TEST_CASE(the_matrix_says_the_same_as_the_vector, *utf::label("PROP"))
{
    RandomPowers powers;
    double worst = 0.0;
    for (int i = 0; i < randomPowers; ++i) {
        const auto power = powers.next();
        const double s = power.sphere.value();
        const double c = power.cylinder.value();
        const double sine = sineOfDegrees(power.axis.value());
        const double cosine = cosineOfDegrees(power.axis.value());
        const auto matrix = toPowerMatrix(power);
        worst = std::max({worst, std::fabs(matrix.f11 - (s + c * sine * sine)),
                          std::fabs(matrix.f12 + c * sine * cosine),
                          std::fabs(matrix.f22 - (s + c * cosine * cosine))});
        const auto vector = toPowerVector(power);
        const auto back = toPowerVector(matrix);
        worst = std::max({worst, std::fabs(back.m - vector.m), std::fabs(back.j0 - vector.j0),
                          std::fabs(back.j45 - vector.j45)});
        worst = std::max({worst, std::fabs(powerInMeridian(vector, power.axis.value()) - s),
                          std::fabs(powerInMeridian(vector, power.axis.value() + 90.0) - (s + c))});
    }
    BOOST_TEST(worst < 1e-13); // a few units in the last place of 30 D
}

BOOST_AUTO_TEST_CASE(a_vertex_change_and_back_is_no_change, *utf::label("PROP"))
{
    RandomPowers powers;
    for (int i = 0; i < 2000; ++i) {
        const auto power = powers.next();
        const auto there = atVertexDistance(power, Millimetres{12.0}, Millimetres{0.0});
        BOOST_TEST_REQUIRE(there.has_value());
        const auto back = atVertexDistance(*there, Millimetres{0.0}, Millimetres{12.0});
        BOOST_TEST_REQUIRE(back.has_value());
        BOOST_TEST(std::fabs(back->sphere.value() - power.sphere.value()) < 1e-12);
        BOOST_TEST(std::fabs(back->cylinder.value() - power.cylinder.value()) < 1e-12);
    }
    BOOST_TEST((atVertexDistance(sphereOf(4.0), Millimetres{12.0}, Millimetres{12.0}) == sphereOf(4.0)));
}

BOOST_AUTO_TEST_CASE(light_focused_before_the_new_plane_has_no_answer, *utf::label("DER"))
{
    BOOST_TEST(!atVertexDistance(sphereOf(50.0), Millimetres{20.0}, Millimetres{0.0}).has_value());
    BOOST_TEST(!atVertexDistance(eighths(80, 320, 90.0), Millimetres{30.0}, Millimetres{0.0}).has_value());
}

BOOST_AUTO_TEST_CASE(base_angles_mean_in_for_the_right_eye_and_out_for_the_left,
                     *utf::label("DER") * utf::description("ISO 8429 base angles"))
{
    BOOST_TEST((prismFromBase(1.0, 0.0, Eye::right) == EyePrism{1.0, 0.0}));
    BOOST_TEST((prismFromBase(1.0, 0.0, Eye::left) == EyePrism{-1.0, 0.0}));
    BOOST_TEST((prismFromBase(1.0, 90.0, Eye::right) == EyePrism{0.0, 1.0}));
    BOOST_TEST((prismFromBase(1.0, 90.0, Eye::left) == EyePrism{0.0, 1.0}));
    BOOST_TEST((prismFromBase(1.0, 180.0, Eye::left) == EyePrism{1.0, 0.0}));
    BOOST_TEST((prismFromBase(1.0, 270.0, Eye::left) == EyePrism{0.0, -1.0}));
    BOOST_TEST(!minusZero(prismFromBase(1.0, 90.0, Eye::left).in));
    BOOST_TEST(baseOf(EyePrism{}, Eye::left).amount == 0.0);
}

BOOST_AUTO_TEST_CASE(yoked_prism_gives_no_pair_prism, *utf::label("PROP"))
{
    const auto yoked = pairPrism(prismFromBase(2.0, 0.0, Eye::right), prismFromBase(2.0, 0.0, Eye::left));
    BOOST_TEST(yoked.horizontal == 0.0);
    const auto up = pairPrism({0.0, 1.5}, {0.0, 1.5});
    BOOST_TEST(up.vertical == 0.0);
}

BOOST_AUTO_TEST_CASE(eyes_are_mirror_images_in_prism, *utf::label("PROP"))
{
    RandomPowers powers;
    for (int i = 0; i < 2000; ++i) {
        const auto power = powers.next();
        const SpheroCylinder mirrored{power.sphere, power.cylinder, foldAxis(180.0 - power.axis.value())};
        const auto right = prismAt(toPowerMatrix(power), Eye::right, 2.0, -3.0);
        const auto left = prismAt(toPowerMatrix(mirrored), Eye::left, 2.0, -3.0);
        BOOST_TEST(std::fabs(right.in - left.in) < 1e-12);
        BOOST_TEST(std::fabs(right.up - left.up) < 1e-12);
    }
}

BOOST_AUTO_TEST_CASE(a_mean_of_nothing_is_zero, *utf::label("DER"))
{
    BOOST_TEST((meanVector({}) == PowerVector{}));
    BOOST_TEST((meanVector({{1.0, 2.0, 3.0}, {3.0, 2.0, 1.0}}) == PowerVector{2.0, 2.0, 2.0}));
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep
