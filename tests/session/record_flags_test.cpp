// SPDX-License-Identifier: GPL-3.0-or-later
// Cautions and referral that the record alone shows: each just on its side of the published figure.
#include "inventory/text/age_table_file.hpp"
#include "inventory/text/prescription_table.hpp"
#include "tests/session/people.hpp"

#include <boost/test/unit_test.hpp>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

const std::vector<StockLine> none;

PersonRecord wearing(PersonRecord person, const char* right, const char* left)
{
    person.eyes.right.worn = parsePower(right).value();
    person.eyes.left.worn = parsePower(left).value();
    return person;
}

Recommendation withTables(const PersonRecord& person)
{
    MatchOptions options;
    options.ageTables = &defaultAgeTables();
    return first(person, none, options);
}

} // namespace

BOOST_AUTO_TEST_SUITE(record_flags)

BOOST_AUTO_TEST_CASE(a_large_change_from_the_own_pair_is_told_earlier_from_65,
                     *utf::label("REF") * utf::description("Elliott DB, Optom Vis Sci 2014;91:593-601"))
{
    BOOST_TEST(
        !flagged(first(wearing(someone("-2.00", "-2.00", 65), "-1.25", "-2.00"), none), "own-pair-changed"));
    BOOST_TEST(
        flagged(first(wearing(someone("-2.00", "-2.00", 65), "-1.12", "-2.00"), none), "own-pair-changed"));
    BOOST_TEST(
        !flagged(first(wearing(someone("-2.00", "-2.00", 40), "-1.00", "-2.00"), none), "own-pair-changed"));
    BOOST_TEST(
        flagged(first(wearing(someone("-2.00", "-2.00", 40), "-0.87", "-2.00"), none), "own-pair-changed"));
}

BOOST_AUTO_TEST_CASE(readers_worn_are_not_a_change_of_the_distance_power, *utf::label("DER"))
{
    auto person = wearing(reader("0.00", "0.00", 2.0), "+2.00", "+2.00");
    person.purpose = Purpose::distance;
    BOOST_TEST(!flagged(first(person, none), "own-pair-changed"));
}

BOOST_AUTO_TEST_CASE(an_oblique_axis_that_turned_is_told_from_65,
                     *utf::label("REF") * utf::description("Elliott DB, Optom Vis Sci 2014;91:593-601"))
{
    const auto old = someone("-1.00 -1.00 x 45", "-1.00 -1.00 x 90", 70);
    BOOST_TEST(flagged(first(wearing(old, "-1.00 -1.00 x 60", "-1.00 -1.00 x 90"), none), "own-axis-turned"));
    BOOST_TEST(
        !flagged(first(wearing(old, "-1.00 -1.00 x 55", "-1.00 -1.00 x 90"), none), "own-axis-turned"));
    const auto straight = someone("-1.00 -1.00 x 90", "-1.00", 70);
    BOOST_TEST(!flagged(first(wearing(straight, "-1.00 -1.00 x 105", "-1.00"), none), "own-axis-turned"));
}

BOOST_AUTO_TEST_CASE(an_addition_far_from_every_table_is_told,
                     *utf::label("REF") * utf::description("Arq Bras Oftalmol 2013;76:218-220"))
{
    // 52 years at 40 cm: tables from 1.05 (half of Hofstetter's mean in reserve) to +2.00 by rule of thumb.
    BOOST_TEST(!flagged(withTables(reader("0.00", "0.00", 2.00, 52.0)), "addition-unusual"));
    BOOST_TEST(!flagged(withTables(reader("0.00", "0.00", 2.75, 52.0)), "addition-unusual"));
    BOOST_TEST(flagged(withTables(reader("0.00", "0.00", 3.50, 52.0)), "addition-unusual"));
    BOOST_TEST(flagged(withTables(reader("0.00", "0.00", 0.25, 62.0)), "addition-unusual"));
    auto implant = reader("0.00", "0.00", 3.50, 52.0);
    implant.eyes.right.lensImplant = implant.eyes.left.lensImplant = true;
    BOOST_TEST(!flagged(withTables(implant), "addition-unusual"));
}

