// SPDX-License-Identifier: GPL-3.0-or-later
// The prescription table as a whole: header, rows in their places, what must hold together.
#include "inventory/text/prescription_table.hpp"
#include "tests/inventory/marked_text.hpp"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <filesystem>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

const std::string today = "2026-07-15";

/// Findings of the file, then those of its rows.
std::vector<Finding> allOf(const Reading<PrescriptionTable>& reading)
{
    auto findings = reading.findings;
    for (const auto& row : reading.value.rows)
        findings.insert(findings.end(), row.findings.begin(), row.findings.end());
    return findings;
}

void checkTable(const std::string& marked, const std::vector<std::string>& codes)
{
    const auto text = unmarked(marked);
    const auto reading = readPrescriptionText(text.text, "people.csv", today);
    checkTold(allOf(reading), text, codes);
    for (const auto& row : reading.value.rows) {
        const bool bad = std::any_of(row.findings.begin(), row.findings.end(), [](const Finding& finding) {
            return finding.severity == Severity::error;
        });
        BOOST_TEST(bad == !row.record.has_value());
    }
}

PersonRecord personOf(const std::string& header, const std::string& row)
{
    const auto reading = readPrescriptionText(header + "\n" + row + "\n", "people.csv", today);
    BOOST_TEST(told(allOf(reading)) == std::vector<std::string>{}, boost::test_tools::per_element());
    BOOST_REQUIRE(reading.value.rows.size() == 1U);
    BOOST_REQUIRE(reading.value.rows[0].record.has_value());
    return *reading.value.rows[0].record;
}

} // namespace

BOOST_AUTO_TEST_SUITE(prescription_table)

BOOST_AUTO_TEST_CASE(every_column_lands_in_its_field, *utf::label("DER"))
{
    const auto p = personOf(
        "person,age,sex,purpose,right,left,add_right,add_left,pd_mm,pd_right_mm,pd_left_mm,near_pd_mm,"
        "working_mm,"
        "intermediate_mm,vertex_mm,va_unaided_right,va_unaided_left,va_habitual_right,va_habitual_left,"
        "va_pinhole_right,va_pinhole_left,va_best_right,va_best_left,va_sphere_right,va_sphere_left,near_"
        "unaided,"
        "near_best,lens_implant,signs,symptoms,worn_right,worn_left,worn_add,objective_right,objective_left,"
        "cycloplegia,source,prescriber,written_on,frame_size,guardian",
        "P7,52.5,F,both,-1.25 -0.50 x "
        "90,pl,+2.00,1.75,62,31,31.5,59,350,600,14,6/60,6/36,6/18,6/12,6/9,6/9,6/6,"
        "6/7.5,6/7.5,6/6,N24,N5,left,pain; Red eye,\"tired, headache\",-1.00,-0.50,1.50,-1.37 -0.60 x "
        "88,0.00,no,"
        "final,R. Okell,2026-01-15,medium,none");
    BOOST_TEST(p.person == "P7");
    BOOST_TEST(p.age.value() == 52.5);
    BOOST_TEST(p.sex == "F");
    BOOST_TEST((p.purpose == Purpose::both));
    const EyeRecord& r = p.eyes.right;
    const EyeRecord& l = p.eyes.left;
    BOOST_TEST((r.final.power == SpheroCylinder{Dioptres{-1.25}, Dioptres{-0.5}, AxisDegrees{90}}));
    BOOST_TEST(r.final.asWritten == "-1.25 -0.50 x 90");
    BOOST_TEST((l.final.power == sphereOf(0.0)));
    BOOST_TEST(r.addition.value().thousandths() == 2000);
    BOOST_TEST(l.addition.value().thousandths() == 1750);
    BOOST_TEST(p.distancePd.value() == 62.0);
    BOOST_TEST(r.monocularPd.value() == 31.0);
    BOOST_TEST(l.monocularPd.value() == 31.5);
    BOOST_TEST(p.nearPd.value() == 59.0);
    BOOST_TEST(p.workingMm.value() == 350.0);
    BOOST_TEST(p.intermediateMm.value() == 600.0);
    BOOST_TEST(p.vertexMm.value() == 14.0);
    BOOST_TEST(r.acuity.unaided->asRecorded == "6/60");
    BOOST_TEST(l.acuity.unaided->asRecorded == "6/36");
    BOOST_TEST(r.acuity.habitual->asRecorded == "6/18");
    BOOST_TEST(l.acuity.habitual->asRecorded == "6/12");
    BOOST_TEST(r.acuity.pinhole->asRecorded == "6/9");
    BOOST_TEST(l.acuity.pinhole->asRecorded == "6/9");
    BOOST_TEST(r.acuity.best->asRecorded == "6/6");
    BOOST_TEST(l.acuity.best->asRecorded == "6/7.5");
    BOOST_TEST(r.acuity.meanSphere->asRecorded == "6/7.5");
    BOOST_TEST(l.acuity.meanSphere->asRecorded == "6/6");
    BOOST_TEST(p.nearUnaided->points == 24.0);
    BOOST_TEST(p.nearBest->points == 5.0);
    BOOST_TEST(!r.lensImplant);
    BOOST_TEST(l.lensImplant);
    BOOST_TEST((p.signs == std::vector<Sign>{Sign::pain, Sign::redEye}));
    BOOST_TEST(p.symptoms == "tired, headache");
    BOOST_TEST((*r.worn == sphereOf(-1.0) && *l.worn == sphereOf(-0.5)));
    BOOST_TEST(p.wornAddition.value().thousandths() == 1500);
    BOOST_TEST(r.objective->sphere.thousandths() == -1375); // the trade truncates the eighth
    BOOST_TEST((*l.objective == sphereOf(0.0)));
    BOOST_TEST(p.cycloplegia.value() == false);
    BOOST_TEST(!p.objectiveOnly);
    BOOST_TEST(p.prescriber == "R. Okell");
    BOOST_TEST(p.writtenOn == "2026-01-15");
    BOOST_TEST(p.monthsSinceWritten.value() == 6);
    BOOST_TEST(p.frameSize == "medium");
    BOOST_TEST(p.guardian == "none");
    BOOST_TEST(p.position.line == 2);
}

