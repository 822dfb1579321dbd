// SPDX-License-Identifier: GPL-3.0-or-later
// What pack and simulate read alike: the demand, and numbers among the options.
#pragma once

#include "app/command/inputs.hpp"
#include "app/session/planning_demand.hpp"

namespace quarterstep
{

/// From the table among the arguments, or without one from the ledger of --camp; mixed with the published
/// mix by --prior (30 pseudo-people when fewer than 100 were seen and nothing is said).
[[nodiscard]] DemandRead readDemand(const CommandLine& line, const Box& box, Output& out);

/// Throw Error option-value (2).
[[nodiscard]] std::optional<long> wholeOption(const CommandLine& line, const char* option, long least,
                                              long most);
[[nodiscard]] std::optional<long> thousandthsOption(const CommandLine& line, const char* option, double least,
                                                    double most);

} // namespace quarterstep
