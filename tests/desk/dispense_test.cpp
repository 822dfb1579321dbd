// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/message_bar.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/models/waiting_model.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTableView>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
void type(OpenDesk& desk, const char* name, const char* text)
{
    auto& field = named<QLineEdit>(desk.window, name);
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, QLatin1String(text));
}

void typePerson(OpenDesk& desk, const char* person, const char* right, const char* left)
{
    QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
    type(desk, "personEdit", person);
    type(desk, "ageEdit", "24");
    type(desk, "rightEyeEdit", right);
    type(desk, "leftEyeEdit", left);
    type(desk, "distancePdEdit", "62");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
}

QAbstractItemModel& pairs(OpenDesk& desk)
{
    return *named<QListView>(desk.window, "pairsView").model();
}

std::string pulled(OpenDesk& desk, int row)
{
    return pairs(desk).index(row, PairsModel::pullColumn).data(PairsModel::rawRole).toString().toStdString();
}
} // namespace

BOOST_AUTO_TEST_SUITE(dispense)

BOOST_AUTO_TEST_CASE(without_a_folder_the_window_offers_to_open_one, *utf::label("PROP"))
{
    DeskWindow window;
    window.show();
    BOOST_TEST_REQUIRE(QTest::qWaitForWindowExposed(&window));
    BOOST_TEST(named<QPushButton>(window, "emptyOpenButton").isVisible());
    BOOST_TEST(!window.findChild<QWidget*>(QStringLiteral("dispensePlace"))); // not made before it is wanted
    BOOST_TEST(!window.findChild<QPushButton*>(QStringLiteral("newPersonButton")));
}

BOOST_AUTO_TEST_CASE(a_folder_that_cannot_be_opened_is_said_in_the_window_with_a_code, *utf::label("PROP"))
{
    DeskWindow window;
    BOOST_TEST(!window.openCamp(QStringLiteral("/no-such-folder")));
    BOOST_TEST(!window.messages().code().isEmpty());
    BOOST_TEST(!window.messages().text().isEmpty());
}

BOOST_AUTO_TEST_CASE(the_code_of_somebody_waiting_takes_the_whole_card, *utf::label("PROP"))
{
    for (const auto key : {Qt::Key_Return, Qt::Key_Tab}) {
        OpenDesk desk;
        QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
        QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("P-1"));
        QTest::keyClick(QApplication::focusWidget(), key);
        BOOST_TEST(!named<QLineEdit>(desk.window, "rightEyeEdit").text().isEmpty());
        BOOST_TEST(pairs(desk).rowCount() > 0);
        // A code nobody has is somebody new, and what else was typed is not written over.
        QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
        type(desk, "rightEyeEdit", "-2.00");
        type(desk, "personEdit", "P-1");
        QTest::keyClick(QApplication::focusWidget(), key);
        BOOST_TEST(named<QLineEdit>(desk.window, "rightEyeEdit").text().toStdString() == "-2.00");
    }
}

BOOST_AUTO_TEST_CASE(a_typed_prescription_is_matched_and_handed_over_and_the_stock_goes_down,
                     *utf::label("PROP"))
{
    OpenDesk desk;
    typePerson(desk, "T-1", "-1.25", "-1.25");
    BOOST_TEST_REQUIRE(pairs(desk).rowCount() > 0);
    BOOST_TEST(pulled(desk, 0) == "D-125");
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
    BOOST_TEST(desk.folder.onHand("D-125") == 1);
    BOOST_TEST(desk.window.messages().isVisible());
    BOOST_TEST(desk.window.messages().code().toStdString() == "");
    const auto told = desk.window.messages().text();
    BOOST_TEST(told.contains(QStringLiteral("T-1")));
    BOOST_TEST(told.contains(QStringLiteral("1 left")));
    BOOST_TEST(told.contains(QStringLiteral("B1"))); // D-100 was the neighbour to fetch: back to its bin
}

BOOST_AUTO_TEST_CASE(handing_over_twice_takes_one_pair_only, *utf::label("PROP"))
{
    OpenDesk desk;
    typePerson(desk, "T-1", "-1.25", "-1.25");
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
    BOOST_TEST(desk.folder.onHand("D-125") == 1);
    BOOST_TEST(!named<QPushButton>(desk.window, "handOverButton").isEnabled());
}

BOOST_AUTO_TEST_CASE(taking_back_restores_the_stock_and_the_person, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    auto& waiting = dynamic_cast<WaitingModel&>(*named<QTableView>(desk.window, "waitingView").model());
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
    BOOST_TEST_REQUIRE(desk.folder.onHand("D-125") == 1);
    BOOST_TEST((waiting.stateAt(0) == WaitingModel::State::given));
    QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
    BOOST_TEST(desk.folder.onHand("D-125") == 2);
    BOOST_TEST((waiting.stateAt(0) == WaitingModel::State::waiting));
    BOOST_TEST(named<QPushButton>(desk.window, "handOverButton").isEnabled());
    BOOST_TEST(!named<QPushButton>(desk.window, "undoButton").isEnabled());
}

BOOST_AUTO_TEST_CASE(who_was_served_before_is_known_when_the_folder_is_opened_again, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
    BOOST_TEST_REQUIRE(desk.window.openCamp(desk.folder.path()));
    auto& waiting = dynamic_cast<WaitingModel&>(*named<QTableView>(desk.window, "waitingView").model());
    BOOST_TEST((waiting.stateAt(0) == WaitingModel::State::given));
    BOOST_TEST(!named<QPushButton>(desk.window, "undoButton").isEnabled());
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1"))); // still today: it can be taken back
    BOOST_TEST_REQUIRE(named<QPushButton>(desk.window, "undoButton").isEnabled());
    QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
    BOOST_TEST(desk.folder.onHand("D-125") == 2);
}

