// SPDX-License-Identifier: GPL-3.0-or-later
// Long work is told, can be stopped, and leaves the event loop alone; and the watch over the loop sees what
// it is there to see.
#include "app/desk/lasting/frame_watch.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "tests/desk/given_camp.hpp"

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <thread>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
constexpr auto aBlink = std::chrono::milliseconds(5);

/// Steps until it is stopped.
void goOn(const Job& job)
{
    for (std::size_t step = 0; !job.stopped(); ++step) {
        job.done(step % 100, 100);
        std::this_thread::sleep_for(aBlink);
    }
}
} // namespace

BOOST_AUTO_TEST_SUITE(long_work)

BOOST_AUTO_TEST_CASE(work_tells_how_far_it_is_and_ends_with_its_result, *utf::label("PROP"))
{
    LongWork work;
    const auto result = std::make_shared<int>(0);
    bool ended = false;
    work.start(
        QStringLiteral("Counting"),
        [result](const Job& job) {
            for (std::size_t step = 1; step <= 60 && !job.stopped(); ++step) {
                job.done(step, 60);
                std::this_thread::sleep_for(aBlink);
                ++*result;
            }
        },
        [&](const std::exception_ptr& problem, bool stopped) { ended = !problem && !stopped; });
    BOOST_TEST(work.isHidden()); // nothing flickers
    BOOST_TEST(QTest::qWaitFor([&] { return work.isVisible(); }, 5000));
    auto& bar = named<QProgressBar>(work, "workProgress");
    BOOST_TEST(QTest::qWaitFor([&] { return bar.maximum() == 60 && bar.value() > 0; }, 5000));
    BOOST_TEST(QTest::qWaitFor([&] { return ended; }, 5000));
    BOOST_TEST(*result == 60);
    BOOST_TEST(work.isHidden());
    BOOST_TEST(!work.running());
}

BOOST_AUTO_TEST_CASE(work_that_is_stopped_says_so, *utf::label("PROP"))
{
    LongWork work;
    bool stoppedTold = false;
    work.start(QStringLiteral("Going on"), goOn,
               [&](const std::exception_ptr&, bool stopped) { stoppedTold = stopped; });
    named<QPushButton>(work, "stopWorkButton").click();
    BOOST_TEST(QTest::qWaitFor([&] { return stoppedTold; }, 5000));
}

BOOST_AUTO_TEST_CASE(what_work_throws_arrives_where_it_was_asked_for, *utf::label("PROP"))
{
    LongWork work;
    std::string code;
    work.start(
        QStringLiteral("Failing"),
        [](const Job&) {
            throw errorSaying("ledger-full", {"full", {}}, 4);
        },
        [&](const std::exception_ptr& problem, bool) {
            try {
                std::rethrow_exception(problem);
            } catch (const Error& told) {
                code = told.finding().code;
            }
        });
    BOOST_TEST(QTest::qWaitFor([&] { return !code.empty(); }, 5000));
    BOOST_TEST(code == "ledger-full");
}

BOOST_AUTO_TEST_CASE(a_window_that_goes_stops_its_work_and_waits_for_it, *utf::label("PROP"))
{
    const auto atWork = std::make_shared<std::atomic<bool>>(true);
    const auto begun = std::make_shared<std::atomic<bool>>(false);
    {
        LongWork work;
        work.start(QStringLiteral("Going on"),
                   [atWork](const Job& job) {
                       goOn(job);
                       *atWork = false;
                   },
                   {});
        work.start(QStringLiteral("Waiting"), [begun](const Job&) { *begun = true; }, {});
    }
    BOOST_TEST(!*atWork);
    BOOST_TEST(!*begun);
}

