// SPDX-License-Identifier: GPL-3.0-or-later
// Eight programs at once on the last pieces: nothing oversold, nothing lost, every loser told. On a file all
// of them work in one folder; on a server each has its own and is a station. QS_LONG in the environment: 500
// asks each instead of 60.
#define BOOST_TEST_MODULE race
#include <boost/test/unit_test.hpp>

#include "tests/inventory/folder.hpp"
#include "tests/inventory/stores.hpp"

#include <QCoreApplication>

#include <fcntl.h>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <map>
#include <set>
#include <sys/wait.h>
#include <unistd.h>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

struct Application {
    int count = 1;
    char name[5] = "race";
    char* arguments[2] = {name, nullptr};
    QCoreApplication application{count, arguments};
};

/// A driver with a pipe to it and one from it.
struct Driver {
    pid_t process = -1;
    FILE* to = nullptr;
    FILE* from = nullptr;
};

Driver startDriver(const std::string& location, const std::string& folder, int asks, int who)
{
    int down[2];
    int up[2];
    BOOST_REQUIRE(pipe2(down, O_CLOEXEC) == 0);
    BOOST_REQUIRE(pipe2(up, O_CLOEXEC) == 0);
    const auto askText = std::to_string(asks);
    const auto whoText = "S" + std::to_string(who);
    const pid_t process = fork();
    if (process == 0) {
        dup2(down[0], 0);
        dup2(up[1], 1);
        execl(QS_RACE_DRIVER, "race_driver", location.c_str(), folder.c_str(), askText.c_str(),
              whoText.c_str(), static_cast<char*>(nullptr));
        _exit(127);
    }
    close(down[0]);
    close(up[1]);
    return {process, fdopen(down[1], "w"), fdopen(up[0], "r")};
}

std::string lineFrom(FILE* stream)
{
    std::string line;
    for (int c = std::fgetc(stream); c != EOF && c != '\n'; c = std::fgetc(stream))
        line += static_cast<char>(c);
    return line;
}

/// What all drivers said: ids given, and how often each refusal.
struct Outcome {
    std::set<std::string> given;
    std::map<std::string, int> refused;
    int asked = 0;
    double seconds = 0.0;
};

Outcome race(const std::string& path, const std::vector<std::string>& folders, int asks)
{
    std::vector<Driver> drivers;
    for (std::size_t i = 0; i < folders.size(); ++i)
        drivers.push_back(startDriver(locationOf(path), folders[i], asks, static_cast<int>(i)));
    for (const auto& driver : drivers)
        BOOST_REQUIRE(lineFrom(driver.from) == "ready");
    Outcome outcome;
    const auto begin = std::chrono::steady_clock::now();
    for (const auto& driver : drivers) {
        std::fputs("go\n", driver.to);
        std::fclose(driver.to);
    }
    for (const auto& driver : drivers) {
        for (auto line = lineFrom(driver.from); !line.empty(); line = lineFrom(driver.from)) {
            ++outcome.asked;
            if (line.rfind("given ", 0) == 0)
                BOOST_TEST(outcome.given.insert(line.substr(6)).second);
            else
                ++outcome.refused[line];
        }
        std::fclose(driver.from);
        int status = 0;
        waitpid(driver.process, &status, 0);
        BOOST_TEST(status == 0);
    }
    outcome.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    return outcome;
}

} // namespace

BOOST_TEST_GLOBAL_FIXTURE(Application);

BOOST_AUTO_TEST_CASE(eight_programs_hand_over_exactly_what_is_there, *utf::label("PROP"))
{
    constexpr int programs = 8;
    const int asks = std::getenv("QS_LONG") != nullptr ? 500 : 60;
    TemporaryFolder home;
    const auto path = home / "ledger.sqlite";
    // A third of the asks is for frames; lenses are the scarcer half of those, A suffices for half, B for all
    // who ask.
    const int third = programs * asks / 3;
    openLedger(path, Ledger::Mode::readWrite)
        .introduce("Box", {{"A", third / 2, 0, 0},
                           {"B", programs * asks, 0, 0},
                           {"F", third, 0, 0},
                           {"L", third / 2 * 2 + 1, 0, 0}});
    std::vector<TemporaryFolder> own(programs);
    std::vector<std::string> folders;
    for (const auto& folder : own)
        folders.push_back(onServer() ? folder.path() : home.path());
    const auto outcome = race(path, folders, asks);

    const auto ledger = openLedger(path, Ledger::Mode::readOnly);
    std::map<std::string, int> left;
    for (const auto& balance : ledger.balances("Box"))
        left[balance.line] = balance.onHand;
    std::set<std::string> kept;
    int seats = 0;
    for (const auto& entry : ledger.entriesAfter(1)) {
        kept.insert(entry.id);
        seats += entry.movements.size() == 3U ? 1 : 0;
    }
    BOOST_TEST(outcome.asked == programs * asks);
    BOOST_TEST((kept == outcome.given)); // nothing lost, nothing that nobody was told of
    for (const auto& [code, times] : outcome.refused)
        BOOST_TEST(code == "stock-short", code << " " << times << " times");
    BOOST_TEST(left.at("A") == 0);
    BOOST_TEST(left.at("L") == 1); // an odd lens serves nobody
    BOOST_TEST(left.at("F") == third - seats);
    BOOST_TEST(seats == third / 2);
    const auto chain = ledger.checkChain();
    BOOST_TEST(chain.ok, chain.what);
    std::cout << (onServer() ? "server: " : "file: ") << outcome.asked << " asked, " << outcome.given.size()
              << " given, " << outcome.asked - static_cast<int>(outcome.given.size())
              << " told that nothing is left, " << outcome.seconds << " s\n";
}
