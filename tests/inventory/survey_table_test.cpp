// SPDX-License-Identifier: GPL-3.0-or-later
// The survey importer, on made-up rows and on the open survey rows in tests/open_data (see NOTICE there).
#include "inventory/text/prescription_table.hpp"
#include "tests/inventory/marked_text.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

const std::string header =
    "survey,id,age,sex,right_sphere,right_cylinder,right_axis,left_sphere,left_cylinder,left_axis,"
    "right_va,left_va,right_va_refracted,left_va_refracted,cataract_surgery\n";

PersonRecord personOf(const std::string& row)
{
    const auto reading = readPrescriptionText(header + row + "\n", "survey.csv", "");
    BOOST_TEST(reading.value.survey);
    BOOST_TEST(reading.usable());
    BOOST_REQUIRE(reading.value.rows.size() == 1U);
    BOOST_REQUIRE(reading.value.rows[0].record.has_value());
    return *reading.value.rows[0].record;
}

void checkRow(const std::string& marked, const std::vector<std::string>& codes)
{
    const auto text = unmarked(header + marked + "\n");
    const auto reading = readPrescriptionText(text.text, "survey.csv", "");
    checkTold(reading.value.rows.at(0).findings, text, codes);
}

} // namespace

BOOST_AUTO_TEST_SUITE(survey_table)

BOOST_AUTO_TEST_CASE(a_row_keeps_its_plus_cylinders_and_off_grid_powers, *utf::label("DER"))
{
    const auto p = personOf("X,12,40,F,-4.72,1.2,128,1,0.5,0,50,666,25,40,R");
    BOOST_TEST(p.person == "X-12");
    BOOST_TEST(p.age.value() == 40.0);
    BOOST_TEST((p.purpose == Purpose::distance));
    BOOST_TEST(p.objectiveOnly);
    BOOST_TEST(p.cycloplegia.value() == false);
    const SpheroCylinder right = p.eyes.right.final.power;
    BOOST_TEST(right.sphere.thousandths() == -4720);
    BOOST_TEST(right.cylinder.thousandths() == 1200);
    BOOST_TEST(right.axis.value() == 128.0);
    BOOST_TEST(p.eyes.left.final.power.axis.value() == 180.0); // axis 0 is written 180
    BOOST_TEST((*p.eyes.right.objective == right));
    BOOST_TEST(p.eyes.right.final.asWritten == "-4.72 +1.20 x 128");
    BOOST_TEST(p.eyes.right.acuity.habitual->asRecorded == "20/50");
    BOOST_TEST(p.eyes.right.acuity.habitual->logMar.value() == 0.39794,
               boost::test_tools::tolerance(1e-4)); // log10(2.5)
    BOOST_TEST(p.eyes.left.acuity.habitual->asRecorded == "worse than 20/200");
    BOOST_TEST(p.eyes.left.acuity.habitual->logMar.value() == 1.1);
    BOOST_TEST(p.eyes.right.acuity.best->asRecorded == "20/25");
    BOOST_TEST(p.eyes.right.lensImplant);
    BOOST_TEST(!p.eyes.left.lensImplant);
}

BOOST_AUTO_TEST_CASE(a_sphere_with_axis_zero_is_a_sphere, *utf::label("DER"))
{
    const auto p = personOf("X,1,40,F,-1,0,0,+1.25,0,77,,,,,?");
    BOOST_TEST((p.eyes.right.final.power == sphereOf(-1.0)));
    BOOST_TEST((p.eyes.left.final.power == sphereOf(1.25)));
    BOOST_TEST(!p.eyes.right.acuity.habitual.has_value());
    BOOST_TEST(!p.eyes.right.lensImplant);
}

BOOST_AUTO_TEST_CASE(incomplete_eyes_are_not_measured_and_incomplete_rows_are_bad, *utf::label("DER"))
{
    checkRow("X,1,40,F,^-1,0.5,,1,0,0,,,,,N", {"note survey-eye-missing"});
    const auto p = personOf("X,1,40,F,-1,0.5,,1,0,0,,,,,N");
    BOOST_TEST((p.eyes.right.final.state == EyeState::notMeasured));
    BOOST_TEST((p.eyes.left.final.state == EyeState::measured));
    BOOST_TEST(!p.eyes.right.objective.has_value());
    checkRow("^X,1,40,F,,,,,,,,,,,N", {"survey-no-eye"});
    checkRow("^X,1,40,F,^x,0,0,^99,0,0,,,,,N", {"survey-no-eye", "number-not-a-number", "number-range"});
    checkRow("X,1,^200,F,^1,0,^181,1,0,0,^1,,,,N",
             {"number-range", "note survey-eye-missing", "number-range", "number-range"});
}

BOOST_AUTO_TEST_CASE(readings_through_contact_lenses_are_left_out, *utf::label("DER"))
{
    const auto text =
        unmarked("survey,id,right_sphere,right_cylinder,right_axis,left_sphere,left_cylinder,left_axis,"
                 "comment,^group\nX,1,1,0,0,1,0,0,^3,a\nX,2,1,0,0,1,0,0,4,b\nX,^2,1,0,0,1,0,0,,b\n");
    const auto reading = readPrescriptionText(text.text, "survey.csv", "");
    auto findings = reading.findings;
    for (const auto& row : reading.value.rows)
        findings.insert(findings.end(), row.findings.begin(), row.findings.end());
    checkTold(findings, text, {"note column-unknown", "survey-contact-lens", "person-twice"});
    BOOST_TEST(reading.value.rows.at(1).record.has_value());
}

BOOST_AUTO_TEST_CASE(
    the_open_survey_rows_give_the_counts_known_of_them,
    *utf::label("DER") *
        utf::description("National Center for Health Statistics, vision examination 1999-2006, people "
                         "needing glasses: counted in a table program from the same file"))
{
    const auto reading = readPrescriptionTable(QS_SOURCE_DIR "/tests/open_data/survey_need_glasses.csv", "");
    BOOST_REQUIRE(reading.usable());
    BOOST_TEST(reading.value.survey);
    BOOST_TEST(!reading.value.anyBadRow());
    int whole = 0;
    int lowCylinder = 0;
    int alike = 0;
    int both = 0;
    for (const auto& row : reading.value.rows) {
        const auto& eyes = row.record->eyes;
        if (!eyes.right.seeing() || !eyes.left.seeing())
            continue;
        ++whole;
        const auto size = [](const EyeRecord& eye) {
            return std::abs(eye.final.power.cylinder.thousandths());
        };
        const bool low = size(eyes.right) <= 750 && size(eyes.left) <= 750;
        const Dioptres apart = meanSphere(eyes.right.final.power) - meanSphere(eyes.left.final.power);
        const bool near = std::abs(apart.thousandths()) <= 1000;
        lowCylinder += low ? 1 : 0;
        alike += near ? 1 : 0;
        both += low && near ? 1 : 0;
    }
    BOOST_TEST(whole == 1963);
    BOOST_TEST(lowCylinder == 963);
    BOOST_TEST(alike == 1754);
    BOOST_TEST(both == 932);
}

BOOST_AUTO_TEST_SUITE_END()
