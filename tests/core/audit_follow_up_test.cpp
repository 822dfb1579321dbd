// SPDX-License-Identifier: GPL-3.0-or-later
// Who is due to be seen again, and the indicator of effective coverage, case by case.
#include "core/auditing/effective_coverage.hpp"
#include "core/auditing/follow_up.hpp"
#include "core/record/day.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

std::vector<FollowUpDue> dueAfter(int days, const std::vector<SeenAgain>& seen = {})
{
    const std::vector<Wearer> wearers{{"A", 0, "e1", "L", "distance"}};
    return followUpsDue(wearers, seen, days * dayMs);
}

PersonRecord sighted(const char* unaidedRight, const char* unaidedLeft, const char* bestRight,
                     const char* bestLeft)
{
    PersonRecord person;
    const auto put = [](std::optional<Acuity>& acuity, const char* text) {
        if (*text != '\0')
            acuity = parseAcuity(text).value();
    };
    put(person.eyes.right.acuity.unaided, unaidedRight);
    put(person.eyes.left.acuity.unaided, unaidedLeft);
    put(person.eyes.right.acuity.best, bestRight);
    put(person.eyes.left.acuity.best, bestLeft);
    return person;
}

} // namespace

BOOST_AUTO_TEST_SUITE(audit_follow_up)

BOOST_AUTO_TEST_CASE(a_wearer_is_due_in_each_stage_and_in_between_is_not,
                     *utf::label("REF") *
                         utf::description("after some weeks and about six months: school eye health "
                                          "guidelines; three to four months: trial of 2017; the ends "
                                          "of the stages are common practice"))
{
    BOOST_TEST(dueAfter(13).empty());
    BOOST_TEST((dueAfter(14).at(0).state == DueState::soon));
    BOOST_TEST((dueAfter(28).at(0).state == DueState::due));
    BOOST_TEST((dueAfter(60).at(0).state == DueState::late));
    BOOST_TEST(std::string(wordOf(DueState::soon)) == "soon"); // stable, in JSON
    BOOST_TEST(std::string(wordOf(DueState::due)) == "due");
    BOOST_TEST(std::string(wordOf(DueState::late)) == "late");
    BOOST_TEST(dueAfter(71).empty());
    BOOST_TEST(dueAfter(91).at(0).stage == 1U);
    BOOST_TEST(dueAfter(130).empty());
    BOOST_TEST(dueAfter(182).at(0).stage == 2U);
    BOOST_TEST(dueAfter(300).empty());
}

BOOST_AUTO_TEST_CASE(who_was_met_within_a_stage_is_not_due_in_it_again, *utf::label("DER"))
{
    BOOST_TEST(dueAfter(40, {{"A", 30 * dayMs, Wear::worn}}).empty());
    BOOST_TEST(dueAfter(40, {{"A", 30 * dayMs, Wear::notFound}}).size() == 1U); // not met is not seen
    BOOST_TEST(dueAfter(40, {{"A", 3 * dayMs, Wear::worn}}).size() == 1U);      // too early to count
    BOOST_TEST(dueAfter(95, {{"A", 30 * dayMs, Wear::worn}}).size() == 1U);     // the next stage is its own
    BOOST_TEST(dueAfter(40, {{"B", 30 * dayMs, Wear::worn}}).size() == 1U);
}

BOOST_AUTO_TEST_CASE(wear_is_counted_by_the_last_look, *utf::label("DER"))
{
    const std::vector<Wearer> wearers{
        {"A", 0, "", "", ""}, {"B", 0, "", "", ""}, {"C", 0, "", "", ""}, {"D", 0, "", "", ""}};
    const std::vector<SeenAgain> seen{{"A", 30 * dayMs, Wear::worn},
                                      {"A", 100 * dayMs, Wear::lost},
                                      {"B", 30 * dayMs, Wear::withThem},
                                      {"B", 100 * dayMs, Wear::notFound},
                                      {"C", 30 * dayMs, Wear::notFound}};
    const auto count = countWear(wearers, seen);
    BOOST_TEST(count.met == 2);
    BOOST_TEST(count.wearing == 1);
    BOOST_TEST(count.by[static_cast<std::size_t>(Wear::lost)] == 1);
    BOOST_TEST(count.notFound == 1);
    BOOST_TEST(count.notSeen == 1);
}

BOOST_AUTO_TEST_CASE(need_follows_the_definition_of_the_indicator,
                     *utf::label("REF") *
                         utf::description("Global Health Observatory, indicator 3154: better eye, 6/12; "
                                          "met / (met + under-met + unmet), Bourne 2022"))
{
    constexpr double fine = 0.1;
    constexpr double poor = 0.6;
    BOOST_TEST((needOf({goodSight, {}, false, {}, false}) == SightNeed::none)); // 6/12 itself is good
    BOOST_TEST((needOf({fine, {}, false, {}, true}) == SightNeed::met));        // surgery: b
    BOOST_TEST((needOf({poor, fine, true, {}, false}) == SightNeed::met));      // a
    BOOST_TEST((needOf({poor, poor, true, fine, false}) == SightNeed::underMet));
    BOOST_TEST((needOf({poor, {}, false, fine, false}) == SightNeed::unmet));
    BOOST_TEST((needOf({poor, {}, false, poor, false}) == SightNeed::otherCause));
    BOOST_TEST((needOf({poor, poor, true, poor, false}) == SightNeed::otherCause));
    BOOST_TEST((needOf({{}, fine, true, fine, false}) == SightNeed::unknown));
    BOOST_TEST((needOf({poor, {}, true, fine, false}) == SightNeed::unknown));
    BOOST_TEST((needOf({poor, {}, false, {}, false}) == SightNeed::unknown));
    EffectiveCoverage coverage;
    BOOST_TEST(!coverage.share().has_value());
    for (const auto need : {SightNeed::met, SightNeed::met, SightNeed::underMet, SightNeed::unmet,
                            SightNeed::none, SightNeed::otherCause, SightNeed::unknown})
        coverage.add(need);
    BOOST_TEST(*coverage.share() == 0.5); // 2 of 4
}

BOOST_AUTO_TEST_CASE(the_better_eye_decides_and_an_eye_not_measured_may_be_it, *utf::label("DER"))
{
    BOOST_TEST((needOf(sightBefore(sighted("6/60", "6/9", "6/6", "6/6"))) == SightNeed::none));
    BOOST_TEST((needOf(sightBefore(sighted("6/9", "", "", ""))) == SightNeed::none)); // good enough already
    BOOST_TEST((needOf(sightBefore(sighted("6/60", "", "6/6", ""))) == SightNeed::unknown));
    BOOST_TEST((needOf(sightBefore(sighted("6/60", "NPL", "6/9", ""))) == SightNeed::unmet));
    auto oneEyed = sighted("6/60", "", "6/9", "");
    oneEyed.eyes.left.final.state = EyeState::artificial;
    BOOST_TEST((needOf(sightBefore(oneEyed)) == SightNeed::unmet));
    auto wearing = sighted("6/60", "6/60", "6/6", "6/6");
    wearing.eyes.left.acuity.habitual = parseAcuity("6/12").value();
    BOOST_TEST((needOf(sightBefore(wearing)) == SightNeed::met));
    wearing.eyes.left.acuity.habitual = parseAcuity("6/18").value();
    wearing.eyes.right.acuity.habitual = parseAcuity("6/24").value();
    BOOST_TEST((needOf(sightBefore(wearing)) == SightNeed::underMet));
}

BOOST_AUTO_TEST_SUITE_END()
