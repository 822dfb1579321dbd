// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/pack_camp.hpp"

namespace quarterstep
{

PackOfCamp packCamp(const PackWish& wish, const Job& job)
{
    PackOfCamp plan;
    const auto camp = Camp::open(wish.folder, Ledger::Mode::readOnly);
    plan.stock = camp.stock();
    auto supplier = readSupplierList(wish.supplier);
    if (!supplier.usable())
        throw CampNotOpened(supplier.findings);
    auto demand = wish.table.empty() ? demandFromLedger(camp)
                                     : demandFromTable(wish.table, wish.assumed, camp.rules().settings);
    if (!demand.usable)
        throw CampNotOpened(demand.findings);
    if (!wish.table.empty())
        demand.told << assumptionWords(wish.assumed);
    completeDemand(demand, wish.prior);
    throwIfStopped(job);
    plan.told = demand.told;
    plan.badRows = demand.badRows;
    auto& question = plan.question;
    question.demand = std::move(demand.demand);
    question.supplier = std::move(supplier.value);
    question.budget = wish.budget;
    question.grams = wish.grams;
    question.boxes = wish.boxes;
    question.piecesInBox = wish.piecesInBox;
    question.people = wish.people;
    question.match.assumeCentred = demand.centred;
    question.scenarios = wish.scenarios;
    question.seed = wish.seed;
    question.effort.seed = wish.seed;
    plan.answer = packBoxes(plan.stock, camp.rules(), question, job);
    return plan;
}

} // namespace quarterstep
