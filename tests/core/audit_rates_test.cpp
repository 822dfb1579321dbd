// SPDX-License-Identifier: GPL-3.0-or-later
// Limits, plans and charts against published tables; scipy checks the same functions in
// independent_routes.py.
#define BOOST_TEST_MODULE audit_rates
#include <boost/test/unit_test.hpp>

#include "core/auditing/rates.hpp"
#include "core/auditing/sampling.hpp"

#include <cmath>

namespace utf = boost::unit_test;
using namespace quarterstep;

BOOST_AUTO_TEST_SUITE(audit_rates)

BOOST_AUTO_TEST_CASE(published_lot_plan_has_its_published_risks,
                     *utf::label("REF") *
                         utf::description("operating table of lot quality sampling, n = 19, 80 % good "
                                          "against 50 %: six failures allowed, risks 0.07 and 0.08"))
{
    const auto risks = risksOf({19, 6}, 0.20, 0.50);
    BOOST_TEST(std::abs(risks.provider - 0.068) < 5e-4);
    BOOST_TEST(std::abs(risks.consumer - 0.084) < 5e-4);
    BOOST_TEST(planFor(19, 0.20, 0.50).allowed == 6);
    BOOST_TEST(planFor(14, 0.20, 0.50).allowed == 4);
}

BOOST_AUTO_TEST_CASE(plans_for_mismatches_have_the_risks_of_the_binomial,
                     *utf::label("DER") * utf::description("binomial sums, two decimals"))
{
    struct Plan {
        int sample;
        int allowed;
        double bad;
        double provider;
        double consumer;
    };
    for (const Plan& plan :
         {Plan{19, 2, 0.25, 0.07, 0.11}, {30, 3, 0.20, 0.06, 0.12}, {50, 4, 0.15, 0.10, 0.11}}) {
        const auto risks = risksOf({plan.sample, plan.allowed}, 0.05, plan.bad);
        BOOST_TEST(std::abs(risks.provider - plan.provider) <= 0.005);
        BOOST_TEST(std::abs(risks.consumer - plan.consumer) <= 0.005);
    }
}

BOOST_AUTO_TEST_CASE(funnel_at_five_in_a_hundred_flags_beyond_these_counts,
                     *utf::label("DER") * utf::description("exact binomial, alert 95 % and alarm 99.9 %"))
{
    constexpr std::int64_t rows[][3] = {{20, 3, 5}, {40, 5, 8}, {60, 7, 10}, {100, 10, 13}, {200, 16, 21}};
    for (const auto& row : rows) {
        BOOST_TEST(funnelUpper(row[0], 0.05, alertTail) == row[1]);
        BOOST_TEST(funnelUpper(row[0], 0.05, alarmTail) == row[2]);
    }
    BOOST_TEST((funnelOf({100, 10}, 0.05) == Funnel::inside));
    BOOST_TEST((funnelOf({100, 11}, 0.05) == Funnel::alert));
    BOOST_TEST((funnelOf({100, 14}, 0.05) == Funnel::alarm));
}

BOOST_AUTO_TEST_CASE(exact_limits_at_the_ends_are_closed_forms,
                     *utf::label("DER") * utf::description("none of n: upper limit 1 - 0.025^(1/n)"))
{
    BOOST_TEST(exactLimits({20, 0}).lower == 0.0);
    BOOST_TEST(std::abs(exactLimits({20, 0}).upper - (1.0 - std::pow(0.025, 1.0 / 20.0))) < 1e-12);
    BOOST_TEST(std::abs(exactLimits({20, 20}).lower - std::pow(0.025, 1.0 / 20.0)) < 1e-12);
    BOOST_TEST(exactLimits({20, 20}).upper == 1.0);
    BOOST_TEST(exactLimits({0, 0}).upper == 1.0);
}

BOOST_AUTO_TEST_CASE(a_p_chart_needs_more_than_441_at_two_and_171_at_five_in_a_hundred,
                     *utf::label("DER") * utf::description("n > 9 (1 - p) / p"))
{
    BOOST_TEST(*pChartNeeds(0.02) == 442);
    BOOST_TEST(*pChartNeeds(0.05) == 172);
    BOOST_TEST(!pChartNeeds(0.0).has_value());
    BOOST_TEST(std::abs(pChartLimits(0.02, 60).upper - 0.074) < 5e-4);
    BOOST_TEST(pChartLimits(0.02, 60).lower == 0.0);
}

BOOST_AUTO_TEST_SUITE_END()
