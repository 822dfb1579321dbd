// SPDX-License-Identifier: GPL-3.0-or-later
// What happens beside a hand-over: papers, letter, custom order and its steps, who goes without; the
// explanation of a pair, and the plane in step with the list.
#include "app/desk/message_bar.hpp"
#include "app/desk/models/cross_model.hpp"
#include "app/desk/models/orders_model.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/models/waiting_model.hpp"
#include "app/desk/places/plane_panel.hpp"
#include "app/desk/plots/cross_view.hpp"
#include "app/desk/plots/plot_view.hpp"
#include "app/desk/theme.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTabBar>
#include <QTableView>
#include <QTest>

#include <algorithm>
#include <cmath>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
std::vector<EntryKind> kindsOf(OpenDesk& desk, const char* person)
{
    const auto camp = Camp::open(desk.folder.path().toStdString(), Ledger::Mode::readOnly);
    std::vector<EntryKind> kinds;
    for (const auto& entry : camp.ledger().entriesOfPerson(person))
        kinds.push_back(entry.kind);
    return kinds;
}

bool paperComes(OpenDesk& desk, const char* pattern)
{
    const QDir papers(desk.folder.path() + QStringLiteral("/papers"));
    return QTest::qWaitFor([&] { return papers.entryList({QLatin1String(pattern)}).size() == 1; }, 20000);
}

/// Far from anything in the small stock.
void typeStrong(OpenDesk& desk, const char* person, int age)
{
    QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
    const std::pair<const char*, QString> fields[] = {
        {"personEdit", QLatin1String(person)},     {"ageEdit", QString::number(age)},
        {"rightEyeEdit", QStringLiteral("-6.50")}, {"leftEyeEdit", QStringLiteral("-6.50")},
        {"distancePdEdit", QStringLiteral("62")},  {"vertexEdit", QStringLiteral("12")}};
    for (const auto& [name, text] : fields)
        named<QLineEdit>(desk.window, name).setText(text);
    QTest::keyClick(&named<QLineEdit>(desk.window, "distancePdEdit"), Qt::Key_Return);
}

OrdersModel& orders(OpenDesk& desk)
{
    return dynamic_cast<OrdersModel&>(*named<QTableView>(desk.window, "ordersView").model());
}

QPushButton& pushed(OpenDesk& desk, const char* name)
{
    auto& button = named<QPushButton>(desk.window, name);
    BOOST_TEST_REQUIRE(button.isEnabled(), name);
    button.click();
    return button;
}
} // namespace

BOOST_AUTO_TEST_SUITE(outcomes)

BOOST_AUTO_TEST_CASE(a_custom_order_is_entered_printed_and_led_to_its_end, *utf::label("PROP"))
{
    OpenDesk desk;
    typeStrong(desk, "O-1", 24);
    pushed(desk, "orderButton");
    BOOST_TEST((kindsOf(desk, "O-1") == std::vector{EntryKind::ordered}));
    BOOST_TEST(paperComes(desk, "lab-order-O-1-*.pdf"));
    named<QTabBar>(desk.window, "peopleTabs").setCurrentIndex(1);
    auto& find = named<QLineEdit>(desk.window, "orderFindEdit");
    QTest::keyClicks(&find, QStringLiteral("o-1"));
    BOOST_TEST_REQUIRE(orders(desk).rowCount() == 1);
    BOOST_TEST(
        !named<QPushButton>(desk.window, "orderCollectedButton").isEnabled()); // not before it was checked
    pushed(desk, "orderArrivedButton");
    pushed(desk, "orderCheckedButton");
    BOOST_TEST(!named<QPushButton>(desk.window, "orderRemadeButton").isEnabled()); // a reason is wanted
    named<QLineEdit>(desk.window, "orderNoteEdit").setText(QStringLiteral("axis off"));
    pushed(desk, "orderRemadeButton");
    pushed(desk, "orderArrivedButton");
    pushed(desk, "orderCheckedButton");
    pushed(desk, "orderCollectedButton");
    BOOST_TEST((orders(desk).orderAt(0)->state == OrderState::delivered));
    find.clear();
    BOOST_TEST(orders(desk).rowCount() == 0); // nothing is open
}

BOOST_AUTO_TEST_CASE(a_step_of_an_order_is_taken_back_with_the_same_key, *utf::label("PROP"))
{
    OpenDesk desk;
    typeStrong(desk, "O-2", 24);
    pushed(desk, "orderButton");
    named<QTabBar>(desk.window, "peopleTabs").setCurrentIndex(1);
    named<QTableView>(desk.window, "ordersView").setCurrentIndex(orders(desk).index(0, 0));
    pushed(desk, "orderArrivedButton");
    BOOST_TEST((orders(desk).orderAt(0)->state == OrderState::arrived));
    QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
    BOOST_TEST_REQUIRE(orders(desk).rowCount() == 1);
    BOOST_TEST((orders(desk).orderAt(0)->state == OrderState::ordered));
    QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
    BOOST_TEST(orders(desk).rowCount() == 0);
}

