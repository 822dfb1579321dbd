// SPDX-License-Identifier: GPL-3.0-or-later
// The place Stock: from the keyboard to the ledger and stock.yaml, and the pictures as data.
#include "app/desk/message_bar.hpp"
#include "app/desk/models/bin_order.hpp"
#include "app/desk/models/box_model.hpp"
#include "app/desk/models/card_model.hpp"
#include "app/desk/models/lines_model.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/plots/ladder_data.hpp"
#include "app/session/keeping.hpp"
#include "inventory/text/stock_file.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QAbstractItemModelTester>
#include <QAbstractProxyModel>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
/// A desk that shows the place Stock with one line chosen.
struct StockDesk : OpenDesk {
    explicit StockDesk(const char* line = "D-100")
    {
        QTest::keyClick(&window, Qt::Key_2, Qt::AltModifier);
        BOOST_TEST_REQUIRE(named<QWidget>(window, "stockPlace").isVisible());
        BOOST_TEST_REQUIRE(window.stock().chooseLine(line));
    }
    void fill(const char* name, const char* text)
    {
        auto& field = named<QLineEdit>(window, name);
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, QLatin1String(text));
    }
    void choose(StockWork work)
    {
        named<QComboBox>(window, "stockWorkBox").setCurrentIndex(static_cast<int>(work));
    }
    void enter() { QTest::keyClick(&named<QLineEdit>(window, "stockQuantityEdit"), Qt::Key_Return); }
    QString told() { return window.messages().text(); }
    QTableView& lines() { return named<QTableView>(window, "linesView"); }
};

StockLine pair(const char* name, double power, int onHand, int least, const char* bin = "")
{
    StockLine line;
    line.name = name;
    line.power = {sphereOf(power), sphereOf(power)};
    line.onHand = onHand;
    line.keepLeast = least;
    line.bin = bin;
    return line;
}
} // namespace

BOOST_AUTO_TEST_SUITE(stock)

BOOST_AUTO_TEST_CASE(a_delivery_goes_into_the_ledger_and_the_file, *utf::label("PROP"))
{
    StockDesk desk;
    desk.choose(StockWork::receive);
    desk.fill("stockQuantityEdit", "6");
    desk.fill("stockWordsEdit", "Orrowen store");
    desk.enter();
    BOOST_TEST(desk.folder.onHand("D-100") == 10);
    BOOST_TEST(desk.told().contains(QStringLiteral("10")));
    const auto* card = named<QTableView>(desk.window, "cardView").model();
    BOOST_TEST(card->rowCount() == 2);
    BOOST_TEST(card->index(0, CardModel::changeColumn).data(CardModel::rawRole).toInt() == 6);
    BOOST_TEST(card->index(0, CardModel::balanceColumn).data(CardModel::rawRole).toInt() == 10);
}

BOOST_AUTO_TEST_CASE(what_was_entered_is_taken_back_with_one_key, *utf::label("PROP"))
{
    StockDesk desk;
    desk.choose(StockWork::receive);
    desk.fill("stockQuantityEdit", "6");
    desk.enter();
    BOOST_TEST_REQUIRE(desk.folder.onHand("D-100") == 10);
    auto& undo = named<QPushButton>(desk.window, "stockUndoButton");
    BOOST_TEST_REQUIRE(undo.isEnabled());
    QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
    BOOST_TEST(desk.folder.onHand("D-100") == 4);
    BOOST_TEST(!undo.isEnabled());
}

BOOST_AUTO_TEST_CASE(while_counting_the_book_is_out_of_sight, *utf::label("PROP"))
{
    StockDesk desk;
    BOOST_TEST(!desk.lines().isColumnHidden(LinesModel::onHandColumn));
    desk.choose(StockWork::count);
    for (const int column : {LinesModel::onHandColumn, LinesModel::availableColumn, LinesModel::asideColumn,
                             LinesModel::levelColumn, LinesModel::campsColumn})
        BOOST_TEST(desk.lines().isColumnHidden(column));
    BOOST_TEST(!named<QTableView>(desk.window, "cardView").isVisible());
    BOOST_TEST(!named<QPushButton>(desk.window, "linesAsBox").isEnabled());
    desk.choose(StockWork::receive);
    BOOST_TEST(!desk.lines().isColumnHidden(LinesModel::onHandColumn));
    BOOST_TEST(named<QTableView>(desk.window, "cardView").isVisible());
}