BOOST_AUTO_TEST_CASE(work_asked_for_meanwhile_is_named_waits_its_turn_and_is_done, *utf::label("PROP"))
{
    LongWork work;
    std::vector<std::string> ended; // in this thread
    const auto ends = [&ended](const char* name) {
        return [&ended, name](const std::exception_ptr& problem, bool stopped) {
            ended.emplace_back(std::string(name) + (problem ? " failed" : stopped ? " stopped" : ""));
        };
    };
    const auto atOnce = std::make_shared<std::atomic<int>>(0);
    const auto most = std::make_shared<std::atomic<int>>(0);
    const auto briefly = [atOnce, most](const Job&) {
        *most = std::max(most->load(), ++*atOnce);
        std::this_thread::sleep_for(aBlink);
        --*atOnce;
    };
    work.start(QStringLiteral("First…"), goOn, ends("first"));
    work.start(QStringLiteral("Second…"), briefly, [&](const std::exception_ptr&, bool) {
        ended.emplace_back("second");
        work.start(QStringLiteral("Fourth…"), briefly, ends("fourth")); // asked for where another one ends
    });
    work.start(QStringLiteral("Third…"), briefly, ends("third"));
    const auto& next = named<QLabel>(work, "workNext");
    BOOST_TEST(QTest::qWaitFor([&] { return next.isVisible(); }, 5000));
    BOOST_TEST(next.text().contains(QStringLiteral("Second…")));
    BOOST_TEST(next.text().contains(QStringLiteral("Third…")));
    named<QPushButton>(work, "stopWorkButton").click(); // that one alone
    BOOST_TEST(QTest::qWaitFor([&] { return ended.size() == 4; }, 5000));
    BOOST_TEST(ended == (std::vector<std::string>{"first stopped", "second", "third", "fourth"}),
               boost::test_tools::per_element());
    BOOST_TEST(*most == 1);
    BOOST_TEST(!work.running());
    BOOST_TEST(work.isHidden());
    BOOST_TEST(next.isHidden());
}

BOOST_AUTO_TEST_CASE(work_that_waits_can_be_stopped_before_it_begins, *utf::label("PROP"))
{
    LongWork work;
    const auto begun = std::make_shared<std::atomic<bool>>(false);
    bool firstEnded = false;
    bool stoppedTold = false;
    const auto first = work.start(QStringLiteral("First…"), goOn,
                                  [&](const std::exception_ptr&, bool) { firstEnded = true; });
    const auto second = work.start(
        QStringLiteral("Second…"), [begun](const Job&) { *begun = true; },
        [&](const std::exception_ptr& problem, bool stopped) { stoppedTold = !problem && stopped; });
    work.stop(second);
    BOOST_TEST(!stoppedTold); // not within the question
    BOOST_TEST(QTest::qWaitFor([&] { return stoppedTold; }, 5000));
    BOOST_TEST(!firstEnded); // goes on
    BOOST_TEST(named<QLabel>(work, "workNext").isHidden());
    work.stop(second); // is no more: nothing happens
    work.stop(first);
    BOOST_TEST(QTest::qWaitFor([&] { return firstEnded; }, 5000));
    BOOST_TEST(!*begun);
}

/// What is asked for while the boxes are planned is not lost: here an audit, a check, and another camp.
BOOST_AUTO_TEST_CASE(an_audit_and_another_camp_asked_for_during_other_work_come_after_it, *utf::label("REG"))
{
    GivenCamp given;
    CampFolder other;
    DeskWindow window;
    window.resize(1366, 768);
    window.show();
    BOOST_TEST_REQUIRE(window.openCamp(given.folder.path()));
    window.work().start(QStringLiteral("Other work…"), goOn, {});
    window.showPlace(DeskWindow::Place::audit);
    auto& findings = *named<QTableView>(window, "findingsView").model();
    auto& chain = named<QPushButton>(window, "chainButton");
    chain.click();
    BOOST_TEST(!chain.isEnabled());
    const auto& next = named<QLabel>(window, "workNext");
    BOOST_TEST(QTest::qWaitFor([&] { return next.isVisible(); }, 5000));
    BOOST_TEST(next.text().contains(QStringLiteral("Judging hand-overs again…")));
    BOOST_TEST(next.text().contains(QStringLiteral("Checking the record…")));
    BOOST_TEST(window.messages().code().toStdString() == "");
    BOOST_TEST(findings.rowCount() == 0);
    window.work().stop();
    BOOST_TEST(QTest::qWaitFor([&] { return findings.rowCount() > 0 && chain.isEnabled(); }, 10'000));
    window.work().start(QStringLiteral("Other work…"), goOn, {});
    bool opened = false;
    QObject::connect(&window, &DeskWindow::campOpened, &window, [&opened](bool well) { opened = well; });
    window.openCampLater(other.path());
    window.work().stop();
    BOOST_TEST(QTest::qWaitFor([&] { return opened; }, 10'000));
    BOOST_TEST(window.campFolder().toStdString() == other.path().toStdString());
}

BOOST_AUTO_TEST_CASE(the_watch_sees_a_loop_that_was_away, *utf::label("PROP"))
{
    FrameWatch watch;
    QTest::qWait(30);
    watch.begin();
    std::this_thread::sleep_for(std::chrono::milliseconds(120));
    QTest::qWait(5);
    BOOST_TEST(watch.longestMs() >= 119.0);
    BOOST_TEST(watch.longerThan() >= 1);
    BOOST_TEST(watch.longerThan(60'000.0) == 0);
}

BOOST_AUTO_TEST_SUITE_END()
