// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of other programs and lines of JSON: what is recognised, what is refused, and the way back.
#include "inventory/exchange/json_lines.hpp"
#include "inventory/exchange/mapped_table.hpp"
#include "tests/exchange/random_persons.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::check;

namespace
{

Reading<MappedTable> readTable(const std::string& text, const std::string& map = "")
{
    const auto given = readTableMap(map, "map");
    BOOST_REQUIRE(given.usable());
    return readMappedTable(text, "theirs.csv", given.value, {"2026-11-27", {}});
}

std::string eyes(const TableRow& row)
{
    if (!row.record) {
        for (const auto& finding : row.findings)
            if (finding.severity == Severity::error)
                return finding.code + " " + std::to_string(finding.position.line) + ":" +
                       std::to_string(finding.position.column);
        return "?";
    }
    return eyeWords(row.record->eyes.right.final, Eye::right) + " | " +
           eyeWords(row.record->eyes.left.final, Eye::left);
}

std::string codes(const std::vector<Finding>& findings)
{
    std::string text;
    for (const auto& finding : findings)
        text += (text.empty() ? "" : " ") + finding.code;
    return text;
}

} // namespace

BOOST_AUTO_TEST_SUITE(tables)

BOOST_AUTO_TEST_CASE(headings_are_understood_as_a_whole_or_not_at_all, *utf::label("DER"))
{
    const std::pair<const char*, const char*> known[] = {{"OD Sph", "right sphere"},
                                                         {"OS Sphere", "left sphere"},
                                                         {"R Cyl", "right cylinder"},
                                                         {"LE axis", "left axis"},
                                                         {"ODSph", "right sphere"},
                                                         {"L_Ax", "left axis"},
                                                         {"Sph OD", "right sphere"},
                                                         {"right_prism", "right prism"},
                                                         {"Base (OS)", "left base"},
                                                         {"R S", "right sphere"},
                                                         {"L x", "left axis"},
                                                         {"OD", "right"},
                                                         {"Rx OS", "left"},
                                                         {"ADD", "add"},
                                                         {"OD Add", "add_right"},
                                                         {"Near Add L", "add_left"},
                                                         {"PD", "pd_mm"},
                                                         {"PD (mm) OD", "pd_right_mm"},
                                                         {"Distance PD", "pd_mm"},
                                                         {"Near PD", "near_pd_mm"},
                                                         {"Patient ID", "person"},
                                                         {"Rx date", "written_on"},
                                                         {"VA best right", "va_best_right"},
                                                         {"age", "age"}};
    for (const auto& [heading, target] : known)
        BOOST_TEST(targetOfHeading(heading) == target, heading << " gave " << targetOfHeading(heading));
    for (const char* heading : {"old OD sph", "OD VA", "autoref OD sph", "worn L cyl", "near OD sph", "Rx",
                                "sph", "OD OS sph", "OD sph cyl", "", "name", "remarks", "OU sph"})
        BOOST_TEST(targetOfHeading(heading) == "", heading << " gave " << targetOfHeading(heading));
}

BOOST_AUTO_TEST_CASE(separator_comma_and_headings_are_found_out, *utf::label("DER"))
{
    const auto table = readTable("ID;OD Sph;OD Cyl;OD Ax;OS Sph;OS Cyl;OS Ax;Add;PD;Remark\n"
                                 "K-1;-1,25;-0,50;175;+0,75;;;2,00;62,5;tired; \n");
    BOOST_TEST(table.value.rows.at(0).findings.at(0).code == "row-long");
    const auto good = readTable("ID;OD Sph;OD Cyl;OD Ax;OS Sph;OS Cyl;OS Ax;Add;PD;Remark\n"
                                "K-1;-1,25;-0,50;175;+0,75;;;2,00;62,5;tired\n"
                                "K-2;plano;DS;;0,00;-1,00;090;;;\n");
    BOOST_REQUIRE_EQUAL(good.value.rows.size(), 2U);
    BOOST_TEST(eyes(good.value.rows[0]) == "-1.25 -0.50 x 175 | +0.75");
    BOOST_TEST(eyes(good.value.rows[1]) == "0.00 | 0.00 -1.00 x 90");
    const auto& record = *good.value.rows[0].record;
    BOOST_TEST((record.eyes.left.addition == Dioptres{2.0}));
    BOOST_TEST(record.distancePd.value() == 62.5);
    BOOST_TEST(record.otherColumns.at(0).first == "remark");
    BOOST_TEST(good.value.map.separator == ';');
    BOOST_TEST(good.value.commaDecimals);
    BOOST_TEST(good.value.minusCylinders == 2);
    BOOST_TEST(good.value.notUnderstood.size() == 1U);
    BOOST_TEST(codes(good.findings) == "column-unknown");
}

BOOST_AUTO_TEST_CASE(numbers_without_a_sign_are_refused_until_a_map_says_what_they_mean, *utf::label("DER"))
{
    const std::string text = "id,R sph,R cyl,R axis,L sph,L cyl,L axis\nK-1,1.25,0.50,90,-2.00,,\n";
    const auto refused = readTable(text);
    BOOST_TEST(eyes(refused.value.rows.at(0)) == "power-sign 2:5");
    BOOST_TEST(codes(refused.findings) == "table-unsigned table-unsigned");
    const auto plus = readTable(text, "unsigned spheres = plus\nunsigned cylinders = minus\n");
    BOOST_TEST(eyes(plus.value.rows.at(0)) == "+1.25 -0.50 x 90 | -2.00");
}

