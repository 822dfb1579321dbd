// SPDX-License-Identifier: GPL-3.0-or-later
// Demand judged against everything that could be there: shared by packing and simulation.
#pragma once

#include "app/session/assign.hpp"
#include "core/planning/demand.hpp"
#include "core/planning/packing.hpp"
#include "inventory/text/supplier_list.hpp"

namespace quarterstep
{

/// The record that a hand-over, or somebody's going without, was judged by.
[[nodiscard]] std::optional<PersonRecord> keptRecord(const Entry& entry);

/// Stock and supplier's lines together, all of them to be had, and who of the demand could be given what.
struct JudgedDemand {
    std::vector<StockLine> shelf;                    ///< the stock's lines, then those of the supplier alone
    std::optional<Resources> resources;              ///< of the shelf
    std::vector<int> onHand;                         ///< pieces that are really there, of each resource
    std::vector<Waiting> needs;                      ///< of all people of the demand
    std::vector<std::vector<std::uint32_t>> needsOf; ///< of each person of the demand
    std::vector<double> weightOf;                    ///< of each person
    std::map<std::string, double> outside;           ///< weight not in the line, by reason
};

[[nodiscard]] JudgedDemand judgeDemand(const Demand& demand, std::span<const StockLine> stock,
                                       const SupplierList* supplier, const FittingRules& rules,
                                       const MatchOptions& options, const Job& job);

/// Needs of `people` drawn from some of the demand (places of persons), by weight.
[[nodiscard]] Scenario drawScenario(const JudgedDemand& demand, const std::vector<std::uint32_t>& persons,
                                    int people, Draw draw);
[[nodiscard]] std::vector<Scenario> drawScenarios(const JudgedDemand& demand,
                                                  const std::vector<std::uint32_t>& persons, int people,
                                                  int count, std::uint64_t seed);

} // namespace quarterstep
