// SPDX-License-Identifier: GPL-3.0-or-later
// The place Dispense and files for a laboratory.
#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/places/desk_papers.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/session/exchange.hpp"
#include "app/session/keeping.hpp"
#include "app/session/order_file_for.hpp"
#include "app/session/wording.hpp"

#include <QStringList>

#include <algorithm>

namespace quarterstep
{

namespace
{
/// The answer an order is for: the only one that needs a custom pair, else the only one with a need.
const Recommendation& orderedAnswer(const std::vector<Recommendation>& answers, const std::string& person)
{
    for (const bool custom : {true, false}) {
        const auto fits = [custom](const Recommendation& answer) {
            return answer.need && (!custom || answer.verdict == Verdict::custom);
        };
        const auto found = std::find_if(answers.begin(), answers.end(), fits);
        if (found != answers.end() && std::count_if(answers.begin(), answers.end(), fits) == 1)
            return *found;
    }
    throw errorSaying(
        "order-purpose-open",
        {QS_SAY("core", "%1 has several purposes, or none that is complete; take them up in the list "
                        "and choose the one that was ordered"),
         {person}},
        3);
}
} // namespace

/// The prescription is that of the order; of an order entered without one, that of the card or the list.
OrderedFor DispensePlace::orderedFrom(const Order& order) const
{
    if (auto ordered = orderedFor(*camp_, order))
        return std::move(*ordered);
    const auto* person = recordOf(order.person);
    if (!person)
        throw errorSaying(
            "person-unknown",
            {QS_SAY("core", "%1 is not in the list; load the table in which the prescription stands"),
             {order.person}},
            3);
    const bool onCard = record_ && record_->person == order.person && answer();
    const auto answers = onCard ? std::vector<Recommendation>{*answer()}
                                : recommend(*person, camp_->stock(), camp_->rules(), {});
    return {*person, orderedAnswer(answers, order.person)};
}

void DispensePlace::writeLaboratoryFile(const QString& id)
{
    if (!camp_)
        return;
    runCommand(messages_, [this, &id] {
        const auto order = orderNamed(*camp_, id.toStdString());
        const auto ordered = orderedFrom(order);
        const auto written = writeOrderFile(
            orderFileFor(ordered.person, ordered.answer, camp_->rules(), wantedFor(*camp_, order)));
        QStringList words;
        for (const auto& finding : written.findings) {
            if (finding.severity == Severity::error)
                throw Error(finding, 3);
            words << say(finding.sentence);
        }
        const auto path =
            paperPath(*camp_, QStringLiteral("laboratory"), order.person, QStringLiteral("txt"));
        writeNewFile(path, written.value);
        words.prepend(tr("The laboratory file of %1 is %2.").arg(ltr(order.person), ltr(path)));
        messages_.showDone(words.join(QLatin1Char('\n')));
    });
}

} // namespace quarterstep
