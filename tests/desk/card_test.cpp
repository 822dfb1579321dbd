// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/card/eye_field.hpp"
#include "app/desk/card/prescription_card.hpp"
#include "inventory/text/prescription_table.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QLabel>
#include <QSignalSpy>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
std::string stepped(const char* text, long by)
{
    return steppedSphere(QLatin1String(text), Eye::right, by).toStdString();
}

struct ShownCard {
    ShownCard()
    {
        card.show();
        BOOST_TEST_REQUIRE(QTest::qWaitForWindowExposed(&card));
    }
    QLineEdit& field(const char* name) { return named<QLineEdit>(card, name); }
    void type(const char* name, const char* text)
    {
        field(name).setFocus();
        field(name).selectAll();
        QTest::keyClicks(&field(name), QLatin1String(text));
    }
    PrescriptionCard card;
};
} // namespace

BOOST_AUTO_TEST_SUITE(card)

BOOST_AUTO_TEST_CASE(arrows_step_the_sphere_by_a_quarter_and_always_show_the_sign, *utf::label("PROP"))
{
    BOOST_TEST(stepped("-1.25 -0.50 x 90", 250) == "-1.00 -0.50 x 90");
    BOOST_TEST(stepped("-1.25 -0.50 x 90", -250) == "-1.50 -0.50 x 90");
    BOOST_TEST(stepped("", 250) == "+0.25");
    BOOST_TEST(stepped("+0.25", -250) == "0.00");
    BOOST_TEST(stepped("0.00", -250) == "-0.25");
    BOOST_TEST(stepped("plano -0.75 x 10", 250) == "+0.25 -0.75 x 10");
}

BOOST_AUTO_TEST_CASE(page_keys_step_a_whole_dioptre_and_a_power_off_the_grid_lands_on_it, *utf::label("PROP"))
{
    BOOST_TEST(stepped("-1.25 -0.50 x 90", 1000) == "-0.25 -0.50 x 90");
    BOOST_TEST(stepped("+1.75", -1000) == "+0.75");
    BOOST_TEST(stepped("-1.30", 250) == "-1.25");
    BOOST_TEST(stepped("-1.30", -250) == "-1.50");
}

BOOST_AUTO_TEST_CASE(what_cannot_be_read_or_has_no_power_is_not_stepped, *utf::label("PROP"))
{
    BOOST_TEST(stepped("1.25", 250) == "1.25");
    BOOST_TEST(stepped("balance", 250) == "balance");
    BOOST_TEST(stepped("-1.25 -0.50", -250) == "-1.25 -0.50");
}

BOOST_AUTO_TEST_CASE(the_arrow_keys_reach_the_stepping, *utf::label("PROP"))
{
    ShownCard shown;
    shown.type("rightEyeEdit", "-1.25");
    QTest::keyClick(&shown.field("rightEyeEdit"), Qt::Key_Up);
    QTest::keyClick(&shown.field("rightEyeEdit"), Qt::Key_PageDown);
    BOOST_TEST(shown.field("rightEyeEdit").text().toStdString() == "-2.00");
}

BOOST_AUTO_TEST_CASE(a_malformed_eye_gets_a_complaint_under_its_field_and_no_record, *utf::label("PROP"))
{
    ShownCard shown;
    shown.type("personEdit", "P-1");
    shown.type("rightEyeEdit", "-1.25 -0.50"); // no axis
    shown.type("leftEyeEdit", "-1.25");
    auto& complaint = named<QLabel>(shown.card, "rightEyeEditComplaint");
    BOOST_TEST(complaint.isVisible()); // the field was left
    BOOST_TEST(!complaint.text().isEmpty());
    BOOST_TEST(!shown.card.read().has_value());
    shown.type("rightEyeEdit", "+1.25");
    BOOST_TEST(!complaint.isVisible());
    BOOST_TEST(shown.card.read().has_value());
}

BOOST_AUTO_TEST_CASE(an_empty_eye_is_refused_and_never_taken_for_a_balance_lens, *utf::label("PROP"))
{
    ShownCard shown;
    shown.type("personEdit", "P-1");
    shown.type("rightEyeEdit", "-1.25");
    BOOST_TEST(!shown.card.read().has_value());
    BOOST_TEST(named<QLabel>(shown.card, "leftEyeEditComplaint").isVisible());
}

BOOST_AUTO_TEST_CASE(what_was_typed_comes_back_as_a_record, *utf::label("PROP"))
{
    ShownCard shown;
    const std::pair<const char*, const char*> entries[] = {
        {"personEdit", "P-7"},      {"ageEdit", "47"},        {"rightEyeEdit", "-1.25 -0.50 x 90"},
        {"leftEyeEdit", "-1.00"},   {"additionEdit", "2.00"}, {"distancePdEdit", "62"},
        {"unaidedLeftEdit", "6/18"}};
    for (const auto& [name, text] : entries)
        shown.type(name, text);
    const auto record = shown.card.read();
    BOOST_TEST_REQUIRE(record.has_value());
    BOOST_TEST(record->person == "P-7");
    BOOST_TEST((record->age == 47.0));
    BOOST_TEST((record->eyes.right.final.power ==
                SpheroCylinder{Dioptres{-1.25}, Dioptres{-0.50}, AxisDegrees{90}}));
    BOOST_TEST((record->eyes.left.addition == Dioptres{2.0}));
    BOOST_TEST((record->distancePd == 62.0));
    BOOST_TEST(record->eyes.left.acuity.unaided.has_value());
}

BOOST_AUTO_TEST_CASE(a_record_loaded_and_read_again_keeps_what_the_card_does_not_show, *utf::label("PROP"))
{
    ShownCard shown;
    PersonRecord record;
    record.person = "P-8";
    BOOST_TEST_REQUIRE(!setField(record, "right", "-2.00 -0.75 x 10"));
    BOOST_TEST_REQUIRE(!setField(record, "left", "balance"));
    BOOST_TEST_REQUIRE(!setField(record, "objective_right", "-2.25 -0.75 x 12"));
    record.signs = {Sign::redEye};
    record.purpose = Purpose::distance;
    shown.card.load(record);
    const auto again = shown.card.read();
    BOOST_TEST_REQUIRE(again.has_value());
    BOOST_TEST(again->eyes.right.objective.has_value());
    BOOST_TEST((again->eyes.left.final.state == EyeState::balance));
    BOOST_TEST((again->signs == record.signs));
    BOOST_TEST((again->purpose == Purpose::distance));
}

BOOST_AUTO_TEST_CASE(tab_walks_right_left_pd_and_addition_in_that_order, *utf::label("PROP"))
{
    ShownCard shown;
    shown.field("rightEyeEdit").setFocus();
    for (const auto* next : {"leftEyeEdit", "distancePdEdit", "nearPdEdit", "additionEdit"}) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        BOOST_TEST(QApplication::focusWidget()->objectName().toStdString() == next);
    }
}

BOOST_AUTO_TEST_CASE(enter_in_a_field_asks_for_a_suggestion, *utf::label("PROP"))
{
    ShownCard shown;
    QSignalSpy wanted(&shown.card, &PrescriptionCard::suggestWanted);
    QTest::keyClick(&shown.field("distancePdEdit"), Qt::Key_Return);
    BOOST_TEST(wanted.count() == 1);
}

BOOST_AUTO_TEST_SUITE_END()