BOOST_AUTO_TEST_CASE(a_bin_is_counted_with_its_digits_and_enter_and_the_next_one_follows, *utf::label("PROP"))
{
    StockDesk desk;
    desk.choose(StockWork::count);
    desk.fill("stockInitialsEdit", "RK");
    desk.fill("stockSecondEdit", "TM");
    desk.lines().setFocus();
    QTest::keyClick(&desk.lines(), Qt::Key_4);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    BOOST_TEST(desk.folder.onHand("D-100") == 4);
    BOOST_TEST(desk.window.messages().code().toStdString() == "");
    BOOST_TEST(desk.lines()
                   .currentIndex()
                   .siblingAtColumn(LinesModel::lineColumn)
                   .data(LinesModel::rawRole)
                   .toString()
                   .toStdString() == "D-125");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_2);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    BOOST_TEST(desk.window.messages().code().toStdString() == "");
}

BOOST_AUTO_TEST_CASE(a_count_that_differs_wants_a_cause_and_writes_nothing_without, *utf::label("PROP"))
{
    StockDesk desk;
    desk.choose(StockWork::count);
    desk.fill("stockInitialsEdit", "RK");
    desk.fill("stockSecondEdit", "TM");
    desk.fill("stockQuantityEdit", "3");
    desk.enter();
    BOOST_TEST(desk.window.messages().code().toStdString() == "count-reason");
    BOOST_TEST(desk.folder.onHand("D-100") == 4);
    named<QComboBox>(desk.window, "causeBox").setCurrentIndex(2); // missing
    desk.enter();
    BOOST_TEST(desk.folder.onHand("D-100") == 3);
}

BOOST_AUTO_TEST_CASE(one_person_alone_does_not_count, *utf::label("PROP"))
{
    StockDesk desk;
    desk.choose(StockWork::count);
    desk.fill("stockQuantityEdit", "4");
    desk.fill("stockInitialsEdit", "RK");
    desk.fill("stockSecondEdit", "RK");
    desk.enter();
    auto& complaint = named<QLabel>(desk.window, "stockWorkComplaint");
    BOOST_TEST(complaint.isVisible());
    BOOST_TEST(!complaint.text().isEmpty());
}

BOOST_AUTO_TEST_CASE(quarantined_pieces_are_there_but_not_available, *utf::label("PROP"))
{
    StockDesk desk;
    desk.choose(StockWork::quarantine);
    desk.fill("stockQuantityEdit", "3");
    desk.fill("stockWordsEdit", "off its label");
    desk.enter();
    const auto row = desk.lines().currentIndex();
    BOOST_TEST(row.siblingAtColumn(LinesModel::onHandColumn).data(LinesModel::rawRole).toInt() == 4);
    BOOST_TEST(row.siblingAtColumn(LinesModel::availableColumn).data(LinesModel::rawRole).toInt() == 1);
    desk.choose(StockWork::release);
    desk.fill("stockQuantityEdit", "3");
    desk.enter();
    BOOST_TEST(desk.lines()
                   .currentIndex()
                   .siblingAtColumn(LinesModel::availableColumn)
                   .data(LinesModel::rawRole)
                   .toInt() == 4);
}

BOOST_AUTO_TEST_CASE(more_than_there_are_cannot_be_written_off, *utf::label("PROP"))
{
    StockDesk desk;
    desk.choose(StockWork::writeOff);
    named<QComboBox>(desk.window, "causeBox").setCurrentIndex(1);
    desk.fill("stockQuantityEdit", "5");
    desk.enter();
    BOOST_TEST(desk.window.messages().code().toStdString() == "stock-short");
    BOOST_TEST(desk.folder.onHand("D-100") == 4);
}

