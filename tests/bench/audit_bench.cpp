// SPDX-License-Identifier: GPL-3.0-or-later
// The audit of a whole ledger: hand-overs of the sample camp over and over, one a minute, replayed and judged
// again. Measured by the clock on the wall, since reading, chaining and judging share it: entries a second
// with one and with two judges, memory over what was there before, and how the processor time grows with the
// ledger. QS_LONG=1 goes on to a million.
#include "app/session/audit.hpp"
#include "app/session/hand_over.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/record_text.hpp"
#include "tests/bench/plan.hpp"

#include <chrono>
#include <cmath>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>

namespace quarterstep::bench
{
namespace
{

const std::string sample = QS_SOURCE_DIR "/samples/orrowen_coast/";

struct BenchCamp {
    std::string path;
    explicit BenchCamp(std::size_t entries)
        : path(std::filesystem::temp_directory_path() / ("quarterstep-audit-" + std::to_string(entries)))
    {
        std::filesystem::remove_all(path);
        std::filesystem::create_directories(path);
        std::ifstream stock(sample + "stock.yaml");
        const std::string text{std::istreambuf_iterator<char>(stock), {}};
        std::ofstream(path + "/stock.yaml")
            << std::regex_replace(text, std::regex("on hand: [0-9]+"), "on hand: 100000");
        std::filesystem::copy_file(sample + "rules.yaml", path + "/rules.yaml");
    }
    BenchCamp(const BenchCamp&) = delete;
    BenchCamp& operator=(const BenchCamp&) = delete;
    ~BenchCamp() { std::filesystem::remove_all(path); }
};

/// What the sample's people are given when nothing runs out.
std::vector<Entry> templates(const Camp& camp)
{
    std::vector<Entry> entries;
    const auto table = readPrescriptionTable(sample + "people.csv", "");
    MatchOptions options;
    options.candidates.index = &camp.index();
    for (const auto& row : table.value.rows) {
        if (!row.record)
            continue;
        for (const auto& answer : recommend(*row.record, camp.stock(), camp.rules(), options)) {
            if (answer.verdict != Verdict::stock || answer.candidates.ranked.empty() ||
                !answer.candidates.ranked.front().fit.acceptable())
                continue;
            HandOver given;
            given.recommendation = &answer;
            given.parts = answer.candidates.ranked.front().parts;
            given.record = recordText(*row.record);
            given.checks.fitOnFace = true;
            entries.push_back(entryFor(camp, given));
        }
    }
    return entries;
}

/// As many of every line as a round may have taken.
Entry delivery(const Camp& camp, int pieces, std::int64_t atMs)
{
    Entry entry;
    entry.kind = EntryKind::received;
    entry.atMs = atMs;
    for (const auto& line : camp.stock())
        entry.movements.push_back({line.name, pieces, ""});
    return entry;
}

void fillLedger(const BenchCamp& folder, std::size_t count)
{
    auto camp = Camp::open(folder.path, Ledger::Mode::readWrite);
    const auto known = templates(camp);
    constexpr std::int64_t start = 1'600'000'000'000;
    std::vector<Entry> batch;
    const std::size_t round = known.size() * 300;
    for (std::size_t i = 0; i < count; ++i) {
        if (i > 0 && i % round == 0)
            batch.push_back(
                delivery(camp, static_cast<int>(round), start + static_cast<std::int64_t>(i) * 60'000));
        auto entry = known[i % known.size()];
        entry.person = "P" + std::to_string(i);
        entry.atMs = start + static_cast<std::int64_t>(i) * 60'000;
        batch.push_back(std::move(entry));
        if (batch.size() == 2000 || i + 1 == count) {
            (void)camp.ledger().postAll(camp.site(), std::move(batch));
            batch.clear();
        }
    }
}

/// Kilobytes from /proc/self/status, 0 where there is none.
long memoryOf(const std::string& name)
{
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.rfind(name + ":", 0) == 0)
            return std::stol(line.substr(name.size() + 1));
    return 0;
}

/// Processor time of all threads of this program so far, seconds.
double processorSeconds()
{
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return double(now.tv_sec) + 1e-9 * double(now.tv_nsec);
}

struct Audited {
    double seconds = 0.0;    ///< by the clock on the wall
    double processor = 0.0;  ///< of all threads
    long extraKilobytes = 0; ///< most, over what was there before
    std::int64_t judged = 0;
    std::map<AuditClass, std::int64_t> classes;
};

Audited auditedWith(const std::string& folder, int threads)
{
    const auto camp = Camp::open(folder, Ledger::Mode::readOnly);
    std::ofstream("/proc/self/clear_refs") << "5"; // the peak starts anew
    const long before = memoryOf("VmRSS");
    const auto started = std::chrono::steady_clock::now();
    AuditOptions options;
    options.nowMs = 4'000'000'000'000;
    options.threads = threads;
    const double busy = processorSeconds();
    const auto summary = auditCamp(camp, options, {});
    const double processor = processorSeconds() - busy;
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - started;
    return {took.count(), processor, memoryOf("VmHWM") - before, summary.judged, summary.byClass};
}

std::string rounded(double value)
{
    std::ostringstream text;
    text.precision(3);
    text << value;
    return text.str();
}

} // namespace

void planAudit(Plan& plan)
{
    const bool longForm = std::getenv("QS_LONG") != nullptr;
    std::vector<std::size_t> sizes{plan.size(10'000, 150), plan.size(100'000, 600)};
    if (longForm && !plan.shortForm())
        sizes.push_back(1'000'000);
    std::vector<Audited> one;
    for (const auto size : sizes) {
        const BenchCamp folder(size);
        fillLedger(folder, size);
        const auto alone = auditedWith(folder.path, 1);
        const auto two = auditedWith(folder.path, 2);
        if (alone.classes != two.classes || alone.judged != static_cast<std::int64_t>(size))
            plan.disagree("the audit of " + std::to_string(size) + " hand-overs with one and two judges");
        plan.note("audit/" + std::to_string(size) +
                  " hand-overs: " + std::to_string(std::lround(double(size) / alone.seconds)) +
                  " a second with one judge, " + std::to_string(std::lround(double(size) / two.seconds)) +
                  " with two; " + std::to_string(std::lround(double(size) / alone.processor)) + " and " +
                  std::to_string(std::lround(double(size) / two.processor)) +
                  " a second of processor time; at most " + std::to_string(alone.extraKilobytes / 1024) +
                  " MiB over what was there");
        one.push_back(alone);
    }
    const double grown = std::log(double(sizes.back()) / double(sizes.front()));
    const double exponent = std::log(one.back().processor / one.front().processor) / grown;
    const double memory = double(one.back().extraKilobytes) / 1024.0;
    plan.note("audit/growth: time grows with the ledger to the power " + rounded(exponent) +
              ", the largest took " + rounded(memory) + " MiB more than was there");
    plan.keep({"audit/growth", [exponent](const Medians&) { return exponent; }, Bound::atMost, 1.1});
    plan.keep({"audit/memory in MiB", [memory](const Medians&) { return memory; }, Bound::atMost, 64.0});
}

} // namespace quarterstep::bench
