// SPDX-License-Identifier: GPL-3.0-or-later
// What the keeper enters about the chosen line: a count by two, a delivery, a loss, pieces held or
// quarantined and let go again. It asks only for what the kind of work needs.
#pragma once

#include "app/session/keeping.hpp"
#include "app/session/pins.hpp"

#include <QFrame>

class QAction;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace quarterstep
{

enum class StockWork { receive, count, writeOff, hold, letGo, quarantine, release };

/// What was typed.
struct StockWish {
    StockWork work = StockWork::receive;
    int quantity = 0;
    std::string initials;
    std::string second;
    std::string cause;
    std::string words; ///< reason, or from whom it came
    std::string person;
};

class StockWorkPanel final : public QFrame
{
    Q_OBJECT

  public:
    explicit StockWorkPanel(QWidget* parent = nullptr);

    /// The line all this is about; none: nothing can be entered.
    void setLine(const QString& name);
    /// Puts the keyboard into the quantity for this kind of work.
    void start(StockWork work);
    /// The first digit of a quantity, typed elsewhere.
    void startWith(const QString& digit);
    /// What was typed, or nothing when something is missing; then it is said below the fields.
    [[nodiscard]] std::optional<StockWish> read();
    /// Empties quantity and words; initials stay.
    void reset();
    void setUndo(bool possible);
    [[nodiscard]] QAction* enterAction() const { return enter_; }
    [[nodiscard]] QAction* undoAction() const { return undo_; }
    [[nodiscard]] StockWork work() const;

  Q_SIGNALS:
    void workChanged();

  private:
    void buildFields(QVBoxLayout& column);
    void buildButtons(QVBoxLayout& column);
    QLineEdit* field(QFormLayout& form, const QString& name, const QString& label, const QString& tooltip);
    void showFields();
    [[nodiscard]] QString missing(const StockWish& wish, bool quantityRead) const;

    QAction* enter_;
    QAction* undo_;
    QComboBox* work_;
    QComboBox* cause_;
    QLabel* heading_;
    QLabel* complaint_;
    QLineEdit* quantity_ = nullptr;
    QLineEdit* initials_ = nullptr;
    QLineEdit* second_ = nullptr;
    QLineEdit* words_ = nullptr;
    QLineEdit* person_ = nullptr;
    QFormLayout* form_;
    bool hasLine_ = false;
};

/// Whose PIN it needs.
[[nodiscard]] Role roleFor(StockWork work);

/// The entries of a wish about one line, and what is wrong with it.
struct StockWishEntries {
    std::vector<Entry> entries;
    std::vector<Finding> findings;
};
[[nodiscard]] StockWishEntries entriesOf(const Camp& camp, const std::string& line, const StockWish& wish);

} // namespace quarterstep
