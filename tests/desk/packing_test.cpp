// SPDX-License-Identifier: GPL-3.0-or-later
// Packing in the place Stock, as the keeper does it: money and weight, the plan with its reasons, the lists;
// and the command line comes to the same.
#include "app/desk/guide/key_sheet.hpp"
#include "app/desk/lasting/frame_watch.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/packing_rows.hpp"
#include "app/desk/places/packing_panel.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/plots/packing_curve.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QDoubleSpinBox>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QProcess>
#include <QPushButton>
#include <QSlider>
#include <QTabBar>
#include <QTableView>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{

constexpr auto supplierText = R"(format: quarterstep supplier 1
supplier: Test chandlery
currency: shells
lines:
  - {line: N+150-62, kind: ready-made, power: +1.50, use: near, centres: 62, cost: 1.00, pack: 2, weight: 25}
  - {line: N+200, kind: ready-made, power: +2.00, use: near, centres: 60, cost: 1.00, pack: 2, weight: 25}
  - {line: N+250-60, kind: ready-made, power: +2.50, use: near, centres: 60, cost: 1.00, pack: 2, weight: 25}
  - {line: N+400-62, kind: ready-made, power: +4.00, use: near, centres: 62, cost: 1.00, pack: 2, weight: 25}
assorted packs:
  - {pack: MIX, holds: {N+150-62: 1, N+200: 2, N+250-60: 1}, cost: 3.50}
)";

QByteArray peopleText(int many)
{
    QByteArray text = "person,age,purpose,right,left,add,pd_mm,near_pd_mm,near_unaided\n";
    const char* additions[] = {"+1.50", "+2.00", "+2.00", "+2.25", "+2.50", "+1.75", "+3.00"};
    for (int i = 0; i < many; ++i)
        text += QByteArray("R-") + QByteArray::number(i) + "," + QByteArray::number(48 + i % 12) +
                ",near,0.00,0.00," + additions[i % 7] + ",63,60,N18\n";
    return text;
}

struct PackingDesk : OpenDesk {
    explicit PackingDesk(int people = 120)
    {
        folder.write(QStringLiteral("supplier.yaml"), supplierText);
        folder.write(QStringLiteral("people.csv"), peopleText(people));
        BOOST_TEST_REQUIRE(window.openCamp(folder.path()));
        window.showPlace(DeskWindow::Place::stock);
        QTest::keyClick(&window, Qt::Key_4, Qt::ControlModifier);
        BOOST_TEST_REQUIRE(panel().isVisible());
    }
    PackingPanel& panel() { return window.stock().packingPanel(); }
    void type(const char* box, const char* text)
    {
        auto& field = named<QAbstractSpinBox>(window, box);
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, QLatin1String(text));
    }
    void plan()
    {
        FrameWatch watch;
        watch.begin();
        QTest::keyClick(&window, Qt::Key_F5);
        panel().waitForPlan();
        BOOST_TEST_MESSAGE("the loop was away for at most " << watch.longestMs() << " ms");
        BOOST_TEST(window.messages().code().toStdString() == "");
    }
    QString label(const char* name) { return named<QLabel>(window, name).text(); }
    QAbstractItemModel& list(PackingPanel::List which)
    {
        named<QTabBar>(window, "packingLists").setCurrentIndex(static_cast<int>(which));
        return *named<QTableView>(window, "packingView").model();
    }
    QByteArray command(const QStringList& words)
    {
        QProcess process;
        process.start(QStringLiteral(QS_PROGRAM),
                      QStringList{QStringLiteral("pack"), QStringLiteral("--camp"), folder.path(),
                                  QStringLiteral("--supplier"),
                                  folder.path() + QStringLiteral("/supplier.yaml")} +
                          words + QStringList{folder.path() + QStringLiteral("/people.csv")});
        BOOST_TEST_REQUIRE(process.waitForFinished(60'000));
        BOOST_TEST(process.exitCode() == 0, process.readAllStandardError().toStdString());
        return process.readAllStandardOutput();
    }
};

double raw(const QAbstractItemModel& model, int row, int column)
{
    return model.index(row, column).data(CellsModel::rawRole).toDouble();
}

bool same(double a, double b) // what JSON says is rounded to a millionth
{
    return std::abs(a - b) < 1e-6;
}

} // namespace

BOOST_AUTO_TEST_SUITE(packing)

