// SPDX-License-Identifier: GPL-3.0-or-later
// Prescriptions that come from elsewhere, and that leave: the part of `import` and `export` with --as.
#pragma once

#include "app/command/inputs.hpp"
#include "app/session/exchange.hpp"

#include <QJsonArray>

namespace quarterstep
{

int importPrescriptions(const CommandLine& line, Output& out);
int exportPrescriptions(const CommandLine& line, Output& out);

/// Findings as programs read them.
[[nodiscard]] QJsonArray jsonFindings(const std::vector<Finding>& findings);

/// --as; `formats` are those that the verb can do. Throws Error option-value (2).
[[nodiscard]] ExchangeFormat formatOf(const CommandLine& line, std::span<const ExchangeFormat> formats);
/// Refuses --camp missing the way a verb that always needs it does.
void needCamp(const CommandLine& line);
/// Rules of --camp or --rules, or the defaults.
[[nodiscard]] FittingRules rulesOfExchange(const CommandLine& line, Output& out);
/// The persons of the table, or the one of --person. With a bad row nothing leaves, unless rows may be
/// skipped.
[[nodiscard]] std::vector<PersonRecord> personsToExport(const CommandLine& line, Output& out);

} // namespace quarterstep
