// SPDX-License-Identifier: GPL-3.0-or-later
// Why the chosen pair: every criterion, the optical crosses, and why it stands above or below another.
#pragma once

#include "core/fitting/explanation.hpp"

#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace quarterstep
{

class BarsModel;
class BarsView;
class CriteriaModel;
class CrossModel;
class CrossView;
class PagesFrame;
struct ShareBars;

/// What the chosen pair is explained from; all of it must live while it is shown.
struct WhyQuestion {
    const Recommendation* answer = nullptr;
    std::span<const StockLine> stock;
    const Profile* profile = nullptr;
    const Settings* settings = nullptr;
};

class WhyPanel final : public QWidget
{
    Q_OBJECT

  public:
    explicit WhyPanel(QWidget* parent = nullptr);

    /// @param others all pairs of the list, by their words
    void show(const WhyQuestion& question, const Candidate& chosen,
              const std::vector<const Candidate*>& list);
    void clear();
    void restyle();
    enum Page { criteriaPage, crossPage, abovePage };
    void setPage(Page page);

  private:
    QWidget* buildCriteria();
    QWidget* buildCross();
    QWidget* buildAbove();
    void compare();
    void showBars(const ShareBars& picture);

    CriteriaModel* criteria_;
    CrossModel* cross_;
    BarsModel* bars_;
    PagesFrame* frame_;
    CrossView* crossView_ = nullptr;
    QStackedWidget* crossPages_ = nullptr;
    QPushButton* crossTable_ = nullptr; ///< for the bars, too
    BarsView* barsView_ = nullptr;
    QStackedWidget* barsPages_ = nullptr;
    QLabel* clear_ = nullptr;
    QComboBox* other_ = nullptr;
    QLabel* sentence_ = nullptr;
    WhyQuestion question_;
    std::optional<Candidate> chosen_;
    std::vector<Candidate> others_;
};

} // namespace quarterstep
