// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/planning_lines.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep::check
{

namespace
{

/// Uniform on 0 … most - 1: plain modulo of the engine, whose numbers the standard fixes.
int below(std::mt19937& engine, int most)
{
    return static_cast<int>(engine() % static_cast<std::uint32_t>(std::max(1, most)));
}

/// Triangular around `middle`, in quarters of a dioptre.
int quarters(std::mt19937& engine, int middle, int spread)
{
    return middle + below(engine, spread) - below(engine, spread);
}

std::int32_t lossOfError(int first, int second)
{
    const double sum = std::log10(1.0 + first * first / 16.0) + std::log10(1.0 + second * second / 16.0);
    return static_cast<std::int32_t>(std::lround(10000.0 * sum));
}

void addWay(Waiting& person, std::initializer_list<int> resources, std::int32_t loss)
{
    Choice choice;
    choice.parts = static_cast<std::uint8_t>(resources.size());
    std::size_t place = 0;
    for (const int resource : resources)
        choice.resources.at(place++) = static_cast<std::uint32_t>(resource);
    choice.loss = loss;
    choice.lossLogMar = static_cast<float>(loss) * 1e-4F;
    person.choices.push_back(choice);
}

} // namespace

DrawnLine drawLine(std::uint32_t seed, const DrawnSize& size)
{
    std::mt19937 engine(seed);
    constexpr int middle = 6;
    constexpr int spread = 9;
    std::vector<int> pairs;
    std::vector<int> lenses;
    for (int i = 0; i < size.pairs; ++i)
        pairs.push_back(quarters(engine, middle, spread));
    for (int i = 0; i < size.lenses; ++i)
        lenses.push_back(quarters(engine, middle, spread));
    DrawnLine line;
    const auto pieces = [&](double mean) { return below(engine, static_cast<int>(2.0 * mean) + 1); };
    for (int i = 0; i < size.pairs + size.lenses; ++i)
        line.available.push_back(pieces(i < size.pairs ? size.pieces : 2.0 * size.pieces));
    for (int i = 0; i < size.frames; ++i)
        line.available.push_back(pieces(size.pieces * std::max(1, size.lenses) / std::max(1, size.frames)));
    for (int i = 0; i < size.people; ++i) {
        Waiting person;
        person.person = std::to_string(i);
        person.child = below(engine, 4) == 0;
        person.bareLoss = below(engine, 12) * 0.1;
        const int right = quarters(engine, middle, spread);
        const int left = right + (below(engine, 3) == 0 ? quarters(engine, 0, 4) : 0);
        for (int p = 0; p < size.pairs; ++p)
            if (std::abs(pairs[static_cast<std::size_t>(p)] - right) <= 2 &&
                std::abs(pairs[static_cast<std::size_t>(p)] - left) <= 2)
                addWay(person, {p},
                       lossOfError(pairs[static_cast<std::size_t>(p)] - right,
                                   pairs[static_cast<std::size_t>(p)] - left));
        const int fits = size.frames > 0 ? below(engine, size.frames) : 0;
        for (int r = 0; r < size.lenses; ++r)
            for (int l = 0; l < size.lenses; ++l)
                for (int f = std::max(0, fits - 1); f < std::min(size.frames, fits + 2); ++f)
                    if (const int er = lenses[static_cast<std::size_t>(r)] - right,
                        el = lenses[static_cast<std::size_t>(l)] - left;
                        std::abs(er) <= 1 && std::abs(el) <= 1)
                        addWay(person, {size.pairs + size.lenses + f, size.pairs + r, size.pairs + l},
                               lossOfError(er, el) + 5);
        std::stable_sort(person.choices.begin(), person.choices.end(),
                         [](const Choice& a, const Choice& b) { return a.loss < b.loss; });
        if (person.choices.size() > static_cast<std::size_t>(size.mostWays))
            person.choices.resize(static_cast<std::size_t>(size.mostWays));
        line.people.push_back(std::move(person));
    }
    return line;
}

DrawnLine drawWideLine(std::uint32_t seed, int people, int lines, double pieces)
{
    constexpr int middle = 20; // quarters
    constexpr int spread = 14;
    constexpr int widths = 16; // steps of 1 mm
    struct Point {
        int power;
        int width;
    };
    std::mt19937 engine(seed);
    const auto point = [&] {
        const int power = quarters(engine, middle, spread);
        return Point{power, (below(engine, widths) + below(engine, widths)) / 2};
    };
    std::vector<Point> stock;
    DrawnLine line;
    for (int i = 0; i < lines; ++i) {
        stock.push_back(point());
        line.available.push_back(below(engine, static_cast<int>(2.0 * pieces * people / lines) + 1));
    }
    for (int i = 0; i < people; ++i) {
        Waiting person;
        person.person = std::to_string(i);
        const auto need = point();
        const int other = need.power + below(engine, 3) - 1;
        for (int k = 0; k < lines; ++k) {
            const auto& sold = stock[static_cast<std::size_t>(k)];
            if (std::abs(sold.power - need.power) <= 2 && std::abs(sold.width - need.width) <= 2)
                addWay(person, {k},
                       lossOfError(sold.power - need.power, sold.power - other) +
                           40 * std::abs(sold.width - need.width));
        }
        std::stable_sort(person.choices.begin(), person.choices.end(),
                         [](const Choice& a, const Choice& b) { return a.loss < b.loss; });
        line.people.push_back(std::move(person));
    }
    return line;
}

namespace
{

void tryFrom(const DrawnLine& line, std::size_t person, int served, long loss, std::vector<int>& left,
             Exhaustive& best)
{
    if (served + static_cast<int>(line.people.size() - person) < best.served)
        return;
    if (person == line.people.size()) {
        if (served > best.served || (served == best.served && loss < best.loss))
            best = {served, loss};
        return;
    }
    for (const auto& choice : line.people[person].choices)
        if (isFree(choice, left)) {
            take(choice, left);
            tryFrom(line, person + 1, served + 1, loss + choice.loss, left, best);
            take(choice, left, -1);
        }
    tryFrom(line, person + 1, served, loss, left, best);
}

} // namespace

Exhaustive tryEverything(const DrawnLine& line)
{
    Exhaustive best{0, 0};
    auto left = line.available;
    tryFrom(line, 0, 0, 0, left, best);
    return best;
}

long lossOfPlan(const DrawnLine& line, const LinePlan& plan)
{
    long loss = 0;
    for (std::size_t i = 0; i < line.people.size(); ++i)
        if (plan.choiceOf[i] != nothingGiven)
            loss += line.people[i].choices[static_cast<std::size_t>(plan.choiceOf[i])].loss;
    return loss;
}

bool canBeDone(const DrawnLine& line, const LinePlan& plan)
{
    auto left = line.available;
    for (std::size_t i = 0; i < line.people.size(); ++i)
        if (plan.choiceOf[i] != nothingGiven)
            take(line.people[i].choices.at(static_cast<std::size_t>(plan.choiceOf[i])), left);
    return std::all_of(left.begin(), left.end(), [](int pieces) { return pieces >= 0; });
}

} // namespace quarterstep::check
