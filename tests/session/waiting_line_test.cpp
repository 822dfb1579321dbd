// SPDX-License-Identifier: GPL-3.0-or-later
// A line that changes: people arrive, are told, leave; planning again takes nothing back.
#define BOOST_TEST_MODULE waiting_line
#include <boost/test/unit_test.hpp>

#include "app/session/waiting_line.hpp"
#include "core/planning/draw.hpp"
#include "tests/session/people.hpp"

#include <map>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

PersonRecord readerNamed(const std::string& code, double addition)
{
    auto person = reader("0.00", "0.00", addition);
    person.person = code;
    return person;
}

StockLine pairs(const std::string& name, double power, int onHand)
{
    auto line = pairOf(name, power, 60.0);
    line.onHand = onHand;
    return line;
}

/// FIRST could wear both lines and prefers A, ONLY can wear A alone.
struct Two {
    WaitingLine line{{pairs("A", 2.0, 1), pairs("B", 1.75, 1)}, defaultRules()};
    Two()
    {
        line.add(readerNamed("FIRST", 2.0));
        line.add(readerNamed("ONLY", 2.5));
    }
};

const Assignment& of(const LineAnswer& answer, const std::string& person)
{
    const auto found = std::find_if(answer.assignments.begin(), answer.assignments.end(),
                                    [&](const Assignment& one) { return one.person == person; });
    BOOST_REQUIRE(found != answer.assignments.end());
    return *found;
}

std::string lineOf(const WaitingLine& line, const Assignment& given)
{
    return line.stock()[given.parts.front().line].name;
}

std::string codeOf(const std::function<void()>& work)
{
    try {
        work();
    } catch (const Error& error) {
        return error.finding().code;
    }
    return "no error";
}

/// Quarter-dioptre readers and distance wearers over ready-made lines, lenses and frames.
std::vector<StockLine> mixedBox(int pairLines, int lensLines, int frameLines, int each)
{
    std::vector<StockLine> stock;
    for (int i = 0; i < pairLines; ++i) {
        stock.push_back(pairOf("P" + std::to_string(i), -5.0 + 0.25 * (i % 40), 58.0 + 2.0 * (i / 40 % 5)));
        stock.back().onHand = each;
    }
    for (int i = 0; i < lensLines; ++i) {
        stock.push_back(lensOf("L" + std::to_string(i), "0.00"));
        const auto power = sphereOf(-6.0 + 0.25 * i);
        stock.back().power = {power, power};
        stock.back().onHand = 2 * each;
    }
    for (int i = 0; i < frameLines; ++i) {
        stock.push_back(frameOf("F" + std::to_string(i), 56.0 + i));
        stock.back().onHand = 2 * each;
    }
    return stock;
}

std::vector<PersonRecord> mixedPeople(int count)
{
    std::vector<PersonRecord> people;
    Draw draw(31);
    for (int i = 0; i < count; ++i) {
        const auto quarters = static_cast<double>(draw.below(32));
        const double other = static_cast<double>(draw.below(7)) - 3.0;
        auto person = someone("0.00", "0.00", 20.0 + static_cast<double>(draw.below(40)));
        person.eyes.right.final.power = sphereOf(-5.0 + 0.25 * quarters);
        person.eyes.left.final.power = sphereOf(-5.0 + 0.25 * (quarters + other));
        person.vertexMm = 12.0;
        person.distancePd = 57.0 + static_cast<double>(draw.below(10));
        person.person = "Q" + std::to_string(i);
        people.push_back(std::move(person));
    }
    return people;
}

} // namespace

BOOST_AUTO_TEST_CASE(who_can_use_nothing_else_gets_the_pair_and_the_other_is_told_why, *utf::label("DER"))
{
    const Two two;
    const auto plan = two.line.plan();
    BOOST_TEST(plan.people == 2);
    BOOST_TEST(plan.served == 2);
    BOOST_TEST(plan.servedFirstCome == 1);
    BOOST_TEST(lineOf(two.line, of(plan, "ONLY")) == "A");
    const auto& first = of(plan, "FIRST");
    BOOST_TEST(lineOf(two.line, first) == "B");
    BOOST_TEST((first.why == WhyThisPair::neededMore));
    BOOST_TEST(first.goesTo == "ONLY");
    BOOST_TEST(first.moreLossLogMar > 0.0);
    BOOST_TEST((first.sentence.arguments == std::vector<std::string>{"A", "ONLY"}));
    BOOST_TEST((of(plan, "ONLY").why == WhyThisPair::best));
}

