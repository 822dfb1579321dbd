// SPDX-License-Identifier: GPL-3.0-or-later
// Lines where a frame, a right and a left lens serve somebody together: choosing from such bundles is as hard
// as matching in three dimensions. A linear program over the ways to serve each person, its columns priced in
// as they are needed, gives prices of the lines; prices, whatever they are, bound every plan (Lagrange). The
// plan keeps what the program gives whole and searches the rest.
//   bound = Σ pieces · price + Σ over people of the best gain left at these prices, 0 at least
#include "core/planning/linear_program.hpp"
#include "core/planning/waiting_line.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <tuple>

namespace quarterstep
{

namespace
{

constexpr double whole = 1.0 - 1e-6;
constexpr double pricedIn = 1e-7;           ///< gain over its price from which a column comes in
constexpr int rounds = 80;                  ///< of pricing, at most
constexpr std::size_t searchedWhole = 2500; ///< columns up to which the whole problem is searched
constexpr std::size_t oncePriced = 3;       ///< columns a person that come in at once

struct Prices {
    std::vector<double> resource;
    std::vector<double> floor;
};

struct Result {
    std::vector<std::int32_t> choiceOf; ///< one a line entry
    Prices prices;
    bool proved = false;
};

/// One person: the entry of the line, what serving counts.
struct Member {
    std::size_t entry = 0;
    double weight = 1.0;
};

class MixedProblem
{
  public:
    MixedProblem(const std::vector<Waiting>& line, const std::vector<int>& available, const Aims& aims,
                 std::vector<Member> members, std::vector<ServiceFloor> floors)
        : line_(line), available_(available), aims_(aims), members_(std::move(members)),
          floors_(std::move(floors)), floorOf_(line.size(), -1)
    {
        double most = 0.0;
        for (const auto& member : members_) {
            double worst = 0.0;
            for (const auto& choice : line_[member.entry].choices)
                worst = std::max(worst, lossOfChoice(choice));
            most += worst;
            total_ += member.weight;
        }
        lossUnit_ = 1.0 / (1.0 + most);
        for (std::size_t floor = 0; floor < floors_.size(); ++floor)
            for (const auto person : floors_[floor].people)
                floorOf_[person] = static_cast<int>(floor);
    }

    Result solve(const PlanOptions& options);
    /// What no plan of these members can pass: weight of the served. Holds for any prices >= 0.
    [[nodiscard]] double bound(const Prices& prices) const;
    /// Least loss of any plan of these members that serves this weight, logMAR.
    [[nodiscard]] double lossBound(const Prices& prices, double weight) const;

  private:
    struct Column {
        std::size_t member = 0;
        std::size_t choice = 0;
        std::size_t column = 0;
    };

    [[nodiscard]] double lossOfChoice(const Choice& choice) const
    {
        double scarcity = 0.0; // a hundredth of a loss unit: only decides between equals
        for (const auto resource : choice.used())
            scarcity += aims_.scarcity[resource];
        return choice.loss + 0.01 * scarcity;
    }
    [[nodiscard]] double gainOf(const Member& member, const Choice& choice) const
    {
        return member.weight - lossUnit_ * lossOfChoice(choice);
    }
    [[nodiscard]] const std::vector<Choice>& choicesOf(std::size_t member) const
    {
        return line_[members_[member].entry].choices;
    }
    [[nodiscard]] static double priceOf(const Choice& choice, const Prices& prices)
    {
        double price = 0.0;
        for (const auto resource : choice.used())
            price += prices.resource[resource];
        return price;
    }
    [[nodiscard]] double worthAt(const Prices& prices, bool withLoss) const;
    void improve(std::vector<int>& left, const PlanOptions& options, Result& result) const;
    [[nodiscard]] std::vector<std::size_t> worstPlaced(const Result& result) const;
    [[nodiscard]] double worthOf(const Result& result) const;
    void makeRows();
    void addColumn(std::size_t member, std::size_t choice, bool wholeNumber = false);
    [[nodiscard]] Prices prices() const;
    bool priceIn();
    void roundPlan(const PlanOptions& options, Result& result);
    void searchRest(const std::vector<std::size_t>& rest, std::vector<int>& left, const PlanOptions& options,
                    Result& result) const;
    void fill(std::vector<int>& left, Result& result) const;
    [[nodiscard]] bool makeRoom(std::size_t member, std::vector<int>& left, Result& result) const;

