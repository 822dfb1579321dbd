// SPDX-License-Identifier: GPL-3.0-or-later
// tolerances.yaml, age_tables.yaml and the table of repeated readings: what is read, and every refusal with
// its place.
#include "core/optics/readings.hpp"
#include "inventory/text/age_table_file.hpp"
#include "inventory/text/readings_file.hpp"
#include "inventory/text/tolerance_file.hpp"
#include "tests/inventory/marked_text.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

const std::string setsHead = "format: quarterstep tolerances 1\nsets:\n";
const std::string setHead = setsHead +
                            "  - name: own\n    standard: House\n    edition: \"1\"\n    covers: all\n"
                            "    confidence: second-hand\n    provenance: invented\n    enabled: yes\n"
                            "    meridians: both\n";
const std::string tablesHead = "format: quarterstep age tables 1\ntables:\n";
const std::string tableHead =
    tablesHead +
    "  - name: own\n    holds: addition\n    population: nobody\n    source: invented\n"
    "    confidence: common practice\n    working mm: 400\n    spread: 0.5\n    spread source: s\n";

void checkSets(const std::string& marked, const std::vector<std::string>& codes)
{
    const auto text = unmarked(marked);
    checkTold(readToleranceText(text.text, "tolerances.yaml").findings, text, codes);
}

void checkTables(const std::string& marked, const std::vector<std::string>& codes)
{
    const auto text = unmarked(marked);
    checkTold(readAgeTableText(text.text, "ages.yaml").findings, text, codes);
}

void checkReadings(const std::string& marked, const std::vector<std::string>& codes)
{
    const auto text = unmarked(marked);
    checkTold(readReadingsText(text.text, "readings.csv").findings, text, codes);
}

} // namespace

BOOST_AUTO_TEST_SUITE(optics_files)

BOOST_AUTO_TEST_CASE(the_built_in_sets_and_tables_are_read_without_findings, *utf::label("PROP"))
{
    BOOST_TEST(defaultTolerances().usual == "ansi-z80.1-2015");
    BOOST_TEST(defaultTolerances().sets.size() == 9U);
    BOOST_TEST(defaultTolerances().named("iso-8980-1-2004")->cylinder.size() == 23U);
    BOOST_TEST(defaultAgeTables().size() == 5U);
    for (const auto& set : defaultTolerances().sets)
        BOOST_TEST(set.provenance.find("http") == std::string::npos, set.name);
}

BOOST_AUTO_TEST_CASE(a_set_of_the_camp_stands_beside_the_built_in_ones_and_may_be_the_usual_one,
                     *utf::label("DER"))
{
    const auto reading = readToleranceText(
        setHead + "    meridian: [{power up to: 2, limit: 0.1}, {percent: 5}]\n"
                  "    horizontal prism: {of: each lens, rows: [{prism: 0.5, or mm: 2}]}\ndefault: own\n",
        "t.yaml");
    BOOST_TEST(told(reading.findings) == std::vector<std::string>{}, boost::test_tools::per_element());
    BOOST_TEST(reading.value.usual == "own");
    BOOST_TEST(reading.value.sets.size() == defaultTolerances().sets.size() + 1);
    const auto* own = reading.value.named("own");
    BOOST_TEST(limitFor(own->meridian, 2.0, 0.0, 2.0).value() == 0.1);
    BOOST_TEST(limitFor(own->meridian, 4.0, 0.0, 4.0).value() == 0.2);
    BOOST_TEST((own->horizontal.of == PrismOf::eachLens));
}

BOOST_AUTO_TEST_CASE(what_is_wrong_with_a_tolerance_file_is_told_at_its_place, *utf::label("PROP"))
{
    checkSets("format: ^something\n", {"format-unknown"});
    checkSets(setsHead.substr(0, setsHead.size() - 1) + " ^7\n", {"sets-not-a-list"});
    checkSets(setHead + "    ^meridain: []\n", {"unknown-key"});
    checkSets(setHead + "    meridian: ^5\n", {"rows-not-a-list"});
    checkSets(setHead + "    meridian: [^{power up to: 2}]\n", {"row-limit"});
    checkSets(setHead + "    meridian: [^{limit: 1, percent: 2}]\n", {"row-limit"});
    checkSets(setHead + "    axis: [{limit: ^-3}]\n", {"number-range"});
    checkSets(setHead + "    vertical prism: {of: ^both, rows: [{prism: 1}]}\n", {"unknown-word"});
    checkSets(setHead + "    vertical prism: {of: pair, rows: [^{or mm: 1}]}\n", {"key-missing"});
    checkSets(setHead + "    powers: ^[1]\n", {"scope-form"});
    checkSets(setHead + "default: ^nobody\n", {"tolerances-unknown"});
    checkSets(setHead + "default: ^iso-21987-2017\n", {"tolerances-not-enabled"});
    checkSets(
        setHead +
            "  - ^name: own\n    standard: s\n    edition: e\n    covers: c\n    confidence: second-hand\n"
            "    provenance: p\n    enabled: yes\n    meridians: both\n",
        {"set-twice"});
    checkSets(
        setsHead +
            "  - ^name: own\n    standard: s\n    edition: e\n    covers: c\n    confidence: from memory\n"
            "    provenance: p\n    enabled: yes\n    meridians: both\n",
        {"caution tolerances-from-memory"});
    checkSets(
        setsHead +
            "  - ^name: own\n    standard: s\n    edition: e\n    covers: c\n    confidence: from memory\n"
            "    provenance: p\n    enabled: no\n    meridians: both\n",
        {"set-why"});
}