BOOST_AUTO_TEST_CASE(what_was_told_is_not_taken_back_by_whoever_arrives, *utf::label("PROP"))
{
    WaitingLine line({pairs("A", 2.0, 1), pairs("B", 1.75, 1)}, defaultRules());
    line.add(readerNamed("FIRST", 2.0));
    const auto before = line.plan();
    BOOST_TEST(lineOf(line, of(before, "FIRST")) == "A");
    line.tell(of(before, "FIRST"));
    line.add(readerNamed("ONLY", 2.5));
    const auto plan = line.plan();
    BOOST_TEST(lineOf(line, of(plan, "FIRST")) == "A");
    BOOST_TEST(of(plan, "FIRST").told);
    BOOST_TEST((of(plan, "FIRST").why == WhyThisPair::told));
    BOOST_REQUIRE(plan.unserved.size() == 1U);
    BOOST_TEST(plan.unserved[0].reasonKey == "others_served");
    BOOST_TEST((plan.unserved[0].goesTo == std::vector<std::string>{"FIRST"}));
    BOOST_TEST(line.takeBack("FIRST", Purpose::near)); // by a person
    BOOST_TEST(line.plan().served == 2);
    BOOST_TEST(!line.takeBack("FIRST", Purpose::near));
}

BOOST_AUTO_TEST_CASE(a_pair_picked_by_hand_needs_a_reason_and_stays, *utf::label("DER"))
{
    Two two;
    auto& line = two.line;
    const std::vector<Part> a{{0, PartSide::pair}};
    BOOST_TEST(codeOf([&] { line.choose("FIRST", Purpose::near, a, " "); }) == "reason-missing");
    BOOST_TEST(codeOf([&] { line.choose("NOBODY", Purpose::near, a, "asked"); }) == "told-unknown");
    BOOST_TEST(codeOf([&] { line.choose("FIRST", Purpose::distance, a, "asked"); }) == "told-unknown");
    BOOST_TEST(codeOf([&] {
                   line.choose("FIRST", Purpose::near, {{0, PartSide::pair}, {1, PartSide::pair}}, "asked");
               }) == "not-a-pair");
    BOOST_TEST(codeOf([&] {
                   line.choose("FIRST", Purpose::near, {{7, PartSide::pair}}, "asked");
               }) == "unknown-line");
    line.choose("FIRST", Purpose::near, a, "reads small print");
    BOOST_TEST(codeOf([&] { line.choose("ONLY", Purpose::near, a, "asked"); }) == "none-left");
    const auto plan = line.plan();
    BOOST_TEST(lineOf(line, of(plan, "FIRST")) == "A");
    BOOST_TEST((of(plan, "FIRST").why == WhyThisPair::byHand));
    BOOST_TEST(of(plan, "FIRST").reason == "reads small print");
    BOOST_TEST(plan.served == 1);
}

BOOST_AUTO_TEST_CASE(who_leaves_gives_the_pair_free_and_who_was_served_takes_it_along, *utf::label("DER"))
{
    Two two;
    auto& line = two.line;
    line.tell(of(line.plan(), "ONLY"));
    BOOST_TEST(line.remove("ONLY"));
    BOOST_TEST(!line.remove("ONLY"));
    BOOST_TEST(line.people() == 1U);
    BOOST_TEST(lineOf(line, of(line.plan(), "FIRST")) == "A");
    line.setStock({pairs("A", 2.0, 0), pairs("B", 1.75, 1)}); // handed over
    BOOST_TEST(lineOf(line, of(line.plan(), "FIRST")) == "B");
    BOOST_TEST((of(line.plan(), "FIRST").why == WhyThisPair::best));
    line.setStock({pairs("A", 2.0, 0), pairs("B", 1.75, 0)});
    BOOST_REQUIRE(line.plan().unserved.size() == 1U);
    BOOST_TEST(line.plan().unserved[0].reasonKey == "stock_out");
    line.setStock({pairs("A", 2.0, 1), pairs("B", 1.75, 0)}); // a delivery
    BOOST_TEST(lineOf(line, of(line.plan(), "FIRST")) == "A");
}

BOOST_AUTO_TEST_CASE(a_promise_whose_pair_has_gone_is_told_and_not_forgotten, *utf::label("DER"))
{
    Two two;
    auto& line = two.line;
    line.tell(of(line.plan(), "ONLY"));
    line.setStock({pairs("A", 2.0, 0), pairs("B", 1.75, 1)});
    BOOST_TEST(of(line.plan(), "ONLY").noneLeft);
    BOOST_TEST(of(line.plan(), "ONLY").told);
    line.setStock({pairs("B", 1.75, 1)}); // the line was struck off
    BOOST_TEST(of(line.plan(), "ONLY").noneLeft);
    line.setStock({pairs("B", 1.75, 1), pairs("A", 2.0, 1)}); // back, at another place
    const auto plan = line.plan();
    BOOST_TEST(!of(plan, "ONLY").noneLeft);
    BOOST_TEST(lineOf(line, of(plan, "ONLY")) == "A");
    BOOST_TEST(line.told().size() == 1U);
}