BOOST_AUTO_TEST_CASE(near_print_worse_than_n8_with_the_correction_is_told,
                     *utf::label("REF") * utf::description("Chan et al., Asia-Pac J Ophthalmol 2018;7:370"))
{
    auto person = reader("0.00", "0.00", 2.0);
    person.nearBest = parseNearAcuity("N8").value();
    BOOST_TEST(!flagged(first(person, none), "near-below-n8"));
    person.nearBest = parseNearAcuity("N10").value();
    BOOST_TEST(flagged(first(person, none), "near-below-n8"));
}

BOOST_AUTO_TEST_CASE(half_the_addition_is_named_where_no_distance_was_stated)
{
    auto person = reader("0.00", "0.00", 2.0);
    person.purpose = Purpose::intermediate;
    const auto half = first(person, none);
    BOOST_TEST(flagged(half, "half-addition"));
    BOOST_TEST(toPowerVector(half.need->eyes.right.power).m == 1.0);
    person.intermediateMm = 800.0; // 2.00 - (2.50 - 1.25)
    const auto stated = first(person, none);
    BOOST_TEST(!flagged(stated, "half-addition"));
    BOOST_TEST(toPowerVector(stated.need->eyes.right.power).m == 0.75);
    BOOST_TEST(stated.profile == "adult-near");
    person.intermediateMm = 4000.0; // 2.00 - 2.25 is not below zero
    BOOST_TEST(toPowerVector(first(person, none).need->eyes.right.power).m == 0.0);
}

BOOST_AUTO_TEST_CASE(the_own_pair_is_judged_for_near_with_its_addition)
{
    auto person = wearing(reader("-1.00", "-1.00", 2.0), "-1.00", "-1.00");
    BOOST_TEST(!flagged(first(person, none), "own-pair-fits"));
    person.wornAddition = Dioptres{2.0};
    const auto near = first(person, none);
    BOOST_TEST(flagged(near, "own-pair-fits"));
    BOOST_TEST((near.verdict != Verdict::none)); // near acuity with it is not known: she stays a candidate
    person.purpose = Purpose::bifocal;
    BOOST_TEST(flagged(first(person, none), "own-pair-fits"));
    person.wornAddition = Dioptres{3.0};
    BOOST_TEST(!flagged(first(person, none), "own-pair-fits"));
}

BOOST_AUTO_TEST_CASE(a_child_without_cycloplegia_is_told_by_the_size_of_what_may_hide,
                     *utf::label("REF") * utf::description("Zhao et al., Optom Vis Sci 2004;81:49-55"))
{
    auto child = someone("+2.00", "+2.00", 9.0);
    BOOST_TEST(flagged(first(child, none), "no-cycloplegia"));
    child.cycloplegia = true;
    BOOST_TEST(!flagged(first(child, none), "no-cycloplegia"));
    auto myope = someone("-2.00", "-2.00", 9.0);
    BOOST_TEST(!flagged(first(myope, none), "no-cycloplegia")); // not recorded
    myope.cycloplegia = false;
    BOOST_TEST(flagged(first(myope, none), "no-cycloplegia"));
    BOOST_TEST(!flagged(first(someone("+2.00", "+2.00", 16.0), none), "no-cycloplegia"));
}

BOOST_AUTO_TEST_CASE(risk_of_amblyopia_is_told_at_the_published_limits,
                     *utf::label("REF") * utf::description("AAPOS 2013 as quoted; Dobson et al. 2008"))
{
    BOOST_TEST(flagged(first(someone("-3.25", "-3.25", 7.9), none), "young-myopia"));
    BOOST_TEST(!flagged(first(someone("-3.00", "-3.00", 7.9), none), "young-myopia"));
    BOOST_TEST(!flagged(first(someone("-3.25", "-3.25", 8.0), none), "young-myopia"));
    BOOST_TEST(flagged(first(someone("+2.00", "+1.00", 13.0), none), "hyperopic-difference"));
    BOOST_TEST(!flagged(first(someone("+1.75", "+1.00", 13.0), none), "hyperopic-difference"));
    BOOST_TEST(!flagged(first(someone("-2.00", "-1.00", 13.0), none), "hyperopic-difference"));
    BOOST_TEST(!flagged(first(someone("+2.00", "+1.00", 14.0), none), "hyperopic-difference"));
    BOOST_TEST(
        flagged(first(someone("0.00 -2.50 x 90", "0.00 -0.50 x 90", 13.0), none), "cylinder-difference"));
    BOOST_TEST(
        !flagged(first(someone("0.00 -2.25 x 90", "0.00 -0.50 x 90", 13.0), none), "cylinder-difference"));
    BOOST_TEST(flagged(first(someone("+3.50", "+3.50", 15.0), none), "child-high-power"));
    BOOST_TEST(!flagged(first(someone("+3.25", "+3.25", 15.0), none), "child-high-power"));
    BOOST_TEST(flagged(first(someone("0.00 -1.50 x 90", "0.00", 15.0), none), "child-high-power"));
    BOOST_TEST(flagged(first(someone("-1.50", "-3.00", 7.0), none), "young-difference"));
    BOOST_TEST(flagged(first(someone("-1.50", "-2.50", 7.0), none), "young-difference-caution"));
    BOOST_TEST(!flagged(first(someone("-1.50", "-2.50", 8.0), none), "young-difference-caution"));
}

