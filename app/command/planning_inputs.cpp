// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/planning_inputs.hpp"

#include "app/command/assumed.hpp"
#include "app/command/output.hpp"
#include "inventory/text/numbers.hpp"

namespace quarterstep
{
namespace
{

[[noreturn]] void refuse(const Complaint& complaint)
{
    throw errorSaying("option-value", complaint.sentence, Exit::usage);
}

} // namespace

DemandRead readDemand(const CommandLine& line, const Box& box, Output& out)
{
    if (line.arguments.empty() && !line.has("--camp"))
        throw errorSaying("option-missing",
                          {QS_SAY("core", "name a table of people, or --camp to plan from its ledger"), {}},
                          Exit::usage);
    DemandRead read;
    if (line.arguments.empty()) {
        read = demandFromLedger(Camp::open(line.value("--camp"), Ledger::Mode::readOnly));
    } else {
        const auto assumed = assumptionsOf(line);
        read = demandFromTable(line.arguments.front(), assumed, box.rules.settings);
        out.tell(read.findings);
        if (!read.usable)
            throw FilesNotRead();
        read.told << assumptionWords(assumed);
    }
    completeDemand(read, wholeOption(line, "--prior", 0, 1000000));
    return read;
}

std::optional<long> wholeOption(const CommandLine& line, const char* option, long least, long most)
{
    if (!line.has(option))
        return std::nullopt;
    const auto parsed = parseWholeNumber(line.value(option), least, most);
    if (!parsed)
        refuse(parsed.complaint());
    return parsed.value();
}

std::optional<long> thousandthsOption(const CommandLine& line, const char* option, double least, double most)
{
    if (!line.has(option))
        return std::nullopt;
    const auto parsed = parseThousandths(line.value(option), least, most);
    if (!parsed)
        refuse(parsed.complaint());
    return parsed.value();
}

} // namespace quarterstep
