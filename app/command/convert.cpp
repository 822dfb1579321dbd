// SPDX-License-Identifier: GPL-3.0-or-later
// convert: written powers in both cylinder forms and as power vectors; written acuities as logMAR. A text
// that cannot be read is answered in its place.
#include "app/command/command_line.hpp"
#include "app/command/convert_extras.hpp"
#include "app/command/convert_modes.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"
#include "core/optics/acuity.hpp"
#include "core/optics/acuity_scale.hpp"
#include "core/optics/notation.hpp"
#include "core/optics/power_vector.hpp"
#include "inventory/text/source_text.hpp"

namespace quarterstep
{
namespace
{

struct Text {
    std::string text;
    Position position;
};

/// The arguments, or the lines of standard input for "-".
std::vector<Text> textsOf(const CommandLine& line, Output& out)
{
    std::vector<Text> texts;
    int number = 0;
    for (const auto& argument : line.arguments) {
        ++number;
        if (argument != "-") {
            texts.push_back({argument, {"argument " + std::to_string(number), 1, 0}});
            continue;
        }
        const auto bytes = readBytes("-");
        out.tell(bytes.findings);
        int row = 0;
        std::string text;
        for (std::size_t i = 0; i <= bytes.value.size(); ++i) {
            if (i < bytes.value.size() && bytes.value[i] != '\n') {
                text += bytes.value[i];
                continue;
            }
            ++row;
            if (!text.empty() && text.back() == '\r')
                text.pop_back();
            if (i < bytes.value.size() || !text.empty())
                texts.push_back({text, {"-", row, 0}});
            text.clear();
        }
    }
    return texts;
}

void tellComplaint(const Text& text, const Complaint& complaint, Output& out)
{
    Position position = text.position;
    position.column = complaint.offset + 1;
    out.tell(Severity::error, position, complaint.code, complaint.sentence);
}

const char* stateWord(EyeState state)
{
    switch (state) {
    case EyeState::balance:
        return "balance";
    case EyeState::artificial:
        return "artificial";
    case EyeState::blind:
        return "blind";
    case EyeState::notMeasured:
        return "not measured";
    case EyeState::measured:
        break;
    }
    return "measured";
}

QJsonObject jsonEye(const WrittenEye& eye, Eye side, const ConvertExtras& extras)
{
    QJsonObject entry{{"as_written", jsonText(eye.asWritten)}, {"state", stateWord(eye.state)}};
    if (eye.state != EyeState::measured) {
        for (const char* name : {"sphere", "cylinder", "axis", "plus_form", "m", "j0", "j45", "blur"})
            entry.insert(name, QJsonValue::Null);
        return entry;
    }
    insertAll(entry, jsonPower(minusCylinderForm(eye.power)));
    entry.insert("plus_form", jsonPower(plusCylinderForm(eye.power)));
    insertAll(entry, jsonVector(toPowerVector(eye.power)));
    if (eye.addition)
        entry.insert("addition", jsonNumber(eye.addition->value()));
    if (eye.prism)
        entry.insert("prism",
                     QJsonObject{{"in_pd", jsonNumber(eye.prism->in)}, {"up_pd", jsonNumber(eye.prism->up)}});
    insertAll(entry, extras.json(eye.power, side));
    return entry;
}

QJsonObject jsonRefusal(const Text& text, const Complaint& complaint,
                        std::initializer_list<const char*> nulls)
{
    QJsonObject entry{{"as_written", jsonText(text.text)},
                      {"error", say(complaint.sentence)},
                      {"code", jsonText(complaint.code)},
                      {"column", complaint.offset + 1}};
    for (const char* name : nulls)
        entry.insert(name, QJsonValue::Null);
    return entry;
}

QString vectorWords(const SpheroCylinder& power)
{
    const auto vector = toPowerVector(power);
    return QStringLiteral("M %1  J0 %2  J45 %3  b %4")
        .arg(dioptres(vector.m), dioptres(vector.j0), dioptres(vector.j45),
             QString::number(blurStrength(vector), 'f', 2));
}

QString eyeWords(const WrittenEye& eye, Eye side, const ConvertExtras& extras)
{
    if (eye.state != EyeState::measured)
        return commandWords(QT_TRANSLATE_NOOP("command", "%1: not refracted, not judged"))
            .arg(QString::fromStdString(eye.asWritten));
    QString text = QString::fromStdString(writePower(minusCylinderForm(eye.power)));
    if (eye.power.cylinder != Dioptres{})
        text += QStringLiteral("  =  ") + QString::fromStdString(writePower(plusCylinderForm(eye.power)));
    text += QStringLiteral("  ") + vectorWords(eye.power);
    if (eye.addition)
        text += QStringLiteral("  ") + commandWords(QT_TRANSLATE_NOOP("command", "addition %1"))
                                           .arg(QString::fromStdString(writeDioptres(*eye.addition)));
    if (eye.prism)
        text += QStringLiteral("  ") + QString::fromStdString(writePrism(*eye.prism));
    return text + extras.words(eye.power, side);
}

QString refusalWords(const Text& text, const Complaint& complaint)
{
    return commandWords(QT_TRANSLATE_NOOP("command", "%1: not read: %2"))
        .arg(QString::fromStdString(text.text), say(complaint.sentence));
}

int convertPowers(const CommandLine& line, const std::vector<Text>& texts, Output& out)
{
    const ConvertExtras extras(line);
    int exit = Exit::done;
    QJsonArray answers;
    for (const auto& text : texts) {
        const Eye side = eyeNamed(text.text).value_or(Eye::right);
        const auto eye = parseEye(text.text, side);
        if (!eye) {
            tellComplaint(text, eye.complaint(), out);
            exit = Exit::badData;
        }
        if (line.has("--json"))
            answers.append(
                eye ? jsonEye(eye.value(), side, extras)
                    : jsonRefusal(text, eye.complaint(),
                                  {"sphere", "cylinder", "axis", "plus_form", "m", "j0", "j45", "blur"}));
        else
            out.line(eye ? eyeWords(eye.value(), side, extras) : refusalWords(text, eye.complaint()));
    }
    if (line.has("--json"))
        out.json(answers);
    return exit;
}

QJsonObject jsonAcuity(const Acuity& acuity)
{
    const auto& logMar = acuity.logMar;
    const auto of = [&logMar](double (*function)(double, double), double numerator) {
        return logMar ? jsonNumber(function(*logMar, numerator)) : QJsonValue(QJsonValue::Null);
    };
    return {{"as_written", jsonText(acuity.asRecorded)},
            {"logmar", jsonNumber(logMar)},
            {"letters", logMar ? jsonNumber(lettersFromLogMar(*logMar)) : QJsonValue(QJsonValue::Null)},
            {"decimal", logMar ? jsonNumber(decimalFromLogMar(*logMar)) : QJsonValue(QJsonValue::Null)},
            {"snellen_6", of(snellenDenominator, 6.0)},
            {"snellen_20", of(snellenDenominator, 20.0)}};
}

QString acuityWords(const Acuity& acuity)
{
    if (!acuity.logMar)
        return commandWords(QT_TRANSLATE_NOOP("command", "%1: no number"))
            .arg(QString::fromStdString(acuity.asRecorded));
    const auto fixed = [](double value, int decimals) { return QString::number(value + 0.0, 'f', decimals); };
    return QStringLiteral("logMAR %1  6/%2  20/%3  %4")
        .arg(fixed(*acuity.logMar, 2), fixed(snellenDenominator(*acuity.logMar, 6.0), 1),
             fixed(snellenDenominator(*acuity.logMar, 20.0), 0), fixed(decimalFromLogMar(*acuity.logMar), 2));
}

QJsonObject jsonNear(const NearAcuity& near)
{
    return {{"as_written", jsonText(near.asRecorded)},
            {"n_points", jsonNumber(near.points)},
            {"m_units", jsonNumber(near.points / 8.0)},
            {"distance_mm", jsonNumber(near.distanceMm)}};
}

QString nearWords(const NearAcuity& near)
{
    const QString size = QStringLiteral("N%1  M %2")
                             .arg(QString::number(near.points), QString::number(near.points / 8.0, 'f', 2));
    return near.distanceMm
               ? size + commandWords(QT_TRANSLATE_NOOP("command", "  at %1 mm")).arg(*near.distanceMm)
               : size;
}

int convertAcuities(const CommandLine& line, const std::vector<Text>& texts, Output& out)
{
    int exit = Exit::done;
    QJsonArray answers;
    for (const auto& text : texts) {
        const auto acuity = parseAcuity(text.text);
        if (const auto near = parseNearAcuity(text.text); near && !acuity) {
            if (line.has("--json"))
                answers.append(jsonNear(near.value()));
            else
                out.line(nearWords(near.value()));
            continue;
        }
        if (!acuity) {
            tellComplaint(text, acuity.complaint(), out);
            exit = Exit::badData;
        }
        if (line.has("--json"))
            answers.append(acuity ? jsonAcuity(acuity.value())
                                  : jsonRefusal(text, acuity.complaint(),
                                                {"logmar", "decimal", "snellen_6", "snellen_20"}));
        else
            out.line(acuity ? acuityWords(acuity.value()) : refusalWords(text, acuity.complaint()));
    }
    if (line.has("--json"))
        out.json(answers);
    return exit;
}

struct Mode {
    const char* option;
    int (*run)(const CommandLine& line, Output& out);
};

constexpr Mode modes[] = {
    {"--readings", convertReadings}, {"--age", convertNearAdditions}, {"--amplitude", convertNearAdditions},
    {"--box", convertBox},           {"--surfaces", convertSurfaces},
};

} // namespace

int runConvert(const CommandLine& line, Output& out)
{
    for (const auto& mode : modes) {
        if (!line.has(mode.option))
            continue;
        if (!line.arguments.empty())
            throw errorSaying("arguments-too-many",
                              {QS_SAY("core", "“%1” cannot stand beside %2, which takes the place of texts"),
                               {line.arguments.front(), mode.option}},
                              Exit::usage);
        return mode.run(line, out);
    }
    if (line.arguments.empty())
        throw errorSaying("arguments-missing",
                          {QS_SAY("core", "`%1` needs %2; see `quarterstep help %1`"), {"convert", "TEXT…"}},
                          Exit::usage);
    const auto texts = textsOf(line, out);
    return line.has("--acuity") ? convertAcuities(line, texts, out) : convertPowers(line, texts, out);
}

} // namespace quarterstep
