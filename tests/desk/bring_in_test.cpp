// SPDX-License-Identifier: GPL-3.0-or-later
// Bringing in: what a table of others means is found out and corrected, every row says how it was read,
// nothing is written before somebody says so, and what is stopped has not happened.
#include "app/desk/bringing/bring_in_panel.hpp"
#include "app/desk/bringing/exchange_page.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/brought_rows_model.hpp"
#include "app/desk/models/finding_list_model.hpp"
#include "app/desk/models/mapped_columns_model.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QHeaderView>
#include <QPushButton>
#include <QTableView>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
constexpr auto theirs = "Patient ID;OD Sph;OD Cyl;OD Ax;OS Sph;OS Cyl;OS Ax;Add;PD;Remark\n"
                        "K-1;-1,25;+0,50;175;+0,75;;;2,00;62,5;tired\n"
                        "K-2;1,50;;;+1,50;;;;60;\n"
                        "K-3;-3,00;+0,75;;-3,25;;;;61;\n"
                        "P-1;-1,00;;;-1,00;;;;60;\n"; // waits already

/// The page with a table written into the camp folder, read.
struct ReadDesk : OpenDesk {
    explicit ReadDesk(const QByteArray& bytes = theirs, const QString& name = QStringLiteral("theirs.txt"))
    {
        window.showExchange();
        folder.write(name, bytes);
        panel().openFiles({folder.path() + QLatin1Char('/') + name});
        window.exchange().waitForReading();
    }
    BringInPanel& panel() { return window.exchange().bringIn(); }
    const BroughtIn& read()
    {
        BOOST_TEST_REQUIRE(panel().shown() != nullptr);
        return *panel().shown();
    }
    template <class Model>
    Model& model()
    {
        const auto found = window.findChildren<Model*>();
        BOOST_TEST_REQUIRE(found.size() >= 1);
        return *found.front();
    }
    void choose(const char* box, int index)
    {
        auto& chosen = named<QComboBox>(window, box);
        chosen.setCurrentIndex(index);
        Q_EMIT chosen.activated(index);
        window.exchange().waitForReading();
    }
    QStringList broughtFiles() const
    {
        return QDir(folder.path()).entryList({QStringLiteral("brought-in-*.csv")}, QDir::Files);
    }
    QString cell(int row, int column)
    {
        return model<BroughtRowsModel>().index(row, column).data().toString();
    }
};

QByteArray manyRows(int count)
{
    QByteArray text = "ID;OD Sph;OD Cyl;OD Ax;OS Sph;OS Cyl;OS Ax\n";
    for (int row = 1; row <= count; ++row)
        text += "M-" + QByteArray::number(row) + ";-1,25;-0,50;90;-1,00;;\n";
    return text;
}
} // namespace

BOOST_AUTO_TEST_SUITE(bring_in)

