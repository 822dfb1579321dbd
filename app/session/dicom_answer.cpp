// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/dicom_answer.hpp"

#include "app/session/beside.hpp"
#include "inventory/exchange/json_lines.hpp"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>

namespace quarterstep
{

namespace
{

constexpr int lookAfterMs = 50;

std::string textIn(const QJsonObject& object, const char* name)
{
    return object.value(QLatin1String(name)).toString().toStdString();
}

std::vector<Finding> findingsIn(const QJsonValue& list)
{
    std::vector<Finding> findings;
    for (const auto& value : list.toArray()) {
        const auto object = value.toObject();
        Finding finding;
        const auto severity = textIn(object, "severity");
        finding.severity = severity == "note"      ? Severity::note
                           : severity == "caution" ? Severity::caution
                                                   : Severity::error;
        finding.position = {textIn(object, "file"), object.value(QLatin1String("line")).toInt(),
                            object.value(QLatin1String("column")).toInt()};
        finding.code = textIn(object, "code");
        finding.sentence.text = textIn(object, "template");
        for (const auto& argument : object.value(QLatin1String("arguments")).toArray())
            finding.sentence.arguments.push_back(argument.toString().toStdString());
        findings.push_back(std::move(finding));
    }
    return findings;
}

ImportedRows answerMissing(const char* code, Sentence sentence)
{
    ImportedRows rows;
    rows.findings.push_back({Severity::error, {}, code, std::move(sentence)});
    return rows;
}

/// Ends the program whatever happens here.
class RunningProgram
{
  public:
    ~RunningProgram()
    {
        if (process.state() == QProcess::NotRunning)
            return;
        process.kill();
        process.waitForFinished();
    }
    QProcess process;
};

} // namespace

ImportedRows rowsOfAnswer(const QByteArray& json, const ImportOptions& options)
{
    const auto answer = QJsonDocument::fromJson(json).object();
    if (!answer.contains(QLatin1String("persons")))
        return answerMissing(
            "dicom-answer",
            {QS_SAY("core", "the program that reads DICOM gave no answer that is understood"), {}});
    ImportedRows rows;
    rows.findings = findingsIn(answer.value(QLatin1String("findings")));
    for (const auto& value : answer.value(QLatin1String("persons")).toArray()) {
        const auto person = value.toObject();
        TableRow row;
        row.line = person.value(QLatin1String("line")).toInt();
        row.person = textIn(person, "person");
        row.findings = findingsIn(person.value(QLatin1String("findings")));
        if (person.value(QLatin1String("taken")).toBool()) {
            // The cells are those of a row of the table; what was to be said of them was said by the program.
            const auto cells =
                QJsonDocument(person.value(QLatin1String("cells")).toObject()).toJson(QJsonDocument::Compact);
            auto read = readJsonLines(cells.toStdString(), row.person, {options.today, {}});
            if (!read.value.empty())
                row.record = std::move(read.value.front().record);
        }
        rows.value.push_back(std::move(row));
    }
    return rows;
}

ImportedRows importDicomFiles(const std::vector<std::string>& paths, const ImportOptions& options)
{
    const auto program = programBeside("quarterstep-dicom");
    QStringList words{QStringLiteral("import"), QStringLiteral("--as"), QStringLiteral("dicom"),
                      QStringLiteral("--dry-run"), QStringLiteral("--json")};
    for (const auto& path : paths)
        words << QString::fromStdString(path);
    RunningProgram running;
    running.process.setProcessChannelMode(QProcess::SeparateChannels);
    running.process.start(program, words, QIODevice::ReadOnly);
    if (!running.process.waitForStarted())
        return answerMissing(
            "dicom-program-missing",
            {QS_SAY("core", "the program that reads and writes DICOM, %1, cannot be started: %2"),
             {program.toStdString(), running.process.errorString().toStdString()}});
    while (!running.process.waitForFinished(lookAfterMs) && running.process.state() != QProcess::NotRunning)
        if (options.progress)
            options.progress(0, paths.size());
    return rowsOfAnswer(running.process.readAllStandardOutput(), options);
}

} // namespace quarterstep
