// SPDX-License-Identifier: GPL-3.0-or-later
// Paints a chart of the audit. It shows a ChartData; the table beside it holds the same numbers.
#pragma once

#include "app/desk/plots/chart_data.hpp"

#include <QWidget>

class QCustomPlot;

namespace quarterstep
{

class ChartView final : public QWidget
{
    Q_OBJECT

  public:
    explicit ChartView(QWidget* parent = nullptr);

    void show(const ChartData& chart);
    void restyle();
    /// Pixels that the words of the upward axis need; with less they are cut.
    [[nodiscard]] int heightOfWords() const;

  private:
    void draw();
    void drawLines();
    void drawDots();
    void tellAbout(QPoint place);

    QCustomPlot* plot_;
    ChartData chart_;
};

} // namespace quarterstep