BOOST_AUTO_TEST_CASE(three_columns_are_enough_and_their_order_is_free, *utf::label("DER"))
{
    const auto p = personOf("left,person,Right", "balance,A 1,\"-1,25\"");
    BOOST_TEST((p.eyes.left.final.state == EyeState::balance));
    BOOST_TEST(p.eyes.right.final.power.sphere.thousandths() ==
               -1250); // a decimal comma is accepted on entry
    BOOST_TEST((p.purpose == Purpose::unstated));
    BOOST_TEST(!p.age.has_value());
    BOOST_TEST(!p.monthsSinceWritten.has_value());
}

BOOST_AUTO_TEST_CASE(header_errors_are_told_where_they_stand, *utf::label("DER"))
{
    checkTable("^", {"table-empty"});
    checkTable("person,right^\nP1,0.00\n", {"column-missing"});
    checkTable("age^^^\n5\n", {"column-missing", "column-missing", "column-missing"});
    checkTable("person,right,left,^va_right\nP1,0.00,0.00,6/6\n", {"column-acuity"});
    checkTable("person,right,left,^VA\nP1,0.00,0.00,6/6\n", {"column-acuity"});
    checkTable("person,right,left,^right\nP1,0.00,0.00,0.00\n", {"column-twice"});
    checkTable("person,right,left,^\nP1,0.00,0.00,x\n", {"column-empty"});
    checkTable("^person;right;left\nP1;0.00;0.00\n", {"csv-separator"});
    checkTable("person,right,left,^\"colour\nP1,0.00,0.00,x\n", {"csv-quote-open"});
    checkTable("person,right,left\nP1,^\xE9,x\n", {"text-not-utf8"});
}

BOOST_AUTO_TEST_CASE(unknown_columns_are_kept_and_reported, *utf::label("DER"))
{
    checkTable("person,right,left,^village\nP1,0.00,0.00,Tarn\n", {"note column-unknown"});
    checkTable("person,right,left,^pd\nP1,0.00,0.00,62\n", {"note column-unknown"});
    checkTable("person,right,left,^pd_m\nP1,0.00,0.00,62\n", {"caution column-unknown"});
    const auto reading =
        readPrescriptionText("person,right,left,Village\nP1,0.00,0.00,Tarn\nP2,0.00,0.00,\n", "x", today);
    BOOST_TEST(reading.value.unknownColumns == std::vector<std::string>{"Village"},
               boost::test_tools::per_element());
    BOOST_TEST((reading.value.rows[0].record->otherColumns ==
                std::vector<std::pair<std::string, std::string>>{{"village", "Tarn"}}));
    BOOST_TEST(reading.value.rows[1].record->otherColumns.empty());
}

