// SPDX-License-Identifier: GPL-3.0-or-later
// What was typed survives a kill, and a ledger that another process holds is waited for without freezing.
// Both need a second process: this program itself, told to run one of the cases that are disabled.
#include "app/desk/lasting/frame_watch.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/shell/draft_keeper.hpp"
#include "inventory/store/connection.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QDir>
#include <QFileInfo>
#include <QLineEdit>
#include <QListView>
#include <QProcess>
#include <QPushButton>
#include <QTest>
#include <QTimer>

#include <csignal>
#include <iostream>

#include <unistd.h>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
void fill(DeskWindow& window, const char* name, const char* text)
{
    auto& field = named<QLineEdit>(window, name);
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, QLatin1String(text));
}

void comeToFront(DeskWindow& window)
{
    window.show();
    window.activateWindow();
    BOOST_TEST_REQUIRE(QTest::qWaitForWindowActive(&window));
}

std::string inField(DeskWindow& window, const char* name)
{
    return named<QLineEdit>(window, name).text().toStdString();
}

/// This program in a process of its own, running one disabled case.
struct Second {
    Second(const char* name, const QString& folder)
    {
        auto environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("QS_TEST_KEEPS_HOME"), QStringLiteral("1"));
        environment.insert(QStringLiteral("QS_TEST_FOLDER"), folder);
        process.setProcessEnvironment(environment);
        process.start(QCoreApplication::applicationFilePath(),
                      {QStringLiteral("--run_test=second_process/") + QLatin1String(name)});
        BOOST_TEST_REQUIRE(process.waitForStarted());
    }
    ~Second()
    {
        process.kill();
        process.waitForFinished();
    }
    bool says(const char* words)
    {
        QByteArray said;
        while (!said.contains(words) && process.waitForReadyRead(20'000))
            said += process.readAllStandardOutput();
        return said.contains(words);
    }
    QProcess process;
};

/// Those of windows of other cases are not looked at.
void forgetDrafts()
{
    QDir(DraftKeeper::folder()).removeRecursively();
}

QStringList drafts()
{
    return QDir(DraftKeeper::folder()).entryList({QStringLiteral("*.json")});
}
} // namespace

BOOST_AUTO_TEST_SUITE(second_process, *utf::disabled())

BOOST_AUTO_TEST_CASE(types_and_is_killed)
{
    DeskWindow window;
    window.show();
    BOOST_TEST_REQUIRE(window.openCamp(qEnvironmentVariable("QS_TEST_FOLDER")));
    QTest::keyClick(&window, Qt::Key_N, Qt::ControlModifier);
    fill(window, "personEdit", "K-7");
    fill(window, "ageEdit", "41");
    fill(window, "rightEyeEdit", "-1.25 -0.50 x 9"); // not ready: the axis is still being typed
    QTest::qWait(600);
    ::kill(::getpid(), SIGKILL);
}

