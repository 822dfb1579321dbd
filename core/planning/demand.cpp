// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/demand.hpp"

#include "core/fitting/need.hpp"
#include "core/planning/draw.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

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
    if (record.age && *record.age < 16.0)
        return meanChildPd(std::max(4.0, *record.age), male);
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
