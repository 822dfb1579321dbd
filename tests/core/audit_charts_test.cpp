// SPDX-License-Identifier: GPL-3.0-or-later
// Charts as values, plans worked out, lots drawn and decided; scipy checks the same functions in
// independent_routes.py.
#include "core/auditing/charts.hpp"
#include "core/auditing/lot.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>
#include <set>

namespace utf = boost::unit_test;
using namespace quarterstep;

BOOST_AUTO_TEST_SUITE(audit_charts)

BOOST_AUTO_TEST_CASE(a_funnel_names_the_counts_beyond_which_it_flags,
                     *utf::label("DER") * utf::description("exact binomial at 5 in 100; Spiegelhalter 2005"))
{
    const std::vector<GroupTally> groups{
        {"a", {20, 3}}, {"b", {100, 11}}, {"c", {200, 22}}, {"none", {0, 0}}};
    const auto chart = funnelChart(groups, 0.05);
    BOOST_REQUIRE_EQUAL(chart.points.size(), 3U);
    constexpr std::int64_t beyond[][2] = {{3, 5}, {10, 13}, {16, 21}};
    constexpr Funnel flags[] = {Funnel::inside, Funnel::alert, Funnel::alarm};
    for (std::size_t i = 0; i < 3; ++i) {
        BOOST_TEST(chart.points[i].alert == beyond[i][0]);
        BOOST_TEST(chart.points[i].alarm == beyond[i][1]);
        BOOST_TEST((chart.points[i].funnel == flags[i]));
        BOOST_TEST(chart.points[i].exact.lower <= chart.points[i].tally.share());
        BOOST_TEST(chart.points[i].exact.upper >= chart.points[i].tally.share());
    }
    BOOST_TEST(chart.points.front().name == "a"); // as given, never by share
}

BOOST_AUTO_TEST_CASE(funnel_limits_are_there_at_every_group_and_narrow_with_volume, *utf::label("PROP"))
{
    const std::vector<GroupTally> groups{{"a", {37, 2}}, {"b", {1200, 60}}};
    const auto chart = funnelChart(groups, 0.05);
    BOOST_TEST(chart.limits.front().judged == 1);
    BOOST_TEST(chart.limits.back().judged == 1200);
    std::set<std::int64_t> sizes;
    for (const auto& step : chart.limits) {
        sizes.insert(step.judged);
        BOOST_TEST(step.alarm.lower <= step.alert.lower);
        BOOST_TEST(step.alert.lower <= 0.05);
        BOOST_TEST(step.alert.upper >= 0.05);
        BOOST_TEST(step.alert.upper <= step.alarm.upper);
    }
    BOOST_TEST(sizes.count(37) == 1U);
    BOOST_TEST(chart.limits.back().alert.upper < 0.07);
    BOOST_TEST(funnelChart({}, 0.05).limits.empty());
}

BOOST_AUTO_TEST_CASE(fewer_than_the_lower_limit_is_beyond_it,
                     *utf::label("DER") * utf::description("binomial sums by hand: 0.95^20 = "
                                                           "0.358, 0.95^100 = 0.0059"))
{
    BOOST_TEST(funnelLower(20, 0.05, alertTail) == 0);
    BOOST_TEST(funnelLower(100, 0.05, alertTail) == 1); // none of 100 has 0.0059 < 0.025
    BOOST_TEST(funnelLower(100, 0.05, alarmTail) == 0);
}

BOOST_AUTO_TEST_CASE(a_g_chart_marks_runs_longer_than_its_limit,
                     *utf::label("DER") *
                         utf::description("geometric: more than k good with (1 - p)^(k + 1); at p = "
                                          "0.05 the limit is ln 0.00135 / ln 0.95 - 1 = 127.8 -> 128"))
{
    std::vector<GPoint> runs{{10, "e1"}, {129, "e2"}, {128, "e3"}};
    const auto series = gSeries(runs, 40, {20 * 20, 20});
    BOOST_TEST(series.drawn());
    BOOST_TEST(series.limits.upper == 128);
    BOOST_TEST(!series.points[0].beyond);
    BOOST_TEST(series.points[1].beyond);
    BOOST_TEST(!series.points[2].beyond);
    BOOST_TEST(!series.runningBeyond);
    BOOST_TEST(gSeries(runs, 129, {400, 20}).runningBeyond);
    BOOST_TEST(!gSeries({}, 60, {60, 0}).drawn());
    BOOST_TEST(!gSeries({}, 0, {3, 3}).drawn());
}

