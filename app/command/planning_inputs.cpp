// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/planning_inputs.hpp"

#include "app/command/assumed.hpp"
#include "app/command/line_choices.hpp"
#include "app/command/output.hpp"
#include "app/session/demand_needs.hpp"
#include "inventory/text/numbers.hpp"

#include <QCoreApplication>
#include <QDateTime>

namespace quarterstep
{
namespace
{

constexpr double fewSeen = 100.0;
constexpr long usualPrior = 30;

QString number(double value)
{
    return QString::number(value, 'g', 4);
}

DemandRead demandOfCamp(const CommandLine& line)
{
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    const auto entries = camp.ledger().entriesAfter(0);
    const auto offset = static_cast<std::int64_t>(QDateTime::currentDateTime().offsetFromUtc()) * 1000;
    DemandRead read;
    read.demand = demandOfLedger(entries, camp.site(), camp.stock(), offset, keptRecord);
    read.told << commandWords(QT_TRANSLATE_NOOP("command", "demand: the ledger, %1 people"))
                     .arg(number(read.demand.seen));
    for (const auto& [cause, count] : read.demand.unmet)
        read.told << commandWords(QT_TRANSLATE_NOOP("command", "left without a pair, %1: %2"))
                         .arg(QString::fromStdString(cause))
                         .arg(count);
    if (read.demand.unread > 0)
        read.told << commandWords(
                         QT_TRANSLATE_NOOP("command", "entries without a prescription, not planned for: %1"))
                         .arg(read.demand.unread);
    if (!read.demand.raised.empty())
        read.told << commandWords(QT_TRANSLATE_NOOP(
                                      "command",
                                      "lines whose demand was raised, since they lay empty on some days: %1"))
                         .arg(read.demand.raised.size());
    return read;
}

DemandRead demandOfRows(const CommandLine& line, const Box& box, Output& out)
{
    DemandRead read;
    const auto assumed = assumptionsOf(line);
    read.centred = assumed.centred;
    auto people = usableRows(readTable(line, out), read.badRows);
    people = withAssumptions(std::move(people), assumed, box.rules.settings);
    read.demand = demandOfTable(people);
    read.told << commandWords(QT_TRANSLATE_NOOP("command", "demand: %1, %2 people"))
                     .arg(QString::fromStdString(line.arguments.front()), number(read.demand.seen))
              << assumptionWords(assumed);
    return read;
}

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
    auto read = line.arguments.empty() ? demandOfCamp(line) : demandOfRows(line, box, out);
    const auto prior = wholeOption(line, "--prior", 0, 1000000)
                           .value_or(read.demand.seen > 1.0 && read.demand.seen < fewSeen ? usualPrior : 0);
    if (prior > 0 && !read.demand.people.empty()) {
        mixWithPrior(read.demand, publishedDemand(), static_cast<double>(prior));
        read.told << commandWords(
                         QT_TRANSLATE_NOOP("command",
                                           "mixed with the published mix of a camp, which makes %1 % of it"))
                         .arg(number(100.0 * read.demand.priorShare));
    }
    if (!read.centred)
        if (const int drawn = drawMissingPds(read.demand, 1); drawn > 0)
            read.told << commandWords(QT_TRANSLATE_NOOP(
                                          "command", "PDs not taken, drawn from published distributions: %1"))
                             .arg(drawn);
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