BOOST_AUTO_TEST_CASE(not_collected_ends_an_order, *utf::label("PROP"))
{
    OpenDesk desk;
    typeStrong(desk, "O-3", 24);
    pushed(desk, "orderButton");
    named<QTabBar>(desk.window, "peopleTabs").setCurrentIndex(1);
    named<QTableView>(desk.window, "ordersView").setCurrentIndex(orders(desk).index(0, 0));
    pushed(desk, "orderArrivedButton");
    pushed(desk, "orderCheckedButton");
    pushed(desk, "orderNotCollectedButton");
    BOOST_TEST(orders(desk).rowCount() == 0);
    BOOST_TEST((kindsOf(desk, "O-3").back() == EntryKind::notCollected));
}

BOOST_AUTO_TEST_CASE(a_referral_is_entered_and_its_letter_printed_beside_a_hand_over, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    BOOST_TEST(!named<QPushButton>(desk.window, "letterButton").isEnabled());
    auto& best = named<QLineEdit>(desk.window, "bestRightEdit");
    best.setText(QStringLiteral("6/24")); // worse than 6/12 with the final, and no gain by the pinhole
    for (const auto* name : {"bestLeftEdit", "pinholeRightEdit", "pinholeLeftEdit"})
        named<QLineEdit>(desk.window, name).setText(QStringLiteral("6/24"));
    QTest::keyClick(&best, Qt::Key_Return);
    pushed(desk, "letterButton");
    BOOST_TEST((kindsOf(desk, "P-1") == std::vector{EntryKind::referred}));
    BOOST_TEST(paperComes(desk, "letter-P-1-*.pdf"));
}

BOOST_AUTO_TEST_CASE(each_eye_of_an_unequal_pair_is_read_and_the_reading_judged, *utf::label("PROP"))
{
    OpenDesk desk;
    QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
    for (const auto& [name, text] :
         {std::pair{"personEdit", "U-1"}, std::pair{"ageEdit", "24"}, std::pair{"rightEyeEdit", "-3.00"},
          std::pair{"leftEyeEdit", "-4.00"}, std::pair{"distancePdEdit", "62"}})
        named<QLineEdit>(desk.window, name).setText(QLatin1String(text));
    QTest::keyClick(&named<QLineEdit>(desk.window, "distancePdEdit"), Qt::Key_Return);
    auto& view = named<QListView>(desk.window, "pairsView");
    BOOST_TEST_REQUIRE(view.model()->rowCount() > 0);
    auto& right = named<QLineEdit>(desk.window, "readRightEdit");
    BOOST_TEST_REQUIRE(right.isVisible());
    auto& check = named<QCheckBox>(desk.window, "focimeterCheck");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return,
                    Qt::ControlModifier); // goes to what is missing
    BOOST_TEST(QApplication::focusWidget() == &right);
    QTest::keyClicks(&right,
                     QStringLiteral("3")); // a power has its sign; the key is refused, and that is said
    BOOST_TEST(right.text().isEmpty());
    BOOST_TEST(named<QLabel>(desk.window, "focimeterSaid").isVisible());
    QTest::keyClicks(&right, QStringLiteral("-4.00")); // the lenses are exchanged
    QTest::keyClicks(&named<QLineEdit>(desk.window, "readLeftEdit"), QStringLiteral("-3.00"));
    BOOST_TEST(!check.isChecked());
    BOOST_TEST(named<QLabel>(desk.window, "focimeterSaid").isVisible());
    right.selectAll();
    QTest::keyClicks(&right, QStringLiteral("-3.00"));
    auto& left = named<QLineEdit>(desk.window, "readLeftEdit");
    left.selectAll();
    QTest::keyClicks(&left, QStringLiteral("-4.00"));
    BOOST_TEST(check.isChecked());
    BOOST_TEST(!named<QLabel>(desk.window, "focimeterSaid").isVisible());
    pushed(desk, "handOverButton");
    const auto camp = Camp::open(desk.folder.path().toStdString(), Ledger::Mode::readOnly);
    const auto entry = camp.ledger().lastOf(EntryKind::handedOver);
    BOOST_TEST_REQUIRE(entry.has_value());
    BOOST_TEST(entry->fields.at("read_right") == "-3.00"); // as it was read, for the audit
    BOOST_TEST(entry->fields.at("read_left") == "-4.00");
}

