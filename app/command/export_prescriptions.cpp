// SPDX-License-Identifier: GPL-3.0-or-later
// export --as FORMAT: a prescription table in an open standard, with the rules that were in force.
#include "app/command/exchange.hpp"
#include "app/command/exchange_dicom.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/line_choices.hpp"
#include "app/command/output.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace quarterstep
{
namespace
{

constexpr std::array writable{ExchangeFormat::fhir, ExchangeFormat::fhirAlone, ExchangeFormat::jsonLines,
                              ExchangeFormat::table, ExchangeFormat::dicom};

/// What left, by which rules, and what was found, for programs.
void answerSent(const CommandLine& line, const std::vector<ExchangePerson>& persons,
                const std::vector<Finding>& findings, Output& out)
{
    QJsonArray rules;
    for (const auto& person : persons)
        rules.append(QJsonObject{{"person", jsonText(person.record.person)},
                                 {"profile", jsonText(person.rules.profile)},
                                 {"version", jsonText(person.rules.version)},
                                 {"hash", jsonText(person.rules.hash)}});
    out.json(QJsonObject{{"format", jsonText(line.value("--as"))},
                         {"output", jsonTextOrNull(line.value("--output"))},
                         {"rules", rules},
                         {"findings", jsonFindings(findings)},
                         {"dry_run", line.has("--dry-run")}});
}

void refuseWords(const CommandLine& line, bool dicom)
{
    const bool toFile = line.has("--output") || line.has("--dry-run");
    if (line.arguments.empty())
        refuseUsage("arguments-missing",
                    {QS_SAY("core", "`export --as %1` needs the prescription table"), {line.value("--as")}});
    if (line.has("--json") && !toFile)
        refuseUsage("option-value", {QS_SAY("core", "--json goes with --output FILE or --dry-run"), {}});
    if (dicom && !toFile)
        refuseUsage("option-missing", {QS_SAY("core", "`export --as dicom` needs --output FILE"), {}});
}

} // namespace

FittingRules rulesOfExchange(const CommandLine& line, Output& out)
{
    if (line.has("--camp") && line.has("--rules"))
        refuseUsage("option-missing",
                    {QS_SAY("core", "a camp folder has its own rules; leave --rules out"), {}});
    if (line.has("--camp")) {
        const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
        out.tell(camp.findings());
        return camp.rules();
    }
    if (!line.has("--rules"))
        return defaultRules();
    auto rules = readRulesFile(line.value("--rules"));
    out.tell(rules.findings);
    if (!rules.usable())
        throw FilesNotRead();
    return std::move(rules.value);
}

std::vector<PersonRecord> personsToExport(const CommandLine& line, Output& out)
{
    const auto table = readTable(line, out);
    if (table.anyBadRow() && !line.has("--skip-bad-rows")) {
        out.tell(Severity::error, Position{}, "nothing-written",
                 {QS_SAY("core",
                         "nothing was written; mend what stands above, or leave it out with --skip-bad-rows"),
                  {}});
        throw FilesNotRead();
    }
    int bad = 0;
    auto persons = usableRows(table, bad);
    if (line.has("--person"))
        std::erase_if(persons, [&](const auto& person) { return person.person != line.value("--person"); });
    if (persons.empty() && line.has("--person"))
        throw errorSaying("person-unknown",
                          {QS_SAY("core", "nobody in %1 has the code %2"),
                           {line.arguments.front(), line.value("--person")}},
                          Exit::badData);
    if (persons.empty())
        throw errorSaying("table-empty",
                          {QS_SAY("core", "nobody in %1 can be exported"), {line.arguments.front()}},
                          Exit::badData);
    return persons;
}

ExchangeFormat formatOf(const CommandLine& line, std::span<const ExchangeFormat> formats)
{
    const auto format = exchangeFormatOf(line.value("--as"));
    if (format && std::find(formats.begin(), formats.end(), *format) != formats.end())
        return *format;
    std::string words;
    for (const auto each : formats)
        words += (words.empty() ? "" : ", ") + std::string(wordOf(each));
    throw errorSaying("option-value",
                      {QS_SAY("core", "“%1” is no format of `%2`; write one of %3"),
                       {line.value("--as"), line.verb, words}},
                      Exit::usage);
}

void needCamp(const CommandLine& line)
{
    if (!line.has("--camp"))
        throw usageError("option-missing", {QS_SAY("core", "`%1` needs %2; see `quarterstep help %1`"),
                                            {line.verb, "--camp FOLDER"}});
}

int exportPrescriptions(const CommandLine& line, Output& out)
{
    const auto format = formatOf(line, writable);
    const auto* dicom = format == ExchangeFormat::dicom ? &dicomWays() : nullptr; // before anything is read
    refuseWords(line, dicom != nullptr);
    const auto rules = rulesOfExchange(line, out);
    const auto profile = matchOptions(line, rules).profile;
    const auto persons = stampedWith(rules, profile, personsToExport(line, out));
    if ((format == ExchangeFormat::fhirAlone || dicom != nullptr) && persons.size() != 1)
        refuseUsage("option-missing",
                    {QS_SAY("core", "%1 is for one person; add --person CODE"), {line.value("--as")}});
    const auto written = dicom != nullptr ? dicom->write(persons.front(), todayIso())
                                          : exportText(format, persons, todayIso());
    out.tell(written.findings);
    const bool dry = line.has("--dry-run");
    if (written.usable() && line.has("--output") && !dry)
        writeNewFile(line.value("--output"), written.value);
    if (line.has("--json"))
        answerSent(line, persons, written.findings, out); // what was found is the answer
    if (!written.usable())
        throw FilesNotRead();
    if (line.has("--json"))
        return Exit::done;
    if (!line.has("--output") && !dry) {
        out.text(QString::fromStdString(written.value));
        return Exit::done;
    }
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "prescriptions written %1")).arg(persons.size()));
    if (dry)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
    return Exit::done;
}

} // namespace quarterstep
