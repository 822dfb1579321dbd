// SPDX-License-Identifier: GPL-3.0-or-later
// The day of each of the three people who use the desk, from an empty folder to the report of the audit, by
// the names of what they press and fill in. Each takes less than 20 seconds.
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/opening/sample_camp.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/audit_reports.hpp"
#include "app/desk/places/bench_panel.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/session/lot.hpp"
#include "inventory/text/csv_writing.hpp"
#include "tests/desk/given_camp.hpp"

#include <QAbstractItemModel>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

#include <iostream>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{

constexpr qint64 longestFlowMs = 20'000;

/// A window without a camp, an empty folder, and hands.
struct Day {
    Day()
    {
        since.start();
        window.resize(1366, 768);
        window.show();
        BOOST_TEST_REQUIRE(QTest::qWaitForWindowExposed(&window));
    }
    ~Day()
    {
        std::cout << boost::unit_test::framework::current_test_case().p_name << ": " << since.elapsed()
                  << " ms\n";
        BOOST_TEST(since.elapsed() < longestFlowMs);
    }
    void press(const char* button)
    {
        auto& found = named<QPushButton>(window, button);
        BOOST_TEST_REQUIRE(found.isVisible(), button);
        BOOST_TEST_REQUIRE(found.isEnabled(), button);
        found.click();
    }
    void write(const char* field, const char* text)
    {
        auto& edit = named<QLineEdit>(window, field);
        edit.setFocus();
        edit.selectAll();
        QTest::keyClicks(&edit, QLatin1String(text));
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(&window, key, with);
    }
    void enter() { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return); }
    void went(const char* what)
    {
        BOOST_TEST(window.messages().code().toStdString() == "",
                   what << ": " << window.messages().text().toStdString());
    }
    [[nodiscard]] std::string label(const char* name)
    {
        return named<QLabel>(window, name).text().toStdString();
    }
    [[nodiscard]] int rows(const char* table) { return named<QTableView>(window, table).model()->rowCount(); }

    /// A camp of one's own in the empty folder, its trays typed.
    void makeCamp(const char* trays)
    {
        press("startOwnButton");
        write("campNameEdit", "Pier 7");
        named<QPlainTextEdit>(window, "traysEdit").setPlainText(QString::fromUtf8(trays));
        named<QLineEdit>(window, "newFolderEdit").setText(folder());
        auto& make = named<QPushButton>(window, "makeCampButton");
        BOOST_TEST_REQUIRE(QTest::qWaitFor([&make] { return make.isEnabled(); }, 5000));
        make.click();
        BOOST_TEST_REQUIRE(window.campFolder().toStdString() == folder().toStdString());
    }
    /// One adult with both eyes and PD, ready to be matched.
    void person(const char* code, const char* right, const char* left)
    {
        key(Qt::Key_N, Qt::ControlModifier);
        write("personEdit", code);
        write("ageEdit", "30");
        write("rightEyeEdit", right);
        write("leftEyeEdit", left);
        write("distancePdEdit", "62");
        enter();
    }
    void handOver()
    {
        for (const auto* check : {"focimeterCheck", "fitCheck", "acuityCheck", "instructionsCheck"})
            named<QCheckBox>(window, check).setChecked(true);
        key(Qt::Key_Return, Qt::ControlModifier);
        went("hand over");
    }
    void audit()
    {
        press("auditPlaceButton");
        window.audit().waitForAudit();
        went("audit");
    }
    QByteArray report(bool detail, const char* name)
    {
        press("findingsAsBench");
        auto& reports = named<AuditReports>(window, "auditReports");
        QSignalSpy ended(&reports, &AuditReports::ended);
        const auto file = QDir(place.path()).filePath(QLatin1String(name));
        reports.save(detail, file);
        BOOST_TEST((ended.count() > 0 || ended.wait(15'000)));
        went(name);
        QFile written(file);
        BOOST_TEST_REQUIRE(written.open(QIODevice::ReadOnly), name);
        return written.readAll();
    }
    [[nodiscard]] QString folder() const { return place.filePath(QStringLiteral("camp")); }

    const QTemporaryDir place;
    QElapsedTimer since;
    DeskWindow window;
};

constexpr auto pierTrays =
    "distance -1.00: 3 centres 62\ndistance -1.25: 4 centres 62\ndistance -2.00: 2 centres 62\n"
    "near +1.50: 4 centres 60\nnear +2.00: 5 centres 60\n"; // 18 pairs

} // namespace

BOOST_AUTO_TEST_SUITE(flows)

BOOST_AUTO_TEST_CASE(the_optician_from_the_sample_to_the_report, *utf::label("PROP"))
{
    Day day;
    day.press("openSampleButton");
    BOOST_TEST(day.window.campFolder().toStdString() == sampleFolder().toStdString());
    BOOST_TEST(named<QLabel>(day.window, "sampleLabel").isVisible());
    day.key(Qt::Key_O, Qt::ControlModifier);
    day.press("sampleAfreshButton"); // whoever had it before
    for (const auto& [code, right, left] :
         {std::tuple{"F-1", "-1.25", "-1.25"}, std::tuple{"F-2", "-2.00", "-2.00"},
          std::tuple{"F-3", "-0.75", "-1.00"}}) {
        day.person(code, right, left);
        BOOST_TEST(!named<QLabel>(day.window, "verdictLabel").text().isEmpty());
        day.handOver();
    }
    day.key(Qt::Key_Z, Qt::ControlModifier); // the last was not collected after all
    day.went("undo");
    day.audit();
    BOOST_TEST(day.label("auditFigures").find("hand-overs 2, judged again 2") != std::string::npos,
               day.label("auditFigures"));
    BOOST_TEST(day.label("auditChain").find("whole") != std::string::npos);
    const auto page = day.report(false, "site.html");
    BOOST_TEST(page.contains("<html"));
    BOOST_TEST(!page.contains("F-1")); // persons stand in no report
}

BOOST_AUTO_TEST_CASE(the_keeper_from_trays_to_the_report, *utf::label("PROP"))
{
    Day day;
    day.makeCamp(pierTrays);
    day.press("stockPlaceButton");
    BOOST_TEST_REQUIRE(day.rows("linesView") == 5);
    auto& lines = *named<QTableView>(day.window, "linesView").model();
    const auto first = lines.index(0, 1).data(Qt::UserRole).toString().toStdString();
    BOOST_TEST_REQUIRE(day.window.stock().chooseLine(first), first);
    named<QComboBox>(day.window, "stockWorkBox").setCurrentIndex(0); // receive
    day.write("stockQuantityEdit", "6");
    day.write("stockWordsEdit", "Orrowen store");
    QTest::keyClick(&named<QLineEdit>(day.window, "stockQuantityEdit"), Qt::Key_Return);
    day.went("receive");
    BOOST_TEST(day.rows("cardView") == 2); // opened and received
    day.press("dispensePlaceButton");
    day.person("K-1", "-1.25", "-1.25");
    day.handOver();
    day.audit();
    BOOST_TEST(day.label("auditFigures").find("hand-overs 1") != std::string::npos,
               day.label("auditFigures"));
    const auto table = day.report(false, "site.csv");
    BOOST_TEST(table.contains("section"));
    const auto stock = Camp::open(day.folder().toStdString(), Ledger::Mode::readOnly);
    int onHand = 0;
    for (const auto& line : stock.stock())
        onHand += line.onHand;
    BOOST_TEST(onHand == 18 + 6 - 1);
}

BOOST_AUTO_TEST_CASE(the_supervisor_from_trays_over_a_lot_to_the_report, *utf::label("PROP"))
{
    Day day;
    day.makeCamp(pierTrays);
    for (const auto* code : {"S-1", "S-2", "S-3"}) {
        day.person(code, "-1.25", "-1.25");
        day.handOver();
    }
    day.audit();
    day.press("findingsAsBench");
    auto& bench = named<BenchPanel>(day.window, "benchPanel");
    const auto sheet = QDir(day.place.path()).filePath(QStringLiteral("sheet.csv"));
    bench.draw(2, sheet);
    day.went("draw");
    BOOST_TEST_REQUIRE(day.rows("lotsView") == 1);
    QFile file(sheet);
    BOOST_TEST_REQUIRE(file.open(QIODevice::ReadOnly));
    BOOST_TEST(file.readAll().contains("-1.25"));
    QSignalSpy checked(&day.window.audit(), &AuditPlace::chainCheckEnded);
    day.press("chainButton");
    BOOST_TEST((checked.count() > 0 || checked.wait(15'000)));
    BOOST_TEST(day.label("auditChain").find("whole") != std::string::npos, day.label("auditChain"));
    const auto words = day.report(true, "detail.txt");
    BOOST_TEST(words.contains("Pier 7"));
    const auto paper = day.report(true, "detail.pdf");
    BOOST_TEST((paper.left(5) == QByteArray("%PDF-")));
}

BOOST_AUTO_TEST_SUITE_END()
