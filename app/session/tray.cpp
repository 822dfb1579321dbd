// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/tray.hpp"

#include "app/session/tray_writer.hpp"
#include "inventory/store/finding_at.hpp"
#include "inventory/store/place.hpp"
#include "inventory/store/write_back.hpp"
#include "inventory/text/stock_file.hpp"

#include <QRegularExpression>

#include <filesystem>

namespace quarterstep
{

namespace
{

/// A line of the description; empty for blank lines and remarks.
std::optional<TrayRow> rowOf(const QString& line, int number, std::vector<Finding>& findings)
{
    static const QRegularExpression form(
        QStringLiteral("^\\s*(?:(near|distance|intermediate|lens|frame|other)\\s+)?(\\S[^:]*?)\\s*:(.*)$"));
    if (line.trimmed().isEmpty() || line.trimmed().startsWith(QLatin1Char('#')))
        return {};
    const auto found = form.match(line);
    if (!found.hasMatch()) {
        Finding finding;
        finding.position = {"tray", number, 1};
        finding.code = "tray-form";
        finding.sentence = {QS_SAY("core", "a tray is written as powers, a colon and a count: for example "
                                           "\"near +1.00 to +3.50 by 0.50: 10\""),
                            {}};
        findings.push_back(std::move(finding));
        return {};
    }
    return TrayRow{number,
                   found.captured(1),
                   found.captured(2),
                   static_cast<int>(found.capturedStart(2)) + 1,
                   found.captured(3),
                   static_cast<int>(found.capturedStart(3)) + 1};
}

Finding aboutTray(const char* code, Sentence sentence)
{
    Finding finding;
    finding.position = {"tray", 1, 1};
    finding.code = code;
    finding.sentence = std::move(sentence);
    return finding;
}

} // namespace

Reading<TrayStock> stockOfTray(const std::string& site, const std::string& description)
{
    Reading<TrayStock> result;
    TrayWriter writer(result.findings);
    int number = 0;
    for (const auto& line : QString::fromStdString(description).split(QLatin1Char('\n')))
        if (const auto row = rowOf(line, ++number, result.findings); row && writer.lines() <= mostTrayLines)
            writer.take(*row);
    if (writer.lines() > mostTrayLines)
        result.findings.push_back(
            aboutTray("tray-too-many", {QS_SAY("core", "these trays make more than %1 lines of stock"),
                                        {std::to_string(mostTrayLines)}}));
    if (QString::fromStdString(site).trimmed().isEmpty())
        result.findings.push_back(
            aboutTray("tray-empty", {QS_SAY("core", "the camp has no name yet; give it one"), {}}));
    if (writer.lines() == 0 && result.findings.empty())
        result.findings.push_back(
            aboutTray("tray-empty", {QS_SAY("core", "nothing is described yet; write a tray a line"), {}}));
    if (!result.usable())
        return result;
    result.value.bytes =
        "# Made from a description of the trays; people may edit it by hand. The program changes the\n"
        "# digits after \"on hand\" and the line \"written\", nothing else.\n"
        "format: quarterstep stock 1\nsite: " +
        yamlQuoted(QString::fromStdString(site)).toStdString() + "\nlines:\n" + writer.text();
    auto read = readStockText(result.value.bytes, "stock.yaml");
    result.findings = std::move(read.findings);
    if (!result.usable())
        result.value.bytes.clear();
    result.value.lines = std::move(read.value.lines);
    return result;
}

void writeNewStock(const std::string& folder, const std::string& bytes)
{
    std::error_code failed;
    std::filesystem::create_directories(folder, failed);
    if (failed)
        throw errorAt(folder, "file-unwritable",
                      {QS_SAY("core", "this folder cannot be made: %1"), {failed.message()}}, 4);
    const FolderLock lock(folder);
    const auto path = stockPath(folder);
    if (std::filesystem::exists(std::filesystem::symlink_status(path, failed)))
        throw errorAt(path, "stock-there",
                      {QS_SAY("core", "this folder has a stock.yaml already; nothing was written: open the "
                                      "folder, or choose another one"),
                       {}},
                      3);
    replaceFile(path, bytes);
}

} // namespace quarterstep
