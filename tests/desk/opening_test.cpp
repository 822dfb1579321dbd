// SPDX-License-Identifier: GPL-3.0-or-later
// The ways to begin: the sample, a camp of one's own, a folder, the camp opened last; and the practice.
#include "app/desk/desk_program.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/lines_model.hpp"
#include "app/desk/opening/practice.hpp"
#include "app/desk/opening/sample_camp.hpp"
#include "app/desk/theme.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
struct EmptyDesk {
    EmptyDesk()
    {
        window.resize(1366, 768);
        window.show();
        BOOST_TEST_REQUIRE(QTest::qWaitForWindowExposed(&window));
    }
    void press(const char* button) { named<QPushButton>(window, button).click(); }
    void write(const char* field, const char* text)
    {
        auto& edit = named<QLineEdit>(window, field);
        edit.setFocus();
        edit.selectAll();
        QTest::keyClicks(&edit, QLatin1String(text));
    }
    DeskWindow window;
};

std::string textOf(DeskWindow& window, const char* label)
{
    return named<QLabel>(window, label).text().toStdString();
}
} // namespace

BOOST_AUTO_TEST_SUITE(opening)

BOOST_AUTO_TEST_CASE(tab_comes_to_each_way_to_begin_and_enter_takes_it, *utf::label("PROP"))
{
    applyTheme(*qApp, Theme::light, 100);
    EmptyDesk desk;
    // Keys as they come to the window: a page with a focus proxy can be jumped over, which the chain of
    // widgets alone does not show.
    QStringList reached;
    for (int press = 0; press < 12; ++press) {
        reached << QApplication::focusWidget()->objectName();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    for (const char* way :
         {"practiceButton", "openSampleButton", "sampleAfreshButton", "startOwnButton", "emptyOpenButton"})
        BOOST_TEST(reached.contains(QLatin1String(way)), way);
    named<QPushButton>(desk.window, "startOwnButton").setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    BOOST_TEST(named<QWidget>(desk.window, "trayPage").isVisible());
}

BOOST_AUTO_TEST_CASE(the_sample_opens_as_a_copy_and_says_so_everywhere, *utf::label("PROP"))
{
    EmptyDesk desk;
    desk.press("openSampleButton");
    BOOST_TEST(desk.window.campFolder().toStdString() == sampleFolder().toStdString());
    BOOST_TEST(named<QLabel>(desk.window, "sampleLabel").isVisible());
    BOOST_TEST(desk.window.windowTitle().contains(QStringLiteral("SAMPLE")));
    BOOST_TEST(textOf(desk.window, "siteLabel").find("SAMPLE") != std::string::npos); // and so every paper
    for (const auto place : {DeskWindow::Place::dispense, DeskWindow::Place::stock}) {
        desk.window.showPlace(place);
        BOOST_TEST(named<QLabel>(desk.window, "sampleLabel").isVisible());
    }
    CampFolder other;
    BOOST_TEST(desk.window.openCamp(other.path()));
    BOOST_TEST(!named<QLabel>(desk.window, "sampleLabel").isVisible());
    BOOST_TEST(!desk.window.windowTitle().contains(QStringLiteral("SAMPLE")));
}

BOOST_AUTO_TEST_CASE(begun_anew_the_sample_forgets_what_was_done_in_it, *utf::label("PROP"))
{
    EmptyDesk desk;
    desk.press("openSampleButton");
    const auto whole = textOf(desk.window, "summaryLabel");
    for (const auto& [field, text] :
         {std::pair{"personEdit", "X-2"}, std::pair{"ageEdit", "30"}, std::pair{"rightEyeEdit", "-1.25"},
          std::pair{"leftEyeEdit", "-1.25"}, std::pair{"distancePdEdit", "62"}})
        desk.write(field, text);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
    BOOST_TEST(textOf(desk.window, "summaryLabel") != whole);
    QTest::keyClick(&desk.window, Qt::Key_O, Qt::ControlModifier);
    desk.press("sampleAfreshButton");
    BOOST_TEST(textOf(desk.window, "summaryLabel") == whole);
}

BOOST_AUTO_TEST_CASE(the_practice_goes_on_as_each_step_is_done, *utf::label("PROP"))
{
    EmptyDesk desk;
    desk.press("practiceButton");
    auto& practice = desk.window.practice();
    BOOST_TEST_REQUIRE(practice.running());
    BOOST_TEST(named<QLabel>(desk.window, "practiceWords").isVisible());
    const auto reached = [&practice](int step) {
        return QTest::qWaitFor([&] { return practice.step() == step; }, 3000);
    };
    QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
    desk.write("personEdit", "X-1");
    BOOST_TEST(reached(1));
    desk.write("ageEdit", "30");
    BOOST_TEST(reached(2));
    desk.write("rightEyeEdit", "-1.25");
    desk.write("leftEyeEdit", "-1.25");
    BOOST_TEST(reached(3));
    desk.write("distancePdEdit", "62");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    BOOST_TEST(reached(4));
    for (const auto* check : {"focimeterCheck", "fitCheck", "acuityCheck", "instructionsCheck"})
        named<QCheckBox>(desk.window, check).setChecked(true);
    BOOST_TEST(reached(5));
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
    BOOST_TEST(reached(6));
    QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
    BOOST_TEST(reached(7));
    BOOST_TEST(practice.steps() == 8);
    desk.press("practiceNextButton");
    BOOST_TEST(!practice.running());
    BOOST_TEST(!practice.isVisible());
}

BOOST_AUTO_TEST_CASE(the_practice_can_be_left_at_any_time, *utf::label("PROP"))
{
    EmptyDesk desk;
    desk.press("practiceButton");
    desk.press("practiceLeaveButton");
    BOOST_TEST(!desk.window.practice().running());
    BOOST_TEST(desk.window.campFolder().toStdString() == sampleFolder().toStdString());
}

BOOST_AUTO_TEST_CASE(a_camp_of_ones_own_is_typed_seen_made_and_opened, *utf::label("PROP"))
{
    EmptyDesk desk;
    const QTemporaryDir place;
    const auto folder = place.filePath(QStringLiteral("new camp"));
    desk.press("startOwnButton");
    auto& make = named<QPushButton>(desk.window, "makeCampButton");
    BOOST_TEST(!make.isEnabled());
    desk.write("campNameEdit", "Pier 7");
    desk.press("addReadersButton");
    auto& trays = named<QPlainTextEdit>(desk.window, "traysEdit");
    trays.setFocus();
    QTest::keyClicks(&trays, QStringLiteral("distance 1.00: 3"));
    auto& found = named<QLabel>(desk.window, "trayFindings");
    BOOST_TEST(QTest::qWaitFor([&] { return found.isVisible(); }, 2000));
    BOOST_TEST(found.text().contains(QStringLiteral("Line 2, character 10"))); // a sphere without its sign
    BOOST_TEST(!make.isEnabled());
    trays.setPlainText(trays.toPlainText().replace(QStringLiteral(" 1.00:"), QStringLiteral(" -1.00:")));
    BOOST_TEST(QTest::qWaitFor([&] { return make.isEnabled() || !found.isVisible(); }, 2000));
    auto& preview = *named<QTableView>(desk.window, "trayPreview").model();
    const QAbstractItemModelTester tester(&preview, QAbstractItemModelTester::FailureReportingMode::Fatal);
    BOOST_TEST(preview.rowCount() == 7);
    named<QLineEdit>(desk.window, "newFolderEdit").setText(folder);
    make.click();
    BOOST_TEST(desk.window.campFolder().toStdString() == folder.toStdString());
    BOOST_TEST(textOf(desk.window, "siteLabel").find("Pier 7") != std::string::npos);
    BOOST_TEST(named<QWidget>(desk.window, "dispensePlace").isVisible());
}

BOOST_AUTO_TEST_CASE(a_stock_that_is_there_is_not_overwritten_by_a_new_camp, *utf::label("PROP"))
{
    EmptyDesk desk;
    CampFolder there;
    const auto before = there.read(QStringLiteral("stock.yaml"));
    desk.press("startOwnButton");
    desk.write("campNameEdit", "Pier 7");
    desk.press("addReadersButton");
    named<QLineEdit>(desk.window, "newFolderEdit").setText(there.path());
    desk.press("makeCampButton");
    BOOST_TEST(desk.window.messages().code().toStdString() == "stock-there");
    BOOST_TEST(there.read(QStringLiteral("stock.yaml")).toStdString() == before.toStdString());
    BOOST_TEST(!named<QPlainTextEdit>(desk.window, "traysEdit").toPlainText().isEmpty()); // nothing is lost
}

BOOST_AUTO_TEST_CASE(what_is_wrong_with_a_folder_stands_on_the_page_with_line_and_column, *utf::label("PROP"))
{
    EmptyDesk desk;
    CampFolder broken;
    broken.write(QStringLiteral("stock.yaml"),
                 "format: quarterstep stock 1\nsite: X\nlines:\n"
                 "  - {line: A, kind: ready-made, power: 1.00, on hand: many}\n");
    BOOST_TEST(!desk.window.openCamp(broken.path()));
    auto& text = named<QPlainTextEdit>(desk.window, "problemsText");
    BOOST_TEST_REQUIRE(text.isVisible());
    BOOST_TEST(text.toPlainText().contains(QStringLiteral("stock.yaml:4:")));
    BOOST_TEST(text.toPlainText().count(QLatin1Char('\n')) >= 1); // the power and the count, in one run
    BOOST_TEST(!named<QPushButton>(desk.window, "startHereButton").isVisible());
    BOOST_TEST(
        named<QLabel>(desk.window, "problemsWayOut").text().contains(QStringLiteral("line and column")));
}

BOOST_AUTO_TEST_CASE(a_folder_without_a_stock_offers_to_start_a_camp_in_it, *utf::label("PROP"))
{
    EmptyDesk desk;
    const QTemporaryDir empty;
    BOOST_TEST(!desk.window.openCamp(empty.path()));
    auto& here = named<QPushButton>(desk.window, "startHereButton");
    BOOST_TEST_REQUIRE(here.isVisible());
    here.click();
    BOOST_TEST(named<QLineEdit>(desk.window, "newFolderEdit").text().toStdString() ==
               empty.path().toStdString());
}

BOOST_AUTO_TEST_CASE(the_camp_opened_last_is_read_at_the_next_start_while_the_window_is_alive,
                     *utf::label("PROP"))
{
    CampFolder camp;
    {
        DeskProgram first(*qApp, {});
        BOOST_TEST(first.window().openCamp(camp.path()));
    }
    DeskProgram second(*qApp, {});
    const QSignalSpy opened(&second.window(), &DeskWindow::campOpened);
    second.begin();
    BOOST_TEST(second.window().campFolder().isEmpty()); // shown before anything is read
    BOOST_TEST(QTest::qWaitFor([&] { return !opened.isEmpty(); }, 5000));
    BOOST_TEST(second.window().campFolder().toStdString() == camp.path().toStdString());
    BOOST_TEST(!second.window().work().isVisible());
}

BOOST_AUTO_TEST_CASE(a_camp_that_is_gone_is_not_asked_for_at_the_next_start, *utf::label("PROP"))
{
    {
        CampFolder camp;
        DeskProgram first(*qApp, {});
        BOOST_TEST(first.window().openCamp(camp.path()));
    }
    DeskProgram second(*qApp, {});
    second.begin();
    auto& open = named<QPushButton>(second.window(), "emptyOpenButton");
    BOOST_TEST(QTest::qWaitFor([&] { return open.isVisible(); }, 5000));
    BOOST_TEST(second.window().messages().isHidden());
}

BOOST_AUTO_TEST_SUITE_END()
