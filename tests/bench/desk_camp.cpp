// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/desk_camp.hpp"

#include "app/session/hand_over.hpp"
#include "app/session/tray.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/record_text.hpp"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <map>

namespace quarterstep
{

namespace
{
[[noreturn]] void giveUp(const std::string& why)
{
    std::cerr << "the camp of the bench cannot be made: " << why << '\n';
    std::exit(1);
}

std::string written(double power)
{
    return QString::number(power, 'f', 2).prepend(QLatin1String(power > 0.0 ? "+" : "")).toStdString();
}

/// Every third for distance, for near, and for both; powers and centres that the trays have.
void writePeople(const std::string& path, int people)
{
    std::ofstream table(path);
    table << "person,age,purpose,right,left,add,pd_mm,near_pd_mm,va_best_right,va_best_left,near_best,"
             "prescriber\n";
    constexpr int ages = 30;
    for (int n = 0; n < people; ++n) {
        const double sphere = -0.5 - 0.25 * (n % 20);
        const double addition = 1.0 + 0.25 * (n % 9);
        const int pd = 58 + n % 8;
        const auto eye = written(n % 3 == 1 ? 0.0 : sphere);
        table << "D-" << 1000 + n << ',' << 46 + n % ages << ','
              << (n % 3 == 0   ? "distance"
                  : n % 3 == 1 ? "near"
                               : "both")
              << ',' << eye << ',' << eye << ',' << written(addition) << ',' << pd << ',' << pd - 3
              << ",6/6,6/6,N5,K\n";
    }
}

void writeSupplier(const std::string& path)
{
    std::ofstream list(path);
    list << "format: quarterstep supplier 1\nsupplier: Bench chandlery\ncurrency: shells\nlines:\n";
    for (int step = 4; step <= 16; ++step)
        for (int centres = 58; centres <= 64; centres += 2)
            list << "  - {line: S" << step << '-' << centres
                 << ", kind: ready-made, power: " << written(0.25 * step)
                 << ", use: near, centres: " << centres << ", cost: 1.00, pack: 4, weight: 25}\n";
}

/// A pair a dioptre off its need, by hand: what an audit finds.
void giveAnother(Camp& camp, const PersonRecord& person, const MatchOptions& options)
{
    const auto answers = recommend(person, camp.stock(), camp.rules(), options);
    auto parts = answers.front().candidates.ranked.front().parts;
    constexpr std::size_t inTray = 50;
    constexpr std::size_t aDioptre = 4;
    auto& line = parts.front().line;
    line = line % inTray < inTray - aDioptre ? line + aDioptre : line - aDioptre;
    HandOver given;
    given.recommendation = &answers.front();
    given.parts = parts;
    given.reason = "what there was";
    given.actor = "AB";
    given.record = recordText(person);
    handOver(camp, given);
}
} // namespace

void makeCamp(const QString& folder, int lines)
{
    constexpr const char* rows[] = {"near +0.25 to +12.50", "distance -0.25 to -12.50",
                                    "intermediate +0.25 to +12.50", "distance +0.25 to +12.50"};
    std::string trays;
    for (int centres = 50; lines > 0; ++centres)
        for (const auto* row : rows)
            if (lines > 0) {
                trays += std::string(row) + ": 10 centres " + std::to_string(centres) + "\n";
                lines -= 50;
            }
    const auto stock = stockOfTray("Bench", trays);
    if (!stock.usable())
        giveUp(stock.findings.front().sentence.text);
    writeNewStock(folder.toStdString(), stock.value.bytes);
    (void)Camp::open(folder.toStdString(), Ledger::Mode::readWrite);
    std::cout << "note camp of " << stock.value.lines.size() << " lines" << std::endl;
}

void makeDay(const QString& folder, int served, int waiting)
{
    const auto path = folder.toStdString();
    writePeople(path + "/people.csv", served + waiting);
    writeSupplier(path + "/supplier.yaml");
    auto camp = Camp::open(path, Ledger::Mode::readWrite);
    const auto table = readPrescriptionTable(path + "/people.csv", "");
    std::vector<PersonRecord> people;
    std::vector<PersonRecord> others; // every tenth
    for (const auto& row : table.value.rows) {
        if (!row.record)
            giveUp(row.findings.empty() ? "a row" : row.findings.front().sentence.text);
        if (const auto nth = people.size() + others.size(); nth < static_cast<std::size_t>(served))
            (nth % 10 == 0 ? others : people).push_back(*row.record);
    }
    MatchOptions options;
    options.candidates.index = &camp.index();
    const auto day = dispenseTable(camp, people, options, "AB", false);
    auto given = std::count_if(day.answers.begin(), day.answers.end(),
                               [](const auto& answer) { return answer.entry.has_value(); });
    for (const auto& person : others)
        giveAnother(camp, person, options);
    given += static_cast<std::ptrdiff_t>(others.size());
    if (day.stopped || given < served)
        giveUp("only " + std::to_string(given) + " pairs were handed over");
    std::cout << "note day of " << given << " hand-overs" << std::endl;
}

void makeSeason(const QString& folder, int handOvers)
{
    constexpr std::int64_t begin = 1'700'000'000'000; // ms since 1970
    constexpr std::int64_t aMinute = 60'000;
    constexpr std::size_t atOnce = 2000;
    auto camp = Camp::open(folder.toStdString(), Ledger::Mode::readWrite);
    MatchOptions options;
    options.candidates.index = &camp.index();
    std::vector<Entry> known;
    for (const auto& row : readPrescriptionTable(camp.folder() + "/people.csv", "").value.rows)
        if (row.record) {
            const auto answers = recommend(*row.record, camp.stock(), camp.rules(), options);
            if (answers.front().candidates.ranked.empty())
                continue;
            HandOver given;
            given.recommendation = &answers.front();
            given.parts = answers.front().candidates.ranked.front().parts;
            given.checks.fitOnFace = true;
            given.record = recordText(*row.record);
            known.push_back(entryFor(camp, given));
        }
    std::map<std::string, int> used; // of each line, by them all
    for (int n = 0; n < handOvers; ++n)
        for (const auto& movement : known[static_cast<std::size_t>(n) % known.size()].movements)
            used[movement.line] -= movement.delta;
    Entry delivery;
    delivery.kind = EntryKind::received;
    delivery.atMs = begin;
    for (const auto& [line, pieces] : used)
        delivery.movements.push_back({line, pieces, ""});
    std::vector<Entry> batch{delivery};
    for (int n = 0; n < handOvers; ++n) {
        auto entry = known[static_cast<std::size_t>(n) % known.size()];
        entry.person = "S-" + std::to_string(n);
        entry.atMs = begin + aMinute * (n + 1);
        batch.push_back(std::move(entry));
        if (batch.size() == atOnce || n + 1 == handOvers) {
            (void)camp.postAll(std::move(batch));
            batch.clear();
        }
    }
    std::cout << "note season of " << handOvers << " hand-overs before it" << std::endl;
}

} // namespace quarterstep
