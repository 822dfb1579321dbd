// SPDX-License-Identifier: GPL-3.0-or-later
// The desk asks for a PIN where the command line does: each kind of act, once for a while, and never with
// anything done before the PIN is right.
#include "app/desk/message_bar.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/bench_panel.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/shell/pin_guard.hpp"
#include "app/desk/theme.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
constexpr const char* pins[] = {"optician 1", "keeper 22", "supervisor 333"};

/// Every role has a PIN.
struct GuardedDesk : OpenDesk {
    GuardedDesk()
    {
        auto camp = Camp::open(folder.path().toStdString(), Ledger::Mode::readWrite);
        for (const auto role : allRoles)
            setPin(camp.ledger(), role, pins[static_cast<int>(role)]);
        window.activateWindow();
    }
    QWidget& strip() { return named<QWidget>(window, "pinStrip"); }
    std::string asked()
    {
        return strip().isVisible() ? named<QLabel>(window, "pinQuestion").text().toStdString() : "";
    }
    void type(const char* pin)
    {
        auto& edit = named<QLineEdit>(window, "pinEdit");
        BOOST_TEST_REQUIRE(edit.hasFocus());
        QTest::keyClicks(&edit, QLatin1String(pin));
        QTest::keyClick(&edit, Qt::Key_Return);
    }
    void type(Role role) { type(pins[static_cast<int>(role)]); }
    void choose(const char* name, int index)
    {
        auto& box = named<QComboBox>(window, name);
        box.setCurrentIndex(index);
        Q_EMIT box.activated(index);
    }
    void write(const char* name, const char* text)
    {
        named<QLineEdit>(window, name).setText(QLatin1String(text));
    }
    void press(const char* name) { named<QPushButton>(window, name).click(); }
    std::size_t entries()
    {
        return Camp::open(folder.path().toStdString(), Ledger::Mode::readOnly)
            .ledger()
            .entriesAfter(0)
            .size();
    }
    std::string code() { return window.messages().code().toStdString(); }
    std::string said() { return window.messages().text().toStdString(); }
    /// `act` asks this role, does nothing with another PIN or none, and what it should with the right one.
    template <class Act>
    void asks(Role role, const char* name, Act act)
    {
        BOOST_TEST_CONTEXT(name)
        {
            window.pins().forget();
            const auto before = entries();
            act();
            BOOST_TEST(asked() == "This needs the PIN of the " + std::string(wordOf(role)) + ".");
            BOOST_TEST(!named<QWidget>(window, "prescriptionCard").isEnabled());
            type("not this");
            BOOST_TEST(code() == "pin-wrong");
            BOOST_TEST(named<QLineEdit>(window, "pinEdit").text().toStdString() ==
                       ""); // not left on the screen
            BOOST_TEST(entries() == before);
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
            BOOST_TEST(!strip().isVisible());
            BOOST_TEST(entries() == before);
            act();
            type(role);
            BOOST_TEST(!strip().isVisible());
            BOOST_TEST(code() == "");
            BOOST_TEST(entries() == before + 1);
        }
    }
    void person(const char* code)
    {
        window.showPlace(DeskWindow::Place::dispense);
        BOOST_TEST_REQUIRE(window.choosePerson(QLatin1String(code)));
    }
    void work(int kind, const char* pieces)
    {
        window.showPlace(DeskWindow::Place::stock);
        BOOST_TEST_REQUIRE(window.stock().chooseLine("D-150"));
        named<QComboBox>(window, "stockWorkBox").setCurrentIndex(kind);
        named<QComboBox>(window, "causeBox").setCurrentIndex(1);
        write("stockQuantityEdit", pieces);
        write("stockWordsEdit", "why");
        write("stockInitialsEdit", "AB");
        write("stockSecondEdit", "CD");
        press("stockEnterButton");
    }
};
} // namespace

BOOST_AUTO_TEST_SUITE(pins_of_the_desk)

BOOST_AUTO_TEST_CASE(what_is_entered_about_a_line_needs_the_keeper, *utf::label("PROP"))
{
    GuardedDesk desk;
    const std::pair<const char*, const char*> works[] = {
        {"receive", "3"}, {"count", "2"},      {"write off", "1"}, {"hold", "1"},
        {"let go", "1"},  {"quarantine", "1"}, {"release", "1"}};
    int kind = 0;
    for (const auto& [name, pieces] : works) {
        desk.asks(Role::keeper, name, [&, kind, pieces = pieces] { desk.work(kind, pieces); });
        ++kind;
    }
    desk.asks(Role::optician, "take back", [&] { desk.press("stockUndoButton"); });
}

BOOST_AUTO_TEST_CASE(counts_edited_by_hand_need_the_keeper, *utf::label("PROP"))
{
    for (const bool accept : {true, false}) {
        GuardedDesk desk;
        auto text = desk.folder.read(QStringLiteral("stock.yaml"));
        desk.folder.write(QStringLiteral("stock.yaml"),
                          text.replace("bin: B3, on hand: 5", "bin: B3, on hand: 6"));
        BOOST_TEST_REQUIRE(desk.window.openCamp(desk.folder.path()));
        desk.window.showPlace(DeskWindow::Place::stock);
        desk.write("editsReasonEdit", "one more lay there");
        desk.press(accept ? "acceptEditsButton" : "discardEditsButton");
        BOOST_TEST(desk.asked() == "This needs the PIN of the keeper.");
        desk.type("not this");
        BOOST_TEST(desk.code() == "pin-wrong");
        BOOST_TEST(named<QWidget>(desk.window, "editsFrame").isVisible());
        desk.type(Role::keeper);
        BOOST_TEST(!named<QWidget>(desk.window, "editsFrame").isVisible());
        BOOST_TEST(desk.folder.onHand("D-150") == (accept ? 6 : 5));
    }
}

