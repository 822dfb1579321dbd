// SPDX-License-Identifier: GPL-3.0-or-later
// The place Stock: the lines as a table, as a ladder and as the box they lie in; the card of the chosen line;
// what the keeper enters about it; counts that somebody edited in the file by hand; packing; transfers.
// Counts come from the session, entries go through it.
#pragma once

#include "app/desk/places/desk_place.hpp"
#include "app/desk/places/stock_reading.hpp"
#include "app/desk/places/stock_work_panel.hpp"

#include <future>
#include <memory>
#include <optional>

class QButtonGroup;
class QFrame;
class QLabel;
class QLineEdit;
class QModelIndex;
class QSortFilterProxyModel;
class QSplitter;
class QTableView;

namespace quarterstep
{

class BoxModel;
class CardModel;
class LadderView;
class LinesModel;
class LongWork;
class MessageBar;
class OnePageLayout;
class PackingPanel;
class TransferPanel;

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
    /// The views, in the order of their buttons and keys.
    enum View { asTable, asLadder, asBox, packing, transfers };
    void setPrinter(const QString& name);
    [[nodiscard]] PackingPanel& packingPanel() { return *packing_; }
    [[nodiscard]] TransferPanel& transferPanel() { return *transfer_; }

  public Q_SLOTS:
    void enter();
    void takeBackLast();
    void showView(int view);
    /// Begins a count of the bin that was reached into most since it was counted.
    void countBin();

  protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    /// Digits typed on a line begin a count of it.
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QWidget* buildViewButtons();
    QWidget* buildStock();
    QWidget* buildLines();
    QWidget* buildViews();
    QWidget* buildLadder();
    QWidget* buildCard();
    QWidget* buildEdits();
    QWidget* buildSpot();
    void connectParts();
    void connectTransfers();
    /// The counts are read again: now where they are in sight, else when they come into sight.
    void refresh();
    void readCounts();
    void readBeside();
    void readingEnded(const std::shared_ptr<StockRead>& read, const std::optional<StockCounts>& counts);
    void showCounts();
    void drawViews();
    /// Each bin of the box in as little width as its words need, and as many lines as they then take.
    void fitBox();
    /// The card below the lines where the letters leave no room for it beside them.
    void foldColumns();
    void carryOutWish(const std::string& line, const StockWish& wish);
    void carryOutEdits(bool accept);
    void showLine(const std::string& name);
    void showFigures();
    void showSpot();
    void showUndo();
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
    bool stale_ = false;                ///< the counts shown are not those of the camp
    std::array<bool, packing> drawn_{}; ///< by view: it shows the counts that are shown
    std::string line_;                  ///< the chosen one; empty: none
    std::shared_ptr<StockRead> read_ = std::make_shared<StockRead>(); ///< of this camp
    StockCounts counts_;
    bool reading_ = false;            ///< beside the window
    bool again_ = false;              ///< something changed while it was read
    std::vector<std::string> posted_; ///< entries of this window, for taking back

    LinesModel* lines_;
    BoxModel* box_;
    CardModel* card_;
    QSortFilterProxyModel* sorted_;
    StockWorkPanel* work_ = nullptr;
    PackingPanel* packing_ = nullptr;
    TransferPanel* transfer_ = nullptr;
    OnePageLayout* pages_ = nullptr; ///< the stock, and what takes the whole place
    LadderView* pairsLadder_ = nullptr;
    LadderView* lensLadder_ = nullptr;
    QButtonGroup* viewButtons_ = nullptr;
    QSplitter* columns_ = nullptr; ///< the lines, and what is said and entered about one
    OnePageLayout* views_ = nullptr;
    QTableView* linesView_ = nullptr;
    QTableView* boxView_ = nullptr;
    QTableView* cardView_ = nullptr;
    QLineEdit* filter_ = nullptr;
    QLabel* figures_ = nullptr;
    QWidget* spot_ = nullptr;
    QLabel* spotWords_ = nullptr;
    QLabel* shown_ = nullptr;
    QLabel* lineHeading_ = nullptr;
    QLabel* lineWords_ = nullptr;
    QLabel* blind_ = nullptr;
    QFrame* edits_ = nullptr;
    QLabel* editsText_ = nullptr;
    QLineEdit* editsReason_ = nullptr;
    std::future<void> reader_; ///< waited for before anything else goes
};

} // namespace quarterstep
