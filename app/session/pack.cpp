// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/pack_told.hpp"

#include <algorithm>
#include <numeric>

namespace quarterstep
{

namespace
{

constexpr std::size_t fewestToHalve = 10;

PackingProblem problemOf(const JudgedDemand& judged, const PackQuestion& question)
{
    PackingProblem problem;
    problem.needs = judged.needs;
    problem.onHand = judged.onHand;
    problem.limits.budget = question.budget;
    problem.limits.weight = question.grams;
    if (question.boxes) {
        const int there = std::accumulate(judged.onHand.begin(), judged.onHand.end(), 0);
        problem.limits.pieces = std::max(0, *question.boxes * question.piecesInBox - there);
    }
    std::map<std::string, std::uint32_t> resourceOf;
    for (std::size_t i = 0; i < judged.shelf.size(); ++i)
        resourceOf.emplace(judged.shelf[i].name, judged.resources->of(i));
    for (const auto& pack : question.supplier.packs) {
        Offer offer{pack.name, {}, pack.cost, pack.weight, 100000};
        std::map<std::uint32_t, int> holds;
        for (const auto& [line, pieces] : pack.holds)
            holds[resourceOf.at(line)] += pieces;
        offer.holds.assign(holds.begin(), holds.end());
        problem.offers.push_back(std::move(offer));
    }
    return problem;
}

/// Persons of the demand in two halves, by lot.
std::pair<std::vector<std::uint32_t>, std::vector<std::uint32_t>> halves(std::size_t persons,
                                                                         std::uint64_t seed)
{
    std::vector<std::uint32_t> all(persons);
    std::iota(all.begin(), all.end(), 0U);
    Draw draw(seed, 501);
    for (std::size_t i = all.size(); i > 1; --i)
        std::swap(all[i - 1], all[draw.below(i)]);
    const auto middle = static_cast<std::ptrdiff_t>(all.size() / 2);
    return {{all.begin(), all.begin() + middle}, {all.begin() + middle, all.end()}};
}

std::vector<int> nothingBought(const PackingProblem& problem)
{
    return std::vector<int>(problem.offers.size(), 0);
}

/// Plans on one half, serves the other.
std::vector<Held> checkOn(const JudgedDemand& judged, const PackingProblem& problem,
                          const PackQuestion& question, PackingEffort effort,
                          const std::vector<std::uint32_t>& planned, const std::vector<std::uint32_t>& unseen)
{
    const auto scenarios =
        drawScenarios(judged, planned, question.people, question.scenarios, question.seed + 11);
    const auto checks =
        drawScenarios(judged, unseen, question.people, question.scenarios, question.seed + 12);
    effort.boundRounds = std::min(effort.boundRounds, 15);
    effort.repairs = std::min(effort.repairs, 10);
    const auto plan = planPacking(problem, scenarios, effort);
    std::vector<Held> held;
    const auto add = [&](const char* way, const std::vector<int>& packs) {
        const auto service = serviceOf(problem, checks, piecesWith(problem, packs));
        held.push_back(
            {way, static_cast<double>(spendingOf(problem, packs).cost), service.served, service.firstCome});
    };
    add("plan", plan.packs);
    add("greedy", plan.greedyPacks);
    add("newsvendor", newsvendorPacks(problem, scenarios));
    add("keep-levels", keepLevelPacks(problem, scenarios));
    add("on-hand", nothingBought(problem));
    return held;
}

std::vector<Held> meanOf(const std::vector<Held>& one, const std::vector<Held>& other)
{
    auto mean = one;
    for (std::size_t i = 0; i < mean.size(); ++i) {
        mean[i].spend = (one[i].spend + other[i].spend) / 2.0;
        mean[i].share = (one[i].share + other[i].share) / 2.0;
        mean[i].firstCome = (one[i].firstCome + other[i].firstCome) / 2.0;
    }
    return mean;
}

/// Why nothing can be planned; empty when something can.
Sentence whyNothing(const JudgedDemand& judged, const PackingProblem& problem)
{
    if (judged.weightOf.size() < 2)
        return {
            QS_SAY("core", "the demand is %1 person; plan from more: nothing can be said of who comes next"),
            {std::to_string(judged.weightOf.size())}};
    if (problem.limits.budget <= 0)
        return {QS_SAY("core", "the budget is 0: nothing is bought; give --budget"), {}};
    if (std::none_of(judged.needs.begin(), judged.needs.end(),
                     [](const Waiting& need) { return !need.choices.empty(); }))
        return {QS_SAY("core", "nobody of this demand can be served by any line on offer; nothing is bought"),
                {}};
    if (std::none_of(problem.offers.begin(), problem.offers.end(), [&](const Offer& offer) {
            return isWithin({offer.cost, offer.weight, offer.pieces()}, problem.limits);
        }))
        return {QS_SAY("core",
                       "no pack on offer is within the budget, the weight and the boxes; nothing is bought"),
                {}};
    return {};
}

/// The plan for everybody, and the checks of plans for one half on the other, beside each other.
PackingPlan planAndCheck(const JudgedDemand& judged, const PackingProblem& problem,
                         const PackQuestion& question, const std::vector<std::uint32_t>& all, const Job& job,
                         PackAnswer& answer)
{
    answer.heldOut = all.size() >= fewestToHalve;
    const auto [first, second] = halves(all.size(), question.seed);
    PackingPlan plan;
    std::vector<Held> onSecond;
    std::vector<Held> onFirst;
    const std::size_t pieces = answer.heldOut ? 3 : 1;
    PiecesDone done(pieces, job);
    inParallel(pieces, done.quiet(), [&](std::size_t piece) {
        auto effort = question.effort;
        effort.goOn = [&, piece](double part) { return done.tell(piece, part); };
        if (piece == 0)
            plan = planPacking(problem,
                               drawScenarios(judged, all, question.people, question.scenarios, question.seed),
                               effort);
        else if (piece == 1)
            onSecond = checkOn(judged, problem, question, effort, first, second);
        else
            onFirst = checkOn(judged, problem, question, effort, second, first);
        done.tell(piece, 1.0);
    });
    if (answer.heldOut) {
        answer.held = meanOf(onSecond, onFirst);
        answer.servedShare = answer.held.front().share;
    }
    return plan;
}

} // namespace

PackAnswer packBoxes(std::span<const StockLine> stock, const FittingRules& rules,
                     const PackQuestion& question, const Job& job)
{
    PackAnswer answer;
    const auto judged = judgeDemand(question.demand, stock, &question.supplier, rules, question.match, job);
    const auto problem = problemOf(judged, question);
    tellServable(judged, answer);
    answer.nothing = whyNothing(judged, problem);
    answer.impossible = !answer.nothing.empty();
    if (answer.impossible) {
        tellLeftOut(judged, question, answer);
        return answer;
    }
    for (const auto& need : judged.needs)
        for (const auto& choice : need.choices)
            answer.bundles = answer.bundles || choice.parts > 1;
    std::vector<std::uint32_t> all(judged.weightOf.size());
    std::iota(all.begin(), all.end(), 0U);
    const auto plan = planAndCheck(judged, problem, question, all, job, answer);
    answer.fittedShare = plan.share;
    answer.greedyShare = plan.greedyShare;
    answer.bound = plan.bound;
    answer.curve = plan.curve;
    answer.knee = kneeOf(plan.curve);
    tellOrder(problem, question, plan.packs, answer);
    tellBoxes(judged, stock, question, answer);
    tellLeftOut(judged, question, answer);
    const auto draws = drawScenarios(judged, all, question.people, question.scenarios, question.seed + 99);
    tellReasons(judged, problem, draws, plan.packs, job, answer);
    tellDays(judged, problem, draws, piecesWith(problem, plan.packs), question.people, answer);
    if (answer.order.empty())
        answer.nothing = {QS_SAY("core", "what is on hand serves whoever can be served; nothing is bought"),
                          {}};
    return answer;
}

} // namespace quarterstep
