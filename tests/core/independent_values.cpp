// SPDX-License-Identifier: GPL-3.0-or-later
// Prints inputs and what the project makes of them, one line a value, for independent_routes.py to work out
// again by another route: name | inputs | result, numbers in full.
#include "core/auditing/charts.hpp"
#include "core/auditing/lot.hpp"
#include "core/optics/chance_within.hpp"
#include "core/optics/combined_power.hpp"
#include "core/optics/covariance.hpp"
#include "core/optics/decentration.hpp"
#include "core/optics/effectivity.hpp"
#include "core/optics/quantiles.hpp"
#include "core/optics/readings.hpp"

#include <cstdio>
#include <initializer_list>
#include <random>

using namespace quarterstep;

namespace
{

void put(const char* name, std::initializer_list<double> inputs, std::initializer_list<double> results)
{
    std::printf("%s", name);
    for (const auto* list : {&inputs, &results}) {
        std::printf("|");
        for (const double value : *list)
            std::printf(" %.17g", value);
    }
    std::printf("\n");
}

void putQuantiles()
{
    for (const double p : {0.5, 0.9, 0.95, 0.99})
        for (const double freedom : {1.0, 2.0, 3.0, 7.0, 47.0}) {
            put("chi_square", {p, freedom}, {chiSquareQuantile(p, freedom)});
            put("student", {p, freedom}, {studentQuantile(p, freedom)});
            put("f", {p, 3.0, freedom}, {fQuantile(p, 3.0, freedom)});
        }
    for (const int count : {4, 5, 8, 50})
        put("hotelling", {0.95, 3.0, double(count)}, {*hotellingQuantile(0.95, 3, count)});
    for (const int count : {3, 5, 7, 10, 15, 20, 100})
        for (const double alpha : {0.01, 0.05}) {
            put("grubbs_two", {double(count), alpha}, {*grubbsCritical(count, alpha, Sides::two)});
            put("grubbs_one", {double(count), alpha}, {*grubbsCritical(count, alpha, Sides::one)});
        }
}

void putRates()
{
    for (const std::int64_t judged : {5, 20, 60, 417, 5000})
        for (const std::int64_t bad : {std::int64_t{0}, std::int64_t{1}, judged / 7, judged})
            for (const double confidence : {0.95, 0.999}) {
                const auto limits = exactLimits({judged, bad}, confidence);
                put("exact_limits", {double(judged), double(bad), confidence}, {limits.lower, limits.upper});
            }
    for (const std::int64_t trials : {1, 20, 60, 200, 3000})
        for (const double share : {0.005, 0.02, 0.05, 0.2})
            for (const double tail : {alertTail, alarmTail})
                put("funnel", {double(trials), share, tail}, {double(funnelUpper(trials, share, tail))});
    for (const double share : {0.005, 0.02, 0.05, 0.2})
        for (const double tail : {0.05, 0.00135})
            put("g_chart", {share, tail}, {gChart(share, tail).centre, double(gChart(share, tail).upper)});
}

/// Plans, their curves in large and small lots, and the limits of the charts.
void putPlans()
{
    for (const int sample : {5, 14, 19, 50})
        for (const double share : {0.02, 0.05, 0.25, 0.5})
            for (const int most : {0, 2, sample / 2})
                put("accepted", {double(most), double(sample), share}, {acceptedAt({sample, most}, share)});
    for (const int lot : {20, 60, 400})
        for (const int failing : {0, 1, lot / 20, lot / 4, lot})
            for (const int allowed : {0, 2, 5})
                put("accepted_in_lot", {double(allowed), double(lot), double(failing), 19.0},
                    {acceptedInLot({19, allowed}, lot, failing)});
    for (const double fine : {0.01, 0.05, 0.1})
        for (const double bad : {0.15, 0.25, 0.5})
            for (const double risk : {0.05, 0.1, 0.15}) {
                const auto found = smallestPlan(fine, bad, {risk, risk});
                put("smallest_plan", {fine, bad, risk},
                    {double(found->plan.sample), double(found->plan.allowed)});
            }
    for (const std::int64_t trials : {1, 20, 60, 200, 3000})
        for (const double share : {0.005, 0.02, 0.05, 0.2})
            for (const double tail : {alertTail, alarmTail})
                put("funnel_lower", {double(trials), share, tail},
                    {double(funnelLower(trials, share, tail))});
    for (const double share : {0.02, 0.05, 0.2})
        for (const std::int64_t trials : {60, 172, 442}) {
            const auto limits = pChartLimits(share, trials);
            put("p_chart", {share, double(trials)}, {limits.lower, limits.upper});
            put("p_chart_needs", {share}, {double(*pChartNeeds(share))});
        }
}

void putEllipsoids(std::mt19937& engine)
{
    std::normal_distribution<double> normal;
    for (int set = 0; set < 20; ++set) {
        std::vector<PowerVector> readings;
        std::printf("readings|");
        for (int i = 0; i < 4 + set % 5; ++i) {
            readings.push_back({-2 + 0.3 * normal(engine), 0.2 * normal(engine), 0.1 * normal(engine)});
            std::printf(" %.17g %.17g %.17g", readings.back().m, readings.back().j0, readings.back().j45);
        }
        const auto c = *covarianceOf(readings);
        const auto mean = meanVector(readings);
        const auto principal = principalScatter(c);
        const auto distribution = ellipsoidOfDistribution(mean, c, 0.95);
        const auto ofMean = *ellipsoidOfMean(mean, c, static_cast<int>(readings.size()), 0.95);
        std::printf("| %.17g %.17g %.17g %.17g %.17g %.17g %.17g %.17g %.17g", c.mm, c.m0, c.j045,
                    principal[0].variance, principal[1].variance, principal[2].variance,
                    distribution.volume(), ofMean.volume(), *mahalanobisSquared(c, readings.front() - mean));
        std::printf("\n");
    }
}

void putPowers(std::mt19937& engine)
{
    std::uniform_real_distribution<double> sphere(-15, 15);
    std::uniform_real_distribution<double> cylinder(-6, 6);
    std::uniform_real_distribution<double> axis(0.001, 180);
    for (int i = 0; i < 200; ++i) {
        const SpheroCylinder a{Dioptres{sphere(engine)}, Dioptres{cylinder(engine)},
                               AxisDegrees{axis(engine)}};
        const SpheroCylinder b{Dioptres{sphere(engine)}, Dioptres{cylinder(engine)},
                               AxisDegrees{axis(engine)}};
        const auto matrix = toPowerMatrix(a);
        const auto principal = principalPowers(a);
        put("matrix", {a.sphere.value(), a.cylinder.value(), a.axis.value()},
            {matrix.f11, matrix.f12, matrix.f22, principal.higher, principal.lower});
        const auto sum = combined({a, b});
        put("crossed",
            {a.sphere.value(), a.cylinder.value(), a.axis.value(), b.sphere.value(), b.cylinder.value(),
             b.axis.value()},
            {sum.sphere.value(), sum.cylinder.value(), sum.axis.value()});
        const EyePrism wanted{cylinder(engine), cylinder(engine)};
        const auto answer = decentrationFor(matrix, Eye::right, wanted);
        if (answer.kind == DecentrationAnswer::Kind::one)
            put("decentre", {matrix.f11, matrix.f12, matrix.f22, wanted.in, wanted.up},
                {answer.moved.in, answer.moved.up});
        if (const auto moved = atVertexDistance(a, Millimetres{12}, Millimetres{0})) {
            const auto there = toPowerMatrix(*moved);
            put("vertex", {matrix.f11, matrix.f12, matrix.f22, 0.012}, {there.f11, there.f12, there.f22});
        }
    }
}

void putChances(std::mt19937& engine)
{
    std::uniform_real_distribution<double> part(-0.5, 0.5);
    std::uniform_real_distribution<double> deviation(0.05, 0.5);
    std::uniform_real_distribution<double> lean(-0.6, 0.6);
    for (int i = 0; i < 20; ++i) {
        const PowerVector mean{part(engine), part(engine), part(engine)};
        const double alike = deviation(engine);
        const double radius = 0.25 + 0.25 * (i % 3);
        const Covariance round{alike * alike, 0, 0, alike * alike, 0, alike * alike};
        put("chance_alike", {mean.m, mean.j0, mean.j45, alike, radius}, {chanceWithin(mean, round, radius)});
        const double m = deviation(engine);
        const double j0 = deviation(engine);
        const double j45 = deviation(engine);
        const Covariance any{m * m,   lean(engine) * m * j0,   0.3 * m * j45,
                             j0 * j0, lean(engine) * j0 * j45, j45 * j45};
        put("chance",
            {mean.m, mean.j0, mean.j45, any.mm, any.m0, any.m45, any.j00, any.j045, any.j4545, radius},
            {chanceWithin(mean, any, radius)});
    }
}

} // namespace

int main()
{
    std::mt19937 engine(20261125);
    putQuantiles();
    putRates();
    putPlans();
    putEllipsoids(engine);
    putPowers(engine);
    putChances(engine);
    for (const double deviation : {0.14, 0.27})
        put("reproducibility", {deviation}, {reproducibilityLimit(deviation)});
    return 0;
}
