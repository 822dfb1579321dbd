// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/planning_demand.hpp"

#include "app/session/demand_needs.hpp"

#include <QCoreApplication>
#include <QDateTime>

namespace quarterstep
{

namespace
{

constexpr double fewSeen = 100.0;
constexpr long usualPrior = 30;

QString demandWords(const char* text)
{
    return QCoreApplication::translate("command", text);
}

QString fourDigits(double value)
{
    return QString::number(value, 'g', 4);
}

} // namespace

std::vector<PersonRecord> usableRows(const PrescriptionTable& table, int& badRows)
{
    std::vector<PersonRecord> people;
    for (const auto& row : table.rows)
        if (row.record)
            people.push_back(*row.record);
        else
            ++badRows;
    return people;
}

QStringList assumptionWords(const CoverageAssumptions& assumed)
{
    QStringList words;
    if (assumed.centred)
        words << demandWords(QT_TRANSLATE_NOOP(
            "command", "assumed: where no PD was taken, it equals the centres of each pair"));
    if (assumed.final)
        words << demandWords(
            QT_TRANSLATE_NOOP("command", "assumed: objective readings are final, and a prescriber is named"));
    if (assumed.vertex)
        words << demandWords(
            QT_TRANSLATE_NOOP("command", "assumed: an unrecorded vertex distance is that of the stock"));
    return words;
}

DemandRead demandFromTable(const std::string& path, const CoverageAssumptions& assumed,
                           const Settings& settings)
{
    DemandRead read;
    read.centred = assumed.centred;
    auto reading =
        readPrescriptionTable(path, QDateTime::currentDateTime().date().toString(Qt::ISODate).toStdString());
    read.usable = reading.usable();
    read.findings = std::move(reading.findings);
    for (const auto& row : reading.value.rows)
        read.findings.insert(read.findings.end(), row.findings.begin(), row.findings.end());
    auto people = withAssumptions(usableRows(reading.value, read.badRows), assumed, settings);
    read.demand = demandOfTable(people);
    read.told << demandWords(QT_TRANSLATE_NOOP("command", "demand: %1, %2 people"))
                     .arg(QString::fromStdString(path), fourDigits(read.demand.seen));
    return read;
}

DemandRead demandFromLedger(const Camp& camp)
{
    const auto entries = camp.ledger().entriesAfter(0);
    const auto offset = static_cast<std::int64_t>(QDateTime::currentDateTime().offsetFromUtc()) * 1000;
    DemandRead read;
    read.demand = demandOfLedger(entries, camp.site(), camp.stock(), offset, keptRecord);
    read.told << demandWords(QT_TRANSLATE_NOOP("command", "demand: the ledger, %1 people"))
                     .arg(fourDigits(read.demand.seen));
    for (const auto& [cause, count] : read.demand.unmet)
        read.told << demandWords(QT_TRANSLATE_NOOP("command", "left without a pair, %1: %2"))
                         .arg(QString::fromStdString(cause))
                         .arg(count);
    if (read.demand.unread > 0)
        read.told << demandWords(
                         QT_TRANSLATE_NOOP("command", "entries without a prescription, not planned for: %1"))
                         .arg(read.demand.unread);
    if (!read.demand.raised.empty())
        read.told << demandWords(QT_TRANSLATE_NOOP(
                                     "command",
                                     "lines whose demand was raised, since they lay empty on some days: %1"))
                         .arg(read.demand.raised.size());
    return read;
}

void completeDemand(DemandRead& read, std::optional<long> prior)
{
    const auto seen = read.demand.seen;
    const auto weight = prior.value_or(seen > 1.0 && seen < fewSeen ? usualPrior : 0);
    if (weight > 0 && !read.demand.people.empty()) {
        mixWithPrior(read.demand, publishedDemand(), static_cast<double>(weight));
        read.told << demandWords(
                         QT_TRANSLATE_NOOP("command",
                                           "mixed with the published mix of a camp, which makes %1 % of it"))
                         .arg(fourDigits(100.0 * read.demand.priorShare));
    }
    if (!read.centred)
        if (const int drawn = drawMissingPds(read.demand, 1); drawn > 0)
            read.told << demandWords(QT_TRANSLATE_NOOP(
                                         "command", "PDs not taken, drawn from published distributions: %1"))
                             .arg(drawn);
}

} // namespace quarterstep
