// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/shell/number_box.hpp"

#include <QLocale>
#include <QSignalBlocker>
#include <QSlider>

#include <algorithm>
#include <cmath>

namespace quarterstep
{

NumberBox::NumberBox(QWidget* parent) : QDoubleSpinBox(parent)
{
    setLocale(QLocale::c());
    setKeyboardTracking(true);
    setStepType(QAbstractSpinBox::DefaultStepType);
}

QValidator::State NumberBox::validate(QString& input, int& position) const
{
    input.replace(QLatin1Char(','), QLatin1Char('.'));
    return QDoubleSpinBox::validate(input, position);
}

long NumberBox::thousandths() const
{
    return std::lround(value() * 1000.0);
}

QSlider* NumberBox::slider(double step, double usual)
{
    auto* slider = new QSlider(Qt::Horizontal);
    const auto steps = [step](double value) { return static_cast<int>(std::lround(value / step)); };
    slider->setRange(steps(minimum()), steps(usual));
    slider->setSingleStep(1);
    slider->setPageStep(10);
    slider->setMinimumHeight(24);
    slider->setAccessibleName(accessibleName());
    slider->setToolTip(toolTip());
    connect(this, &QDoubleSpinBox::valueChanged, slider, [slider, steps, usual](double value) {
        const QSignalBlocker quiet(slider);
        slider->setMaximum(std::max(steps(usual), steps(value)));
        slider->setValue(steps(value));
    });
    connect(slider, &QSlider::valueChanged, this, [this, step](int place) { setValue(place * step); });
    slider->setMaximum(std::max(steps(usual), steps(value())));
    slider->setValue(steps(value()));
    return slider;
}

} // namespace quarterstep