BOOST_AUTO_TEST_CASE(the_desk_comes_to_what_the_command_line_prints, *utf::label("PROP"))
{
    PackingDesk desk;
    desk.type("budgetBox", "16");
    desk.type("packingWeightBox", "0,4"); // a decimal comma will do
    desk.type("packingPeopleBox", "20");
    desk.type("packingBoxesBox", "1");
    desk.plan();
    const QStringList limits{
        QStringLiteral("--budget"), QStringLiteral("16"), QStringLiteral("--weight"), QStringLiteral("0.4"),
        QStringLiteral("--people"), QStringLiteral("20"), QStringLiteral("--boxes"),  QStringLiteral("1")};
    const auto printed =
        QJsonDocument::fromJson(desk.command(limits + QStringList{QStringLiteral("--json")})).object();
    const auto& answer = desk.panel().plan()->answer;
    BOOST_TEST(answer.order.size() > 0U);
    BOOST_TEST(same(printed[QStringLiteral("spend")].toDouble(), static_cast<double>(answer.spend) / 1000.0));
    BOOST_TEST(same(printed[QStringLiteral("served_share")].toDouble(), answer.servedShare));
    BOOST_TEST(same(printed[QStringLiteral("fitted_share")].toDouble(), answer.fittedShare));

    const auto order = printed[QStringLiteral("order")].toArray();
    const auto& orderRows = desk.list(PackingPanel::List::order);
    BOOST_TEST_REQUIRE(orderRows.rowCount() == order.size());
    for (int row = 0; row < orderRows.rowCount(); ++row) {
        const auto one = order[row].toObject();
        BOOST_TEST(orderRows.index(row, 0).data(CellsModel::rawRole).toString().toStdString() ==
                   one[QStringLiteral("offer")].toString().toStdString());
        BOOST_TEST(raw(orderRows, row, 1) == one[QStringLiteral("packs")].toDouble());
        BOOST_TEST(raw(orderRows, row, 2) == one[QStringLiteral("pieces")].toDouble());
        BOOST_TEST(same(raw(orderRows, row, 3) / 1000.0, one[QStringLiteral("cost")].toDouble()));
        BOOST_TEST(!orderRows.index(row, 5).data().toString().isEmpty()); // why
    }
    const auto held = printed[QStringLiteral("held_out")].toArray();
    const auto& heldRows = desk.list(PackingPanel::List::checked);
    BOOST_TEST_REQUIRE(heldRows.rowCount() == 5);
    for (int row = 0; row < 5; ++row) {
        BOOST_TEST(
            same(raw(heldRows, row, 1), held[row].toObject()[QStringLiteral("served_share")].toDouble()));
        BOOST_TEST(same(raw(heldRows, row, 2),
                        held[row].toObject()[QStringLiteral("served_share_first_come")].toDouble()));
    }
    const auto without = printed[QStringLiteral("without")].toArray();
    const auto& withoutRows = desk.list(PackingPanel::List::without);
    BOOST_TEST_REQUIRE(withoutRows.rowCount() == without.size());
    for (int row = 0; row < withoutRows.rowCount(); ++row)
        BOOST_TEST(
            same(raw(withoutRows, row, 1), without[row].toObject()[QStringLiteral("needs")].toDouble()));

    // The lists as files: the same bytes.
    const auto file = [&desk](const char* name) {
        return desk.folder.path() + QLatin1Char('/') + QLatin1String(name);
    };
    (void)desk.command(limits + QStringList{QStringLiteral("--output"), file("a.csv"),
                                            QStringLiteral("--boxes-list"), file("b.csv")});
    desk.panel().saveOrder(file("c.csv"));
    desk.panel().saveBoxes(file("d.csv"));
    BOOST_TEST((desk.folder.read(QStringLiteral("a.csv")) == desk.folder.read(QStringLiteral("c.csv"))));
    BOOST_TEST((desk.folder.read(QStringLiteral("b.csv")) == desk.folder.read(QStringLiteral("d.csv"))));
    // And the sentence about the money stands there as it is printed.
    const auto words = QString::fromUtf8(desk.command(limits));
    BOOST_TEST(words.contains(desk.label("packingAnswer").section(QLatin1Char('\n'), 0, 0)),
               desk.label("packingAnswer").toStdString());
}

