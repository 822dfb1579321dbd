// SPDX-License-Identifier: GPL-3.0-or-later
// Sections of the model one by one: sets of two, one seeing eye, prescribed prism, unknown PD, prefabricated
// lenses, stock that is not there, interim pairs.
#include "core/fitting/order.hpp"
#include "tests/session/people.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

const CriterionResult* resultOf(const Fit& fit, Criterion criterion)
{
    for (const auto& result : fit.criteria)
        if (result.criterion == criterion)
            return &result;
    return nullptr;
}

Supply supplied(const std::string& right, const std::string& left, double centres = 62.0)
{
    Supply supply;
    supply.power = {parsePower(right).value(), parsePower(left).value()};
    supply.equalPair = supply.power.right == supply.power.left;
    supply.centres = Range{centres, centres};
    return supply;
}

Fit judged(const PersonRecord& person, Purpose purpose, const Supply& supply, const char* profile)
{
    return judge(needFor(person, purpose, defaultRules().settings).value(), supply,
                 *defaultRules().find(profile));
}

} // namespace

BOOST_AUTO_TEST_SUITE(model)

BOOST_AUTO_TEST_CASE(a_set_of_two_is_judged_pair_by_pair_each_by_its_own_profile)
{
    auto person = reader("-3.00", "-3.00", 2.0);
    person.purpose = Purpose::both;
    const std::vector<StockLine> stock{pairOf("D", -3.0), pairOf("N", -1.0, 60.0)};
    const auto answers = recommend(person, stock, defaultRules(), {});
    BOOST_REQUIRE_EQUAL(answers.size(), 2U);
    BOOST_TEST(answers[0].profile == "adult-distance");
    BOOST_TEST(answers[1].profile == "adult-near");
    BOOST_TEST(stock[answers[0].candidates.ranked.at(0).parts[0].line].name == "D");
    BOOST_TEST(stock[answers[1].candidates.ranked.at(0).parts[0].line].name == "N");
    BOOST_TEST(!answers[0].secondPair);
    BOOST_TEST(answers[1].secondPair);
    const auto one = recommend(person, std::vector<StockLine>{stock[1]}, defaultRules(), {});
    BOOST_TEST((one[0].verdict == Verdict::custom)); // the one does not answer for the other
    BOOST_TEST((one[1].verdict == Verdict::stock));
}

BOOST_AUTO_TEST_CASE(one_seeing_eye_is_judged_alone_and_a_balance_lens_follows_it)
{
    const auto person = someone("-2.00", "balance");
    const auto answer = first(person, {pairOf("A", -2.0, 80.0)}); // centres do not count
    BOOST_TEST((answer.verdict == Verdict::stock));
    BOOST_TEST(flagged(answer, "one-seeing-eye"));
    BOOST_TEST(resultOf(answer.candidates.ranked[0].fit, Criterion::horizontalPrism) == nullptr);
    BOOST_TEST(resultOf(answer.candidates.ranked[0].fit, Criterion::balance) == nullptr);
    auto lens = lensOf("L", "-2.00");
    const auto mounted = first(person, {frameOf("F", 62.0), lens, lensOf("M", "-3.00")});
    BOOST_REQUIRE((mounted.verdict == Verdict::stock));
    const auto& parts = mounted.candidates.ranked[0].parts;
    BOOST_TEST(parts[1].line == parts[2].line);
    for (const char* word : {"artificial", "blind", "not measured"})
        BOOST_TEST((first(someone("-2.00", word), {pairOf("A", -2.0)}).verdict == Verdict::stock), word);
    BOOST_TEST((first(someone("balance", "blind"), {pairOf("A", -2.0)}).verdict == Verdict::incomplete));
}

BOOST_AUTO_TEST_CASE(prescribed_prism_is_made_unless_the_profile_lets_stock_supply_it, *utf::label("DER"))
{
    // 1 base in for each eye: -3.00 with centres 6.67 mm wider than the PD supplies 2.00.
    const auto person = someone("-3.00 1 base in", "-3.00 1 base in");
    auto rules = defaultRules();
    const std::vector<StockLine> stock{pairOf("A", -3.0, 68.667)};
    BOOST_TEST((recommend(person, stock, rules, {}).front().verdict == Verdict::custom));
    for (auto& profile : rules.profiles)
        profile.prismByDecentration = true;
    const auto allowed = recommend(person, stock, rules, {}).front();
    BOOST_TEST((allowed.verdict == Verdict::stock));
    BOOST_TEST(std::abs(allowed.candidates.ranked[0].fit.prism.horizontal) < 0.001);
    const std::vector<StockLine> plain{pairOf("A", -3.0, 62.0)};
    BOOST_TEST((recommend(person, plain, rules, {}).front().verdict == Verdict::custom)); // 2.00 short
    const std::vector<StockLine> small{pairOf("A", -3.0, 62.0)};
    BOOST_TEST((first(someone("-3.00 0.24 base in", "-3.00"), small).verdict == Verdict::stock));
    BOOST_TEST((first(someone("-3.00 0.25 base in", "-3.00"), small).verdict == Verdict::custom));
    // Yoked prism turns both eyes alike: nothing between the eyes, and still prescribed.
    const auto yoked = first(someone("-3.00 2 base up", "-3.00 2 base up"), small);
    BOOST_TEST((yoked.verdict == Verdict::custom));
    BOOST_TEST(std::abs(yoked.candidates.misses.at(0).fit.prism.vertical) < 1e-9);
}

