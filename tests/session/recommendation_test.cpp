// SPDX-License-Identifier: GPL-3.0-or-later
// Verdict, referral, what is missing, who needs nothing, order: the rules of app/help/matching.md one by one.
#define BOOST_TEST_MODULE recommendation
#include <boost/test/unit_test.hpp>

#include "core/fitting/criteria/measure.hpp"
#include "core/fitting/order.hpp"
#include "core/fitting/recommendation.hpp"
#include "inventory/text/rules_file.hpp"

#include <algorithm>
#include <iostream>
#include <random>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{

EyeRecord eyeOf(const char* text)
{
    EyeRecord eye;
    eye.final = parseEye(text).value();
    return eye;
}

PersonRecord adult(const char* right, const char* left, double age = 30.0)
{
    PersonRecord person;
    person.person = "T-1";
    person.age = age;
    person.purpose = Purpose::distance;
    person.eyes = {eyeOf(right), eyeOf(left)};
    person.distancePd = 62.0;
    return person;
}

void see(PersonRecord& person, std::optional<Acuity> EyeAcuities::*which, const char* text)
{
    for (const Eye eye : bothEyes)
        person.eyes.of(eye).acuity.*which = parseAcuity(text).value();
}

StockLine pair(const char* name, double power, double centres = 62.0)
{
    StockLine line;
    line.name = name;
    line.power = {sphereOf(power), sphereOf(power)};
    line.centres = centres;
    line.onHand = 3;
    return line;
}

Recommendation first(const PersonRecord& person, const std::vector<StockLine>& stock,
                     const MatchOptions& options = {})
{
    return recommend(person, stock, defaultRules(), options).front();
}

bool flagged(const Recommendation& answer, const char* code)
{
    return std::any_of(answer.flags.begin(), answer.flags.end(),
                       [&](const Flag& flag) { return flag.code == code; });
}

const std::vector<StockLine> minusTwo{pair("M-200", -2.0)};

} // namespace

BOOST_AUTO_TEST_CASE(a_red_eye_is_referred_the_same_day_before_any_pair)
{
    auto person = adult("-2.00", "-2.00");
    person.signs = {Sign::redEye};
    const auto answer = first(person, minusTwo);
    BOOST_TEST((answer.verdict == Verdict::refer));
    BOOST_TEST((answer.referral == Referral::before));
    BOOST_TEST((answer.urgency == Urgency::sameDay));
    BOOST_TEST(answer.candidates.ranked.empty());
}

BOOST_AUTO_TEST_CASE(a_squint_refers_a_child_and_not_an_adult)
{
    auto person = adult("-2.00", "-2.00");
    person.signs = {Sign::squint};
    BOOST_TEST((first(person, minusTwo).referral == Referral::no));
    person.age = 9.0;
    person.prescriber = "named";
    BOOST_TEST((first(person, minusTwo).verdict == Verdict::refer));
}

BOOST_AUTO_TEST_CASE(a_child_with_an_objective_reading_only_is_incomplete,
                     *utf::label("REF") * utf::description("IAPB School Eye Health Guidelines"))
{
    auto person = adult("-2.00", "-2.00", 11.0);
    person.prescriber = "named";
    person.objectiveOnly = true;
    const auto answer = first(person, minusTwo);
    BOOST_TEST((answer.verdict == Verdict::incomplete));
    BOOST_TEST(answer.candidates.ranked.empty());
    person.age = 25.0;
    BOOST_TEST((first(person, minusTwo).verdict == Verdict::stock));
    BOOST_TEST(flagged(first(person, minusTwo), "objective-only"));
}

BOOST_AUTO_TEST_CASE(a_child_needs_a_named_prescriber)
{
    const auto person = adult("-2.00", "-2.00", 15.9);
    BOOST_TEST((first(person, minusTwo).verdict == Verdict::incomplete));
    BOOST_TEST((first(adult("-2.00", "-2.00", 16.0), minusTwo).verdict == Verdict::stock));
}

BOOST_AUTO_TEST_CASE(an_addition_under_35_must_be_confirmed)
{
    auto person = adult("0.00", "0.00", 34.0);
    person.purpose = Purpose::near;
    for (const Eye eye : bothEyes)
        person.eyes.of(eye).addition = Dioptres{1.5};
    const std::vector<StockLine> stock{pair("N+150", 1.5, 58.0)};
    BOOST_TEST((first(person, stock).verdict == Verdict::incomplete));
    person.nearBest = parseNearAcuity("N6").value();
    BOOST_TEST((first(person, stock).verdict == Verdict::stock));
    person.nearBest.reset();
    person.eyes.right.lensImplant = true;
    BOOST_TEST((first(person, stock).verdict == Verdict::stock));
}

