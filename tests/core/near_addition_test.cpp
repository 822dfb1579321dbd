// SPDX-License-Identifier: GPL-3.0-or-later
// Suggestions for near: never one alone, each with model, spread and source; models of blur side by side.
#include "core/optics/near_addition.hpp"

#include "core/optics/acuity_scale.hpp"
#include "inventory/text/age_table_file.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>
#include <set>

namespace utf = boost::unit_test;

namespace quarterstep::check
{

BOOST_AUTO_TEST_SUITE(near_addition)

BOOST_AUTO_TEST_CASE(no_suggestion_comes_alone_and_each_names_model_spread_and_source, *utf::label("PROP"))
{
    for (int age = 0; age <= 120; ++age)
        for (const double working : {250.0, 400.0, 660.0})
            for (const bool tables : {false, true}) {
                const auto list =
                    suggestAdditions(age, working, tables ? defaultAgeTables() : std::vector<AgeTable>{});
                std::set<std::string> models;
                for (const auto& each : list) {
                    models.insert(each.model);
                    BOOST_TEST(each.least >= 0.0);
                    BOOST_TEST(each.least <= each.most);
                    BOOST_TEST(each.spread >= 0.50);
                    BOOST_TEST(!each.source.empty());
                }
                BOOST_TEST(models.size() >= 2U);
                BOOST_TEST(models.size() == list.size());
            }
}

BOOST_AUTO_TEST_CASE(from_an_amplitude_both_reserves_are_given, *utf::label("DER"))
{
    const auto list = suggestFromAmplitude(3.0, std::nullopt, 400.0, {});
    BOOST_TEST_REQUIRE(list.size() == 2U);
    BOOST_TEST(list[0].most == 1.0); // 2.50 - 1.50
    BOOST_TEST(list[1].most == 0.5); // 2.50 - 2.00
    BOOST_TEST(suggestFromAmplitude(3.0, 50.0, 400.0, defaultAgeTables()).size() > 5U);
}

BOOST_AUTO_TEST_CASE(another_distance_moves_a_table_and_says_so, *utf::label("DER"))
{
    for (const auto& each : suggestAdditions(52, 500.0, defaultAgeTables()))
        if (each.model == "shahroud") {
            BOOST_TEST(each.otherDistance);
            BOOST_TEST(std::fabs(each.most - 1.20) < 1e-12); // 1.70 - 0.50
        }
    for (const auto& each : suggestAdditions(52, 400.0, defaultAgeTables()))
        BOOST_TEST(!each.otherDistance);
}

BOOST_AUTO_TEST_CASE(customary_tables_are_marked_and_surveys_are_not, *utf::label("PROP"))
{
    for (const auto& each : suggestAdditions(52, 400.0, defaultAgeTables())) {
        const bool custom =
            each.model == "trade-chart" || each.model == "rule-of-thumb" || each.model == "donders";
        BOOST_TEST(each.commonPractice == custom, each.model);
    }
}

BOOST_AUTO_TEST_CASE(a_band_holds_to_the_end_of_its_last_year, *utf::label("PROP"))
{
    const AgeTable table{
        "t", AgeTable::Holds::addition,       "p", "s", AgeTable::Confidence::seenInSource, 400.0, 0.5,
        "s", {{40, 44, 1, 1}, {45, 49, 2, 2}}};
    BOOST_TEST(table.at(39.99) == nullptr);
    BOOST_TEST(table.at(40)->least == 1);
    BOOST_TEST(table.at(44.9)->least == 1);
    BOOST_TEST(table.at(45)->least == 2);
    BOOST_TEST(table.at(50) == nullptr);
}

BOOST_AUTO_TEST_CASE(an_addition_near_any_source_is_usual_and_far_from_all_is_to_be_checked,
                     *utf::label("DER") * utf::description("Arq Bras Oftalmol 2013;76:218-220"))
{
    const std::vector<AdditionSuggestion> list{{"a", 1.0, 1.5, 0.5, "s", false, false},
                                               {"b", 2.0, 2.0, 0.5, "s", false, false}};
    BOOST_TEST((judgeAddition(2.50, list) == AdditionJudgement::usual));
    BOOST_TEST((judgeAddition(9.00, {}) == AdditionJudgement::usual)); // nothing to compare with
    BOOST_TEST((judgeAddition(2.75, list) == AdditionJudgement::unusual));
    BOOST_TEST((judgeAddition(3.00, list) == AdditionJudgement::checkAgain));
    BOOST_TEST((judgeAddition(0.50, list) == AdditionJudgement::usual));
    BOOST_TEST((judgeAddition(0.00, list) == AdditionJudgement::checkAgain));
}

BOOST_AUTO_TEST_CASE(amplitude_never_falls_below_zero_nor_rises_with_age, *utf::label("PROP"))
{
    for (int age = 0; age < 120; ++age) {
        const auto now = hofstetterAmplitude(age);
        const auto later = hofstetterAmplitude(age + 1);
        BOOST_TEST(now.least >= 0.0);
        BOOST_TEST(now.least <= now.mean);
        BOOST_TEST(now.mean <= now.most + 1e-12);
        BOOST_TEST(later.mean <= now.mean);
    }
    BOOST_TEST(hofstetterAmplitude(90).most == 0.0);
    BOOST_TEST(!nearPoint(0.0).has_value());
}

BOOST_AUTO_TEST_CASE(models_of_blur_are_told_apart_and_one_is_used, *utf::label("PROP"))
{
    int used = 0;
    for (const auto& model : blurModels()) {
        used += model.usedForSuggesting ? 1 : 0;
        BOOST_TEST(std::string(model.source) != "");
        const auto none = model.loss({});
        BOOST_TEST_REQUIRE(none.has_value());
        BOOST_TEST(none->most == 0.0);
        const auto some = model.loss({0.0, 0.5, 0.0});
        BOOST_TEST_REQUIRE(some.has_value());
        BOOST_TEST(some->least <= some->most);
        BOOST_TEST(some->least > 0.0);
    }
    BOOST_TEST(used == 1);
    BOOST_TEST(blurModels().front().usedForSuggesting);
    BOOST_TEST(
        !blurModels()[1].loss({1.0, 0.5, 0.0}).has_value()); // a model of cylinder says nothing of spheres
}

BOOST_AUTO_TEST_CASE(means_of_acuity_are_geometric_and_letters_count_down, *utf::label("DER"))
{
    BOOST_TEST(!meanLogMar({}).has_value());
    BOOST_TEST(!meanDecimal({1.0, 0.0}).has_value());
    BOOST_TEST(std::fabs(logMarWithLetters(0.2, 2, 5) - 0.24) < 1e-12);
    BOOST_TEST(std::fabs(logMarWithLetters(0.2, -1, 5) - 0.18) < 1e-12);
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep::check
