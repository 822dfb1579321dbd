// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/assign.hpp"

#include "core/fitting/stock_index.hpp"
#include "core/fitting/words.hpp"

#include <algorithm>
#include <set>

namespace quarterstep
{

namespace
{

PartSide sideOf(std::size_t place, std::size_t parts)
{
    if (parts == 1)
        return PartSide::pair;
    if (place == 0)
        return PartSide::frame;
    return place == 1 ? PartSide::right : PartSide::left;
}

Error saying(const Told& told, const char* code, Sentence sentence)
{
    return Error({Severity::error, told.position, code, std::move(sentence)}, 3);
}

/// Pieces that are left of every line and of every resource.
class Shelf
{
  public:
    Shelf(std::span<const StockLine> stock, const Resources& resources) : stock_(stock), resources_(resources)
    {
        for (const auto& line : stock)
            ofLine_.push_back(std::max(0, line.available()));
        for (const auto& resource : resources.all())
            ofResource_.push_back(resource.available);
    }

    [[nodiscard]] const std::vector<int>& ofResources() const { return ofResource_; }

    /// The first line of the resource that has a piece left.
    std::size_t takeOne(std::uint32_t resource)
    {
        const auto& lines = resources_.all()[resource].lines;
        const auto line =
            *std::find_if(lines.begin(), lines.end(), [&](auto one) { return ofLine_[one] > 0; });
        --ofLine_[line];
        return line;
    }

    void keep(const Told& told)
    {
        for (const auto& name : told.lines) {
            const auto found = std::find_if(stock_.begin(), stock_.end(),
                                            [&](const StockLine& line) { return line.name == name; });
            if (found == stock_.end())
                throw saying(told, "unknown-line",
                             {QS_SAY("core", "there is no line %1 in this box"), {name}});
            const auto place = static_cast<std::size_t>(found - stock_.begin());
            if (--ofLine_[place] < 0)
                throw saying(told, "told-short",
                             {QS_SAY("core", "more people were told %1 than there are pieces of it; take a "
                                             "row out of the list"),
                              {name}});
            --ofResource_[resources_.of(place)];
        }
    }

    [[nodiscard]] std::size_t placeOf(const std::string& name) const
    {
        return static_cast<std::size_t>(
            std::find_if(stock_.begin(), stock_.end(),
                         [&](const StockLine& line) { return line.name == name; }) -
            stock_.begin());
    }

  private:
    std::span<const StockLine> stock_;
    const Resources& resources_;
    std::vector<int> ofLine_;
    std::vector<int> ofResource_;
};

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

Assignment toldAssignment(const Told& told, const Waiting& entry, const Shelf& shelf)
{
    Assignment given;
    given.person = entry.person;
    given.purpose = entry.purpose;
    given.told = true;
    for (std::size_t i = 0; i < told.lines.size(); ++i)
        given.parts.push_back({shelf.placeOf(told.lines[i]), sideOf(i, told.lines.size())});
    return given;
}

Assignment plannedAssignment(const Waiting& entry, std::int32_t which, Shelf& shelf)
{
    const auto& choice = entry.choices[static_cast<std::size_t>(which)];
    Assignment given;
    given.person = entry.person;
    given.purpose = entry.purpose;
    given.lossLogMar = static_cast<double>(choice.lossLogMar);
    given.prism = static_cast<double>(choice.prism);
    given.caution = choice.caution;
    for (std::size_t i = 0; i < choice.parts; ++i)
        given.parts.push_back({shelf.takeOne(choice.resources.at(i)), sideOf(i, choice.parts)});
    return given;
}

std::vector<LinePrice> pricesOf(const LinePlan& plan, const std::vector<Waiting>& line,
                                const Resources& resources, const std::vector<int>& available,
                                std::span<const StockLine> stock)
{
    std::vector<int> wanted(available.size(), 0);
    for (const auto& entry : line) {
        std::set<std::uint32_t> used;
        for (const auto& choice : entry.choices)
            used.insert(choice.used().begin(), choice.used().end());
        for (const auto resource : used)
            ++wanted[resource];
    }
    std::vector<LinePrice> prices;
    for (std::size_t i = 0; i < plan.oneMore.size(); ++i) {
        if (plan.oneMore[i].served < 1e-6 && plan.oneMore[i].lossLogMar < 0.005)
            continue;
        LinePrice price{{}, available[i], wanted[i], plan.oneMore[i]};
        for (const auto one : resources.all()[i].lines)
            price.lines.push_back(stock[one].name);
        prices.push_back(std::move(price));
    }
    std::stable_sort(prices.begin(), prices.end(), [](const LinePrice& a, const LinePrice& b) {
        return std::pair(a.oneMore.served, a.oneMore.lossLogMar) >
               std::pair(b.oneMore.served, b.oneMore.lossLogMar);
    });
    return prices;
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
    auto& line = entries.waiting;
    LineAnswer answer;
    answer.others = std::move(entries.others);
    answer.people = static_cast<int>(line.size());
    const auto firstCome =
        firstComeLine(line, Shelf(stock, resources).ofResources(), rules.settings.holdBackSecondPair);
    answer.servedFirstCome = firstCome.served;
    answer.lossFirstCome = firstCome.lossLogMar;

    Shelf shelf(stock, resources);
    std::map<std::size_t, Assignment> given; // by place in the line
    std::set<std::size_t> told;
    for (const auto& one : question.told) {
        const auto place = entryTold(one, line, told);
        told.insert(place);
        shelf.keep(one);
        given.emplace(place, toldAssignment(one, line[place], shelf));
    }
    std::vector<Waiting> open;
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < line.size(); ++i)
        if (told.count(i) == 0) {
            places.push_back(i);
            open.push_back(line[i]);
        }
    const auto available = shelf.ofResources();
    const auto plan = planLine(open, available, question.plan);
    throwIfStopped(job);
    answer.lossLogMar = plan.lossLogMar;
    answer.proof = plan.proof;
    answer.proof.bound += static_cast<double>(told.size());
    answer.proof.reached += static_cast<double>(told.size());
    for (std::size_t i = 0; i < open.size(); ++i)
        if (plan.choiceOf[i] != nothingGiven)
            given.emplace(places[i], plannedAssignment(open[i], plan.choiceOf[i], shelf));
        else
            answer.unserved.push_back({open[i].person, open[i].purpose,
                                       open[i].choices.empty() ? open[i].reasonKey : "others_served"});
    answer.served = static_cast<int>(given.size());
    for (auto& [place, assignment] : given)
        answer.assignments.push_back(std::move(assignment));
    if (question.plan.gains)
        answer.prices = pricesOf(plan, open, resources, available, stock);
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
