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

Order orderWithId(const Camp& camp, const std::string& id)
{
    for (auto& order : ordersOf(camp.ledger()))
        if (order.id == id)
            return order;
    throw errorSaying("order-gone", {QS_SAY("core", "there is no order %1 here"), {id}}, 3);
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
} // namespace

/// The prescription is that of the card or the list: the ledger's order names the person alone.
void DispensePlace::writeLaboratoryFile(const QString& id)
{
    if (!camp_)
        return;
    runCommand(messages_, [this, &id] {
        const auto order = orderWithId(*camp_, id.toStdString());
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
        const auto written = writeOrderFile(orderFileFor(*person, orderedAnswer(answers, order.person),
                                                         camp_->rules(), wantedFor(*camp_, order)));
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