BOOST_AUTO_TEST_CASE(near_glasses_without_an_addition_are_incomplete_unless_the_person_reads_N6)
{
    auto person = adult("0.00", "0.00", 50.0);
    person.purpose = Purpose::near;
    BOOST_TEST((first(person, {}).verdict == Verdict::incomplete));
    person.nearUnaided = parseNearAcuity("N6").value();
    BOOST_TEST((first(person, {}).verdict == Verdict::none));
}

BOOST_AUTO_TEST_CASE(less_than_two_lines_of_gain_needs_nothing_unless_symptoms_are_recorded,
                     *utf::label("REF") *
                         utf::description("Morjaria et al., JAMA Ophthalmol 2017;135:527-533"))
{
    auto person = adult("-2.00", "-2.00");
    see(person, &EyeAcuities::unaided, "6/9");
    see(person, &EyeAcuities::best, "6/6");
    BOOST_TEST((first(person, minusTwo).verdict == Verdict::none));
    person.symptoms = "headache";
    BOOST_TEST((first(person, minusTwo).verdict == Verdict::stock));
    BOOST_TEST(flagged(first(person, minusTwo), "symptoms"));
    person.symptoms.clear();
    see(person, &EyeAcuities::unaided, "6/12");
    BOOST_TEST((first(person, minusTwo).verdict == Verdict::stock));
}

BOOST_AUTO_TEST_CASE(a_hyperopic_child_is_not_sent_away_for_seeing_well)
{
    auto child = adult("+2.00", "+2.00", 9.0);
    child.prescriber = "named";
    see(child, &EyeAcuities::unaided, "6/6");
    see(child, &EyeAcuities::best, "6/6");
    BOOST_TEST((first(child, {pair("P+200", 2.0)}).verdict == Verdict::stock));
}

BOOST_AUTO_TEST_CASE(the_own_pair_that_still_fits_leaves_a_spare_only)
{
    auto person = adult("-2.00", "-2.00");
    for (const Eye eye : bothEyes)
        person.eyes.of(eye).worn = sphereOf(-2.0);
    see(person, &EyeAcuities::habitual, "6/6");
    see(person, &EyeAcuities::best, "6/6");
    BOOST_TEST((first(person, minusTwo).verdict == Verdict::none));
    see(person, &EyeAcuities::habitual, "6/12");
    BOOST_TEST((first(person, minusTwo).verdict == Verdict::stock));
}

BOOST_AUTO_TEST_CASE(above_four_dioptres_the_vertex_distance_is_asked_for)
{
    auto person = adult("-5.00", "-5.00");
    const std::vector<StockLine> stock{pair("M-500", -5.0)};
    const auto without = first(person, stock);
    BOOST_TEST((without.verdict == Verdict::incomplete));
    BOOST_TEST(without.needs.size() == 1U);
    person.vertexMm = 12.0;
    BOOST_TEST((first(person, stock).verdict == Verdict::stock));
}

BOOST_AUTO_TEST_CASE(an_unknown_pd_is_asked_for_where_it_decides_and_a_caution_where_it_does_not)
{
    auto person = adult("-3.00", "-3.00");
    person.distancePd.reset();
    BOOST_TEST((first(person, {pair("M-300", -3.0)}).verdict == Verdict::incomplete));
    auto weak = adult("-0.75", "-0.75");
    weak.distancePd.reset();
    const auto answer = first(weak, {pair("M-075", -0.75)});
    BOOST_TEST((answer.verdict == Verdict::stock));
    BOOST_TEST(answer.reasonKey == "caution");
    BOOST_TEST(flagged(answer, "pd-not-taken"));
}

BOOST_AUTO_TEST_CASE(an_empty_line_says_what_ran_out)
{
    auto gone = pair("M-200", -2.0);
    gone.onHand = 0;
    const auto answer = first(adult("-2.00", "-2.00"), {gone, pair("M-400", -4.0)});
    BOOST_TEST((answer.verdict == Verdict::custom));
    BOOST_TEST(answer.reasonKey == "stock_out");
    auto held = pair("M-200", -2.0);
    held.held = 2;
    held.quarantined = 1;
    BOOST_TEST(first(adult("-2.00", "-2.00"), {held}).reasonKey == "stock_out");
}

BOOST_AUTO_TEST_CASE(one_line_of_lenses_serves_both_eyes_only_with_two_in_it)
{
    StockLine frame;
    frame.name = "F";
    frame.kind = LineKind::frame;
    frame.takes = {"round 44"};
    frame.centres = 62.0;
    frame.onHand = 1;
    auto lens = pair("L-200", -2.0);
    lens.kind = LineKind::lens;
    lens.shape = "round 44";
    lens.onHand = 1;
    BOOST_TEST((first(adult("-2.00", "-2.00"), {frame, lens}).verdict == Verdict::custom));
    lens.onHand = 2;
    BOOST_TEST((first(adult("-2.00", "-2.00"), {frame, lens}).verdict == Verdict::stock));
    lens.side = LensSide::right;
    BOOST_TEST((first(adult("-2.00", "-2.00"), {frame, lens}).verdict == Verdict::custom));
}

