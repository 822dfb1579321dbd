// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/transfer.hpp"

namespace quarterstep
{

std::vector<Entry> sendTo(const Camp& camp, const std::vector<QuantityRow>& rows, const Transfer& transfer)
{
    if (transfer.site == camp.site())
        throw errorSaying("option-value",
                          {QS_SAY("core", "%1 is this site; name the other one"), {camp.site()}}, 2);
    return transferOut(rows, transfer);
}

std::optional<Entry> sentEntry(const Camp& camp, const std::string& id)
{
    if (id.empty() || !camp.hasLedger() || !camp.ledger().entry(id))
        return std::nullopt;
    for (auto& entry : flyingIn(camp.ledger()))
        if (entry.id == id)
            return entry;
    throw errorSaying(
        "transfer-gone",
        {QS_SAY("core", "entry %1 is not a transfer in the air; `quarterstep transfer` lists them"), {id}},
        3);
}

std::vector<QuantityRow> rowsSent(const Entry& sent)
{
    std::vector<QuantityRow> rows;
    rows.reserve(sent.movements.size());
    for (const auto& movement : sent.movements)
        rows.push_back({movement.line, -movement.delta, {}, {}, {sent.id, 0, 0}});
    return rows;
}

std::string sentTo(const Entry& sent)
{
    const auto found = sent.fields.find("to");
    return found == sent.fields.end() ? std::string() : found->second;
}

} // namespace quarterstep