BOOST_AUTO_TEST_CASE(a_record_typed_again_keeps_its_place_and_its_promise, *utf::label("DER"))
{
    Two two;
    auto& line = two.line;
    line.tell(of(line.plan(), "FIRST"));
    auto changed = readerNamed("FIRST", 2.0);
    changed.eyes.right.addition.reset(); // incomplete now, and not in the line by itself
    changed.eyes.left.addition.reset();
    line.add(changed);
    BOOST_TEST(line.people() == 2U);
    const auto plan = line.plan();
    BOOST_TEST(lineOf(line, of(plan, "FIRST")) == "B");
    BOOST_TEST(of(plan, "FIRST").told);
    BOOST_TEST(plan.others.empty());
    line.takeBack("FIRST", Purpose::near);
    BOOST_TEST(line.plan().others.size() == 1U);
}

BOOST_AUTO_TEST_CASE(promises_are_read_back_after_a_restart, *utf::label("PROP"))
{
    Two two;
    two.line.tell(of(two.line.plan(), "FIRST"));
    auto list = two.line.told();
    list.push_back({"GONE", Purpose::near, {"A"}, {}});
    list.push_back({"ONLY", Purpose::near, {"NO-SUCH-LINE"}, {}});
    Two again;
    BOOST_TEST(again.line.restore(list).size() == 2U);
    BOOST_TEST(of(again.line.plan(), "FIRST").told);
}

BOOST_AUTO_TEST_CASE(a_set_of_two_leaves_one_purpose_at_a_time, *utf::label("DER"))
{
    WaitingLine line({pairs("A", 2.0, 2), pairs("M", -2.0, 2)}, defaultRules());
    auto both = reader("-2.00", "-2.00", 2.0);
    both.person = "SET";
    both.purpose = Purpose::both;
    both.distancePd = 60.0;
    line.add(both);
    BOOST_TEST(line.plan().people + static_cast<int>(line.plan().others.size()) == 2);
    BOOST_TEST(line.remove("SET", Purpose::distance));
    BOOST_TEST(line.plan().people + static_cast<int>(line.plan().others.size()) == 1);
    BOOST_TEST(line.remove("SET"));
    BOOST_TEST(line.people() == 0U);
}

BOOST_AUTO_TEST_CASE(a_day_of_changes_never_gives_a_piece_twice_and_never_moves_who_was_told,
                     *utf::label("PROP") * utf::description("600 changes, seed 12"))
{
    WaitingLine line(mixedBox(30, 12, 3, 1), defaultRules());
    const auto people = mixedPeople(400);
    std::map<std::string, std::vector<std::string>> told;
    const auto names = [&](const Assignment& one) {
        std::vector<std::string> lines;
        for (const auto& part : one.parts)
            lines.push_back(line.stock()[part.line].name);
        return lines;
    };
    Draw draw(12);
    std::size_t next = 0;
    for (int step = 0; step < 600 && next < people.size(); ++step) {
        switch (draw.below(4)) {
        case 0:
        case 1:
            line.add(people[next++]);
            break;
        case 2:
            if (const auto plan = line.plan(); !plan.assignments.empty()) {
                const auto& one = plan.assignments[draw.below(plan.assignments.size())];
                line.tell(one);
                told[one.person] = names(one);
            }
            break;
        default:
            if (next > 0) {
                const auto& leaving = people[draw.below(next)].person;
                line.remove(leaving);
                told.erase(leaving);
            }
        }
        if (step % 20 != 0)
            continue;
        std::vector<int> left;
        for (const auto& one : line.stock())
            left.push_back(one.available());
        const auto plan = line.plan();
        std::size_t found = 0;
        for (const auto& one : plan.assignments) {
            for (const auto& part : one.parts)
                --left[part.line];
            if (const auto kept = told.find(one.person); kept != told.end()) {
                BOOST_TEST((names(one) == kept->second));
                ++found;
            }
        }
        BOOST_TEST(found == told.size());
        BOOST_TEST(std::all_of(left.begin(), left.end(), [](int pieces) { return pieces >= 0; }));
    }
}

BOOST_AUTO_TEST_CASE(a_copy_plans_alone_and_the_version_tells_that_the_line_went_on, *utf::label("PROP"))
{
    Two two;
    const auto copy = two.line;
    BOOST_TEST(copy.version() == two.line.version());
    two.line.remove("ONLY");
    BOOST_TEST(copy.version() != two.line.version());
    BOOST_TEST(copy.plan().served == 2);
    BOOST_TEST(two.line.plan().people == 1);
}

BOOST_AUTO_TEST_CASE(the_plan_of_a_live_line_is_that_of_a_table, *utf::label("PROP"))
{
    const auto stock = mixedBox(20, 10, 3, 1);
    const auto people = mixedPeople(60);
    WaitingLine line(stock, defaultRules());
    line.addAll(people);
    const auto live = line.plan();
    const auto table = assignLine(people, stock, defaultRules(), {});
    BOOST_TEST(live.served == table.served);
    BOOST_TEST(std::abs(live.lossLogMar - table.lossLogMar) < 1e-9);
    BOOST_TEST(live.people == table.people);
}
