// SPDX-License-Identifier: GPL-3.0-or-later
// The power plane, its table twin and what its marks mean.
#pragma once

#include "app/desk/plots/plot_data.hpp"

#include <QFrame>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace quarterstep
{

class PlaneModel;
class PlotView;

class PlanePanel final : public QFrame
{
    Q_OBJECT

  public:
    explicit PlanePanel(QWidget* parent = nullptr);

    void show(const PlotData& picture);
    /// Rings the pair of that row of the list; -1 for none.
    void pointAt(int row);
    void toggleTable();
    void restyle();

  protected:
    void resizeEvent(QResizeEvent* event) override;

  Q_SIGNALS:
    void pairPointedAt(int row);
    void pairChosen(int row);

  private:
    PlaneModel* plane_;
    PlotView* plot_;
    QStackedWidget* pages_;
    QPushButton* tableButton_;
    QLabel* legend_ = nullptr;
};

} // namespace quarterstep
