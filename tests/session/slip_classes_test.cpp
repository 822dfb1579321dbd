// SPDX-License-Identifier: GPL-3.0-or-later
// Which slips stand in one class, which are told apart and by what, and which are not testable. Arithmetic by
// hand: probability = weight over the sum of weights, weight = prior x witnesses x pair.
#define BOOST_TEST_MODULE slip_classes
#include <boost/test/unit_test.hpp>

#include "core/fitting/stock_index.hpp"
#include "inventory/text/audit_file.hpp"
#include "inventory/text/witness_table.hpp"
#include "tests/session/people.hpp"

#include <numeric>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

using S = SlipKind;

const SlipModel& model()
{
    return defaultAuditSettings().slips;
}

/// A box of spheres from -4 to +4 in half dioptres, two bins a dioptre.
const std::vector<StockLine>& box()
{
    static const std::vector<StockLine> lines = [] {
        std::vector<StockLine> made;
        for (int i = -8; i <= 8; ++i)
            if (i != 0) {
                made.push_back(pairOf("P" + std::to_string(i), i * 0.5));
                made.back().bin = "B" + std::to_string(i + 9);
            }
        return made;
    }();
    return lines;
}

JudgedHandOver given(const PersonRecord& person, const std::string& line,
                     std::shared_ptr<const LaterWitness> later = nullptr)
{
    static const StockIndex index{box()};
    HandOverFacts facts;
    facts.entry = "e-" + person.person;
    facts.person = person.person;
    facts.purpose = person.purpose;
    facts.profile = profileFor(person, person.purpose);
    facts.checks = "fit";
    facts.record = person;
    facts.movements = {{line, -1, "pair"}};
    facts.atMs = 1'000'000;
    facts.later = std::move(later);
    for (std::size_t i = 0; i < box().size(); ++i)
        if (box()[i].name == line) {
            const std::vector<Part> parts{{i, PartSide::pair}};
            const auto need = needFor(person, person.purpose, defaultRules().settings);
            facts.supply = supplyOf(parts, box(), need.value(), defaultRules().settings);
        }
    return judgeAgain(std::move(facts), &defaultRules(), {box(), &index}, {});
}

SlipAnswer answerOf(const JudgedHandOver& judged, const LineHistory* lines = nullptr,
                    const EarlierHandOver* earlier = nullptr)
{
    SlipScene scene;
    scene.box = {box(), nullptr};
    scene.settings = &defaultRules().settings;
    scene.lines = lines;
    scene.earlier = earlier;
    return slipOf(judged, scene, model());
}

const SlipClass* classWith(const SlipAnswer& answer, SlipKind kind, std::optional<Eye> eye = {})
{
    for (const auto& group : answer.classes)
        for (const auto& member : group.members)
            if (member.kind == kind && (!eye || member.eye == eye))
                return &group;
    return nullptr;
}

PersonRecord read(const std::string& final, const std::string& objective)
{
    auto person = someone(final, final);
    for (const Eye eye : bothEyes)
        person.eyes.of(eye).objective = eyeOf(objective).final.power;
    return person;
}

/// A count of the line with this difference, later.
Entry countOf(const std::string& line, int difference)
{
    Entry counted;
    counted.kind = EntryKind::counted;
    counted.atMs = 2'000'000;
    counted.movements.push_back({line, difference, ""});
    return counted;
}

std::shared_ptr<const LaterWitness> pairRead(const std::string& power)
{
    auto later = std::make_shared<LaterWitness>();
    for (const Eye eye : bothEyes)
        later->pair.of(eye) = eyeOf(power).final.power;
    return later;
}

} // namespace

BOOST_AUTO_TEST_SUITE(slip_classes)