BOOST_AUTO_TEST_CASE(a_p_chart_is_drawn_only_where_volume_allows_it,
                     *utf::label("DER") *
                         utf::description("n > 9 (1 - p) / p: 172 at 5 in 100; limits p +- 3 s"))
{
    const std::vector<GroupTally> large{{"w1", {200, 10}}, {"w2", {300, 12}}, {"w3", {172, 25}}};
    const auto drawn = pChart(large, 0.05);
    BOOST_TEST(drawn.drawn());
    BOOST_TEST(drawn.needs == 172);
    BOOST_TEST(std::abs(drawn.points[0].limits.upper - (0.05 + 3.0 * std::sqrt(0.05 * 0.95 / 200.0))) <
               1e-12);
    BOOST_TEST(drawn.points[0].limits.lower > 0.0);
    BOOST_TEST(!drawn.points[0].beyond);
    BOOST_TEST(drawn.points[2].beyond);

    const std::vector<GroupTally> small{{"w1", {200, 10}}, {"w2", {60, 3}}};
    const auto refused = pChart(small, 0.05);
    BOOST_TEST(!refused.drawn());
    BOOST_TEST(refused.whyNot.arguments.front() == "1");
    BOOST_TEST(refused.points.size() == 2U); // the table keeps them

    const std::vector<GroupTally> zeros{
        {"w1", {500, 0}}, {"w2", {500, 9}}, {"w3", {500, 21}}, {"w4", {500, 20}}};
    BOOST_TEST(!pChart(zeros, 0.025).drawn()); // a quarter without any
    BOOST_TEST(!pChart(std::vector<GroupTally>{{"w1", {500, 20}}}, 0.04).drawn());
    BOOST_TEST(!pChart(large, 0.0).drawn());
    BOOST_TEST(!pChart(large, 1.0).drawn());
}

BOOST_AUTO_TEST_CASE(the_smallest_plan_keeps_both_risks_and_one_less_does_not, *utf::label("PROP"))
{
    for (const double fine : {0.0, 0.02, 0.05, 0.1})
        for (const double bad : {0.15, 0.25, 0.5})
            for (const double risk : {0.05, 0.1, 0.2}) {
                const auto found = smallestPlan(fine, bad, {risk, risk});
                BOOST_REQUIRE(found.has_value());
                BOOST_TEST(found->risks.provider <= risk + 1e-9);
                BOOST_TEST(found->risks.consumer <= risk + 1e-9);
                for (int sample = 1; sample < found->plan.sample; ++sample)
                    for (int allowed = 0; allowed < sample; ++allowed) {
                        const auto risks = risksOf({sample, allowed}, fine, bad);
                        BOOST_TEST((risks.provider > risk || risks.consumer > risk));
                    }
            }
    BOOST_TEST(!smallestPlan(0.25, 0.05, {0.1, 0.1}).has_value());
    BOOST_TEST(!smallestPlan(0.050, 0.051, {0.01, 0.01}).has_value()); // beyond largestSample
}

BOOST_AUTO_TEST_CASE(a_lot_read_as_a_whole_is_decided_without_risk, *utf::label("DER"))
{
    BOOST_TEST(std::abs(acceptedInLot({20, 2}, 20, 2) - 1.0) < 1e-12);
    BOOST_TEST(acceptedInLot({20, 2}, 20, 3) == 0.0);
    // 2 of 5 drawn, one failure in the lot, none allowed: 4 C 2 / 5 C 2 = 6 / 10
    BOOST_TEST(std::abs(acceptedInLot({2, 0}, 5, 1) - 0.6) < 1e-12);
}

