// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/convert_extras.hpp"

#include "app/command/output.hpp"
#include "core/optics/effectivity.hpp"
#include "core/optics/notation.hpp"
#include "inventory/text/numbers.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

constexpr double largestVertex = 50.0; ///< mm
constexpr double farthestPoint = 50.0; ///< mm

/// Two lengths behind an option; `refusal` is thrown for what is none.
std::optional<std::pair<double, double>> lengthsOf(const CommandLine& line, const char* option, double least,
                                                   double most, const char* code, const char* refusal)
{
    const auto found = line.values.find(option);
    if (found == line.values.end())
        return std::nullopt;
    const auto millimetres = [&](const std::string& text) {
        const auto read = parseNumber(text, least, most, Decimals::dotOrComma);
        if (!read)
            throw errorSaying(code, {refusal, {text}}, Exit::usage);
        return read.value();
    };
    return std::pair{millimetres(found->second.at(0)), millimetres(found->second.at(1))};
}

/// Prism met at the point: x to the observer's right, which is nasal of a right eye.
EyePrism prismAtPoint(const SpheroCylinder& power, const std::pair<double, double>& point)
{
    return prismAt(toPowerMatrix(power), Eye::right, point.first, point.second);
}

QJsonValue jsonAtVertex(const SpheroCylinder& power, const std::pair<double, double>& vertex)
{
    const auto moved = atVertexDistance(power, Millimetres{vertex.first}, Millimetres{vertex.second});
    if (!moved)
        return QJsonValue::Null;
    auto there = jsonPower(minusCylinderForm(*moved));
    insertAll(there, jsonVector(toPowerVector(*moved)));
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

} // namespace

ConvertExtras::ConvertExtras(const CommandLine& line)
    : vertex_(lengthsOf(line, "--vertex", 0.0, largestVertex, "vertex-distance",
                        QS_SAY("core", "“%1” is not a vertex distance; write 0 to 50 mm, as --vertex 12 0"))),
      point_(lengthsOf(line, "--prism", -farthestPoint, farthestPoint, "prism-point",
                       QS_SAY("core",
                              "“%1” is not a place on a lens; write mm to the observer's right and up from "
                              "its centre, -50 to 50, as --prism 2.5 -11"))),
      crossed_(line.has("--crossed"))
{
}

QJsonObject ConvertExtras::json(const SpheroCylinder& power) const
{
    QJsonObject entry;
    if (vertex_)
        entry.insert("at_vertex", jsonAtVertex(power, *vertex_));
    if (point_) {
        const auto prism = prismAtPoint(power, *point_);
        const auto single = baseOf(prism, Eye::right);
        entry.insert("prism_at", QJsonObject{{"right_pd", jsonNumber(prism.in)},
                                             {"up_pd", jsonNumber(prism.up)},
                                             {"prism", jsonNumber(single.amount)},
                                             {"base", jsonNumber(single.degrees)}});
    }
    if (crossed_)
        entry.insert("crossed", jsonText(writeCrossed(power)));
    return entry;
}

QString ConvertExtras::words(const SpheroCylinder& power) const
{
    QString text;
    if (vertex_)
        text += QStringLiteral("  ") + wordsAtVertex(power, *vertex_);
    if (point_)
        text += QStringLiteral("  ") +
                commandWords(QT_TRANSLATE_NOOP("command", "prism %1 mm right, %2 mm up: %3"))
                    .arg(QString::number(point_->first), QString::number(point_->second),
                         QString::fromStdString(writePrismDegrees(prismAtPoint(power, *point_), Eye::right)));
    if (crossed_)
        text += QStringLiteral("  =  ") + QString::fromStdString(writeCrossed(power));
    return text;
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