BOOST_AUTO_TEST_CASE(an_entry_that_says_otherwise_than_it_is_judged_again_is_told, *utf::label("DER"))
{
    const auto told = [](HandOverFacts facts) {
        static const StockIndex index{box()};
        const auto judged = judgeAgain(std::move(facts), &defaultRules(), {box(), &index}, {});
        return std::any_of(judged.findings.begin(), judged.findings.end(), [](const AuditFinding& finding) {
            return finding.kind == AuditClass::verdictDiffers;
        });
    };
    auto facts = given(someone("-2.00", "-2.00"), "P-4").facts; // fits, and costs nothing
    BOOST_TEST(!told(facts));                                   // nothing was stored
    facts.verdict = "fits";
    facts.costThousandths = 0;
    facts.horizontalThousandths = 0;
    BOOST_TEST(!told(facts));
    facts.verdict = "caution";
    BOOST_TEST(told(facts));
    facts.verdict = "fits";
    facts.costThousandths = 1;
    BOOST_TEST(told(facts));
    facts.costThousandths = 0;
    facts.horizontalThousandths = 20;
    BOOST_TEST(told(facts));
}

// An own pair of -2.00 beside a record of +2.00: 4 D are 4.4 spreads of 0.90, the far share of 0.02 at three
// spreads leaves 0.0021 against 6.8 for each eye; twice over, with a prior of 0.0002 for both signs, some
// hundred to one.
BOOST_AUTO_TEST_CASE(an_own_pair_of_the_other_sign_speaks_of_the_sign, *utf::label("DER"))
{
    auto person = someone("+2.00", "+2.00");
    for (const Eye eye : bothEyes)
        person.eyes.of(eye).worn = sphereOf(-2.0);
    const auto answer = answerOf(given(person, "P4"));
    BOOST_TEST(answer.witnessed);
    BOOST_REQUIRE(!answer.classes.empty());
    BOOST_TEST((answer.classes.front().kind() == S::sphereSign));
    BOOST_TEST(answer.classes.front().probability > 0.9);
}

// The card says +2.00 in both eyes: 20 against 0.0027 for each, a fifth of it for +2.00 among what is usual
// at 55, a prior of 0.0002.
BOOST_AUTO_TEST_CASE(an_addition_on_the_card_speaks_of_one_left_out, *utf::label("DER"))
{
    auto later = std::make_shared<LaterWitness>();
    later->addition = {Dioptres{2.0}, Dioptres{2.0}};
    const auto answer = answerOf(given(someone("-2.00", "-2.00", 55.0), "P-4", later));
    BOOST_TEST(answer.additionWitnessed);
    BOOST_REQUIRE(!answer.classes.empty());
    BOOST_TEST((answer.classes.front().kind() == S::additionLeftOut));
    BOOST_TEST(answer.classes.front().probability > 0.9);
}

// 32 + 32 beside a PD of 60: 4 mm are 4.7 spreads of 0.85; 60 at 400 mm is 64 far away. 1.15 against 0.0023
// with the prior of 0.0003 is worth a look, and no more.
BOOST_AUTO_TEST_CASE(the_pd_of_each_eye_speaks_of_that_of_both, *utf::label("DER"))
{
    auto person = someone("-2.00", "-2.00");
    person.distancePd = 60.0;
    person.eyes.right.monocularPd = person.eyes.left.monocularPd = 32.0;
    const auto answer = answerOf(given(person, "P-4"));
    BOOST_TEST(answer.pdWitnessed);
    const auto* near = classWith(answer, S::nearPdAsDistance);
    BOOST_REQUIRE(near != nullptr);
    BOOST_TEST(near->probability > 0.05);
    BOOST_TEST(near->probability < 0.4);
}

BOOST_AUTO_TEST_CASE(of_one_seeing_eye_only_that_eye_is_asked, *utf::label("PROP"))
{
    auto person = someone("balance", "+2.00");
    person.eyes.left.objective = sphereOf(-2.0);
    const auto far = answerOf(given(person, "P4"));
    BOOST_REQUIRE(classWith(far, S::sphereSign, Eye::left) != nullptr);
    BOOST_TEST((far.classes.front().kind() == S::sphereSign));
    for (const auto& group : far.classes)
        for (const auto& member : group.members)
            BOOST_TEST((member.kind == S::otherEntry || member.eye != Eye::right));
    auto nearby = reader("balance", "+1.00", 2.0);
    nearby.wornAddition = Dioptres{2.0};
    nearby.eyes.left.acuity.best = parseAcuity("6/6").value();
    nearby.nearBest = parseNearAcuity("N6").value();
    const auto near = answerOf(given(nearby, "P4")); // a pair outside the limits of +3.00
    BOOST_TEST(near.additionWitnessed);
    BOOST_TEST(!near.classes.empty());
}

