// SPDX-License-Identifier: GPL-3.0-or-later
// The built-in profiles: every limit as the model of fit states it, every limit with a source.
#include "core/fitting/criteria/table.hpp"
#include "inventory/defaults/default_texts.hpp"
#include "inventory/text/rules_file.hpp"
#include "tests/inventory/marked_text.hpp"

#include <boost/test/unit_test.hpp>
#include <fstream>
#include <sstream>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

const Profile& profile(const char* name)
{
    const Profile* found = defaultRules().find(name);
    BOOST_REQUIRE(found != nullptr);
    return *found;
}

std::string words(const std::optional<Limit>& limit)
{
    std::ostringstream text;
    if (!limit)
        return "-";
    text << (limit->open ? "<" : "") << limit->value;
    return text.str();
}

std::string bandsOf(const char* name, Criterion criterion)
{
    const auto& rule = profile(name).of(criterion);
    return words(rule.bands.fits) + " " + words(rule.bands.caution) + " " + words(rule.bands.trial) +
           (rule.neverFails ? " never fails" : "") + (rule.judged ? "" : " shown");
}

using C = Criterion;

} // namespace

BOOST_AUTO_TEST_SUITE(default_rules)

BOOST_AUTO_TEST_CASE(the_defaults_parse_without_any_finding, *utf::label("PROP"))
{
    const auto again = readRulesText(std::string(defaultRulesText()), "rules.yaml");
    BOOST_TEST(told(again.findings) == std::vector<std::string>{}, boost::test_tools::per_element());
    BOOST_TEST(again.value.hash == defaultRules().hash);
    BOOST_TEST(defaultRules().find("nobody's") == nullptr);
    std::vector<std::string> names;
    for (const auto& one : defaultRules().profiles)
        names.push_back(one.name);
    BOOST_TEST(names == (std::vector<std::string>{"school", "adult-distance", "adult-near", "strict",
                                                  "school-guideline"}),
               boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(what_is_compiled_in_is_the_file_byte_for_byte, *utf::label("PROP"))
{
    std::ifstream file(QS_SOURCE_DIR "/inventory/defaults/rules.yaml", std::ios::binary);
    std::ostringstream bytes;
    bytes << file.rdbuf();
    BOOST_TEST(!bytes.str().empty());
    BOOST_TEST((bytes.str() == defaultRulesText()));
}

BOOST_AUTO_TEST_CASE(every_limit_has_a_source, *utf::label("PROP"))
{
    for (const auto& one : defaultRules().profiles)
        for (const auto& info : criterionTable()) {
            const auto& rule = one.of(info.criterion);
            const bool limited = !(rule.bands == Bands{}) || !rule.byCylinder.empty() || rule.judged;
            BOOST_TEST_CONTEXT(one.name << ": " << info.key)
            BOOST_TEST((!limited || rule.source.size() > 10U));
        }
}

BOOST_AUTO_TEST_CASE(school_has_the_limits_of_the_model, *utf::label("DER"))
{
    BOOST_TEST(bandsOf("school", C::tooPlus) == "0.25 0.5 -");
    BOOST_TEST(bandsOf("school", C::tooMinus) == "0.25 0.5 -");
    BOOST_TEST(!profile("school").of(C::tooMinus).olderFrom.has_value());
    BOOST_TEST(bandsOf("school", C::blur) == "0.5 - 0.75");
    BOOST_TEST(bandsOf("school", C::residualCylinder) == "0.75 - -");
    BOOST_TEST(bandsOf("school", C::needDifference) == "<1 - -");
    BOOST_TEST(bandsOf("school", C::suppliedDifference) == "<1 <2 -");
    BOOST_TEST(bandsOf("school", C::balance) == "0.5 <1 -");
    BOOST_TEST(profile("school").of(C::balance).hyperopicChildUnder.value() == 8.0);
    BOOST_TEST(bandsOf("school", C::powerSize) == "3.5 - -");
    BOOST_TEST(bandsOf("school", C::horizontalPrism) == "1 - -");
    BOOST_TEST(bandsOf("school", C::verticalPrism) == "0.5 - -");
    BOOST_TEST(bandsOf("school", C::centres) == "2 4 -");
    BOOST_TEST(profile("school").of(C::centres).needsPrismUnder.value() == 0.5);
}

BOOST_AUTO_TEST_CASE(adult_distance_has_the_limits_of_the_model, *utf::label("DER"))
{
    const char* name = "adult-distance";
    BOOST_TEST(bandsOf(name, C::tooPlus) == "0.25 0.5 -");
    BOOST_TEST(bandsOf(name, C::tooMinus) == "0.25 0.75 -");
    BOOST_TEST(profile(name).of(C::tooMinus).olderFrom.value() == 40.0);
    BOOST_TEST((profile(name).of(C::tooMinus).older == Bands{Limit{0.25, false}, Limit{0.5, false}, {}}));
    BOOST_TEST(bandsOf(name, C::blur) == "0.5 - 0.75");
    BOOST_TEST(bandsOf(name, C::residualCylinder) == "0.75 - 1.25");
    BOOST_TEST(bandsOf(name, C::needDifference) == "<1 - -");
    BOOST_TEST(bandsOf(name, C::suppliedDifference) == "<1 <2 -");
    BOOST_TEST(bandsOf(name, C::balance) == "0.5 <1 -");
    BOOST_TEST(!profile(name).of(C::balance).hyperopicChildUnder.has_value());
    BOOST_TEST(bandsOf(name, C::powerSize) == "3.5 6 -");
    BOOST_TEST(profile(name).of(C::powerSize).vertexAbove.value() == 4.0);
    BOOST_TEST(bandsOf(name, C::horizontalPrism) == "1 - -");
    BOOST_TEST(bandsOf(name, C::verticalPrism) == "0.5 - -");
    BOOST_TEST(bandsOf(name, C::centres) == "- - - shown");
}

BOOST_AUTO_TEST_CASE(adult_near_has_the_limits_of_the_model, *utf::label("DER"))
{
    const char* name = "adult-near";
    BOOST_TEST(bandsOf(name, C::tooPlus) == "0.25 0.5 -");
    BOOST_TEST(bandsOf(name, C::tooMinus) == "0.5 0.75 -");
    BOOST_TEST(!profile(name).of(C::tooMinus).olderFrom.has_value());
    BOOST_TEST(bandsOf(name, C::blur) == "0.5 - 0.75");
    BOOST_TEST(bandsOf(name, C::residualCylinder) == "1 - 1.5");
    BOOST_TEST(bandsOf(name, C::needDifference) == "<1 - -");
    BOOST_TEST(bandsOf(name, C::powerSize) == "2.5 4 -");
    BOOST_TEST((profile(name).of(C::powerSize).minus ==
                Bands{Limit{3.5, false}, Limit{6.0, false}, {}})); // as distance
    BOOST_TEST(bandsOf(name, C::horizontalPrism) == "1 1.5 -");
    BOOST_TEST(bandsOf(name, C::verticalPrism) == "0.5 - -");
    BOOST_TEST(bandsOf(name, C::centres) == "- - - shown");
}

BOOST_AUTO_TEST_CASE(the_three_share_what_does_not_depend_on_age_and_purpose, *utf::label("DER"))
{
    for (const char* name : {"school", "adult-distance", "adult-near"})
        BOOST_TEST_CONTEXT(name)
        {
            BOOST_TEST(bandsOf(name, C::readingLevel) == "1 1.5 - never fails");
            BOOST_TEST(bandsOf(name, C::suppliedCylinder) == "0.25 - -");
            BOOST_TEST(bandsOf(name, C::axisTurn) == "- - - never fails");
            BOOST_TEST((profile(name).of(C::axisTurn).byCylinder ==
                        std::vector<CylinderStep>{{0.999, 20}, {99, 10}}));
            BOOST_TEST(bandsOf(name, C::frameSize) == "0 - - never fails");
            BOOST_TEST(bandsOf(name, C::nearBlur) == "0.5 - 0.75");
            BOOST_TEST(bandsOf(name, C::nearTooPlus) == "0.25 0.5 -");
            BOOST_TEST(bandsOf(name, C::nearTooMinus) == "0.5 0.75 -");
            // one line where lines are printed: 6/9 to 6/12 is log10(12 / 9) = 0.125 logMAR
            BOOST_TEST(bandsOf(name, C::meanSphereAcuity) == "0.13 - -");
            BOOST_TEST(bandsOf(name, C::trialAcuity) == "0 - -");
            for (const C audit : {C::sphereError, C::cylinderError, C::axisError})
                BOOST_TEST(!profile(name).of(audit).judged);
        }
}

BOOST_AUTO_TEST_CASE(strict_is_the_audit_indicator_and_nothing_else,
                     *utf::label("REF") * utf::description("Lee et al., Optom Vis Sci 2021;98:24-31"))
{
    BOOST_TEST(bandsOf("strict", C::sphereError) == "0.5 - -");
    BOOST_TEST(bandsOf("strict", C::cylinderError) == "0.5 - -");
    BOOST_TEST(bandsOf("strict", C::horizontalPrism) == "<1 - -");
    BOOST_TEST(bandsOf("strict", C::verticalPrism) == "<0.5 - -");
    std::vector<double> degrees;
    for (const auto& step : profile("strict").of(C::axisError).byCylinder)
        degrees.push_back(step.fits);
    BOOST_TEST(degrees == (std::vector<double>{7, 5, 2}), boost::test_tools::per_element());
    int judged = 0;
    for (const auto& rule : profile("strict").criteria)
        judged += rule.judged ? 1 : 0;
    BOOST_TEST(judged == 5);
}

BOOST_AUTO_TEST_CASE(school_guideline_is_school_without_wider_centres_and_trials, *utf::label("DER"))
{
    for (const auto& info : criterionTable()) {
        const auto& rule = profile("school-guideline").of(info.criterion);
        BOOST_TEST_CONTEXT(info.key)
        {
            BOOST_TEST(!rule.bands.trial.has_value());
            if (info.criterion != C::centres && info.criterion != C::blur && info.criterion != C::nearBlur)
                BOOST_TEST((rule == profile("school").of(info.criterion)));
        }
    }
    BOOST_TEST(bandsOf("school-guideline", C::centres) == "2 - -");
    BOOST_TEST(!profile("school-guideline").of(C::centres).needsPrismUnder.has_value());
    BOOST_TEST(bandsOf("school-guideline", C::blur) == "0.5 - -");
    BOOST_TEST(bandsOf("school-guideline", C::nearBlur) == "0.5 - -");
}

BOOST_AUTO_TEST_CASE(the_settings_are_those_of_the_model, *utf::label("DER"))
{
    BOOST_TEST((defaultRules().settings == Settings{}));
    BOOST_TEST(defaultRules().settings.stockVertex == 12.0);
}

BOOST_AUTO_TEST_SUITE_END()
