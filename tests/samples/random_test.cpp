// SPDX-License-Identifier: GPL-3.0-or-later
// The sample's own random numbers: known quantiles, exact logarithms, the same stream for ever.
#include "samples/generate/acuity_model.hpp"
#include "samples/generate/random.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>

namespace utf = boost::unit_test;
using namespace quarterstep::samples;

BOOST_AUTO_TEST_SUITE(sample_random)

BOOST_AUTO_TEST_CASE(quantiles_of_the_normal_agree_with_the_tables,
                     *utf::label("REF") *
                         utf::description("standard normal table: z of 0.975, 0.995, 0.9995, 0.8413447"))
{
    // AS 241, seven-figure form: about 1 part in 10^7.
    BOOST_TEST(std::fabs(normalQuantile(0.975) - 1.959963985) < 1e-6);
    BOOST_TEST(std::fabs(normalQuantile(0.995) - 2.575829304) < 1e-6);
    BOOST_TEST(std::fabs(normalQuantile(0.0005) + 3.290526731) < 1e-6);
    BOOST_TEST(std::fabs(normalQuantile(0.841344746) - 1.0) < 1e-6);
    BOOST_TEST(normalQuantile(0.5) == 0.0);
}

BOOST_AUTO_TEST_CASE(own_logarithm_agrees_with_the_library, *utf::label("PROP"))
{
    for (double x = 1e-9; x < 1e9; x *= 1.37)
        BOOST_TEST(std::fabs(naturalLog(x) - std::log(x)) <= 1e-15 * (1.0 + std::fabs(std::log(x))) * 4.0);
}

BOOST_AUTO_TEST_CASE(a_stream_never_changes_and_another_member_has_another, *utf::label("REG"))
{
    Random first(1, 1);
    Random again(1, 1);
    Random other(1, 2);
    const double value = first.uniform();
    BOOST_TEST(value == again.uniform());
    BOOST_TEST(value != other.uniform());
}

BOOST_AUTO_TEST_CASE(mean_and_spread_of_ten_thousand_normals_are_right, *utf::label("PROP"))
{
    Random random(5, 5);
    double sum = 0.0;
    double squares = 0.0;
    for (int i = 0; i < 10000; ++i) {
        const double value = random.normal(0.0, 1.0);
        sum += value;
        squares += value * value;
    }
    BOOST_TEST(std::fabs(sum / 10000) < 0.03); // three standard errors
    BOOST_TEST(std::fabs(squares / 10000 - 1.0) < 0.045);
}

BOOST_AUTO_TEST_CASE(a_myope_of_two_dioptres_reads_seven_lines_short,
                     *utf::label("REF") * utf::description("Blendowske 2015: log10(1 + 2^2) = 0.699"))
{
    BOOST_TEST(std::fabs(unaidedDistance({-8, 0, 180}, 30, 0.0) - 0.698970) < 1e-6);
}

BOOST_AUTO_TEST_CASE(a_young_hyperope_accommodates_and_an_old_one_does_not,
                     *utf::label("DER") *
                         utf::description("half of 15 - 20/4 is 5, capped at 4; nothing is left at 60"))
{
    BOOST_TEST(unaidedDistance({8, 0, 180}, 20, 0.0) == 0.0);
    BOOST_TEST(std::fabs(unaidedDistance({8, 0, 180}, 60, 0.0) - 0.698970) < 1e-6);
}

BOOST_AUTO_TEST_CASE(powers_are_written_with_sign_and_two_decimals, *utf::label("PROP"))
{
    BOOST_TEST(written({-5, -3, 175}) == "-1.25 -0.75 x 175");
    BOOST_TEST(written({0, 0, 180}) == "0.00");
    BOOST_TEST(writtenQuarters(9) == "+2.25");
    BOOST_TEST(distanceLine(0.62) == "6/24");
    BOOST_TEST(nearLine(0.41) == "N8");
}

BOOST_AUTO_TEST_SUITE_END()
