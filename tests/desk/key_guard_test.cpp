// SPDX-License-Identifier: GPL-3.0-or-later
// Which keys the fields of the card take, and how few it takes to fill it.
#include "app/desk/card/key_guard.hpp"
#include "app/desk/card/prescription_card.hpp"
#include "app/desk/card/reader_card.hpp"
#include "app/desk/card/readings_words.hpp"
#include "core/optics/notation.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
/// Every beginning of the text must pass: somebody types it from the left.
bool canBeTyped(FieldForm form, const QString& text)
{
    for (int length = 1; length <= text.size(); ++length)
        if (!canBecome(form, text.left(length)))
            return false;
    return true;
}

std::string stepped(FieldForm form, const char* text, long by)
{
    return steppedValue(form, QLatin1String(text), by).toStdString();
}

struct CardInWindow {
    CardInWindow()
    {
        card.show();
        BOOST_TEST_REQUIRE(QTest::qWaitForWindowExposed(&card));
    }
    QLineEdit& field(const char* name) { return named<QLineEdit>(card, name); }
    PrescriptionCard card;
};
} // namespace

BOOST_AUTO_TEST_SUITE(key_guard)

BOOST_AUTO_TEST_CASE(whatever_the_reader_of_prescriptions_takes_can_be_typed_from_the_left,
                     *utf::label("PROP"))
{
    for (const auto* text : {"-1.25 -0.50 x 90",
                             "-1.25-.75x90",
                             "+2.00",
                             "0.00",
                             "0",
                             "plano",
                             "pl -1.25 x175",
                             "-2.25 / -0.75 / 27",
                             "-2.00DS",
                             "+1.00 DS / -0.50 DC x 5",
                             "-1.00 1 base in",
                             "-1.00 2 base 90",
                             "balance",
                             "artificial",
                             "blind",
                             "not measured",
                             "-0,75",
                             "R -1.25",
                             "-0.12",
                             "+0.625",
                             "-1.25 -0.50 x 180",
                             "+1.00 -0.50 x 5 add +2.00",
                             "-12.50 -4.25 x 7"}) {
        BOOST_TEST_REQUIRE(static_cast<bool>(parseEye(text)), text);
        BOOST_TEST(canBeTyped(FieldForm::eye, QString::fromLatin1(text)), text);
    }
}

BOOST_AUTO_TEST_CASE(what_no_prescription_begins_with_is_not_taken, *utf::label("PROP"))
{
    for (const auto* text : {"1", ".5", "-1.25.", "-1..", "--", "+-", "-1.4", "-1.259", "-125.",
                             "-1.25 -0.50 x 181", "-1.25 -0.50 x 9z", "q", "-1.25 -0.50 x 1800", "0.7"})
        BOOST_TEST(!canBecome(FieldForm::eye, QString::fromLatin1(text)), text);
    for (const auto* text : {"181", "9z", "1800"})
        BOOST_TEST(!canBecome(FieldForm::axis, QString::fromLatin1(text)), text);
    for (const auto* text : {"2.3", "226", "-2", "7"})
        BOOST_TEST(!canBecome(FieldForm::reader, QString::fromLatin1(text)), text);
    for (const auto* text : {"121", "4.5.", "-1"})
        BOOST_TEST(!canBecome(FieldForm::years, QString::fromLatin1(text)), text);
}

BOOST_AUTO_TEST_CASE(a_key_that_is_refused_is_said_and_the_next_good_one_puts_it_away, *utf::label("PROP"))
{
    CardInWindow shown;
    auto& field = shown.field("rightEyeEdit");
    field.setFocus();
    QTest::keyClicks(&field, QStringLiteral("1"));
    const auto& complaint = named<QLabel>(shown.card, "rightEyeEditComplaint");
    BOOST_TEST(field.text().toStdString() == "");
    BOOST_TEST(complaint.isVisible());
    BOOST_TEST(complaint.text().contains(QLatin1Char('1')));
    QTest::keyClicks(&field, QStringLiteral("-1.25"));
    BOOST_TEST(!complaint.isVisible());
    QTest::keyClicks(&field, QStringLiteral(".5"));
    BOOST_TEST(field.text().toStdString() == "-1.25"); // neither the second point nor a third digit
}

BOOST_AUTO_TEST_CASE(a_power_off_the_grid_that_was_loaded_can_still_be_edited, *utf::label("PROP"))
{
    CardInWindow shown;
    auto& field = shown.field("rightEyeEdit");
    field.setText(QStringLiteral("-1.31"));
    field.setFocus();
    field.end(false);
    QTest::keyClicks(&field, QStringLiteral(" "));
    BOOST_TEST(field.text().toStdString() == "-1.31 ");
}

BOOST_AUTO_TEST_CASE(arrows_step_single_fields_and_an_axis_goes_round, *utf::label("PROP"))
{
    BOOST_TEST(stepped(FieldForm::cylinder, "-0.50", -250) == "-0.75");
    BOOST_TEST(stepped(FieldForm::cylinder, "", -250) == "-0.25");
    BOOST_TEST(stepped(FieldForm::sphere, "-0.25", 1000) == "+0.75");
    BOOST_TEST(stepped(FieldForm::axis, "180", 1) == "1");
    BOOST_TEST(stepped(FieldForm::axis, "1", -1) == "180");
    BOOST_TEST(stepped(FieldForm::axis, "3", -5) == "178");
    BOOST_TEST(tidied(FieldForm::sphere, QStringLiteral("+2")).toStdString() == "+2.00");
    BOOST_TEST(tidied(FieldForm::cylinder, QStringLiteral("-.5")).toStdString() == "-0.50");
    BOOST_TEST(tidied(FieldForm::axis, QStringLiteral("0")).toStdString() == "180");
}

