// SPDX-License-Identifier: GPL-3.0-or-later
// The place Audit: what is to be said of hand-overs, one of them in full, and the charts with their numbers.
#include "app/desk/message_bar.hpp"
#include "app/desk/models/chart_model.hpp"
#include "app/desk/models/findings_model.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/bench_panel.hpp"
#include "app/desk/plots/chart_data.hpp"
#include "app/desk/theme.hpp"
#include "inventory/text/prescription_table.hpp"
#include "tests/desk/desk_walk.hpp"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QTextBrowser>

#include <cmath>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{

QTableView& findings(AuditDesk& desk)
{
    return named<QTableView>(desk.window, "findingsView");
}
} // namespace

BOOST_AUTO_TEST_SUITE(audit_place)

BOOST_AUTO_TEST_CASE(a_pair_outside_its_limits_is_found_and_told_in_full, *utf::label("PROP"))
{
    AuditDesk desk;
    BOOST_TEST(desk.window.messages().code().toStdString() == "");
    BOOST_TEST(desk.label("auditFigures").contains(QStringLiteral("hand-overs 2, judged again 2")),
               desk.label("auditFigures").toStdString());
    BOOST_TEST(desk.label("auditChain").contains(QStringLiteral("whole")));
    BOOST_TEST_REQUIRE(desk.window.audit().chooseEntry(desk.off));
    BOOST_TEST(desk.label("caseHeading").contains(QStringLiteral("P-1")));
    const auto words = desk.label("caseWords");
    BOOST_TEST(words.contains(QStringLiteral("-1.25")), words.toStdString());
    BOOST_TEST(words.contains(QStringLiteral("-4.00")), words.toStdString());
    BOOST_TEST(words.contains(QStringLiteral("D-125")), words.toStdString()); // the better pair, with its bin
    BOOST_TEST(words.contains(QStringLiteral("B2")), words.toStdString());
    BOOST_TEST(named<QTableView>(desk.window, "caseCriteria").model()->rowCount() > 5);
    BOOST_TEST(named<QPushButton>(desk.window, "criteriaOfBetter").isEnabled());
    const auto slips = named<QTextBrowser>(desk.window, "slipsText").toPlainText();
    BOOST_TEST(!slips.isEmpty());
    BOOST_TEST(!desk.window.audit().chooseEntry("no such entry"));
}

BOOST_AUTO_TEST_CASE(classes_and_words_narrow_the_list, *utf::label("PROP"))
{
    AuditDesk desk;
    auto& classes = named<QComboBox>(desk.window, "classBox");
    const int all = findings(desk).model()->rowCount();
    BOOST_TEST_REQUIRE(all > 0);
    BOOST_TEST_REQUIRE(classes.count() > 1);
    int together = 0;
    for (int at = 1; at < classes.count(); ++at) {
        classes.setCurrentIndex(at);
        together += findings(desk).model()->rowCount();
    }
    BOOST_TEST(together <= all); // counted classes have no row
    BOOST_TEST(together > 0);
    classes.setCurrentIndex(0);
    BOOST_TEST(findings(desk).model()->rowCount() == all);
    named<QLineEdit>(desk.window, "findingsFilter").setText(QStringLiteral("no such words"));
    BOOST_TEST(findings(desk).model()->rowCount() == 0);
}

BOOST_AUTO_TEST_CASE(a_hand_over_made_meanwhile_is_audited_when_the_place_is_shown_again, *utf::label("PROP"))
{
    AuditDesk desk;
    QTest::keyClick(&desk.window, Qt::Key_1, Qt::AltModifier);
    {
        auto camp = Camp::open(desk.folder.path().toStdString(), Ledger::Mode::readWrite);
        const auto people = readPrescriptionTable(camp.folder() + "/people.csv", "").value.rows;
        GivenCamp::give(camp, *people[0].record, "D-125", {});
    }
    desk.window.audit().campMoved();
    QTest::keyClick(&desk.window, Qt::Key_3, Qt::AltModifier);
    desk.window.audit().waitForAudit();
    BOOST_TEST(desk.label("auditFigures").contains(QStringLiteral("hand-overs 3")),
               desk.label("auditFigures").toStdString());
}

BOOST_AUTO_TEST_CASE(a_camp_without_a_ledger_says_so, *utf::label("PROP"))
{
    OpenDesk desk;
    QTest::keyClick(&desk.window, Qt::Key_3, Qt::AltModifier);
    BOOST_TEST(named<QWidget>(desk.window, "auditPlace").isVisible());
    desk.window.audit().waitForAudit();
    BOOST_TEST(
        named<QLabel>(desk.window, "auditFigures").text().contains(QStringLiteral("nothing to audit")));
}

