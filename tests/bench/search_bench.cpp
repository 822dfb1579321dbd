// SPDX-License-Identifier: GPL-3.0-or-later
// The search for candidates against plain peers: two lenses in one frame, real worn pairs for real people, a
// whole answer from a programme's stock, and how the cost grows with the stock.
#include "tests/bench/plan.hpp"

#include "core/fitting/order.hpp"
#include "core/fitting/recommendation.hpp"
#include "core/fitting/stock_index.hpp"
#include "inventory/text/rules_file.hpp"
#include "tests/bench/peers.hpp"
#include "tests/bench/stocks.hpp"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <ctime>
#include <limits>
#include <memory>
#include <sys/resource.h>

namespace quarterstep::bench
{

namespace
{

const Profile& adults()
{
    return *defaultRules().find("adult-distance");
}

/// Processor time, the least of three runs.
template <class Work>
double millisecondsOf(Work work)
{
    double least = std::numeric_limits<double>::infinity();
    for (int run = 0; run < 3; ++run) {
        const auto now = [] {
            timespec time{};
            clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
            return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) * 1e-6;
        };
        const double begun = now();
        work();
        least = std::min(least, now() - begun);
    }
    return least;
}

double medianOf(std::vector<double> values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

/// A stock with its index.
struct Shelf {
    explicit Shelf(std::vector<StockLine> lines) : stock(std::move(lines)), index(stock) {}
    std::vector<StockLine> stock;
    StockIndex index;

    [[nodiscard]] CandidateLists find(const Need& need, const Profile& profile) const
    {
        CandidateOptions options;
        options.index = &index;
        return findCandidates(need, stock, profile, defaultRules().settings, options);
    }
};

Need needOf(const PersonRecord& person)
{
    return needFor(person, Purpose::distance, defaultRules().settings).value();
}

void planLenses(Plan& plan, const std::string& name, const std::shared_ptr<Shelf>& shelf, const Need& need,
                double timesFaster)
{
    const auto plain = doubleLoop(need, shelf->stock);
    const auto found = shelf->find(need, adults());
    if (plain.any == found.ranked.empty())
        plan.disagree(name + ": whether two lenses pass");
    else if (plain.any && (found.ranked[0].fit.onTrial() != plain.onTrial ||
                           costStepOf(found.ranked[0].fit.cost) != costStepOf(plain.cost)))
        plan.disagree(name + ": the cheapest pair of lenses");
    plan.measure(name + "/double_loop", 1.0,
                 [=] { benchmark::DoNotOptimize(doubleLoop(need, shelf->stock)); });
    plan.measure(name + "/search", 1.0, [=] { benchmark::DoNotOptimize(shelf->find(need, adults())); });
    plan.atLeastTimesFaster(name, name + "/double_loop", name + "/search", timesFaster);
}

void planJoint(Plan& plan)
{
    const auto typical = needOf(adultNeeding({Dioptres{-2.25}, Dioptres{-0.75}, AxisDegrees{85.0}},
                                             {Dioptres{-1.75}, Dioptres{-0.5}, AxisDegrees{95.0}}));
    const auto worst = needOf(adultNeeding(sphereOf(-3.0), sphereOf(-3.0)));
    const auto shelf = [&](std::vector<StockLine> stock) {
        return std::make_shared<Shelf>(std::move(stock));
    };
    planLenses(plan, "joint/1000_lenses", shelf(lensStock(plan.size(1000, 100))), typical, 100.0);
    planLenses(plan, "joint/10000_lenses", shelf(lensStock(plan.size(10000, 200))), typical, 500.0);
    planLenses(plan, "joint/1000_never_pair", shelf(lensesThatNeverPair(plan.size(1000, 100))), worst, 50.0);
    planLenses(plan, "joint/10000_never_pair", shelf(lensesThatNeverPair(plan.size(10000, 200))), worst,
               400.0);
}

/// People of the survey with the profile that age chooses.
struct Asked {
    Need need;
    const Profile* profile;
};

std::vector<Asked> askedOf(const std::vector<PersonRecord>& people)
{
    std::vector<Asked> asked;
    for (const auto& person : people)
        asked.push_back({needOf(person), defaultRules().find(profileFor(person, Purpose::distance))});
    return asked;
}

std::vector<std::string> namesOf(const CandidateLists& lists, const std::vector<StockLine>& stock)
{
    std::vector<std::string> names;
    for (const auto& candidate : lists.ranked)
        names.push_back(stock[candidate.parts[0].line].name + ' ');
    return names;
}

/// Everybody for the search and the tree, every 32nd person for the scan that judges all pairs.
void planWorn(Plan& plan)
{
    const auto shelf = std::make_shared<Shelf>(wornStock(plan.size(8053, 200)));
    const auto all = std::make_shared<std::vector<Asked>>(askedOf(surveyPeople(plan.size(1963, 20))));
    const auto some = std::make_shared<std::vector<Asked>>();
    for (std::size_t i = 0; i < all->size(); i += 32)
        some->push_back((*all)[i]);
    const auto tree = std::make_shared<TreePeer>(shelf->stock);
    const auto firsts = std::make_shared<std::vector<std::size_t>>(firstsOf(shelf->stock));
    plan.note("worn: " + std::to_string(firsts->size()) + " different pairs among " +
              std::to_string(shelf->stock.size()));
    const auto& settings = defaultRules().settings;
    for (const auto& one : *some)
        if (namesOf(shelf->find(one.need, *one.profile), shelf->stock) !=
                rankedAmong(one.need, shelf->stock, *one.profile, settings, *firsts) ||
            namesOf(shelf->find(one.need, *one.profile), shelf->stock) !=
                tree->ranked(one.need, *one.profile, settings))
            plan.disagree("worn: a short list");
    const auto each = [&](const std::string& name, const std::shared_ptr<std::vector<Asked>>& asked,
                          auto answer) {
        plan.measure(name, static_cast<double>(asked->size()), [=] {
            for (const auto& one : *asked)
                benchmark::DoNotOptimize(answer(one));
        });
    };
    each("worn/scan", some, [=, &settings](const Asked& one) {
        return rankedAmong(one.need, shelf->stock, *one.profile, settings, *firsts);
    });
    each("worn/tree", all,
         [=, &settings](const Asked& one) { return tree->ranked(one.need, *one.profile, settings); });
    each("worn/search", all, [=](const Asked& one) { return shelf->find(one.need, *one.profile); });
    plan.atLeastTimesFaster("worn/scan", "worn/scan", "worn/search", 20.0);
    plan.atLeastTimesFaster("worn/tree", "worn/tree", "worn/search", 3.0);
}

void planReport(Plan& plan)
{
    const auto shelf = std::make_shared<Shelf>(regularStock(plan.size(5000, 200)));
    const auto people = std::make_shared<std::vector<PersonRecord>>(surveyPeople(plan.size(1963, 20)));
    const auto report = [=](const PersonRecord& person) {
        MatchOptions options;
        options.candidates.index = &shelf->index;
        benchmark::DoNotOptimize(recommend(person, shelf->stock, defaultRules(), options));
    };
    plan.measure("report/5000_lines_mean", static_cast<double>(people->size()), [=] {
        for (const auto& person : *people)
            report(person);
    });
    const auto perPerson = std::make_shared<std::vector<double>>();
    plan.keep({"report/5000_lines_ms",
               [=](const Medians& /*medians*/) {
                   for (const auto& person : *people)
                       perPerson->push_back(millisecondsOf([&] { report(person); }));
                   return medianOf(*perPerson);
               },
               Bound::atMost, 1.0});
}

void planGrowth(Plan& plan)
{
    // Stock pairs have cylinders of any size: nothing fits the one, many fit the other.
    const auto spheres = needOf(adultNeeding(sphereOf(-2.0), sphereOf(-1.75)));
    const auto cylinders = needOf(adultNeeding({Dioptres{-1.5}, Dioptres{-1.0}, AxisDegrees{85.0}},
                                               {Dioptres{-1.25}, Dioptres{-1.0}, AxisDegrees{95.0}}));
    const auto begun = std::chrono::steady_clock::now();
    for (const std::size_t lines : {1000, 10000, 100000, 1000000}) {
        const auto shelf = std::make_shared<Shelf>(oneOffStock(plan.size(lines, lines / 1000)));
        const auto measure = [&](const std::string& name, const Need& need) {
            plan.measure("growth/" + name + std::to_string(lines), 1.0,
                         [=] { benchmark::DoNotOptimize(shelf->find(need, adults())); });
        };
        measure("nothing_fits_", spheres);
        measure("fits_", cylinders);
    }
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begun;
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    plan.note("growth: stocks of 1,000 to 1,000,000 one-off lines and their indexes made in " +
              std::to_string(took.count()) + " s, peak memory " + std::to_string(usage.ru_maxrss / 1024) +
              " MiB");
    for (const std::string name : {"nothing_fits_", "fits_"})
        plan.keep({"growth/" + name + "exponent",
                   [=](const Medians& medians) {
                       return std::log10(medians.at("growth/" + name + "1000000") /
                                         medians.at("growth/" + name + "1000")) /
                              3.0;
                   },
                   Bound::atMost, 1.0});
}

} // namespace

void planSearch(Plan& plan)
{
    if (plan.wants("joint"))
        planJoint(plan);
    if (plan.wants("worn"))
        planWorn(plan);
    if (plan.wants("report"))
        planReport(plan);
    if (plan.wants("growth"))
        planGrowth(plan);
}

} // namespace quarterstep::bench
