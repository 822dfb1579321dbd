// SPDX-License-Identifier: GPL-3.0-or-later
// What opening a camp finds is told where people look, and a ledger that moved is settled at the desk.
#include "app/desk/shell/camp_notes.hpp"
#include "app/desk/shell/pin_guard.hpp"
#include "app/session/pins.hpp"
#include "tests/desk/given_camp.hpp"

#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
/// A camp in which something was handed over, copied to another place.
struct CopiedCamp {
    explicit CopiedCamp(bool guarded = false)
    {
        if (guarded) {
            auto camp = Camp::open(given.folder.path().toStdString(), Ledger::Mode::readWrite);
            setPin(camp.ledger(), Role::supervisor, "supervisor 333");
        }
        for (const auto& name : QDir(given.folder.path()).entryList(QDir::Files))
            BOOST_TEST_REQUIRE(QFile::copy(given.folder.path() + QLatin1Char('/') + name, path(name)));
        window.resize(1366, 768);
        window.show();
        BOOST_TEST_REQUIRE(QTest::qWaitForWindowExposed(&window));
        window.activateWindow();
        BOOST_TEST_REQUIRE(window.openCamp(place.path()));
    }
    [[nodiscard]] QString path(const QString& name) const { return place.filePath(name); }
    [[nodiscard]] bool seen(const char* name) { return named<QWidget>(window, name).isVisible(); }
    [[nodiscard]] bool writable()
    {
        return Camp::open(place.path().toStdString(), Ledger::Mode::readWrite).ledger().writable();
    }

    const GivenCamp given;
    const QTemporaryDir place;
    DeskWindow window;
};
} // namespace

BOOST_AUTO_TEST_SUITE(camp_notes)

BOOST_AUTO_TEST_CASE(a_camp_in_order_has_no_notes, *utf::label("PROP"))
{
    OpenDesk desk;
    QTest::qWait(200); // the look at the last entries ends
    BOOST_TEST(!named<QWidget>(desk.window, "campNotes").isVisible());
}

BOOST_AUTO_TEST_CASE(a_ledger_that_moved_is_told_and_settled, *utf::label("PROP"))
{
    for (const auto* button : {"movedHereButton", "secondStationButton"}) {
        CopiedCamp copied;
        BOOST_TEST_REQUIRE(copied.seen("campNotes"));
        BOOST_TEST(
            named<QLabel>(copied.window, "campNotesText").text().contains(QStringLiteral("another place")));
        BOOST_TEST(!copied.writable());
        auto& settles = named<QPushButton>(copied.window, button);
        settles.setFocus();
        QTest::keyClick(&settles, Qt::Key_Space);
        BOOST_TEST(!copied.seen("campNotes"));
        BOOST_TEST(copied.writable());
    }
}

BOOST_AUTO_TEST_CASE(the_supervisor_is_asked_before_it_is_settled, *utf::label("PROP"))
{
    CopiedCamp copied(true);
    named<QPushButton>(copied.window, "movedHereButton").click();
    BOOST_TEST_REQUIRE(copied.seen("pinStrip"));
    BOOST_TEST(!copied.writable());
    auto& pin = named<QLineEdit>(copied.window, "pinEdit");
    QTest::keyClicks(&pin, QStringLiteral("supervisor 333"));
    QTest::keyClick(&pin, Qt::Key_Return);
    BOOST_TEST(!copied.seen("campNotes"));
    BOOST_TEST(copied.writable());
}

BOOST_AUTO_TEST_CASE(a_last_entry_that_was_changed_is_told_soon_after_opening, *utf::label("PROP"))
{
    const GivenCamp given;
    given.changeWords();
    DeskWindow window;
    window.show();
    BOOST_TEST_REQUIRE(window.openCamp(given.folder.path()));
    auto& notes = named<QWidget>(window, "campNotes");
    BOOST_TEST(QTest::qWaitFor([&notes] { return notes.isVisible(); }, 10'000));
    BOOST_TEST(
        named<QLabel>(window, "campNotesText").text().contains(QStringLiteral("not as it was written")));
    named<QPushButton>(window, "putNotesAwayButton").click();
    BOOST_TEST(!notes.isVisible());
}

BOOST_AUTO_TEST_CASE(counts_edited_by_hand_are_told_until_they_are_settled, *utf::label("PROP"))
{
    const CampFolder folder;
    {
        (void)Camp::open(folder.path().toStdString(), Ledger::Mode::readWrite);
    }
    auto stock = folder.read(QStringLiteral("stock.yaml"));
    const auto at = stock.indexOf("on hand: ") + 9;
    stock[at] = stock[at] == '1' ? '2' : '1';
    folder.write(QStringLiteral("stock.yaml"), stock);
    DeskWindow window;
    window.show();
    BOOST_TEST_REQUIRE(window.openCamp(folder.path()));
    BOOST_TEST(named<QLabel>(window, "campNotesText").text().contains(QStringLiteral("edited by hand")));
    BOOST_TEST(!named<QWidget>(window, "movedHereButton").isVisible());
    window.showPlace(DeskWindow::Place::stock);
    named<QPushButton>(window, "discardEditsButton").click();
    BOOST_TEST(!named<QWidget>(window, "campNotes").isVisible());
}

BOOST_AUTO_TEST_SUITE_END()
