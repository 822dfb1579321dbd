// SPDX-License-Identifier: GPL-3.0-or-later
// What no packs within the limits can pass. The program picks packs in parts and one served number a scenario
// below all cuts known; where its point serves less than it says, the cut of that scenario at that point is
// the next to be known (Benders J, Numer Math 1962;4:238-252).
//
// A scenario has no use for more pieces of a resource than are wanted there. So the first, second … pack of
// an offer are columns of their own, each counted in each scenario with the pieces that could still find
// somebody: min(pieces, wanted) drawn straight between whole packs. That is never less than what whole packs
// give, and much less than what parts of packs would.
#include "core/planning/linear_program.hpp"
#include "core/planning/packing.hpp"
#include "core/planning/scenario_cut.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

class Benders
{
  public:
    Benders(const PackingProblem& problem, const std::vector<Scenario>& scenarios) : problem_(problem)
    {
        for (const auto& scenario : scenarios) {
            services_.emplace_back(problem, scenario);
            needs_ += static_cast<double>(scenario.size());
        }
        findOnlyOffers();
        addPacks();
        for (const auto& service : services_)
            served_.push_back(program_.addColumn(1.0, static_cast<double>(service.servable()), {}));
    }

    /// The bound after at most `rounds`, as a share of the needs. Cuts are made at the program's point and
    /// halfway between it and the best point known (Ben-Ameur W, Neto J, Networks 2007;49:3-17): they bite
    /// deeper there.
    double run(int rounds, const std::vector<int>& from, const std::function<bool()>& goOn,
               std::vector<double>& best)
    {
        double bound = 1.0;
        auto point = stepsOf(from);
        double bestReached = cutAt(point, true);
        for (int round = 0; round < rounds && (!goOn || goOn()) && program_.solve(); ++round) {
            bound = std::min(bound, needs_ > 0.0 ? program_.best() / needs_ : 0.0);
            if (program_.best() - bestReached <= 1e-4 * (1.0 + needs_))
                break;
            std::vector<double> solved;
            solved.reserve(steps_.size());
            for (const auto& step : steps_)
                solved.push_back(
                    std::clamp(program_.value(step.column), 0.0, static_cast<double>(step.packs)));
            auto between = solved;
            for (std::size_t i = 0; i < between.size(); ++i)
                between[i] = (between[i] + point[i]) / 2.0;
            keepSolved();
            const double atSolved = cutAt(solved, false);
            const double atBetween = cutAt(between, false);
            if (std::max(atSolved, atBetween) > bestReached) {
                bestReached = std::max(atSolved, atBetween);
                point = atSolved > atBetween ? solved : between;
            }
            if (added_ == 0)
                break;
        }
        best = packsAt(point);
        return bound;
    }

  private:
    /// Some more packs of an offer; all of them count as the first of them does.
    struct Step {
        std::size_t offer = 0;
        int number = 0; ///< of the first pack, from 0
        int packs = 1;
        std::size_t column = 0;
    };

    /// Resources that a single offer holds, alone: their pieces can be counted pack by pack.
    void findOnlyOffers()
    {
        onlyOffer_.assign(problem_.onHand.size(), nobody);
        for (std::size_t i = 0; i < problem_.offers.size(); ++i)
            for (const auto& [resource, count] : problem_.offers[i].holds)
                onlyOffer_[resource] = onlyOffer_[resource] == nobody ? i : several;
    }

    /// Packs of an offer that could be of use to any scenario, and those that are wholly of use to every
    /// scenario that has a use for them at all.
    [[nodiscard]] std::pair<int, int> usefulPacks(std::size_t offer) const
    {
        int most = 0;
        int least = problem_.offers[offer].most;
        for (const auto& [resource, count] : problem_.offers[offer].holds)
            for (const auto& service : services_) {
                const auto found = service.wanted().find(resource);
                if (found == service.wanted().end() || found->second <= problem_.onHand[resource])
                    continue;
                const int lacking = found->second - problem_.onHand[resource];
                most = std::max(most, (lacking + count - 1) / count);
                least = std::min(least, lacking / count);
            }
        most = std::min(most, problem_.offers[offer].most);
        return {most, std::min(least, most)};
    }