BOOST_AUTO_TEST_CASE(a_cylinder_lens_is_turned_to_the_nearest_mark_of_the_frame)
{
    StockLine frame;
    frame.name = "F";
    frame.kind = LineKind::frame;
    frame.takes = {"round 44"};
    frame.centres = 62.0;
    frame.axisStep = 10.0;
    frame.onHand = 1;
    auto lens = pair("LC", 0.0);
    lens.kind = LineKind::lens;
    lens.shape = "round 44";
    lens.anyAxis = true;
    lens.power = {parsePower("-1.00 -1.50 x 180").value(), parsePower("-1.00 -1.50 x 180").value()};
    const auto answer = first(adult("-1.00 -1.50 x 83", "-1.00 -1.50 x 120"), {frame, lens});
    BOOST_TEST((answer.verdict == Verdict::stock));
    const auto& best = answer.candidates.ranked.front();
    BOOST_TEST(best.mountedAxis.right == 80.0);
    BOOST_TEST(best.mountedAxis.left == 120.0);
    // 2 C sin(3 degrees) is left over: 0.157 D
    BOOST_TEST(std::abs(cylinderSize(best.fit.eyes.right->error) - 0.157) < 0.0005);
}

BOOST_AUTO_TEST_CASE(an_adult_waits_for_a_custom_order_with_an_interim_pair_and_a_child_does_not)
{
    auto person = adult("-2.00 -2.00 x 90", "-2.00 -2.00 x 90");
    see(person, &EyeAcuities::unaided, "6/60");
    see(person, &EyeAcuities::best, "6/6");
    const auto answer = first(person, {pair("M-300", -3.0)});
    BOOST_TEST((answer.verdict == Verdict::custom));
    BOOST_TEST(answer.reasonKey == "residual_cylinder");
    BOOST_TEST(answer.interim.has_value());
    person.age = 12.0;
    person.prescriber = "named";
    BOOST_TEST(!first(person, {pair("M-300", -3.0)}).interim.has_value());
}

BOOST_AUTO_TEST_CASE(a_bare_addition_makes_a_set_of_two_with_the_bigger_need_first)
{
    auto person = adult("-3.00", "-3.00", 55.0);
    person.purpose = Purpose::unstated;
    for (const Eye eye : bothEyes)
        person.eyes.of(eye).addition = Dioptres{2.0};
    const auto answers = recommend(person, std::vector<StockLine>{}, defaultRules(), {});
    BOOST_REQUIRE_EQUAL(answers.size(), 2U);
    BOOST_TEST((answers[0].purpose == Purpose::distance));
    BOOST_TEST(!answers[0].secondPair);
    BOOST_TEST(answers[1].secondPair);
}

BOOST_AUTO_TEST_CASE(the_same_six_numbers_as_the_objective_reading_ask_for_another_look)
{
    auto person = adult("-1.00 -0.75 x 90", "-1.25 -0.50 x 80");
    for (const Eye eye : bothEyes)
        person.eyes.of(eye).objective = person.eyes.of(eye).final.power;
    BOOST_TEST(flagged(first(person, minusTwo), "final-is-objective"));
    BOOST_TEST(first(person, minusTwo).recheck);
    person.eyes.left.objective = parsePower("-1.50 -0.50 x 80").value();
    BOOST_TEST(!first(person, minusTwo).recheck);
}

BOOST_AUTO_TEST_CASE(limits_are_open_or_closed_as_the_source_says)
{
    BOOST_TEST(within(0.5, Limit{0.5, false}));
    BOOST_TEST(within(0.5 + 1e-9, Limit{0.5, false}));
    BOOST_TEST(!within(0.501, Limit{0.5, false}));
    BOOST_TEST(!within(1.0, Limit{1.0, true}));
    BOOST_TEST(!within(1.0 - 1e-9, Limit{1.0, true}));
    BOOST_TEST(within(0.999, Limit{1.0, true}));
}

BOOST_AUTO_TEST_CASE(the_short_list_keeps_a_weaker_and_a_stronger_neighbour)
{
    std::vector<StockLine> stock;
    for (int i = 0; i < 9; ++i)
        stock.push_back(pair(("A" + std::to_string(i)).c_str(), -2.0, 58.0 + i));
    stock.push_back(pair("weaker", -1.75));
    stock.push_back(pair("stronger", -2.25));
    const auto answer = first(adult("-2.00", "-2.00"), stock);
    BOOST_TEST(answer.candidates.ranked.size() == 6U);
    const auto has = [&](const char* name) {
        return std::any_of(answer.candidates.ranked.begin(), answer.candidates.ranked.end(),
                           [&](const Candidate& c) { return stock[c.parts[0].line].name == name; });
    };
    BOOST_TEST(has("weaker"));
    BOOST_TEST(has("stronger"));
}

