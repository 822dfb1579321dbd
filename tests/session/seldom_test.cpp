// SPDX-License-Identifier: GPL-3.0-or-later
// What comes about seldom and matters then: orders for the laboratory that are not the usual pair, the last
// keys of the order of candidates, changes that only some pairs have, codes that are none.
#include "core/fitting/clear_range.hpp"
#include "core/fitting/explanation.hpp"
#include "core/fitting/laboratory_order.hpp"
#include "core/fitting/line_code.hpp"
#include "core/fitting/single_change.hpp"
#include "tests/session/people.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>
#include <set>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

LaboratoryOrder orderOf(const PersonRecord& person, Purpose purpose)
{
    return laboratoryOrder(person, needFor(person, purpose, defaultRules().settings).value(),
                           CylinderForm::minus);
}

bool says(const std::vector<Sentence>& sentences, const std::string& text)
{
    return std::any_of(sentences.begin(), sentences.end(),
                       [&](const Sentence& sentence) { return sentence.text == text; });
}

/// A pair of this kind that fails, and the change that would help it.
std::optional<SingleChange> changeFor(const PersonRecord& person, Purpose purpose, const Supply& supply)
{
    const auto need = needFor(person, purpose, defaultRules().settings).value();
    const auto& profile = *defaultRules().find(profileFor(person, purpose));
    Candidate miss;
    miss.supply = supply;
    BOOST_TEST((judge(need, supply, profile).band == Band::fails));
    return singleChangeFor(need, miss, profile);
}

Supply pairWith(double power, std::optional<Range> centres)
{
    Supply supply;
    supply.power = {sphereOf(power), sphereOf(power)};
    supply.centres = centres;
    return supply;
}

RankStep stepFor(const PersonRecord& person, const std::vector<StockLine>& stock,
                 const std::vector<std::vector<Part>>& pairs, const std::string& profileName)
{
    const auto& rules = defaultRules();
    const auto need = needFor(person, person.purpose, rules.settings).value();
    const auto& profile = *rules.find(profileName);
    const auto candidate = [&](const std::vector<Part>& parts) {
        return explainPair(need, parts, stock, profile, rules.settings, nullptr)->candidate;
    };
    const auto one = candidate(pairs.at(0));
    const auto other = candidate(pairs.at(1));
    const auto why = whyAbove(need, stock, profile, {}, one, other);
    BOOST_TEST(why.firstAbove);
    BOOST_TEST(why.sentence.arguments.at(0) == stock[pairs.at(0).front().line].name);
    return why.step;
}

const std::vector<std::vector<Part>> eachAlone{{{0, PartSide::pair}}, {{1, PartSide::pair}}};

} // namespace

BOOST_AUTO_TEST_SUITE(seldom)

BOOST_AUTO_TEST_CASE(an_intermediate_order_names_its_distance_and_the_centration_computed_for_it,
                     *utf::label("DER"))
{
    auto person = reader("-1.00", "-1.00", 2.0);
    const auto half = orderOf(person, Purpose::intermediate);
    BOOST_TEST(*half.workingMm == 800.0);                      // twice 400 where no distance was stated
    BOOST_TEST(writePower(half.lenses.right.power) == "0.00"); // half of the addition
    BOOST_TEST(says(half.notes, "centration computed from the distance PD, not measured"));
    BOOST_TEST(says(half.notes, "single vision for %1 mm: whole power, nothing to be added"));
    BOOST_TEST(std::abs(*half.lenses.left.centration - 31.0 * 800.0 / 827.0) < 1e-9); // W / (W + 27)
    person.intermediateMm = 600.0;
    BOOST_TEST(*orderOf(person, Purpose::intermediate).workingMm == 600.0);
}

BOOST_AUTO_TEST_CASE(a_near_power_found_by_trial_is_ordered_as_it_was_found, *utf::label("DER"))
{
    auto person = reader("+0.50", "+0.50", 2.0);
    person.eyes.right.nearPower = parsePower("+2.75 -0.50 x 80").value();
    const auto order = orderOf(person, Purpose::near);
    BOOST_TEST(writePower(order.lenses.right.power) == "+2.75 -0.50 x 80");
    BOOST_TEST(writePower(order.lenses.left.power) == "+2.50");
}

