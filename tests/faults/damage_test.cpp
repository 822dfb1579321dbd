// SPDX-License-Identifier: GPL-3.0-or-later
// Damage: each region of ledger.sqlite and stock.yaml is flipped, zeroed or cut out, and the folder opened
// with our own code. What is not refused must be told or do no harm; how many entries can still be read one
// by one is counted. The short form takes a sample of the regions, QS_LONG=1 all of them.
#include "app/session/camp.hpp"
#include "inventory/store/connection.hpp"
#include "inventory/store/payload.hpp"
#include "tests/faults/harness.hpp"
#include "tests/inventory/folder.hpp"

#include <algorithm>
#include <iostream>
#include <map>
#include <random>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

const std::string stockText =
    "# the box under the window\nformat: quarterstep stock 1\nsite: Slate quay box 3\nlines:\n"
    "  - {line: N+200-62, kind: ready-made, power: +2.00, use: near, centres: 62, bin: C4, on "
    "hand: 140}   # most asked for\n"
    "  - {line: D-100-62, kind: ready-made, power: -1.00, centres: 62, bin: D1, on hand: 60}\n"
    "  - line: L+250\n    kind: lens\n    power: +2.50\n    shape: round 44\n    on hand: 12\n"
    "  - {line: CASE, kind: other, on hand: 90}\n";
constexpr int handOvers = 70;
constexpr std::size_t region = 512; ///< bytes: a sector

/// What a folder says: entries with their words, counts, names.
struct Content {
    std::string records;
    std::string names;
};

Content contentOf(const Camp& camp)
{
    Content content;
    for (const auto& entry : camp.ledger().entriesAfter(0)) {
        content.records += entry.id + wordOf(entry.kind) + entry.person + std::to_string(entry.atMs);
        for (const auto& movement : entry.movements)
            content.records += movement.line + std::to_string(movement.delta);
        for (const auto& [name, words] : entry.texts)
            content.records += name + words;
    }
    for (const auto& balance : camp.ledger().balances(camp.site()))
        content.records += balance.line + std::to_string(balance.onHand);
    for (int i = 0; i < handOvers; ++i)
        if (const auto person = camp.ledger().person("K-" + std::to_string(i)))
            content.names += person->name;
    return content;
}

/// A camp at work, closed again.
struct Model {
    FastFolder folder;
    std::string stock;
    std::string ledger;
    Content content;
    std::vector<std::string> hashes; ///< of the entries, by position from 1

    Model()
    {
        writeBytes(folder.path() + "/stock.yaml", stockText);
        {
            auto camp = Camp::open(folder.path(), Ledger::Mode::readWrite);
            for (int i = 0; i < handOvers; ++i) {
                Entry entry;
                entry.person = "K-" + std::to_string(i);
                entry.fields = {{"purpose", "near"}, {"final", "R +2.00 L +2.00"}};
                entry.movements = {{i % 3 == 0 ? "D-100-62" : "N+200-62", -1, "pair"}};
                entry.texts = {{"reason", "in her own words " + std::to_string(i)}};
                (void)camp.post(entry);
                camp.ledger().putPersons({{entry.person, "Osric " + std::to_string(i)}});
            }
            content = contentOf(camp);
        }
        stock = readBytes(folder.path() + "/stock.yaml");
        ledger = readBytes(folder.path() + "/ledger.sqlite");
        Connection connection(folder.path() + "/ledger.sqlite", Connection::Access::readWrite, 200);
        auto rows = connection.prepare("SELECT hash FROM entry ORDER BY position");
        rows.run();
        while (rows.next())
            hashes.push_back(rows.bytes(0));
        rows.finish();
    }

    void restore(const std::string& stockBytes, const std::string& ledgerBytes) const
    {
        const auto ledgerPath = folder.path() + "/ledger.sqlite";
        for (const char* end : {"-wal", "-shm"})
            std::filesystem::remove(ledgerPath + end);
        writeBytes(folder.path() + "/stock.yaml", stockBytes);
        writeBytes(ledgerPath, ledgerBytes);
    }
};

enum class Way { flip, zero, cut };

std::string damaged(std::string bytes, std::size_t at, std::size_t length, Way way, std::mt19937& random)
{
    length = std::min(length, bytes.size() - at);
    if (way == Way::flip) {
        auto& byte = bytes[at + random() % length];
        byte = static_cast<char>(static_cast<unsigned char>(byte) ^ (1U << random() % 8U));
    } else if (way == Way::zero)
        std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>(at), length, '\0');
    else
        bytes.erase(at, length);
    return bytes;
}

/// Entries that can be read one by one and have the text their hash was made of.
std::size_t survivors(const Model& model)
{
    std::size_t count = 0;
    try {
        Connection connection(model.folder.path() + "/ledger.sqlite", Connection::Access::readWrite, 200);
        auto row = connection.prepare("SELECT payload FROM entry WHERE position = ?");
        for (std::size_t i = 0; i < model.hashes.size(); ++i) {
            const bool ran = row.tryRun({static_cast<std::int64_t>(i + 1)});
            try {
                if (ran && row.next() &&
                    chainHash(i == 0 ? chainStart() : model.hashes[i - 1], row.text(0)) == model.hashes[i])
                    ++count;
            } catch (const Error&) {
                continue; // this page cannot be read
            }
            row.finish();
        }
    } catch (const Error&) {
        return count;
    }
    return count;
}

