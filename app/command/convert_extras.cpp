// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/convert_extras.hpp"

#include "app/command/output.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/reasons.hpp"
#include "core/optics/acuity_scale.hpp"
#include "core/optics/combined_power.hpp"
#include "core/optics/decentration.hpp"
#include "core/optics/effectivity.hpp"
#include "core/optics/near_addition.hpp"
#include "core/optics/notation.hpp"
#include "inventory/text/numbers.hpp"

#include <QCoreApplication>
#include <QJsonArray>

namespace quarterstep
{
namespace
{

constexpr double largestVertex = 50.0; ///< mm
constexpr double farthestPoint = 50.0; ///< mm
constexpr double largestPrism = 20.0;  ///< prism dioptres

std::optional<std::pair<double, double>> twoNumbers(const CommandLine& line, const char* option, double least,
                                                    double most, const char* code, const char* refusal)
{
    if (!line.has(option))
        return std::nullopt;
    return std::pair{optionNumber(line, option, 0, least, most, code, refusal),
                     optionNumber(line, option, 1, least, most, code, refusal)};
}

std::optional<SpheroCylinder> powerBehind(const CommandLine& line, const char* option)
{
    if (!line.has(option))
        return std::nullopt;
    const auto read = parsePower(line.value(option));
    if (!read)
        throw errorSaying(
            "power-option",
            {QS_SAY("core", "“%1” behind %2 is no power: write it as -0.50 or \"-0.50 -1.00 x 30\""),
             {line.value(option), option}},
            Exit::usage);
    return read.value();
}

/// Prism met at the point: x to the observer's right, which is nasal of a right eye.
EyePrism prismAtPoint(const SpheroCylinder& power, const std::pair<double, double>& point)
{
    return prismAt(toPowerMatrix(power), Eye::right, point.first, point.second);
}

QJsonObject jsonWhole(const SpheroCylinder& power)
{
    auto whole = jsonPower(minusCylinderForm(power));
    insertAll(whole, jsonVector(toPowerVector(power)));
    return whole;
}

QJsonValue jsonAtVertex(const SpheroCylinder& power, const std::pair<double, double>& vertex)
{
    const Millimetres from{vertex.first};
    const Millimetres to{vertex.second};
    const auto moved = atVertexDistance(power, from, to);
    if (!moved)
        return QJsonValue::Null;
    auto there = jsonWhole(*moved);
    const auto worn = asWorn(power, from, to);
    there.insert("change_uncompensated",
                 worn ? QJsonValue(jsonVector(worn->change)) : QJsonValue(QJsonValue::Null));
    return there;
}

QString wordsAtVertex(const SpheroCylinder& power, const std::pair<double, double>& vertex)
{
    const auto moved = atVertexDistance(power, Millimetres{vertex.first}, Millimetres{vertex.second});
    if (!moved)
        return commandWords(QT_TRANSLATE_NOOP("command", "no power does the same at %1 mm"))
            .arg(vertex.second);
    return commandWords(QT_TRANSLATE_NOOP("command", "at %1 mm: %2"))
        .arg(QString::number(vertex.second), QString::fromStdString(writePower(minusCylinderForm(*moved))));
}

QJsonObject jsonPrismAt(const SpheroCylinder& power, const std::pair<double, double>& point)
{
    const auto prism = prismAtPoint(power, point);
    const auto single = baseOf(prism, Eye::right);
    return {{"right_pd", jsonNumber(prism.in)},
            {"up_pd", jsonNumber(prism.up)},
            {"prism", jsonNumber(single.amount)},
            {"base", jsonNumber(single.degrees)}};
}

const char* kindWord(DecentrationAnswer::Kind kind)
{
    switch (kind) {
    case DecentrationAnswer::Kind::one:
        return "one";
    case DecentrationAnswer::Kind::line:
        return "line";
    case DecentrationAnswer::Kind::none:
        return "none";
    case DecentrationAnswer::Kind::noPower:
        break;
    }
    return "no_power";
}

QJsonObject jsonDecentration(const SpheroCylinder& power, Eye eye, const EyePrism& wanted)
{
    const auto answer = decentrationFor(toPowerMatrix(power), eye, wanted);
    return {{"kind", kindWord(answer.kind)},
            {"in_mm", jsonNumber(answer.moved.in)},
            {"up_mm", jsonNumber(answer.moved.up)},
            {"given",
             QJsonObject{{"in_pd", jsonNumber(answer.given.in)}, {"up_pd", jsonNumber(answer.given.up)}}},
            {"missing", QJsonObject{{"in_pd", jsonNumber(answer.missing.in)},
                                    {"up_pd", jsonNumber(answer.missing.up)}}}};
}

QString wordsDecentration(const SpheroCylinder& power, Eye eye, const EyePrism& wanted)
{
    const auto answer = decentrationFor(toPowerMatrix(power), eye, wanted);
    const auto millimetres = [](double value) { return QString::fromStdString(twoDecimals(value)); };
    const auto moved = [&](const QString& sentence) {
        return sentence.arg(millimetres(answer.moved.in), millimetres(answer.moved.up));
    };
    switch (answer.kind) {
    case DecentrationAnswer::Kind::one:
        return moved(commandWords(QT_TRANSLATE_NOOP("command", "centre %1 mm in and %2 mm up")));
    case DecentrationAnswer::Kind::line:
        return moved(commandWords(QT_TRANSLATE_NOOP(
            "command", "centre %1 mm in and %2 mm up, or any place along the meridian without power")));
    case DecentrationAnswer::Kind::none:
        return commandWords(
                   QT_TRANSLATE_NOOP("command", "not by moving the centre: %1 cannot be had from this lens"))
            .arg(QString::fromStdString(writePrism(answer.missing)));
    case DecentrationAnswer::Kind::noPower:
        break;
    }
    return commandWords(QT_TRANSLATE_NOOP("command", "not by moving the centre: the lens has no power"));
}

QJsonArray jsonLoss(const SpheroCylinder& power)
{
    QJsonArray models;
    for (const auto& model : blurModels()) {
        const auto loss = model.loss(toPowerVector(power));
        models.append(
            QJsonObject{{"model", model.name},
                        {"least_logmar", loss ? jsonNumber(loss->least) : QJsonValue(QJsonValue::Null)},
                        {"most_logmar", loss ? jsonNumber(loss->most) : QJsonValue(QJsonValue::Null)},
                        {"rule", say(model.rule)},
                        {"source", model.source},
                        {"used", model.usedForSuggesting}});
    }
    return models;
}

QString wordsLoss(const SpheroCylinder& power)
{
    QStringList models;
    for (const auto& model : blurModels()) {
        const auto loss = model.loss(toPowerVector(power));
        if (!loss)
            continue;
        const QString least = QString::number(loss->least + 0.0, 'f', 2);
        const QString most = QString::number(loss->most + 0.0, 'f', 2);
        models.append(QString::fromUtf8(model.name) + QLatin1Char(' ') +
                      (least == most ? least : least + QStringLiteral("…") + most));
    }
    return commandWords(QT_TRANSLATE_NOOP("command", "loses, logMAR: %1"))
        .arg(models.join(QStringLiteral(", ")));
}

QJsonObject jsonToNear(const SpheroCylinder& power, const SpheroCylinder& near)
{
    const auto addition = additionBetween(power, near);
    return {
        {"addition", addition ? jsonNumber(addition.value().value()) : QJsonValue(QJsonValue::Null)},
        {"error", addition ? QJsonValue(QJsonValue::Null) : QJsonValue(say(addition.complaint().sentence))}};
}

QString wordsToNear(const SpheroCylinder& power, const SpheroCylinder& near)
{
    const auto addition = additionBetween(power, near);
    if (!addition)
        return say(addition.complaint().sentence);
    return commandWords(QT_TRANSLATE_NOOP("command", "addition %1"))
        .arg(QString::fromStdString(writeDioptres(addition.value())));
}

} // namespace

double optionNumber(const CommandLine& line, const char* option, std::size_t index, double least, double most,
                    const char* code, const char* refusal)
{
    const auto& text = line.values.at(option).at(index);
    const auto read = parseNumber(text, least, most, Decimals::dotOrComma);
    if (!read)
        throw errorSaying(code, {refusal, {text}}, Exit::usage);
    return read.value();
}

ConvertExtras::ConvertExtras(const CommandLine& line)
    : vertex_(
          twoNumbers(line, "--vertex", 0.0, largestVertex, "vertex-distance",
                     QS_SAY("core", "“%1” is not a vertex distance; write 0 to 50 mm, as --vertex 12 0"))),
      point_(twoNumbers(line, "--prism", -farthestPoint, farthestPoint, "prism-point",
                        QS_SAY("core",
                               "“%1” is not a place on a lens; write mm to the observer's right and up from "
                               "its centre, -50 to 50, as --prism 2.5 -11"))),
      over_(powerBehind(line, "--over")), near_(powerBehind(line, "--near")), crossed_(line.has("--crossed")),
      loss_(line.has("--loss"))
{
    if (const auto wanted = twoNumbers(
            line, "--decentre", -largestPrism, largestPrism, "prism-wanted",
            QS_SAY("core", "“%1” is no prism; write Δ base in and base up, -20 to 20 (out and down "
                           "negative), as --decentre 2 -0.5")))
        wanted_ = EyePrism{wanted->first, wanted->second};
    if (line.has("--meridian"))
        meridian_ = optionNumber(
            line, "--meridian", 0, 0.0, 180.0, "meridian",
            QS_SAY("core", "“%1” is no meridian; write degrees from 0 to 180, as --meridian 60"));
}

QJsonObject ConvertExtras::json(const SpheroCylinder& power, Eye eye) const
{
    QJsonObject entry;
    if (vertex_)
        entry.insert("at_vertex", jsonAtVertex(power, *vertex_));
    if (point_)
        entry.insert("prism_at", jsonPrismAt(power, *point_));
    if (wanted_)
        entry.insert("decentration", jsonDecentration(power, eye, *wanted_));
    if (crossed_)
        entry.insert("crossed", jsonText(writeCrossed(power)));
    if (over_)
        entry.insert("combined", jsonWhole(combined({power, *over_})));
    if (meridian_)
        entry.insert("in_meridian", jsonNumber(powerInMeridian(toPowerVector(power), *meridian_)));
    if (near_)
        entry.insert("to_near", jsonToNear(power, *near_));
    if (loss_)
        entry.insert("loss", jsonLoss(power));
    return entry;
}

QString ConvertExtras::words(const SpheroCylinder& power, Eye eye) const
{
    QStringList texts;
    if (vertex_)
        texts.append(wordsAtVertex(power, *vertex_));
    if (point_)
        texts.append(
            commandWords(QT_TRANSLATE_NOOP("command", "prism %1 mm right, %2 mm up: %3"))
                .arg(QString::number(point_->first), QString::number(point_->second),
                     QString::fromStdString(writePrismDegrees(prismAtPoint(power, *point_), Eye::right))));
    if (wanted_)
        texts.append(wordsDecentration(power, eye, *wanted_));
    if (crossed_)
        texts.append(QStringLiteral("=  ") + QString::fromStdString(writeCrossed(power)));
    if (over_)
        texts.append(commandWords(QT_TRANSLATE_NOOP("command", "together %1"))
                         .arg(QString::fromStdString(writePower(combined({power, *over_})))));
    if (meridian_)
        texts.append(commandWords(QT_TRANSLATE_NOOP("command", "along %1: %2"))
                         .arg(QString::number(*meridian_),
                              dioptres(powerInMeridian(toPowerVector(power), *meridian_))));
    if (near_)
        texts.append(wordsToNear(power, *near_));
    if (loss_)
        texts.append(wordsLoss(power));
    return texts.isEmpty() ? QString() : QStringLiteral("  ") + texts.join(QStringLiteral("  "));
}

QJsonObject jsonPower(const SpheroCylinder& power)
{
    const bool cylinder = power.cylinder != Dioptres{};
    return {{"sphere", jsonNumber(power.sphere.value())},
            {"cylinder", jsonNumber(power.cylinder.value())},
            {"axis", cylinder ? jsonNumber(power.axis.value()) : QJsonValue(QJsonValue::Null)}};
}

QJsonObject jsonVector(const PowerVector& vector)
{
    return {{"m", jsonNumber(vector.m)},
            {"j0", jsonNumber(vector.j0)},
            {"j45", jsonNumber(vector.j45)},
            {"blur", jsonNumber(blurStrength(vector))}};
}

void insertAll(QJsonObject& into, const QJsonObject& from)
{
    for (auto entry = from.begin(); entry != from.end(); ++entry)
        into.insert(entry.key(), entry.value());
}

} // namespace quarterstep