BOOST_AUTO_TEST_CASE(a_pair_on_trial_waits_for_the_acuity_with_it, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);  // somebody was served before
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-3"))); // cylinder 1.00, stock of spheres
    BOOST_TEST_REQUIRE(pairs(desk).rowCount() > 0);
    BOOST_TEST_REQUIRE(
        (static_cast<Band>(pairs(desk).index(0, 0).data(PairsModel::bandRole).toInt()) == Band::onTrial));
    auto& button = named<QPushButton>(desk.window, "handOverButton");
    auto& right = named<QLineEdit>(desk.window, "trialRightEdit");
    BOOST_TEST(right.isVisible());
    BOOST_TEST(!button.isEnabled());
    for (const char* name : {"personEdit", "waitingView", "pairsView"}) { // from wherever one is
        named<QWidget>(desk.window, name).setFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
        BOOST_TEST(right.hasFocus(), name);
    }
    type(desk, "trialRightEdit", "6/7.5");
    type(desk, "trialLeftEdit", "6/7.5");
    BOOST_TEST(button.isEnabled());
    const auto band = [&] {
        return static_cast<Band>(pairs(desk).index(0, 0).data(PairsModel::bandRole).toInt());
    };
    BOOST_TEST((band() == Band::fits || band() == Band::caution));
    BOOST_TEST(right.isVisible());
    type(desk, "trialLeftEdit", "6/60");
    BOOST_TEST(!button.isEnabled());
    BOOST_TEST((band() == Band::fails));
}

BOOST_AUTO_TEST_CASE(on_trial_for_near_the_near_acuity_alone_is_asked_for, *utf::label("PROP"))
{
    OpenDesk desk;
    QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
    for (const auto& [name, text] :
         {std::pair{"personEdit", "T-9"}, std::pair{"ageEdit", "60"},
          std::pair{"rightEyeEdit", "+0.75 -1.25 x 10"}, std::pair{"leftEyeEdit", "+0.75 -1.25 x 10"},
          std::pair{"distancePdEdit", "62"}, std::pair{"additionEdit", "+2.00"}})
        type(desk, name, text);
    auto& purpose = named<QComboBox>(desk.window, "purposeBox");
    purpose.setCurrentIndex(purpose.findData(static_cast<int>(Purpose::near)));
    QTest::keyClick(&named<QLineEdit>(desk.window, "ageEdit"), Qt::Key_Return);
    BOOST_TEST_REQUIRE(pairs(desk).rowCount() > 0);
    BOOST_TEST_REQUIRE(named<QLineEdit>(desk.window, "trialNearEdit").isVisible());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    BOOST_TEST(named<QLineEdit>(desk.window, "trialNearEdit").hasFocus());
}

BOOST_AUTO_TEST_CASE(a_pair_outside_a_limit_asks_for_a_reason_under_the_checks, *utf::label("PROP"))
{
    OpenDesk desk;
    typePerson(desk, "T-2", "-1.25", "-1.25");
    auto& view = named<QListView>(desk.window, "pairsView");
    const auto* model = qobject_cast<PairsModel*>(view.model());
    BOOST_TEST_REQUIRE(model->rankedCount() < model->rowCount());
    view.setCurrentIndex(model->index(model->rankedCount(), 0));
    auto& button = named<QPushButton>(desk.window, "handOverButton");
    BOOST_TEST(!button.isEnabled());
    BOOST_TEST(named<QLabel>(desk.window, "objectionsLabel").isVisible());
    BOOST_TEST_REQUIRE(named<QLineEdit>(desk.window, "reasonEdit").isVisible());
    type(desk, "reasonEdit", "spare for the workshop");
    BOOST_TEST(button.isEnabled());
    BOOST_TEST(named<QLabel>(desk.window, "objectionsLabel").isVisible());
}

BOOST_AUTO_TEST_CASE(two_purposes_are_two_answers_each_with_its_own_pairs, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-2")));
    auto& tabs = named<QWidget>(desk.window, "purposeTabs");
    BOOST_TEST(tabs.isVisible());
    BOOST_TEST_REQUIRE(pairs(desk).rowCount() > 0);
    BOOST_TEST(pulled(desk, 0) == "D-100");
}

BOOST_AUTO_TEST_CASE(a_row_that_cannot_be_read_is_listed_and_its_complaint_said, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST(!desk.window.choosePerson(QStringLiteral("P-4")));
    BOOST_TEST(desk.window.messages().isVisible());
    BOOST_TEST(desk.window.messages().text().contains(QStringLiteral("people.csv:5")));
}

BOOST_AUTO_TEST_CASE(changing_a_field_puts_the_old_answer_away, *utf::label("PROP"))
{
    OpenDesk desk;
    typePerson(desk, "T-3", "-1.25", "-1.25");
    BOOST_TEST_REQUIRE(pairs(desk).rowCount() > 0);
    type(desk, "leftEyeEdit", "-1.50");
    BOOST_TEST(pairs(desk).rowCount() == 0);
    BOOST_TEST(!named<QPushButton>(desk.window, "handOverButton").isEnabled());
}

BOOST_AUTO_TEST_SUITE_END()
