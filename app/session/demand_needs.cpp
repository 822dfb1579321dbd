// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/demand_needs.hpp"

#include "core/fitting/stock_index.hpp"
#include "inventory/text/record_text.hpp"

#include <set>

namespace quarterstep
{

namespace
{

constexpr int plenty = 1'000'000;

void fillShelf(std::span<const StockLine> stock, const SupplierList* supplier, JudgedDemand& judged)
{
    std::set<std::string> offered;
    if (supplier != nullptr)
        for (const auto& line : supplier->lines)
            offered.insert(line.name);
    std::vector<int> there;
    for (const auto& line : stock) {
        there.push_back(std::max(0, line.available()));
        judged.shelf.push_back(line);
        auto& copy = judged.shelf.back();
        copy.held = copy.quarantined = 0;
        copy.onHand = there.back() > 0 || offered.count(line.name) > 0 ? plenty : 0;
        offered.erase(line.name);
    }
    if (supplier != nullptr)
        for (const auto& line : supplier->lines)
            if (offered.count(line.name) > 0) {
                judged.shelf.push_back(line);
                judged.shelf.back().onHand = plenty;
            }
    judged.resources.emplace(judged.shelf);
    judged.onHand.assign(judged.resources->all().size(), 0);
    for (std::size_t i = 0; i < there.size(); ++i)
        judged.onHand[judged.resources->of(i)] += there[i];
}

} // namespace

std::optional<PersonRecord> keptRecord(const Entry& entry)
{
    const auto text = entry.texts.find("record");
    return text == entry.texts.end() ? std::nullopt : readRecordText(text->second);
}

JudgedDemand judgeDemand(const Demand& demand, std::span<const StockLine> stock, const SupplierList* supplier,
                         const FittingRules& rules, const MatchOptions& options, const Job& job)
{
    JudgedDemand judged;
    fillShelf(stock, supplier, judged);
    const StockIndex index(judged.shelf);
    const auto planning = optionsForPlanning(options, index);
    std::vector<LineEntries> entries(demand.people.size());
    inParallel(entries.size(), job, [&](std::size_t i) {
        lineUp(demand.people[i].record, judged.shelf, *judged.resources, rules, planning, entries[i]);
    });
    judged.needsOf.resize(entries.size());
    for (std::size_t i = 0; i < entries.size(); ++i) {
        judged.weightOf.push_back(demand.people[i].weight);
        for (auto& need : entries[i].waiting) {
            judged.needsOf[i].push_back(static_cast<std::uint32_t>(judged.needs.size()));
            judged.needs.push_back(std::move(need));
        }
        for (const auto& other : entries[i].others)
            judged.outside[other.reasonKey] += demand.people[i].weight;
    }
    return judged;
}

Scenario drawScenario(const JudgedDemand& demand, const std::vector<std::uint32_t>& persons, int people,
                      Draw draw)
{
    std::vector<double> weights;
    weights.reserve(persons.size());
    for (const auto person : persons)
        weights.push_back(demand.weightOf[person]);
    const WeightedDraw places(weights);
    Scenario scenario;
    for (int i = 0; i < people; ++i)
        for (const auto need : demand.needsOf[persons[places.place(draw)]])
            scenario.push_back(need);
    return scenario;
}

std::vector<Scenario> drawScenarios(const JudgedDemand& demand, const std::vector<std::uint32_t>& persons,
                                    int people, int count, std::uint64_t seed)
{
    std::vector<Scenario> scenarios;
    scenarios.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i)
        scenarios.push_back(drawScenario(demand, persons, people, Draw(seed, static_cast<std::uint64_t>(i))));
    return scenarios;
}

} // namespace quarterstep
