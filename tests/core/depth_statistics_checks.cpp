// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of statistics.csv.
#include "core/optics/angle.hpp"
#include "core/optics/covariance.hpp"
#include "core/optics/quantiles.hpp"
#include "core/optics/readings.hpp"
#include "tests/core/depth_checks.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>
#include <sstream>

namespace quarterstep::check
{
namespace
{

Sides sides(const Row& row)
{
    return row.arguments.at(2) == "one" ? Sides::one : Sides::two;
}

double critical(const Row& row)
{
    return grubbsCritical(std::stoi(row.arguments.at(0)), number(row.arguments.at(1)), sides(row)).value();
}

/// The statistic, and the deviation it implies for the farthest value.
void checkGrubbs(const Row& row)
{
    const auto values = numbers(row);
    double mean = 0.0;
    for (const double value : values)
        mean += value / static_cast<double>(values.size());
    const double statistic = grubbsStatistic(values).value();
    nearAll(row, {{"G", statistic}, {"sd", std::fabs(values.back() - mean) / statistic}});
}

void checkScore(const Row& row)
{
    const auto values = numbers(row);
    nearAll(row, {{"score", grubbsScore(values, values.front()).value()},
                  {"crit", grubbsCritical(static_cast<int>(values.size()), 0.05, Sides::one).value()}});
}

void checkCritical(const Row& row)
{
    near(row, critical(row), number(row.parts().at(0).substr(row.parts().at(0).find('=') + 1)));
}

void checkNotCritical(const Row& row)
{
    awayFrom(row, critical(row), number(row.named().at("crit")));
    BOOST_TEST(std::fabs(critical(row) - number(row.arguments.at(3))) < 1e-4);
}

std::vector<PowerVector> triples(const Row& row)
{
    std::vector<PowerVector> vectors;
    for (const auto& text : row.arguments) {
        std::istringstream in(text);
        PowerVector vector;
        in >> vector.m >> vector.j0 >> vector.j45;
        vectors.push_back(vector);
    }
    return vectors;
}

std::vector<PowerVector> powers(const Row& row)
{
    std::vector<PowerVector> vectors;
    for (const auto& text : row.arguments)
        vectors.push_back(toPowerVector(power(text)));
    BOOST_TEST_REQUIRE(vectors.size() == 18U);
    return vectors;
}

void checkMeanOfThree(const Row& row)
{
    const auto mean = meanVector(triples(row));
    nearAll(row, {{"m1", mean.m}, {"m2", mean.j0}, {"m3", mean.j45}});
}

void checkCovarianceOfThree(const Row& row)
{
    const auto c = covarianceOf(triples(row)).value();
    nearAll(
        row,
        {{"s11", c.mm}, {"s12", c.m0}, {"s13", c.m45}, {"s22", c.j00}, {"s23", c.j045}, {"s33", c.j4545}});
}

void checkCovarianceOfPowers(const Row& row)
{
    const auto c = covarianceOf(powers(row)).value();
    nearAll(
        row,
        {{"sMM", c.mm}, {"s00", c.j00}, {"s45", c.j4545}, {"sM0", c.m0}, {"sM45", c.m45}, {"s045", c.j045}});
}

/// Volumes of the two ellipsoids stand in the ratio (T²/n / chi-square)^1.5, whatever the scatter.
void checkEllipsoidOfMean(const Row& row)
{
    const Covariance scatter{0.4, 0.05, -0.02, 0.1, 0.01, 0.2};
    const auto distribution = ellipsoidOfDistribution({}, scatter, 0.95);
    const auto mean = ellipsoidOfMean({}, scatter, std::stoi(row.arguments.at(1)), 0.95).value();
    nearAll(row, {{"V", number(row.arguments.at(0)) * mean.volume() / distribution.volume()}});
}

void checkDistanceOfFirst(const Row& row)
{
    const auto vectors = powers(row);
    const auto c = covarianceOf(vectors).value();
    const double n = static_cast<double>(vectors.size());
    nearAll(row, {{"d2", mahalanobisSquared(c, vectors.front() - meanVector(vectors)).value()},
                  {"bound", (n - 1.0) * (n - 1.0) / n}});
}

/// The row is the mean without the first. Our rule for outliers also finds the first, and the second (0.83 D
/// from the median) with it.
void checkMeanWithoutFirst(const Row& row)
{
    const auto all = powers(row);
    const auto mean = toSpheroCylinder(meanVector({all.begin() + 1, all.end()}));
    const std::vector<std::size_t> found{0U, 1U};
    BOOST_TEST(summariseReadings(all).outliers == found, boost::test_tools::per_element());
    near(row, mean.sphere.value(), number(row.named().at("S")), "S");
    near(row, mean.cylinder.value(), number(row.named().at("C")), "C");
    BOOST_TEST(turnBetween(mean.axis, AxisDegrees{number(row.named().at("axis"))}) <= row.withinDegrees());
}

} // namespace

const Checks& statisticsChecks()
{
    static const Checks table{
        {"grubbs", checkGrubbs},
        {"grubbs score", checkScore},
        {"grubbs critical", checkCritical},
        {"not grubbs critical", checkNotCritical},
        {"mean of three", checkMeanOfThree},
        {"covariance of three", checkCovarianceOfThree},
        {"ellipsoid of mean", checkEllipsoidOfMean},
        {"covariance of powers", checkCovarianceOfPowers},
        {"distance of first", checkDistanceOfFirst},
        {"mean without first", checkMeanWithoutFirst},
        {"reproducibility",
         [](const Row& r) {
             nearAll(r, {{"k", reproducibilityLimit(numbers(r).at(0))}});
         }},
    };
    return table;
}

} // namespace quarterstep::check
