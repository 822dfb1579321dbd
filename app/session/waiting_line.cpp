// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/waiting_line.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

bool sameRecord(const PersonRecord& a, const PersonRecord& b)
{
    return a.person == b.person && a.purpose == b.purpose;
}

/// Whether nobody's choices can have grown: the same lines, and none that was empty has pieces now.
bool onlyFewer(const std::vector<StockLine>& before, const std::vector<StockLine>& now)
{
    return std::equal(before.begin(), before.end(), now.begin(), now.end(),
                      [](const StockLine& one, const StockLine& other) {
                          return one.name == other.name && (one.available() > 0 || other.available() <= 0);
                      });
}

} // namespace

WaitingLine::Box::Box(std::vector<StockLine> lines) : stock(std::move(lines)), resources(stock), index(stock)
{
}

WaitingLine::WaitingLine(std::vector<StockLine> stock, FittingRules rules, LineQuestion question)
    : rules_(std::make_shared<const FittingRules>(std::move(rules))), question_(std::move(question)),
      shelf_(std::make_shared<const Box>(std::move(stock)))
{
}

WaitingLine::WaitingLine(const Camp& camp) : WaitingLine(camp.stock(), camp.rules())
{
    question_.plan.priorities = prioritiesOf(rules_->settings, {});
}

std::shared_ptr<const WaitingLine::Person> WaitingLine::judged(const PersonRecord& record) const
{
    auto person = std::make_shared<Person>();
    person->record = record;
    lineUp(record, shelf_->stock, shelf_->resources, *rules_,
           optionsForPlanning(question_.match, shelf_->index), person->entries);
    return person;
}

void WaitingLine::put(std::shared_ptr<const Person> person)
{
    const auto before = std::find_if(people_.begin(), people_.end(), [&](const auto& one) {
        return sameRecord(one->record, person->record);
    });
    if (before != people_.end())
        *before = std::move(person);
    else
        people_.push_back(std::move(person));
    ++version_;
}

void WaitingLine::add(const PersonRecord& person)
{
    put(judged(person));
}

void WaitingLine::addAll(const std::vector<PersonRecord>& people, const Job& job)
{
    std::vector<std::shared_ptr<const Person>> all(people.size());
    inParallel(people.size(), job, [&](std::size_t i) { all[i] = judged(people[i]); });
    for (auto& person : all)
        put(std::move(person));
}

void WaitingLine::judgeAgain(const Job& job)
{
    auto again = people_;
    inParallel(again.size(), job, [&](std::size_t i) { again[i] = judged(people_[i]->record); });
    people_ = std::move(again);
}

bool WaitingLine::remove(const std::string& person, std::optional<Purpose> purpose)
{
    const auto ends = [&](const std::string& code, Purpose of) {
        return code == person && (!purpose || *purpose == of);
    };
    bool any = false;
    std::vector<std::shared_ptr<const Person>> staying;
    for (auto& one : people_) {
        auto left = std::make_shared<Person>(*one);
        const auto gone =
            std::erase_if(left->entries.waiting,
                          [&](const Waiting& entry) { return ends(entry.person, entry.purpose); }) +
            std::erase_if(left->entries.others,
                          [&](const NotInLine& entry) { return ends(entry.person, entry.purpose); });
        if (gone == 0)
            staying.push_back(std::move(one));
        else if (!left->entries.waiting.empty() || !left->entries.others.empty())
            staying.push_back(std::move(left));
        any = any || gone > 0;
    }
    people_ = std::move(staying);
    std::erase_if(kept_, [&](const Kept& kept) { return ends(kept.person, kept.purpose); });
    version_ += any ? 1 : 0;
    return any;
}

void WaitingLine::clear()
{
    people_.clear();
    kept_.clear();
    ++version_;
}

void WaitingLine::setStock(std::vector<StockLine> stock)
{
    const bool fewer = onlyFewer(shelf_->stock, stock);
    shelf_ = std::make_shared<const Box>(std::move(stock));
    if (!fewer)
        judgeAgain({});
    ++version_;
}

void WaitingLine::setPlan(const PlanOptions& plan)
{
    question_.plan = plan;
    ++version_;
}

LineStanding WaitingLine::standing() const
{
    LineStanding standing;
    standing.stock = shelf_->stock;
    standing.resources = &shelf_->resources;
    standing.secondPairsLast = rules_->settings.holdBackSecondPair;
    for (const auto& one : people_)
        for (const auto& entry : one->entries.waiting)
            standing.line.push_back(&entry);
    std::map<std::pair<std::string, Purpose>, std::size_t> places;
    for (std::size_t i = 0; i < standing.line.size(); ++i)
        places.emplace(std::pair(standing.line[i]->person, standing.line[i]->purpose), i);
    std::map<std::string, std::size_t> lines;
    for (std::size_t i = 0; i < shelf_->stock.size(); ++i)
        lines.emplace(shelf_->stock[i].name, i);
    for (const auto& kept : kept_) {
        const auto [place, isNew] =
            places.emplace(std::pair(kept.person, kept.purpose), standing.line.size());
        if (isNew) {
            auto told = std::make_shared<Waiting>();
            told->person = kept.person;
            told->purpose = kept.purpose;
            standing.line.push_back(told.get());
            standing.added.push_back(std::move(told));
        }
        auto promise = kept.promise;
        promise.parts.clear();
        for (std::size_t i = 0; i < kept.lines.size(); ++i)
            if (const auto line = lines.find(kept.lines[i]); line != lines.end())
                promise.parts.push_back({line->second, sideOf(i, kept.lines.size())});
        promise.allThere = promise.parts.size() == kept.lines.size();
        standing.promised.emplace(place->second, std::move(promise));
    }
    return standing;
}

LineAnswer WaitingLine::plan(const Job& job) const
{
    auto options = question_.plan;
    {
        const std::lock_guard lock(before_->mutex);
        options.pricesBefore = before_->prices;
    }
    auto answer = answerLine(standing(), options, job);
    {
        const std::lock_guard lock(before_->mutex);
        before_->prices = answer.programPrices;
    }
    for (const auto& one : people_)
        for (const auto& other : one->entries.others)
            if (std::none_of(kept_.begin(), kept_.end(), [&](const Kept& kept) {
                    return kept.person == other.person && kept.purpose == other.purpose;
                }))
                answer.others.push_back(other);
    return answer;
}

} // namespace quarterstep
