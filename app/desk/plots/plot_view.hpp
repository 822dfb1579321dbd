// SPDX-License-Identifier: GPL-3.0-or-later
// Paints the power plane. No arithmetic of powers: it shows a PlotData. The only file that sees the plotting
// library.
#pragma once

#include "app/desk/plots/plot_data.hpp"
#include "app/desk/theme.hpp"

#include <QWidget>

class QCustomPlot;
class QCPGraph;

namespace quarterstep
{

class PlotView final : public QWidget
{
    Q_OBJECT

  public:
    explicit PlotView(QWidget* parent = nullptr);

    void show(const PlotData& picture);
    /// Draws again in the colours of the look now applied.
    void restyle();
    /// Rings the pair of that row of the list; -1 for none.
    void pointAt(int row);

  Q_SIGNALS:
    /// The pointer came to a pair of the list, or left it (-1).
    void pairPointedAt(int row);
    void pairChosen(int row);

  private:
    void draw();
    void drawRings();
    void drawStock();
    void drawPairs();
    void drawChoice();
    void drawBlurs();
    void drawEyes();
    void ring(const PlanePoint& centre, double radius, bool dashed);
    void word(const PlanePoint& at, const QString& text, Qt::Alignment alignment);
    QCPGraph* marks(const QPixmap& pixmap);
    void keepScale();
    void line(const PlanePoint& from, const PlanePoint& to, const QPen& pen);
    void tellAbout(QPoint place);
    [[nodiscard]] int rowAt(QPoint place) const;

    QCustomPlot* plot_;
    PlotData picture_;
    Colours colours_;
    int pointed_ = -1;
};

} // namespace quarterstep