BOOST_AUTO_TEST_CASE(who_and_what_stand_first_and_take_the_room_that_empty_columns_leave, *utf::label("PROP"))
{
    AuditDesk desk;
    desk.window.resize(1920, 1080);
    QTest::qWait(20);
    auto& view = findings(desk);
    const auto* header = view.horizontalHeader();
    BOOST_TEST(header->visualIndex(FindingsModel::personColumn) == 0);
    BOOST_TEST(header->visualIndex(FindingsModel::classColumn) == 1);
    BOOST_TEST(header->visualIndex(FindingsModel::detailColumn) == 2);
    bool slips = false;
    for (int row = 0; row < view.model()->rowCount(); ++row)
        slips = slips || !view.model()->index(row, FindingsModel::slipColumn).data().toString().isEmpty();
    BOOST_TEST(view.isColumnHidden(FindingsModel::slipColumn) == !slips);
    BOOST_TEST(header->length() <= view.viewport()->width());
    for (int row = 0; row < view.model()->rowCount(); ++row) {
        const auto words = view.model()->index(row, FindingsModel::classColumn).data().toString();
        BOOST_TEST(view.fontMetrics().horizontalAdvance(words) <
                       2 * view.columnWidth(FindingsModel::classColumn),
                   words.toStdString());
    }
}

