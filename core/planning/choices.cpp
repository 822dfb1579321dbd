// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/choices.hpp"

#include "core/fitting/stock_index.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace quarterstep
{

namespace
{

long thousandths(const std::optional<double>& value)
{
    return value ? std::lround(*value * 1000.0) : -1'000'000'000L;
}

/// Everything about a line that somebody's fit, or what it can be put together with, may depend on.
using Identity = std::tuple<LineKind, PowerKey, PowerKey, long, long, bool, long, std::string, Origin,
                            std::string, LensSide, bool, std::vector<std::string>, long>;

Identity identityOf(const StockLine& line)
{
    auto takes = line.takes;
    std::sort(takes.begin(), takes.end());
    return {line.kind,
            keyOf(line.power.right),
            keyOf(line.power.left),
            line.bifocalAddition ? std::lround(line.bifocalAddition->value() * 1000.0) : -1L,
            thousandths(centresOf(line)),
            line.centresFrom == CentresFrom::assumed,
            thousandths(line.heightsDiffer),
            line.frame.sizeClass,
            line.origin,
            line.shape,
            line.side,
            line.anyAxis,
            std::move(takes),
            line.kind == LineKind::frame ? std::lround(line.axisStep * 1000.0) : 0L};
}

Choice choiceOf(const Candidate& candidate, const std::vector<Part>& parts, const Resources& resources)
{
    Choice choice;
    choice.parts = static_cast<std::uint8_t>(parts.size());
    for (std::size_t i = 0; i < parts.size(); ++i)
        choice.resources.at(i) = resources.of(parts[i].line);
    choice.caution = candidate.fit.band == Band::caution;
    choice.lossLogMar = static_cast<float>(candidate.fit.cost);
    choice.prism = static_cast<float>(candidate.fit.prism.horizontal);
    choice.loss = lossOf(candidate.fit.cost, candidate.fit.prism.horizontal);
    return choice;
}

/// Each set of resources once, the best first.
std::vector<Choice> choicesOf(const CandidateLists& lists, const Resources& resources)
{
    std::vector<Choice> choices;
    std::map<std::array<std::uint32_t, 3>, bool> seen;
    for (const auto& candidate : lists.ranked) {
        if (!candidate.fit.acceptable())
            continue;
        const auto add = [&](const std::vector<Part>& parts) {
            auto choice = choiceOf(candidate, parts, resources);
            auto key = choice.resources;
            if (choice.parts == 1)
                key[1] = key[2] = std::numeric_limits<std::uint32_t>::max();
            if (seen.emplace(key, true).second)
                choices.push_back(choice);
        };
        add(candidate.parts);
        for (const auto& other : candidate.alike)
            add(other);
    }
    return choices;
}

} // namespace

Resources::Resources(std::span<const StockLine> stock)
{
    std::map<Identity, std::uint32_t> known;
    for (std::size_t i = 0; i < stock.size(); ++i) {
        const auto [found, isNew] =
            known.emplace(identityOf(stock[i]), static_cast<std::uint32_t>(all_.size()));
        if (isNew)
            all_.emplace_back();
        all_[found->second].lines.push_back(static_cast<std::uint32_t>(i));
        all_[found->second].available += std::max(0, stock[i].available());
        resourceOf_.push_back(found->second);
    }
}

std::int32_t lossOf(double cost, double horizontalPrism)
{
    constexpr double unit = 1e-4;
    constexpr double prismWeight = 0.02; // logMAR a prism dioptre
    return static_cast<std::int32_t>(std::lround((cost + prismWeight * std::abs(horizontalPrism)) / unit));
}

MatchOptions optionsForPlanning(MatchOptions options, const StockIndex& index)
{
    options.candidates.index = &index;
    options.candidates.everyRanked = true;
    options.details = false;
    return options;
}

void lineUp(const PersonRecord& person, std::span<const StockLine> stock, const Resources& resources,
            const FittingRules& rules, const MatchOptions& options, LineEntries& entries)
{
    for (const auto& answer : recommend(person, stock, rules, options)) {
        if (answer.verdict != Verdict::stock && answer.verdict != Verdict::custom) {
            entries.others.push_back(
                {answer.person, answer.purpose, answer.verdict, answer.reasonKey, answer.reason});
            continue;
        }
        Waiting waiting;
        waiting.person = answer.person;
        waiting.purpose = answer.purpose;
        waiting.child = person.child();
        waiting.secondPair = answer.secondPair;
        waiting.bareLoss = answer.bareEyes ? answer.bareEyes->cost : 0.0;
        waiting.reasonKey = answer.reasonKey;
        waiting.reason = answer.reason;
        if (answer.verdict == Verdict::stock)
            waiting.choices = choicesOf(answer.candidates, resources);
        entries.waiting.push_back(std::move(waiting));
    }
}

} // namespace quarterstep
