// SPDX-License-Identifier: GPL-3.0-or-later
// The boxes as JSON (names are a promise), as lines for people and as CSV.
#pragma once

#include "app/session/pack.hpp"

#include <QJsonObject>
#include <QStringList>

namespace quarterstep
{

class Output;

[[nodiscard]] QJsonObject jsonPacking(const PackAnswer& answer, const PackQuestion& question,
                                      const QStringList& told);
void showPacking(const PackAnswer& answer, const PackQuestion& question, const QStringList& told,
                 const QString& currency, Output& out);
/// offer,packs,pieces,cost,weight_g
[[nodiscard]] std::string orderCsv(const PackAnswer& answer);
/// box,bin,line,quantity,of_these_bought
[[nodiscard]] std::string boxesCsv(const PackAnswer& answer);

} // namespace quarterstep
