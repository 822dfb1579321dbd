// SPDX-License-Identifier: GPL-3.0-or-later
// What an importer does not use is kept and given back, or told: nothing goes in silence. And tables of
// others whose headings or numbers are not plain.
#include "inventory/exchange/fhir.hpp"
#include "inventory/exchange/json_lines.hpp"
#include "inventory/exchange/mapped_table.hpp"
#include "tests/exchange/random_persons.hpp"

#include <boost/test/unit_test.hpp>

#include <algorithm>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::check;

namespace
{

const std::string today = "2026-11-27";

/// A prescription with these elements before its lenses.
std::string prescription(const std::string& elements)
{
    const auto lens = [](const std::string& eye) {
        return R"({"product":{"coding":[{"system":)"
               R"("http://terminology.hl7.org/CodeSystem/ex-visionprescriptionproduct","code":"lens"}]},"eye":")" +
               eye + R"(","sphere":-1.00})";
    };
    return R"({"resourceType":"VisionPrescription","status":"active",)" + elements +
           R"("patient":{"identifier":{"system":"urn:quarterstep:person","value":"K-1"}},"lensSpecification":[)" +
           lens("right") + "," + lens("left") + "]}";
}

ImportedRows takenFrom(const std::string& text)
{
    return readFhir(text, "given.json", {today, {}});
}

std::string kept(const TableRow& row, const std::string& column)
{
    BOOST_TEST_REQUIRE(row.record.has_value());
    for (const auto& [name, cell] : row.record->otherColumns)
        if (name == column)
            return cell;
    return "";
}

std::size_t told(const std::vector<Finding>& findings, const std::string& word)
{
    return static_cast<std::size_t>(std::count_if(findings.begin(), findings.end(), [&](const Finding& each) {
        return std::any_of(each.sentence.arguments.begin(), each.sentence.arguments.end(),
                           [&](const std::string& part) { return part.find(word) != std::string::npos; });
    }));
}

/// Out again through a table, as people carry it.
std::string throughTable(const ImportedRows& rows)
{
    const auto table = readPrescriptionText(tableText(rows.value), "people.csv", today);
    return writeFhirAlone({*table.value.rows.at(0).record, {}}, today).value;
}

MappedTable table(const std::string& text, const std::string& map)
{
    return readMappedTable(text, "theirs.csv", readTableMap(map, "map").value, {today, {}}).value;
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept_or_told)

BOOST_AUTO_TEST_CASE(an_undated_prescription_keeps_the_day_it_was_created, *utf::label("REG"))
{
    const auto rows = takenFrom(prescription(R"("created":"2025-02-03",)"));
    BOOST_TEST(kept(rows.value.at(0), "fhir.created") == "\"2025-02-03\"");
    const auto again = throughTable(rows);
    BOOST_TEST(again.find(R"("created":"2025-02-03")") != std::string::npos);
    BOOST_TEST(again.find(R"("_dateWritten":{"extension")") != std::string::npos); // still undated
}

BOOST_AUTO_TEST_CASE(why_a_date_is_missing_is_given_back, *utf::label("REG"))
{
    const std::string why =
        R"({"extension":[{"url":"http://hl7.org/fhir/StructureDefinition/data-absent-reason",)"
        R"("valueCode":"masked"},{"url":"urn:x","valueString":"y"}]})";
    const auto rows = takenFrom(prescription(R"("created":"2025-02-03","_dateWritten":)" + why + ","));
    BOOST_TEST(throughTable(rows).find("\"_dateWritten\":" + why) != std::string::npos);
}

BOOST_AUTO_TEST_CASE(what_a_bundle_says_of_itself_is_told, *utf::label("DER"))
{
    const auto bundle = [](const std::string& own, const std::string& ofEntry) {
        return takenFrom(R"({"resourceType":"Bundle","type":"searchset",)" + own +
                         R"("entry":[{"resource":)" + prescription("") + ofEntry + "}]}");
    };
    const auto rows =
        bundle(R"("timestamp":"2026-01-01T00:00:00Z","total":1,)", R"(,"search":{"mode":"match"})");
    BOOST_TEST(rows.value.at(0).record.has_value());
    BOOST_TEST(told(rows.findings, "timestamp, total, entry.search") == 1U);
    BOOST_TEST(bundle("", "").findings.empty());
    BOOST_TEST(!bundle(R"("implicitRules":"urn:theirs",)", "").usable());
}

BOOST_AUTO_TEST_CASE(what_an_observation_says_besides_is_told, *utf::label("DER"))
{
    const auto measures = [](const std::string& more) {
        return takenFrom(prescription(
            R"("contained":[{"resourceType":"Observation","status":"final","code":{"coding":[{"system":)"
            R"("urn:quarterstep:measure","code":"pupillary-distance"}]},)" +
            more +
            R"("component":[{"code":{"coding":[{"system":"urn:quarterstep:measure","code":"pd_mm"}]},)"
            R"("valueQuantity":{"value":62.5}},{"valueString":"lost"}]}],)"));
    };
    const auto rows = measures(R"("note":[{"text":"tired"}],)");
    BOOST_TEST(rows.value.at(0).record->distancePd.value() == 62.5);
    BOOST_TEST(told(rows.value.at(0).findings, "note") == 1U);
    BOOST_TEST(told(rows.value.at(0).findings, "lost") == 1U);
    const auto changed = measures(R"("modifierExtension":[{"url":"urn:x","valueBoolean":true}],)");
    BOOST_TEST(!changed.value.at(0).record->distancePd.has_value());
}

