// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/simulate.hpp"

#include <algorithm>
#include <numeric>

namespace quarterstep
{

namespace
{

constexpr double enoughOfReachable = 0.95;
constexpr int mostBoxes = 12;

Spread spreadOf(const std::vector<double>& shares)
{
    Spread spread;
    for (const double share : shares)
        spread.mean += share / static_cast<double>(std::max<std::size_t>(1, shares.size()));
    spread.low = quantileOf(shares, 0.05);
    spread.middle = quantileOf(shares, 0.5);
    spread.high = quantileOf(shares, 0.95);
    return spread;
}

struct Days {
    std::vector<Scenario> arrivals;
    std::vector<double> firstCome;
    std::vector<double> replanned;
    std::vector<double> reachable;
    std::vector<std::vector<int>> ranOutAt;
};

double shareOf(int served, int needs)
{
    return needs > 0 ? static_cast<double>(served) / needs : 0.0;
}

/// Weight of each need, as that of its person.
std::vector<double> likelyNeeds(const JudgedDemand& judged)
{
    std::vector<double> likely(judged.needs.size(), 0.0);
    for (std::size_t person = 0; person < judged.needsOf.size(); ++person)
        for (const auto need : judged.needsOf[person])
            likely[need] = judged.weightOf[person];
    return likely;
}

Days runDays(const JudgedDemand& judged, const SimulateQuestion& question, const std::vector<double>& likely,
             const Job& job)
{
    std::vector<std::uint32_t> all(judged.weightOf.size());
    std::iota(all.begin(), all.end(), 0U);
    Days days;
    days.arrivals = drawScenarios(judged, all, question.people, question.days, question.seed);
    const auto count = days.arrivals.size();
    days.firstCome.resize(count);
    days.replanned.resize(count);
    days.reachable.resize(count);
    days.ranOutAt.resize(count);
    inParallel(count, job, [&](std::size_t i) {
        DayQuestion day{&judged.needs, judged.onHand, DayRule::firstCome, question.lineLength, {}};
        const auto& arrivals = days.arrivals[i];
        auto first = simulateDay(day, arrivals, Draw(0));
        days.firstCome[i] = shareOf(first.served, first.needs);
        days.ranOutAt[i] = std::move(first.ranOutAt);
        day.rule = DayRule::replanned;
        day.likely = likely;
        const auto again = simulateDay(day, arrivals, Draw(question.seed, 100000 + i));
        days.replanned[i] = shareOf(again.served, again.needs);
        const auto served = std::count_if(arrivals.begin(), arrivals.end(),
                                          [&](auto need) { return !judged.needs[need].choices.empty(); });
        days.reachable[i] = shareOf(static_cast<int>(served), first.needs);
    });
    return days;
}

void tellRunOuts(const JudgedDemand& judged, const Days& days, int people, SimulateAnswer& answer)
{
    for (std::size_t resource = 0; resource < judged.onHand.size(); ++resource) {
        std::vector<double> at;
        for (std::size_t i = 0; i < days.arrivals.size(); ++i)
            if (const int arrival = days.ranOutAt[i][resource]; arrival > 0)
                at.push_back(static_cast<double>(arrival) * people /
                             static_cast<double>(std::max<std::size_t>(1, days.arrivals[i].size())));
        if (!at.empty())
            answer.runOuts.push_back(
                {judged.shelf[judged.resources->all()[resource].lines.front()].name,
                 static_cast<double>(at.size()) / static_cast<double>(days.arrivals.size()),
                 quantileOf(at, 0.5)});
    }
    std::stable_sort(answer.runOuts.begin(), answer.runOuts.end(), [](const auto& a, const auto& b) {
        return std::pair(-a.chance, a.atPerson) < std::pair(-b.chance, b.atPerson);
    });
}

/// Carries the same box again and again until nearly all that it can serve are served.
void tellBoxes(const JudgedDemand& judged, const Days& days, const SimulateQuestion& question,
               const std::vector<double>& likely, const Job& job, SimulateAnswer& answer)
{
    const std::size_t some = std::min<std::size_t>(days.arrivals.size(), 40);
    for (int boxes = 1; boxes <= mostBoxes; ++boxes) {
        std::vector<double> shares(some);
        Job quiet;
        quiet.cancelled = job.cancelled;
        inParallel(some, quiet, [&](std::size_t i) {
            DayQuestion day{&judged.needs, judged.onHand, DayRule::replanned, question.lineLength, likely};
            for (auto& pieces : day.pieces)
                pieces *= boxes;
            const auto result = simulateDay(day, days.arrivals[i], Draw(question.seed, 200000 + i));
            shares[i] = shareOf(result.served, result.needs);
        });
        answer.boxes.push_back({boxes, spreadOf(shares).mean});
        if (answer.boxes.back().share >= enoughOfReachable * answer.reachable.mean) {
            answer.enough = boxes;
            return;
        }
    }
}

} // namespace

SimulateAnswer simulateCamp(std::span<const StockLine> stock, const FittingRules& rules,
                            const SimulateQuestion& question, const Job& job)
{
    SimulateAnswer answer;
    const auto judged = judgeDemand(question.demand, stock, nullptr, rules, question.match, job);
    if (std::none_of(judged.needs.begin(), judged.needs.end(),
                     [](const Waiting& need) { return !need.choices.empty(); })) {
        answer.nothing = {
            QS_SAY("core", "nobody of this demand can be served from this box; no day was simulated"), {}};
        return answer;
    }
    const auto likely = likelyNeeds(judged);
    const auto days = runDays(judged, question, likely, job);
    for (const auto& arrivals : days.arrivals)
        answer.needs += static_cast<double>(arrivals.size()) / static_cast<double>(days.arrivals.size());
    answer.firstCome = spreadOf(days.firstCome);
    answer.replanned = spreadOf(days.replanned);
    answer.reachable = spreadOf(days.reachable);
    tellRunOuts(judged, days, question.people, answer);
    tellBoxes(judged, days, question, likely, job, answer);
    return answer;
}

} // namespace quarterstep