BOOST_AUTO_TEST_CASE(the_keys_of_handing_over_lead_on_where_nothing_is_handed_over, *utf::label("PROP"))
{
    OpenDesk desk;
    QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
    for (const auto& [name, text] :
         {std::pair{"personEdit", "U-2"}, std::pair{"ageEdit", "24"}, std::pair{"rightEyeEdit", "0.00"},
          std::pair{"leftEyeEdit", "0.00"}, std::pair{"unaidedRightEdit", "6/6"},
          std::pair{"unaidedLeftEdit", "6/6"}, std::pair{"distancePdEdit", "62"}})
        named<QLineEdit>(desk.window, name).setText(QLatin1String(text));
    QTest::keyClick(&named<QLineEdit>(desk.window, "distancePdEdit"), Qt::Key_Return);
    BOOST_TEST_REQUIRE(named<QListView>(desk.window, "pairsView").model()->rowCount() == 0);
    BOOST_TEST(!named<QPushButton>(desk.window, "orderButton").isEnabled()); // nothing is needed
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    BOOST_TEST(QApplication::focusWidget() == &named<QPushButton>(desk.window, "withoutButton"));
}

BOOST_AUTO_TEST_CASE(who_goes_without_is_entered_once_and_why, *utf::label("PROP"))
{
    OpenDesk desk;
    typeStrong(desk, "O-4", 24);
    pushed(desk, "withoutButton");
    pushed(desk, "withoutButton");
    BOOST_TEST((kindsOf(desk, "O-4") == std::vector{EntryKind::notServed}));
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1"))); // could be served
    pushed(desk, "withoutButton");
    BOOST_TEST((kindsOf(desk, "P-1") == std::vector{EntryKind::declined}));
    // The list says so, and the keys go on from there to the next person.
    const auto& list = named<QTableView>(desk.window, "waitingView");
    BOOST_TEST(QApplication::focusWidget() == &list);
    const auto& waiting = *qobject_cast<const WaitingModel*>(list.model());
    BOOST_TEST((waiting.stateAt(waiting.rowOf("P-1")) == WaitingModel::State::settled));
    QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
    BOOST_TEST((waiting.stateAt(waiting.rowOf("P-1")) == WaitingModel::State::waiting));
}

BOOST_AUTO_TEST_CASE(the_chosen_pair_is_shown_as_crosses_and_compared_with_another, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    auto& tabs = named<QTabBar>(desk.window, "whyTabs");
    tabs.setCurrentIndex(1);
    const auto& crosses = *named<QTableView>(desk.window, "crossTable").model();
    BOOST_TEST_REQUIRE(crosses.rowCount() == 6);
    BOOST_TEST(crosses.index(0, CrossModel::higherColumn).data(CrossModel::rawRole).toDouble() == -1.25);
    BOOST_TEST(crosses.index(2, CrossModel::higherColumn).data(CrossModel::rawRole).toDouble() == 0.0);
    tabs.setCurrentIndex(2);
    auto& other = named<QComboBox>(desk.window, "otherPairBox");
    BOOST_TEST_REQUIRE(other.count() >= 2);
    const auto first = named<QLabel>(desk.window, "aboveLabel").text();
    BOOST_TEST(first.contains(QStringLiteral("D-125")));
    other.setCurrentIndex(1);
    BOOST_TEST(named<QLabel>(desk.window, "aboveLabel").text().toStdString() != first.toStdString());
}

BOOST_AUTO_TEST_CASE(pointing_in_the_plane_marks_the_pair_of_the_list_and_a_click_chooses_it,
                     *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    auto& view = named<QListView>(desk.window, "pairsView");
    auto& plane = named<PlotView>(desk.window, "powerPlane");
    Q_EMIT plane.pairPointedAt(1);
    BOOST_TEST(view.model()->index(1, 0).data(PairsModel::pointedRole).toBool());
    Q_EMIT plane.pairPointedAt(-1);
    BOOST_TEST(!view.model()->index(1, 0).data(PairsModel::pointedRole).toBool());
    Q_EMIT plane.pairChosen(1);
    BOOST_TEST(view.currentIndex().row() == 1);
    QTest::keyClick(&desk.window, Qt::Key_Up, Qt::ControlModifier);
    BOOST_TEST(view.currentIndex().row() == 0);
    QTest::keyClick(&desk.window, Qt::Key_Down, Qt::ControlModifier);
    BOOST_TEST(view.currentIndex().row() == 1);
}

