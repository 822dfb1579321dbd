// SPDX-License-Identifier: GPL-3.0-or-later
// One eye against many lenses: all that a focimeter would read as the same power. The scan over columns
// against a loop over structures and against the speed at which the same columns can be read at all; distinct
// powers in blocks against the loop over all lenses.
#include "tests/bench/plan.hpp"

#include "core/fitting/power_columns.hpp"
#include "core/fitting/stock_index.hpp"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <memory>
#include <random>

#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) && !defined(__SANITIZE_THREAD__)
#define QS_WIDE __attribute__((target_clones("arch=x86-64-v3", "default")))
#else
#define QS_WIDE
#endif

namespace quarterstep::bench
{

namespace
{

constexpr double radius = 0.01; ///< D, what a focimeter reads to. Each hit costs extra, so few are asked for

/// A lens as one keeps it without thinking of speed.
struct PlainLens {
    double m, j0, j45;
    double sphere, cylinder, axis;
    long number;
    int onHand, held;
    double price;
};

struct Lenses {
    std::vector<PlainLens> plain;
    PowerColumns columns;                            ///< in the order of `plain`
    PowerColumns distinct;                           ///< one a power, in blocks
    std::vector<std::vector<std::uint32_t>> linesOf; ///< of each distinct power
    std::vector<PowerVector> powers;
};

/// Lenses of any power, or in quarter dioptres and five degrees.
std::shared_ptr<Lenses> someLenses(std::size_t count, bool inSteps)
{
    auto lenses = std::make_shared<Lenses>();
    std::mt19937 random(11);
    const auto between = [&](double least, double most) {
        return least + (most - least) * (static_cast<double>(random()) / 4294967296.0);
    };
    std::map<PowerKey, std::size_t> places;
    std::vector<PowerVector> distinct;
    std::vector<std::vector<std::uint32_t>> lines;
    PowerColumns unordered;
    for (std::size_t i = 0; i < count; ++i) {
        double sphere = between(-6.0, 4.0);
        double cylinder = between(-2.0, 0.0);
        double axis = between(1.0, 180.0);
        if (inSteps) {
            sphere = std::round(sphere * 4.0) / 4.0;
            cylinder = std::round(cylinder * 4.0) / 4.0;
            axis = 5.0 * std::ceil(axis / 5.0);
        }
        const SpheroCylinder written{Dioptres{sphere}, Dioptres{cylinder}, AxisDegrees{axis}};
        const auto vector = toPowerVector(written);
        lenses->plain.push_back(
            {vector.m, vector.j0, vector.j45, sphere, cylinder, axis, static_cast<long>(i), 2, 0, 1.0});
        lenses->columns.add(vector);
        const auto [place, fresh] = places.emplace(keyOf(written), distinct.size());
        if (fresh) {
            distinct.push_back(vector);
            lines.emplace_back();
            unordered.add(vector);
        }
        lines[place->second].push_back(static_cast<std::uint32_t>(i));
    }
    for (const auto place : PowerColumns::neighbours(unordered, unordered)) {
        lenses->distinct.add(distinct[place]);
        lenses->powers.push_back(distinct[place]);
        lenses->linesOf.push_back(lines[place]);
    }
    lenses->distinct.finish();
    return lenses;
}

std::vector<std::uint32_t> plainLoop(const std::vector<PlainLens>& lenses, const PowerVector& need)
{
    std::vector<std::uint32_t> found;
    for (std::size_t i = 0; i < lenses.size(); ++i) {
        const double m = lenses[i].m - need.m;
        const double j0 = lenses[i].j0 - need.j0;
        const double j45 = lenses[i].j45 - need.j45;
        if (std::sqrt(m * m + j0 * j0 + j45 * j45) <= radius)
            found.push_back(static_cast<std::uint32_t>(i));
    }
    return found;
}

Wanted wantedAt(const PowerVector& need)
{
    Wanted wanted;
    wanted.need = need;
    return wanted;
}

double costWithin()
{
    return std::log10(1.0 + radius * radius);
}

double distance(const PlainLens& lens, const PowerVector& need)
{
    return blurStrength({lens.m - need.m, lens.j0 - need.j0, lens.j45 - need.j45});
}

std::vector<std::uint32_t> scanned(const Lenses& lenses, const PowerVector& need)
{
    auto found = lenses.columns.near(wantedAt(need), costWithin(), Beyond::nothing);
    std::erase_if(found, [&](std::uint32_t place) { return distance(lenses.plain[place], need) > radius; });
    return found;
}

/// Places among the distinct powers; each stands for all of its lines.
std::vector<std::uint32_t> indexed(const Lenses& lenses, const PowerVector& need)
{
    auto found = lenses.distinct.near(wantedAt(need), costWithin(), Beyond::nothing);
    std::erase_if(found,
                  [&](std::uint32_t place) { return blurStrength(lenses.powers[place] - need) > radius; });
    return found;
}

/// Reads three columns and does next to nothing with them.
QS_WIDE std::uint32_t readAll(const std::uint32_t* a, const std::uint32_t* b, const std::uint32_t* c,
                              std::size_t count)
{
    std::uint32_t sums[64] = {};
    for (std::size_t i = 0; i + 64 <= count; i += 64)
        for (std::size_t k = 0; k < 64; ++k)
            sums[k] += a[i + k] + b[i + k] + c[i + k];
    std::uint32_t sum = 0;
    for (const auto one : sums)
        sum += one;
    return sum;
}

const std::vector<PowerVector>& needs()
{
    static const std::vector<PowerVector> all{
        {-2.125, 0.3, -0.1}, {-1.0, -0.2, 0.25}, {0.5, 0.1, 0.4}, {-3.75, 0.0, 0.0}};
    return all;
}

template <class Answer>
void measureNeeds(Plan& plan, const std::string& name, Answer answer)
{
    plan.measure(name, static_cast<double>(needs().size()), [=] {
        for (const auto& need : needs())
            benchmark::DoNotOptimize(answer(need));
    });
}

void planScan(Plan& plan, const std::string& name, std::size_t count)
{
    const auto lenses = someLenses(count, false);
    for (const auto& need : needs())
        if (plainLoop(lenses->plain, need) != scanned(*lenses, need))
            plan.disagree(name + ": lenses within the radius");
    const auto columns = std::make_shared<std::vector<std::uint32_t>>(3 * count, 1U);
    measureNeeds(plan, name + "/loop",
                 [=](const PowerVector& need) { return plainLoop(lenses->plain, need); });
    measureNeeds(plan, name + "/columns", [=](const PowerVector& need) { return scanned(*lenses, need); });
    plan.measure(name + "/read", 1.0, [=] {
        benchmark::DoNotOptimize(
            readAll(columns->data(), columns->data() + count, columns->data() + 2 * count, count));
    });
    plan.atLeastTimesFaster(name, name + "/loop", name + "/columns", 10.0);
    plan.atLeastTimesFaster(name + "_of_read_limit", name + "/read", name + "/columns", 0.75);
}

void planIndexed(Plan& plan, const std::string& name, std::size_t count, double timesFaster)
{
    const auto lenses = someLenses(count, true);
    for (const auto& need : needs()) {
        std::vector<std::uint32_t> lines;
        for (const auto place : indexed(*lenses, need))
            lines.insert(lines.end(), lenses->linesOf[place].begin(), lenses->linesOf[place].end());
        std::sort(lines.begin(), lines.end());
        if (lines != plainLoop(lenses->plain, need))
            plan.disagree(name + ": lenses within the radius");
    }
    plan.note(name + ": " + std::to_string(lenses->powers.size()) + " distinct powers");
    measureNeeds(plan, name + "/loop",
                 [=](const PowerVector& need) { return plainLoop(lenses->plain, need); });
    measureNeeds(plan, name + "/blocks", [=](const PowerVector& need) { return indexed(*lenses, need); });
    plan.atLeastTimesFaster(name, name + "/loop", name + "/blocks", timesFaster);
}

} // namespace

void planScans(Plan& plan)
{
    planScan(plan, "scan/10000", plan.size(10000, 200));
    planScan(plan, "scan/100000", plan.size(100000, 400));
    planScan(plan, "scan/1000000", plan.size(1000000, 800));
    planIndexed(plan, "scan/10000_in_steps", plan.size(10000, 200), 30.0);
    planIndexed(plan, "scan/100000_in_steps", plan.size(100000, 400), 300.0);
}

} // namespace quarterstep::bench
