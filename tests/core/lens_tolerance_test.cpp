// SPDX-License-Identifier: GPL-3.0-or-later
// A focimeter reading against an order: which rule fails and by how much.
#include "core/optics/lens_tolerance.hpp"

#include "core/optics/notation.hpp"
#include "inventory/text/tolerance_file.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>

namespace utf = boost::unit_test;

namespace quarterstep::check
{
namespace
{

const ToleranceSet& set(const std::string& name)
{
    const auto* found = defaultTolerances().named(name);
    BOOST_TEST_REQUIRE((found != nullptr), name);
    return *found;
}

LensValues lens(const std::string& text, Eye eye = Eye::right)
{
    const auto read = parseEye(text, eye);
    BOOST_TEST_REQUIRE(static_cast<bool>(read), text);
    return {read.value().power, read.value().addition, read.value().prism.value_or(EyePrism{})};
}

/// Names of the rules that fail, "axis horizontal_prism", or "" when all pass.
std::string failing(const ToleranceJudgement& judgement)
{
    std::string names;
    for (const auto& result : judgement.results)
        if (!result.passes())
            names += (names.empty() ? "" : " ") + std::string(ruleName(result.rule));
    BOOST_TEST(judgement.passes() == names.empty());
    return names;
}

std::string failing(const std::string& name, const std::string& ordered, const std::string& read)
{
    return failing(judgeLens(set(name), Eye::right, lens(ordered), lens(read)));
}

std::string failingPair(const std::string& name, const std::string& power, const std::string& right,
                        const std::string& left, std::optional<double> centresOff = std::nullopt)
{
    return failing(judgePair(set(name), {lens(power), lens(power)},
                             {lens(power + right, Eye::right), lens(power + left, Eye::left)}, centresOff));
}

const ToleranceResult& resultOf(const ToleranceJudgement& judgement, ToleranceRule rule)
{
    for (const auto& result : judgement.results)
        if (result.rule == rule)
            return result;
    throw std::runtime_error("no such rule judged");
}

constexpr auto ansi = "ansi-z80.1-2015";
constexpr auto iso = "iso-8980-1-2004";
constexpr auto near = "iso-16034-2002";

} // namespace

BOOST_AUTO_TEST_SUITE(lens_tolerance)

BOOST_AUTO_TEST_CASE(the_sphere_meridian_is_judged_by_its_size,
                     *utf::label("REF") * utf::description("ANSI Z80.1-2015, table 1, second-hand"))
{
    BOOST_TEST(failing(ansi, "-6.50", "-6.63") == "");
    BOOST_TEST(failing(ansi, "-6.50", "-6.64") == "sphere_meridian");
    BOOST_TEST(failing(ansi, "-10.00", "-10.20") == "");
    BOOST_TEST(failing(ansi, "-10.00", "-10.21") == "sphere_meridian");
}

BOOST_AUTO_TEST_CASE(the_cylinder_has_three_bands_ends_included,
                     *utf::label("REF") * utf::description("ANSI Z80.1-2015, table 1, second-hand"))
{
    BOOST_TEST(failing(ansi, "-1.00 -2.00 x 90", "-1.00 -2.13 x 90") == "");
    BOOST_TEST(failing(ansi, "-1.00 -2.00 x 90", "-1.00 -2.14 x 90") == "cylinder");
    BOOST_TEST(failing(ansi, "-1.00 -4.50 x 90", "-1.00 -4.65 x 90") == "");
    BOOST_TEST(failing(ansi, "-1.00 -5.00 x 90", "-1.00 -5.20 x 90") == "");
    BOOST_TEST(failing(ansi, "-1.00 -5.00 x 90", "-1.00 -5.21 x 90") == "cylinder");
}

BOOST_AUTO_TEST_CASE(the_axis_is_judged_by_the_ordered_cylinder,
                     *utf::label("REF") * utf::description("ANSI Z80.1-2015, table 3, second-hand"))
{
    BOOST_TEST(failing(ansi, "-1.00 -0.25 x 90", "-1.00 -0.25 x 104") == "");
    BOOST_TEST(failing(ansi, "-1.00 -0.25 x 90", "-1.00 -0.25 x 105") == "axis");
    BOOST_TEST(failing(ansi, "-1.00 -0.50 x 90", "-1.00 -0.50 x 97") == "");
    BOOST_TEST(failing(ansi, "-1.00 -0.75 x 90", "-1.00 -0.75 x 95") == "");
    BOOST_TEST(failing(ansi, "-1.00 -1.50 x 90", "-1.00 -1.50 x 93") == "");
    BOOST_TEST(failing(ansi, "-1.00 -1.75 x 90", "-1.00 -1.75 x 93") == "axis");
    BOOST_TEST(failing(ansi, "-1.00 -1.00 x 179", "-1.00 -1.00 x 2") == "");  // across 180
    BOOST_TEST(failing(ansi, "-1.00 -1.00 x 90", "-2.00 +1.00 x 180") == ""); // the other form
    BOOST_TEST(failing(ansi, "-1.00 -1.00 x 90", "-1.00 -1.00 x 180") == "axis");
}

BOOST_AUTO_TEST_CASE(a_failing_rule_says_by_how_much, *utf::label("DER"))
{
    const auto judgement =
        judgeLens(set(ansi), Eye::right, lens("-1.00 -2.00 x 90"), lens("-1.00 -2.25 x 90"));
    const auto& result = resultOf(judgement, ToleranceRule::cylinder);
    BOOST_TEST(std::fabs(result.error - 0.25) < 1e-12);
    BOOST_TEST(std::fabs(result.excess - 0.12) < 1e-12);
    BOOST_TEST(result.limit.value() == 0.13);
    const std::vector<std::string> said{"+0.25 D", "0.13 D", "0.12 D"};
    BOOST_TEST(result.sentence.arguments == said, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(the_international_grid_judges_both_meridians_and_the_cylinder,
                     *utf::label("REF") * utf::description("ISO 8980-1:2004, table 1, second-hand"))
{
    BOOST_TEST(failing(iso, "0.00", "0.00 -0.09 x 90") == "");
    BOOST_TEST(failing(iso, "0.00", "0.00 -0.10 x 90") == "cylinder");
    BOOST_TEST(failing(iso, "-10.00", "-10.18") == "");
    BOOST_TEST(failing(iso, "-10.00", "-10.19") == "higher_meridian lower_meridian");
    BOOST_TEST(failing(iso, "-10.00", "-10.00 -0.12 x 90") == "");
    BOOST_TEST(failing(iso, "-2.00 -2.00 x 90", "-2.10 -2.02 x 90") == "");
    // the sphere alone is within, the other meridian is not
    BOOST_TEST(failing(iso, "-2.00 -0.75 x 90", "-2.05 -0.84 x 90") == "lower_meridian");
    BOOST_TEST(failing(iso, "-1.00 -5.00 x 90", "-1.00 -5.12 x 90") == "");
}

BOOST_AUTO_TEST_CASE(an_axis_the_set_has_no_limit_for_is_shown_and_never_fails, *utf::label("PROP"))
{
    const auto judgement =
        judgeLens(set(iso), Eye::right, lens("-1.00 -2.00 x 90"), lens("-1.00 -2.00 x 10"));
    const auto& axis = resultOf(judgement, ToleranceRule::axis);
    BOOST_TEST(!axis.limit.has_value());
    BOOST_TEST(axis.passes());
    BOOST_TEST(axis.error == 80.0);
}

BOOST_AUTO_TEST_CASE(additions_differ_by_twelve_or_eighteen_hundredths,
                     *utf::label("REF") * utf::description("ANSI Z80.1-2015, table 4, second-hand"))
{
    BOOST_TEST(failing(ansi, "-1.00 Add +2.00", "-1.00 Add +2.12") == ""); // an eighth on both sides
    BOOST_TEST(failing(ansi, "-1.00 Add +2.00", "-1.00 Add +2.13") == "addition");
    BOOST_TEST(failing(ansi, "-1.00 Add +4.25", "-1.00 Add +4.43") == "");
    BOOST_TEST(failing(ansi, "-1.00 Add +2.00", "-1.00") == "addition"); // left out
}

BOOST_AUTO_TEST_CASE(prism_of_a_pair_fails_only_when_both_limits_are_passed,
                     *utf::label("REF") * utf::description("ANSI Z80.1-2015, section 6: or; second-hand"))
{
    BOOST_TEST(failingPair(ansi, "-1.00", " 0.33 BI", " 0.34 BI") == "");
    BOOST_TEST(failingPair(ansi, "-1.00", " 0.34 BI", " 0.34 BI") == "horizontal_prism");
    BOOST_TEST(failingPair(ansi, "-1.00", " 0.50 BI", " 0.50 BO") == ""); // yoked: no imbalance
    // 6.00 D: 2.5 mm give 1.50, which the rule in mm allows
    BOOST_TEST(failingPair(ansi, "-6.00", " 0.75 BI", " 0.75 BI") == "");
    BOOST_TEST(failingPair(ansi, "-6.00", " 0.75 BI", " 0.76 BI") == "horizontal_prism");
    BOOST_TEST(failingPair(ansi, "-1.00", " 0.17 BU", " 0.16 BD") == "");
    BOOST_TEST(failingPair(ansi, "-1.00", " 0.17 BU", " 0.17 BD") == "vertical_prism");
    BOOST_TEST(failingPair(ansi, "-6.00", " 0.30 BU", " 0.30 BD") == ""); // 1 mm at 6.00 D
}

BOOST_AUTO_TEST_CASE(a_measured_distance_of_centres_decides_the_rule_in_millimetres, *utf::label("DER"))
{
    BOOST_TEST(failingPair(ansi, "-6.00", " 0.75 BI", " 0.75 BI", 2.5) == "");
    BOOST_TEST(failingPair(ansi, "-6.00", " 0.75 BI", " 0.75 BI", 2.6) == "horizontal_prism");
    // below 0.50 D there is no centre to be found: prism alone
    BOOST_TEST(failingPair(ansi, "-0.25", " 0.40 BI", " 0.40 BI", 0.0) == "horizontal_prism");
}

BOOST_AUTO_TEST_CASE(prism_ordered_is_part_of_the_order, *utf::label("DER"))
{
    const PerEye<LensValues> ordered{lens("-1.00 1 BI"), lens("-1.00 1 BI", Eye::left)};
    const PerEye<LensValues> plain{lens("-1.00"), lens("-1.00")};
    BOOST_TEST(failing(judgePair(set(ansi), ordered, ordered)) == "");
    BOOST_TEST(failing(judgePair(set(ansi), ordered, plain)) == "horizontal_prism");
}

BOOST_AUTO_TEST_CASE(ready_made_pairs_are_judged_lens_by_lens_across_and_as_a_pair_up,
                     *utf::label("REF") * utf::description("ISO 16034:2002 and draft EN 14139, second-hand"))
{
    BOOST_TEST(failingPair(near, "+2.00", " 0.33 BO", " 0.33 BO") == "");
    BOOST_TEST(failingPair(near, "+2.00", " 0.34 BO", "") == "horizontal_prism");
    BOOST_TEST(failingPair(near, "+2.00", " 0.17 BU", " 0.17 BD") == "vertical_prism");
    BOOST_TEST(failing(near, "+2.00", "+2.00 -0.10 x 90") == "cylinder");
    BOOST_TEST(failing(near, "+2.00", "+2.14") == "higher_meridian lower_meridian");
    BOOST_TEST(judgeLens(set(near), Eye::right, lens("+4.00"), lens("+4.00")).notes.size() == 1U);
    BOOST_TEST(judgeLens(set(near), Eye::right, lens("+3.50"), lens("+3.50")).notes.empty());
}

BOOST_AUTO_TEST_CASE(a_reading_equal_to_the_order_passes_every_set, *utf::label("PROP"))
{
    for (const auto& each : defaultTolerances().sets)
        for (const auto* text : {"0.00", "-3.00 -1.25 x 33 1 BU 2 BI", "+12.00 -6.50 x 180 Add +4.50"})
            BOOST_TEST(failing(judgePair(each, {lens(text), lens(text)}, {lens(text), lens(text)})) == "",
                       each.name);
}

BOOST_AUTO_TEST_CASE(not_a_number_never_passes, *utf::label("PROP"))
{
    LensValues broken;
    broken.power.sphere = Dioptres{std::nan("")};
    BOOST_TEST(!judgeLens(set(ansi), Eye::right, lens("-1.00"), broken).passes());
}

BOOST_AUTO_TEST_CASE(sets_from_memory_are_not_chosen_and_say_why, *utf::label("PROP"))
{
    const auto& sets = defaultTolerances();
    BOOST_TEST(chooseTolerances(sets, "").value()->name == ansi);
    BOOST_TEST(chooseTolerances(sets, "no such").complaint().code == "tolerances-unknown");
    int disabled = 0;
    for (const auto& each : sets.sets) {
        BOOST_TEST(each.enabled == (each.confidence != Confidence::fromMemory), each.name);
        BOOST_TEST(!each.provenance.empty(), each.name);
        if (each.enabled)
            continue;
        ++disabled;
        BOOST_TEST(chooseTolerances(sets, each.name).complaint().code == "tolerances-not-enabled");
        BOOST_TEST(!each.why.empty(), each.name);
    }
    BOOST_TEST(disabled == 3);
}

BOOST_AUTO_TEST_CASE(rising_error_never_mends_a_failure, *utf::label("PROP"))
{
    for (const auto& each : defaultTolerances().sets) {
        bool failed = false;
        for (int hundredths = 0; hundredths <= 60; ++hundredths) {
            LensValues read = lens("-4.00 -1.00 x 90");
            read.power.sphere = Dioptres{-4.0 - hundredths / 100.0};
            const bool passes = judgeLens(each, Eye::right, lens("-4.00 -1.00 x 90"), read).passes();
            BOOST_TEST(!(failed && passes), each.name);
            failed = failed || !passes;
        }
        BOOST_TEST(failed == !each.meridian.empty(), each.name);
    }
}

BOOST_AUTO_TEST_CASE(each_rule_has_its_unit, *utf::label("DER"))
{
    BOOST_TEST(std::string(ruleUnit(ToleranceRule::cylinder)) == "D");
    BOOST_TEST(std::string(ruleUnit(ToleranceRule::axis)) == "\u00B0");
    BOOST_TEST(std::string(ruleUnit(ToleranceRule::verticalPrism)) == "\u0394");
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep::check
