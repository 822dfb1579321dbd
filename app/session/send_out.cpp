// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/send_out.hpp"

#include "app/session/dicom_answer.hpp"
#include "inventory/store/write_back.hpp"

#include <QFile>

#include <set>

namespace quarterstep
{

namespace
{

QString pathOf(const std::string& text)
{
    return QString::fromStdString(text);
}

/// A file a person, none of which is there already; codes that make the same name get a number.
std::vector<std::string> filesInFolder(const std::string& folder, std::span<const ExchangePerson> persons)
{
    std::set<QString> taken;
    std::vector<std::string> paths;
    for (const auto& person : persons) {
        const auto stem = QStringLiteral("%1/%2").arg(pathOf(folder), fileWord(person.record.person));
        auto path = stem + QStringLiteral(".dcm");
        for (int number = 2; !taken.insert(path.toLower()).second; ++number) // disks that know no capitals
            path = QStringLiteral("%1-%2.dcm").arg(stem).arg(number);
        if (QFile::exists(path))
            throw errorSaying("file-exists",
                              {QS_SAY("core", "%1 is there already; name a new file, or move that one away"),
                               {path.toStdString()}},
                              3);
        paths.push_back(path.toStdString());
    }
    return paths;
}

SentOut sendDicom(const SendOut& wanted, std::span<const ExchangePerson> persons, const Job& job)
{
    const auto paths = wanted.fileEach && !wanted.dryRun ? filesInFolder(wanted.path, persons)
                                                         : std::vector<std::string>{wanted.path};
    const auto rules = wanted.campFolder + "/rules.yaml";
    auto written =
        exportDicomFiles(persons, QFile::exists(pathOf(rules)) ? rules : std::string(),
                         [&job](std::size_t done, std::size_t of) {
                             tellFar(job, static_cast<std::int64_t>(done), static_cast<std::int64_t>(of));
                         });
    SentOut sent{std::move(written.findings), 0};
    if (hasError(sent.findings) || wanted.dryRun)
        return sent;
    for (const auto& bytes : written.value) {
        replaceFile(paths.at(sent.files), bytes, true);
        ++sent.files;
    }
    return sent;
}

} // namespace

QString fileWord(const std::string& person)
{
    constexpr int most = 40;
    auto word = QString::fromStdString(person);
    for (auto& letter : word)
        if (!letter.isLetterOrNumber() && letter != QLatin1Char('-'))
            letter = QLatin1Char('_');
    return word.left(most);
}

SentOut sendOut(const SendOut& wanted, const FittingRules& rules, std::vector<PersonRecord> persons,
                const Job& job)
{
    const auto stamped = stampedWith(rules, {}, std::move(persons));
    if (wanted.as == ExchangeFormat::dicom)
        return sendDicom(wanted, stamped, job);
    auto written = exportText(wanted.as, stamped, todayIso());
    throwIfStopped(job);
    SentOut sent{std::move(written.findings), 0};
    if (hasError(sent.findings) || wanted.dryRun)
        return sent;
    replaceFile(wanted.path, written.value, true);
    ++sent.files;
    return sent;
}

} // namespace quarterstep