BOOST_AUTO_TEST_CASE(the_rules_by_which_it_left_are_kept_by_every_importer, *utf::label("PROP"))
{
    const auto persons = randomPersons(3, 3);
    const auto hasRules = [](const TableRow& row) {
        BOOST_TEST(kept(row, "rules_profile") == "adult-distance");
        BOOST_TEST(kept(row, "rules_version") == "1");
        BOOST_TEST(kept(row, "rules_hash") == "0123456789abcdef");
    };
    hasRules(takenFrom(writeFhirBundle(persons, today).value).value.at(0));
    hasRules(readJsonLines(writeJsonLines(persons).value, "l", {today, {}}).value.at(0));
    const auto flat = readMappedTable(writeFlatTable(persons).value, "t", {}, {today, {}});
    hasRules(flat.value.rows.at(0));
    BOOST_TEST(told(flat.findings, "rules_") == 0U); // of our own, and no surprise
    // They are those of the export before: the next one says its own.
    const auto next =
        writeJsonLines(std::vector<ExchangePerson>{{*flat.value.rows.at(0).record, {"strict", "9", "ff"}}});
    BOOST_TEST(next.value.find("adult-distance") == std::string::npos);
}

BOOST_AUTO_TEST_CASE(headings_that_stand_twice_are_told_apart_by_their_order, *utf::label("DER"))
{
    const std::string text = "ID;Sph;Cyl;Axis;Sph;Cyl;Axis\nK-1;-1,00;-0,50;90;-2,00;;\n";
    const auto read = table(text, "ID = person\nSph = right sphere\nCyl = right cylinder\nAxis = right axis\n"
                                  "Sph = left sphere\nCyl = left cylinder\nAxis = left axis\n");
    BOOST_TEST_REQUIRE(read.rows.at(0).record.has_value());
    BOOST_TEST(read.rows[0].record->eyes.right.final.asWritten == "-1.00 -0.50 x 90");
    BOOST_TEST(read.rows[0].record->eyes.left.final.asWritten == "-2.00");
    BOOST_TEST(read.examples.at(1) == "-1,00");
}

BOOST_AUTO_TEST_CASE(the_other_decimal_mark_is_refused_where_the_map_says_which, *utf::label("DER"))
{
    const std::string text = "ID;R Sph;L Sph;PD\nK-1;-1,25;-1.25;62\nK-2;-1,25;-1,25;62,5\n";
    const auto either = table(text, "");
    BOOST_TEST((either.rows.at(0).record && either.rows.at(1).record));
    BOOST_TEST(either.commaDecimals);
    const auto comma = table(text, "decimal = comma\n");
    BOOST_TEST(!comma.rows.at(0).record);
    BOOST_TEST(comma.rows[0].findings.at(0).code == "decimal-mark");
    BOOST_TEST(comma.rows[0].findings[0].position.column == 11);
    BOOST_TEST(comma.rows.at(1).record->distancePd.value() == 62.5);
    const auto point = table(text, "decimal = point\n");
    BOOST_TEST((!point.rows.at(0).record && !point.rows.at(1).record));
}

BOOST_AUTO_TEST_CASE(a_map_gives_back_every_heading_it_was_written_with, *utf::label("PROP"))
{
    TableMap map;
    map.separator = '\t';
    map.spheres = Unsigned::plus;
    map.decimal = DecimalMark::comma;
    map.columns = {{"#", "person"},
                   {"separator", "right sphere"},
                   {"\"Sph\"", "left sphere"},
                   {"", "-"},
                   {"a = b", "pd_mm"},
                   {"decimal", "-"},
                   {"Sph", "-"}};
    const auto again = readTableMap(writeTableMap(map), "map");
    BOOST_TEST(again.findings.empty());
    BOOST_TEST_REQUIRE(again.value.columns.size() == map.columns.size());
    for (std::size_t i = 0; i < map.columns.size(); ++i) {
        BOOST_TEST(again.value.columns[i].heading == map.columns[i].heading);
        BOOST_TEST(again.value.columns[i].target == map.columns[i].target);
    }
    BOOST_TEST(writeTableMap(again.value) == writeTableMap(map));
}

BOOST_AUTO_TEST_CASE(reading_ends_at_once_where_the_progress_throws, *utf::label("PROP"))
{
    const auto persons = randomPersons(9, 600);
    struct Stopped {
    };
    const ImportOptions stops{today, [](std::size_t done, std::size_t) {
                                  if (done > 0)
                                      throw Stopped{};
                              }};
    BOOST_CHECK_THROW((void)readMappedTable(writeFlatTable(persons).value, "t", {}, stops), Stopped);
    BOOST_CHECK_THROW((void)readJsonLines(writeJsonLines(persons).value, "l", stops), Stopped);
    BOOST_CHECK_THROW((void)readFhir(writeFhirBundle(persons, today).value, "b", stops), Stopped);
}

BOOST_AUTO_TEST_SUITE_END()
