// SPDX-License-Identifier: GPL-3.0-or-later
// The waiting line at the desk: who arrives, the plan, promises, a pair picked by hand with a reason.
#include "app/desk/message_bar.hpp"
#include "app/desk/models/line_model.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/models/parts_mime.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/line_panel.hpp"
#include "app/desk/shell/draft_keeper.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTabBar>
#include <QTableView>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
/// A window with the page of the line in front and everybody of the table in it.
struct DeskWithLine : OpenDesk {
    DeskWithLine()
    {
        named<QTabBar>(window, "peopleTabs").setCurrentIndex(1);
        named<QPushButton>(window, "lineAllButton").click();
        wait();
    }
    LinePanel& panel() { return named<LinePanel>(window, "linePanel"); }
    QTableView& view() { return named<QTableView>(window, "lineView"); }
    LineModel& model() { return dynamic_cast<LineModel&>(*view().model()); }
    void wait()
    {
        BOOST_TEST_REQUIRE(QTest::qWaitFor([this] { return !panel().isPlanning(); }, 30000));
        QApplication::processEvents();
    }
    void chooseRow(const char* person, Purpose purpose)
    {
        const int row = model().rowOf(person, purpose);
        BOOST_TEST_REQUIRE(row >= 0);
        view().setCurrentIndex(model().index(row, 0));
    }
    LineRow rowOf(const char* person, Purpose purpose)
    {
        const auto* row = model().rowAt(model().rowOf(person, purpose));
        BOOST_TEST_REQUIRE(row);
        return *row;
    }
    std::string gets(const char* person, Purpose purpose)
    {
        return model()
            .index(model().rowOf(person, purpose), LineModel::getsColumn)
            .data(LineModel::rawRole)
            .toString()
            .toStdString();
    }
    void push(const char* name)
    {
        auto& button = named<QPushButton>(window, name);
        BOOST_TEST_REQUIRE(button.isEnabled(), name);
        button.click();
        wait();
    }
};
} // namespace

BOOST_AUTO_TEST_SUITE(waiting_line)

BOOST_AUTO_TEST_CASE(who_arrives_is_planned_for_and_told_why, *utf::label("PROP"))
{
    DeskWithLine desk;
    BOOST_TEST(desk.panel().arrived().size() == 3U); // the fourth row cannot be read
    BOOST_TEST(desk.gets("P-1", Purpose::distance) == "D-125");
    BOOST_TEST((desk.rowOf("P-1", Purpose::distance).state == LineRow::State::planned));
    for (int row = 0; row < desk.model().rowCount(); ++row)
        BOOST_TEST(!desk.model().index(row, LineModel::whyColumn).data().toString().isEmpty());
    BOOST_TEST(named<QLabel>(desk.window, "lineSummary").text().contains(QStringLiteral("get a pair")));
}

BOOST_AUTO_TEST_CASE(choosing_a_person_of_the_line_fills_the_card_and_chooses_the_planned_pair,
                     *utf::label("PROP"))
{
    DeskWithLine desk;
    desk.chooseRow("P-1", Purpose::distance);
    BOOST_TEST(named<QLineEdit>(desk.window, "personEdit").text().toStdString() == "P-1");
    const auto& pairs = named<QListView>(desk.window, "pairsView");
    BOOST_TEST(pairs.currentIndex()
                   .siblingAtColumn(PairsModel::pullColumn)
                   .data(PairsModel::rawRole)
                   .toString()
                   .toStdString() == "D-125");
}

BOOST_AUTO_TEST_CASE(a_promise_stays_and_is_taken_back_by_the_same_button, *utf::label("PROP"))
{
    DeskWithLine desk;
    desk.chooseRow("P-1", Purpose::distance);
    desk.push("linePromiseButton");
    BOOST_TEST((desk.rowOf("P-1", Purpose::distance).state == LineRow::State::promised));
    desk.push("linePlanButton");
    BOOST_TEST((desk.rowOf("P-1", Purpose::distance).state == LineRow::State::promised));
    desk.push("linePromiseButton");
    BOOST_TEST((desk.rowOf("P-1", Purpose::distance).state == LineRow::State::planned));
}

