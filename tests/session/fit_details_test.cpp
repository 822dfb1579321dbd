// SPDX-License-Identifier: GPL-3.0-or-later
// What is told beside the verdict: chance, why one above another, single change, laboratory order, clear
// range.
#define BOOST_TEST_MODULE fit_details
#include <boost/test/unit_test.hpp>

#include "core/fitting/clear_range.hpp"
#include "core/fitting/comparison.hpp"
#include "core/fitting/explanation.hpp"
#include "core/fitting/fit_chance.hpp"
#include "tests/session/people.hpp"

#include <cmath>
#include <iostream>
#include <random>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

std::string change(const Recommendation& answer, std::size_t i = 0)
{
    if (i >= answer.changes.size() || !answer.changes[i])
        return "none";
    std::string text = answer.changes[i]->sentence.text;
    for (const auto& argument : answer.changes[i]->sentence.arguments)
        text += " | " + argument;
    return text;
}

PersonRecord inNeed(const std::string& right, const std::string& left)
{
    auto person = someone(right, left);
    see(person, &EyeAcuities::unaided, "6/60");
    see(person, &EyeAcuities::best, "6/6");
    return person;
}

} // namespace

BOOST_AUTO_TEST_SUITE(chance)

BOOST_AUTO_TEST_CASE(the_published_scatter_is_used_until_there_are_readings, *utf::label("DER"))
{
    auto person = someone("-2.00", "-2.00");
    const auto one = inDetail(person, {pairOf("M", -2.0)}).candidates.ranked.at(0).chance;
    // 0.50 D against standard deviations 0.20, 0.10, 0.10: 0.9827 by five million draws in another language
    BOOST_TEST(std::abs(*one.right - 0.9827) < 1e-3);
    person.objectiveOnly = true; // 0.27, 0.14, 0.14
    BOOST_TEST(*inDetail(person, {pairOf("M", -2.0)}).candidates.ranked.at(0).chance.right < *one.right);
    person.objectiveOnly = false;
    person.eyes.left.repeated = RepeatedReadings{{0.36, 0.0, 0.0, 0.09, 0.0, 0.09}, 4};
    const auto scattered = inDetail(person, {pairOf("M", -2.0)});
    BOOST_TEST(*scattered.candidates.ranked.at(0).chance.left < 0.5);
    BOOST_TEST(flagged(scattered, "repeat-readings"));
    person.objectiveOnly = true; // the prescription is the mean of the four
    const auto mean = inDetail(person, {pairOf("M", -2.0)}).candidates.ranked.at(0).chance;
    BOOST_TEST(*mean.left > *scattered.candidates.ranked.at(0).chance.left);
}

BOOST_AUTO_TEST_CASE(below_one_half_the_readings_are_asked_for_again_and_the_order_stays, *utf::label("DER"))
{
    const auto person = someone("-2.00", "-2.00");
    const std::vector<StockLine> stock{pairOf("A", -2.5), pairOf("B", -2.25)};
    const auto answer = inDetail(person, stock);
    BOOST_TEST(answer.candidates.ranked.size() == 2U);
    BOOST_TEST(!flagged(answer, "repeat-readings"));
    BOOST_TEST(*leastChance(answer.candidates.ranked[1].chance) < surelyEnough);
    const auto only = inDetail(person, {pairOf("A", -2.5)});
    BOOST_TEST(flagged(only, "repeat-readings"));
    BOOST_TEST((only.verdict == Verdict::stock)); // shown, never a limit
    const auto plain = first(person, stock);
    for (std::size_t i = 0; i < 2; ++i)
        BOOST_TEST(plain.candidates.ranked[i].fit.cost == answer.candidates.ranked[i].fit.cost);
}

BOOST_AUTO_TEST_CASE(a_turned_lens_adds_the_scatter_of_its_axis, *utf::label("DER"))
{
    // C = -2.00 at 180: J0 = 1.00, J45 = 0. Three degrees turn the vector by six: 0.10472 D along J45.
    const auto scatter = axisScatter(toPowerVector(parsePower("-1.00 -2.00 x 180").value()));
    BOOST_TEST(std::abs(scatter.j4545 - 0.10472 * 0.10472) < 1e-6);
    BOOST_TEST(scatter.j00 == 0.0);
    BOOST_TEST(scatter.mm == 0.0);
    const auto person = inNeed("-1.00 -2.00 x 180", "-1.00 -2.00 x 180");
    auto turned = lensOf("LC", "-1.00 -2.00");
    turned.onHand = 4;
    auto fixed = lensOf("LF", "-1.00 -2.00 x 180");
    fixed.onHand = 4;
    const auto a = inDetail(person, {frameOf("F", 62.0), turned}).candidates.ranked.at(0).chance;
    const auto b = inDetail(person, {frameOf("F", 62.0), fixed}).candidates.ranked.at(0).chance;
    BOOST_TEST(*a.right < *b.right);
}

