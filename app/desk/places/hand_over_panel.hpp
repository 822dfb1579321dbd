// SPDX-License-Identifier: GPL-3.0-or-later
// What was checked before the person goes, the acuity with a pair on trial, a reason where one is asked for,
// and the two commands: hand over, and take the last hand-over back.
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
    void setReady(bool handOver, bool undo);

    [[nodiscard]] HandOverChecks checks() const;
    [[nodiscard]] std::string reason() const;
    [[nodiscard]] std::string actor() const;
    /// The acuities typed, compared with `best`; empty when none is typed or one cannot be read (said below).
    [[nodiscard]] std::optional<TrialAcuity> trial(const PerEye<EyeRecord>& eyes);

    [[nodiscard]] QAction* handOverAction() const { return handOver_; }
    [[nodiscard]] QAction* undoAction() const { return undo_; }

  Q_SIGNALS:
    void changed();

  private:
    void buildChecks(QGridLayout& grid);
    void buildFields(QGridLayout& grid);
    void buildCommands(QGridLayout& grid);
    QLineEdit* field(QHBoxLayout& row, const QString& name, const QString& label, const QString& tooltip);
    QPushButton* button(QAction* action, const QString& name);

    QAction* handOver_;
    QAction* undo_;
    std::vector<QCheckBox*> checks_;
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