BOOST_AUTO_TEST_CASE(what_was_promised_is_there_after_a_restart, *utf::label("PROP"))
{
    CampFolder folder;
    const auto folderOf = [&folder](DeskWindow& window) {
        window.show();
        BOOST_TEST_REQUIRE(window.openCamp(folder.path()));
        auto* panel = &window.dispense().line();
        BOOST_TEST_REQUIRE(QTest::qWaitFor([panel] { return !panel->isPlanning(); }, 30000));
        return panel;
    };
    {
        DeskWindow before;
        auto* panel = folderOf(before);
        BOOST_TEST(panel->kept().empty());
        named<QPushButton>(before, "lineAllButton").click();
        BOOST_TEST_REQUIRE(QTest::qWaitFor([panel] { return !panel->isPlanning(); }, 30000));
        auto& view = named<QTableView>(before, "lineView");
        auto& model = dynamic_cast<LineModel&>(*view.model());
        view.setCurrentIndex(model.index(model.rowOf("P-1", Purpose::distance), 0));
        named<QPushButton>(before, "linePromiseButton").click();
        BOOST_TEST_REQUIRE(QTest::qWaitFor([panel] { return !panel->isPlanning(); }, 30000));
        QApplication::processEvents();
    }
    DeskWindow after;
    auto* panel = folderOf(after);
    QApplication::processEvents();
    const auto kept = panel->kept();
    BOOST_TEST(kept.people.size() == 3U);
    BOOST_TEST(kept.people.front().person == "P-1");
    BOOST_TEST_REQUIRE(kept.told.size() == 1U);
    BOOST_TEST((kept.told.front().lines == std::vector<std::string>{"D-125"}));
    const auto bytes = bytesOfLine(kept, QDate(2026, 1, 2));
    BOOST_TEST(lineIn(bytes, QDate(2026, 1, 2)).people.size() == 3U);
    BOOST_TEST(lineIn(bytes, QDate(2026, 1, 3)).empty()); // of another day
    BOOST_TEST(lineIn("{", QDate(2026, 1, 2)).empty());
    for (const auto* person : {"P-1", "P-2", "P-3"}) // the line is empty: nothing is kept
        panel->leave(person);
    BOOST_TEST_REQUIRE(QTest::qWaitFor([panel] { return !panel->isPlanning(); }, 30000));
    QApplication::processEvents();
    BOOST_TEST(after.draft().beside().isEmpty());
}

BOOST_AUTO_TEST_CASE(a_hand_over_taken_back_puts_the_person_where_they_stood, *utf::label("PROP"))
{
    DeskWithLine desk;
    desk.chooseRow("P-1", Purpose::distance);
    desk.push("linePromiseButton");
    desk.chooseRow("P-1", Purpose::distance);
    desk.push("handOverButton");
    BOOST_TEST(desk.model().rowOf("P-1", Purpose::distance) == -1);
    desk.push("undoButton");
    BOOST_TEST(desk.model().rowOf("P-1", Purpose::distance) == 0);
    BOOST_TEST((desk.rowOf("P-1", Purpose::distance).state == LineRow::State::promised));
    // Who came for two and was served for one comes back for that one
    const auto rows = desk.model().rowCount();
    desk.chooseRow("P-2", Purpose::distance);
    desk.push("handOverButton");
    BOOST_TEST(desk.model().rowOf("P-2", Purpose::distance) == -1);
    BOOST_TEST(desk.model().rowOf("P-2", Purpose::near) >= 0);
    desk.push("undoButton");
    BOOST_TEST(desk.model().rowCount() == rows);
}

BOOST_AUTO_TEST_CASE(a_pair_picked_by_hand_from_the_keyboard_asks_for_a_reason_first, *utf::label("PROP"))
{
    DeskWithLine desk;
    desk.chooseRow("P-1", Purpose::distance);
    QTest::keyClick(&desk.window, Qt::Key_Down, Qt::ControlModifier); // the next pair of the list
    const auto second = named<QListView>(desk.window, "pairsView")
                            .currentIndex()
                            .siblingAtColumn(PairsModel::pullColumn)
                            .data(PairsModel::rawRole)
                            .toString()
                            .toStdString();
    BOOST_TEST_REQUIRE(second != "D-125");
    QTest::keyClick(&desk.window, Qt::Key_G, Qt::ControlModifier);
    auto& reason = named<QLineEdit>(desk.window, "lineReasonEdit");
    BOOST_TEST((QApplication::focusWidget() == &reason));
    BOOST_TEST((desk.rowOf("P-1", Purpose::distance).state == LineRow::State::planned)); // nothing yet
    QTest::keyClicks(&reason, QStringLiteral("wants the lighter frame"));
    QTest::keyClick(&reason, Qt::Key_Return);
    desk.wait();
    const auto row = desk.rowOf("P-1", Purpose::distance);
    BOOST_TEST((row.state == LineRow::State::byHand));
    BOOST_TEST(row.reason == "wants the lighter frame");
    BOOST_TEST(desk.gets("P-1", Purpose::distance) == second);
}

