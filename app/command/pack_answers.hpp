// SPDX-License-Identifier: GPL-3.0-or-later
// The boxes as JSON (names are a promise), as lines for people.
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

} // namespace quarterstep