/// What became of a damaged folder, in a few words; "silent" is the one that must not be.
std::string outcomeOf(const Model& model)
{
    try {
        auto camp = Camp::open(model.folder.path(), Ledger::Mode::readWrite);
        for (const auto& finding : camp.findings())
            if (finding.severity != Severity::note || finding.code == "line-new")
                return "told at opening, " + finding.code;
        if (!camp.edited().empty())
            return "told at opening, count-edited";
        const auto chain = camp.ledger().checkChain();
        if (!chain.ok)
            return "told by the whole check";
        const auto now = contentOf(camp);
        if (now.records != model.content.records)
            return "silent";
        if (now.names != model.content.names)
            return "a name beside the entries changed";
        return readBytes(model.folder.path() + "/stock.yaml") == model.stock ? "no harm"
                                                                             : "file reads as edited";
    } catch (const CampNotOpened& error) {
        return error.findings().empty() ? "silent" : "refused, with the place in the file";
    } catch (const Error& error) {
        return error.finding().code.empty() ? "silent" : "refused, " + error.finding().code;
    }
}

struct Tally {
    std::map<std::string, int> outcomes;
    int cases = 0;
    std::size_t kept = 0;
    std::size_t possible = 0;

    void print(const std::string& what) const
    {
        std::cout << what << ": " << cases << " damages";
        if (possible > 0)
            std::cout << ", " << kept << " of " << possible << " entries readable ("
                      << 100.0 * double(kept) / double(possible) << " %)";
        std::cout << "\n";
        for (const auto& [outcome, count] : outcomes)
            std::cout << "  " << count << " x " << outcome << "\n";
    }
};

} // namespace

BOOST_AUTO_TEST_SUITE(damage)

BOOST_AUTO_TEST_CASE(damage_of_the_ledger_is_refused_or_told, *utf::label("PROP"))
{
    const Model model;
    const unsigned seed = std::random_device{}();
    std::mt19937 random(seed);
    std::cout << "damage: ledger of " << model.ledger.size() << " bytes, seed " << seed << "\n";
    for (const auto& [way, words] : {std::pair{Way::flip, "one bit flipped"},
                                     {Way::zero, "512 bytes zeroed"},
                                     {Way::cut, "512 bytes cut out"}}) {
        Tally tally;
        const std::size_t step = region * (longRun() ? 1 : 5);
        const int times = longRun() && way == Way::flip ? 8 : 1;
        for (std::size_t at = longRun() ? 0 : region * (random() % 5); at < model.ledger.size(); at += step)
            for (int again = 0; again < times; ++again) {
                const auto bytes = damaged(model.ledger, at, region, way, random);
                model.restore(model.stock, bytes);
                tally.kept += survivors(model);
                tally.possible += model.hashes.size();
                model.restore(model.stock, bytes);
                ++tally.cases;
                const auto outcome = outcomeOf(model);
                ++tally.outcomes[outcome];
                BOOST_TEST(outcome != "silent", words << " at " << at);
            }
        tally.print(std::string("ledger.sqlite, ") + words);
    }
}

BOOST_AUTO_TEST_CASE(damage_of_the_stock_file_is_refused_told_or_another_valid_file, *utf::label("PROP"))
{
    const Model model;
    const unsigned seed = std::random_device{}();
    std::mt19937 random(seed);
    std::cout << "damage: stock.yaml of " << model.stock.size() << " bytes, seed " << seed << "\n";
    for (const auto& [way, words] :
         {std::pair{Way::flip, "one bit flipped"}, {Way::cut, "one byte cut out"}}) {
        Tally tally;
        const std::size_t step = longRun() ? 1 : 4;
        for (std::size_t at = random() % step; at < model.stock.size(); at += step) {
            model.restore(damaged(model.stock, at, 1, way, random), model.ledger);
            ++tally.cases;
            const auto outcome = outcomeOf(model);
            ++tally.outcomes[outcome];
            BOOST_TEST(outcome != "silent", words << " at " << at);
            // The entries are those of the ledger, whatever the file says; a line of another name makes a new
            // one.
            const auto ledger = Ledger::open(model.folder.path() + "/ledger.sqlite", Ledger::Mode::readOnly);
            BOOST_TEST(ledger.checkChain().ok, words << " at " << at);
            BOOST_TEST(ledger.position() >= static_cast<std::int64_t>(model.hashes.size()),
                       words << " at " << at);
        }
        tally.print(std::string("stock.yaml, ") + words);
    }
}

BOOST_AUTO_TEST_CASE(a_rule_of_the_database_that_was_changed_is_seen_at_opening, *utf::label("PROP"))
{
    const Model model;
    for (const auto& [from, to] : {std::pair{"on_hand + NEW.delta", "on_hand * NEW.delta"},
                                   {"CHECK (on_hand >= 0)", "CHECK (on_hand >= 1)"},
                                   {"entries are append-only", "entries are append-onl_"}}) {
        auto bytes = model.ledger;
        const auto at = bytes.find(from);
        BOOST_TEST_REQUIRE(at != std::string::npos, from);
        bytes.replace(at, std::string(from).size(), to);
        model.restore(model.stock, bytes);
        QS_CHECK_ERROR("ledger-not-a-database", 3, Camp::open(model.folder.path(), Ledger::Mode::readOnly));
    }
}

BOOST_AUTO_TEST_SUITE_END()
