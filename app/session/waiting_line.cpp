// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/waiting_line.hpp"

#include "app/session/shelf.hpp"
#include "core/fitting/fit.hpp"

#include <algorithm>
#include <set>

namespace quarterstep
{

namespace
{

Error refusal(const char* code, Sentence sentence)
{
    return errorSaying(code, std::move(sentence), 1);
}

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

void WaitingLine::mustBeHere(const std::string& person, Purpose purpose) const
{
    const auto isIt = [&](const auto& entry) { return entry.person == person && entry.purpose == purpose; };
    for (const auto& one : people_)
        if (std::any_of(one->entries.waiting.begin(), one->entries.waiting.end(), isIt) ||
            std::any_of(one->entries.others.begin(), one->entries.others.end(), isIt))
            return;
    throw refusal("told-unknown", {QS_SAY("core", "%1 does not wait for that purpose"), {person}});
}

std::vector<WaitingLine::Kept>::iterator WaitingLine::keptOf(const std::string& person, Purpose purpose)
{
    return std::find_if(kept_.begin(), kept_.end(),
                        [&](const Kept& kept) { return kept.person == person && kept.purpose == purpose; });
}

std::optional<std::size_t> WaitingLine::lineNamed(const std::string& name) const
{
    for (std::size_t i = 0; i < shelf_->stock.size(); ++i)
        if (shelf_->stock[i].name == name)
            return i;
    return std::nullopt;
}

void WaitingLine::keep(Kept kept)
{
    if (const auto before = keptOf(kept.person, kept.purpose); before != kept_.end())
        *before = std::move(kept);
    else
        kept_.push_back(std::move(kept));
    ++version_;
}

void WaitingLine::tell(const Assignment& given)
{
    mustBeHere(given.person, given.purpose);
    Kept kept{given.person,
              given.purpose,
              {},
              {given.parts, given.reason, given.lossLogMar, given.prism, given.caution}};
    for (const auto& part : given.parts) {
        if (part.line >= shelf_->stock.size())
            throw refusal("unknown-line", {QS_SAY("core", "this box has no such lines any more"), {}});
        kept.lines.push_back(shelf_->stock[part.line].name);
    }
    keep(std::move(kept));
}

bool WaitingLine::areThere(const std::vector<Part>& parts, const std::string& person, Purpose purpose) const
{
    Shelf shelf(shelf_->stock, shelf_->resources);
    for (const auto& kept : kept_)
        if (kept.person != person || kept.purpose != purpose)
            for (const auto& name : kept.lines)
                if (const auto line = lineNamed(name))
                    shelf.take(*line);
    return std::all_of(parts.begin(), parts.end(), [&](const Part& part) { return shelf.take(part.line); });
}

/// What was picked, judged as matching judges it.
std::optional<Fit> WaitingLine::fitOf(const std::string& person, Purpose purpose,
                                      const std::vector<Part>& parts) const
{
    auto options = question_.match;
    options.candidates.index = &shelf_->index;
    options.details = false;
    for (const auto& one : people_) {
        if (one->record.person != person)
            continue;
        for (const auto& answer : recommend(one->record, shelf_->stock, *rules_, options)) {
            const auto* profile = rules_->find(answer.profile);
            if (answer.purpose != purpose || !answer.need || profile == nullptr)
                continue;
            if (const auto supply = supplyOf(parts, shelf_->stock, *answer.need, rules_->settings))
                return judge(*answer.need, *supply, *profile);
        }
    }
    return std::nullopt;
}

void WaitingLine::choose(const std::string& person, Purpose purpose, const std::vector<Part>& parts,
                         const std::string& reason)
{
    mustBeHere(person, purpose);
    if (reason.find_first_not_of(" \t\n") == std::string::npos)
        throw refusal("reason-missing", {QS_SAY("core", "say why another pair than the one planned"), {}});
    if (std::any_of(parts.begin(), parts.end(),
                    [&](const Part& part) { return part.line >= shelf_->stock.size(); }))
        throw refusal("unknown-line", {QS_SAY("core", "this box has no such lines any more"), {}});
    const auto fit = fitOf(person, purpose, parts);
    if (!fit)
        throw refusal("not-a-pair", {QS_SAY("core", "these lines do not make a pair"), {}});
    if (!areThere(parts, person, purpose))
        throw refusal("none-left",
                      {QS_SAY("core", "none is left, or what is left was promised to others"), {}});
    Assignment given;
    given.person = person;
    given.purpose = purpose;
    given.parts = parts;
    given.reason = reason;
    given.lossLogMar = fit->cost;
    given.prism = fit->prism.horizontal;
    given.caution = fit->band == Band::caution;
    tell(given);
}

bool WaitingLine::takeBack(const std::string& person, Purpose purpose)
{
    const auto kept = keptOf(person, purpose);
    if (kept == kept_.end())
        return false;
    kept_.erase(kept);
    ++version_;
    return true;
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

std::vector<Told> WaitingLine::told() const
{
    std::vector<Told> told;
    told.reserve(kept_.size());
    for (const auto& kept : kept_)
        told.push_back({kept.person, kept.purpose, kept.lines, {}, kept.promise.reason});
    return told;
}

std::vector<Told> WaitingLine::restore(const std::vector<Told>& told)
{
    std::vector<Told> leftOut;
    for (const auto& one : told) {
        Assignment given;
        given.person = one.person;
        bool good = true;
        for (std::size_t i = 0; i < one.lines.size(); ++i) {
            const auto line = lineNamed(one.lines[i]);
            good = good && line.has_value();
            given.parts.push_back({line.value_or(0), sideOf(i, one.lines.size())});
        }
        const auto standing = this->standing();
        const auto place =
            std::find_if(standing.line.begin(), standing.line.end(), [&](const Waiting* entry) {
                return entry->person == one.person && (!one.purpose || *one.purpose == entry->purpose);
            });
        if (!good || place == standing.line.end()) {
            leftOut.push_back(one);
            continue;
        }
        given.purpose = (*place)->purpose;
        given.reason = one.reason;
        tell(given);
    }
    return leftOut;
}

} // namespace quarterstep
