// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/card/eye_field.hpp"

#include "app/session/wording.hpp"
#include "core/optics/notation.hpp"

#include <QKeyEvent>
#include <QRegularExpression>

#include <cmath>

namespace quarterstep
{

namespace
{
constexpr long quarter = 250;
constexpr long whole = 1000;

/// The next multiple of 0.25 D above or below `from`, or a whole dioptre on from the nearest one.
long nextOnGrid(long from, long step)
{
    const auto position = static_cast<double>(from) / static_cast<double>(quarter);
    if (std::labs(step) == quarter)
        return quarter * static_cast<long>(step > 0 ? std::floor(position) + 1 : std::ceil(position) - 1);
    return quarter * std::lround(position) + step;
}
} // namespace

QString steppedSphere(const QString& text, Eye eye, long thousandths)
{
    const auto trimmed = text.trimmed();
    auto read = trimmed.isEmpty() ? parseEye("0.00", eye) : parseEye(trimmed.toStdString(), eye);
    if (!read || read.value().state != EyeState::measured)
        return text;
    static const QRegularExpression sphere(QStringLiteral("^(?:[+\\-\u2212]?\\s*[0-9]*[.,]?[0-9]+|plano|pl)"),
                                           QRegularExpression::CaseInsensitiveOption);
    const auto next = nextOnGrid(read.value().power.sphere.thousandths(), thousandths);
    const auto written = QString::fromStdString(writeDioptres(Dioptres{static_cast<double>(next) / 1000.0}));
    const auto found = sphere.match(trimmed);
    return written + (found.hasMatch() ? trimmed.mid(found.capturedLength()) : QString());
}

EyeField::EyeField(Eye eye, QWidget* parent) : QLineEdit(parent), eye_(eye)
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
        return step(quarter);
    case Qt::Key_Down:
        return step(-quarter);
    case Qt::Key_PageUp:
        return step(whole);
    case Qt::Key_PageDown:
        return step(-whole);
    default:
        QLineEdit::keyPressEvent(event);
    }
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
