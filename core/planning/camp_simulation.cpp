// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/camp_simulation.hpp"

#include "core/planning/waiting_line.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

constexpr std::size_t linesAhead = 3; ///< so many lines more are guessed

class Day
{
  public:
    Day(const DayQuestion& question, const Scenario& arrivals)
        : question_(question), arrivals_(arrivals), left_(question.pieces)
    {
        result.needs = static_cast<int>(arrivals.size());
        result.ranOutAt.assign(left_.size(), 0);
        result.given.assign(arrivals.size(), false);
    }

    DayResult result;

    void firstCome()
    {
        for (std::size_t i = 0; i < arrivals_.size(); ++i) {
            const auto& choices = needOf(i).choices;
            const auto best = std::find_if(choices.begin(), choices.end(),
                                           [&](const Choice& choice) { return isFree(choice, left_); });
            if (best != choices.end())
                give(i, *best);
        }
    }

    void replanned(Draw draw)
    {
        const auto length = static_cast<std::size_t>(std::max(1, question_.lineLength));
        std::optional<WeightedDraw> guess;
        if (!question_.likely.empty())
            guess.emplace(question_.likely);
        PlanOptions quick;
        quick.nodes = 20;
        quick.proof = false;
        quick.priorities = {Priority::firstPairs}; // whoever is here comes before whoever may come
        for (std::size_t begin = 0; begin < arrivals_.size(); begin += length) {
            const auto end = std::min(arrivals_.size(), begin + length);
            std::vector<Waiting> line;
            for (std::size_t i = begin; i < end; ++i)
                line.push_back(here(needOf(i), true));
            const auto guessed = std::min(arrivals_.size() - end, linesAhead * length);
            for (std::size_t i = 0; guess && i < guessed; ++i)
                line.push_back(here((*question_.needs)[guess->place(draw)], false));
            const auto plan = planLine(line, left_, quick);
            for (std::size_t i = begin; i < end; ++i)
                if (const auto which = plan.choiceOf[i - begin]; which != nothingGiven)
                    give(i, line[i - begin].choices[static_cast<std::size_t>(which)]);
        }
    }

  private:
    [[nodiscard]] const Waiting& needOf(std::size_t arrival) const
    {
        return (*question_.needs)[arrivals_[arrival]];
    }

    static Waiting here(Waiting need, bool present)
    {
        need.secondPair = !present;
        return need;
    }

    void give(std::size_t arrival, const Choice& choice)
    {
        take(choice, left_);
        ++result.served;
        result.given[arrival] = true;
        for (const auto resource : choice.used())
            if (left_[resource] == 0)
                result.ranOutAt[resource] = static_cast<int>(arrival) + 1;
    }

    const DayQuestion& question_;
    const Scenario& arrivals_;
    std::vector<int> left_;
};

} // namespace

DayResult simulateDay(const DayQuestion& question, const Scenario& arrivals, Draw draw)
{
    Day day(question, arrivals);
    if (question.rule == DayRule::firstCome)
        day.firstCome();
    else
        day.replanned(draw);
    return day.result;
}

double quantileOf(std::vector<double> values, double share)
{
    if (values.empty())
        return 0.0;
    std::sort(values.begin(), values.end());
    const double at = share * static_cast<double>(values.size() - 1);
    const auto low = static_cast<std::size_t>(at);
    const auto high = std::min(low + 1, values.size() - 1);
    return values[low] + (at - static_cast<double>(low)) * (values[high] - values[low]);
}

} // namespace quarterstep
