// SPDX-License-Identifier: GPL-3.0-or-later
// What was checked before the person goes, the acuity with a pair on trial, a reason where one is asked for,
// and the commands that end a person's turn: hand over, with or without the note; letter; custom order; goes
// without; and take the last one back.
#pragma once

#include "app/session/hand_over.hpp"

#include <QFrame>

class QAction;
class QCheckBox;
class QGridLayout;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace quarterstep
{

class FocimeterRow;

class HandOverPanel final : public QFrame
{
    Q_OBJECT

  public:
    explicit HandOverPanel(QWidget* parent = nullptr);

    /// Empties checks, acuities and reason for the next person; initials stay.
    void reset();
    /// Which acuities are asked for: none, each seeing eye far, or near.
    void askTrial(bool wanted, bool near);
    /// Why the pair cannot be handed over as it is; empty text = it can.
    void showObjections(const QString& text, bool reasonHelps);
    /// Which commands can be given now.
    struct Ready {
        bool handOver = false;
        bool undo = false;
        bool note = false;
        bool letter = false;
        bool order = false;
        bool without = false;
    };
    void setReady(const Ready& ready);
    /// The pair chosen: an unequal one asks for the focimeter at each eye.
    void setSupply(const Supply& supply);

    [[nodiscard]] HandOverChecks checks() const;
    /// What the focimeter reads of an unequal pair.
    [[nodiscard]] PairReading reading() const;
    [[nodiscard]] std::string reason() const;
    [[nodiscard]] std::string actor() const;
    /// The acuities typed, compared with `best`; empty when none is typed or one cannot be read (said below).
    [[nodiscard]] std::optional<TrialAcuity> trial(const PerEye<EyeRecord>& eyes);

    [[nodiscard]] QAction* handOverAction() const { return handOver_; }
    [[nodiscard]] QAction* handOverAndPrintAction() const { return handOverAndPrint_; }
    [[nodiscard]] QAction* undoAction() const { return undo_; }
    [[nodiscard]] QAction* noteAction() const { return note_; }
    [[nodiscard]] QAction* letterAction() const { return letter_; }
    [[nodiscard]] QAction* orderAction() const { return order_; }
    [[nodiscard]] QAction* withoutAction() const { return without_; }

  Q_SIGNALS:
    void changed();

  private:
    void buildChecks(QGridLayout& grid);
    void buildFields(QGridLayout& grid);
    void buildCommands(QGridLayout& grid);
    QLineEdit* field(QHBoxLayout& row, const QString& name, const QString& label, const QString& tooltip);
    QPushButton* button(QAction* action, const QString& name);
    void goToMissing();

    QAction* made(const QString& text, const QString& tooltip, const QList<QKeySequence>& keys);

    QAction* handOver_;
    QAction* handOverAndPrint_;
    QAction* missing_; ///< on the keys of handing over while that cannot be done
    QAction* undo_;
    QAction* note_;
    QAction* letter_;
    QAction* order_;
    QAction* without_;
    std::vector<QCheckBox*> checks_;
    FocimeterRow* focimeter_;
    QWidget* trialRow_;
    QWidget* reasonRow_;
    QLineEdit* trialRight_ = nullptr;
    QLineEdit* trialLeft_ = nullptr;
    QLineEdit* trialNear_ = nullptr;
    QLineEdit* reason_ = nullptr;
    QLineEdit* actor_ = nullptr;
    QLabel* complaint_;
    QLabel* objections_;
    bool trialWanted_ = false;
};

} // namespace quarterstep
