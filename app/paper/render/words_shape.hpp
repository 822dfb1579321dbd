// SPDX-License-Identifier: GPL-3.0-or-later
// Words broken into lines within a width: measured and painted by the same shape.
#pragma once

#include "app/paper/render/layout.hpp"

#include <QTextLayout>

class QPainter;

namespace quarterstep
{

class WordsShape
{
  public:
    /// Within the width of the mark's place.
    explicit WordsShape(const Mark& mark);
    [[nodiscard]] double height() const { return height_; }
    /// Width of the longest line.
    [[nodiscard]] double widest() const { return widest_; }
    void paint(QPainter& painter, QPointF topLeft) const;

  private:
    void lay(double width, double left);

    QTextLayout layout_;
    double height_ = 0.0;
    double widest_ = 0.0;
};

} // namespace quarterstep
