// SPDX-License-Identifier: GPL-3.0-or-later
// The main job on the sample camp, and the stock of the sample against the open survey rows.
#define BOOST_TEST_MODULE sample_day
#include <boost/test/unit_test.hpp>

#include "app/session/coverage.hpp"
#include "app/session/hand_over.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/inventory/qt_application.hpp"

#include <iostream>
#include <map>
#include <numeric>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

const std::string sample = QS_SOURCE_DIR "/samples/orrowen_coast/";

std::vector<PersonRecord> peopleIn(const std::string& path)
{
    const auto table = readPrescriptionTable(path, "");
    BOOST_REQUIRE(table.usable());
    std::vector<PersonRecord> people;
    for (const auto& row : table.value.rows)
        if (row.record)
            people.push_back(*row.record);
    return people;
}

using Counts = std::map<std::string, int>;

Counts countsOf(const std::vector<StockLine>& lines)
{
    Counts counts;
    for (const auto& line : lines)
        counts[line.name] = line.onHand;
    return counts;
}

int sumOf(const Counts& counts)
{
    return std::accumulate(counts.begin(), counts.end(), 0,
                           [](int sum, const auto& count) { return sum + count.second; });
}

} // namespace

BOOST_GLOBAL_FIXTURE(QtApplication);

BOOST_AUTO_TEST_CASE(the_counts_go_down_by_exactly_what_the_ledger_says_was_handed_over, *utf::label("PROP"))
{
    const TemporaryFolder folder;
    for (const char* file : {"stock.yaml", "rules.yaml"})
        writeBytes(folder / file, readBytes(sample + file));
    Camp camp = Camp::open(folder.path(), Ledger::Mode::readWrite);
    const auto people = peopleIn(sample + "people.csv");
    BOOST_TEST(people.size() == 200U);
    const Counts before = countsOf(camp.stock());
    const auto result = dispenseTable(camp, people, {}, "", false);
    BOOST_TEST(!result.stopped.has_value());
    Counts expected = before;
    int handedOver = 0;
    int parts = 0;
    for (const auto& entry : camp.ledger().entriesAfter(0))
        if (entry.kind == EntryKind::handedOver) {
            ++handedOver;
            for (const auto& movement : entry.movements) {
                expected[movement.line] += movement.delta;
                parts -= movement.delta;
            }
        }
    BOOST_TEST(handedOver > 100);
    BOOST_TEST(sumOf(before) - sumOf(countsOf(camp.stock())) == parts);
    BOOST_TEST((countsOf(camp.stock()) == expected));
    const auto file = readStockFile(folder / "stock.yaml");
    BOOST_TEST(file.usable());
    BOOST_TEST((countsOf(file.value.lines) == expected));
    BOOST_TEST(file.value.writtenAfter == camp.ledger().position());
    BOOST_TEST(camp.ledger().checkChain().ok);
}

BOOST_AUTO_TEST_CASE(the_reasons_of_a_coverage_add_up_to_the_people_not_served,
                     *utf::label("PROP") * utf::description("National Center for Health Statistics, NHANES, "
                                                            "public domain rows in tests/open_data"))
{
    const auto everybody = peopleIn(QS_SOURCE_DIR "/tests/open_data/survey_need_glasses.csv");
    BOOST_TEST(everybody.size() == 1963U);
    std::vector<PersonRecord> people; // every fifth, to keep the run short
    for (std::size_t i = 0; i < everybody.size(); i += 5)
        people.push_back(everybody[i]);
    const auto stock = readStockFile(sample + "stock.yaml");
    for (const char* profile : {"school", "adult-distance", "adult-near", "strict", "school-guideline"}) {
        MatchOptions options;
        options.profile = profile;
        const auto coverage = coverageOf(people, stock.value.lines, defaultRules(), options);
        int reasons = 0;
        for (const auto& [reason, count] : coverage.byReason)
            reasons += count;
        BOOST_TEST_CONTEXT(profile)
        {
            BOOST_TEST(coverage.people == static_cast<int>(people.size()));
            BOOST_TEST(reasons == coverage.people - coverage.served);
        }
        std::cout << profile << ": served " << coverage.served << ", on trial " << coverage.onTrial << '\n';
    }
}