BOOST_AUTO_TEST_CASE(three_fields_and_one_text_are_the_same_eye, *utf::label("PROP"))
{
    CardInWindow shown;
    shown.field("rightEyeEdit").setText(QStringLiteral("-1.25 -0.50 x 90"));
    QTest::keyClick(&shown.card, Qt::Key_E, Qt::ControlModifier);
    BOOST_TEST_REQUIRE(shown.card.threeFields());
    BOOST_TEST(shown.field("rightSphereEdit").text().toStdString() == "-1.25");
    BOOST_TEST(shown.field("rightCylinderEdit").text().toStdString() == "-0.50");
    BOOST_TEST(shown.field("rightAxisEdit").text().toStdString() == "90");
    BOOST_TEST(!shown.field("rightEyeEdit").isVisible());
    auto& axis = shown.field("rightAxisEdit");
    axis.setFocus();
    QTest::keyClick(&axis, Qt::Key_Up, Qt::ShiftModifier);
    BOOST_TEST(shown.field("rightEyeEdit").text().toStdString() == "-1.25 -0.50 x 95");
}

BOOST_AUTO_TEST_CASE(an_eye_that_three_fields_cannot_hold_keeps_its_text, *utf::label("PROP"))
{
    CardInWindow shown;
    shown.field("leftEyeEdit").setText(QStringLiteral("balance"));
    shown.card.setThreeFields(true);
    BOOST_TEST(shown.field("leftEyeEdit").isVisible());
    BOOST_TEST(!shown.field("leftSphereEdit").isVisible());
}

BOOST_AUTO_TEST_CASE(the_equals_key_takes_the_other_eye, *utf::label("PROP"))
{
    CardInWindow shown;
    shown.field("rightEyeEdit").setText(QStringLiteral("-1.25"));
    shown.field("leftEyeEdit").setFocus();
    QTest::keyClick(&shown.field("leftEyeEdit"), Qt::Key_Equal);
    BOOST_TEST(shown.field("leftEyeEdit").text().toStdString() == "-1.25");
}

BOOST_AUTO_TEST_CASE(what_is_read_stands_below_in_both_forms, *utf::label("PROP"))
{
    CardInWindow shown;
    auto& field = shown.field("rightEyeEdit");
    field.setFocus();
    QTest::keyClicks(&field, QStringLiteral("-1.25-.75x90"));
    QTest::keyClick(&field, Qt::Key_Tab);
    const auto& back = named<QLabel>(shown.card, "rightReadBack");
    BOOST_TEST(back.isVisible());
    BOOST_TEST(back.text().contains(QStringLiteral("-1.25 -0.75 x 90")));
    BOOST_TEST(back.text().contains(QStringLiteral("-2.00 +0.75 x 180")));
    BOOST_TEST(field.text().toStdString() == "-1.25-.75x90"); // as typed
}

BOOST_AUTO_TEST_CASE(halves_of_the_pd_are_read_from_one_field, *utf::label("PROP"))
{
    PersonRecord record;
    const auto& info = cardFields()[static_cast<std::size_t>(CardField::distancePd)];
    BOOST_TEST(!takeField(record, info, QStringLiteral("31/30.5")));
    BOOST_TEST((record.eyes.right.monocularPd == 31.0));
    BOOST_TEST((record.eyes.left.monocularPd == 30.5));
    BOOST_TEST(info.textOf(record).toStdString() == "31/30.5");
    BOOST_TEST(!takeField(record, info, QStringLiteral("62")));
    BOOST_TEST((record.distancePd == 62.0));
    BOOST_TEST(!record.eyes.right.monocularPd.has_value());
    BOOST_TEST(takeField(record, info, QStringLiteral("31/")).has_value());
}

BOOST_AUTO_TEST_CASE(repeated_readings_are_averaged_and_their_scatter_is_told,
                     *utf::label("DER") * utf::description("mean of -1.00, -1.25, -1.50 is -1.25"))
{
    EyeRecord eye;
    BOOST_TEST(!takeReadings(eye, QStringLiteral("-1.00; -1.25; -1.50")));
    BOOST_TEST_REQUIRE(eye.objective.has_value());
    BOOST_TEST(eye.objective->sphere.value() == -1.25);
    BOOST_TEST_REQUIRE(eye.repeated.has_value());
    BOOST_TEST(eye.repeated->count == 3U);
    const auto words =
        steadinessWords(QStringLiteral("-1.00; -1.25; -1.50"), QStringLiteral("-3.00"), Eye::right);
    BOOST_TEST(words.contains(QStringLiteral("-1.25")));
    BOOST_TEST(words.contains(QStringLiteral("1.75"))); // the final stands 1.75 D from the mean
    const auto said = takeReadings(eye, QStringLiteral("-1.00; x"));
    BOOST_TEST(said.has_value());
    BOOST_TEST(!takeReadings(eye, QString()));
    BOOST_TEST(!eye.objective.has_value());
}

BOOST_AUTO_TEST_CASE(a_reader_s_power_is_read_without_a_point, *utf::label("PROP"))
{
    const std::pair<const char*, double> powers[] = {{"225", 2.25}, {"2.25", 2.25},  {"2", 2.0},
                                                     {"25", 2.5},   {"+1,75", 1.75}, {"075", 0.75}};
    for (const auto& [text, power] : powers)
        BOOST_TEST((readerPower(QString::fromLatin1(text)) == power), text);
    for (const auto* text : {"", "0", "2.3", "22"})
        BOOST_TEST(!readerPower(QString::fromLatin1(text)).has_value(), text);
}

BOOST_AUTO_TEST_SUITE_END()