BOOST_AUTO_TEST_CASE(holds_the_ledger)
{
    Connection ledger(qEnvironmentVariable("QS_TEST_FOLDER").toStdString() + "/ledger.sqlite",
                      Connection::Access::readWrite, 2000);
    ledger.beginWriting();
    std::cout << "held" << std::endl;
    ::usleep(static_cast<unsigned>(qEnvironmentVariableIntValue("QS_TEST_HOLD_MS")) * 1000U);
    ledger.rollback();
    BOOST_TEST(true);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(lost_nothing)

BOOST_AUTO_TEST_CASE(a_card_typed_before_a_kill_is_back_at_the_next_opening, *utf::label("PROP"))
{
    forgetDrafts();
    CampFolder folder;
    {
        Second typing("types_and_is_killed", folder.path());
        BOOST_TEST_REQUIRE(typing.process.waitForFinished(60'000));
        BOOST_TEST((typing.process.exitStatus() == QProcess::CrashExit)); // it was killed, not ended
    }
    BOOST_TEST_REQUIRE(drafts().size() == 1);
    const QFileInfo file(DraftKeeper::folder() + QLatin1Char('/') + drafts().front());
    BOOST_TEST((file.permissions() & (QFile::ReadGroup | QFile::ReadOther | QFile::WriteOther)).toInt() == 0);
    DeskWindow window;
    comeToFront(window);
    BOOST_TEST_REQUIRE(window.openCamp(folder.path()));
    BOOST_TEST(inField(window, "personEdit") == "K-7");
    BOOST_TEST(inField(window, "ageEdit") == "41");
    BOOST_TEST(inField(window, "rightEyeEdit") == "-1.25 -0.50 x 9");
    BOOST_TEST(window.messages().isVisible());
    // Served, the draft is gone.
    fill(window, "rightEyeEdit", "-1.25");
    fill(window, "leftEyeEdit", "-1.25");
    fill(window, "distancePdEdit", "62");
    QTest::keyClick(&named<QLineEdit>(window, "distancePdEdit"), Qt::Key_Return);
    BOOST_TEST_REQUIRE(named<QListView>(window, "pairsView").model()->rowCount() > 0);
    window.draft().flush();
    BOOST_TEST(drafts().size() == 1);
    QTest::keyClick(&window, Qt::Key_Return, Qt::ControlModifier);
    BOOST_TEST(folder.onHand("D-125") == 1);
    BOOST_TEST(drafts().isEmpty());
}

BOOST_AUTO_TEST_CASE(an_emptied_card_and_a_person_from_the_list_are_no_drafts, *utf::label("PROP"))
{
    forgetDrafts();
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    desk.window.draft().flush();
    BOOST_TEST(drafts().isEmpty()); // nobody typed
    fill(desk.window, "leftEyeEdit", "-1.50");
    desk.window.draft().flush();
    BOOST_TEST(drafts().size() == 1);
    QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
    BOOST_TEST(drafts().isEmpty());
}

BOOST_AUTO_TEST_CASE(two_windows_of_one_camp_keep_a_draft_each, *utf::label("PROP"))
{
    forgetDrafts();
    OpenDesk desk;
    DeskWindow other;
    BOOST_TEST_REQUIRE(other.openCamp(desk.folder.path()));
    fill(desk.window, "personEdit", "A-1");
    fill(other, "personEdit", "B-2");
    desk.window.draft().flush();
    other.draft().flush();
    BOOST_TEST(drafts().size() == 2);
    for (auto* window : {&desk.window, &other}) {
        comeToFront(*window);
        QTest::keyClick(window, Qt::Key_N, Qt::ControlModifier);
    }
    BOOST_TEST(drafts().isEmpty());
}

BOOST_AUTO_TEST_CASE(a_ledger_held_by_another_process_is_told_and_waited_for, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    qputenv("QS_TEST_HOLD_MS", "1500");
    Second holding("holds_the_ledger", desk.folder.path());
    BOOST_TEST_REQUIRE(holding.says("held"));
    QString told;
    QTimer::singleShot(500, &desk.window, [&] { told = desk.window.messages().text(); });
    FrameWatch watch;
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
    BOOST_TEST(told.contains(QStringLiteral("Another program")));
    BOOST_TEST(watch.longestMs() < 1000.0); // held for 1500: it did not wait in one piece
    BOOST_TEST(desk.folder.onHand("D-125") == 1);
    BOOST_TEST(desk.window.messages().code().toStdString() == "");
    BOOST_TEST(desk.window.messages().text().contains(QStringLiteral("P-1")));
}

BOOST_AUTO_TEST_CASE(given_up_by_escape_nothing_is_written_and_nothing_is_lost, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    qputenv("QS_TEST_HOLD_MS", "20000");
    {
        Second holding("holds_the_ledger", desk.folder.path());
        BOOST_TEST_REQUIRE(holding.says("held"));
        QTimer::singleShot(400, &desk.window, [&] { QTest::keyClick(&desk.window, Qt::Key_Escape); });
        QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
        BOOST_TEST(desk.window.messages().code().toStdString() == "ledger-locked");
    }
    BOOST_TEST(desk.folder.onHand("D-125") == 2);
    BOOST_TEST(inField(desk.window, "rightEyeEdit") == "-1.25");
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier); // the holder is gone: again
    BOOST_TEST(desk.folder.onHand("D-125") == 1);
}

BOOST_AUTO_TEST_SUITE_END()