BOOST_AUTO_TEST_CASE(what_is_not_a_number_is_said_below_the_fields, *utf::label("PROP"))
{
    StockDesk desk;
    for (const char* text : {"", "-1", "1.5", "many", "99999999999999999999"}) {
        desk.fill("stockQuantityEdit", text);
        if (*text == 0)
            named<QLineEdit>(desk.window, "stockQuantityEdit").clear();
        desk.enter();
        BOOST_TEST(named<QLabel>(desk.window, "stockWorkComplaint").isVisible(), text);
        BOOST_TEST(desk.folder.onHand("D-100") == 4);
    }
}

BOOST_AUTO_TEST_CASE(counts_edited_by_hand_are_shown_and_taken_over_or_put_back, *utf::label("PROP"))
{
    for (const bool accept : {true, false}) {
        OpenDesk desk;
        auto bytes = desk.folder.read(QStringLiteral("stock.yaml"));
        bytes.replace("bin: B1, on hand: 4", "bin: B1, on hand: 9");
        desk.folder.write(QStringLiteral("stock.yaml"), bytes);
        BOOST_TEST_REQUIRE(desk.window.openCamp(desk.folder.path()));
        desk.window.showPlace(DeskWindow::Place::stock);
        auto& frame = named<QWidget>(desk.window, "editsFrame");
        BOOST_TEST_REQUIRE(frame.isVisible());
        auto& button = named<QPushButton>(desk.window, accept ? "acceptEditsButton" : "discardEditsButton");
        if (accept) {
            QTest::mouseClick(&button, Qt::LeftButton); // without a reason nothing happens
            BOOST_TEST(frame.isVisible());
            QTest::keyClicks(&named<QLineEdit>(desk.window, "editsReasonEdit"), QStringLiteral("found five"));
        }
        QTest::mouseClick(&button, Qt::LeftButton);
        BOOST_TEST(!frame.isVisible());
        BOOST_TEST(desk.folder.onHand("D-100") == (accept ? 9 : 4));
    }
}

BOOST_AUTO_TEST_CASE(a_hand_over_at_the_table_is_seen_in_the_stock, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
    desk.window.showPlace(DeskWindow::Place::stock);
    BOOST_TEST_REQUIRE(desk.window.stock().chooseLine("D-125"));
    const auto row = named<QTableView>(desk.window, "linesView").currentIndex();
    BOOST_TEST(row.siblingAtColumn(LinesModel::onHandColumn).data(LinesModel::rawRole).toInt() == 1);
}

BOOST_AUTO_TEST_CASE(a_filter_that_hides_everything_says_so, *utf::label("PROP"))
{
    StockDesk desk;
    desk.fill("linesFilter", "no such line");
    BOOST_TEST(desk.lines().model()->rowCount() == 0);
    BOOST_TEST(named<QLabel>(desk.window, "linesShown").text().contains(QStringLiteral("no such line")));
    desk.fill("linesFilter", "B2");
    BOOST_TEST(desk.lines().model()->rowCount() == 1);
}

BOOST_AUTO_TEST_CASE(bins_stand_in_the_order_of_the_box, *utf::label("PROP"))
{
    BOOST_TEST((binSortKey("C4") < binSortKey("C10")));
    BOOST_TEST((binSortKey("B12") < binSortKey("C4")));
    BOOST_TEST((binSortKey("C4") < binSortKey("")));
    BOOST_TEST(binPlace("Box 2 A7").row.toStdString() == "Box 2 A");
    BOOST_TEST(binPlace("Box 2 A7").number == 7);
    BOOST_TEST(binPlace("shelf").number == 0);
}

BOOST_AUTO_TEST_CASE(the_box_has_a_cell_for_each_bin_and_none_elsewhere, *utf::label("PROP"))
{
    BoxModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.show({pair("N+100", 1.0, 3, 2, "A1"), pair("N+150", 1.5, 0, 2, "A3"),
                pair("N+200", 2.0, 1, 2, "B1"), pair("N+200-62", 2.0, 1, 0, "B1"), pair("loose", 1.0, 1, 0)});
    BOOST_TEST(model.rowCount() == 2);
    BOOST_TEST(model.columnCount() == 2);
    BOOST_TEST(model.linesAt(model.cellOf("B1")).size() == 2U);
    BOOST_TEST(model.cellOf("B1").data(BoxModel::rawRole).toInt() == 2);
    BOOST_TEST(model.cellOf("A3").data(BoxModel::levelRole).toBool());
    BOOST_TEST(!model.cellOf("A1").data(BoxModel::levelRole).toBool());
    BOOST_TEST((model.flags(model.index(1, 1)) == Qt::NoItemFlags)); // B3 does not exist
    BOOST_TEST(!model.cellOf("Z9").isValid());
}

