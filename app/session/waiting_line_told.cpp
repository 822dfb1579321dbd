// SPDX-License-Identifier: GPL-3.0-or-later
// What people in the line were told: kept, refused, taken back, restored.
#include "app/session/waiting_line.hpp"

#include "app/session/shelf.hpp"
#include "core/fitting/fit.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

Error refusal(const char* code, Sentence sentence)
{
    return errorSaying(code, std::move(sentence), 1);
}

} // namespace

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