BOOST_AUTO_TEST_CASE(how_the_draws_are_made_is_chosen_kept_and_used, *utf::label("PROP"))
{
    PackingDesk desk(30); // few enough for the published mix
    auto& body = named<QWidget>(desk.window, "drawsBody");
    BOOST_TEST(!body.isVisible());
    BOOST_TEST(desk.label("drawsWords").contains(QStringLiteral("50")));
    QTest::keyClick(&desk.window, Qt::Key_D, Qt::ControlModifier);
    BOOST_TEST(body.isVisible());
    BOOST_TEST(named<QWidget>(desk.window, "assumeCentredCheck").hasFocus());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    named<QCheckBox>(desk.window, "assumeVertexCheck").click();
    desk.type("budgetBox", "16");
    desk.type("packingPeopleBox", "20");
    desk.type("priorBox", "12");
    desk.type("scenariosBox", "20");
    desk.type("seedBox", "7");
    BOOST_TEST(desk.label("drawsWords").contains(QStringLiteral("20")));
    desk.plan();
    const auto printed =
        QJsonDocument::fromJson(
            desk.command({QStringLiteral("--budget"), QStringLiteral("16"), QStringLiteral("--people"),
                          QStringLiteral("20"), QStringLiteral("--prior"), QStringLiteral("12"),
                          QStringLiteral("--scenarios"), QStringLiteral("20"), QStringLiteral("--seed"),
                          QStringLiteral("7"), QStringLiteral("--assume"), QStringLiteral("centred,vertex"),
                          QStringLiteral("--json")}))
            .object();
    const auto& plan = *desk.panel().plan();
    BOOST_TEST(same(printed[QStringLiteral("served_share")].toDouble(), plan.answer.servedShare));
    BOOST_TEST(same(printed[QStringLiteral("fitted_share")].toDouble(), plan.answer.fittedShare));
    BOOST_TEST(printed[QStringLiteral("order")].toArray().size() ==
               static_cast<qsizetype>(plan.answer.order.size()));
    BOOST_TEST(plan.question.scenarios == 20);
    BOOST_TEST(desk.label("packingAnswer").contains(QStringLiteral("assumed: where no PD was taken")),
               desk.label("packingAnswer").toStdString());
    BOOST_TEST(desk.label("packingState").toStdString() == "");
    const auto asked = desk.panel().wish();
    desk.type("seedBox", "8");
    BOOST_TEST(desk.label("packingState").contains(QStringLiteral("other figures")));
    desk.type("seedBox", "7");

    // Kept for this folder, and for no other.
    BOOST_TEST_REQUIRE(desk.window.openCamp(desk.folder.path()));
    const auto again = desk.panel().wish();
    BOOST_TEST((again.assumed == asked.assumed && asked.assumed.vertex && !asked.assumed.final));
    BOOST_TEST((again.prior == asked.prior && again.prior == 12));
    BOOST_TEST(again.scenarios == 20);
    BOOST_TEST(again.seed == 7U);
    const CampFolder other;
    BOOST_TEST_REQUIRE(desk.window.openCamp(other.path()));
    BOOST_TEST(desk.panel().wish().scenarios == 50);
    BOOST_TEST(!desk.panel().wish().prior);
    BOOST_TEST((desk.panel().wish().assumed == CoverageAssumptions()));
}

BOOST_AUTO_TEST_CASE(slider_and_field_say_the_same, *utf::label("PROP"))
{
    PackingDesk desk;
    auto& money = named<QDoubleSpinBox>(desk.window, "budgetBox");
    auto& slider = named<QSlider>(desk.window, "budgetSlider");
    desk.type("budgetBox", "50");
    BOOST_TEST(slider.value() == 10); // steps of 5
    QTest::keyClick(&slider, Qt::Key_Right);
    BOOST_TEST(money.value() == 55.0);
    QTest::keyClick(&slider, Qt::Key_PageUp);
    BOOST_TEST(money.value() == 105.0);
    desk.type("budgetBox", "12345,67");
    BOOST_TEST(desk.panel().wish().budget == 12345670);
    BOOST_TEST(slider.value() == slider.maximum()); // the slider reaches as far as the field
    QTest::keyClick(&money, Qt::Key_Down);
    BOOST_TEST(money.value() == 12340.67);
    BOOST_TEST(!desk.panel().wish().grams);
    named<QSlider>(desk.window, "packingWeightSlider").setValue(3);
    BOOST_TEST((desk.panel().wish().grams == 1500));
}