BOOST_AUTO_TEST_CASE(the_nearest_pair_within_reach_is_found_in_the_plane, *utf::label("PROP"))
{
    SmallAnswer small;
    const auto picture = planeOf(small.answer, small.stock, small.rules.find(small.answer.profile), nullptr);
    BOOST_TEST_REQUIRE(!picture.pairs.empty());
    const auto& first = picture.pairs.front();
    BOOST_TEST_REQUIRE(first.eyes.size() == 2U);
    BOOST_TEST(pairNear(picture, first.eyes[0].at, 0.05) == 0);
    BOOST_TEST(pairNear(picture, {9.0, 9.0}, 0.05) == -1);
}

BOOST_AUTO_TEST_CASE(letters_of_eyes_that_stand_close_are_pushed_apart_and_the_eyes_stay, *utf::label("PROP"))
{
    SmallAnswer small; // -1.25 and -1.25 in M, 0.25 apart in astigmatism
    const auto picture = planeOf(small.answer, small.stock, nullptr, nullptr);
    BOOST_TEST_REQUIRE(picture.eyes.size() == 2U);
    const auto& first = picture.eyes[0];
    const auto& second = picture.eyes[1];
    const double apart = std::hypot(first.letter.mean - second.letter.mean,
                                    first.letter.astigmatism - second.letter.astigmatism);
    BOOST_TEST(apart >= 0.1 * (picture.mean.most - picture.mean.least) - 1e-9);
    BOOST_TEST(std::abs(first.at.astigmatism - second.at.astigmatism) < apart);
}

BOOST_AUTO_TEST_CASE(whatever_takes_the_keyboard_is_a_target_of_twenty_four_pixels,
                     *utf::label("REF") * utf::description("WCAG 2.2, 2.5.8"))
{
    applyTheme(*qApp, Theme::light); // the sizes are those of the style sheet
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-3")));
    for (const int page : {1, 2, 0}) {
        named<QTabBar>(desk.window, "peopleTabs").setCurrentIndex(page);
        QTest::qWait(0);
        for (const auto* widget : named<QWidget>(desk.window, "dispensePlace").findChildren<QWidget*>())
            if (widget->focusPolicy() != Qt::NoFocus && widget->isVisible() &&
                !widget->objectName().isEmpty() && !widget->objectName().startsWith(QStringLiteral("qt_")))
                BOOST_TEST(std::min(widget->width(), widget->height()) >= 24,
                           widget->objectName().toStdString()
                               << " " << widget->width() << " x " << widget->height());
    }
}

BOOST_AUTO_TEST_CASE(the_power_stands_ninety_degrees_from_the_axis,
                     *utf::label("DER") *
                         utf::description("-1.00 x 90 acts along 180: -1.00 stands to the right"))
{
    const auto cross = crossOf(toPowerVector({Dioptres{0.0}, Dioptres{-1.0}, AxisDegrees{90}}));
    BOOST_TEST(std::abs(cross.principal.lower + 1.0) < 1e-9);
    const auto arms = armsOf(cross);
    BOOST_TEST(std::abs(arms.lower.x() - 1.0) < 1e-9);
    BOOST_TEST(std::abs(arms.lower.y()) < 1e-9);
    BOOST_TEST(std::abs(arms.higher.y() + 1.0) < 1e-9); // screen: up is negative
}

BOOST_AUTO_TEST_CASE(the_models_of_orders_and_crosses_keep_the_contract_of_models, *utf::label("PROP"))
{
    OrdersModel ordersModel;
    new QAbstractItemModelTester(&ordersModel, QAbstractItemModelTester::FailureReportingMode::Fatal,
                                 &ordersModel);
    Order open{"id-1", "A-1", "site", OrderState::arrived, 1, {}, 5, 9, "id-2"};
    Order closed{"id-3", "A-2", "site", OrderState::delivered, 0, {}, 5, 8, "id-4"};
    ordersModel.show({closed, open}, {});
    BOOST_TEST(ordersModel.rowCount() == 1);
    ordersModel.show({closed, open}, QStringLiteral("a-"));
    BOOST_TEST(ordersModel.rowCount() == 2);
    BOOST_TEST(ordersModel.orderAt(0)->id == "id-1"); // changed last
    BOOST_TEST(ordersModel.rowOf("id-3") == 1);
    CrossModel crosses;
    new QAbstractItemModelTester(&crosses, QAbstractItemModelTester::FailureReportingMode::Fatal, &crosses);
    PerEye<std::optional<EyeCrosses>> eyes;
    eyes.left = EyeCrosses{crossOf({-1.0, 0.0, 0.0}), crossOf({-1.25, 0.0, 0.0}), crossOf({-0.25, 0.0, 0.0})};
    crosses.show(eyes);
    BOOST_TEST(crosses.rowCount() == 3);
    crosses.clear();
    BOOST_TEST(crosses.rowCount() == 0);
}

BOOST_AUTO_TEST_SUITE_END()