BOOST_AUTO_TEST_CASE(an_unknown_pd_is_an_interval_by_age_and_purpose, *utf::label("DER"))
{
    const auto& settings = defaultRules().settings;
    auto person = someone("-1.00", "-1.00");
    person.distancePd.reset();
    BOOST_TEST(needFor(person, Purpose::distance, settings).value().pd.least == 54.0);
    BOOST_TEST(needFor(person, Purpose::distance, settings).value().pd.most == 74.0);
    auto near = reader("0.00", "0.00", 2.0);
    near.nearPd.reset();
    near.distancePd.reset();
    BOOST_TEST(needFor(near, Purpose::near, settings).value().pd.least == 53.0);
    BOOST_TEST(needFor(near, Purpose::near, settings).value().pd.most == 68.0);
    person.age = 10.0; // (43.36 + 16.63 - 3.4 + 41.76 + 18.91 - 5.2) / 2 = 56.03, 7 either way
    BOOST_TEST(std::abs(needFor(person, Purpose::distance, settings).value().pd.least - 49.03) < 1e-6);
    const auto answer =
        first(near, {pairOf("A", 2.0, 60.5)}); // 7.5 mm at the worst: 1.50, the end of the caution
    BOOST_TEST((answer.verdict == Verdict::stock));
    BOOST_TEST(answer.reasonKey == "caution");
    BOOST_TEST(first(near, {pairOf("A", 2.0, 61.0)}).reasonKey == "pd_not_taken"); // 8 mm: 1.60
}

BOOST_AUTO_TEST_CASE(monocular_distances_win_over_the_binocular_one, *utf::label("DER"))
{
    auto person = someone("-4.00", "-4.00");
    person.eyes.right.monocularPd = 29.0;
    person.eyes.left.monocularPd = 33.0;
    person.distancePd = 70.0;
    const auto answer = first(person, {pairOf("A", -4.0, 62.0)});
    BOOST_TEST(
        (answer.verdict == Verdict::stock)); // 29 + 33 = 62: 0.8 in and 0.8 out, nothing between the eyes
    BOOST_TEST(std::abs(answer.candidates.ranked[0].fit.prism.horizontal) < 1e-9);
}

BOOST_AUTO_TEST_CASE(lenses_keep_to_their_side_and_shape)
{
    const auto person = someone("-1.00", "-2.00");
    auto right = lensOf("R", "-1.00");
    right.side = LensSide::right;
    auto left = lensOf("L", "-2.00");
    left.side = LensSide::left;
    BOOST_TEST((first(person, {frameOf("F", 62.0), right, left}).verdict == Verdict::stock));
    std::swap(right.side, left.side);
    BOOST_TEST((first(person, {frameOf("F", 62.0), right, left}).verdict == Verdict::custom));
    std::swap(right.side, left.side);
    right.shape = "panto 46";
    BOOST_TEST((first(person, {frameOf("F", 62.0), right, left}).verdict == Verdict::custom));
    auto both = frameOf("F", 62.0);
    both.takes = {"round 44", "panto 46"};
    BOOST_TEST((first(person, {both, right, left}).verdict == Verdict::stock));
    auto unmeasured = frameOf("F", 62.0);
    unmeasured.centres.reset();
    unmeasured.frame.lens = 44.0;
    unmeasured.frame.bridge = 18.0;
    right.shape = "round 44";
    BOOST_TEST((first(person, {unmeasured, right, left}).verdict == Verdict::stock)); // 44 + 18 = 62
}

BOOST_AUTO_TEST_CASE(a_lens_with_a_fixed_axis_is_not_turned, *utf::label("DER"))
{
    auto lens = lensOf("L", "-1.00 -1.50 x 180");
    lens.onHand = 2;
    BOOST_TEST(
        (first(someone("-1.00 -1.50 x 180", "-1.00 -1.50 x 180"), {frameOf("F", 62.0), lens}).verdict ==
         Verdict::stock));
    BOOST_TEST((first(someone("-1.00 -1.50 x 90", "-1.00 -1.50 x 90"), {frameOf("F", 62.0), lens}).verdict ==
                Verdict::custom));
}