BOOST_AUTO_TEST_CASE(levels_follow_what_is_available_not_what_is_there, *utf::label("PROP"))
{
    auto line = pair("N+100", 1.0, 5, 3);
    line.keepMost = 8;
    BOOST_TEST((levelOf(line) == StockLevel::enough));
    line.quarantined = 3;
    BOOST_TEST((levelOf(line) == StockLevel::low));
    line.held = 2;
    BOOST_TEST((levelOf(line) == StockLevel::out));
    line.onHand = 14;
    BOOST_TEST((levelOf(line) == StockLevel::plenty));
}

BOOST_AUTO_TEST_CASE(figures_read_on_from_the_last_entry_are_those_of_a_window_that_reads_all,
                     *utf::label("PROP"))
{
    StockDesk desk;
    const auto cells = [](QTableView& view) {
        QStringList all;
        for (int row = 0; row < view.model()->rowCount(); ++row)
            for (int column = 0; column < view.model()->columnCount(); ++column)
                all << view.model()->index(row, column).data().toString();
        return all;
    };
    for (int round = 0; round < 3; ++round) {
        auto camp = Camp::open(desk.folder.path().toStdString(), Ledger::Mode::readWrite); // another station
        StockWish arrived;
        arrived.work = StockWork::receive;
        arrived.quantity = 2 + round;
        arrived.initials = "EF";
        arrived.words = "from the store";
        carryOut(camp, entriesOf(camp, "D-125", arrived).entries, false);
        desk.choose(StockWork::count); // and this one
        desk.fill("stockQuantityEdit", "3");
        desk.fill("stockWordsEdit", "found less");
        desk.fill("stockInitialsEdit", "AB");
        desk.fill("stockSecondEdit", "CD");
        desk.enter();
        BOOST_TEST(desk.window.messages().code().toStdString() == "");
        BOOST_TEST_REQUIRE(desk.window.stock().chooseLine("D-100"));
        desk.choose(StockWork::receive);
        DeskWindow fresh;
        BOOST_TEST_REQUIRE(fresh.openCamp(desk.folder.path()));
        fresh.showPlace(DeskWindow::Place::stock);
        BOOST_TEST_REQUIRE(fresh.stock().chooseLine("D-100"));
        BOOST_TEST((cells(desk.lines()) == cells(named<QTableView>(fresh, "linesView"))), round);
        BOOST_TEST(named<QLabel>(desk.window, "stockFigures").text().toStdString() ==
                   named<QLabel>(fresh, "stockFigures").text().toStdString());
    }
}

