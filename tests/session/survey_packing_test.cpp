// SPDX-License-Identifier: GPL-3.0-or-later
// Boxes packed from one part of a public survey and opened for another: people needing glasses of 1999-2004
// to plan, those of 2005-2006 to check, at five budgets, beside the baselines. PDs come from a
// body-measurement survey of other people (adults by sex; children by the quadratics of the program with the
// same scatter): a synthetic pairing. The survey has no final prescription and no vertex distance; what is
// assumed instead is what `--assume final,vertex` assumes. Statistical use only, see tests/open_data/NOTICE.
#define BOOST_TEST_MODULE survey_packing
#include <boost/test/unit_test.hpp>

#include "app/session/coverage.hpp"
#include "app/session/demand_needs.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/rules_file.hpp"
#include "tests/session/help_line.hpp"

#include <fstream>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

/// PDs of a body-measurement survey, by sex.
class MeasuredPds
{
  public:
    MeasuredPds()
    {
        std::ifstream file(QS_SOURCE_DIR "/tests/open_data/measured_pd_counts.csv");
        std::string row;
        std::getline(file, row);
        while (std::getline(file, row)) {
            const auto first = row.find(',');
            const auto second = row.find(',', first + 1);
            auto& side = row[0] == 'F' ? women_ : men_;
            side.first.push_back(std::stod(row.substr(first + 1)));
            side.second.push_back(std::stod(row.substr(second + 1)));
        }
        BOOST_REQUIRE(women_.first.size() > 30 && men_.first.size() > 30);
    }

    [[nodiscard]] double draw(const std::string& sex, Draw& lot) const
    {
        const auto& side = sex == "F" ? women_ : men_;
        return side.first[WeightedDraw(side.second).place(lot)];
    }

  private:
    using Side = std::pair<std::vector<double>, std::vector<double>>;
    Side women_;
    Side men_;
};

struct Survey {
    Demand demand;
    std::vector<std::uint32_t> planned; ///< 1999-2004
    std::vector<std::uint32_t> unseen;  ///< 2005-2006
};

Survey survey()
{
    const auto table = readPrescriptionTable(QS_SOURCE_DIR "/tests/open_data/survey_need_glasses.csv", "");
    std::vector<PersonRecord> people;
    for (const auto& row : table.value.rows)
        if (row.record)
            people.push_back(*row.record);
    people = withAssumptions(std::move(people), {false, true, true}, defaultRules().settings);
    const MeasuredPds pds;
    Survey survey;
    for (std::size_t i = 0; i < people.size(); ++i) {
        Draw lot(2012, i);
        if (people[i].age && *people[i].age >= 16.0)
            people[i].distancePd = pds.draw(people[i].sex, lot);
        const bool late = people[i].person.rfind("2005", 0) == 0;
        (late ? survey.unseen : survey.planned).push_back(static_cast<std::uint32_t>(i));
    }
    survey.demand = demandOfTable(people);
    drawMissingPds(survey.demand, 2002);
    return survey;
}

/// Pairs from -6.00 to +4.00 in quarters in four widths, one price, three to a pack.
SupplierList supplier()
{
    SupplierList list;
    for (int quarters = -24; quarters <= 16; ++quarters)
        for (const double centres : {58.0, 61.0, 64.0, 67.0}) {
            if (quarters == 0)
                continue;
            StockLine line;
            line.name = std::to_string(quarters * 25) + "-" + std::to_string(static_cast<int>(centres));
            const SpheroCylinder power{Dioptres{quarters * 0.25}, Dioptres{}, AxisDegrees{180}};
            line.power = {power, power};
            line.centres = centres;
            list.packs.push_back({line.name, {{line.name, 3}}, 3000, 0, {}});
            list.lines.push_back(std::move(line));
        }
    return list;
}

PackingProblem problemOf(const JudgedDemand& judged, const SupplierList& list)
{
    PackingProblem problem;
    problem.needs = judged.needs;
    problem.onHand = judged.onHand;
    for (std::size_t i = 0; i < list.lines.size(); ++i)
        problem.offers.push_back({list.lines[i].name, {{judged.resources->of(i), 3}}, 3000, 0, 100000});
    return problem;
}

std::string onePlace(double share)
{
    const auto tenths = std::lround(1000.0 * share);
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10);
}

} // namespace

BOOST_AUTO_TEST_CASE(boxes_packed_from_1999_to_2004_serve_the_people_of_2005_and_2006,
                     *utf::label("DER") *
                         utf::description("vision examination of a public survey; synthetic PDs"))
{
    const auto people = survey();
    BOOST_REQUIRE(people.planned.size() == 1474U);
    BOOST_REQUIRE(people.unseen.size() == 489U);
    const auto list = supplier();
    const auto judged = judgeDemand(people.demand, {}, &list, defaultRules(), {}, {});
    auto problem = problemOf(judged, list);
    constexpr int nextPeople = 200;
    const auto scenarios = drawScenarios(judged, people.planned, nextPeople, 40, 1);
    const auto checks = drawScenarios(judged, people.unseen, nextPeople, 200, 2);
    double firstCount = 0.0;
    for (const auto& check : checks)
        for (const auto need : check)
            firstCount +=
                judged.needs[need].choices.empty() ? 0.0 : 1.0 / 200.0 / static_cast<double>(check.size());
    checkStandsInHelp("Of these needs " + onePlace(firstCount) +
                          " % can be served at all by some pair of the supplier.",
                      "planning.md");
    PackingEffort effort;
    effort.repairs = 12;
    effort.boundRounds = 40;
    for (const long pairs : {45L, 60L, 81L, 120L, 159L}) {
        problem.limits.budget = pairs * 1000;
        const auto plan = planPacking(problem, scenarios, effort);
        const auto served = [&](const std::vector<int>& packs) {
            return serviceOf(problem, checks, piecesWith(problem, packs));
        };
        const auto ours = served(plan.packs);
        const auto greedy = served(plan.greedyPacks);
        const auto newsvendor = served(newsvendorPacks(problem, scenarios));
        const auto levels = served(keepLevelPacks(problem, scenarios));
        // Below 80 pairs every pair finds somebody, whatever is packed; above 120 most who can be served are.
        BOOST_TEST(ours.served >= newsvendor.served - 0.002);
        if (pairs == 81 || pairs == 120)
            BOOST_TEST(ours.served >= newsvendor.served + 0.02);
        BOOST_TEST(ours.served >= levels.served - 0.002);
        BOOST_TEST(ours.served >= ours.firstCome);
        BOOST_TEST(plan.bound >= plan.share - 1e-9);
        checkStandsInHelp("| " + std::to_string(pairs) + " | " + onePlace(ours.served) + " | " +
                              onePlace(greedy.served) + " | " + onePlace(newsvendor.served) + " | " +
                              onePlace(levels.served) + " | " + onePlace(ours.firstCome) + " | " +
                              onePlace(newsvendor.firstCome) + " | " + onePlace(plan.share) + " | " +
                              onePlace(plan.bound) + " |",
                          "planning.md");
    }
}