BOOST_AUTO_TEST_CASE(hand_overs_letters_orders_and_going_without_need_the_optician, *utf::label("PROP"))
{
    GuardedDesk desk;
    desk.person("P-1");
    desk.asks(Role::optician, "hand over", [&] { desk.press("handOverButton"); });
    desk.asks(Role::optician, "take back", [&] { desk.press("undoButton"); });
    desk.person("P-3");
    desk.asks(Role::optician, "order", [&] { desk.press("orderButton"); });
    desk.asks(Role::optician, "without", [&] { desk.press("withoutButton"); });
    desk.window.dispense().showPeoplePage(DispensePlace::ordersPage);
    desk.asks(Role::optician, "order arrived", [&] { desk.press("orderArrivedButton"); });
}

BOOST_AUTO_TEST_CASE(lots_for_the_bench_need_the_supervisor, *utf::label("PROP"))
{
    GuardedDesk desk;
    desk.person("P-1");
    desk.press("handOverButton");
    desk.type(Role::optician);
    desk.window.showPlace(DeskWindow::Place::audit);
    desk.window.audit().waitForAudit();
    desk.window.audit().showView(2);
    auto* bench = desk.window.findChild<BenchPanel*>();
    const auto sheet = desk.folder.path() + QStringLiteral("/sheet.csv");
    desk.asks(Role::supervisor, "draw", [&] { bench->draw(1, sheet); });
    BOOST_TEST(QFile::exists(sheet));
    auto rows = desk.folder.read(QStringLiteral("sheet.csv"));
    desk.window.pins().forget();
    bench->readSheet(sheet);
    BOOST_TEST(desk.asked() == "This needs the PIN of the supervisor.");
}

BOOST_AUTO_TEST_CASE(settings_for_everybody_need_the_supervisor_and_show_what_is_kept, *utf::label("PROP"))
{
    GuardedDesk desk;
    desk.window.showSettings();
    desk.choose("profileBox", 1);
    BOOST_TEST(desk.asked() == "This needs the PIN of the supervisor.");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    BOOST_TEST(named<QComboBox>(desk.window, "profileBox").currentIndex() == 0);
    BOOST_TEST(!QFile::exists(desk.folder.path() + QStringLiteral("/desk.yaml")));
    desk.choose("profileBox", 1);
    desk.type(Role::supervisor);
    BOOST_TEST(desk.folder.read(QStringLiteral("desk.yaml")).contains("profile"));
    desk.choose("lookBox", 0); // of this laptop: nobody is asked
    BOOST_TEST(desk.asked() == "");
}

BOOST_AUTO_TEST_CASE(a_pin_is_good_until_the_place_is_left_or_nobody_acted_for_a_while, *utf::label("PROP"))
{
    GuardedDesk desk;
    desk.work(0, "1");
    desk.type(Role::keeper);
    desk.work(0, "1"); // asked once
    BOOST_TEST(desk.asked() == "");
    desk.window.showPlace(DeskWindow::Place::dispense);
    desk.work(0, "1");
    BOOST_TEST(desk.asked() != "");
    desk.window.pins().rememberFor(std::chrono::milliseconds(1));
    desk.type(Role::keeper);
    QTest::qWait(50);
    desk.work(0, "1");
    BOOST_TEST(desk.asked() != "");
    desk.window.showPlace(DeskWindow::Place::dispense); // left with the question open: it goes, undone
    BOOST_TEST(desk.asked() == "");
    BOOST_TEST(desk.folder.onHand("D-150") == 5 + 3);
    BOOST_TEST(named<QWidget>(desk.window, "prescriptionCard").isEnabled());
}

BOOST_AUTO_TEST_CASE(the_keyboard_comes_back_and_the_strip_has_its_help_and_keys, *utf::label("PROP"))
{
    applyTheme(*qApp, Theme::light);
    GuardedDesk desk;
    desk.person("P-1");
    auto& field = named<QLineEdit>(desk.window, "initialsEdit");
    field.setFocus();
    QTest::keyClick(&field, Qt::Key_Return, Qt::ControlModifier);
    BOOST_TEST(desk.asked() != "");
    for (const auto* name : {"pinEdit", "pinGoOnButton", "pinLeaveButton"}) {
        BOOST_TEST(!named<QWidget>(desk.window, name).toolTip().isEmpty(), name);
        BOOST_TEST(named<QWidget>(desk.window, name).height() >= 24, name);
    }
    BOOST_TEST(desk.strip().property("helpTopic").toString().toStdString() == "privacy");
    desk.press("pinLeaveButton");
    BOOST_TEST(field.hasFocus());
    BOOST_TEST(desk.said().find("PIN") == std::string::npos);
}

BOOST_AUTO_TEST_CASE(without_pins_nobody_is_asked, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    named<QPushButton>(desk.window, "handOverButton").click();
    BOOST_TEST(!named<QWidget>(desk.window, "pinStrip").isVisible());
    BOOST_TEST(desk.folder.onHand("D-125") == 1);
}

BOOST_AUTO_TEST_SUITE_END()
