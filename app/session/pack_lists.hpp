// SPDX-License-Identifier: GPL-3.0-or-later
// The lists of a plan for the boxes as files, and the words that the command line and the desk share about
// it.
#pragma once

#include "app/session/pack.hpp"

#include <QString>

namespace quarterstep
{

/// offer,packs,pieces,cost,weight_g
[[nodiscard]] std::string orderCsv(const PackAnswer& answer);
/// box,bin,line,quantity,of_these_bought
[[nodiscard]] std::string boxesCsv(const PackAnswer& answer);

/// Thousandths of the currency unit in two decimals.
[[nodiscard]] QString moneyWords(double thousandths);
/// The way of `Held` in words.
[[nodiscard]] QString wayWords(const std::string& way);
[[nodiscard]] QString spendWords(const PackAnswer& answer, const PackQuestion& question,
                                 const QString& currency);
[[nodiscard]] QString checkedWords(const Held& held);
/// On the draws planned for, with the bound.
[[nodiscard]] QString fittedWords(const PackAnswer& answer);
/// Where the curve bends; empty when it does not.
[[nodiscard]] QString kneeWords(const PackAnswer& answer);
[[nodiscard]] QString runOutWords(const RunOut& one);
/// Between the plan and what no order can pass, of the latter.
[[nodiscard]] double gapOf(const PackAnswer& answer);

} // namespace quarterstep
