// SPDX-License-Identifier: GPL-3.0-or-later
// A long ledger: a generator writes 20,000 entries (a million with QS_LONG=1), then opening, handing over,
// reading back and the size of the file are measured beside an empty ledger. The short form judges what is
// true whatever the machine does; the long form judges times as well.
#include "inventory/store/connection.hpp"
#include "inventory/store/ledger.hpp"
#include "tests/inventory/folder.hpp"

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <iostream>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

const std::string site = "Long quay box 1";
constexpr int lines = 120;
constexpr int batch = 5000; ///< entries in one transaction of the generator

bool longRun()
{
    const char* set = std::getenv("QS_LONG");
    return set != nullptr && std::string(set) == "1";
}

std::string lineName(std::int64_t number)
{
    return "N+" + std::to_string(100 + number % lines * 25) + "-62M-BK";
}

/// A hand-over as the desk posts it; each twentieth entry is another kind of work.
Entry entryNumber(std::int64_t number)
{
    Entry entry;
    entry.actor = "AB";
    entry.person = "P-" + std::to_string(number);
    entry.fields = {{"purpose", "near"},          {"profile", "adult-near"},
                    {"profile_version", "2"},     {"rules_hash", "9f2c51aa9f2c51aa"},
                    {"final", "R +2.00 L +2.00"}, {"referral", "no"},
                    {"checks", "power fit"},      {"verdict", "fits"},
                    {"cost_thousandths", "194"},  {"prism_h_thousandths", "-120"}};
    entry.atMs = 1'764'000'000'000 + number * 60'000;
    if (number % 20 == 7)
        entry.kind = EntryKind::notNeeded;
    else if (number % 20 == 13) {
        entry.kind = EntryKind::received;
        entry.person.clear();
        entry.movements = {{lineName(number), 40, ""}};
    } else
        entry.movements = {{lineName(number), -1, "pair"}};
    if (number % 10 == 3)
        entry.texts["reason"] = "chose the lighter frame";
    return entry;
}

void generate(Ledger& ledger, std::int64_t entries)
{
    std::vector<Balance> counts;
    for (int i = 0; i < lines; ++i)
        counts.push_back({lineName(i), 50'000, 0, 0});
    ledger.introduce(site, counts);
    for (std::int64_t next = 2; next <= entries;) {
        std::vector<Entry> some;
        for (int i = 0; i < batch && next <= entries; ++i)
            some.push_back(entryNumber(next++));
        (void)ledger.postAll(site, std::move(some));
    }
}

template <class Act>
double secondsOf(const Act& act)
{
    const auto begin = std::chrono::steady_clock::now();
    act();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

/// Median time of one hand-over.
double latencyOf(Ledger& ledger)
{
    std::vector<double> times;
    constexpr int posts = 301;
    for (int i = 0; i < posts; ++i) {
        auto entry = entryNumber(2);
        entry.atMs = 0;
        times.push_back(secondsOf([&] { (void)ledger.post(site, entry); }));
    }
    std::nth_element(times.begin(), times.begin() + posts / 2, times.end());
    return times[posts / 2];
}

} // namespace

BOOST_AUTO_TEST_SUITE(many_entries)

BOOST_AUTO_TEST_CASE(a_long_ledger_opens_and_hands_over_like_an_empty_one, *utf::label("PROP"))
{
    const std::int64_t entries = longRun() ? 1'000'000 : 20'000;
    TemporaryFolder folder;
    const auto path = folder / "long";
    double made = 0.0;
    {
        auto ledger = Ledger::open(path, Ledger::Mode::readWrite);
        made = secondsOf([&] { generate(ledger, entries); });
    }
    const auto bytes = std::filesystem::file_size(path);
    std::optional<Ledger> ledger;
    ChainCheck recent;
    const auto opened = secondsOf([&] {
        ledger.emplace(Ledger::open(path, Ledger::Mode::readWrite));
        recent = ledger->checkRecent();
    });
    BOOST_TEST(recent.ok);
    BOOST_TEST(recent.entries == entries);
    BOOST_TEST(recent.checked == linksAtOpening);
    std::int64_t replayed = 0;
    std::int64_t left = 0;
    const auto replaying = secondsOf([&] {
        ledger->replay([&](const Entry& entry) {
            ++replayed;
            for (const auto& movement : entry.movements)
                left += movement.delta;
        });
    });
    BOOST_TEST(replayed == entries);
    for (const auto& balance : ledger->balances(site))
        left -= balance.onHand;
    BOOST_TEST(left == 0);
    ChainCheck whole;
    const auto checking = secondsOf([&] { whole = ledger->checkChain(); });
    BOOST_TEST(whole.ok, whole.what);
    BOOST_TEST(whole.checked == entries);
    BOOST_TEST(ledger->entriesOfPerson("P-2").size() == 1U);

    auto empty = Ledger::open(folder / "empty", Ledger::Mode::readWrite);
    generate(empty, 1);
    const auto inEmpty = latencyOf(empty);
    const auto inLong = latencyOf(*ledger);
    std::cout << "long ledger: " << entries << " entries made in " << made << " s; opened in " << opened
              << " s; " << bytes / static_cast<std::uintmax_t>(entries) << " bytes an entry; replayed "
              << std::int64_t(double(entries) / replaying) << " a second; checked "
              << std::int64_t(double(entries) / checking) << " a second; one hand-over " << inLong * 1e3
              << " ms, in an empty ledger " << inEmpty * 1e3 << " ms\n";
    if (!longRun())
        return;
    BOOST_TEST(opened < 2.0);
    BOOST_TEST(inLong < 2.0 * inEmpty);
}

BOOST_AUTO_TEST_CASE(a_broken_link_among_the_last_is_seen_at_opening_and_an_older_one_by_the_whole_check,
                     *utf::label("PROP"))
{
    TemporaryFolder folder;
    auto ledger = Ledger::open(folder / "l", Ledger::Mode::readWrite);
    generate(ledger, 300);
    BOOST_TEST(ledger.checkRecent().ok);
    Connection connection(folder / "l", Connection::Access::readWrite, 200);
    connection.execute("DROP TRIGGER entry_stays");
    connection.execute("UPDATE entry SET payload = replace(payload, 'near', 'neat') WHERE position = 50");
    BOOST_TEST(ledger.checkRecent().ok);
    BOOST_TEST(ledger.checkChain().firstBad.value() == 50);
    connection.execute("UPDATE entry SET payload = replace(payload, 'near', 'neat') WHERE position = 290");
    const auto recent = ledger.checkRecent();
    BOOST_TEST(!recent.ok);
    BOOST_TEST(recent.firstBad.value() == 290);
    BOOST_TEST(recent.checked == 100);
    connection.execute(
        "UPDATE entry SET hash = zeroblob(32) WHERE position = 200"); // the link before the first checked
    BOOST_TEST(ledger.checkRecent().firstBad.value() == 201);
}

BOOST_AUTO_TEST_SUITE_END()
