// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/pack.hpp"

#include "core/planning/camp_simulation.hpp"

#include <algorithm>
#include <numeric>
#include <set>

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

std::vector<RunOut> runOutsOf(const JudgedDemand& judged, const PackingProblem& problem,
                              const std::vector<Scenario>& scenarios, const std::vector<int>& pieces,
                              int people)
{
    std::vector<std::vector<double>> at(pieces.size());
    DayQuestion question;
    question.needs = &problem.needs;
    question.pieces = pieces;
    for (const auto& scenario : scenarios) {
        const auto day = simulateDay(question, scenario, Draw(0));
        for (std::size_t i = 0; i < pieces.size(); ++i)
            if (day.ranOutAt[i] > 0) // needs are counted; persons bring one or two
                at[i].push_back(static_cast<double>(day.ranOutAt[i]) * people /
                                static_cast<double>(std::max<std::size_t>(1, scenario.size())));
    }
    std::vector<RunOut> runOuts;
    for (std::size_t i = 0; i < pieces.size(); ++i)
        if (!at[i].empty())
            runOuts.push_back({judged.shelf[judged.resources->all()[i].lines.front()].name,
                               static_cast<double>(at[i].size()) / static_cast<double>(scenarios.size()),
                               quantileOf(at[i], 0.5)});
    std::stable_sort(runOuts.begin(), runOuts.end(),
                     [](const RunOut& a, const RunOut& b) { return a.atPerson < b.atPerson; });
    return runOuts;
}

void tellOrder(const PackingProblem& problem, const PackQuestion& question, const std::vector<int>& packs,
               PackAnswer& answer)
{
    std::map<std::string, int> bought;
    for (std::size_t i = 0; i < packs.size(); ++i) {
        if (packs[i] == 0)
            continue;
        const auto& offer = problem.offers[i];
        answer.order.push_back({offer.name, packs[i], offer.pieces() * packs[i], offer.cost * packs[i],
                                offer.weight * packs[i]});
        for (const auto& [line, pieces] : question.supplier.packs[i].holds)
            bought[line] += pieces * packs[i];
    }
    const auto spending = spendingOf(problem, packs);
    answer.spend = spending.cost;
    answer.grams = spending.weight;
    answer.pieces = spending.pieces;
    for (const auto& line : question.supplier.lines)
        if (const auto found = bought.find(line.name); found != bought.end())
            answer.lines.push_back({line.name, found->second});
}

double powerOf(const StockLine& line)
{
    return meanSphere(line.power.right).value() +
           (line.bifocalAddition ? line.bifocalAddition->value() : 0.0);
}

/// Kinds together, then by power and centres: neighbours in a box are neighbours on the shelf.
void tellBoxes(const JudgedDemand& judged, std::span<const StockLine> stock, const PackQuestion& question,
               PackAnswer& answer)
{
    std::map<std::string, int> there;
    for (const auto& line : stock)
        there[line.name] = std::max(0, line.available());
    std::map<std::string, int> bought;
    for (const auto& row : answer.lines)
        bought[row.line] = row.quantity;
    std::vector<const StockLine*> lines;
    for (const auto& line : judged.shelf)
        if (there[line.name] + bought[line.name] > 0 && line.kind != LineKind::other)
            lines.push_back(&line);
    std::stable_sort(lines.begin(), lines.end(), [](const StockLine* a, const StockLine* b) {
        return std::tuple(a->kind, a->bifocalAddition.has_value(), powerOf(*a), a->centres.value_or(0.0)) <
               std::tuple(b->kind, b->bifocalAddition.has_value(), powerOf(*b), b->centres.value_or(0.0));
    });
    int box = 1;
    int room = std::max(1, question.piecesInBox);
    for (const auto* line : lines) {
        int old = there[line->name];
        int fresh = bought[line->name];
        while (old + fresh > 0) {
            if (room == 0) {
                ++box;
                room = std::max(1, question.piecesInBox);
            }
            const int in = std::min(room, old + fresh);
            const int ofOld = std::min(old, in);
            answer.boxes.push_back({box, line->bin, line->name, line->kind, in, in - ofOld});
            old -= ofOld;
            fresh -= in - ofOld;
            room -= in;
        }
    }
}

void tellLeftOut(const JudgedDemand& judged, const PackQuestion& question, PackAnswer& answer)
{
    std::vector<bool> wanted(judged.onHand.size(), false);
    double weight = 0.0;
    double servable = 0.0;
    for (std::size_t person = 0; person < judged.needsOf.size(); ++person)
        for (const auto need : judged.needsOf[person]) {
            const auto& one = judged.needs[need];
            weight += judged.weightOf[person];
            if (one.choices.empty())
                answer.unservable[one.reasonKey] += judged.weightOf[person];
            else
                servable += judged.weightOf[person];
            for (const auto& choice : one.choices)
                for (const auto resource : choice.used())
                    wanted[resource] = true;
        }
    for (auto& [reason, sum] : answer.unservable)
        sum /= std::max(1e-12, weight);
    answer.servable = servable / std::max(1e-12, weight);
    const double persons = std::accumulate(judged.weightOf.begin(), judged.weightOf.end(), 0.0);
    answer.inLine = weight / std::max(1e-12, persons);
    std::set<std::string> bought;
    for (const auto& row : answer.lines)
        bought.insert(row.line);
    std::map<std::string, std::size_t> placeOf;
    for (std::size_t i = 0; i < judged.shelf.size(); ++i)
        placeOf.emplace(judged.shelf[i].name, i);
    for (const auto& line : question.supplier.lines)
        if (bought.count(line.name) == 0)
            answer.leftOut.push_back({line.name, wanted[judged.resources->of(placeOf.at(line.name))]});
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

} // namespace

PackAnswer packBoxes(std::span<const StockLine> stock, const FittingRules& rules,
                     const PackQuestion& question, const Job& job)
{
    PackAnswer answer;
    const auto judged = judgeDemand(question.demand, stock, &question.supplier, rules, question.match, job);
    const auto problem = problemOf(judged, question);
    tellLeftOut(judged, question, answer);
    answer.nothing = whyNothing(judged, problem);
    answer.impossible = !answer.nothing.empty();
    if (answer.impossible)
        return answer;
    for (const auto& need : judged.needs)
        for (const auto& choice : need.choices)
            answer.bundles = answer.bundles || choice.parts > 1;
    const auto persons = judged.weightOf.size();
    answer.heldOut = persons >= fewestToHalve;
    std::vector<std::uint32_t> all(persons);
    std::iota(all.begin(), all.end(), 0U);
    const auto [first, second] = halves(persons, question.seed);
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
    answer.fittedShare = plan.share;
    answer.greedyShare = plan.greedyShare;
    answer.bound = plan.bound;
    answer.curve = plan.curve;
    answer.knee = kneeOf(plan.curve);
    tellOrder(problem, question, plan.packs, answer);
    tellBoxes(judged, stock, question, answer);
    answer.leftOut.clear();
    answer.unservable.clear();
    tellLeftOut(judged, question, answer);
    answer.runOuts = runOutsOf(
        judged, problem, drawScenarios(judged, all, question.people, question.scenarios, question.seed + 99),
        piecesWith(problem, plan.packs), question.people);
    if (answer.order.empty())
        answer.nothing = {QS_SAY("core", "what is on hand serves whoever can be served; nothing is bought"),
                          {}};
    return answer;
}

} // namespace quarterstep