    void addPacks()
    {
        constexpr int columns = 3000; // of all offers, about
        const auto& limits = problem_.limits;
        cost_ = program_.addRow(static_cast<double>(limits.budget) / 1000.0);
        weight_ = program_.addRow(static_cast<double>(limits.weight.value_or(1'000'000'000)) / 1000.0);
        pieces_ = program_.addRow(limits.pieces.value_or(1'000'000'000));
        const int ofOffer = std::max(3, columns / static_cast<int>(problem_.offers.size() + 1));
        for (std::size_t i = 0; i < problem_.offers.size(); ++i) {
            const auto [most, least] = usefulPacks(i);
            if (least > 0)
                addStep(i, 0, least);
            const int each = std::max(1, (most - least + ofOffer - 1) / ofOffer);
            for (int number = least; number < most; number += each)
                addStep(i, number, std::min(each, most - number));
        }
    }

    void addStep(std::size_t offer, int number, int packs)
    {
        const auto& sold = problem_.offers[offer];
        steps_.push_back({offer, number, packs,
                          program_.addColumn(0.0, packs,
                                             {{cost_, static_cast<double>(sold.cost) / 1000.0},
                                              {weight_, static_cast<double>(sold.weight) / 1000.0},
                                              {pieces_, static_cast<double>(sold.pieces())}})});
    }

    [[nodiscard]] std::vector<double> stepsOf(const std::vector<int>& packs) const
    {
        std::vector<double> values;
        values.reserve(steps_.size());
        for (const auto& step : steps_)
            values.push_back(std::clamp(packs[step.offer] - step.number, 0, step.packs));
        return values;
    }

    [[nodiscard]] std::vector<double> packsAt(const std::vector<double>& values) const
    {
        std::vector<double> packs(problem_.offers.size(), 0.0);
        for (std::size_t i = 0; i < steps_.size(); ++i)
            packs[steps_[i].offer] += values[i];
        return packs;
    }

    /// Pieces of a resource that one more pack adds to what a scenario has a use for.
    [[nodiscard]] double adds(const Step& step, std::uint32_t resource, int count, int wanted) const
    {
        if (onlyOffer_[resource] == several)
            return count;
        const int before = problem_.onHand[resource] + count * step.number;
        return std::clamp(wanted - before, 0, count);
    }

    [[nodiscard]] int wantedIn(std::size_t scenario, std::uint32_t resource) const
    {
        const auto& wanted = services_[scenario].wanted();
        const auto found = wanted.find(resource);
        return found == wanted.end() ? 0 : found->second;
    }

    void keepSolved()
    {
        solvedServed_.clear();
        for (const auto column : served_)
            solvedServed_.push_back(program_.value(column));
        solvedSteps_.clear();
        for (const auto& step : steps_)
            solvedSteps_.push_back(program_.value(step.column));
        added_ = 0;
    }

    /// Cuts of every scenario at a point; those that the program's last point is above go in (`all`: every
    /// one). Returns what the point serves.
    double cutAt(const std::vector<double>& values, bool all)
    {
        double reached = 0.0;
        for (std::size_t s = 0; s < services_.size(); ++s) {
            std::vector<double> pieces(problem_.onHand.begin(), problem_.onHand.end());
            for (std::size_t i = 0; i < steps_.size(); ++i)
                if (values[i] > 0.0)
                    for (const auto& [resource, count] : problem_.offers[steps_[i].offer].holds)
                        pieces[resource] +=
                            values[i] * adds(steps_[i], resource, count, wantedIn(s, resource));
            const auto cut = services_[s].cutAt(pieces);
            reached += cut.flow;
            addCut(s, cut, all);
        }
        return reached;
    }

    void addCut(std::size_t scenario, const ScenarioCut& cut, bool always)
    {
        double fixed = cut.fixed;
        std::vector<double> price(problem_.onHand.size(), 0.0);
        for (const auto& [resource, each] : cut.prices) {
            price[resource] = each;
            fixed += each * problem_.onHand[resource];
        }
        std::vector<ColumnEntry> entries{{served_[scenario], 1.0}};
        double allowed = fixed;
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            double factor = 0.0;
            for (const auto& [resource, count] : problem_.offers[steps_[i].offer].holds)
                if (price[resource] > 0.0)
                    factor +=
                        price[resource] * adds(steps_[i], resource, count, wantedIn(scenario, resource));
            if (factor <= 0.0)
                continue;
            entries.push_back({steps_[i].column, -factor});
            if (!always)
                allowed += factor * solvedSteps_[i];
        }
        if (!always && solvedServed_[scenario] <= allowed + 1e-6)
            return;
        program_.addRow(fixed, entries);
        ++added_;
    }

    static constexpr std::size_t nobody = static_cast<std::size_t>(-1);
    static constexpr std::size_t several = static_cast<std::size_t>(-2);

    const PackingProblem& problem_;
    std::vector<ScenarioService> services_;
    double needs_ = 0.0;
    LinearProgram program_;
    std::vector<std::size_t> onlyOffer_; ///< of each resource
    std::vector<Step> steps_;
    std::vector<std::size_t> served_;
    std::vector<double> solvedServed_;
    std::vector<double> solvedSteps_;
    int added_ = 0;
    std::size_t cost_ = 0; ///< rows of the limits
    std::size_t weight_ = 0;
    std::size_t pieces_ = 0;
};

} // namespace

double packingBound(const PackingProblem& problem, const std::vector<Scenario>& scenarios, int rounds,
                    const std::vector<int>& from, const std::function<bool()>& goOn,
                    std::vector<double>& packs)
{
    return Benders(problem, scenarios).run(rounds, from, goOn, packs);
}

} // namespace quarterstep
