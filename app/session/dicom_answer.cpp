// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/dicom_answer.hpp"

#include "app/session/beside.hpp"
#include "inventory/exchange/json_lines.hpp"
#include "inventory/store/write_back.hpp"
#include "inventory/text/large_text.hpp"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

#include <algorithm>

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

Finding notUnderstood()
{
    return {
        Severity::error,
        {},
        "dicom-answer",
        {QS_SAY("core", "the program that reads and writes DICOM gave no answer that is understood"), {}}};
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

/// What the program says to these words. Error: dicom-program-missing. `look` is called while it works.
Reading<QByteArray> answerTo(const QStringList& words, const std::function<void()>& look)
{
    const auto program = programBeside("quarterstep-dicom");
    Reading<QByteArray> answer;
    RunningProgram running;
    running.process.setProcessChannelMode(QProcess::SeparateChannels);
    running.process.start(program, words, QIODevice::ReadOnly);
    if (!running.process.waitForStarted()) {
        answer.findings.push_back(
            {Severity::error,
             {},
             "dicom-program-missing",
             {QS_SAY("core", "the program that reads and writes DICOM, %1, cannot be started: %2"),
              {program.toStdString(), running.process.errorString().toStdString()}}});
        return answer;
    }
    while (!running.process.waitForFinished(lookAfterMs) && running.process.state() != QProcess::NotRunning)
        look();
    answer.value = running.process.readAllStandardOutput();
    return answer;
}

/// Whether somebody left by the rules that were meant.
bool leftBy(const RulesStamp& rules, const QJsonObject& answer)
{
    const auto left = answer.value(QLatin1String("rules")).toArray().at(0).toObject();
    return textIn(left, "profile") == rules.profile && textIn(left, "version") == rules.version &&
           textIn(left, "hash") == rules.hash;
}

/// What was found of one person; places are those of the person, not of the table made for the program.
std::vector<Finding> foundOf(const ExchangePerson& person, const QJsonObject& answer)
{
    if (answer.isEmpty())
        return {notUnderstood()};
    auto findings = findingsIn(answer.value(QLatin1String("findings")));
    for (auto& finding : findings)
        finding.position = person.record.position;
    if (!hasError(findings) && !leftBy(person.rules, answer))
        findings.push_back(
            {Severity::error,
             person.record.position,
             "dicom-rules",
             {QS_SAY("core", "rules.yaml is not as it was when this camp was opened; open it again"), {}}});
    return findings;
}

/// One person through a folder of its own.
Reading<std::string> exportOne(const ExchangePerson& person, const QString& folder, QStringList words,
                               const std::function<void()>& look)
{
    const auto table = folder + QStringLiteral("/person.csv");
    const auto file = folder + QStringLiteral("/person.dcm");
    QFile::remove(file); // of the person before
    const TableRow row{0, person.record.person, person.record, {}};
    replaceFile(table.toStdString(), tableText({row}), true);
    words << QStringLiteral("--output") << file << table;
    const auto said = answerTo(words, look);
    Reading<std::string> written;
    written.findings =
        said.usable() ? foundOf(person, QJsonDocument::fromJson(said.value).object()) : said.findings;
    if (!written.usable())
        return written;
    auto bytes = readLargeBytes(file.toStdString());
    written.findings.insert(written.findings.end(), bytes.findings.begin(), bytes.findings.end());
    written.value = std::move(bytes.value);
    return written;
}

} // namespace

ImportedRows rowsOfAnswer(const QByteArray& json, const ImportOptions& options)
{
    const auto answer = QJsonDocument::fromJson(json).object();
    if (!answer.contains(QLatin1String("persons")))
        return {{}, {notUnderstood()}};
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
    QStringList words{QStringLiteral("import"), QStringLiteral("--as"), QStringLiteral("dicom"),
                      QStringLiteral("--dry-run"), QStringLiteral("--json")};
    for (const auto& path : paths)
        words << QString::fromStdString(path);
    const auto said = answerTo(words, [&] {
        if (options.progress)
            options.progress(0, paths.size());
    });
    return said.usable() ? rowsOfAnswer(said.value, options) : ImportedRows{{}, said.findings};
}

Reading<std::vector<std::string>>
exportDicomFiles(std::span<const ExchangePerson> persons, const std::string& rulesPath,
                 const std::function<void(std::size_t done, std::size_t of)>& progress)
{
    QStringList words{QStringLiteral("export"), QStringLiteral("--as"), QStringLiteral("dicom"),
                      QStringLiteral("--json")};
    if (!rulesPath.empty())
        words << QStringLiteral("--rules") << QString::fromStdString(rulesPath);
    const QTemporaryDir folder; // read by its owner alone
    if (!folder.isValid())
        throw errorSaying("file-unwritable",
                          {QS_SAY("core", "the folder %1 cannot be made"), {folder.path().toStdString()}}, 4);
    Reading<std::vector<std::string>> all;
    for (const auto& person : persons) {
        const auto look = [&] {
            if (progress)
                progress(all.value.size(), persons.size());
        };
        look();
        auto one = exportOne(person, folder.path(), words, look);
        all.findings.insert(all.findings.end(), one.findings.begin(), one.findings.end());
        if (!one.usable())
            break;
        all.value.push_back(std::move(one.value));
    }
    return all;
}

} // namespace quarterstep