BOOST_AUTO_TEST_CASE(a_map_names_what_headings_do_not, *utf::label("DER"))
{
    const std::string text = "Nr\tDroite\tGauche\tVieux OD\nK-1\t-1.00\t-2.00 -0.50 x 10\t-3.00\n";
    BOOST_TEST(codes(readTable(text).findings).find("column-missing") != std::string::npos);
    const auto table =
        readTable(text, "# ours\nNr = person\nDroite = right\nGauche = left\nVieux OD = worn_right\n");
    BOOST_TEST(eyes(table.value.rows.at(0)) == "-1.00 | -2.00 -0.50 x 10");
    BOOST_TEST((table.value.rows[0].record->eyes.right.worn == sphereOf(-3.0)));
    const auto again = readTableMap(writeTableMap(table.value.map), "map");
    BOOST_TEST(writeTableMap(again.value) == writeTableMap(table.value.map));
    BOOST_TEST(codes(readTable(text, "Nr = person\nMilieu = left\n").findings).find("map-heading") !=
               std::string::npos);
    BOOST_TEST(codes(readTableMap("a\nb = nose\nseparator = x\nunsigned spheres = maybe\n", "m").findings) ==
               "map-line map-target map-value map-value");
}

BOOST_AUTO_TEST_CASE(what_cannot_be_read_is_refused_at_its_cell, *utf::label("DER"))
{
    const std::string header = "id,OD sph,OD cyl,OD axis,OD prism,OD base,OS sph\n";
    const auto first = [&](const std::string& row) {
        return eyes(readTable(header + row + "\n").value.rows.at(0));
    };
    BOOST_TEST(first("K-1,-1.00,-0.50,90,2,in,-1.00") == "-1.00 -0.50 x 90 2.00 base in | -1.00");
    BOOST_TEST(first("K-1,-1.00,,,2,BD,-1.00") == "-1.00 2.00 base down | -1.00");
    BOOST_TEST(first("K-1,-1.00,,,2,270,-1.00") == "-1.00 2.00 base down | -1.00");
    BOOST_TEST(first("K-1,-1.00,-0.50,,,,-1.00").substr(0, 12) == "axis-missing");
    BOOST_TEST(first("K-1,-1.00,-0.50,200,,,-1.00") == "axis-range 2:17");
    BOOST_TEST(first("K-1,-100,,,,,-1.00").substr(0, 4) != "-100");
    BOOST_TEST(first("K-1,,,,,,-1.00").substr(0, 9) == "empty-eye");
    BOOST_TEST(first("K-1,balance,,,,,-1.00") == "balance | -1.00");
    BOOST_TEST(first("K-1,-1.00,-1.00").substr(0, 9) == "row-short");
    BOOST_TEST(codes(readTable("").findings) == "table-empty");
    BOOST_TEST(codes(readTable("id,OD sph,R sph,OS sph\n").findings) == "column-twice");
}

BOOST_AUTO_TEST_CASE(a_thousand_random_prescriptions_go_out_as_a_table_and_come_back, *utf::label("PROP"))
{
    const auto persons = randomPersons(4711, 1000);
    const auto written = writeFlatTable(persons);
    const auto table = readTable(written.value);
    BOOST_REQUIRE_EQUAL(table.value.rows.size(), persons.size());
    for (std::size_t i = 0; i < persons.size(); ++i) {
        BOOST_REQUIRE_MESSAGE(table.value.rows[i].record, eyes(table.value.rows[i]));
        BOOST_REQUIRE_EQUAL(essence(*table.value.rows[i].record), essence(persons[i].record));
    }
    BOOST_TEST(written.value.find("rules_profile") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_thousand_random_prescriptions_go_out_as_lines_of_json_and_come_back,
                     *utf::label("PROP"))
{
    const auto persons = randomPersons(4712, 1000);
    const auto written = writeJsonLines(persons);
    BOOST_TEST(written.value.find("\"rules\":{\"profile\":\"adult-distance\"") != std::string::npos);
    const auto rows = readJsonLines(written.value, "lines", {"2026-11-27", {}});
    BOOST_REQUIRE_EQUAL(rows.value.size(), persons.size());
    for (std::size_t i = 0; i < persons.size(); ++i) {
        BOOST_REQUIRE_MESSAGE(rows.value[i].record, eyes(rows.value[i]));
        BOOST_REQUIRE_EQUAL(essence(*rows.value[i].record), essence(persons[i].record));
    }
}

BOOST_AUTO_TEST_CASE(bad_lines_of_json_are_refused_in_their_place, *utf::label("DER"))
{
    const auto rows =
        readJsonLines("{\"person\":\"K-1\",\"right\":\"-1.00\",\"left\":-1.25,\"age\":44}\n"
                      "{\"person\":\"K-2\",\"right\":1.25,\"left\":-1.25}\n"
                      "[1]\n{\"person\":\n"
                      "{\"person\":\"K-1\",\"right\":\"-1.00\",\"left\":-1.25,\"x\":{\"y\":1}}\n",
                      "lines", {"", {}});
    BOOST_REQUIRE_EQUAL(rows.value.size(), 5U);
    BOOST_TEST(eyes(rows.value[0]) == "-1.00 | -1.25");
    BOOST_TEST(eyes(rows.value[1]) == "power-sign 2:25");
    BOOST_TEST(eyes(rows.value[2]) == "json-syntax 3:1");
    BOOST_TEST(eyes(rows.value[3]).substr(0, 13) == "json-syntax 4");
    BOOST_TEST(codes(rows.value[4].findings) == "json-kept person-twice");
}

BOOST_AUTO_TEST_SUITE_END()
