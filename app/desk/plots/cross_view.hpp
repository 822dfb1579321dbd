// SPDX-License-Identifier: GPL-3.0-or-later
// Optical crosses of both eyes: what is needed, what the pair has, what is left. Power stands on the meridian
// it acts in, 90 degrees from its axis; the eyes as the examiner sees them, degrees anticlockwise from the
// right (ISO 8429). Never mirrored.
#pragma once

#include "core/fitting/explanation.hpp"

#include <QWidget>

namespace quarterstep
{

class CrossView final : public QWidget
{
    Q_OBJECT

  public:
    explicit CrossView(QWidget* parent = nullptr);

    void show(const PerEye<std::optional<EyeCrosses>>& crosses);
    void clear();
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    PerEye<std::optional<EyeCrosses>> crosses_;
};

/// Where the two arms of a cross end, from its middle, in units of the arm's length: higher, then lower
/// power.
struct CrossArms {
    QPointF higher;
    QPointF lower;
};
[[nodiscard]] CrossArms armsOf(const OpticalCross& cross);

} // namespace quarterstep
