// SPDX-License-Identifier: GPL-3.0-or-later
// The place Stock: the lines as a table, as a ladder and as the box they lie in; the card of the chosen line;
// what the keeper enters about it; counts that somebody edited in the file by hand. Counts come from the
// session, entries go through it.
#pragma once

#include "app/desk/places/desk_place.hpp"
#include "app/desk/places/stock_work_panel.hpp"

class QButtonGroup;
class QFrame;
class QLabel;
class QLineEdit;
class QModelIndex;
class QSortFilterProxyModel;
class QStackedWidget;
class QTableView;

namespace quarterstep
{

class BoxModel;
class CardModel;
class LadderView;
class LinesModel;
class MessageBar;

class StockPlace final : public DeskPlace
{
    Q_OBJECT

  public:
    explicit StockPlace(const DeskParts& parts, QWidget* parent = nullptr);
    ~StockPlace() override;

    void take(Camp* camp) override;
    void campMoved() override { refresh(); }
    /// Makes a line the chosen one; false when there is none of that name.
    bool chooseLine(const std::string& name);
    void restyle() override;

  public Q_SLOTS:
    void enter();
    void takeBackLast();
    void showView(int view);

  protected:
    void showEvent(QShowEvent* event) override;
    /// Digits typed on a line begin a count of it.
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QWidget* buildLines();
    QWidget* buildViews();
    QWidget* buildLadder();
    QWidget* buildCard();
    QWidget* buildEdits();
    void connectParts();
    /// The counts are read again: now where they are in sight, else when they come into sight.
    void refresh();
    void readCounts();
    void drawViews();
    void carryOutWish(const std::string& line, const StockWish& wish);
    void carryOutEdits(bool accept);
    void showLine(const std::string& name);
    void showFigures();
    /// After a count: the next line is the next to be counted.
    void chooseNext();
    void showEdits();
    void settleEdits(bool accept);
    /// While a count is typed the book's counts are not in sight.
    void hideBook();
    [[nodiscard]] QString figureWords() const;

    MessageBar& messages_;
    PinGuard& pins_;
    Camp* camp_ = nullptr;
    bool stale_ = false;              ///< the counts shown are not those of the camp
    bool drawn_ = false;              ///< ladder and box show the counts that are shown
    std::string line_;                ///< the chosen one; empty: none
    std::vector<std::string> posted_; ///< entries of this window, for taking back

    LinesModel* lines_;
    BoxModel* box_;
    CardModel* card_;
    QSortFilterProxyModel* sorted_;
    StockWorkPanel* work_ = nullptr;
    LadderView* pairsLadder_ = nullptr;
    LadderView* lensLadder_ = nullptr;
    QButtonGroup* viewButtons_ = nullptr;
    QStackedWidget* views_ = nullptr;
    QTableView* linesView_ = nullptr;
    QTableView* boxView_ = nullptr;
    QTableView* cardView_ = nullptr;
    QLineEdit* filter_ = nullptr;
    QLabel* figures_ = nullptr;
    QLabel* shown_ = nullptr;
    QLabel* lineHeading_ = nullptr;
    QLabel* lineWords_ = nullptr;
    QLabel* blind_ = nullptr;
    QFrame* edits_ = nullptr;
    QLabel* editsText_ = nullptr;
    QLineEdit* editsReason_ = nullptr;
};

} // namespace quarterstep
