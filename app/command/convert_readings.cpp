// SPDX-License-Identifier: GPL-3.0-or-later
// convert --readings: repeated objective readings, how steady they are, and whether the final prescription
// agrees with them.
#include "app/command/convert_extras.hpp"
#include "app/command/convert_modes.hpp"
#include "app/command/inputs.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"
#include "core/optics/notation.hpp"
#include "core/optics/readings.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/readings_file.hpp"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonObject>

#include <map>

namespace quarterstep
{
namespace
{

using Finals = std::map<std::string, PerEye<std::optional<PowerVector>>>;

struct SummedEye {
    const EyeReadings& readings;
    ReadingsSummary summary;
    std::optional<Agreement> agreement;
};

/// Final powers by person; an eye that was not refracted has none.
Finals finalsOf(const CommandLine& line, Output& out)
{
    Finals finals;
    if (!line.has("--finals"))
        return finals;
    const auto table = readPrescriptionTable(line.value("--finals"), {});
    out.tell(table.findings);
    if (!table.usable())
        throw FilesNotRead();
    for (const auto& row : table.value.rows) {
        out.tell(row.findings);
        if (!row.record)
            continue;
        for (const Eye eye : bothEyes)
            if (const auto& final = row.record->eyes.of(eye).final; final.state == EyeState::measured)
                finals[row.record->person].of(eye) = toPowerVector(final.power);
    }
    return finals;
}

SummedEye summed(const EyeReadings& readings, const Finals& finals)
{
    SummedEye eye{readings, summariseReadings(readings.vectors()), std::nullopt};
    if (const auto person = finals.find(readings.person); person != finals.end())
        if (const auto& final = person->second.of(readings.eye))
            eye.agreement = agreementWithFinal(eye.summary, *final);
    return eye;
}

const char* steadinessWord(Steadiness steadiness)
{
    switch (steadiness) {
    case Steadiness::steady:
        return "steady";
    case Steadiness::scattered:
        return "scattered";
    case Steadiness::tooFew:
        break;
    }
    return "too_few";
}

const char* agreementWord(Agreement::Verdict verdict)
{
    switch (verdict) {
    case Agreement::Verdict::agrees:
        return "agrees";
    case Agreement::Verdict::note:
        return "note";
    case Agreement::Verdict::apart:
        break;
    }
    return "apart";
}

QJsonValue jsonHalfAxes(const std::optional<Ellipsoid>& ellipsoid)
{
    if (!ellipsoid)
        return QJsonValue::Null;
    QJsonArray axes;
    for (const double axis : ellipsoid->halfAxes)
        axes.append(jsonNumber(axis));
    return axes;
}

QJsonObject jsonCovariance(const Covariance& c)
{
    return {{"m_m", jsonNumber(c.mm)},    {"m_j0", jsonNumber(c.m0)},     {"m_j45", jsonNumber(c.m45)},
            {"j0_j0", jsonNumber(c.j00)}, {"j0_j45", jsonNumber(c.j045)}, {"j45_j45", jsonNumber(c.j4545)}};
}

QJsonValue jsonAgreement(const std::optional<Agreement>& agreement)
{
    if (!agreement)
        return QJsonValue::Null;
    return QJsonObject{{"verdict", agreementWord(agreement->verdict)},
                       {"difference", jsonVector(agreement->difference)},
                       {"expected", jsonVector(agreement->expected)},
                       {"words", say(agreement->statement)},
                       {"source", jsonText(agreement->source)}};
}

QJsonObject jsonEye(const SummedEye& eye)
{
    const auto& summary = eye.summary;
    QJsonArray outliers;
    for (const std::size_t index : summary.outliers)
        outliers.append(static_cast<int>(index) + 1);
    auto mean = jsonPower(toSpheroCylinder(summary.mean));
    insertAll(mean, jsonVector(summary.mean));
    return {{"person", jsonText(eye.readings.person)},
            {"eye", eye.readings.eye == Eye::right ? "right" : "left"},
            {"count", static_cast<int>(summary.count)},
            {"used", static_cast<int>(summary.used)},
            {"outliers", outliers},
            {"median", jsonVector(summary.median)},
            {"mean", mean},
            {"covariance", jsonCovariance(summary.assumed)},
            {"covariance_published", summary.published},
            {"half_axes_95_distribution", jsonHalfAxes(summary.distribution)},
            {"half_axes_95_mean", jsonHalfAxes(summary.ofMean)},
            {"steadiness", steadinessWord(summary.steadiness)},
            {"figure", jsonNumber(summary.figure)},
            {"limit", jsonNumber(summary.limit)},
            {"words", say(summary.statement)},
            {"advice", say(summary.advice)},
            {"final", jsonAgreement(eye.agreement)}};
}

void showEye(const SummedEye& eye, Output& out)
{
    const auto& summary = eye.summary;
    const QString side = eye.readings.eye == Eye::right ? commandWords(QT_TRANSLATE_NOOP("command", "right"))
                                                        : commandWords(QT_TRANSLATE_NOOP("command", "left"));
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "%1 %2: mean %3 of %4 readings"))
                 .arg(QString::fromStdString(eye.readings.person), side,
                      QString::fromStdString(writePower(toSpheroCylinder(summary.mean))))
                 .arg(summary.used));
    for (const std::size_t index : summary.outliers)
        out.line(QStringLiteral("  ") +
                 commandWords(QT_TRANSLATE_NOOP("command", "left out: %1, too far from the others"))
                     .arg(QString::fromStdString(writePower(eye.readings.readings.at(index)))));
    out.line(QStringLiteral("  ") + say(summary.statement));
    if (!summary.advice.empty())
        out.line(QStringLiteral("  ") + say(summary.advice));
    if (eye.agreement)
        out.line(QStringLiteral("  ") + say(eye.agreement->statement));
}

} // namespace

int convertReadings(const CommandLine& line, Output& out)
{
    const auto reading = readReadingsFile(line.value("--readings"));
    out.tell(reading.findings);
    if (!reading.usable())
        return Exit::badData;
    const auto finals = finalsOf(line, out);
    QJsonArray answers;
    for (const auto& readings : reading.value) {
        const auto eye = summed(readings, finals);
        if (line.has("--json"))
            answers.append(jsonEye(eye));
        else
            showEye(eye, out);
    }
    if (line.has("--json"))
        out.json(answers);
    return Exit::done;
}

} // namespace quarterstep
