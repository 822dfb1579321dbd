// SPDX-License-Identifier: GPL-3.0-or-later
// Charts as rows and lines for drawing; the table beside the picture shows the same rows.
#pragma once

#include "core/auditing/charts.hpp"

#include <QString>

#include <vector>

namespace quarterstep
{

struct ChartDot {
    double across = 0.0;
    double up = 0.0;
    QString name;   ///< of the group or run
    QString words;  ///< for the tooltip and the table: figures in words
    int beyond = 0; ///< 0 inside, 1 outside the inner limit, 2 outside the outer
};
struct ChartLine {
    std::vector<std::pair<double, double>> points;
    bool outer = false;  ///< the wide limit
    bool middle = false; ///< the share of all
    bool main = false;   ///< what the chart is about
};
struct ChartData {
    QString across; ///< what the axes are
    QString up;
    std::vector<ChartDot> dots;
    std::vector<ChartLine> lines;
    bool joined = false; ///< dots follow each other in time
    bool percent = true; ///< the upward axis is a share
    double floor = 0.0;  ///< where the upward axis begins
    QString whyNot;      ///< why there is no picture; empty: there is
};

/// A share as it stands beside an axis: 0.925 is "92.5 %".
[[nodiscard]] QString shareTick(double share);
[[nodiscard]] ChartData chartOf(const FunnelChart& funnel);
[[nodiscard]] ChartData chartOf(const GSeries& series);
[[nodiscard]] ChartData chartOf(const PChart& chart);

} // namespace quarterstep