BOOST_AUTO_TEST_CASE(what_is_wrong_with_a_table_by_age_is_told_at_its_place, *utf::label("PROP"))
{
    checkTables(tableHead + "    rows: [{ages: [40, 49], value: 1}, {ages: [50, 59], least: 1, most: 2}]\n",
                {});
    checkTables("format: ^x\ntables: []\n", {"format-unknown"});
    checkTables(tableHead + "    rows: [{ages: ^40, value: 1}]\n", {"ages-form"});
    checkTables(tableHead + "    rows: [{ages: [40, 49], value: 1}, ^{ages: [49, 59], value: 1}]\n",
                {"ages-order"});
    checkTables(tableHead + "    rows: [^{ages: [40, 49], least: 2, most: 1}]\n", {"ages-order"});
    checkTables(tableHead + "    rows: [^{ages: [40, 49], least: 2}]\n", {"key-missing"});
    checkTables(tableHead + "    rows: ^7\n", {"rows-not-a-list"});
    checkTables(tableHead + "    rows: [{ages: [40, 49], value: 1,^5}]\n", {"unknown-key"});
}

BOOST_AUTO_TEST_CASE(readings_are_grouped_by_person_and_eye_in_their_order, *utf::label("DER"))
{
    const auto reading =
        readReadingsText("person,eye,reading\nA,right,-1.00 -0.50 x 90\nB,OD,+0.25\nA,L,-2.00\n"
                         "A,R,-1.25 -0.50 x 85\nA,OS,-2.25\nA,r,-1.00\nA,left,-2.00\n",
                         "r.csv");
    BOOST_TEST_REQUIRE(reading.value.size() == 3U);
    BOOST_TEST(reading.value[0].person == "A");
    BOOST_TEST(reading.value[0].readings.size() == 3U);
    BOOST_TEST(reading.value[0].places[1].line == 5);
    BOOST_TEST((reading.value[2].eye == Eye::left));
    const std::vector<std::string> only{"3:1 caution readings-too-few"};
    BOOST_TEST(told(reading.findings) == only, boost::test_tools::per_element());
    BOOST_TEST((summariseReadings(reading.value[0].vectors()).steadiness == Steadiness::steady));
}

BOOST_AUTO_TEST_CASE(sphere_cylinder_and_axis_may_stand_in_columns_of_their_own, *utf::label("DER"))
{
    const auto reading = readReadingsText("Person,Eye,Sphere,Cylinder,Axis\nA,right,-1.00,-0.50,90\n"
                                          "A,right,plano,,\nA,right,+0.25,0.00,\nA,right,0.00,-1.00,0\n",
                                          "r.csv");
    BOOST_TEST(told(reading.findings) == std::vector<std::string>{}, boost::test_tools::per_element());
    BOOST_TEST_REQUIRE(reading.value.size() == 1U);
    BOOST_TEST(
        (reading.value[0].readings[0] == SpheroCylinder{Dioptres{-1}, Dioptres{-0.5}, AxisDegrees{90}}));
    BOOST_TEST((reading.value[0].readings[1] == sphereOf(0)));
    BOOST_TEST(reading.value[0].readings[3].axis.value() == 180.0);
}

BOOST_AUTO_TEST_CASE(what_is_wrong_with_readings_is_told_at_its_place, *utf::label("PROP"))
{
    checkReadings("^", {"table-empty"});
    checkReadings("person,eye^^^\n", {"column-missing", "column-missing", "column-missing"});
    checkReadings("person,reading^\nA,-1.00\n", {"column-missing"});
    checkReadings("person,eye,reading,^sphere\n", {"columns-both"});
    checkReadings("person,eye,^eye,reading\n", {"column-twice"});
    checkReadings("person,eye,reading,^machine\n", {"note column-unknown"});
    const std::string head = "person,eye,reading\nA,right,-1.00\nA,right,-1.00\nA,right,-1.00\n";
    checkReadings(head + "A,^middle,-1.00\n", {"eye-word"});
    checkReadings(head + "^,right,-1.00\n", {"person-empty"});
    checkReadings(head + "A,right,^\n", {"reading-empty"});
    checkReadings(head + "A,right,^1.00\n", {"power-sign"});
    checkReadings(head + "A,right^\n", {"row-short"});
    checkReadings(head + "A,right,-1.00,^x\n", {"row-long"});
    const std::string parts = "person,eye,sphere,cylinder,axis\nA,R,-1.00,,\nA,R,-1.00,,\nA,R,-1.00,,\n";
    checkReadings(parts + "A,R,-1.00,-0.50,^\n", {"axis-range"});
    checkReadings(parts + "A,R,-1.00,-0.50,^190\n", {"axis-range"});
    checkReadings(parts + "A,R,^,-0.50,90\n", {"reading-empty"});
}

BOOST_AUTO_TEST_CASE(a_file_that_is_not_there_is_told, *utf::label("PROP"))
{
    BOOST_TEST(readReadingsFile("no/such.csv").findings.at(0).code == "file-missing");
    BOOST_TEST(readToleranceFile("no/such.yaml").findings.at(0).code == "file-missing");
}

BOOST_AUTO_TEST_SUITE_END()
