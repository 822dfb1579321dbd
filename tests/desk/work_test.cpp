// SPDX-License-Identifier: GPL-3.0-or-later
// Long work is told, can be stopped, and leaves the event loop alone; and the watch over the loop sees what
// it is there to see.
#include "app/desk/lasting/frame_watch.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTest>

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
    BOOST_TEST(work.start(
        QStringLiteral("Counting"),
        [result](const Job& job) {
            for (std::size_t step = 1; step <= 60 && !job.stopped(); ++step) {
                job.done(step, 60);
                std::this_thread::sleep_for(aBlink);
                ++*result;
            }
        },
        [&](const std::exception_ptr& problem, bool stopped) { ended = !problem && !stopped; }));
    BOOST_TEST(!work.start({}, goOn, {})); // one at a time
    BOOST_TEST(work.isHidden());           // nothing flickers
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
    BOOST_TEST(work.start(QStringLiteral("Going on"), goOn,
                          [&](const std::exception_ptr&, bool stopped) { stoppedTold = stopped; }));
    named<QPushButton>(work, "stopWorkButton").click();
    BOOST_TEST(QTest::qWaitFor([&] { return stoppedTold; }, 5000));
}

BOOST_AUTO_TEST_CASE(what_work_throws_arrives_where_it_was_asked_for, *utf::label("PROP"))
{
    LongWork work;
    std::string code;
    BOOST_TEST(work.start(
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
        }));
    BOOST_TEST(QTest::qWaitFor([&] { return !code.empty(); }, 5000));
    BOOST_TEST(code == "ledger-full");
}

BOOST_AUTO_TEST_CASE(a_window_that_goes_stops_its_work_and_waits_for_it, *utf::label("PROP"))
{
    const auto atWork = std::make_shared<std::atomic<bool>>(true);
    {
        LongWork work;
        BOOST_TEST(work.start(QStringLiteral("Going on"),
                              [atWork](const Job& job) {
                                  goOn(job);
                                  *atWork = false;
                              },
                              {}));
    }
    BOOST_TEST(!*atWork);
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
