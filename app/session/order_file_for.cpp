// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/order_file_for.hpp"

#include "app/session/demand_needs.hpp"
#include "app/session/exchange.hpp"
#include "app/session/unserved.hpp"
#include "core/fitting/words.hpp"
#include "core/record/judgement.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

void refuseWithoutNeed(const PersonRecord& person, const Recommendation& answer)
{
    if (!answer.need)
        throw errorSaying(
            "paper-not-for",
            {QS_SAY("core", "the prescription of %1 is not complete; there is no order to write"),
             {person.person}},
            3);
}

} // namespace

OrderFile orderFileFor(const PersonRecord& person, const Recommendation& answer, const FittingRules& rules,
                       const OrderWanted& wanted)
{
    refuseWithoutNeed(person, answer);
    OrderFile file;
    file.order = laboratoryOrder(person, *answer.need, wanted.form);
    file.job = wanted.job;
    file.frame = wanted.frame;
    if (file.frame.lens > 0.0 && file.order.frame.empty()) {
        file.order.frame = wanted.lineName;
        std::erase_if(file.order.missing, [](const Sentence& each) { return each.text == "the frame"; });
    }
    file.rules = stampedWith(rules, answer.profile, {person}).front().rules;
    return file;
}

OrderWanted wantedFor(const Camp& camp, const Order& order)
{
    OrderWanted wanted;
    wanted.job = order.id;
    for (const auto& movement : order.held)
        if (const auto at = camp.lineNamed(movement.line)) {
            wanted.lineName = movement.line;
            wanted.frame = camp.stock()[*at].frame;
        }
    return wanted;
}

Entry orderEntry(const Camp& camp, const SingleWork& words, const PersonRecord& person,
                 const Recommendation& answer)
{
    refuseWithoutNeed(person, answer);
    auto entry = singleEntry(words);
    putNeed(camp, person, answer, entry);
    return entry;
}

std::optional<OrderedFor> orderedFor(const Camp& camp, const Order& order)
{
    const auto entry = camp.ledger().entry(order.id);
    auto person = entry ? keptRecord(*entry) : std::nullopt;
    if (!person)
        return std::nullopt;
    person->person = order.person;
    MatchOptions options;
    if (const auto profile = fieldNamed(*entry, "profile"); camp.rules().find(profile) != nullptr)
        options.profile = profile;
    for (auto& answer : recommend(*person, {}, camp.rules(), options))
        if (wordOf(answer.purpose) == fieldNamed(*entry, "purpose"))
            return OrderedFor{std::move(*person), std::move(answer)};
    return std::nullopt;
}

bool isIncomplete(const Reading<std::string>& written)
{
    return std::any_of(written.findings.begin(), written.findings.end(),
                       [](const Finding& finding) { return finding.code == "order-incomplete"; });
}

} // namespace quarterstep