BOOST_AUTO_TEST_CASE(a_bad_row_keeps_its_findings_and_its_neighbours_their_records, *utf::label("DER"))
{
    const auto text =
        unmarked("person,age,right,left\nP1,30,0.00,0.00\nP2,^300,^2.00,^\nP3,40,+1.00,+1.00\n");
    const auto reading = readPrescriptionText(text.text, "x", today);
    checkTold(allOf(reading), text, {"number-range", parseEye("2.00").complaint().code, "empty-eye"});
    BOOST_TEST(reading.findings.empty());
    BOOST_TEST(reading.value.anyBadRow());
    BOOST_REQUIRE(reading.value.rows.size() == 3U);
    BOOST_TEST(reading.value.rows[0].record.has_value());
    BOOST_TEST(!reading.value.rows[1].record.has_value());
    BOOST_TEST(reading.value.rows[1].person == "P2");
    BOOST_TEST(reading.value.rows[1].line == 3);
    BOOST_TEST(reading.value.rows[2].record.has_value());
}

BOOST_AUTO_TEST_CASE(rows_too_short_too_long_or_without_a_person_are_told, *utf::label("DER"))
{
    checkTable("person,right,left,age\nP1,0.00,0.00^\n", {"row-short"});
    checkTable("person,right,left\nP1,0.00,0.00,^5\n", {"row-long"});
    checkTable("person,right,left\nP1,-1,^25,^-1.00\n",
               {parseEye("25").complaint().code, "row-long"}); // a decimal comma without quotes
    checkTable("person,right,left\n^,0.00,0.00\n", {"person-empty"});
    checkTable("person,right,left\nP1,^,^ \n", {"empty-eye", "empty-eye"});
    checkTable("person,right,left\nP1,+1.00^\"x\",0.00\n", {"csv-quote-inside"});
}

BOOST_AUTO_TEST_CASE(a_person_written_twice_is_told_at_the_second, *utf::label("DER"))
{
    const auto text = unmarked("person,right,left\nP1,0.00,0.00\nP2,0.00,0.00\n^P1,0.00,0.00\n");
    const auto reading = readPrescriptionText(text.text, "x", today);
    checkTold(allOf(reading), text, {"person-twice"});
    BOOST_TEST(reading.value.rows[2].findings.at(0).sentence.arguments.at(1) == "2");
    BOOST_TEST(reading.value.rows[0].record.has_value());
    BOOST_TEST(!reading.value.rows[2].record.has_value());
}

BOOST_AUTO_TEST_CASE(distances_that_disagree_are_cautions, *utf::label("DER"))
{
    const std::string head = "person,right,left,pd_mm,pd_right_mm,pd_left_mm,near_pd_mm\nP,0.00,0.00,";
    checkTable(head + "62,31,32,\n", {});
    checkTable(head + "^62,31,32.1,\n", {"caution pd-sum"});
    checkTable(head + "^31,,,\n", {"caution pd-monocular"});
    checkTable(head + "^40,,,\n", {"caution pd-monocular"});
    checkTable(head + "40.5,,,\n", {});
    checkTable(head + "62,,,^30\n", {"caution pd-monocular"});
    checkTable(head + "60,,,^63\n", {"caution near-pd-wider"});
}

BOOST_AUTO_TEST_CASE(one_addition_an_eye_wherever_it_is_written, *utf::label("DER"))
{
    const auto inText = personOf("person,right,left", "P,+1.00 Add +2.00,+1.00 Add +2.25");
    BOOST_TEST(inText.eyes.right.addition.value().thousandths() == 2000);
    BOOST_TEST(inText.eyes.left.addition.value().thousandths() == 2250);
    const auto both = personOf("person,right,left,add", "P,+1.00,+1.00,2.00");
    BOOST_TEST(both.eyes.left.addition.value().thousandths() == 2000);
    const auto special = personOf("add_left,person,right,left,add", "+2.50,P,+1.00,+1.00,+2.00");
    BOOST_TEST(special.eyes.right.addition.value().thousandths() == 2000);
    BOOST_TEST(special.eyes.left.addition.value().thousandths() == 2500);
    (void)personOf("person,right,left,add", "P,+1.00 Add +2.00,+1.00,+2.00");
    checkTable("person,right,left,add\nP,+1.00 Add +2.00,+1.00,^+2.50\n", {"addition-twice"});
    checkTable("person,right,left,add_right\nP,+1.00 Add +2.00,+1.00,^+2.50\n", {"addition-twice"});
    checkTable("person,right,left,add\nP,+1.00,+1.00,^-2.00\n", {"addition-negative"});
    checkTable("person,right,left,add_left\nP,+1.00,+1.00,^7.00\n", {"addition-range"});
    checkTable("person,right,left,add,near_right\nP,+1.00,+1.00,2.00,+3.25\n", {});
    checkTable("person,right,left,add,near_right\nP,+1.00,+1.00,2.00,^+2.00\n",
               {"caution near-and-addition"});
}