BOOST_AUTO_TEST_CASE(a_pair_dropped_on_a_person_is_offered_to_them, *utf::label("PROP"))
{
    DeskWithLine desk;
    desk.chooseRow("P-1", Purpose::distance);
    auto& pairs = *named<QListView>(desk.window, "pairsView").model();
    named<QLineEdit>(desk.window, "lineReasonEdit").setText(QStringLiteral("asked for it"));
    const std::unique_ptr<QMimeData> dragged(pairs.mimeData({pairs.index(1, 0)}));
    const int row = desk.model().rowOf("P-1", Purpose::distance);
    BOOST_TEST(desk.model().dropMimeData(dragged.get(), Qt::CopyAction, -1, -1, desk.model().index(row, 0)));
    desk.wait();
    BOOST_TEST((desk.rowOf("P-1", Purpose::distance).state == LineRow::State::byHand));
    QMimeData foreign;
    foreign.setData(partsMimeType(), "7:x,");
    BOOST_TEST(!desk.model().dropMimeData(&foreign, Qt::CopyAction, -1, -1, desk.model().index(row, 0)));
}

BOOST_AUTO_TEST_CASE(who_is_served_or_gone_stands_in_the_line_no_more, *utf::label("PROP"))
{
    DeskWithLine desk;
    desk.chooseRow("P-1", Purpose::distance);
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
    desk.wait();
    BOOST_TEST(desk.folder.onHand("D-125") == 1);
    BOOST_TEST(desk.model().rowOf("P-1", Purpose::distance) == -1);
    desk.chooseRow("P-3", Purpose::distance);
    desk.push("lineGoneButton");
    BOOST_TEST(desk.model().rowOf("P-3", Purpose::distance) == -1);
}

BOOST_AUTO_TEST_CASE(the_person_on_the_card_joins_the_line_by_one_key, *utf::label("PROP"))
{
    DeskWithLine desk;
    QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
    for (const auto& [name, text] :
         {std::pair{"personEdit", "J-1"}, std::pair{"ageEdit", "30"}, std::pair{"rightEyeEdit", "-1.50"},
          std::pair{"leftEyeEdit", "-1.50"}, std::pair{"distancePdEdit", "62"}})
        named<QLineEdit>(desk.window, name).setText(QLatin1String(text));
    QTest::keyClick(&desk.window, Qt::Key_J, Qt::ControlModifier);
    desk.wait();
    BOOST_TEST(desk.gets("J-1", Purpose::distance) == "D-150");
}

BOOST_AUTO_TEST_CASE(the_rows_keep_the_order_of_arrival_and_the_model_its_contract, *utf::label("PROP"))
{
    LineAnswer answer;
    Assignment second;
    second.person = "B";
    second.parts = {{0, PartSide::pair}};
    answer.assignments = {second};
    Unserved first;
    first.person = "A";
    first.sentence = {"none left", {}};
    answer.unserved = {first};
    SmallAnswer small;
    LineModel model;
    new QAbstractItemModelTester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal, &model);
    model.show(answer, {"A", "B"}, small.stock);
    BOOST_TEST_REQUIRE(model.rowCount() == 2);
    BOOST_TEST(model.rowAt(0)->person == "A");
    BOOST_TEST((model.rowAt(0)->state == LineRow::State::without));
    BOOST_TEST(!(model.flags(model.index(0, 0)) & Qt::ItemIsDragEnabled));
    BOOST_TEST((model.flags(model.index(1, 0)) & Qt::ItemIsDragEnabled));
    const std::unique_ptr<QMimeData> data(model.mimeData({model.index(1, 0)}));
    const auto parts = partsInMime(*data);
    BOOST_TEST_REQUIRE(parts.size() == 1U);
    BOOST_TEST(parts.front().line == 0U);
    model.clear();
    BOOST_TEST(model.rowCount() == 0);
}

BOOST_AUTO_TEST_SUITE_END()
