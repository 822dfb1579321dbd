// SPDX-License-Identifier: GPL-3.0-or-later
// Pieces between sites, and the bin that is to be counted, as the keeper meets them.
#include "app/desk/message_bar.hpp"
#include "app/desk/models/cells_model.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/places/transfer_panel.hpp"
#include "inventory/store/merge.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{

struct TransferDesk : OpenDesk {
    TransferDesk() { show(); }
    void show()
    {
        window.showPlace(DeskWindow::Place::stock);
        QTest::keyClick(&window, Qt::Key_5, Qt::ControlModifier);
        BOOST_TEST_REQUIRE(window.stock().transferPanel().isVisible());
    }
    void type(const char* name, const char* text)
    {
        auto& field = named<QLineEdit>(window, name);
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, QLatin1String(text));
    }
    /// A line, Enter, pieces, Enter.
    void put(const char* line, const char* pieces)
    {
        type("transferLineEdit", line);
        auto& box = named<QSpinBox>(window, "transferPiecesBox");
        box.setFocus();
        box.selectAll();
        QTest::keyClicks(&box, QLatin1String(pieces));
        QTest::keyClick(&box, Qt::Key_Return);
    }
    void enter() { QTest::keyClick(&window, Qt::Key_Return, Qt::ControlModifier); }
    QAbstractItemModel& flying() { return *named<QTableView>(window, "flyingView").model(); }
    QAbstractItemModel& list() { return *named<QTableView>(window, "transferView").model(); }
    std::string complaint()
    {
        auto& label = named<QLabel>(window, "transferComplaint");
        return label.isVisible() ? label.text().toStdString() : std::string();
    }
    std::string code() { return window.messages().code().toStdString(); }
};

/// Sends from another site, in a ledger of its own, and merges that ledger into the one of the folder.
void sendFromNorth(const CampFolder& home)
{
    const CampFolder north;
    auto bytes = north.read(QStringLiteral("stock.yaml"));
    bytes.replace("site: Test table", "site: North");
    north.write(QStringLiteral("stock.yaml"), bytes);
    auto sender = Camp::open(north.path().toStdString(), Ledger::Mode::readWrite);
    carryOut(
        sender,
        sendTo(sender, {{"D-100", 3, {}, {}, {}}, {"N+200", 2, {}, {}, {}}}, {"RK", "Test table", {}, {}}),
        false);
    auto receiver = Camp::open(home.path().toStdString(), Ledger::Mode::readWrite);
    mergeLedger(receiver.ledger(), sender.ledger());
}

} // namespace

BOOST_AUTO_TEST_SUITE(transfers)