BOOST_AUTO_TEST_CASE(where_letters_are_large_the_parts_stand_below_each_other, *utf::label("PROP"))
{
    for (const int scale : {100, 200}) {
        applyTheme(*qApp, Theme::sun, scale);
        AuditDesk desk;
        desk.window.resize(1366, 768);
        QTest::qWait(50);
        const auto place = [&](const char* name) {
            return placeOf(named<QWidget>(desk.window, name), desk.window);
        };
        const auto list = place("findingsFrame");
        const auto one = place("caseFrame");
        BOOST_TEST((scale == 100 ? one.left() > list.right() : one.top() > list.bottom()), scale);
        BOOST_TEST(one.right() <= 1366, scale); // nothing to scroll to at the side
        BOOST_TEST(list.right() <= 1366, scale);
    }
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_CASE(no_border_is_cut_in_a_mirrored_window, *utf::label("REG"))
{
    QApplication::setLayoutDirection(Qt::RightToLeft);
    {
        AuditDesk desk;
        desk.window.resize(1366, 768);
        QTest::qWait(50);
        const auto& parts = named<QWidget>(desk.window, "auditSplitter");
        for (const auto* name : {"findingsFrame", "caseFrame"})
            BOOST_TEST(parts.rect().contains(named<QWidget>(desk.window, name).geometry()), name);
    }
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

BOOST_AUTO_TEST_CASE(a_person_asked_for_is_chosen_and_what_narrows_the_list_stands_with_the_list_only,
                     *utf::label("PROP"))
{
    AuditDesk desk;
    desk.window.audit().choosePerson(QStringLiteral("P-1"));
    BOOST_TEST(desk.label("caseHeading").contains(QStringLiteral("P-1")));
    BOOST_TEST(named<QComboBox>(desk.window, "classBox").isVisible());
    desk.window.audit().showView(2);
    BOOST_TEST(!named<QComboBox>(desk.window, "classBox").isVisible());
    BOOST_TEST(!named<QLineEdit>(desk.window, "findingsFilter").isVisible());
    QTest::keyClick(&desk.window, Qt::Key_F, Qt::ControlModifier);
    BOOST_TEST(named<QLineEdit>(desk.window, "findingsFilter").isVisible());
}

BOOST_AUTO_TEST_CASE(what_is_short_leaves_its_room_to_what_is_long, *utf::label("PROP"))
{
    AuditDesk desk;
    desk.window.resize(1920, 1080);
    QTest::qWait(20);
    const auto& words = named<QLabel>(desk.window, "caseWords");
    const auto& around = named<QWidget>(desk.window, "caseWordsScroll");
    BOOST_TEST(around.height() <= std::max(words.heightForWidth(words.width()), around.minimumHeight()) + 12);
    const auto& slips = named<QTextBrowser>(desk.window, "slipsText");
    BOOST_TEST(slips.height() <= slips.maximumHeight());
    BOOST_TEST(named<QTableView>(desk.window, "caseCriteria").height() > 400);
    desk.window.audit().showView(1);
    QTest::qWait(20);
    BOOST_TEST(named<QWidget>(desk.window, "auditChart").height() >
               4 * named<QTableView>(desk.window, "chartTable").height());
    desk.window.audit().showView(2);
    BOOST_TEST(named<QLabel>(desk.window, "lotsWords").isVisible());      // none was drawn
    BOOST_TEST(desk.label("dueHeading").endsWith(QStringLiteral(": 0"))); // an empty list says that it is
}

BOOST_AUTO_TEST_CASE(a_chart_that_cannot_be_drawn_says_why_and_has_its_numbers_all_the_same,
                     *utf::label("PROP"))
{
    AuditDesk desk;
    desk.window.audit().showView(1);
    auto& kind = named<QComboBox>(desk.window, "chartKindBox");
    for (int at = 0; at < kind.count(); ++at) {
        kind.setCurrentIndex(at);
        const bool drawn = named<QWidget>(desk.window, "auditChart").isVisible() ||
                           named<QWidget>(desk.window, "reasonBars").isVisible();
        BOOST_TEST(drawn != named<QLabel>(desk.window, "chartWhyNot").isVisible());
        BOOST_TEST((drawn || !desk.label("chartWhyNot").isEmpty()));
    }
    kind.setCurrentIndex(0);
    BOOST_TEST(named<QTableView>(desk.window, "chartTable").model()->rowCount() >= 1);
}

BOOST_AUTO_TEST_CASE(a_lot_is_drawn_its_sheet_written_read_back_and_decided, *utf::label("PROP"))
{
    AuditDesk desk;
    desk.window.audit().showView(2);
    auto& bench = named<BenchPanel>(desk.window, "benchPanel");
    const auto sheet = desk.folder.path() + QStringLiteral("/bench-sheet.csv");
    bench.draw(1, sheet);
    BOOST_TEST(desk.window.messages().code().toStdString() == "");
    auto& lots = named<QTableView>(desk.window, "lotsView");
    BOOST_TEST_REQUIRE(lots.model()->rowCount() == 1);
    BOOST_TEST(lots.model()->index(0, 3).data().toString().toStdString() == "not read yet");
    BOOST_TEST(lots.currentIndex().row() == 0); // whose sheet is asked for
    bench.readSheet(sheet);                     // nothing was filled in
    const auto decided = lots.model()->index(0, 3).data().toString().toStdString();
    BOOST_TEST((desk.window.messages().code().toStdString() != "" || decided != "not read yet"), decided);
    bench.readSheet(desk.folder.path() + QStringLiteral("/people.csv")); // no sheet at all
    BOOST_TEST(desk.window.messages().code().toStdString() != "");
    BOOST_TEST(named<QTableView>(desk.window, "dueView").model()->columnCount() == 5);
}

BOOST_AUTO_TEST_CASE(picture_and_table_of_a_chart_hold_the_same, *utf::label("DER"))
{
    const std::vector<GroupTally> groups{{"Tamsin", {200, 10}}, {"Orrowen", {50, 20}}};
    const auto funnel = funnelChart(groups, 30.0 / 250.0);
    const auto chart = chartOf(funnel);
    BOOST_TEST_REQUIRE(chart.dots.size() == 2U);
    ChartModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.show(chart);
    for (int row = 0; row < 2; ++row) {
        const auto& dot = chart.dots[static_cast<std::size_t>(row)];
        BOOST_TEST(model.index(row, ChartModel::wordsColumn).data().toString().toStdString() ==
                   dot.words.toStdString());
        BOOST_TEST(std::abs(dot.up - (dot.across == 200.0 ? 0.05 : 0.40)) < 1e-12);
        BOOST_TEST(dot.beyond == static_cast<int>(funnel.points[static_cast<std::size_t>(row)].funnel));
    }
    BOOST_TEST(chart.lines.size() == 5U); // the share of all, two inner and two outer limits
}

BOOST_AUTO_TEST_CASE(the_model_of_findings_is_sound, *utf::label("PROP"))
{
    FindingsModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    AuditCase one;
    one.judged.facts.entry = "e";
    one.judged.findings = {{"e", AuditClass::checksNotRecorded, {}}, {"e", AuditClass::offLabel, {}}};
    model.show({one});
    BOOST_TEST(model.rowCount() == 1); // what every hand-over has is counted, not listed
    BOOST_TEST(model.rowOf("e") == 0);
    model.show({});
    BOOST_TEST(model.rowCount() == 0);
}

BOOST_AUTO_TEST_SUITE_END()