BOOST_AUTO_TEST_CASE(what_the_laboratory_must_know_beside_the_power_is_said, *utf::label("DER"))
{
    auto child = someone("-5.00 1 base in", "-5.00 1 base in", 9.0);
    child.prescriber.clear();
    child.vertexMm = 14.0;
    child.objectiveOnly = true;
    const auto order = orderOf(child, Purpose::distance);
    BOOST_TEST(says(order.missing, "the prescriber's name, for a child"));
    BOOST_TEST(says(order.notes, "prism as prescribed, each eye its own"));
    BOOST_TEST(says(order.notes, "refracted at a vertex distance of %1 mm"));
    BOOST_TEST(says(order.notes, "from an objective reading only"));
    BOOST_TEST(says(order.notes, "for a child: impact-resistant lenses are advised"));
    BOOST_TEST(!says(order.missing, "the vertex distance of the refraction"));
    child.prescriber = "named";
    child.vertexMm.reset();
    const auto known = orderOf(child, Purpose::distance);
    BOOST_TEST(!says(known.missing, "the prescriber's name, for a child"));
    BOOST_TEST(says(known.missing, "the vertex distance of the refraction"));
}

BOOST_AUTO_TEST_CASE(the_last_keys_of_the_order_decide_in_their_turn, *utf::label("DER"))
{
    // 2 log10(1 + 0.18²) = 0.0277 and log10(1 + 0.25²) = 0.0263 are one step of 0.02; 0 against 0.25 D apart.
    const auto old = someone("-2.00", "-2.00", 65.0);
    auto uneven = pairOf("B", 0.0);
    uneven.power = {sphereOf(-2.25), sphereOf(-2.0)};
    BOOST_TEST(
        (stepFor(old, {pairOf("A", -2.18), uneven}, eachAlone, "adult-distance") == RankStep::balance));
    BOOST_TEST((stepFor(old, {pairOf("A", -2.0), pairOf("B", -2.05)}, eachAlone, "adult-distance") ==
                RankStep::exactCost));
    // A profile that does not judge the size leaves it to the order.
    auto sized = someone("-2.00", "-2.00");
    sized.frameSize = "small";
    auto small = pairOf("B", -2.0);
    small.frame.sizeClass = "small";
    auto large = pairOf("A", -2.0);
    large.frame.sizeClass = "large";
    BOOST_TEST((stepFor(sized, {small, large}, eachAlone, "strict") == RankStep::frameSize));
    // The same optics in one piece and in three.
    const std::vector<StockLine> stock{pairOf("Z", -2.0), frameOf("F", 62.0), lensOf("L", "-2.00")};
    BOOST_TEST(
        (stepFor(someone("-2.00", "-2.00"), stock,
                 {{{0, PartSide::pair}}, {{1, PartSide::frame}, {2, PartSide::right}, {2, PartSide::left}}},
                 "adult-distance") == RankStep::parts));
}

