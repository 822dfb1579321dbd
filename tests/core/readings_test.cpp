// SPDX-License-Identifier: GPL-3.0-or-later
// Repeated readings: scatter, outliers, steadiness with figure and limit, agreement with the final.
#include "core/optics/readings.hpp"

#include "core/optics/quantiles.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>
#include <random>

namespace utf = boost::unit_test;

namespace quarterstep::check
{
namespace
{

constexpr unsigned seed = 4711;

std::vector<PowerVector> spheres(std::initializer_list<double> values)
{
    std::vector<PowerVector> vectors;
    for (const double value : values)
        vectors.push_back({value, 0.0, 0.0});
    return vectors;
}

} // namespace

BOOST_AUTO_TEST_SUITE(readings)

BOOST_AUTO_TEST_CASE(three_alike_are_steady_and_say_figure_and_limit, *utf::label("DER"))
{
    const auto summary = summariseReadings(spheres({-2.00, -2.25, -2.00}));
    BOOST_TEST((summary.steadiness == Steadiness::steady));
    BOOST_TEST(std::fabs(summary.figure - 0.1443) < 1e-4); // sd of the three
    BOOST_TEST(std::fabs(summary.limit - std::sqrt(0.27 * 0.27 + 2 * 0.14 * 0.14)) < 1e-12);
    BOOST_TEST(summary.statement.arguments.at(0) == "0.14");
    BOOST_TEST(summary.statement.arguments.at(1) == "0.33");
    BOOST_TEST(!summary.published);
    BOOST_TEST(summary.distribution.has_value());
    BOOST_TEST(!summary.ofMean.has_value()); // three readings cannot bound three components
}

BOOST_AUTO_TEST_CASE(one_reading_is_too_few_and_falls_back_to_published_repeatability, *utf::label("DER"))
{
    for (const auto& readings : {spheres({}), spheres({-2.0}), spheres({-2.0, -2.25})}) {
        const auto summary = summariseReadings(readings);
        BOOST_TEST((summary.steadiness == Steadiness::tooFew));
        BOOST_TEST(summary.published);
        BOOST_TEST(summary.assumed.mm == 0.27 * 0.27);
        BOOST_TEST(!summary.distribution.has_value());
        BOOST_TEST(summary.figure == 0.0);
        BOOST_TEST(!summary.advice.empty());
    }
    BOOST_TEST(std::fabs(uncertaintyOfMean(summariseReadings(spheres({-2.0}))).m - 0.27) < 1e-12);
    const auto subjective = summariseReadings(spheres({-2.0}), Method::subjective);
    BOOST_TEST(std::fabs(uncertaintyOfMean(subjective).j0 - 0.10) < 1e-12);
}

BOOST_AUTO_TEST_CASE(a_far_reading_is_left_out_while_three_remain, *utf::label("DER"))
{
    const auto summary = summariseReadings(spheres({-2.00, -2.00, -3.00, -2.25}));
    BOOST_TEST_REQUIRE(summary.outliers.size() == 1U);
    BOOST_TEST(summary.outliers.front() == 2U);
    BOOST_TEST(summary.used == 3U);
    BOOST_TEST((summary.steadiness == Steadiness::steady));
    BOOST_TEST(std::fabs(summary.mean.m + 2.25 * 1.0 / 3.0 + 4.0 / 3.0) < 1e-12);
}

BOOST_AUTO_TEST_CASE(exactly_three_quarters_away_is_not_an_outlier, *utf::label("DER"))
{
    BOOST_TEST(summariseReadings(spheres({-2.00, -2.00, -2.75, -2.00})).outliers.empty());
    BOOST_TEST(summariseReadings(spheres({-2.00, -2.00, -2.76, -2.00})).outliers.size() == 1U);
}

BOOST_AUTO_TEST_CASE(too_many_far_readings_are_scattered_and_none_is_left_out, *utf::label("DER"))
{
    const auto first = summariseReadings(spheres({-1.00, -2.00, -3.50}));
    BOOST_TEST((first.steadiness == Steadiness::scattered));
    BOOST_TEST(first.outliers.empty());
    BOOST_TEST(first.used == 3U);
    const auto again = summariseReadings(spheres({-1.00, -2.00, -3.50}), Method::autorefractor, true);
    BOOST_TEST(first.advice.text != again.advice.text); // the second time the eye is looked at
}

BOOST_AUTO_TEST_CASE(small_but_wide_scatter_is_scattered_without_outliers, *utf::label("DER"))
{
    const auto summary = summariseReadings(spheres({-1.50, -2.00, -2.50}));
    BOOST_TEST(summary.outliers.empty());
    BOOST_TEST(summary.figure == 0.5);
    BOOST_TEST((summary.steadiness == Steadiness::scattered));
}

BOOST_AUTO_TEST_CASE(the_mean_is_taken_of_vectors_not_of_axes, *utf::label("DER"))
{
    // axes 5 and 175: their mean as numbers is 90, the meridian between them is 180
    const auto readings =
        std::vector<PowerVector>{toPowerVector({Dioptres{-1}, Dioptres{-1}, AxisDegrees{5}}),
                                 toPowerVector({Dioptres{-1}, Dioptres{-1}, AxisDegrees{175}}),
                                 toPowerVector({Dioptres{-1}, Dioptres{-1}, AxisDegrees{180}})};
    BOOST_TEST(std::fabs(toSpheroCylinder(summariseReadings(readings).mean).axis.value() - 180.0) < 1e-9);
}

BOOST_AUTO_TEST_CASE(objective_and_final_agree_to_the_published_limits,
                     *utf::label("REF") * utf::description("Pesudovs, Weisinger 2004; Optom Vis Sci 2019"))
{
    const auto objective = summariseReadings(spheres({-2.00, -2.00, -2.00}));
    using Verdict = Agreement::Verdict;
    BOOST_TEST((agreementWithFinal(objective, {-2.50, 0, 0}).verdict == Verdict::agrees));
    BOOST_TEST((agreementWithFinal(objective, {-2.51, 0, 0}).verdict == Verdict::note));
    BOOST_TEST((agreementWithFinal(objective, {-3.00, 0, 0}).verdict == Verdict::note));
    BOOST_TEST((agreementWithFinal(objective, {-3.01, 0, 0}).verdict == Verdict::apart));
    BOOST_TEST((agreementWithFinal(objective, {-2.00, 0.3, 0.4}).verdict == Verdict::agrees));
    BOOST_TEST((agreementWithFinal(objective, {-2.00, 0.31, 0.4}).verdict == Verdict::apart));
    const auto single = agreementWithFinal(summariseReadings(spheres({-2.00})), {-2.0, 0, 0});
    BOOST_TEST(std::fabs(single.expected.m - 1.96 * std::hypot(0.20, 0.27)) < 1e-12);
}

BOOST_AUTO_TEST_CASE(principal_scatter_rebuilds_the_covariance, *utf::label("PROP"))
{
    std::mt19937 engine(seed);
    std::uniform_real_distribution<double> number(-1, 1);
    BOOST_TEST_MESSAGE("seed " << seed);
    for (int trial = 0; trial < 3000; ++trial) {
        std::vector<PowerVector> vectors;
        for (int i = 0; i < 3 + trial % 6; ++i)
            vectors.push_back({number(engine), number(engine), number(engine)});
        const auto c = covarianceOf(vectors).value();
        Covariance rebuilt;
        for (const auto& [variance, d] : principalScatter(c)) {
            BOOST_TEST(variance >= -1e-12);
            BOOST_TEST(std::fabs(blurStrength(d) - 1.0) < 1e-12);
            rebuilt.mm += variance * d.m * d.m;
            rebuilt.m0 += variance * d.m * d.j0;
            rebuilt.j045 += variance * d.j0 * d.j45;
            rebuilt.j4545 += variance * d.j45 * d.j45;
        }
        BOOST_TEST(std::fabs(rebuilt.mm - c.mm) < 1e-12);
        BOOST_TEST(std::fabs(rebuilt.m0 - c.m0) < 1e-12);
        BOOST_TEST(std::fabs(rebuilt.j045 - c.j045) < 1e-12);
        BOOST_TEST(std::fabs(rebuilt.j4545 - c.j4545) < 1e-12);
    }
}

BOOST_AUTO_TEST_CASE(equal_readings_have_no_scatter_and_no_direction_fails, *utf::label("PROP"))
{
    const auto summary = summariseReadings(spheres({-2.0, -2.0, -2.0, -2.0}));
    BOOST_TEST(summary.figure == 0.0);
    BOOST_TEST(summary.distribution->volume() == 0.0);
    BOOST_TEST(!mahalanobisSquared(*summary.covariance, {0.1, 0, 0}).has_value());
    BOOST_TEST(!grubbsStatistic({1.0, 1.0, 1.0}).has_value());
    BOOST_TEST(!grubbsStatistic({1.0, 2.0}).has_value()); // too few to say
    BOOST_TEST(!grubbsScore({1.0, 2.0}, 1.0).has_value());
    BOOST_TEST(!grubbsCritical(2, 0.05, Sides::one).has_value());
    BOOST_TEST(!covarianceOf({{1, 0, 0}}).has_value());
}

BOOST_AUTO_TEST_CASE(ninety_five_of_a_hundred_draws_lie_within_the_ellipsoid, *utf::label("PROP"))
{
    std::mt19937 engine(seed);
    std::normal_distribution<double> normal;
    const Covariance scatter{0.09, 0.0, 0.0, 0.01, 0.0, 0.04};
    const auto ellipsoid = ellipsoidOfDistribution({}, scatter, 0.95);
    int within = 0;
    constexpr int draws = 40000;
    for (int i = 0; i < draws; ++i) {
        const PowerVector draw{0.3 * normal(engine), 0.1 * normal(engine), 0.2 * normal(engine)};
        double squared = 0.0;
        for (std::size_t axis = 0; axis < 3; ++axis) {
            const auto& along = ellipsoid.directions[axis];
            const double part = draw.m * along.m + draw.j0 * along.j0 + draw.j45 * along.j45;
            squared += part * part / (ellipsoid.halfAxes[axis] * ellipsoid.halfAxes[axis]);
        }
        within += squared <= 1.0 ? 1 : 0;
    }
    BOOST_TEST(std::fabs(within / static_cast<double>(draws) - 0.95) < 0.005); // 4.6 standard errors
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep::check
