// SPDX-License-Identifier: GPL-3.0-or-later
// Which keys a field of the card takes: text typed so far must still be able to become a value of its form.
// What only looks unlikely passes; what no value begins with is refused at the key and said (blocking
// malformed numbers halves out-by-ten slips: Thimbleby H, Cairns P, J R Soc Interface 2010;7:1429-1439).
// Powers are typed in steps of 0.25 D, eighths allowed; a power that was loaded or pasted is not touched.
#pragma once

#include <QLineEdit>

namespace quarterstep
{

enum class FieldForm {
    anything,
    eye,      ///< sphere, cylinder, axis, prism, addition, or a word such as "balance"
    sphere,   ///< sign always, except plano
    cylinder, ///< sign always
    axis,     ///< 0 to 180
    reader,   ///< near power of a plain reader: "2", "2.25", "225"
    addition,
    years,
    millimetres, ///< "62", "59.5", or right and left of the nose "31/30.5"
};

/// Whether `text` is, or can still become, a value of this form. Empty text can.
[[nodiscard]] bool canBecome(FieldForm form, const QString& text);
/// What a field of this form takes, to be said when a key was refused.
[[nodiscard]] QString whatIsTaken(FieldForm form);

/// A field that refuses such keys. Steps of the arrow keys are left to those who know the value.
class GuardedEdit : public QLineEdit
{
    Q_OBJECT

  public:
    explicit GuardedEdit(FieldForm form, QWidget* parent = nullptr);
    [[nodiscard]] FieldForm form() const { return form_; }

  Q_SIGNALS:
    /// A key was not taken; `words` name the key and what is taken. Empty: a key was taken again.
    void keyRefused(const QString& words);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    FieldForm form_;
    bool refused_ = false;
};

/// Sphere, cylinder or axis alone: the arrow keys step 0.25 D or 1 degree, Page Up and Page Down (an axis:
/// Shift and an arrow, too) 1.00 D or 5 degrees. Left, the value is written with its sign and two decimals.
class StepField final : public GuardedEdit
{
    Q_OBJECT

  public:
    StepField(FieldForm form, QWidget* parent = nullptr);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
};

/// `text` of a sphere, cylinder or axis moved by that many thousandths of a dioptre, or degrees; an axis goes
/// on from 180 to 1. Empty text counts as 0.00 or 180; what cannot be read is returned as it is.
[[nodiscard]] QString steppedValue(FieldForm form, const QString& text, long by);
/// Written with its sign and two decimals, an axis as a whole number; what cannot be read as it is.
[[nodiscard]] QString tidied(FieldForm form, const QString& text);

} // namespace quarterstep
