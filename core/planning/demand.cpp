// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/demand.hpp"

#include "core/fitting/stock_index.hpp"
#include "core/optics/notation.hpp"
#include "core/planning/draw.hpp"
#include "core/record/life.hpp"
#include "core/record/stock_figures.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double mostRaised = 4.0; ///< a line that was hardly ever there says little about its demand

std::string fieldOf(const Entry& entry, const char* name)
{
    const auto found = entry.fields.find(name);
    return found == entry.fields.end() ? std::string() : found->second;
}

/// "R -1.00 L -1.25" into both eyes.
bool readFinal(const std::string& text, PersonRecord& record)
{
    const auto left = text.find(" L ");
    if (text.rfind("R ", 0) != 0 || left == std::string::npos)
        return false;
    const auto rightEye = parseEye(text.substr(2, left - 2), Eye::right);
    const auto leftEye = parseEye(text.substr(left + 3), Eye::left);
    if (!rightEye || !leftEye)
        return false;
    record.eyes.right.final = rightEye.value();
    record.eyes.left.final = leftEye.value();
    return true;
}

Purpose purposeOf(const std::string& word)
{
    return word == "near"           ? Purpose::near
           : word == "intermediate" ? Purpose::intermediate
           : word == "bifocal"      ? Purpose::bifocal
                                    : Purpose::distance;
}

/// The rules of the entry tell the age that decided them.
double ageBy(const std::string& profile)
{
    if (profile.rfind("school", 0) == 0)
        return 11.0;
    return profile == "adult-near" ? 54.0 : 35.0;
}

class LedgerDemand
{
  public:
    LedgerDemand(std::span<const Entry> entries, const std::string& site, std::span<const StockLine> stock,
                 std::int64_t offsetMs)
        : stock_(stock)
    {
        for (std::size_t i = 0; i < stock.size(); ++i)
            byName_.emplace(stock[i].name, i);
        raise(stockFigures(entries, site, stock, {offsetMs, 100}));
        const auto gone = takenBack(entries);
        for (const auto& entry : entries)
            if (entry.site == site && gone.count(entry.id) == 0)
                take(entry);
    }

    Demand demand;

  private:
    void raise(const StockFigures& figures)
    {
        for (std::size_t i = 0; i < stock_.size(); ++i) {
            const auto& line = figures.lines[i];
            if (line.issued > 0 && line.daysInStock > 0 && line.daysInStock < figures.camp.days)
                demand.raised[stock_[i].name] =
                    std::min(mostRaised, static_cast<double>(figures.camp.days) / line.daysInStock);
        }
    }

    void take(const Entry& entry)
    {
        switch (entry.kind) {
        case EntryKind::handedOver:
            return add(entry, Unmet::served, "");
        case EntryKind::ordered:
            return add(entry, Unmet::ordered, "ordered");
        case EntryKind::declined:
            return add(entry, Unmet::declined, "declined");
        case EntryKind::incomplete:
            return add(entry, Unmet::incomplete, "incomplete");
        default:
            return;
        }
    }

    void add(const Entry& entry, Unmet cause, const char* word)
    {
        demand.seen += 1.0;
        if (cause != Unmet::served)
            ++demand.unmet[word];
        DemandPerson one;
        one.cause = cause;
        auto& record = one.record;
        record.person = entry.person;
        record.purpose = purposeOf(fieldOf(entry, "purpose"));
        record.age = ageBy(fieldOf(entry, "profile"));
        record.prescriber = "ledger";
        record.vertexMm = 12.0;
        if (!readFinal(fieldOf(entry, "final"), record)) {
            ++demand.unread;
            return;
        }
        takeFromPair(entry, one);
        demand.people.push_back(std::move(one));
    }

    /// Near powers and the PD are not in an entry: those of the pair that was found acceptable stand for
    /// them.
    void takeFromPair(const Entry& entry, DemandPerson& one)
    {
        for (const auto& movement : entry.movements) {
            const auto found = byName_.find(movement.line);
            if (found == byName_.end() || movement.delta >= 0)
                continue;
            const auto& line = stock_[found->second];
            if (const auto raised = demand.raised.find(line.name); raised != demand.raised.end())
                one.weight = std::max(one.weight, raised->second);
            if (line.kind != LineKind::lens)
                (one.record.purpose == Purpose::near ? one.record.nearPd : one.record.distancePd) =
                    centresOf(line);
            if (line.kind == LineKind::frame)
                continue;
            for (const Eye eye : bothEyes) {
                auto& record = one.record.eyes.of(eye);
                const bool ofThisEye = line.kind == LineKind::readyMade ||
                                       movement.part == (eye == Eye::right ? "right" : "left");
                if (!ofThisEye)
                    continue;
                if (one.record.purpose == Purpose::near || one.record.purpose == Purpose::intermediate)
                    record.nearPower = line.power.of(eye);
                else if (one.record.purpose == Purpose::bifocal)
                    record.addition = line.bifocalAddition;
            }
        }
    }

