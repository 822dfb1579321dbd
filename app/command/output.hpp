// SPDX-License-Identifier: GPL-3.0-or-later
// Data on standard output, findings on standard error as file:line:column: severity: sentence [code].
#pragma once

#include "app/session/json_values.hpp"
#include "core/finding.hpp"

#include <QJsonArray>
#include <QJsonObject>
#include <QString>

#include <vector>

namespace quarterstep
{

class Output
{
  public:
    void line(const QString& text);
    /// Text of a file, with its own line ends.
    void text(const QString& text);
    void json(const QJsonArray& value);
    void json(const QJsonObject& value);
    void tell(const Finding& finding);
    void tell(Severity severity, Position position, std::string code, Sentence sentence);
    void tell(const std::vector<Finding>& findings);
    /// Empties the buffers; false when not all could be written (disk full, pipe closed).
    [[nodiscard]] bool finish();
};

/// A share of 1 in per cent with one decimal, without the sign.
[[nodiscard]] QString percent(double share);

/// Words of the command line, context "command".
[[nodiscard]] QString commandWords(const char* text);
/// The same with a number for the plural forms (%n).
[[nodiscard]] QString commandCount(const char* text, int count);

} // namespace quarterstep
