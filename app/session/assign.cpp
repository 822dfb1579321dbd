// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/assign.hpp"

#include "app/session/shelf.hpp"
#include "core/fitting/stock_index.hpp"
#include "core/fitting/words.hpp"

#include <algorithm>
#include <set>

namespace quarterstep
{

namespace
{

Error saying(const Told& told, const char* code, Sentence sentence)
{
    return Error({Severity::error, told.position, code, std::move(sentence)}, 3);
}

/// The entry of the line that somebody was told about.
std::size_t entryTold(const Told& told, const std::vector<Waiting>& line, const std::set<std::size_t>& taken)
{
    for (std::size_t i = 0; i < line.size(); ++i)
        if (line[i].person == told.person && (!told.purpose || *told.purpose == line[i].purpose) &&
            taken.count(i) == 0)
            return i;
    throw saying(told, "told-unknown",
                 {QS_SAY("core", "%1 does not wait in this table for that purpose, or stands in the list "
                                 "twice; take the row out"),
                  {told.person}});
}

/// The lines that somebody was told about, each with a piece left.
Promise promiseOf(const Told& told, std::span<const StockLine> stock, Shelf& shelf)
{
    Promise promise;
    for (std::size_t i = 0; i < told.lines.size(); ++i) {
        const auto& name = told.lines[i];
        const auto found = std::find_if(stock.begin(), stock.end(),
                                        [&](const StockLine& line) { return line.name == name; });
        if (found == stock.end())
            throw saying(told, "unknown-line", {QS_SAY("core", "there is no line %1 in this box"), {name}});
        const auto place = static_cast<std::size_t>(found - stock.begin());
        if (!shelf.take(place))
            throw saying(told, "told-short",
                         {QS_SAY("core", "more people were told %1 than there are pieces of it; take a "
                                         "row out of the list"),
                          {name}});
        promise.parts.push_back({place, sideOf(i, told.lines.size())});
    }
    return promise;
}

} // namespace

std::vector<Priority> prioritiesOf(const Settings& settings, std::vector<Priority> named)
{
    const bool there = std::find(named.begin(), named.end(), Priority::firstPairs) != named.end();
    if (settings.holdBackSecondPair && !there)
        named.insert(named.begin(), Priority::firstPairs);
    return named;
}

LineEntries lineOf(const std::vector<PersonRecord>& people, std::span<const StockLine> stock,
                   const Resources& resources, const FittingRules& rules, const MatchOptions& options,
                   const Job& job)
{
    constexpr std::size_t piece = 16; // people a piece of work
    const StockIndex index(stock);
    const auto planning = optionsForPlanning(options, index);
    std::vector<LineEntries> parts((people.size() + piece - 1) / piece);
    inParallel(parts.size(), job, [&](std::size_t part) {
        for (std::size_t i = part * piece; i < std::min(people.size(), (part + 1) * piece); ++i)
            lineUp(people[i], stock, resources, rules, planning, parts[part]);
    });
    LineEntries all;
    for (auto& part : parts) {
        std::move(part.waiting.begin(), part.waiting.end(), std::back_inserter(all.waiting));
        std::move(part.others.begin(), part.others.end(), std::back_inserter(all.others));
    }
    return all;
}

LineAnswer assignLine(const std::vector<PersonRecord>& people, std::span<const StockLine> stock,
                      const FittingRules& rules, const LineQuestion& question, const Job& job)
{
    const Resources resources(stock);
    auto entries = lineOf(people, stock, resources, rules, question.match, job);
    LineStanding standing;
    standing.stock = stock;
    standing.resources = &resources;
    standing.secondPairsLast = rules.settings.holdBackSecondPair;
    for (const auto& one : entries.waiting)
        standing.line.push_back(&one);
    Shelf shelf(stock, resources);
    std::set<std::size_t> taken;
    for (const auto& told : question.told) {
        const auto place = entryTold(told, entries.waiting, taken);
        taken.insert(place);
        standing.promised.emplace(place, promiseOf(told, stock, shelf));
    }
    auto answer = answerLine(standing, question.plan, job);
    answer.others = std::move(entries.others);
    return answer;
}

std::vector<double> scarcityOfLines(const LineEntries& entries, const Resources& resources, std::size_t lines)
{
    std::vector<int> available;
    for (const auto& resource : resources.all())
        available.push_back(resource.available);
    const auto scarcity = scarcityOf(entries.waiting, available);
    std::vector<double> ofLine;
    ofLine.reserve(lines);
    for (std::size_t line = 0; line < lines; ++line)
        ofLine.push_back(scarcity[resources.of(line)]);
    return ofLine;
}

std::vector<double> scarcityFor(const std::vector<PersonRecord>& people, std::span<const StockLine> stock,
                                const FittingRules& rules, const MatchOptions& options)
{
    const Resources resources(stock);
    return scarcityOfLines(lineOf(people, stock, resources, rules, options, {}), resources, stock.size());
}

} // namespace quarterstep
