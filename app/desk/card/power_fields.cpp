// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/card/power_fields.hpp"

#include "core/optics/notation.hpp"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>

#include <cmath>

namespace quarterstep
{

PowerFields::PowerFields(Eye eye, QWidget* parent) : QWidget(parent), eye_(eye)
{
    setLayoutDirection(Qt::LeftToRight);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(4);
    const bool right = eye == Eye::right;
    const std::tuple<FieldForm, QString, QString, QString> parts[] = {
        {FieldForm::sphere, QStringLiteral("SphereEdit"),
         right ? tr("Right eye, sphere") : tr("Left eye, sphere"),
         tr("Sphere in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00")},
        {FieldForm::cylinder, QStringLiteral("CylinderEdit"),
         right ? tr("Right eye, cylinder") : tr("Left eye, cylinder"),
         tr("Cylinder in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00")},
        {FieldForm::axis, QStringLiteral("AxisEdit"), right ? tr("Right eye, axis") : tr("Left eye, axis"),
         tr("Axis in degrees. Up and Down step 1, with Shift 5")}};
    std::size_t place = 0;
    for (const auto& [form, name, spoken, tooltip] : parts) {
        auto* field = new StepField(form, this);
        field->setObjectName((right ? QStringLiteral("right") : QStringLiteral("left")) + name);
        field->setAccessibleName(spoken);
        field->setToolTip(tooltip);
        connect(field, &QLineEdit::textEdited, this, [this] { Q_EMIT typed(written()); });
        connect(field, &QLineEdit::returnPressed, this, &PowerFields::suggestWanted);
        connect(field, &QLineEdit::editingFinished, this, &PowerFields::left);
        connect(field, &GuardedEdit::keyRefused, this, &PowerFields::keyRefused);
        if (form == FieldForm::axis)
            row->addWidget(new QLabel(QStringLiteral("x"), this));
        row->addWidget(field, form == FieldForm::axis ? 2 : 3);
        fields_[place++] = field;
    }
    setFocusProxy(fields_[0]);
    giveRoom();
}

/// The longest that may stand in a field is never cut, however large the letters are.
void PowerFields::giveRoom()
{
    constexpr int aroundText = 20; // border, padding and cursor of a field, pixels
    for (auto* field : fields_)
        field->setMinimumWidth(field->fontMetrics().horizontalAdvance(field == fields_.back()
                                                                          ? QStringLiteral("180")
                                                                          : QStringLiteral("-10.00")) +
                               aroundText);
}

void PowerFields::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        giveRoom();
}

bool PowerFields::show(const QString& text)
{
    const auto trimmed = text.trimmed();
    const auto read = parseEye(trimmed.isEmpty() ? "0.00" : trimmed.toStdString(), eye_);
    if (!read || read.value().state != EyeState::measured || read.value().prism || read.value().addition)
        return false;
    const auto& power = read.value().power;
    const bool cylinder = power.cylinder.thousandths() != 0;
    const auto text0 = [](Dioptres d) { return QString::fromStdString(writeDioptres(d)); };
    fields_[0]->setText(trimmed.isEmpty() ? QString() : text0(power.sphere));
    fields_[1]->setText(cylinder ? text0(power.cylinder) : QString());
    fields_[2]->setText(cylinder ? QString::number(std::lround(power.axis.value())) : QString());
    return true;
}

/// What was typed, joined: it is kept as the text of the eye.
QString PowerFields::written() const
{
    auto text = fields_[0]->text().trimmed();
    const auto cylinder = fields_[1]->text().trimmed();
    const auto axis = fields_[2]->text().trimmed();
    if (!cylinder.isEmpty())
        text += (text.isEmpty() ? QStringLiteral("0.00 ") : QStringLiteral(" ")) + cylinder;
    return axis.isEmpty() ? text : text + QStringLiteral(" x ") + axis;
}

} // namespace quarterstep
