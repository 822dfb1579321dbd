// SPDX-License-Identifier: GPL-3.0-or-later
// Bins are named by a row and a place in it: C4 stands before C10, and both after B12.
#pragma once

#include <QString>

#include <string>

namespace quarterstep
{

struct BinPlace {
    QString row;    ///< what stands before the last digits: "C", "Box 2 A"
    int number = 0; ///< the last digits; 0 when there are none
};

[[nodiscard]] inline BinPlace binPlace(const std::string& bin)
{
    const auto text = QString::fromStdString(bin).trimmed();
    int first = static_cast<int>(text.size());
    while (first > 0 && text[first - 1].isDigit() && text.size() - first < 6)
        --first;
    return {text.left(first).trimmed(), text.mid(first).toInt()};
}

/// Text that sorts as the bins stand. Without a bin: last.
[[nodiscard]] inline QString binSortKey(const std::string& bin)
{
    const auto place = binPlace(bin);
    return bin.empty() ? QStringLiteral("\uFFFF")
                       : QStringLiteral("%1 %2").arg(place.row).arg(place.number, 6, 10, QLatin1Char('0'));
}

} // namespace quarterstep
