// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/content/picture_frame.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double left = 16.0; ///< mm, for the figures of the axis
constexpr double right = 4.0;
constexpr double top = 4.0;
constexpr double bottom = 10.0;

/// A step of 1, 2 or 5 times a power of ten that cuts `most` into about four.
double stepFor(double most)
{
    const double rough = std::max(most, 1e-6) / 4.0;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double factor : {1.0, 2.0, 5.0})
        if (rough <= factor * power)
            return factor * power;
    return 10.0 * power;
}

} // namespace

QString shortNumber(double value)
{
    return QString::number(value, 'g', 4);
}

PictureFrame::PictureFrame(Picture& picture, double mostX, double mostY)
    : picture_(picture), mostX_(std::max(mostX, 1e-9)), mostY_(std::max(mostY, 1e-9))
{
}

QPointF PictureFrame::at(double x, double y) const
{
    const double wide = picture_.width - left - right;
    const double high = picture_.height - top - bottom;
    return {left + wide * std::clamp(x / mostX_, 0.0, 1.0),
            picture_.height - bottom - high * std::clamp(y / mostY_, 0.0, 1.0)};
}

void PictureFrame::path(PictureRole role, const std::vector<std::pair<double, double>>& points)
{
    PicturePart part;
    part.role = role;
    for (const auto& [x, y] : points)
        part.points.push_back(at(x, y));
    picture_.parts.push_back(std::move(part));
}

void PictureFrame::mark(PictureRole role, double x, double y, const QStringList& row)
{
    PicturePart part;
    part.kind = PicturePart::Kind::mark;
    part.role = role;
    part.points = {at(x, y)};
    part.row = row;
    picture_.parts.push_back(std::move(part));
}

void PictureFrame::words(QPointF place, const QString& text, int anchor)
{
    PicturePart part;
    part.kind = PicturePart::Kind::words;
    part.points = {place};
    part.text = text;
    part.anchor = anchor;
    picture_.parts.push_back(std::move(part));
}

void PictureFrame::name(double x, double y, const QString& text)
{
    const bool toTheRight = 2.0 * x < mostX_;
    words(at(x, y) + QPointF(toTheRight ? 2.2 : -2.2, -1.2), text, toTheRight ? -1 : 1);
}

void PictureFrame::axes(const QString& xName, bool percentX, bool percentY)
{
    path(PictureRole::axis, {{0.0, mostY_}, {0.0, 0.0}, {mostX_, 0.0}});
    const auto told = [](double value, bool percent) {
        return percent ? shortNumber(100.0 * value) + QStringLiteral(" %") : shortNumber(value);
    };
    const double stepY = stepFor(mostY_);
    for (int step = 0; step * stepY <= mostY_ * 1.0001; ++step)
        words(at(0.0, step * stepY) + QPointF(-1.5, 1.0), told(step * stepY, percentY), 1);
    const double stepX = stepFor(mostX_);
    for (int step = 0; step * stepX <= mostX_ * 0.9; ++step)
        words(at(step * stepX, 0.0) + QPointF(0.0, 4.0), told(step * stepX, percentX), 0);
    words(QPointF(picture_.width - right, picture_.height - 1.5), xName, 1);
}

} // namespace quarterstep