    std::span<const StockLine> stock_;
    std::map<std::string, std::size_t> byName_;
};

void addPrior(std::vector<DemandPerson>& people, Purpose purpose, double power, double share)
{
    constexpr int copies = 6; // each with a PD of its own
    for (int i = 0; i < copies; ++i) {
        DemandPerson one;
        one.weight = share / copies;
        one.record.person = "prior-" + std::to_string(people.size() + 1);
        one.record.purpose = purpose;
        one.record.age = purpose == Purpose::near ? 50.0 : 35.0;
        one.record.sex = i % 2 == 0 ? "F" : "M";
        one.record.prescriber = "prior";
        one.record.vertexMm = 12.0;
        for (const Eye eye : bothEyes) {
            auto& record = one.record.eyes.of(eye);
            record.final.power.sphere = Dioptres{purpose == Purpose::near ? 0.0 : power};
            record.final.asWritten = "prior";
            if (purpose == Purpose::near)
                record.addition = Dioptres{power};
        }
        people.push_back(std::move(one));
    }
}

double usualPd(const PersonRecord& record)
{
    const bool male = !record.sex.empty() && (record.sex[0] == 'M' || record.sex[0] == 'm');
    if (record.age && *record.age < 16.0) {
        const double age = std::max(4.0, *record.age);
        return male ? 43.36 + 1.663 * age - 0.034 * age * age : 41.76 + 1.891 * age - 0.052 * age * age;
    }
    return male ? 64.5 : 62.5;
}

} // namespace

double Demand::weight() const
{
    double sum = 0.0;
    for (const auto& one : people)
        sum += one.weight;
    return sum;
}

Demand demandOfTable(const std::vector<PersonRecord>& people)
{
    Demand demand;
    for (const auto& record : people)
        demand.people.push_back({record, 1.0, Unmet::served});
    demand.seen = static_cast<double>(people.size());
    return demand;
}

Demand demandOfLedger(std::span<const Entry> entries, const std::string& site,
                      std::span<const StockLine> stock, std::int64_t offsetMs)
{
    return LedgerDemand(entries, site, stock, offsetMs).demand;
}

std::vector<DemandPerson> publishedDemand()
{
    std::vector<DemandPerson> people;
    constexpr std::pair<double, double> readers[] = {
        {1.0, 30.0}, {1.5, 30.0}, {2.0, 26.0}, {2.5, 12.0}, {3.0, 3.0}};
    for (const auto& [power, share] : readers)
        addPrior(people, Purpose::near, power, 0.84 * share / 101.0);
    for (const double power : {-1.0, -1.5, -2.0, -2.5})
        addPrior(people, Purpose::distance, power, 0.10 / 4.0);
    for (const double power : {1.0, 1.5, 2.0})
        addPrior(people, Purpose::distance, power, 0.06 / 3.0);
    return people;
}

void mixWithPrior(Demand& demand, const std::vector<DemandPerson>& prior, double pseudoPeople)
{
    double sum = 0.0;
    for (const auto& one : prior)
        sum += one.weight;
    if (pseudoPeople <= 0.0 || sum <= 0.0)
        return;
    const double own = demand.weight();
    for (auto one : prior) {
        one.weight *= pseudoPeople / sum;
        demand.people.push_back(std::move(one));
    }
    demand.priorShare = pseudoPeople / (own + pseudoPeople);
}

int drawMissingPds(Demand& demand, std::uint64_t seed)
{
    constexpr double spread = 3.3; // mm
    int drawn = 0;
    for (std::size_t i = 0; i < demand.people.size(); ++i) {
        auto& record = demand.people[i].record;
        const bool monocular = record.eyes.right.monocularPd && record.eyes.left.monocularPd;
        const bool near = record.nearPd && record.purpose == Purpose::near;
        if (record.distancePd || monocular || near)
            continue;
        Draw draw(seed, i);
        const double pd = usualPd(record) + spread * draw.normal();
        record.distancePd = std::round(std::clamp(pd, 45.0, 80.0) * 2.0) / 2.0;
        ++drawn;
    }
    return drawn;
}

} // namespace quarterstep