BOOST_AUTO_TEST_CASE(the_sheet_of_keys_knows_the_keys_of_the_place, *utf::label("PROP"))
{
    const PackingDesk desk;
    QStringList keys;
    for (const auto& group : keysOf(desk.window))
        if (group.title == QStringLiteral("Stock")) // its part of the window
            for (const auto& [key, words] : group.keys)
                keys << key;
    for (const auto* key : {"Ctrl+1", "Ctrl+4", "Ctrl+5", "F5", "Ctrl+P", "Ctrl+S", "Ctrl+Shift+S", "Ctrl+E",
                            "Ctrl+Return", "F8"})
        BOOST_TEST(keys.contains(QLatin1String(key)),
                   key << " of " << keys.join(QLatin1Char(' ')).toStdString());
}

BOOST_AUTO_TEST_CASE(every_list_of_a_plan_keeps_the_rules_of_models, *utf::label("PROP"))
{
    PackingDesk desk;
    const QAbstractItemModelTester tester(named<QTableView>(desk.window, "packingView").model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    BOOST_TEST(desk.list(PackingPanel::List::order).rowCount() == 0);
    BOOST_TEST(!named<QPushButton>(desk.window, "printPackingButton").isEnabled());
    desk.type("budgetBox", "16");
    desk.type("packingPeopleBox", "30");
    desk.plan();
    const auto& answer = desk.panel().plan()->answer;
    using List = PackingPanel::List;
    BOOST_TEST(desk.list(List::order).rowCount() == static_cast<int>(answer.order.size()));
    BOOST_TEST(desk.list(List::boxes).rowCount() == static_cast<int>(answer.boxes.size()));
    BOOST_TEST(desk.list(List::without).rowCount() == static_cast<int>(answer.without.size()));
    BOOST_TEST(desk.list(List::runOuts).rowCount() == static_cast<int>(answer.runOuts.size()));
    BOOST_TEST(desk.list(List::leftOut).rowCount() == static_cast<int>(answer.leftOut.size()));
    BOOST_TEST(desk.list(List::curve).rowCount() == static_cast<int>(answer.curve.size()));
    BOOST_TEST(desk.list(List::leftOut).rowCount() > 0); // +4.00 is of no use here
    BOOST_TEST(named<QPushButton>(desk.window, "printPackingButton").isEnabled());
}

BOOST_AUTO_TEST_CASE(other_money_is_told_from_the_curve_until_it_is_planned_again, *utf::label("PROP"))
{
    PackingDesk desk;
    desk.type("budgetBox", "16");
    desk.type("packingPeopleBox", "30");
    desk.plan();
    BOOST_TEST(desk.label("packingState").toStdString() == "");
    const auto& answer = desk.panel().plan()->answer;
    BOOST_TEST((shareAt(answer, 0, 16000) == answer.curve.front().share));
    BOOST_TEST((shareAt(answer, 16000, 16000) == answer.curve.back().share));
    BOOST_TEST(!shareAt(answer, 16001, 16000));
    desk.type("budgetBox", "4");
    BOOST_TEST(desk.label("packingState").contains(QStringLiteral("curve says")));
    desk.type("packingPeopleBox", "31");
    BOOST_TEST(desk.label("packingState").contains(QStringLiteral("other figures")));
}

BOOST_AUTO_TEST_CASE(the_curve_has_its_knee_and_the_plan_on_it, *utf::label("DER"))
{
    PackAnswer answer;
    answer.curve = {{0, 0.2, {}}, {2000, 0.6, {}}, {4000, 0.7, {}}, {6000, 0.75, {}}};
    answer.knee = kneeOf(answer.curve); // farthest above the line from (0, 0.2) to (6, 0.75): at 2
    answer.spend = 6000;
    answer.fittedShare = 0.75;
    answer.bound = 0.8;
    const auto chart = packingCurve(answer, 8000, QStringLiteral("shells"));
    BOOST_TEST_REQUIRE(chart.dots.size() == 2U);
    BOOST_TEST(chart.dots[0].across == 2.0);
    BOOST_TEST(chart.dots[0].up == 0.6);
    BOOST_TEST(chart.dots[1].across == 6.0);
    BOOST_TEST_REQUIRE(chart.lines.size() == 3U);
    BOOST_TEST(chart.lines[0].main);
    BOOST_TEST(chart.lines[0].points.back().first == 8.0); // flat up to the budget
    BOOST_TEST(chart.lines[0].points.back().second == 0.75);
    BOOST_TEST(chart.lines[1].points.front().second == 0.8);
    BOOST_TEST(chart.lines[2].points.front().first == 8.0);
    BOOST_TEST(!packingCurve({}, 8000, {}).whyNot.isEmpty());
    const auto rows = PackingRows::curve(answer);
    BOOST_TEST_REQUIRE(rows.rows.size() == 4U); // the same as a table
    BOOST_TEST(rows.rows[1][2].raw.toBool());
    BOOST_TEST(!rows.rows[2][2].raw.toBool());
}

BOOST_AUTO_TEST_CASE(planning_is_stopped_and_the_window_lives_meanwhile, *utf::label("PROP"))
{
    PackingDesk desk(400);
    desk.type("packingPeopleBox", "3000"); // far more than a second
    desk.type("budgetBox", "900");
    QTest::keyClick(&desk.window, Qt::Key_F5);
    BOOST_TEST(desk.window.work().running());
    BOOST_TEST(!named<QPushButton>(desk.window, "packingPlanButton").isEnabled());
    QTest::keyClick(&desk.window, Qt::Key_2, Qt::ControlModifier); // another view while it goes on
    BOOST_TEST(!desk.panel().isVisible());
    QTest::keyClick(&desk.window, Qt::Key_4, Qt::ControlModifier);
    named<QPushButton>(desk.window, "stopWorkButton").click();
    desk.panel().waitForPlan();
    BOOST_TEST(!desk.window.work().running());
    BOOST_TEST((desk.panel().plan() == nullptr));
    BOOST_TEST(named<QPushButton>(desk.window, "packingPlanButton").isEnabled());
}

BOOST_AUTO_TEST_CASE(the_packing_list_is_printed_with_lines_that_are_new, *utf::label("PROP"))
{
    PackingDesk desk;
    desk.type("budgetBox", "16");
    desk.type("packingPeopleBox", "30");
    desk.plan();
    QTest::keyClick(&desk.window, Qt::Key_P, Qt::ControlModifier);
    BOOST_TEST(QTest::qWaitFor([&] { return desk.window.messages().text().contains(QStringLiteral(".pdf")); },
                               20'000),
               desk.window.messages().text().toStdString());
    const QDir papers(desk.folder.path() + QStringLiteral("/papers"));
    BOOST_TEST(papers.entryList({QStringLiteral("packing-list-*.pdf")}).size() == 1);
}

BOOST_AUTO_TEST_CASE(what_is_wrong_is_told_and_the_ledger_is_another_demand, *utf::label("PROP"))
{
    PackingDesk desk;
    desk.folder.write(QStringLiteral("supplier.yaml"), "format: quarterstep supplier 1\nlines: 3\n");
    QTest::keyClick(&desk.window, Qt::Key_F5);
    desk.panel().waitForPlan();
    BOOST_TEST(desk.window.messages().code().toStdString() != "");
    BOOST_TEST((desk.panel().plan() == nullptr));
    desk.folder.write(QStringLiteral("supplier.yaml"), supplierText);
    desk.window.messages().dismiss();
    desk.folder.write(QStringLiteral("bad.csv"), "person,right\nA,1.00\n"); // no column for the left eye
    desk.panel().takeDemand(desk.folder.path() + QStringLiteral("/bad.csv"));
    QTest::keyClick(&desk.window, Qt::Key_F5);
    desk.panel().waitForPlan();
    BOOST_TEST(desk.window.messages().code().toStdString() == "column-missing");
    BOOST_TEST((desk.panel().plan() == nullptr));
    desk.window.messages().dismiss();
    desk.panel().takeDemand({});
    desk.plan(); // nobody came yet: told, nothing bought
    BOOST_TEST_REQUIRE(desk.panel().plan() != nullptr);
    BOOST_TEST(desk.panel().plan()->answer.impossible);
    BOOST_TEST(desk.label("packingAnswer").contains(QStringLiteral("demand: the ledger")),
               desk.label("packingAnswer").toStdString());
    BOOST_TEST(!named<QPushButton>(desk.window, "saveOrderButton").isEnabled());
    desk.panel().takeSupplier({});
    QTest::keyClick(&desk.window, Qt::Key_F5);
    BOOST_TEST(desk.window.messages().text().contains(QStringLiteral("supplier")));
}

BOOST_AUTO_TEST_SUITE_END()
