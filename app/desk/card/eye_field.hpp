// SPDX-License-Identifier: GPL-3.0-or-later
// The text field of one eye: "-1.25 -0.50 x 90". Always left-to-right. Up and Down step the sphere by 0.25 D,
// Page Up and Page Down by 1.00 D, onto the quarter-dioptre grid; the rest of the text stays as typed. "=" in
// an empty field asks for the power of the other eye.
#pragma once

#include "app/desk/card/key_guard.hpp"
#include "core/optics/units.hpp"

namespace quarterstep
{

class EyeField final : public GuardedEdit
{
    Q_OBJECT

  public:
    explicit EyeField(Eye eye, QWidget* parent = nullptr);

    [[nodiscard]] Eye eye() const { return eye_; }
    /// The complaint of the reader about the text now; empty for readable or empty text.
    [[nodiscard]] QString complaint() const;

  Q_SIGNALS:
    void otherEyeWanted();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void step(long thousandths);

    Eye eye_;
};

/// `text` with its sphere moved by `thousandths` of a dioptre to the next place on that grid of 0.25 D (a
/// whole dioptre keeps the quarters). Empty text counts as 0.00; text that cannot be read, or is a word for
/// an eye without a power, is returned as it is.
[[nodiscard]] QString steppedSphere(const QString& text, Eye eye, long thousandths);
/// How the text is read: sign always, two decimals, and the other form of a cylinder. Empty where nothing is
/// read.
[[nodiscard]] QString readBack(const QString& text, Eye eye);

} // namespace quarterstep
