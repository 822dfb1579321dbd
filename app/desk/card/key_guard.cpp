// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/card/key_guard.hpp"

#include "app/session/wording.hpp"
#include "core/optics/notation.hpp"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QRegularExpression>

#include <cmath>

namespace quarterstep
{

namespace
{
/// Decimals of quarters and eighths of a dioptre, as far as they are typed.
constexpr auto decimals = "(?:0{1,3}|12?5?|25?0?|37?5?|50{0,2}|62?5?|75?0?|87?5?)?";

QString sizePattern()
{
    return QStringLiteral("(?:[0-9]{1,2}(?:[.,]%1)?|[.,]%1)").arg(QLatin1String(decimals));
}

QString signedPattern()
{
    return QStringLiteral("(?:[+\\-\\x{2212}]\\s*%1|0{1,2}(?:[.,]0{0,3})?|pl(?:an)?o?)").arg(sizePattern());
}

constexpr auto axisPattern = "(?:1[0-7]?[0-9]?|180|0?[0-9]?[0-9])";

QString eyePattern()
{
    const auto name = QStringLiteral("(?:(?:right|left|re?|le?|od|os|ou)\\s*:?\\s*)?");
    const auto word = QStringLiteral(
        "(?:bal(?:ance)?|artificial(?: eye)?|prosthesis|blind|not(?: |_)?measured|not recorded)");
    const auto axis =
        QStringLiteral("(?:\\s*(?:[x\\x{00D7}@*/]|ax(?:is)?)\\s*|\\s+)%1").arg(QLatin1String(axisPattern));
    const auto cylinder =
        QStringLiteral("\\s*/?\\s*(?:%1|-)(?:\\s*dc)?(?:%2|\\s*/\\s*-)?").arg(signedPattern(), axis);
    const auto prism =
        QStringLiteral("(?:\\s+|\\s*/\\s*)[0-9]{1,2}(?:[.,][0-9]{0,2})?\\s*(?:pd|\\x{0394})?\\s*b.*");
    const auto more = QStringLiteral("(?:%1|\\s*add?.*)?").arg(prism);
    return QStringLiteral("%1(?:%2|%3(?:\\s*ds?)?(?:%4)?%5)")
        .arg(name, word, signedPattern(), cylinder, more);
}

QRegularExpression compiled(const QString& pattern)
{
    return QRegularExpression(QStringLiteral("\\s*(?:%1)\\s*\\z").arg(pattern),
                              QRegularExpression::CaseInsensitiveOption);
}

const QRegularExpression& formOf(FieldForm form)
{
    static const auto eye = compiled(eyePattern());
    static const auto power = compiled(signedPattern());
    static const auto axis = compiled(QLatin1String(axisPattern));
    static const auto reader =
        compiled(QStringLiteral("\\+?(?:[0-6](?:[.,](?:00?|25?|50?|75?)?)?|[0-6](?:00|25|50|75|0|5|2|7))"));
    static const auto addition = compiled(QStringLiteral("\\+?%1(?:\\s*/\\s*\\+?%1)?").arg(sizePattern()));
    static const auto years = compiled(QStringLiteral("[0-9]{1,2}(?:[.,][0-9]{0,2})?|1[01][0-9]|120"));
    static const auto size = QStringLiteral("[0-9]{1,2}(?:[.,][0-9]?)?");
    static const auto millimetres = compiled(QStringLiteral("%1(?:\\s*/\\s*%1)?").arg(size));
    switch (form) {
    case FieldForm::eye:
        return eye;
    case FieldForm::axis:
        return axis;
    case FieldForm::reader:
        return reader;
    case FieldForm::addition:
        return addition;
    case FieldForm::years:
        return years;
    case FieldForm::millimetres:
        return millimetres;
    default:
        return power;
    }
}

QString guardWords(const char* text)
{
    return QCoreApplication::translate("FieldForm", text);
}

std::optional<long> thousandthsIn(const QString& text)
{
    if (text.trimmed().isEmpty())
        return 0;
    const auto read = parsePower(text.trimmed().toStdString());
    return read ? std::optional(read.value().sphere.thousandths()) : std::nullopt;
}

QString dioptresText(long thousandths)
{
    return QString::fromStdString(writeDioptres(Dioptres{static_cast<double>(thousandths) / 1000.0}));
}

/// The next multiple of a quarter above or below, or a whole dioptre on from the nearest one.
long nextQuarter(long from, long by)
{
    constexpr long quarter = 250;
    const auto position = static_cast<double>(from) / static_cast<double>(quarter);
    if (std::labs(by) == quarter)
        return quarter * static_cast<long>(by > 0 ? std::floor(position) + 1 : std::ceil(position) - 1);
    return quarter * std::lround(position) + by;
}
} // namespace

bool canBecome(FieldForm form, const QString& text)
{
    if (form == FieldForm::anything || text.trimmed().isEmpty())
        return true;
    const auto found = formOf(form).match(text, 0, QRegularExpression::PartialPreferCompleteMatch,
                                          QRegularExpression::AnchorAtOffsetMatchOption);
    return found.hasMatch() || found.hasPartialMatch();
}

QString whatIsTaken(FieldForm form)
{
    switch (form) {
    case FieldForm::axis:
        return guardWords(QT_TRANSLATE_NOOP("FieldForm", "whole degrees up to 180"));
    case FieldForm::reader:
        return guardWords(QT_TRANSLATE_NOOP("FieldForm", "quarters of a dioptre up to 6.75"));
    case FieldForm::years:
        return guardWords(QT_TRANSLATE_NOOP("FieldForm", "years up to 120"));
    case FieldForm::millimetres:
        return guardWords(QT_TRANSLATE_NOOP("FieldForm", "millimetres, or right and left as 31/30.5"));
    case FieldForm::addition:
        return guardWords(QT_TRANSLATE_NOOP("FieldForm", "quarters of a dioptre, plus"));
    default:
        return guardWords(
            QT_TRANSLATE_NOOP("FieldForm", "a sign first, then quarters of a dioptre, the axis up to 180"));
    }
}

GuardedEdit::GuardedEdit(FieldForm form, QWidget* parent) : QLineEdit(parent), form_(form) {}

void GuardedEdit::keyPressEvent(QKeyEvent* event)
{
    const auto key = event->text();
    const bool letter = !key.isEmpty() && key.front().isPrint() &&
                        !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    if (letter && form_ != FieldForm::anything) {
        auto next = text();
        const int from = hasSelectedText() ? selectionStart() : cursorPosition();
        next.replace(from, hasSelectedText() ? static_cast<int>(selectedText().size()) : 0, key);
        if (canBecome(form_, text()) && !canBecome(form_, next)) {
            refused_ = true;
            event->accept();
            Q_EMIT keyRefused(guardWords(QT_TRANSLATE_NOOP("FieldForm", "“%1” was not taken: %2"))
                                  .arg(ltr(key), whatIsTaken(form_)));
            return;
        }
    }
    QLineEdit::keyPressEvent(event);
    if (letter && refused_) {
        refused_ = false;
        Q_EMIT keyRefused({});
    }
}

StepField::StepField(FieldForm form, QWidget* parent) : GuardedEdit(form, parent)
{
    setLayoutDirection(Qt::LeftToRight);
    setAlignment(Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter);
}

void StepField::keyPressEvent(QKeyEvent* event)
{
    const bool axis = form() == FieldForm::axis;
    const bool shifted = axis && event->modifiers() & Qt::ShiftModifier;
    const long small = axis ? shifted ? 5 : 1 : 250;
    const long large = axis ? 5 : 1000;
    long by = 0;
    if (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down)
        by = event->key() == Qt::Key_Up ? small : -small;
    else if (event->key() == Qt::Key_PageUp || event->key() == Qt::Key_PageDown)
        by = event->key() == Qt::Key_PageUp ? large : -large;
    if (by == 0)
        return GuardedEdit::keyPressEvent(event);
    const auto next = steppedValue(form(), text(), by);
    if (next == text())
        return;
    setText(next);
    Q_EMIT textEdited(next);
}

void StepField::focusOutEvent(QFocusEvent* event)
{
    if (const auto tidy = tidied(form(), text()); tidy != text())
        setText(tidy); // the same value: whoever listens has it already
    GuardedEdit::focusOutEvent(event);
}

QString steppedValue(FieldForm form, const QString& text, long by)
{
    if (form == FieldForm::axis) {
        bool good = text.trimmed().isEmpty();
        const int from = good ? 180 : text.trimmed().toInt(&good);
        const long next = ((from + by) % 180 + 180) % 180;
        return good ? QString::number(next == 0 ? 180 : next) : text;
    }
    const auto from = thousandthsIn(text);
    return from ? dioptresText(nextQuarter(*from, by)) : text;
}

QString tidied(FieldForm form, const QString& text)
{
    if (text.trimmed().isEmpty())
        return {};
    if (form == FieldForm::axis) {
        bool good = false;
        const int axis = text.trimmed().toInt(&good);
        return good ? QString::number(axis == 0 ? 180 : axis) : text;
    }
    const auto from = thousandthsIn(text);
    return from ? dioptresText(*from) : text;
}

} // namespace quarterstep
