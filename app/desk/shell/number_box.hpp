// SPDX-License-Identifier: GPL-3.0-or-later
// A field for a number with a slider beside it. The field is exact and takes a decimal comma as well as a
// dot; the slider goes in whole steps, and reaches further when a larger number is typed.
#pragma once

#include <QDoubleSpinBox>

class QSlider;

namespace quarterstep
{

class NumberBox final : public QDoubleSpinBox
{
    Q_OBJECT

  public:
    explicit NumberBox(QWidget* parent = nullptr);

    QValidator::State validate(QString& input, int& position) const override;
    /// The value in thousandths, exactly as it is shown.
    [[nodiscard]] long thousandths() const;
    /// A slider that follows the field and leads it. `step`: what one step of the slider means; `usual`: its
    /// end as long as the field is not beyond.
    [[nodiscard]] QSlider* slider(double step, double usual);
};

} // namespace quarterstep
