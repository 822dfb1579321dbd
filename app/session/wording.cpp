// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/wording.hpp"

#include "app/session/powers_ltr.hpp"
#include "core/fitting/reasons.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace quarterstep
{

namespace
{

/// Words of this file, context "words".
QString words(const char* text)
{
    return QCoreApplication::translate("words", text);
}

QString fill(QString text, const std::vector<std::string>& arguments)
{
    QStringList values;
    for (const auto& argument : arguments)
        values << QString::fromStdString(argument);
    switch (values.size()) { // several arguments at once: an argument that holds %1 is not filled again
    case 0:
        return text;
    case 1:
        return text.arg(values[0]);
    case 2:
        return text.arg(values[0], values[1]);
    case 3:
        return text.arg(values[0], values[1], values[2]);
    default:
        return text.arg(values[0], values[1], values[2], values[3]);
    }
}

const char* word(Severity severity)
{
    switch (severity) {
    case Severity::note:
        return QT_TRANSLATE_NOOP("words", "note");
    case Severity::caution:
        return QT_TRANSLATE_NOOP("words", "caution");
    case Severity::error:
        break;
    }
    return QT_TRANSLATE_NOOP("words", "error");
}

} // namespace

QString say(const Sentence& sentence)
{
    return powersLtr(fill(QCoreApplication::translate("core", sentence.text.c_str()), sentence.arguments));
}

QString say(const Finding& finding)
{
    QString place = QString::fromStdString(finding.position.file);
    if (finding.position.line > 0)
        place += QLatin1Char(':') + QString::number(finding.position.line);
    if (finding.position.line > 0 && finding.position.column > 0)
        place += QLatin1Char(':') + QString::number(finding.position.column);
    if (!place.isEmpty())
        place += QStringLiteral(": ");
    return place + words(word(finding.severity)) + QStringLiteral(": ") + say(finding.sentence) +
           QStringLiteral(" [") + QString::fromStdString(finding.code) + QLatin1Char(']');
}

QString say(Verdict verdict)
{
    switch (verdict) {
    case Verdict::stock:
        return words(QT_TRANSLATE_NOOP("words", "from stock"));
    case Verdict::custom:
        return words(QT_TRANSLATE_NOOP("words", "custom order"));
    case Verdict::none:
        return words(QT_TRANSLATE_NOOP("words", "none needed"));
    case Verdict::incomplete:
        return words(QT_TRANSLATE_NOOP("words", "incomplete"));
    case Verdict::refer:
        break;
    }
    return words(QT_TRANSLATE_NOOP("words", "refer"));
}

QString say(Referral referral)
{
    switch (referral) {
    case Referral::no:
        return words(QT_TRANSLATE_NOOP("words", "no referral"));
    case Referral::with:
        return words(QT_TRANSLATE_NOOP("words", "with a referral letter"));
    case Referral::before:
        break;
    }
    return words(QT_TRANSLATE_NOOP("words", "refer before any glasses"));
}

QString say(Urgency urgency)
{
    switch (urgency) {
    case Urgency::routine:
        return words(QT_TRANSLATE_NOOP("words", "routine"));
    case Urgency::soon:
        return words(QT_TRANSLATE_NOOP("words", "soon"));
    case Urgency::sameDay:
        break;
    }
    return words(QT_TRANSLATE_NOOP("words", "same day"));
}

QString say(Purpose purpose)
{
    switch (purpose) {
    case Purpose::unstated:
        return words(QT_TRANSLATE_NOOP("words", "not stated"));
    case Purpose::distance:
        return words(QT_TRANSLATE_NOOP("words", "distance"));
    case Purpose::near:
        return words(QT_TRANSLATE_NOOP("words", "near"));
    case Purpose::intermediate:
        return words(QT_TRANSLATE_NOOP("words", "intermediate"));
    case Purpose::bifocal:
        return words(QT_TRANSLATE_NOOP("words", "bifocal"));
    case Purpose::both:
        break;
    }
    return words(QT_TRANSLATE_NOOP("words", "distance and near"));
}

QString say(Band band)
{
    switch (band) {
    case Band::fits:
        return words(QT_TRANSLATE_NOOP("words", "fits"));
    case Band::caution:
        return words(QT_TRANSLATE_NOOP("words", "fits with caution"));
    case Band::onTrial:
        return words(QT_TRANSLATE_NOOP("words", "on trial"));
    case Band::fails:
        return words(QT_TRANSLATE_NOOP("words", "outside limit"));
    case Band::shown:
        return words(QT_TRANSLATE_NOOP("words", "shown only"));
    case Band::notMeasured:
        break;
    }
    return words(QT_TRANSLATE_NOOP("words", "not measured"));
}

QString say(Criterion criterion)
{
    return QCoreApplication::translate("core", infoOf(criterion).words);
}

QString say(LineKind kind)
{
    switch (kind) {
    case LineKind::readyMade:
        return words(QT_TRANSLATE_NOOP("words", "ready-made"));
    case LineKind::lens:
        return words(QT_TRANSLATE_NOOP("words", "lens"));
    case LineKind::frame:
        return words(QT_TRANSLATE_NOOP("words", "frame"));
    case LineKind::other:
        break;
    }
    return words(QT_TRANSLATE_NOOP("words", "other"));
}

QString ltr(const QString& text)
{
    return QChar(0x2066) + text + QChar(0x2069);
}

QString ltr(const std::string& text)
{
    return ltr(QString::fromStdString(text));
}

QString dioptres(double value)
{
    const auto text = QString::fromStdString(twoDecimals(value));
    return std::lround(value * 100.0) > 0 ? QLatin1Char('+') + text : text;
}

QString prismWords(double horizontal)
{
    auto amount = QString::fromStdString(twoDecimals(std::abs(horizontal)));
    if (std::lround(horizontal * 100.0) == 0)
        return amount;
    return horizontal > 0.0 ? words(QT_TRANSLATE_NOOP("words", "%1 in")).arg(amount)
                            : words(QT_TRANSLATE_NOOP("words", "%1 out")).arg(amount);
}

QString pullWords(const Part& part, std::span<const StockLine> stock)
{
    const auto& line = stock[part.line];
    const QString name = ltr(line.name);
    const QString bin = line.bin.empty() ? words(QT_TRANSLATE_NOOP("words", "no bin")) : ltr(line.bin);
    switch (part.side) {
    case PartSide::pair:
        return words(QT_TRANSLATE_NOOP("words", "%1 bin %2")).arg(name, bin);
    case PartSide::right:
        return words(QT_TRANSLATE_NOOP("words", "RIGHT %1 bin %2")).arg(name, bin);
    case PartSide::left:
        return words(QT_TRANSLATE_NOOP("words", "LEFT %1 bin %2")).arg(name, bin);
    case PartSide::frame:
        break;
    }
    return words(QT_TRANSLATE_NOOP("words", "frame %1 bin %2")).arg(name, bin);
}

} // namespace quarterstep