BOOST_AUTO_TEST_CASE(a_transposition_without_the_axis_is_an_axis_off_by_ninety, *utf::label("DER"))
{
    // -1.00 -1.50 x 180 recorded: its half transposition -2.50 +1.50 x 180 is -1.00 -1.50 x 90
    const auto answer = answerOf(given(read("-1.00 -1.50 x 180", "-1.00 -1.50 x 90"), "P-4"));
    const auto* group = classWith(answer, S::axisTurned90);
    BOOST_TEST_REQUIRE((group != nullptr));
    BOOST_TEST((group == classWith(answer, S::halfTranspositionUnturned)));
    BOOST_TEST((group == &answer.classes.front()));
    BOOST_TEST(group->probability > 0.9);
}

BOOST_AUTO_TEST_CASE(a_mirrored_axis_is_the_other_eye_where_the_two_are_mirror_images, *utf::label("DER"))
{
    auto person = someone("-1.00 -1.50 x 30", "-1.00 -1.50 x 150");
    person.eyes.right.objective = eyeOf("-1.00 -1.50 x 150").final.power;
    person.eyes.left.objective = eyeOf("-1.00 -1.50 x 30").final.power;
    const auto answer = answerOf(given(person, "P-4"));
    const auto* group = classWith(answer, S::eyesSwapped);
    BOOST_TEST_REQUIRE((group != nullptr));
    BOOST_TEST(std::any_of(group->members.begin(), group->members.end(),
                           [](const SlipMember& member) { return member.kind == S::axisMirrored; }));
}

BOOST_AUTO_TEST_CASE(the_addition_left_out_is_the_distance_pair_given_for_near, *utf::label("DER"))
{
    const auto answer = answerOf(given(reader("-2.00", "-2.00", 2.5), "P-4"));
    const auto* group = classWith(answer, S::otherPurpose);
    BOOST_TEST_REQUIRE((group != nullptr));
    BOOST_TEST((group == classWith(answer, S::additionLeftOut)));
    BOOST_TEST((answer.told(model()) == group));
}

BOOST_AUTO_TEST_CASE(the_addition_taken_as_the_near_power_is_a_reader_of_it, *utf::label("DER"))
{
    // -2.00 add +2.50 needs +0.50 for near; +2.50 was given
    const auto answer = answerOf(given(reader("-2.00", "-2.00", 2.5), "P5"));
    BOOST_TEST_REQUIRE((answer.told(model()) != nullptr));
    BOOST_TEST((answer.told(model())->kind() == S::additionAsNearPower));
}

BOOST_AUTO_TEST_CASE(without_a_witness_no_slip_of_the_record_is_looked_for, *utf::label("PROP"))
{
    const auto answer = answerOf(given(someone("-2.00", "-2.00"), "P-2")); // 1.00 D off, no reason
    BOOST_TEST(!answer.witnessed);
    BOOST_TEST(!answer.additionWitnessed);
    BOOST_TEST(!answer.pdWitnessed);
    for (const auto& group : answer.classes)
        for (const auto& member : group.members)
            BOOST_TEST(!infoOf(member.kind).entry);
}