BOOST_AUTO_TEST_CASE(held_and_quarantined_pieces_are_not_there)
{
    auto line = pairOf("A", -2.0);
    line.held = 1;
    line.quarantined = 1;
    BOOST_TEST((first(someone("-2.00", "-2.00"), {line}).verdict == Verdict::stock)); // one of three is left
    line.held = 2;
    BOOST_TEST(first(someone("-2.00", "-2.00"), {line}).reasonKey == "stock_out");
    auto frame = frameOf("F", 62.0);
    frame.quarantined = 3;
    BOOST_TEST(first(someone("-2.00", "-2.00"), {frame, lensOf("L", "-2.00")}).reasonKey == "stock_out");
}

BOOST_AUTO_TEST_CASE(an_interim_pair_keeps_to_each_of_its_limits, *utf::label("DER"))
{
    const auto interim = [](const char* eye, double power, double age = 30.0, double centres = 62.0,
                            const char* unaided = "6/60") {
        auto person = someone(eye, eye, age);
        see(person, &EyeAcuities::unaided, unaided);
        see(person, &EyeAcuities::best, "6/6");
        return first(person, {pairOf("A", power, centres)}).interim.has_value();
    };
    // need -1.00 -1.50 x 90: mean sphere -1.75; b of the cylinder alone 0.75, so |M| up to 0.66 for b 1.00
    BOOST_TEST(interim("-1.00 -1.50 x 90", -1.25));            // M +0.50, b 0.90
    BOOST_TEST(!interim("-1.00 -1.50 x 90", -1.00));           // M +0.75, b 1.06
    BOOST_TEST(interim("-2.00", -1.25));                       // M +0.75, b 0.75
    BOOST_TEST(!interim("-2.00", -1.24));                      // M +0.76
    BOOST_TEST(interim("-2.00", -3.00));                       // M -1.00 under 40
    BOOST_TEST(!interim("-2.00", -3.01));                      //
    BOOST_TEST(!interim("-2.00", -2.76, 40.0));                // from 40 only to -0.50
    BOOST_TEST(interim("-2.00", -2.00, 30.0, 69.5));           // prism 1.50
    BOOST_TEST(!interim("-2.00", -2.00, 30.0, 69.55));         // prism 1.51
    BOOST_TEST(!interim("-2.00", -1.25, 30.0, 62.0, "6/9.5")); // gains less than two lines
    BOOST_TEST(!interim("-2.00", -1.25, 15.0));                // never a child
}

BOOST_AUTO_TEST_CASE(the_reading_level_fails_in_a_bifocal_alone, *utf::label("DER"))
{
    // -1.00 and -2.50: 1.5 prism dioptres 10 mm below the centres; -2.51: beyond.
    auto person = reader("-1.00", "-2.50", 2.0);
    person.purpose = Purpose::bifocal;
    const auto band = [&](const char* left) {
        auto supply = supplied("-1.00", left);
        supply.bifocalAddition = Dioptres{2.0};
        return resultOf(judged(person, Purpose::bifocal, supply, "adult-distance"), Criterion::readingLevel)
            ->band;
    };
    BOOST_TEST((band("-2.00") == Band::fits));
    BOOST_TEST((band("-2.50") == Band::caution));
    BOOST_TEST((band("-2.51") == Band::fails));
    const auto distance =
        judged(someone("-1.00", "-2.51"), Purpose::distance, supplied("-1.00", "-2.51"), "adult-distance");
    BOOST_TEST((resultOf(distance, Criterion::readingLevel)->band == Band::caution));
    const auto near =
        judged(reader("-1.00", "-2.51", 2.0), Purpose::near, supplied("+1.00", "-0.51"), "adult-near");
    BOOST_TEST(resultOf(near, Criterion::readingLevel) == nullptr); // worn at its own centres
}

BOOST_AUTO_TEST_CASE(a_profile_named_by_the_camp_overrides_the_choice)
{
    const auto person = someone("-2.00", "-2.00");
    MatchOptions options;
    options.profile = "strict";
    const auto answer = first(person, {pairOf("A", -1.5)}, options);
    BOOST_TEST(answer.profile == "strict");
    BOOST_TEST((answer.verdict == Verdict::stock)); // 0.50 of sphere is within the indicator
    BOOST_TEST(first(person, {}).profile == "adult-distance");
    BOOST_TEST(first(someone("-2.00", "-2.00", 15.9), {}).profile == "school");
    BOOST_TEST(first(reader("0.00", "0.00", 2.0), {}).profile == "adult-near");
    auto unknown = person;
    unknown.age.reset();
    BOOST_TEST(first(unknown, {}).profile == "school"); // the strictest that could apply
    BOOST_TEST(flagged(first(unknown, {}), "age-unknown"));
    options.profile = "none such";
    BOOST_TEST(first(person, {}, options).reasonKey == "profile_unknown");
}

BOOST_AUTO_TEST_SUITE_END()
