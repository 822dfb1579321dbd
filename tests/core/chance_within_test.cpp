// SPDX-License-Identifier: GPL-3.0-or-later
// The chance that a scattered power vector lies within a radius: against draws and against what must hold.
#include "core/optics/chance_within.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>
#include <iostream>
#include <random>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

constexpr double promised = 1e-3; // of chanceWithin

Covariance independent(double m, double j0, double j45)
{
    return {m * m, 0.0, 0.0, j0 * j0, 0.0, j45 * j45};
}

struct Drawn {
    PowerVector mean;
    PowerVector deviation; ///< along M and along J0, J45 turned by 30 degrees
    double radius;
};

/// Share of draws within the radius. 2,000,000 draws: standard error at most 0.00036.
double shareDrawn(const Drawn& c, std::mt19937_64& engine)
{
    std::normal_distribution<double> normal;
    const double cosine = std::cos(0.5);
    const double sine = std::sin(0.5);
    const int draws = 2000000;
    int within = 0;
    for (int i = 0; i < draws; ++i) {
        const double m = c.mean.m + c.deviation.m * normal(engine);
        const double a = c.deviation.j0 * normal(engine);
        const double b = c.deviation.j45 * normal(engine);
        const double j0 = c.mean.j0 + cosine * a - sine * b;
        const double j45 = c.mean.j45 + sine * a + cosine * b;
        within += m * m + j0 * j0 + j45 * j45 <= c.radius * c.radius ? 1 : 0;
    }
    return static_cast<double>(within) / draws;
}

Covariance turned(const Drawn& c)
{
    const double cosine = std::cos(0.5);
    const double sine = std::sin(0.5);
    const double a = c.deviation.j0 * c.deviation.j0;
    const double b = c.deviation.j45 * c.deviation.j45;
    return {c.deviation.m * c.deviation.m,
            0.0,
            0.0,
            cosine * cosine * a + sine * sine * b,
            cosine * sine * (a - b),
            sine * sine * a + cosine * cosine * b};
}

} // namespace

BOOST_AUTO_TEST_SUITE(chance_within)

BOOST_AUTO_TEST_CASE(the_chance_agrees_with_two_million_draws,
                     *utf::label("DER") * utf::description("Monte Carlo, seed fixed"))
{
    const unsigned seed = 20261125U;
    std::cout << "seed " << seed << '\n';
    std::mt19937_64 engine(seed);
    for (const auto& c : {Drawn{{0.0, 0.0, 0.0}, {0.20, 0.10, 0.10}, 0.50},
                          Drawn{{0.25, 0.1, -0.05}, {0.20, 0.10, 0.10}, 0.50},
                          Drawn{{0.50, 0.0, 0.0}, {0.20, 0.10, 0.10}, 0.50},
                          Drawn{{-0.3, 0.2, 0.3}, {0.40, 0.30, 0.05}, 0.75},
                          Drawn{{0.0, 0.48, 0.0}, {0.02, 0.02, 0.02}, 0.50},
                          Drawn{{0.1, 0.1, 0.1}, {1.50, 0.02, 0.60}, 0.25}})
        BOOST_TEST(std::abs(chanceWithin(c.mean, turned(c), c.radius) - shareDrawn(c, engine)) < promised);
}

BOOST_AUTO_TEST_CASE(published_values_of_the_chi_square_come_out,
                     *utf::label("REF") *
                         utf::description("tables of the chi-square with 3 degrees of freedom"))
{
    // 2.366 and 7.815 hold 50 % and 95 % of a chi-square with three degrees of freedom.
    const auto round = independent(0.2, 0.2, 0.2);
    BOOST_TEST(std::abs(chanceWithin({}, round, 0.2 * std::sqrt(2.366)) - 0.50) < promised);
    BOOST_TEST(std::abs(chanceWithin({}, round, 0.2 * std::sqrt(7.815)) - 0.95) < promised);
}

BOOST_AUTO_TEST_CASE(the_chance_grows_with_the_radius_and_falls_with_the_error, *utf::label("PROP"))
{
    const auto scatter = independent(0.20, 0.10, 0.10);
    double before = 0.0;
    for (const double radius : {0.1, 0.25, 0.5, 0.75, 1.0, 2.0}) {
        const double chance = chanceWithin({0.25, 0.0, 0.1}, scatter, radius);
        BOOST_TEST(chance > before);
        before = chance;
    }
    BOOST_TEST(before > 0.9999);
    before = 1.0;
    for (const double m : {0.0, 0.25, 0.5, 0.75, 1.0, 3.0}) {
        const double chance = chanceWithin({m, 0.0, 0.0}, scatter, 0.5);
        BOOST_TEST(chance < before);
        BOOST_TEST(std::abs(chance - chanceWithin({-m, 0.0, 0.0}, scatter, 0.5)) < 1e-9);
        before = chance;
    }
    BOOST_TEST(before < 1e-9);
}

BOOST_AUTO_TEST_CASE(no_radius_and_no_scatter_have_plain_answers, *utf::label("DER"))
{
    BOOST_TEST(chanceWithin({}, independent(0.2, 0.1, 0.1), 0.0) == 0.0);
    BOOST_TEST(chanceWithin({}, independent(0.2, 0.1, 0.1), -1.0) == 0.0);
    BOOST_TEST(chanceWithin({0.2, 0.0, 0.0}, Covariance{}, 0.5) > 0.999); // 15 least scatters inside
    BOOST_TEST(chanceWithin({0.8, 0.0, 0.0}, Covariance{}, 0.5) < 0.001);
}

BOOST_AUTO_TEST_SUITE_END()
