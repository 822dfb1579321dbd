// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/pack_told.hpp"

#include <algorithm>
#include <numeric>
#include <set>

namespace quarterstep
{

namespace
{

double powerOf(const StockLine& line)
{
    return meanSphere(line.power.right).value() +
           (line.bifocalAddition ? line.bifocalAddition->value() : 0.0);
}

} // namespace

void tellOrder(const PackingProblem& problem, const PackQuestion& question, const std::vector<int>& packs,
               PackAnswer& answer)
{
    std::map<std::string, int> bought;
    for (std::size_t i = 0; i < packs.size(); ++i) {
        if (packs[i] == 0)
            continue;
        const auto& offer = problem.offers[i];
        OrderRow row;
        row.offer = offer.name;
        row.packs = packs[i];
        row.pieces = offer.pieces() * packs[i];
        row.cost = offer.cost * packs[i];
        row.grams = offer.weight * packs[i];
        answer.order.push_back(std::move(row));
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

void tellServable(const JudgedDemand& judged, PackAnswer& answer)
{
    double weight = 0.0;
    double servable = 0.0;
    for (std::size_t person = 0; person < judged.needsOf.size(); ++person)
        for (const auto need : judged.needsOf[person]) {
            weight += judged.weightOf[person];
            if (judged.needs[need].choices.empty())
                answer.unservable[judged.needs[need].reasonKey] += judged.weightOf[person];
            else
                servable += judged.weightOf[person];
        }
    for (auto& [reason, sum] : answer.unservable)
        sum /= std::max(1e-12, weight);
    answer.servable = servable / std::max(1e-12, weight);
    const double persons = std::accumulate(judged.weightOf.begin(), judged.weightOf.end(), 0.0);
    answer.inLine = weight / std::max(1e-12, persons);
}

void tellLeftOut(const JudgedDemand& judged, const PackQuestion& question, PackAnswer& answer)
{
    std::vector<bool> wanted(judged.onHand.size(), false);
    for (const auto& need : judged.needs)
        for (const auto& choice : need.choices)
            for (const auto resource : choice.used())
                wanted[resource] = true;
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

} // namespace quarterstep
