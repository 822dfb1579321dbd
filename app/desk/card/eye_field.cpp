// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/card/eye_field.hpp"

#include "app/session/wording.hpp"
#include "core/optics/notation.hpp"

#include <QKeyEvent>
#include <QRegularExpression>

namespace quarterstep
{

namespace
{
constexpr long sphereStep = 250;
constexpr long sphereLeap = 1000;
} // namespace

QString steppedSphere(const QString& text, Eye eye, long thousandths)
{
    const auto trimmed = text.trimmed();
    auto read = trimmed.isEmpty() ? parseEye("0.00", eye) : parseEye(trimmed.toStdString(), eye);
    if (!read || read.value().state != EyeState::measured)
        return text;
    static const QRegularExpression sphere(QStringLiteral("^(?:[+\\-\u2212]?\\s*[0-9]*[.,]?[0-9]+|plano|pl)"),
                                           QRegularExpression::CaseInsensitiveOption);
    const auto written = steppedValue(
        FieldForm::sphere, QString::fromStdString(writeDioptres(read.value().power.sphere)), thousandths);
    const auto found = sphere.match(trimmed);
    return written + (found.hasMatch() ? trimmed.mid(found.capturedLength()) : QString());
}

QString readBack(const QString& text, Eye eye)
{
    const auto read = parseEye(text.trimmed().toStdString(), eye);
    if (text.trimmed().isEmpty() || !read || read.value().state != EyeState::measured)
        return {};
    const auto& power = read.value().power;
    auto words = ltr(writePower(power));
    if (power.cylinder.thousandths() != 0)
        words += QStringLiteral(" = ") +
                 ltr(power.cylinder.thousandths() < 0 ? writePlusForm(power) : writePower(transposed(power)));
    return words;
}

EyeField::EyeField(Eye eye, QWidget* parent) : GuardedEdit(FieldForm::eye, parent), eye_(eye)
{
    setLayoutDirection(Qt::LeftToRight);
    setAlignment(Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter);
    setPlaceholderText(QStringLiteral("-1.25 -0.50 x 90"));
    setMaxLength(80);
}

QString EyeField::complaint() const
{
    const auto written = text().trimmed();
    if (written.isEmpty())
        return {};
    const auto read = parseEye(written.toStdString(), eye_);
    return read ? QString() : say(read.complaint().sentence);
}

void EyeField::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Up:
        return step(sphereStep);
    case Qt::Key_Down:
        return step(-sphereStep);
    case Qt::Key_PageUp:
        return step(sphereLeap);
    case Qt::Key_PageDown:
        return step(-sphereLeap);
    case Qt::Key_Equal:
        if (text().trimmed().isEmpty() || hasSelectedText()) {
            Q_EMIT otherEyeWanted();
            return;
        }
        break;
    default:
        break;
    }
    GuardedEdit::keyPressEvent(event);
}

void EyeField::step(long thousandths)
{
    const auto next = steppedSphere(text(), eye_, thousandths);
    if (next == text())
        return;
    setText(next);
    Q_EMIT textEdited(next);
}

} // namespace quarterstep