BOOST_AUTO_TEST_CASE(pieces_are_sent_hang_in_the_air_and_come_back_with_one_key, *utf::label("PROP"))
{
    TransferDesk desk;
    const QAbstractItemModelTester flying(&desk.flying(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    const QAbstractItemModelTester list(&desk.list(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    desk.type("transferSiteEdit", "North");
    desk.type("transferInitialsEdit", "RK");
    desk.put("D-100", "3");
    desk.put("N+200", "1");
    desk.put("D-100", "2"); // typed again: the new number
    BOOST_TEST_REQUIRE(desk.list().rowCount() == 2);
    BOOST_TEST(desk.list().index(0, 2).data(CellsModel::rawRole).toInt() == 2);
    BOOST_TEST(desk.list().index(0, 3).data(CellsModel::rawRole).toInt() == 4); // available
    desk.enter();
    BOOST_TEST(desk.code() == "");
    BOOST_TEST(desk.folder.onHand("D-100") == 2);
    BOOST_TEST(desk.folder.onHand("N+200") == 2);
    BOOST_TEST(desk.list().rowCount() == 0);
    BOOST_TEST_REQUIRE(desk.flying().rowCount() == 1);
    BOOST_TEST(desk.flying().index(0, 2).data().toString().toStdString() == "North");
    BOOST_TEST(desk.flying().index(0, 3).data(CellsModel::rawRole).toInt() == 3);
    BOOST_TEST(!named<QPushButton>(desk.window, "takeAsSentButton").isEnabled()); // it is ours
    BOOST_TEST_REQUIRE(named<QPushButton>(desk.window, "transferUndoButton").isEnabled());
    QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
    BOOST_TEST(desk.folder.onHand("D-100") == 4);
    BOOST_TEST(desk.flying().rowCount() == 0);
    BOOST_TEST(!named<QPushButton>(desk.window, "transferUndoButton").isEnabled());
}

BOOST_AUTO_TEST_CASE(what_another_site_sent_is_taken_in_as_counted_and_differences_are_told,
                     *utf::label("PROP"))
{
    TransferDesk desk;
    sendFromNorth(desk.folder);
    BOOST_TEST_REQUIRE(desk.window.openCamp(desk.folder.path()));
    desk.show();
    BOOST_TEST_REQUIRE(desk.flying().rowCount() == 1);
    BOOST_TEST_REQUIRE(named<QPushButton>(desk.window, "takeAsSentButton").isEnabled()); // chosen already
    QTest::mouseClick(&named<QPushButton>(desk.window, "takeAsSentButton"), Qt::LeftButton);
    BOOST_TEST(named<QLineEdit>(desk.window, "transferSiteEdit").text().toStdString() == "North");
    BOOST_TEST_REQUIRE(desk.list().rowCount() == 2);
    BOOST_TEST(desk.complaint() == "");
    desk.put("D-100", "2"); // one is missing
    BOOST_TEST(desk.complaint().find("D-100") != std::string::npos, desk.complaint());
    desk.enter();
    BOOST_TEST(desk.code() == "");
    BOOST_TEST(desk.folder.onHand("D-100") == 6);
    BOOST_TEST(desk.folder.onHand("N+200") == 5);
    BOOST_TEST(desk.flying().rowCount() == 0);
    QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
    BOOST_TEST(desk.folder.onHand("D-100") == 4);
    BOOST_TEST(desk.flying().rowCount() == 1); // in the air again
}

BOOST_AUTO_TEST_CASE(pieces_come_in_from_a_site_this_ledger_knows_nothing_of, *utf::label("PROP"))
{
    TransferDesk desk;
    named<QComboBox>(desk.window, "transferWayBox").setCurrentIndex(1);
    desk.type("transferSiteEdit", "Far shore");
    desk.put("D-125", "5");
    desk.enter();
    BOOST_TEST(desk.code() == "");
    BOOST_TEST(desk.folder.onHand("D-125") == 7);
}

BOOST_AUTO_TEST_CASE(what_cannot_be_sent_is_refused_and_the_list_stays, *utf::label("PROP"))
{
    TransferDesk desk;
    desk.type("transferLineEdit", "d-1"); // lines with these letters are named, and what is there of one
    BOOST_TEST(named<QLabel>(desk.window, "transferLineWords").text().contains(QStringLiteral("D-150")));
    desk.type("transferLineEdit", "D-150");
    BOOST_TEST(
        named<QLabel>(desk.window, "transferLineWords").text().contains(QStringLiteral("available 5")));
    desk.put("no such line", "1");
    BOOST_TEST(desk.complaint().find("no such line") != std::string::npos);
    BOOST_TEST(desk.list().rowCount() == 0);
    desk.put("D-100", "9");
    desk.enter();
    BOOST_TEST(!desk.complaint().empty()); // no site
    desk.type("transferSiteEdit", "Test table");
    desk.enter();
    BOOST_TEST(desk.code() == "option-value"); // this site
    desk.type("transferSiteEdit", "North");
    desk.enter();
    BOOST_TEST(desk.code() == "stock-short");
    BOOST_TEST(desk.folder.onHand("D-100") == 4);
    BOOST_TEST(desk.list().rowCount() == 1);
    desk.put("D-100", "0"); // 0 takes it out
    BOOST_TEST(desk.list().rowCount() == 0);
    desk.put("D-100", "1");
    QTest::keyClick(&desk.window, Qt::Key_E, Qt::ControlModifier);
    BOOST_TEST(desk.list().rowCount() == 0);
}

BOOST_AUTO_TEST_CASE(a_bin_that_was_used_often_is_to_be_counted_until_it_was, *utf::label("PROP"))
{
    TransferDesk desk;
    BOOST_TEST(named<QWidget>(desk.window, "spotFrame").isHidden());
    desk.type("transferSiteEdit", "North");
    for (int hand = 0; hand < reachesBeforeCount; ++hand) { // sent and taken back, six times each
        if (hand % 2 == 0) {
            desk.type("transferSiteEdit", "North");
            desk.put("D-125", "1");
            desk.enter();
        } else {
            QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
        }
        BOOST_TEST(desk.code() == "");
    }
    QTest::keyClick(&desk.window, Qt::Key_1, Qt::ControlModifier);
    BOOST_TEST_REQUIRE(named<QWidget>(desk.window, "spotFrame").isVisible());
    BOOST_TEST(named<QLabel>(desk.window, "spotWords").text().contains(QStringLiteral("B2")));
    BOOST_TEST(!named<QLabel>(desk.window, "spotWords").text().contains(QStringLiteral("D-125 2")));
    for (const auto& [name, text] :
         {std::pair{"stockInitialsEdit", "RK"}, std::pair{"stockSecondEdit", "TM"}}) {
        named<QComboBox>(desk.window, "stockWorkBox").setCurrentIndex(static_cast<int>(StockWork::count));
        desk.type(name, text);
    }
    QTest::keyClick(&desk.window, Qt::Key_F8); // F8, a digit, Enter: three keys
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_2);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    BOOST_TEST(desk.code() == "");
    BOOST_TEST(named<QWidget>(desk.window, "spotFrame").isHidden());
    BOOST_TEST(desk.folder.onHand("D-125") == 2);
}

BOOST_AUTO_TEST_SUITE_END()
