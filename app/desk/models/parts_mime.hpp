// SPDX-License-Identifier: GPL-3.0-or-later
// A pair on its way from one list of the desk to another: its parts as plain text.
#pragma once

#include "core/fitting/candidates.hpp"

#include <QMimeData>
#include <QStringList>

namespace quarterstep
{

inline QString partsMimeType()
{
    return QStringLiteral("application/x-quarterstep-parts");
}

[[nodiscard]] inline QMimeData* partsAsMime(const std::vector<Part>& parts)
{
    QStringList words;
    for (const auto& part : parts)
        words << QStringLiteral("%1:%2").arg(part.line).arg(static_cast<int>(part.side));
    auto* data = new QMimeData;
    data->setData(partsMimeType(), words.join(QLatin1Char(',')).toLatin1());
    return data;
}

/// Empty when the data is none of ours.
[[nodiscard]] inline std::vector<Part> partsInMime(const QMimeData& data)
{
    std::vector<Part> parts;
    for (const auto& word :
         QString::fromLatin1(data.data(partsMimeType())).split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const auto halves = word.split(QLatin1Char(':'));
        bool lineRead = false;
        bool sideRead = false;
        if (halves.size() == 2)
            parts.push_back({halves[0].toULongLong(&lineRead),
                             static_cast<PartSide>(std::clamp(halves[1].toInt(&sideRead), 0, 3))});
        if (!lineRead || !sideRead)
            return {};
    }
    return parts;
}

} // namespace quarterstep