BOOST_AUTO_TEST_CASE(a_table_with_decimal_comma_and_plus_cylinders_is_understood_and_corrected,
                     *utf::label("DER"))
{
    ReadDesk desk;
    const auto people = desk.folder.read(QStringLiteral("people.csv"));
    BOOST_TEST(desk.read().taken == 1U);
    BOOST_TEST(desk.read().refused == 3U);
    BOOST_TEST(desk.read().table->plusCylinders == 2);
    BOOST_TEST(desk.read().table->commaDecimals);
    BOOST_TEST(named<QComboBox>(desk.window, "separatorBox").currentIndex() == 1);
    BOOST_TEST(desk.read().rows[0].record->eyes.right.final.asWritten == "-1.25 +0.50 x 175");
    desk.choose("unsignedSpheresBox", 1);
    BOOST_TEST(desk.read().taken == 2U); // K-2: 1,50 is plus in this table
    named<QPushButton>(desk.window, "bringInButton").click();
    BOOST_TEST(QTest::qWaitFor([&] { return !desk.panel().isBusy(); }, 10'000));
    BOOST_TEST_REQUIRE(desk.broughtFiles().size() == 1);
    const auto kept = readPrescriptionTable(
        (desk.folder.path() + QLatin1Char('/') + desk.broughtFiles().front()).toStdString(), "2026-11-27");
    BOOST_TEST_REQUIRE(kept.value.rows.size() == 2U);
    BOOST_TEST(kept.value.rows[1].record->eyes.right.final.asWritten == "+1.50");
    BOOST_TEST(desk.folder.read(QStringLiteral("people.csv")) == people);
    BOOST_TEST(desk.window.choosePerson(QStringLiteral("K-2")));
    DeskWindow later; // the camp is opened again: they still wait
    later.show();
    BOOST_TEST_REQUIRE(later.openCamp(desk.folder.path()));
    BOOST_TEST(QTest::qWaitFor([&] { return later.choosePerson(QStringLiteral("K-1")); }, 10'000));
}

BOOST_AUTO_TEST_CASE(every_row_says_how_it_was_read_and_what_was_not_understood, *utf::label("PROP"))
{
    ReadDesk desk;
    auto& rows = desk.model<BroughtRowsModel>();
    BOOST_TEST_REQUIRE(rows.rowCount() == 4);
    const auto reading = desk.cell(0, BroughtRowsModel::readingColumn);
    // In isolates, so that each value stands beside its own words in any direction; not broken over lines.
    BOOST_TEST(reading.contains(QStringLiteral("\u2066-1.25\u00A0+0.50\u00A0x\u00A0175\u2069")));
    BOOST_TEST(reading.count(QChar(0x2068)) == 1); // the PD; both eyes stand in one
    BOOST_TEST(reading.count(QStringLiteral("+2.00")) == 1);
    BOOST_TEST(desk.cell(1, BroughtRowsModel::readingColumn).isEmpty());
    auto& table = named<QTableView>(desk.window, "broughtRowsView"); // a full reading is seen whole
    BOOST_TEST(table.fontMetrics().averageCharWidth() * 64 <=
               table.columnWidth(BroughtRowsModel::readingColumn) *
                   ((table.verticalHeader()->defaultSectionSize() - 8) / table.fontMetrics().height()));
    BOOST_TEST(desk.cell(1, BroughtRowsModel::foundColumn).contains(QStringLiteral("1.50")));
    auto& findings = named<QTableView>(desk.window, "broughtFindingsView");
    auto& view = named<QTableView>(desk.window, "broughtRowsView");
    const auto code = [&] {
        return findings.model()
            ->index(0, FindingListModel::codeColumn)
            .data(FindingListModel::rawRole)
            .toString();
    };
    BOOST_TEST((code() == QStringLiteral("table-unsigned"))); // of the file, while no row is chosen
    view.setCurrentIndex(rows.index(2, 0));
    BOOST_TEST((code() == QStringLiteral("axis-missing")));
    view.setCurrentIndex(rows.index(3, 0));
    BOOST_TEST((code() == QStringLiteral("person-waiting")));
    named<QCheckBox>(desk.window, "onlyToldCheck").click();
    BOOST_TEST(rows.rowCount() == 3);
    BOOST_TEST(desk.broughtFiles().isEmpty()); // a dry run
}

BOOST_AUTO_TEST_CASE(rows_of_a_spreadsheet_come_by_the_clipboard, *utf::label("PROP"))
{
    OpenDesk desk;
    desk.window.showExchange();
    QGuiApplication::clipboard()->setText(
        QStringLiteral("ID\tR\tL\tPD\nC-1\t-1.00\t-1.25 -0.50 x 90\t62\nC-2\t-2.00\tbalance\t61\n"));
    QTest::keyClick(&desk.window, Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
    desk.window.exchange().waitForReading();
    const auto* read = desk.window.exchange().bringIn().shown();
    BOOST_TEST_REQUIRE((read != nullptr));
    BOOST_TEST(read->taken == 2U);
    BOOST_TEST(read->table->map.separator == '\t');
    QTest::keyClick(&desk.window, Qt::Key_B, Qt::ControlModifier | Qt::ShiftModifier);
    BOOST_TEST(QTest::qWaitFor([&] { return desk.window.choosePerson(QStringLiteral("C-2")); }, 10'000));
    QGuiApplication::clipboard()->clear();
    desk.window.showExchange();
    named<QPushButton>(desk.window, "pasteSourceButton").click();
    BOOST_TEST((desk.window.messages().code() == QStringLiteral("clipboard-empty")));
}

BOOST_AUTO_TEST_CASE(the_preview_has_three_fifths_of_the_width_of_a_small_screen, *utf::label("DER"))
{
    ReadDesk desk;
    desk.window.resize(1366, 768);
    QTest::qWait(1); // the layout settles
    const int table = named<QWidget>(desk.window, "tableReadingFrame").width();
    const int preview = named<QWidget>(desk.window, "previewFrame").width();
    // 2:3, within a hundredth for what stands between them
    BOOST_TEST(std::abs(preview / double(table + preview) - 0.6) < 0.01, table << " and " << preview);
}

BOOST_AUTO_TEST_CASE(what_is_brought_in_twice_comes_once, *utf::label("PROP"))
{
    ReadDesk desk;
    named<QPushButton>(desk.window, "bringInButton").click();
    BOOST_TEST(QTest::qWaitFor([&] { return !desk.panel().isBusy(); }, 10'000));
    desk.panel().openFiles({desk.folder.path() + QStringLiteral("/theirs.txt")});
    desk.window.exchange().waitForReading();
    BOOST_TEST(desk.read().taken == 0U);
    BOOST_TEST(!named<QPushButton>(desk.window, "bringInButton").isEnabled());
}

BOOST_AUTO_TEST_CASE(a_file_that_cannot_be_read_says_where_and_brings_nothing, *utf::label("DER"))
{
    ReadDesk desk("OD Sph;OS Sph\n-1,00;-1,00\n");
    BOOST_TEST(desk.read().rows.empty());
    BOOST_TEST(!named<QPushButton>(desk.window, "bringInButton").isEnabled());
    BOOST_TEST(named<QTableView>(desk.window, "broughtFindingsView").model()->rowCount() >= 1);
    BOOST_TEST(desk.model<MappedColumnsModel>().rowCount() == 2); // to be corrected
    ReadDesk missing;
    missing.panel().openFiles({missing.folder.path() + QStringLiteral("/none.csv")});
    missing.window.exchange().waitForReading();
    BOOST_TEST(missing.read().findings.at(0).code == "file-missing");
}

BOOST_AUTO_TEST_CASE(a_column_is_taken_for_something_else_by_the_keyboard, *utf::label("PROP"))
{
    ReadDesk desk("Nr;Droite;Gauche\nK-1;-1,00;-1,25\n");
    auto& view = named<QTableView>(desk.window, "columnsView");
    auto& columns = desk.model<MappedColumnsModel>();
    for (const auto& [row, target] : {std::pair{0, "person"}, std::pair{1, "right"}, std::pair{2, "left"}}) {
        const auto index = columns.index(row, MappedColumnsModel::meaningColumn);
        view.setFocus();
        view.setCurrentIndex(index);
        QTest::keyClick(&view, Qt::Key_F2);
        auto& box = named<QComboBox>(view, "meaningBox");
        const int at = box.findData(QString::fromUtf8(target));
        BOOST_TEST_REQUIRE(at >= 0);
        box.setCurrentIndex(at);
        Q_EMIT box.activated(at);
        desk.window.exchange().waitForReading();
        QTest::qWait(1); // the list takes its field away
    }
    BOOST_TEST(desk.read().taken == 1U);
    const auto path = desk.folder.path() + QStringLiteral("/droite.map");
    desk.panel().saveMap(path);
    const auto map = readTableMap(desk.folder.read(QStringLiteral("droite.map")).toStdString(), "droite.map");
    BOOST_TEST(map.findings.empty());
    BOOST_TEST(map.value.columns.size() == 3U);
    desk.panel().openFiles({desk.folder.path() + QStringLiteral("/theirs.txt")});
    desk.window.exchange().waitForReading();
    BOOST_TEST(desk.read().taken == 0U);
    desk.panel().useMap(path);
    desk.window.exchange().waitForReading();
    BOOST_TEST(desk.read().taken == 1U);
}

BOOST_AUTO_TEST_CASE(reading_that_is_stopped_leaves_nothing, *utf::label("PROP"))
{
    OpenDesk desk;
    desk.window.showExchange();
    auto& panel = desk.window.exchange().bringIn();
    desk.folder.write(QStringLiteral("many.txt"), manyRows(20'000));
    panel.openFiles({desk.folder.path() + QStringLiteral("/many.txt")});
    BOOST_TEST(panel.isBusy());
    named<QPushButton>(desk.window, "stopWorkButton").click();
    desk.window.exchange().waitForReading();
    BOOST_TEST((panel.shown() == nullptr));
    BOOST_TEST(!desk.window.choosePerson(QStringLiteral("M-1")));
}

BOOST_AUTO_TEST_CASE(bringing_in_that_is_stopped_writes_nothing, *utf::label("PROP"))
{
    ReadDesk desk(manyRows(20'000));
    BOOST_TEST(desk.read().taken == 20'000U);
    named<QPushButton>(desk.window, "bringInButton").click();
    named<QPushButton>(desk.window, "stopWorkButton").click();
    desk.window.exchange().waitForReading();
    BOOST_TEST(desk.broughtFiles().isEmpty());
    BOOST_TEST(!desk.window.choosePerson(QStringLiteral("M-1")));
    named<QPushButton>(desk.window, "bringInButton").click(); // what was read is still there
    BOOST_TEST(QTest::qWaitFor([&] { return desk.window.choosePerson(QStringLiteral("M-20000")); }, 60'000));
    BOOST_TEST(desk.broughtFiles().size() == 1);
}

BOOST_AUTO_TEST_CASE(what_is_corrected_while_it_is_read_is_read_again, *utf::label("PROP"))
{
    ReadDesk desk(manyRows(20'000));
    named<QComboBox>(desk.window, "decimalBox").setCurrentIndex(1);
    Q_EMIT named<QComboBox>(desk.window, "decimalBox").activated(1); // reads
    BOOST_TEST(desk.panel().isBusy());
    named<QComboBox>(desk.window, "decimalBox").setCurrentIndex(2);
    Q_EMIT named<QComboBox>(desk.window, "decimalBox").activated(2); // while it reads
    desk.window.exchange().waitForReading();
    BOOST_TEST((desk.read().table->map.decimal == DecimalMark::comma));
    BOOST_TEST(desk.read().taken == 20'000U);
}

BOOST_AUTO_TEST_CASE(the_models_keep_their_promises, *utf::label("PROP"))
{
    BroughtRowsModel rows;
    MappedColumnsModel columns;
    FindingListModel findings;
    for (auto* model : std::initializer_list<QAbstractItemModel*>{&rows, &columns, &findings})
        new QAbstractItemModelTester(model, QAbstractItemModelTester::FailureReportingMode::Fatal, model);
    const auto bytes = std::make_shared<const std::string>(theirs);
    const auto read =
        std::make_shared<const BroughtIn>(readBroughtIn({{}, bytes}, {}, {"P-1"}, {"2026-11-27", {}}));
    rows.show(read);
    columns.show(*read->table);
    findings.show(read->findings);
    rows.showOnlyTold(true);
    BOOST_TEST(rows.rowCount() == 3);
    rows.showOnlyTold(false);
    BOOST_TEST(rows.rowCount() == 4);
    BOOST_TEST(findings.rowCount() == static_cast<int>(read->findings.size()));
    const auto meaning = columns.index(9, MappedColumnsModel::meaningColumn);
    BOOST_TEST(columns.setData(meaning, QStringLiteral("prescriber"), Qt::EditRole));
    BOOST_TEST(!columns.setData(meaning, QStringLiteral("nose"), Qt::EditRole));
    BOOST_TEST(!columns.setData(columns.index(9, 0), QStringLiteral("person"), Qt::EditRole));
    BOOST_TEST(columns.columns()[9].target == "prescriber");
    columns.clear();
    rows.show(nullptr);
    findings.show({});
    BOOST_TEST(rows.rowCount() + columns.rowCount() + findings.rowCount() == 0);
}

BOOST_AUTO_TEST_SUITE_END()
