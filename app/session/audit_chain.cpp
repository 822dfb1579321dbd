// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/audit.hpp"

namespace quarterstep
{

ChainCheck checkedChain(const Camp& camp, const Job& job)
{
    const auto entries = camp.ledger().position();
    return camp.ledger().checkChain([&](std::int64_t checked) { tellFar(job, checked, entries); });
}

Sentence auditStopsAt(const ChainCheck& chain)
{
    return {
        QS_SAY("core", "entry %1 is the first that is not as it was written: %2; the audit stops before it"),
        {chain.firstBad ? std::to_string(*chain.firstBad) : "-", chain.what}};
}

} // namespace quarterstep