BOOST_AUTO_TEST_CASE(another_line_scanned_stands_with_other_picks_until_counts_tell_them_apart,
                     *utf::label("DER"))
{
    const auto judged = given(someone("-2.00", "-2.00"), "P-2");
    const auto alone = answerOf(judged);
    BOOST_TEST((classWith(alone, S::otherLineScanned) == classWith(alone, S::otherPick)));
    LineHistory lines;
    lines.take(countOf("P-2", 1));
    lines.take(countOf("P-4", -1));
    const auto counted = answerOf(judged, &lines);
    const auto* group = classWith(counted, S::otherLineScanned);
    BOOST_TEST_REQUIRE((group != nullptr));
    BOOST_TEST((group != classWith(counted, S::otherPick)));
    BOOST_TEST((group == counted.told(model())));
    // twice P(difference | slip) over P(difference | none): (0.85 / 0.025)^2 = 1156
    BOOST_TEST(group->members.front().witnesses == 1156.0, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(one_pair_recorded_twice_is_told_from_a_second_pair_by_the_count, *utf::label("DER"))
{
    const auto judged = given(someone("-2.00", "-2.00"), "P-4");
    const EarlierHandOver earlier{"e-0", 900'000, judged.facts.movements};
    const auto alone = answerOf(judged, nullptr, &earlier);
    BOOST_TEST_REQUIRE((classWith(alone, S::recordedTwice) != nullptr));
    // 0.001 / 0.003 = 0.333 against the null, whose weight is what the other priors leave
    const double null = model().priorOf(S::none);
    BOOST_TEST(classWith(alone, S::recordedTwice)->probability == (1.0 / 3.0) / (1.0 / 3.0 + null),
               boost::test_tools::tolerance(1e-9));
    BOOST_TEST((alone.told(model()) == nullptr));
    LineHistory lines;
    lines.take(countOf("P-4", 1));
    BOOST_TEST_REQUIRE((answerOf(judged, &lines, &earlier).told(model()) != nullptr));
    LineHistory agreed;
    agreed.take(countOf("P-4", 0));
    BOOST_TEST((answerOf(judged, &agreed, &earlier).told(model()) == nullptr));
}

BOOST_AUTO_TEST_CASE(a_reading_of_another_line_names_a_piece_in_the_wrong_bin, *utf::label("DER"))
{
    const auto person = someone("-2.00", "-2.00");
    LineHistory lines;
    Entry back;
    back.kind = EntryKind::returned;
    back.atMs = 500'000;
    back.movements.push_back({"P2", 1, "pair"});
    lines.take(back);
    const auto answer = answerOf(given(person, "P-4", pairRead("+1.00")), &lines);
    BOOST_TEST_REQUIRE((answer.told(model()) != nullptr));
    BOOST_TEST((answer.told(model())->kind() == S::returnedWrongBin));
    BOOST_TEST(answer.told(model())->detail.arguments[0] == "P2");
    const auto off = answerOf(given(person, "P-4", pairRead("-2.75")), &lines); // of no line
    BOOST_TEST_REQUIRE((off.told(model()) != nullptr));
    BOOST_TEST((off.told(model())->kind() == S::lineOffLabel));
    BOOST_TEST(answerOf(given(person, "P-4", pairRead("-2.00")), &lines).classes.empty());
}

BOOST_AUTO_TEST_CASE(half_a_pd_and_a_near_pd_are_told_by_the_pd_beside_them, *utf::label("DER"))
{
    auto person = someone("-0.50", "-0.50");
    person.distancePd = 31.0; // nobody's: 8.4 standard deviations below the mean of adults
    const auto half = answerOf(given(person, "P-1"));
    BOOST_TEST(half.pdWitnessed);
    BOOST_TEST_REQUIRE((half.told(model()) != nullptr));
    BOOST_TEST((half.told(model())->kind() == S::monocularPd));
    person.distancePd = 60.0; // 64 mm x 400 / 427 = 59.95
    person.nearPd = 60.0;
    const auto near = answerOf(given(person, "P-1"));
    BOOST_TEST_REQUIRE((classWith(near, S::nearPdAsDistance) != nullptr));
    BOOST_TEST(classWith(near, S::nearPdAsDistance)->members.front().witnesses > 50.0);
    person.nearPd = 56.0; // 60 x 400 / 427 = 56.2
    BOOST_TEST((classWith(answerOf(given(person, "P-1")), S::nearPdAsDistance) == nullptr));
}

BOOST_AUTO_TEST_CASE(probabilities_are_weights_over_their_sum, *utf::label("PROP"))
{
    const auto answer = answerOf(given(read("-2.00 -1.00 x 20", "+2.00 -1.00 x 20"), "P-5"));
    BOOST_TEST_REQUIRE(!answer.classes.empty());
    double sum = 0.0;
    double weights = 0.0;
    for (const auto& group : answer.classes) {
        sum += group.probability;
        for (const auto& member : group.members)
            weights += member.weight();
    }
    BOOST_TEST(sum == 1.0, boost::test_tools::tolerance(1e-12));
    for (const auto& group : answer.classes) {
        const double its =
            std::accumulate(group.members.begin(), group.members.end(), 0.0,
                            [](double all, const SlipMember& member) { return all + member.weight(); });
        BOOST_TEST(std::abs(group.probability - its / weights) < 1e-12);
    }
}

BOOST_AUTO_TEST_CASE(on_trial_without_acuity_is_told_and_with_it_not, *utf::label("PROP"))
{
    const auto person = someone("-1.00 -1.25 x 90", "-1.00 -1.25 x 90"); // 0.63 D of blur is left
    const auto told = [](const JudgedHandOver& judged) {
        return std::any_of(judged.findings.begin(), judged.findings.end(), [](const AuditFinding& finding) {
            return finding.kind == AuditClass::onTrialWithoutAcuity;
        });
    };
    const auto judged = given(person, "P-3");
    BOOST_TEST_REQUIRE((judged.fit->band == Band::onTrial));
    BOOST_TEST(told(judged));
    BOOST_TEST(!told(given(someone("-1.50", "-1.50"), "P-3")));
}

BOOST_AUTO_TEST_CASE(rules_that_are_missing_are_named_by_their_hash, *utf::label("PROP"))
{
    HandOverFacts facts;
    facts.rulesHash = "0123abcd";
    facts.profile = "adult-distance";
    facts.checks = "fit";
    facts.record = someone("-2.00", "-2.00");
    facts.supply = Supply{};
    const auto judged = judgeAgain(std::move(facts), nullptr, {}, {});
    BOOST_TEST_REQUIRE(judged.findings.size() == 1u);
    BOOST_TEST((judged.findings[0].kind == AuditClass::rulesMissing));
    BOOST_TEST(judged.findings[0].detail.arguments[0] == "0123abcd");
    BOOST_TEST(!judged.fit);
}

BOOST_AUTO_TEST_CASE(what_was_read_again_is_read_as_a_prescription_is, *utf::label("PROP"))
{
    const auto read =
        readWitnessText("entry,right,add,pd_mm,pair_left\na,-1.00 -0.50 x 90,+2.00,62,-1.12\nb,,,,\n", "w");
    BOOST_TEST_REQUIRE(read.findings.empty());
    const auto& a = *read.value.at("a");
    BOOST_TEST(a.final.right->cylinder.value() == -0.5);
    BOOST_TEST(!a.final.left);
    BOOST_TEST(a.addition.left->value() == 2.0);
    BOOST_TEST(*a.distancePd == 62.0);
    BOOST_TEST(a.pair.left->sphere.value() == -1.125); // written short for an eighth
    BOOST_TEST(!read.value.at("b")->pair.left);
    const auto codes = [](const std::string& text) {
        std::vector<std::string> found;
        for (const auto& finding : readWitnessText(text, "w").findings)
            found.push_back(finding.code);
        return found;
    };
    BOOST_TEST(codes("entry,right\n,-1.00\n") == std::vector<std::string>{"witness-entry"},
               boost::test_tools::per_element());
    BOOST_TEST(codes("entry,right\na,-1.00\na,-2.00\n") == std::vector<std::string>{"witness-twice"},
               boost::test_tools::per_element());
    BOOST_TEST(codes("right\n-1.00\n") == std::vector<std::string>{"column-missing"},
               boost::test_tools::per_element());
    BOOST_TEST(codes("entry,right,right\na,,\n") == std::vector<std::string>{"column-twice"},
               boost::test_tools::per_element());
    BOOST_TEST(codes("") == std::vector<std::string>{"table-empty"}, boost::test_tools::per_element());
    BOOST_TEST(codes("entry,right\na\n") == std::vector<std::string>{"row-short"},
               boost::test_tools::per_element());
    BOOST_TEST(!readWitnessText("entry,right\na,-1.00 x\n", "w").usable());
}

BOOST_AUTO_TEST_SUITE_END()