BOOST_AUTO_TEST_CASE(the_operating_curve_falls_from_certainty, *utf::label("PROP"))
{
    const auto curve = operatingCurve({19, 2}, 60);
    BOOST_REQUIRE_EQUAL(curve.size(), 11U);
    BOOST_TEST(curve.front().accepted == 1.0);
    for (std::size_t i = 1; i < curve.size(); ++i) {
        BOOST_TEST(curve[i].accepted < curve[i - 1].accepted);
        BOOST_TEST(*curve[i].of <= *curve[i - 1].of + 1e-12);
    }
    BOOST_TEST(std::abs(curve[5].accepted - risksOf({19, 2}, 0.05, 0.25).consumer) < 1e-12);
    BOOST_TEST(!operatingCurve({19, 2}, 12).front().of.has_value()); // a plan larger than the lot
}

BOOST_AUTO_TEST_CASE(every_line_of_a_lot_can_be_drawn_and_at_every_place, *utf::label("PROP"))
{
    std::vector<std::set<std::size_t>> seen(5);
    std::vector<int> first(12, 0);
    for (std::uint64_t seed = 0; seed < 6000; ++seed) {
        const auto places = drawnInOrder(12, 5, seed);
        BOOST_REQUIRE_EQUAL(std::set<std::size_t>(places.begin(), places.end()).size(), 5U); // nobody twice
        for (std::size_t i = 0; i < 5; ++i)
            seen[i].insert(places[i]);
        ++first[places.front()];
    }
    for (const auto& places : seen)
        BOOST_TEST(places.size() == 12U);
    for (const int count : first) // 500 expected, standard error 21
        BOOST_TEST(std::abs(count - 500) < 110);
    BOOST_TEST((drawnInOrder(200, 19, 7) == drawnInOrder(200, 19, 7)));
    BOOST_TEST((drawnInOrder(200, 19, 7) != drawnInOrder(200, 19, 8)));
    BOOST_TEST(drawnInOrder(3, 19, 1).size() == 3U);
    // A longer draw of the same seed begins with the shorter one: spares do not change the sample.
    const auto longer = drawnInOrder(200, 25, 7);
    BOOST_TEST((drawnInOrder(200, 19, 7) == std::vector<std::size_t>(longer.begin(), longer.begin() + 19)));
}

BOOST_AUTO_TEST_CASE(a_spare_counts_only_for_a_pair_that_was_not_found, *utf::label("DER"))
{
    using enum RowOutcome;
    const SamplingPlan plan{4, 1};
    const std::vector<RowOutcome> rows{good, unread, offRecord, good, good, outside};
    const auto count = countRows(rows, plan);
    BOOST_TEST(count.read == 4);
    BOOST_TEST(count.failed == 1);
    BOOST_TEST(count.spareRead == 1); // the sixth stands for nobody
    BOOST_TEST((decide(count, plan) == LotDecision::accepted));
}

BOOST_AUTO_TEST_CASE(a_lot_is_decided_as_soon_as_nothing_can_change_it, *utf::label("DER"))
{
    const SamplingPlan plan{19, 2};
    BOOST_TEST((decide({19, 2, 0}, plan) == LotDecision::accepted));
    BOOST_TEST((decide({19, 3, 0}, plan) == LotDecision::refused));
    BOOST_TEST((decide({5, 3, 0}, plan) == LotDecision::refused));
    BOOST_TEST((decide({17, 0, 0}, plan) == LotDecision::accepted)); // two to come, two allowed
    BOOST_TEST((decide({17, 1, 0}, plan) == LotDecision::open));
    BOOST_TEST((decide({0, 0, 0}, plan) == LotDecision::open));
    BOOST_TEST(decisionSentence({17, 1, 0}, plan).arguments.back() == "2");
    const auto early = decisionSentence({17, 0, 0}, plan).text;
    BOOST_TEST(early.find("even if the %5 not read failed too") != std::string::npos);
    BOOST_TEST(decisionSentence({19, 2, 0}, plan).text.find("even if") == std::string::npos);
    BOOST_TEST(binomialUpTo(3, 5, 1.0) == 0.0); // all fail
    BOOST_TEST(binomialUpTo(5, 5, 1.0) == 1.0);
}

BOOST_AUTO_TEST_SUITE_END()