BOOST_AUTO_TEST_CASE(signs_that_are_no_emergency_go_with_a_letter_soon)
{
    for (const auto& [sign, code] : {std::pair{Sign::distortion, "distortion"},
                                     {Sign::fieldLoss, "field-loss"},
                                     {Sign::halos, "halos"}}) {
        auto person = someone("-2.00", "-2.00");
        person.signs = {sign};
        const auto answer = first(person, {pairOf("M", -2.0)});
        BOOST_TEST(flagged(answer, code));
        BOOST_TEST((answer.referral == Referral::with));
        BOOST_TEST((answer.urgency == Urgency::soon));
        BOOST_TEST((answer.verdict == Verdict::stock));
    }
    auto person = someone("-2.00", "-2.00");
    BOOST_TEST(!setField(person, "signs", "halos; pain").has_value());
    BOOST_TEST(person.signs.size() == 2U);
    BOOST_TEST((first(person, {pairOf("M", -2.0)}).referral == Referral::before));
}

BOOST_AUTO_TEST_CASE(acuity_rules_hold_at_their_lines,
                     *utf::label("REF") *
                         utf::description("IAPB School Eye Health Guidelines; WHO indicator"))
{
    auto child = someone("-2.00", "-2.00", 10.0);
    see(child, &EyeAcuities::best, "6/9");
    BOOST_TEST(!flagged(first(child, none), "child-below-6-9"));
    child.eyes.left.acuity.best = parseAcuity("6/12").value();
    BOOST_TEST(flagged(first(child, none), "child-below-6-9"));
    see(child, &EyeAcuities::unaided, "6/60");
    BOOST_TEST(!flagged(first(child, none), "child-below-6-60"));
    child.eyes.right.acuity.unaided = parseAcuity("5/60").value();
    BOOST_TEST(flagged(first(child, none), "child-below-6-60"));
    auto adult = someone("-2.00", "-2.00");
    see(adult, &EyeAcuities::best, "6/12");
    BOOST_TEST(!flagged(first(adult, none), "adult-below-6-12"));
    see(adult, &EyeAcuities::best, "6/18");
    BOOST_TEST(flagged(first(adult, none), "adult-below-6-12"));
    see(adult, &EyeAcuities::pinhole, "6/9");
    BOOST_TEST(!flagged(first(adult, none), "adult-below-6-12"));
    BOOST_TEST(flagged(first(adult, none), "pinhole-better"));
}

BOOST_AUTO_TEST_CASE(a_used_pair_is_told_and_a_setting_leaves_it_out)
{
    auto line = pairOf("U", -2.0);
    line.origin = Origin::used;
    BOOST_TEST(flagged(first(someone("-2.00", "-2.00"), {line}), "used-pair"));
    BOOST_TEST(!flagged(first(someone("-2.00", "-2.00"), {pairOf("A", -2.0), line}), "used-pair"));
    auto rules = defaultRules();
    rules.settings.useUsedPairs = false;
    BOOST_TEST(
        (recommend(someone("-2.00", "-2.00"), std::vector<StockLine>{line}, rules, {}).front().verdict ==
         Verdict::custom));
}

BOOST_AUTO_TEST_SUITE_END()
