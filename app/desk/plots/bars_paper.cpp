// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/bars_paper.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{
// Millimetres of a picture 170 wide.
constexpr double namesEnd = 66.0;
constexpr double barsBegin = 68.0;
constexpr double barsEnd = 152.0;
constexpr double rowHeight = 8.0;
constexpr double barHeight = 4.6;
constexpr double lettersDown = 3.4; ///< from the top of a bar to the foot of the letters

PicturePart wordsAt(QPointF place, const QString& text, int anchor)
{
    PicturePart part;
    part.kind = PicturePart::Kind::words;
    part.points = {place};
    part.text = text;
    part.anchor = anchor;
    return part;
}
} // namespace

PictureTwin barsTwin(const ShareBars& bars, const QString& title, std::vector<QStringList> rows)
{
    PictureTwin twin;
    twin.rows = std::move(rows);
    twin.widths = {8, 2, 3, 3};
    twin.picture.title = title;
    twin.picture.says = bars.unit;
    twin.picture.height = rowHeight * (static_cast<double>(bars.bars.size()) + 1.0);
    const auto across = [&bars](double value) {
        return barsBegin + (barsEnd - barsBegin) * std::clamp(value / bars.most, 0.0, 1.0);
    };
    double y = 1.0;
    for (const auto& bar : bars.bars) {
        const double left = across(std::min(bar.from, bar.to));
        const double right = across(std::max(bar.from, bar.to));
        PicturePart box;
        box.role = bar.kind == ShareBar::Kind::whole ? PictureRole::alarm : PictureRole::centre;
        box.points = {{left, y}, {right, y}, {right, y + barHeight}, {left, y + barHeight}, {left, y}};
        twin.picture.parts.push_back(std::move(box));
        twin.picture.parts.push_back(wordsAt({namesEnd, y + lettersDown}, bar.name, 1));
        twin.picture.parts.push_back(wordsAt({right + 1.5, y + lettersDown}, bar.figure, -1));
        y += rowHeight;
    }
    twin.picture.parts.push_back(wordsAt({barsBegin, y + lettersDown}, bars.unit, -1));
    return twin;
}

} // namespace quarterstep
