// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/json_values.hpp"

#include <QString>

#include <cmath>

namespace quarterstep
{

QJsonValue jsonNumber(double value)
{
    if (!std::isfinite(value))
        return QJsonValue::Null;
    constexpr double millionth = 1e6;
    return std::round(value * millionth) / millionth + 0.0;
}

QJsonValue jsonNumber(const std::optional<double>& value)
{
    return value ? jsonNumber(*value) : QJsonValue(QJsonValue::Null);
}

QJsonValue jsonText(const std::string& text)
{
    return QString::fromStdString(text);
}

QJsonValue jsonTextOrNull(const std::string& text)
{
    return text.empty() ? QJsonValue(QJsonValue::Null) : jsonText(text);
}

} // namespace quarterstep