BOOST_AUTO_TEST_CASE(a_lens_that_turns_and_one_that_does_not_are_alike_where_they_sit_alike,
                     *utf::label("DER"))
{
    const auto person = someone("-2.00 -0.75 x 90", "-2.00 -0.75 x 90");
    const std::vector<StockLine> stock{frameOf("F", 62.0), lensOf("T", "-2.00 -0.75"),
                                       lensOf("X", "-2.00 -0.75 x 90")};
    BOOST_TEST(stock[1].anyAxis);
    BOOST_TEST(!stock[2].anyAxis);
    const auto ranked = first(person, stock).candidates.ranked;
    BOOST_REQUIRE_EQUAL(ranked.size(), 1U); // one optical group
    std::set<std::string> ways;
    const auto add = [&](const std::vector<Part>& parts) {
        ways.insert(stock[parts.at(1).line].name + stock[parts.at(2).line].name);
    };
    add(ranked.front().parts);
    for (const auto& alike : ranked.front().alike)
        add(alike);
    BOOST_TEST(ways == (std::set<std::string>{"TT", "TX", "XT", "XX"}), boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(acuity_typed_for_one_eye_alone_decides_nothing, *utf::label("DER"))
{
    // -2.75 for -2.00 at 30 is 0.75 D of blur: on trial, until both eyes have read with that very pair.
    const auto person = someone("-2.00", "-2.00");
    const std::vector<StockLine> stock{pairOf("A", -2.75)};
    MatchOptions options;
    options.trial = TrialAcuity{};
    options.trial->distance.right = parseAcuity("6/6").value();
    BOOST_TEST((first(person, stock, options).verdict == Verdict::incomplete));
    options.trial->distance.left = parseAcuity("6/6").value();
    BOOST_TEST((first(person, stock, options).verdict == Verdict::stock));
    // At near it is near print that decides: +1.25 for +2.00 is 0.75 D too weak.
    const auto old = reader("0.00", "0.00", 2.0);
    const std::vector<StockLine> readers{pairOf("R", 1.25, 60.0)};
    BOOST_TEST((first(old, readers, options).verdict == Verdict::incomplete));
    options.trial->near = parseNearAcuity("N6").value();
    BOOST_TEST((first(old, readers, options).verdict == Verdict::stock));
}

BOOST_AUTO_TEST_CASE(changes_that_only_some_pairs_have_are_found, *utf::label("DER"))
{
    // 12 mm off the widest plausible PD with -3.00 is 3.6; with the PD in the middle it is none.
    auto unmeasured = someone("-3.00", "-3.00");
    unmeasured.distancePd.reset();
    const auto pd = changeFor(unmeasured, Purpose::distance, pairWith(-3.0, Range{62.0, 62.0}));
    BOOST_REQUIRE(pd.has_value());
    BOOST_TEST((pd->kind == ChangeKind::measurePd));
    BOOST_TEST(pd->sentence.arguments.at(0) == "62.00");
    // 3 mm of difference in height with -3.00 is 0.9 vertically, limit 0.5.
    auto tilted = pairWith(-3.0, Range{62.0, 62.0});
    tilted.heightsDiffer = 3.0;
    const auto heights = changeFor(someone("-3.00", "-3.00"), Purpose::distance, tilted);
    BOOST_REQUIRE(heights.has_value());
    BOOST_TEST((heights->kind == ChangeKind::heights));
    // A near portion 1.25 D too strong; up to 0.50 D is a caution. Less sphere would cost the distance too
    // much.
    auto person = reader("-1.00", "-1.00", 2.0);
    person.purpose = Purpose::bifocal;
    auto bifocal = pairWith(-1.0, Range{62.0, 62.0});
    bifocal.bifocalAddition = Dioptres{3.25};
    const auto addition = changeFor(person, Purpose::bifocal, bifocal);
    BOOST_REQUIRE(addition.has_value());
    BOOST_TEST((addition->kind == ChangeKind::nearAddition));
    BOOST_TEST(addition->sentence.arguments.at(0) == "+2.50");
}

BOOST_AUTO_TEST_CASE(one_seeing_eye_has_a_range_of_its_own, *utf::label("DER"))
{
    const auto person = reader("balance", "0.00", 2.0, 65.0); // no amplitude left at 65
    const auto need = needFor(person, Purpose::near, defaultRules().settings).value();
    const auto fit = judge(need, pairWith(2.0, Range{60.0, 60.0}), *defaultRules().find("adult-near"));
    const auto range = clearRange(need, fit).value();
    BOOST_TEST(std::abs(range.least - 400.0) < 1e-6); // 1 / (2.00 + 0.50)
    BOOST_TEST(std::abs(range.most - 1000.0 / 1.5) < 1e-6);
}

BOOST_AUTO_TEST_CASE(an_objective_reading_a_little_apart_is_told_and_one_far_apart_is_looked_at_again,
                     *utf::label("DER"))
{
    auto person = someone("-2.00", "-2.00");
    person.eyes.right.objective = sphereOf(-2.75);
    const auto apart = first(person, {pairOf("A", -2.0)});
    BOOST_TEST(flagged(apart, "objective-apart"));
    BOOST_TEST(!apart.recheck);
    person.eyes.right.objective = sphereOf(-3.25);
    const auto far = first(person, {pairOf("A", -2.0)});
    BOOST_TEST(flagged(far, "objective-far"));
    BOOST_TEST(far.recheck);
}

BOOST_AUTO_TEST_CASE(a_code_that_is_none_is_refused_in_its_own_words, *utf::label("DER"))
{
    for (const char* text : {"", "12345", "20000000000150", "2000000000x15"}) {
        const auto read = parseLineCode(text);
        BOOST_REQUIRE(!read);
        BOOST_TEST(read.complaint().code == "code-form");
    }
    BOOST_TEST(parseLineCode("2000000000015").value() == "2000000000015"); // 2 + 3 = 5, up to ten: 5
    BOOST_TEST(parseLineCode("2000000000016").complaint().code == "code-check-digit");
}

BOOST_AUTO_TEST_SUITE_END()
