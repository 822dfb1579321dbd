// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of an answer about the boxes, each told from the plan: for pack.cpp alone.
#pragma once

#include "app/session/pack.hpp"

namespace quarterstep
{

/// What the demand could be served with at all, and why not.
void tellServable(const JudgedDemand& judged, PackAnswer& answer);
void tellOrder(const PackingProblem& problem, const PackQuestion& question, const std::vector<int>& packs,
               PackAnswer& answer);
/// Kinds together, then by power and centres: neighbours in a box are neighbours on the shelf. After the
/// order.
void tellBoxes(const JudgedDemand& judged, std::span<const StockLine> stock, const PackQuestion& question,
               PackAnswer& answer);
/// After the order.
void tellLeftOut(const JudgedDemand& judged, const PackQuestion& question, PackAnswer& answer);
/// Why each row of the order is there. After the order. Throws as throwIfStopped.
void tellReasons(const JudgedDemand& judged, const PackingProblem& problem,
                 const std::vector<Scenario>& draws, const std::vector<int>& packs, const Job& job,
                 PackAnswer& answer);
/// First come, first served on these draws: when lines run out, and who goes without.
void tellDays(const JudgedDemand& judged, const PackingProblem& problem, const std::vector<Scenario>& draws,
              const std::vector<int>& pieces, int people, PackAnswer& answer);

} // namespace quarterstep
