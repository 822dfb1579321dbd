// SPDX-License-Identifier: GPL-3.0-or-later
// Axes of a picture, and what is put between them by its values.
#pragma once

#include "app/paper/content/picture.hpp"

#include <utility>

namespace quarterstep
{

/// With at most four digits that count.
[[nodiscard]] QString shortNumber(double value);

/// Values from 0 to the largest of each axis; what lies beyond stands at the edge.
class PictureFrame
{
  public:
    PictureFrame(Picture& picture, double mostX, double mostY);
    [[nodiscard]] QPointF at(double x, double y) const;
    void path(PictureRole role, const std::vector<std::pair<double, double>>& points);
    void level(PictureRole role, double y) { path(role, {{0.0, y}, {mostX_, y}}); }
    void mark(PictureRole role, double x, double y, const QStringList& row);
    void words(QPointF place, const QString& text, int anchor);
    /// Beside its mark, on the side where there is room.
    void name(double x, double y, const QString& text);
    void axes(const QString& xName, bool percentX, bool percentY);

  private:
    Picture& picture_;
    double mostX_;
    double mostY_;
};

} // namespace quarterstep