/// What a short ledger shows at once; while it is read the lines stand there already.
BOOST_AUTO_TEST_CASE(a_long_ledger_is_read_beside_the_window_and_comes_to_the_same_figures,
                     *utf::label("PROP"))
{
    CampFolder folder;
    std::vector<Entry> season(shortLedger + 100);
    {
        auto camp = Camp::open(folder.path().toStdString(), Ledger::Mode::readWrite);
        for (std::size_t n = 0; n < season.size(); ++n) {
            auto& entry = season[n];
            entry.kind = n % 2 == 0 ? EntryKind::received : EntryKind::handedOver;
            entry.atMs = 1'700'000'000'000 + static_cast<std::int64_t>(n) * 60'000;
            entry.actor = "AB";
            entry.person = n % 2 == 0 ? "" : "S-" + std::to_string(n);
            entry.movements = {{"D-125", n % 2 == 0 ? 1 : -1, n % 2 == 0 ? "" : "pair"}};
        }
        (void)camp.postAll(season);
    }
    DeskWindow window;
    window.resize(1366, 768);
    window.show();
    BOOST_TEST_REQUIRE(window.openCamp(folder.path()));
    window.showPlace(DeskWindow::Place::stock);
    auto& view = named<QTableView>(window, "linesView");
    BOOST_TEST(view.model()->rowCount() == 7);
    const auto& figures = named<QLabel>(window, "stockFigures");
    const auto given = [&figures](int pairs) {
        return figures.text().contains(QStringLiteral("handed over %1").arg(pairs));
    };
    const int pairs = static_cast<int>(season.size()) / 2;
    BOOST_TEST(!given(pairs));
    BOOST_TEST(QTest::qWaitFor([&] { return given(pairs); }, 30'000), figures.text().toStdString());
    auto camp = Camp::open(folder.path().toStdString(), Ledger::Mode::readOnly);
    StockRead read;
    readOn(camp.ledger(), read);
    BOOST_TEST(read.entries.size() >= season.size());
    const auto expected = countsOf(read, camp.site(), camp.stock());
    const auto& lines = dynamic_cast<QAbstractProxyModel&>(*view.model());
    for (int row = 0; row < lines.rowCount(); ++row) {
        const auto cell = lines.index(row, LinesModel::campsColumn);
        const auto& line = expected.figures.lines[static_cast<std::size_t>(lines.mapToSource(cell).row())];
        BOOST_TEST(cell.data(LinesModel::rawRole).isValid() == line.campsOfStock.has_value());
        BOOST_TEST(cell.data(LinesModel::rawRole).toDouble() == line.campsOfStock.value_or(0.0));
    }
    BOOST_TEST(
        named<QLabel>(window, "spotWords").text().contains(QStringLiteral("B2"))); // reached into often
    BOOST_TEST_REQUIRE(window.choosePerson(QStringLiteral("P-1")));                // one more, read after it
    window.showPlace(DeskWindow::Place::dispense);
    QTest::keyClick(&window, Qt::Key_Return, Qt::ControlModifier);
    window.showPlace(DeskWindow::Place::stock);
    BOOST_TEST(QTest::qWaitFor([&] { return given(pairs + 1); }, 30'000), figures.text().toStdString());
}

BOOST_AUTO_TEST_CASE(the_ladder_adds_up_lines_of_one_power, *utf::label("PROP"))
{
    auto unequal = pair("X", -1.0, 1, 0);
    unequal.power.left = sphereOf(-2.0);
    auto set = pair("N+200", 2.0, 5, 2);
    set.held = 2;
    auto lens = pair("L", -3.0, 7, 1);
    lens.kind = LineKind::lens;
    const std::vector<StockLine> lines{pair("N+200-B", 2.0, 3, 4), set, unequal, lens};
    const auto ladder = ladderOf(lines, LineKind::readyMade);
    BOOST_TEST_REQUIRE(ladder.rungs.size() == 2U);
    BOOST_TEST((ladder.rungs[0] == Rung{-1.5, 1, 0, 0}));
    BOOST_TEST((ladder.rungs[1] == Rung{2.0, 6, 2, 6}));
    BOOST_TEST(ladder.tallest == 8);
    BOOST_TEST(ladderOf(lines, LineKind::lens).rungs.size() == 1U);
    BOOST_TEST(ladderOf({}, LineKind::lens).rungs.empty());
}

BOOST_AUTO_TEST_CASE(the_models_of_the_place_keep_the_rules_of_models, *utf::label("PROP"))
{
    StockDesk desk;
    auto* sorted = dynamic_cast<QAbstractProxyModel*>(desk.lines().model());
    BOOST_TEST_REQUIRE(sorted != nullptr);
    const QAbstractItemModelTester lines(sorted->sourceModel(),
                                         QAbstractItemModelTester::FailureReportingMode::Fatal);
    const QAbstractItemModelTester proxy(sorted, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const QAbstractItemModelTester card(named<QTableView>(desk.window, "cardView").model(),
                                        QAbstractItemModelTester::FailureReportingMode::Fatal);
    desk.fill("stockQuantityEdit", "2");
    desk.enter();
    desk.fill("linesFilter", "D-1");
    BOOST_TEST(sorted->rowCount() == 3);
}

BOOST_AUTO_TEST_SUITE_END()