BOOST_AUTO_TEST_CASE(an_eye_not_judged_has_no_chance)
{
    auto person = someone("-2.00", "balance");
    const auto chances = inDetail(person, {pairOf("M", -2.0)}).candidates.ranked.at(0).chance;
    BOOST_TEST(chances.right.has_value());
    BOOST_TEST(!chances.left.has_value());
    BOOST_TEST(*leastChance(chances) == *chances.right);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(why_above)

BOOST_AUTO_TEST_CASE(the_first_key_that_differs_is_told_for_every_pair_of_a_mixed_box, *utf::label("PROP"))
{
    const unsigned seed = 20261125U;
    std::cout << "seed " << seed << '\n';
    std::mt19937 random(seed);
    std::uniform_int_distribution<int> quarter(-8, 2);
    std::uniform_int_distribution<int> millimetre(58, 66);
    const auto& rules = defaultRules();
    for (int round = 0; round < 30; ++round) {
        std::vector<StockLine> stock;
        stock.reserve(14);
        for (int i = 0; i < 14; ++i)
            stock.push_back(pairOf("L" + std::to_string(i), quarter(random) * 0.25, millimetre(random)));
        const auto person = someone("-1.25 -0.50 x 90", "-1.00", 10.0 + 5.0 * (round % 12));
        MatchOptions all;
        all.candidates.everyLine = true;
        all.candidates.most = 1000;
        const auto answer = recommend(person, stock, rules, all).front();
        const auto& profile = *rules.find(answer.profile);
        auto list = answer.candidates.ranked;
        list.insert(list.end(), answer.candidates.misses.begin(), answer.candidates.misses.end());
        for (std::size_t i = 0; i < list.size(); ++i)
            for (std::size_t j = 0; j < list.size(); ++j) {
                const auto why = whyAbove(*answer.need, stock, profile, all.candidates, list[i], list[j]);
                BOOST_TEST(why.firstAbove == (i < j));
                BOOST_TEST((why.step == RankStep::same) == (i == j));
                const auto back = whyAbove(*answer.need, stock, profile, all.candidates, list[j], list[i]);
                BOOST_TEST((back.sentence == why.sentence || i == j));
            }
    }
}

namespace
{

Comparison between(const PersonRecord& person, const std::vector<StockLine>& stock,
                   const CandidateOptions& options = {})
{
    const auto& rules = defaultRules();
    const auto answer = first(person, stock);
    const auto& profile = *rules.find(answer.profile);
    const auto candidate = [&](std::size_t line) {
        const std::vector<Part> parts{{line, PartSide::pair}};
        return explainPair(*answer.need, parts, stock, profile, rules.settings, nullptr)->candidate;
    };
    return whyAbove(*answer.need, stock, profile, options, candidate(0), candidate(1));
}

} // namespace

BOOST_AUTO_TEST_CASE(each_key_has_its_own_words, *utf::label("DER"))
{
    const auto person = someone("-2.00", "-2.00");
    BOOST_TEST((between(person, {pairOf("A", -2.0), pairOf("B", -2.25)}).step == RankStep::cost));
    BOOST_TEST((between(person, {pairOf("A", -2.0), pairOf("B", -4.0)}).step == RankStep::outsideLimit));
    BOOST_TEST((between(person, {pairOf("A", -2.0), pairOf("B", -2.0)}).step == RankStep::name));
    BOOST_TEST((between(person, {pairOf("A", -2.0), pairOf("A", -2.0)}).step == RankStep::same));
    BOOST_TEST((between(person, {pairOf("A", -2.0, 62), pairOf("B", -2.0, 59)}).step == RankStep::prism));
    const auto old = someone("-2.00", "-2.00", 65.0);
    const auto side = between(old, {pairOf("A", -1.75), pairOf("B", -2.25)});
    BOOST_TEST((side.step == RankStep::worseSide));
    BOOST_TEST(!side.firstAbove); // too plus is what adults reject
    CandidateOptions scarce;
    scarce.scarcity = {1.0, 0.0};
    const auto rare = between(person, {pairOf("A", -2.0), pairOf("B", -2.0)}, scarce);
    BOOST_TEST((rare.step == RankStep::scarcity));
    BOOST_TEST(!rare.firstAbove);
    auto assumed = pairOf("A", -2.0);
    assumed.centresFrom = CentresFrom::assumed;
    BOOST_TEST((between(person, {assumed, pairOf("B", -2.0)}).step == RankStep::cautions));
    const auto near = reader("0.00", "0.00", 2.0);
    BOOST_TEST(
        (between(near, {pairOf("A", 2.0, 60.5), pairOf("B", 2.0, 59.5)}).step == RankStep::baseOutAtNear));
    auto sized = someone("-2.00", "-2.00");
    sized.frameSize = "small";
    auto small = pairOf("A", -2.0);
    small.frame.sizeClass = "small";
    auto large = pairOf("B", -2.0);
    large.frame.sizeClass = "large";
    BOOST_TEST((between(sized, {small, large}).step == RankStep::cautions)); // a wrong size is a caution
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(single_change)

BOOST_AUTO_TEST_CASE(the_smallest_change_that_passes_is_named, *utf::label("DER"))
{
    // -1.00 at PD 75: 1.0 prism dioptre allows 10 mm, so 65; -2.00 for a need of -1.00: -1.50 is within 0.75.
    auto wide = inNeed("-1.00", "-1.00");
    wide.distancePd = 75.0;
    BOOST_TEST(change(inDetail(wide, {pairOf("A", -1.0, 62)})) == "would do with centres %1 mm apart | 65");
    BOOST_TEST(change(inDetail(inNeed("-1.00", "-1.00"), {pairOf("A", -2.5)})) ==
               "would do with %1 in both lenses instead of %2 | -1.50 | -2.50");
}

BOOST_AUTO_TEST_CASE(lenses_of_their_own_and_lenses_to_the_prescription_come_last, *utf::label("DER"))
{
    BOOST_TEST(change(inDetail(inNeed("-1.00", "-2.25"), {pairOf("A", -1.5)})) ==
               "would do with a lens of its own for each eye: right %1, left %2 | -1.00 | -2.25");
    BOOST_TEST(change(inDetail(inNeed("-1.00 -2.00 x 90", "-1.00"), {pairOf("A", -1.5)})) ==
               "would do with lenses made to the prescription, cylinder included");
}

BOOST_AUTO_TEST_CASE(prism_by_decentration_waits_for_the_prescriber, *utf::label("DER"))
{
    // 1 base in for each eye with -3.00: centres (20/3)/2 · 2 = 6.67 mm wider would supply it: 62 + 6.67.
    const auto person = inNeed("-3.00 1 base in", "-3.00 1 base in");
    const auto answer = inDetail(person, {pairOf("A", -3.0, 68.67)});
    BOOST_TEST((answer.verdict == Verdict::custom));
    BOOST_TEST(answer.reasonKey == "horizontal_prism");
    BOOST_TEST(change(answer) == "would do if the prescriber allows prism by decentration");
    BOOST_TEST(change(inDetail(person, {pairOf("A", -3.0, 62)})) == "none"); // also other centres
    const auto one = inDetail(inNeed("-3.00 1 base in", "balance"), {pairOf("A", -3.0, 62)});
    BOOST_TEST((one.verdict == Verdict::custom)); // a prescribed prism is made for a single eye too
}

BOOST_AUTO_TEST_CASE(every_change_named_is_one_that_passes, *utf::label("PROP"))
{
    const unsigned seed = 4711U;
    std::cout << "seed " << seed << '\n';
    std::mt19937 random(seed);
    std::uniform_int_distribution<int> quarter(-10, 4);
    int named = 0;
    for (int round = 0; round < 200; ++round) {
        const double need = quarter(random) * 0.25;
        const double power = quarter(random) * 0.25;
        const auto person = inNeed(writeDioptres(Dioptres{need}), writeDioptres(Dioptres{need}));
        const auto answer = inDetail(person, {pairOf("A", power)});
        if (answer.changes.empty() || !answer.changes[0] || answer.changes[0]->kind != ChangeKind::sphere)
            continue;
        ++named;
        const auto wanted = parseDioptres(answer.changes[0]->sentence.arguments.at(0), true).value();
        BOOST_TEST((first(person, {pairOf("A", wanted.value())}).verdict == Verdict::stock));
    }
    BOOST_TEST(named > 30);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(order_for_the_laboratory)

BOOST_AUTO_TEST_CASE(near_powers_are_whole_and_the_chosen_form_is_kept, *utf::label("DER"))
{
    const auto person = reader("+1.00 -2.00 x 90", "+1.00", 2.0);
    const auto need = needFor(person, Purpose::near, defaultRules().settings).value();
    const auto minus = laboratoryOrder(person, need, CylinderForm::minus);
    BOOST_TEST(writePower(minus.lenses.right.power) == "+3.00 -2.00 x 90");
    BOOST_TEST(writePower(laboratoryOrder(person, need, CylinderForm::plus).lenses.right.power) ==
               "+1.00 +2.00 x 180");
    BOOST_TEST(*minus.lenses.right.centration == 30.0);
    BOOST_TEST(minus.lenses.right.centrationHalved);
    BOOST_TEST(*minus.workingMm == 400.0);
    BOOST_TEST(!minus.lenses.right.addition.has_value());
}

BOOST_AUTO_TEST_CASE(a_bifocal_has_an_addition_and_asks_for_heights, *utf::label("DER"))
{
    auto person = reader("-1.00", "-1.50", 2.25);
    person.purpose = Purpose::bifocal;
    person.eyes.right.monocularPd = 31.0;
    person.eyes.left.monocularPd = 32.5;
    const auto need = needFor(person, Purpose::bifocal, defaultRules().settings).value();
    auto order = laboratoryOrder(person, need, CylinderForm::minus);
    BOOST_TEST(order.lenses.left.addition->value() == 2.25);
    BOOST_TEST(std::abs(*order.lenses.left.centration - 32.5) < 1e-9);
    BOOST_TEST(!order.lenses.left.centrationHalved);
    const auto asksHeights = [](const LaboratoryOrder& o) {
        return std::any_of(o.missing.begin(), o.missing.end(),
                           [](const Sentence& s) { return s.text == "the heights in the chosen frame"; });
    };
    BOOST_TEST(asksHeights(order));
    person.eyes.right.heightMm = person.eyes.left.heightMm = 18.0;
    person.frame = "Tern 48";
    order = laboratoryOrder(person, need, CylinderForm::minus);
    BOOST_TEST(order.missing.empty());
}

BOOST_AUTO_TEST_CASE(a_balance_lens_takes_its_fellows_power, *utf::label("DER"))
{
    auto person = someone("balance", "-4.50 -1.00 x 10");
    person.distancePd.reset();
    const auto need = needFor(person, Purpose::distance, defaultRules().settings).value();
    const auto order = laboratoryOrder(person, need, CylinderForm::asWritten);
    BOOST_TEST(order.lenses.right.followsFellow);
    BOOST_TEST((order.lenses.right.power == order.lenses.left.power));
    BOOST_TEST(!order.lenses.left.centration.has_value());
    BOOST_TEST(order.missing.size() == 4U); // PD, heights, vertex distance, frame
    BOOST_TEST(order.notes.size() == 2U);   // balance lens, one seeing eye
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(clear)

BOOST_AUTO_TEST_CASE(an_error_common_to_both_eyes_moves_the_range, *utf::label("DER"))
{
    // age 65: no amplitude (18.5 - 0.3 · 65 < 0). +2.00 supplied for +2.00: 1/2.5 to 1/1.5 m.
    const auto answer =
        first(reader("0.00", "0.00", 2.0, 65.0), {pairOf("A", 2.0, 60), pairOf("B", 2.25, 60)});
    const auto exact = clearRange(*answer.need, answer.candidates.ranked.at(0).fit).value();
    BOOST_TEST(std::abs(exact.least - 400.0) < 1e-6);
    BOOST_TEST(std::abs(exact.most - 666.667) < 1e-3);
    const auto strong = clearRange(*answer.need, answer.candidates.ranked.at(1).fit).value();
    BOOST_TEST(std::abs(strong.least - 1000.0 / 2.75) < 1e-6);
    BOOST_TEST(std::abs(strong.most - 1000.0 / 1.75) < 1e-6);
    BOOST_TEST(!clearRange(*first(someone("-2.00", "-2.00"), {}).need, Fit{}).has_value());
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(explained)

BOOST_AUTO_TEST_CASE(crosses_show_need_pair_and_error, *utf::label("DER"))
{
    const auto person = someone("-1.00 -1.00 x 180", "-1.00");
    const auto answer = first(person, {pairOf("A", -1.5)});
    const std::vector<StockLine> stock{pairOf("A", -1.5)};
    const std::vector<Part> parts{{0, PartSide::pair}};
    const auto told = explainPair(*answer.need, parts, stock, *defaultRules().find("adult-distance"),
                                  defaultRules().settings, nullptr)
                          .value();
    // error -1.50 less (-1.00 -1.00 x 180) = -0.50 along 180, +0.50 along 90
    const auto& error = told.crosses.right->error.principal;
    BOOST_TEST(std::abs(error.higher - 0.5) < 1e-9);
    BOOST_TEST(std::abs(error.higherMeridian - 90.0) < 1e-9);
    BOOST_TEST(std::abs(error.lower + 0.5) < 1e-9);
    BOOST_TEST(!told.candidate.fit.criteria.empty());
    for (const auto& result : told.candidate.fit.criteria)
        if (result.band != Band::shown)
            BOOST_TEST(!result.source.empty());
    const std::vector<Part> wrong{{0, PartSide::right}};
    BOOST_TEST(!explainPair(*answer.need, wrong, stock, *defaultRules().find("adult-distance"),
                            defaultRules().settings, nullptr)
                    .has_value());
}

BOOST_AUTO_TEST_SUITE_END()
