// SPDX-License-Identifier: GPL-3.0-or-later
// Pieces between sites, in the place Stock: what is in the air, what is sent, what comes in. The entries are
// those of the verb `transfer`.
#pragma once

#include "app/session/transfer.hpp"

#include <QWidget>

class QAction;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QTableView;
class QVBoxLayout;

namespace quarterstep
{

class MessageBar;
class CellsModel;
class PinGuard;

class TransferPanel final : public QWidget
{
    Q_OBJECT

  public:
    enum class Way { send, takeIn };

    TransferPanel(MessageBar& messages, PinGuard& pins, QWidget* parent = nullptr);
    ~TransferPanel() override;

    /// Works on this camp from now on; null: none. It must live as long as it is shown.
    void take(Camp* camp);
    /// Reads again what is in the air.
    void refresh();
    void setUndo(bool possible);
    /// Puts the keyboard where one begins.
    void begin();
    void restyle();

  public Q_SLOTS:
    /// Takes the line and the pieces that were typed into the list; 0 pieces take it out.
    void addRow();
    /// The transfer chosen among those in the air is what comes in, as it was sent.
    void takeAsSent();
    void enter();
    void clear();

  Q_SIGNALS:
    /// Entries stand in the ledger; ids, and what to tell.
    void entered(const QStringList& ids, const QString& words);
    void undoWanted();

  private:
    // transfer_layout.cpp
    QWidget* buildFlying();
    QWidget* buildForm();
    void buildLineRow(QVBoxLayout& column);
    void buildButtons(QVBoxLayout& column);
    QLineEdit* field(QFormLayout& form, const QString& name, const QString& label, const QString& tooltip);

    // transfer_panel.cpp
    [[nodiscard]] Way way() const;
    void showWay();
    void showFlying();
    void showRows();
    void chooseRow(int row);
    void tellLine();
    [[nodiscard]] QStringList namesWith(const QString& letters) const;
    void complain(const QString& words);
    void carryOutTransfer();
    [[nodiscard]] QString missing() const;
    [[nodiscard]] const Entry* chosenFlying() const;
    [[nodiscard]] QString doneWords(const KeptWork& done) const;

    MessageBar& messages_;
    PinGuard& pins_;
    Camp* camp_ = nullptr;
    std::vector<Entry> flying_;
    std::vector<QuantityRow> list_; ///< each line once, in the order it was typed
    std::optional<Entry> sent_;     ///< what comes in, when this ledger has it

    CellsModel* flyingRows_;
    CellsModel* rows_;
    QTableView* flyingView_ = nullptr;
    QLabel* flyingWords_ = nullptr;
    QPushButton* takeButton_ = nullptr;
    QComboBox* way_ = nullptr;
    QLineEdit* site_ = nullptr;
    QLabel* siteLabel_ = nullptr;
    QLineEdit* line_ = nullptr;
    QSpinBox* pieces_ = nullptr;
    QLabel* lineWords_ = nullptr;
    QTableView* view_ = nullptr;
    QLineEdit* note_ = nullptr;
    QLineEdit* initials_ = nullptr;
    QLabel* complaint_ = nullptr;
    QPushButton* undoButton_ = nullptr;
    QPushButton* enterButton_ = nullptr;
    QAction* undo_ = nullptr;
};

} // namespace quarterstep
