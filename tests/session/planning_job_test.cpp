// SPDX-License-Identifier: GPL-3.0-or-later
// Planning as long work: told as it goes, stopped from another thread, the same answer whoever runs it.
#define BOOST_TEST_MODULE planning_job
#include <boost/test/unit_test.hpp>

#include "app/session/pack.hpp"
#include "app/session/simulate.hpp"
#include "core/planning/draw.hpp"
#include "tests/session/people.hpp"

#include <future>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

PackQuestion question(int people, int scenarios)
{
    PackQuestion question;
    std::vector<PersonRecord> persons;
    Draw draw(5);
    for (int i = 0; i < 120; ++i) {
        auto person = reader("0.00", "0.00", 1.0 + 0.25 * static_cast<double>(draw.below(9)));
        person.person = "R" + std::to_string(i);
        person.nearPd = 57.0 + static_cast<double>(draw.below(9));
        persons.push_back(std::move(person));
    }
    question.demand = demandOfTable(persons);
    for (int quarters = 4; quarters <= 12; ++quarters)
        for (const double centres : {58.0, 61.0, 64.0}) {
            auto line =
                pairOf("S" + std::to_string(quarters) + "-" + std::to_string(static_cast<int>(centres)),
                       0.25 * quarters, centres);
            question.supplier.packs.push_back({line.name, {{line.name, 2}}, 2000, 50, {}});
            question.supplier.lines.push_back(std::move(line));
        }
    question.budget = 60000;
    question.people = people;
    question.scenarios = scenarios;
    return question;
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

} // namespace

BOOST_AUTO_TEST_CASE(packing_tells_how_far_it_is_on_the_thread_that_asked, *utf::label("PROP"))
{
    Job job;
    const auto here = std::this_thread::get_id();
    int told = 0;
    bool elsewhere = false;
    bool beyond = false;
    job.done = [&](std::size_t done, std::size_t of) {
        ++told;
        elsewhere = elsewhere || std::this_thread::get_id() != here;
        beyond = beyond || done > of;
    };
    const auto answer = packBoxes({}, defaultRules(), question(60, 20), job);
    BOOST_TEST(told > 10);
    BOOST_TEST(!elsewhere);
    BOOST_TEST(!beyond);
    BOOST_TEST(!answer.order.empty());
    BOOST_TEST(answer.bound >= answer.fittedShare - 1e-9);
}

BOOST_AUTO_TEST_CASE(an_order_says_why_each_pack_is_bought_and_who_goes_without, *utf::label("PROP"))
{
    const auto answer = packBoxes({}, defaultRules(), question(60, 20));
    BOOST_TEST_REQUIRE(!answer.order.empty());
    for (const auto& row : answer.order) {
        BOOST_TEST(row.only <= row.wanted, row.offer);
        BOOST_TEST(row.wanted > 0.0, row.offer);
        BOOST_TEST(row.wanted <= 1.0 + 1e-9, row.offer);
        BOOST_TEST(row.servedMore >= 0.0, row.offer);
        BOOST_TEST(row.onHand == 0, row.offer); // the box is empty
    }
    BOOST_TEST_REQUIRE(!answer.without.empty()); // 30 packs of 2 for 60 people
    double without = 0.0;
    double before = answer.without.front().needs;
    for (const auto& row : answer.without) {
        BOOST_TEST(row.needs <= row.of);
        BOOST_TEST(row.needs <= before);
        BOOST_TEST((row.purpose == Purpose::near));
        before = row.needs;
        without += row.needs;
    }
    BOOST_TEST(without < 60.0 * answer.inLine);
}

BOOST_AUTO_TEST_CASE(packing_on_a_worker_is_stopped_from_outside, *utf::label("PROP"))
{
    std::atomic<bool> stop{false};
    std::atomic<bool> begun{false};
    Job job;
    job.cancelled = &stop;
    job.done = [&](std::size_t, std::size_t) { begun = true; };
    auto work = std::async(std::launch::async, [&] {
        return codeOf([&] { static_cast<void>(packBoxes({}, defaultRules(), question(2000, 400), job)); });
    });
    while (!begun)
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
    stop = true;
    BOOST_TEST(work.get() == "cancelled");
}

BOOST_AUTO_TEST_CASE(a_job_cancelled_before_it_begins_plans_nothing, *utf::label("PROP"))
{
    std::atomic<bool> stop{true};
    Job job;
    job.cancelled = &stop;
    BOOST_TEST(codeOf([&] { static_cast<void>(packBoxes({}, defaultRules(), question(50, 10), job)); }) ==
               "cancelled");
    SimulateQuestion days;
    days.demand = question(50, 10).demand;
    BOOST_TEST(codeOf([&] {
                   static_cast<void>(
                       simulateCamp(std::vector<StockLine>{pairOf("A", 2.0)}, defaultRules(), days, job));
               }) == "cancelled");
}

BOOST_AUTO_TEST_CASE(the_same_question_has_the_same_answer_on_any_thread, *utf::label("PROP"))
{
    const auto here = packBoxes({}, defaultRules(), question(60, 20));
    auto there =
        std::async(std::launch::async, [] { return packBoxes({}, defaultRules(), question(60, 20)); });
    const auto other = there.get();
    BOOST_TEST(here.fittedShare == other.fittedShare);
    BOOST_TEST(here.servedShare == other.servedShare);
    BOOST_TEST(here.bound == other.bound);
    BOOST_TEST(here.order.size() == other.order.size());
}
