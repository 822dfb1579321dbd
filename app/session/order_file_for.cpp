// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/order_file_for.hpp"

#include "app/session/exchange.hpp"

#include <algorithm>

namespace quarterstep
{

OrderFile orderFileFor(const PersonRecord& person, const Recommendation& answer, const FittingRules& rules,
                       const OrderWanted& wanted)
{
    if (!answer.need)
        throw errorSaying(
            "paper-not-for",
            {QS_SAY("core", "the prescription of %1 is not complete; there is no order to write"),
             {person.person}},
            3);
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

bool isIncomplete(const Reading<std::string>& written)
{
    return std::any_of(written.findings.begin(), written.findings.end(),
                       [](const Finding& finding) { return finding.code == "order-incomplete"; });
}

} // namespace quarterstep
