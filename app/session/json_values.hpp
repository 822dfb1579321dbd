// SPDX-License-Identifier: GPL-3.0-or-later
// Values in JSON as every answer writes them: numbers rounded to a millionth, never -0, and null where
// nothing is known.
#pragma once

#include <QJsonValue>

#include <optional>
#include <string>

namespace quarterstep
{

[[nodiscard]] QJsonValue jsonNumber(double value);
[[nodiscard]] QJsonValue jsonNumber(const std::optional<double>& value);
[[nodiscard]] QJsonValue jsonText(const std::string& text);
/// Empty text is null.
[[nodiscard]] QJsonValue jsonTextOrNull(const std::string& text);

} // namespace quarterstep