BOOST_AUTO_TEST_CASE(a_value_between_the_steps_is_asked_about,
                     *utf::label("DER") * utf::description("common practice: 3 and 5, 2 and 7 look alike"))
{
    checkTable("person,right,left\nP,^-1.35,+1.00\n", {"caution power-off-step"});
    checkTable("person,right,left\nP,-1.25,^+1.00 -0.77 x 90\n", {"caution power-off-step"});
    checkTable("person,right,left\nP,-1.37 -0.12 x 90,+1.125\n", {});
    checkTable("person,right,left\nP,balance,+1.00\n", {});
}

BOOST_AUTO_TEST_CASE(opposite_cylinder_forms_are_read_and_asked_about,
                     *utf::label("DER") * utf::description("common practice"))
{
    checkTable("person,right,left\nP,-1.00 -0.50 x 90,^-1.00 +0.50 x 90\n", {"caution cylinder-forms-mixed"});
    checkTable("person,right,left\nP,-1.00 -0.50 x 90,-1.00\n", {});
    checkTable("person,right,left\nP,-1.00 +0.50 x 90,-1.00 +0.25 x 5\n", {});
}

BOOST_AUTO_TEST_CASE(near_written_out_in_full_is_weaker_than_distance_only_by_mistake,
                     *utf::label("DER") * utf::description("common practice"))
{
    checkTable("person,right,left,near_right\nP,+2.00,+2.00,^+1.00\n", {"caution near-weaker"});
    checkTable("person,right,left,near_right\nP,+2.00,+2.00,+3.50\n", {});
    checkTable("person,right,left,near_right\nP,-0.50 -0.50 x 90,+2.00,+1.50\n", {}); // tried with spheres
}

BOOST_AUTO_TEST_CASE(an_eye_may_be_named_and_the_other_eye_is_refused, *utf::label("DER"))
{
    checkTable("person,right,left\nP,OD -1.00,OS: -1.25\n", {});
    checkTable("person,right,left\nP,^OS -1.00,-1.25\n", {"eye-other"});
}

BOOST_AUTO_TEST_CASE(months_are_counted_from_the_date_to_today, *utf::label("DER"))
{
    const std::string header = "person,right,left,written_on";
    BOOST_TEST(personOf(header, "P,0.00,0.00,2026-07-15").monthsSinceWritten.value() == 0);
    BOOST_TEST(personOf(header, "P,0.00,0.00,2026-06-16").monthsSinceWritten.value() == 0);
    BOOST_TEST(personOf(header, "P,0.00,0.00,2026-06-15").monthsSinceWritten.value() == 1);
    BOOST_TEST(personOf(header, "P,0.00,0.00,2024-02-29").monthsSinceWritten.value() == 28);
    const std::string start = header + "\nP,0.00,0.00,";
    checkTable(start + "^2026-07-16\n", {"date-future"});
    checkTable(start + "^2026-02-30\n", {"date-form"});
    checkTable(start + "^15.07.2026\n", {"date-form"});
    checkTable(start + "^2026-7-15\n", {"date-form"});
    const auto undated = readPrescriptionText(start + "2030-01-01\n", "x", "");
    BOOST_TEST(undated.value.rows.at(0).record.has_value());
    BOOST_TEST(!undated.value.rows.at(0).record->monthsSinceWritten.has_value());
}

BOOST_AUTO_TEST_CASE(a_table_that_is_not_there_is_a_finding, *utf::label("DER"))
{
    const auto reading = readPrescriptionTable(
        (std::filesystem::temp_directory_path() / "none" / "people.csv").string(), today);
    BOOST_TEST(!reading.usable());
    BOOST_TEST(reading.findings.at(0).code == "file-missing");
}

BOOST_AUTO_TEST_SUITE_END()