namespace
{

using Ranked = std::vector<Candidate>;

bool sameLine(const Candidate& a, const Candidate& b)
{
    return a.parts[0].line == b.parts[0].line;
}

Ranked::const_iterator placeOf(const Candidate& candidate, const Ranked& all)
{
    return std::find_if(all.begin(), all.end(),
                        [&](const Candidate& other) { return sameLine(candidate, other); });
}

double strength(const Candidate& candidate)
{
    return std::abs(candidate.supply.power.right.sphere.value());
}

void checkShortList(const Ranked& list, const Ranked& all)
{
    BOOST_TEST(list.size() == std::min<std::size_t>(6, all.size()));
    BOOST_TEST(std::is_sorted(list.begin(), list.end(), [&](const Candidate& a, const Candidate& b) {
        return placeOf(a, all) < placeOf(b, all);
    }));
    for (const int side : {-1, 1}) {
        const auto best = std::find_if(all.begin(), all.end(), [&](const Candidate& c) {
            return side * (strength(c) - strength(list.front())) > 1e-6;
        });
        BOOST_REQUIRE(best != all.end());
        BOOST_TEST((placeOf(*best, list) != list.end()), "neighbour on side " << side);
    }
}

} // namespace

BOOST_AUTO_TEST_CASE(the_short_list_is_in_order_and_keeps_a_neighbour_from_any_place, *utf::label("REG"))
{
    MatchOptions whole;
    whole.candidates.most = 100;
    for (const double age : {10.0, 30.0, 65.0}) // the sides of the need rank differently at each age
        for (int same = 1; same <= 9; ++same) { // moves the neighbours through every place of the list
            std::vector<StockLine> stock;
            for (int i = 0; i < same; ++i)
                stock.push_back(pair(("A" + std::to_string(i)).c_str(), -2.0, 61.5 + 0.125 * i));
            for (const double power : {-1.75, -2.25, -1.5, -2.5})
                stock.push_back(pair(("P" + std::to_string(power)).c_str(), power));
            auto person = adult("-2.00", "-2.00", age);
            person.prescriber = "named";
            BOOST_TEST_CONTEXT("age " << age << ", " << same << " lines of the need itself")
            checkShortList(first(person, stock).candidates.ranked,
                           first(person, stock, whole).candidates.ranked);
        }
}

BOOST_AUTO_TEST_CASE(colours_of_one_power_make_one_group_and_all_lines_on_request)
{
    std::vector<StockLine> stock{pair("red", -2.0), pair("black", -2.0), pair("far", -2.0, 66.0)};
    stock[0].frame.colour = "red";
    const auto grouped = first(adult("-2.00", "-2.00"), stock);
    BOOST_TEST(grouped.candidates.ranked.size() == 2U);
    BOOST_TEST(grouped.candidates.ranked[0].alike.size() == 1U);
    MatchOptions all;
    all.candidates.everyLine = true;
    BOOST_TEST(first(adult("-2.00", "-2.00"), stock, all).candidates.ranked.size() == 3U);
}

BOOST_AUTO_TEST_CASE(moving_a_pair_nearer_to_the_need_never_lowers_its_rank, *utf::label("PROP"))
{
    const unsigned seed = 20261125U;
    std::cout << "seed " << seed << '\n';
    std::mt19937 random(seed);
    std::uniform_int_distribution<int> quarter(-12, 12);
    for (int round = 0; round < 400; ++round) {
        const double need = quarter(random) * 0.25;
        const double off = std::abs(quarter(random)) * 0.0625;
        const double nearer = off * 0.5;
        auto person = adult("0.00", "0.00", 65.0);
        person.eyes.right.final.power = sphereOf(need);
        person.eyes.left.final.power = sphereOf(need);
        const auto needed = needFor(person, Purpose::distance, defaultRules().settings).value();
        const std::vector<StockLine> stock{pair("a", need + off), pair("a", need + nearer)};
        const auto& profile = *defaultRules().find("adult-distance");
        std::vector<RankKey> keys;
        for (const auto& line : stock) {
            Candidate candidate;
            candidate.parts = {Part{0, PartSide::pair}};
            candidate.supply.power = line.power;
            candidate.supply.centres = Range{62.0, 62.0};
            candidate.fit = judge(needed, candidate.supply, profile);
            keys.push_back(rankKey(needed, stock, profile, {}, candidate));
        }
        BOOST_TEST((keys[1] <= keys[0]), "need " << need << " off " << off);
    }
}
