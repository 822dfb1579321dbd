// SPDX-License-Identifier: GPL-3.0-or-later
// Damaged files: whatever the damage, the readers answer with a value or with errors that have a place.
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/quantity_list.hpp"
#include "inventory/text/rules_file.hpp"
#include "inventory/text/stock_file.hpp"
#include "tests/inventory/folder.hpp"

#include <boost/test/unit_test.hpp>
#include <random>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

std::string damaged(std::string text, std::mt19937& random)
{
    const std::string spice = "{}[]:,-?&*!|>'\"%@`# \n\t\r~<019.+é\\;x";
    const unsigned edits = 1 + static_cast<unsigned>(random() % 5);
    for (unsigned edit = 0; edit < edits && !text.empty(); ++edit) {
        const std::size_t at = random() % text.size();
        const char c =
            random() % 40 == 0 ? static_cast<char>(random() % 256) : spice[random() % spice.size()];
        switch (random() % 4) {
        case 0:
            text[at] = c;
            break;
        case 1:
            text.insert(at, 1, c);
            break;
        case 2:
            text.erase(at, 1 + random() % 3);
            break;
        default:
            text.insert(at, text.substr(random() % text.size(), random() % 30));
        }
    }
    return random() % 20 == 0 ? text.substr(0, random() % (text.size() + 1)) : text;
}

void checkPlaces(const std::vector<Finding>& findings)
{
    for (const auto& finding : findings) {
        BOOST_REQUIRE(finding.position.line >= 1);
        BOOST_REQUIRE(finding.position.column >= 1);
        BOOST_REQUIRE(!finding.code.empty());
    }
}

const std::string stockStart =
    "format: quarterstep stock 1\nsite: Orrowen\nwritten: {after: 3, counts: 0011aabb}\nlines:\n"
    "  - {line: A, kind: ready-made, power: {right: \"-1.50 -0.50 x 90\", left: -2.00}, centres: 62, on "
    "hand: 14}\n"
    "  - {line: B, kind: ready-made, power: {bifocal: +2.00}, frame: {lens: 48, bridge: 16}, on hand: 2}\n"
    "  - {line: C, kind: lens, power: \"-1.00 -0.75\", axis: any, shape: round 44, on hand: 9}\n"
    "  - line: D\n    kind: frame\n    takes: [round 44]\n    on hand: 3\n    keep: {least: 1, most: 9}\n    "
    "cost: 1.10\n";

const std::string rulesStart =
    "format: quarterstep rules 1\nsettings: {adult near pd: [53, 68], use used pairs: no}\nprofiles:\n"
    "  - name: own\n    version: \"1\"\n    based on: school\n    limits:\n"
    "      too minus: {fits: 0.25, caution: \"< 0.75\", from age: {age: 40, fits: 0.25}, source: a}\n"
    "      axis error: {by cylinder: [{up to: 0.50, fits: 7}, {up to: 99, fits: 2}], source: b}\n";

const std::string tableStart = "person,age,right,left,add,pd_mm,signs,written_on,va_best_right\r\n"
                               "P1,30,-1.25 -0.50 x 90,pl,+2.00,62,pain; squint,2026-01-01,6/9\r\n"
                               "P2,,\"-1,25\",balance,,\"62,5\",,,\r\n";

const std::string surveyStart =
    "survey,id,right_sphere,right_cylinder,right_axis,left_sphere,left_cylinder,left_axis,"
    "right_va\nX,1,-1.25,1,12,-1,0.5,150,50\nX,2,1,0,0,,,,666\n";

} // namespace

BOOST_AUTO_TEST_SUITE(damaged_text)

BOOST_AUTO_TEST_CASE(damaged_files_are_read_or_refused_with_places, *utf::label("PROP"))
{
    const unsigned seed = std::random_device{}();
    BOOST_TEST_MESSAGE("seed " << seed);
    std::mt19937 random(seed);
    for (int round = 0; round < 2000; ++round) {
        const std::string stock = damaged(stockStart, random);
        const std::string rules = damaged(rulesStart, random);
        const std::string table = damaged(round % 2 == 0 ? tableStart : surveyStart, random);
        BOOST_TEST_CONTEXT("seed " << seed << "\n" << stock << "\n" << rules << "\n" << table)
        {
            const auto readStock = readStockText(stock, "stock.yaml");
            checkPlaces(readStock.findings);
            checkPlaces(readRulesText(rules, "rules.yaml").findings);
            const auto people = readPrescriptionText(table, "people.csv", "2026-07-15");
            checkPlaces(people.findings);
            for (const auto& row : people.value.rows) {
                checkPlaces(row.findings);
                BOOST_REQUIRE((row.record.has_value() || !row.findings.empty()));
            }
            if (!readStock.usable())
                continue;
            std::vector<int> counts(readStock.value.lines.size(), 12345);
            const auto again = readStockText(spliceCounts(readStock.value, counts, 77), "stock.yaml");
            BOOST_REQUIRE(again.usable());
            BOOST_REQUIRE(again.value.writtenAfter == 77);
            for (const auto& line : again.value.lines)
                BOOST_REQUIRE(line.onHand == 12345);
            BOOST_REQUIRE(again.value.countsHash == countsHash(again.value.lines));
        }
    }
}

BOOST_AUTO_TEST_CASE(a_file_of_100_megabytes_is_refused_before_it_is_read, *utf::label("PROP"))
{
    const test::TemporaryFolder folder;
    const auto path = folder / "large";
    test::writeBytes(path, "person,right,left\n");
    std::filesystem::resize_file(path, 100'000'000);
    const auto readers = {
        std::pair{"stock", readStockFile(path).findings},
        std::pair{"rules", readRulesFile(path).findings},
        std::pair{"people", readPrescriptionTable(path, "").findings},
        std::pair{"list", readQuantityList(path).findings},
    };
    for (const auto& [what, findings] : readers) {
        BOOST_TEST_REQUIRE(findings.size() == 1U, what);
        BOOST_TEST(findings.front().code == "file-too-large", what);
    }
}

BOOST_AUTO_TEST_CASE(a_bomb_of_aliases_is_refused_at_its_first_anchor, *utf::label("DER"))
{
    std::string text = "format: quarterstep stock 1\nsite: A\nlines:\n  - &a0 [x, x, x, x, x, x, x, x, x]\n";
    for (int i = 1; i < 40; ++i) { // written out, the last would be 9^40 words
        text += "  - &a" + std::to_string(i) + " [";
        for (int j = 0; j < 9; ++j)
            text += (j == 0 ? "*a" : ", *a") + std::to_string(i - 1);
        text += "]\n";
    }
    const auto reading = readStockText(text, "stock.yaml");
    BOOST_TEST(!reading.usable());
    BOOST_TEST_REQUIRE(!reading.findings.empty());
    BOOST_TEST(reading.findings.front().code == "yaml-anchor");
    BOOST_TEST(reading.findings.front().position.line == 4);
    BOOST_TEST(!readRulesText(text, "rules.yaml").usable());
}

BOOST_AUTO_TEST_CASE(a_million_open_brackets_are_refused, *utf::label("PROP"))
{
    for (const auto* open : {"[", "{a: ", "- ", "? "}) {
        std::string text;
        for (int i = 0; i < 250'000; ++i)
            text += open;
        BOOST_TEST(!readStockText(text, "stock.yaml").usable(), open);
        BOOST_TEST(!readRulesText(text, "rules.yaml").usable(), open);
    }
}

BOOST_AUTO_TEST_SUITE_END()
