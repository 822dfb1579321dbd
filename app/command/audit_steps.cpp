// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/audit_steps.hpp"

#include "app/command/kept_work.hpp"

#include <QDateTime>

#include <algorithm>

namespace quarterstep
{
namespace
{

struct AuditStep {
    const char* word;
    bool file; ///< needs a file after it
    int (*run)(const CommandLine& line, Output& out);
};

constexpr AuditStep steps[] = {
    {"draw", false, runAuditDraw}, {"sheet", false, runAuditSheet}, {"read", true, runAuditRead},
    {"lots", false, runAuditLots}, {"due", false, runAuditDue},     
};

QDate parsedDay(const CommandLine& line, const char* option)
{
    const auto day = QDate::fromString(QString::fromStdString(line.value(option)), Qt::ISODate);
    if (!day.isValid())
        refuseUsage("option-value",
                    {QS_SAY("core", "“%1” is not a day; write it as 2026-03-01"), {line.value(option)}});
    return day;
}

} // namespace

int runAuditStep(const CommandLine& line, Output& out)
{
    const auto& word = line.arguments.front();
    const auto* step = std::find_if(std::begin(steps), std::end(steps),
                                    [&](const AuditStep& each) { return word == each.word; });
    if (step == std::end(steps))
        refuseUsage(
            "option-value",
            {QS_SAY("core", "“%1” is no step of an audit; write draw, sheet, read, lots, due or report"),
             {word}});
    if (step->file != (line.arguments.size() == 2))
        refuseUsage(step->file ? "arguments-missing" : "arguments-too-many",
                    {step->file ? QS_SAY("core", "`audit %1` needs the worksheet that was filled in")
                                : QS_SAY("core", "`audit %1` takes no file"),
                     {word}});
    return step->run(line, out);
}

std::string dayOf(const CommandLine& line, const char* option)
{
    return line.has(option) ? parsedDay(line, option).toString(Qt::ISODate).toStdString() : std::string();
}

std::int64_t asOfMs(const CommandLine& line)
{
    if (!line.has("--as-of"))
        return QDateTime::currentMSecsSinceEpoch();
    return QDateTime(parsedDay(line, "--as-of"), QTime(23, 59, 59, 999)).toMSecsSinceEpoch();
}

} // namespace quarterstep