    const std::vector<Waiting>& line_;
    const std::vector<int>& available_;
    const Aims& aims_;
    std::vector<Member> members_;
    std::vector<ServiceFloor> floors_;
    std::vector<int> floorOf_;
    double total_ = 0.0;
    double lossUnit_ = 1.0;
    LinearProgram program_;
    std::vector<std::size_t> personRow_;
    std::vector<std::size_t> resourceRow_;
    std::vector<std::size_t> floorRow_;
    std::vector<Column> columns_;
    std::vector<std::vector<bool>> isIn_;
};

void MixedProblem::makeRows()
{
    for (const auto& member : members_) {
        personRow_.push_back(program_.addRow(1.0));
        isIn_.emplace_back(line_[member.entry].choices.size(), false);
    }
    for (const int pieces : available_)
        resourceRow_.push_back(program_.addRow(pieces));
    for (const auto& floor : floors_) { // -served - short <= -least; being short costs more than all else
        floorRow_.push_back(program_.addRow(-static_cast<double>(floor.least)));
        program_.addColumn(-(total_ + 1.0), std::nullopt, {{floorRow_.back(), -1.0}});
    }
}

void MixedProblem::addColumn(std::size_t member, std::size_t choice, bool wholeNumber)
{
    if (isIn_[member][choice])
        return;
    isIn_[member][choice] = true;
    const auto& taken = choicesOf(member)[choice];
    std::vector<RowEntry> entries{{personRow_[member], 1.0}};
    for (const auto resource : taken.used())
        if (entries.back().row == resourceRow_[resource] && entries.size() > 1)
            entries.back().factor += 1.0; // the same line right and left
        else
            entries.push_back({resourceRow_[resource], 1.0});
    if (const int floor = floorOf_[members_[member].entry]; floor >= 0)
        entries.push_back({floorRow_[static_cast<std::size_t>(floor)], -1.0});
    columns_.push_back(
        {member, choice,
         program_.addColumn(gainOf(members_[member], taken), std::nullopt, entries, wholeNumber)});
}

Prices MixedProblem::prices() const
{
    Prices prices;
    for (const auto row : resourceRow_)
        prices.resource.push_back(std::max(0.0, program_.price(row)));
    for (const auto row : floorRow_)
        prices.floor.push_back(std::max(0.0, program_.price(row)));
    return prices;
}

/// The pieces at their prices, and for each person what the best choice is worth above its price.
double MixedProblem::worthAt(const Prices& prices, bool withLoss) const
{
    double sum = 0.0;
    for (std::size_t i = 0; i < available_.size(); ++i)
        sum += available_[i] * prices.resource[i];
    for (std::size_t member = 0; member < members_.size(); ++member) {
        double best = 0.0;
        for (const auto& choice : choicesOf(member)) {
            const double gain = withLoss ? gainOf(members_[member], choice) : members_[member].weight;
            best = std::max(best, gain - priceOf(choice, prices));
        }
        sum += best;
    }
    return sum;
}

double MixedProblem::bound(const Prices& prices) const
{
    // All losses together are less than one person: weight - 1 < worth.
    const double slack = 1e-9 * (1.0 + total_);
    return std::min({std::floor(worthAt(prices, false) + slack),
                     std::ceil(worthAt(prices, true) + slack + 1.0) - 1.0, std::floor(total_ + slack)});
}

double MixedProblem::lossBound(const Prices& prices, double weight) const
{
    constexpr double unit = 1e-4;           // logMAR
    constexpr double mostOfScarcity = 0.45; // three parts of 15, a hundredth each
    const double units =
        (weight - worthAt(prices, true)) / lossUnit_ - mostOfScarcity * static_cast<double>(members_.size());
    return std::max(0.0, units * unit);
}

/// Lets columns in that are worth more than their price. False when there are none.
bool MixedProblem::priceIn()
{
    const auto prices = this->prices();
    bool any = false;
    for (std::size_t member = 0; member < members_.size(); ++member) {
        const double own = program_.price(personRow_[member]);
        const int floor = floorOf_[members_[member].entry];
        const double more = floor >= 0 ? prices.floor[static_cast<std::size_t>(floor)] : 0.0;
        std::vector<std::pair<double, std::size_t>> worth;
        const auto& choices = choicesOf(member);
        for (std::size_t i = 0; i < choices.size(); ++i)
            if (!isIn_[member][i]) {
                const double gain =
                    gainOf(members_[member], choices[i]) + more - priceOf(choices[i], prices) - own;
                if (gain > pricedIn)
                    worth.emplace_back(-gain, i);
            }
        const auto most = std::min(oncePriced, worth.size());
        std::partial_sort(worth.begin(), worth.begin() + static_cast<std::ptrdiff_t>(most), worth.end());
        for (std::size_t i = 0; i < most; ++i)
            addColumn(member, worth[i].second);
        any = any || most > 0;
    }
    return any;
}

/// Searches the people whom the linear program served in parts, with what is left.
void MixedProblem::searchRest(const std::vector<std::size_t>& rest, std::vector<int>& left,
                              const PlanOptions& options, Result& result) const
{
    std::vector<Member> members;
    members.reserve(rest.size());
    for (const auto member : rest)
        members.push_back(members_[member]);
    MixedProblem small(line_, left, aims_, std::move(members), {});
    small.makeRows();
    for (std::size_t member = 0; member < rest.size(); ++member) {
        const auto& choices = small.choicesOf(member);
        std::vector<std::pair<double, std::size_t>> worth;
        for (std::size_t i = 0; i < choices.size(); ++i)
            if (isFree(choices[i], left))
                worth.emplace_back(
                    priceOf(choices[i], result.prices) - gainOf(small.members_[member], choices[i]), i);
        std::sort(worth.begin(), worth.end());
        constexpr std::size_t most = 40;
        for (std::size_t i = 0; i < std::min(most, worth.size()); ++i)
            small.addColumn(member, worth[i].second, true);
    }
    if (!small.program_.solve())
        return;
    const auto found = small.program_.solveWhole(options.nodes);
    if (!found)
        return;
    for (const auto& column : small.columns_)
        if (found->values[column.column] > 0.5) {
            const auto entry = small.members_[column.member].entry;
            result.choiceOf[entry] = static_cast<std::int32_t>(column.choice);
            take(line_[entry].choices[column.choice], left);
        }
}

void MixedProblem::roundPlan(const PlanOptions& options, Result& result)
{
    auto left = available_;
    std::vector<double> part(members_.size(), 0.0);
    for (const auto& column : columns_) {
        const double value = program_.value(column.column);
        part[column.member] += value;
        if (value < whole)
            continue;
        const auto entry = members_[column.member].entry;
        result.choiceOf[entry] = static_cast<std::int32_t>(column.choice);
        take(line_[entry].choices[column.choice], left);
    }
    std::vector<std::size_t> rest;
    for (std::size_t member = 0; member < members_.size(); ++member)
        if (part[member] > 1e-6 && result.choiceOf[members_[member].entry] == nothingGiven)
            rest.push_back(member);
    if (!rest.empty())
        searchRest(rest, left, options, result);
    fill(left, result);
    improve(left, options, result);
}

double MixedProblem::worthOf(const Result& result) const
{
    double worth = 0.0;
    for (const auto& member : members_)
        if (const auto held = result.choiceOf[member.entry]; held != nothingGiven)
            worth += gainOf(member, line_[member.entry].choices[static_cast<std::size_t>(held)]);
    return worth;
}

/// Those who lose most against their best choice or have nothing, and whoever holds what these would rather
/// have.
std::vector<std::size_t> MixedProblem::worstPlaced(const Result& result) const
{
    constexpr std::size_t worst = 20;
    constexpr std::size_t most = 60;
    constexpr std::size_t wanted = 4; // choices of each whose holders take part
    std::vector<std::pair<double, std::size_t>> regrets;
    for (std::size_t member = 0; member < members_.size(); ++member) {
        const auto& choices = choicesOf(member);
        const auto held = result.choiceOf[members_[member].entry];
        if (choices.empty())
            continue;
        double best = -1.0;
        for (const auto& choice : choices)
            best = std::max(best, gainOf(members_[member], choice) - priceOf(choice, result.prices));
        const double now = held == nothingGiven
                               ? 0.0
                               : gainOf(members_[member], choices[static_cast<std::size_t>(held)]) -
                                     priceOf(choices[static_cast<std::size_t>(held)], result.prices);
        if (best - now > pricedIn)
            regrets.emplace_back(now - best, member);
    }
    std::sort(regrets.begin(), regrets.end());
    std::vector<bool> in(members_.size(), false);
    std::vector<bool> sought(available_.size(), false);
    std::vector<std::size_t> group;
    for (std::size_t i = 0; i < std::min(worst, regrets.size()); ++i) {
        const auto member = regrets[i].second;
        group.push_back(member);
        in[member] = true;
        const auto& choices = choicesOf(member);
        for (std::size_t k = 0; k < std::min(wanted, choices.size()); ++k)
            for (const auto resource : choices[k].used())
                sought[resource] = true;
    }
    for (std::size_t member = 0; member < members_.size() && group.size() < most; ++member) {
        const auto held = result.choiceOf[members_[member].entry];
        if (in[member] || held == nothingGiven)
            continue;
        const auto& holding = choicesOf(member)[static_cast<std::size_t>(held)];
        if (std::any_of(holding.used().begin(), holding.used().end(),
                        [&](auto resource) { return sought[resource]; }))
            group.push_back(member);
    }
    return group;
}

/// Plans some people again, exactly, with what they hold and what is left; kept while it helps.
void MixedProblem::improve(std::vector<int>& left, const PlanOptions& options, Result& result) const
{
    constexpr int improvements = 6;
    for (int i = 0; i < improvements; ++i) {
        const auto group = worstPlaced(result);
        if (group.empty())
            return;
        const auto before = result.choiceOf;
        const auto leftBefore = left;
        const double worth = worthOf(result);
        for (const auto member : group)
            if (auto& held = result.choiceOf[members_[member].entry]; held != nothingGiven) {
                take(choicesOf(member)[static_cast<std::size_t>(held)], left, -1);
                held = nothingGiven;
            }
        searchRest(group, left, options, result);
        if (worthOf(result) > worth + 1e-12)
            continue;
        result.choiceOf = before;
        left = leftBefore;
        return;
    }
}

/// Somebody who holds what is missing moves to something else that is free.
bool MixedProblem::makeRoom(std::size_t member, std::vector<int>& left, Result& result) const
{
    const auto& choices = choicesOf(member);
    for (std::size_t i = 0; i < choices.size(); ++i)
        for (std::size_t other = 0; other < members_.size(); ++other) {
            const auto holder = members_[other].entry;
            const auto held = result.choiceOf[holder];
            if (held == nothingGiven)
                continue;
            const auto& holding = line_[holder].choices[static_cast<std::size_t>(held)];
            const bool touches =
                std::any_of(holding.used().begin(), holding.used().end(), [&](auto resource) {
                    return left[resource] <= 1 &&
                           std::find(choices[i].used().begin(), choices[i].used().end(), resource) !=
                               choices[i].used().end();
                });
            if (!touches)
                continue;
            take(holding, left, -1);
            if (isFree(choices[i], left)) {
                take(choices[i], left);
                const auto& others = line_[holder].choices;
                const auto moved = std::find_if(others.begin(), others.end(),
                                                [&](const Choice& choice) { return isFree(choice, left); });
                if (moved != others.end()) {
                    take(*moved, left);
                    result.choiceOf[holder] = static_cast<std::int32_t>(moved - others.begin());
                    result.choiceOf[members_[member].entry] = static_cast<std::int32_t>(i);
                    return true;
                }
                take(choices[i], left, -1);
            }
            take(holding, left);
        }
    return false;
}

void MixedProblem::fill(std::vector<int>& left, Result& result) const
{
    std::vector<std::size_t> waiting;
    for (std::size_t member = 0; member < members_.size(); ++member)
        if (result.choiceOf[members_[member].entry] == nothingGiven)
            waiting.push_back(member);
    for (const auto member : waiting) {
        const auto& choices = choicesOf(member);
        const auto found = std::find_if(choices.begin(), choices.end(),
                                        [&](const Choice& choice) { return isFree(choice, left); });
        if (found == choices.end())
            continue;
        take(*found, left);
        result.choiceOf[members_[member].entry] = static_cast<std::int32_t>(found - choices.begin());
    }
    double open = bound(result.prices);
    for (const auto& member : members_)
        open -= result.choiceOf[member.entry] == nothingGiven ? 0.0 : member.weight;
    for (const auto member : waiting) {
        if (open < 1.0)
            return;
        if (result.choiceOf[members_[member].entry] == nothingGiven && makeRoom(member, left, result))
            open -= members_[member].weight;
    }
}

Result MixedProblem::solve(const PlanOptions& options)
{
    Result result;
    result.choiceOf.assign(line_.size(), nothingGiven);
    makeRows();
    std::size_t all = 0;
    for (std::size_t member = 0; member < members_.size(); ++member)
        all += choicesOf(member).size();
    const bool small = all <= searchedWhole;
    for (std::size_t member = 0; member < members_.size(); ++member)
        for (std::size_t i = 0;
             i < (small ? choicesOf(member).size() : std::min<std::size_t>(2, choicesOf(member).size())); ++i)
            addColumn(member, i, small);
    bool solved = program_.solve();
    for (int round = 0; solved && !small && round < rounds && priceIn(); ++round)
        solved = program_.solve();
    result.prices = solved ? prices() : Prices{std::vector<double>(available_.size(), 0.0), {}};
    if (solved && small)
        if (const auto found = program_.solveWhole(10 * options.nodes)) {
            for (const auto& column : columns_)
                if (found->values[column.column] > 0.5)
                    result.choiceOf[members_[column.member].entry] = static_cast<std::int32_t>(column.choice);
            result.proved = found->proved;
            return result;
        }
    if (solved) {
        roundPlan(options, result);
    } else {
        auto left = available_;
        fill(left, result);
    }
    return result;
}

double weightServed(const std::vector<std::int32_t>& choiceOf, const Aims& aims)
{
    double weight = 0.0;
    for (std::size_t i = 0; i < choiceOf.size(); ++i)
        weight += choiceOf[i] == nothingGiven ? 0.0 : aims.weightOf[i];
    return weight;
}

std::vector<ServiceFloor> floorsAmong(const std::vector<ServiceFloor>& floors, const std::vector<bool>& there)
{
    std::vector<ServiceFloor> kept;
    for (const auto& floor : floors) {
        ServiceFloor one{{}, floor.least};
        for (const auto person : floor.people)
            if (there[person])
                one.people.push_back(person);
        one.least = std::min(one.least, static_cast<int>(one.people.size()));
        if (one.least > 0)
            kept.push_back(std::move(one));
    }
    return kept;
}

} // namespace

namespace
{

/// Whose aims and choices are the same stand in an order of their own, so that the order of the table decides
/// nothing.
std::vector<std::size_t> ownOrder(const std::vector<Waiting>& line, const Aims& aims)
{
    std::vector<std::size_t> order(line.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto before = [](const Choice& a, const Choice& b) {
        return std::tie(a.loss, a.parts, a.resources) < std::tie(b.loss, b.parts, b.resources);
    };
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        if (aims.classOf[a] != aims.classOf[b])
            return aims.classOf[a] < aims.classOf[b];
        if (aims.weightOf[a] != aims.weightOf[b])
            return aims.weightOf[a] > aims.weightOf[b];
        const auto& one = line[a].choices;
        const auto& other = line[b].choices;
        return std::lexicographical_compare(one.begin(), one.end(), other.begin(), other.end(), before);
    });
    return order;
}

Aims inOrder(const Aims& aims, const std::vector<std::size_t>& order)
{
    Aims sorted = aims;
    std::vector<std::uint32_t> placeOf(order.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        sorted.classOf[i] = aims.classOf[order[i]];
        sorted.weightOf[i] = aims.weightOf[order[i]];
        placeOf[order[i]] = static_cast<std::uint32_t>(i);
    }
    for (auto& floor : sorted.floors)
        for (auto& person : floor.people)
            person = placeOf[person];
    return sorted;
}

LinePlan planSorted(const std::vector<Waiting>& line, const std::vector<int>& available,
                    const PlanOptions& options, const Aims& aims)
{
    std::vector<Member> everybody;
    for (std::size_t i = 0; i < line.size(); ++i)
        everybody.push_back({i, static_cast<double>(aims.weightOf[i])});
    LinePlan plan;
    plan.proof.method = Method::linear;
    // Class after class: whoever was served counts more than the whole next class, and so stays served.
    Result result;
    result.choiceOf.assign(line.size(), nothingGiven);
    for (int now = 0; now < aims.classes; ++now) {
        std::vector<Member> members;
        std::vector<bool> there(line.size(), false);
        double ofThisClass = 1.0;
        for (std::size_t i = 0; i < line.size(); ++i)
            ofThisClass += aims.classOf[i] == now ? aims.weightOf[i] : 0.0;
        for (std::size_t i = 0; i < line.size(); ++i) {
            const bool kept = result.choiceOf[i] != nothingGiven;
            if (kept || aims.classOf[i] == now)
                members.push_back({i, kept ? ofThisClass : aims.weightOf[i]});
            there[i] = kept || aims.classOf[i] == now;
        }
        result = MixedProblem(line, available, aims, std::move(members), floorsAmong(aims.floors, there))
                     .solve(options);
    }
    plan.choiceOf = result.choiceOf;
    plan.proof.reached = weightServed(result.choiceOf, aims);
    const bool oneClass = aims.classes == 1;
    MixedProblem all(line, available, aims, everybody, {});
    auto prices = result.prices;
    if (!oneClass && options.proof)
        prices = all.solve(options).prices;
    plan.proof.bound = all.bound(prices);
    plan.proof.lossBound = all.lossBound(prices, plan.proof.reached);
    if (oneClass && result.proved) {
        plan.proof.bound = plan.proof.reached;
        plan.proof.method = Method::wholeNumbers;
    }
    if (options.gains)
        for (const double price : prices.resource)
            plan.oneMore.push_back({price, 0.0});
    return plan;
}

} // namespace

LinePlan planMixedLine(const std::vector<Waiting>& line, const std::vector<int>& available,
                       const PlanOptions& options, const Aims& aims)
{
    const auto order = ownOrder(line, aims);
    std::vector<Waiting> sorted;
    sorted.reserve(line.size());
    for (const auto place : order)
        sorted.push_back(line[place]);
    auto plan = planSorted(sorted, available, options, inOrder(aims, order));
    const auto choiceOf = plan.choiceOf;
    for (std::size_t i = 0; i < order.size(); ++i)
        plan.choiceOf[order[i]] = choiceOf[i];
    return plan;
}

} // namespace quarterstep
