// SPDX-License-Identifier: GPL-3.0-or-later
// List and power plane go in step under a real pointer; what is shown beside a pair, a line of the stock and
// a finding are the figures that were worked out; and marks that mean different things differ without colour.
#include "app/desk/models/findings_model.hpp"
#include "app/desk/models/lines_model.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/plots/chart_view.hpp"
#include "app/desk/plots/plane_marks.hpp"
#include "app/desk/plots/plot_view.hpp"
#include "app/session/slip_words.hpp"
#include "core/fitting/fit_chance.hpp"
#include "tests/desk/given_camp.hpp"

#include <QApplication>
#include <QLineEdit>
#include <QListView>
#include <QPainter>
#include <QRegularExpression>
#include <QTableView>
#include <QTest>
#include <QTextBrowser>

#include <cmath>
#include <set>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
struct PersonOnCard : OpenDesk {
    PersonOnCard()
    {
        BOOST_TEST_REQUIRE(window.choosePerson(QStringLiteral("P-1")));
        QTest::qWait(0);
    }
    QListView& list() { return named<QListView>(window, "pairsView"); }
    PairsModel& pairs() { return dynamic_cast<PairsModel&>(*list().model()); }
    PlotView& plane() { return named<PlotView>(window, "powerPlane"); }
    QImage picture()
    {
        QTest::qWait(20); // drawn once the loop is free
        return plane().grab().toImage();
    }
    int pointedRow()
    {
        for (int row = 0; row < pairs().rowCount(); ++row)
            if (pairs().index(row, 0).data(PairsModel::pointedRole).toBool())
                return row;
        return -1;
    }
};

/// Black where there is ink, on a canvas that is the same for all.
QImage inkOf(const QPixmap& mark)
{
    constexpr int side = 64;
    QImage canvas(side, side, QImage::Format_RGB32);
    canvas.fill(Qt::white);
    QPainter painter(&canvas);
    const auto size = mark.deviceIndependentSize();
    painter.drawPixmap(QPointF((side - size.width()) / 2.0, (side - size.height()) / 2.0), mark);
    painter.end();
    return canvas.convertToFormat(QImage::Format_Mono, Qt::ThresholdDither);
}
} // namespace

BOOST_AUTO_TEST_SUITE(in_step)

BOOST_AUTO_TEST_CASE(the_pointer_over_a_pair_of_the_list_rings_it_in_the_plane, *utf::label("PROP"))
{
    PersonOnCard desk;
    BOOST_TEST_REQUIRE(desk.pairs().rowCount() >= 2);
    const auto before = desk.picture();
    const auto second = desk.list().visualRect(desk.pairs().index(1, 0));
    BOOST_TEST_REQUIRE(second.isValid());
    QTest::mouseMove(desk.list().viewport(), second.center());
    const auto pointed = desk.picture();
    BOOST_TEST((pointed != before));
    QTest::mouseMove(desk.list().viewport(), desk.list().visualRect(desk.pairs().index(0, 0)).center());
    BOOST_TEST((desk.picture() != pointed));
    desk.list().setCurrentIndex(desk.pairs().index(1, 0)); // chosen: a whole ring, and lines to it
    BOOST_TEST((desk.picture() != before));
}

BOOST_AUTO_TEST_CASE(the_pointer_in_the_plane_marks_the_pair_of_the_list_and_a_press_chooses_it,
                     *utf::label("PROP"))
{
    PersonOnCard desk;
    auto* plot = desk.plane().findChild<QWidget*>();
    BOOST_TEST_REQUIRE(plot);
    constexpr int step = 6;
    std::set<int> seen;
    for (int y = step; y < plot->height(); y += step)
        for (int x = step; x < plot->width(); x += step) {
            const QPoint at(x, y);
            QTest::mouseMove(plot, at);
            QApplication::processEvents();
            const int row = desk.pointedRow();
            if (row < 0 || !seen.insert(row).second)
                continue;
            QTest::mouseClick(plot, Qt::LeftButton, {}, at);
            BOOST_TEST(desk.list().currentIndex().row() == row);
        }
    BOOST_TEST(seen.size() >= 2U); // D-125 and its neighbours
    QTest::mouseMove(plot, QPoint(plot->width() - 2, 2));
    QApplication::processEvents();
    BOOST_TEST(desk.pointedRow() == -1);
}

BOOST_AUTO_TEST_CASE(residuals_prism_and_chance_of_a_pair_are_those_of_its_fit, *utf::label("PROP"))
{
    PersonOnCard desk;
    for (int row = 0; row < desk.pairs().rankedCount(); ++row) {
        const auto& candidate = *desk.pairs().candidateAt(row);
        const auto raw = [&](int column) {
            return desk.pairs().index(row, column).data(PairsModel::rawRole).toDouble();
        };
        BOOST_TEST(raw(PairsModel::rightColumn) == candidate.fit.eyes.right->error.m);
        BOOST_TEST(raw(PairsModel::leftColumn) == candidate.fit.eyes.left->error.m);
        BOOST_TEST(raw(PairsModel::prismColumn) == candidate.fit.prism.horizontal);
        const auto chance = leastChance(candidate.chance);
        BOOST_TEST_REQUIRE(chance.has_value());
        BOOST_TEST((*chance > 0.0 && *chance <= 1.0));
        BOOST_TEST(raw(PairsModel::chanceColumn) == *chance);
        BOOST_TEST(desk.pairs()
                       .index(row, PairsModel::chanceColumn)
                       .data()
                       .toString()
                       .contains(QString::number(*chance, 'f', 2)));
    }
}

BOOST_AUTO_TEST_CASE(what_was_typed_stays_in_the_record_as_it_was_typed, *utf::label("PROP"))
{
    OpenDesk desk;
    QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
    for (const auto& [name, text] :
         {std::pair{"personEdit", "T-7"}, std::pair{"ageEdit", "24"}, std::pair{"rightEyeEdit", "-1,25"},
          std::pair{"leftEyeEdit", "-1.25DS"}, std::pair{"distancePdEdit", "62"}}) {
        auto& field = named<QLineEdit>(desk.window, name);
        field.setFocus();
        QTest::keyClicks(&field, QLatin1String(text));
    }
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
    const auto camp = Camp::open(desk.folder.path().toStdString(), Ledger::Mode::readOnly);
    const auto entries = camp.ledger().entriesOfPerson("T-7");
    BOOST_TEST_REQUIRE(entries.size() == 1U);
    BOOST_TEST(entries.front().fields.at("final") == "-1,25 / -1.25DS");
}

BOOST_AUTO_TEST_CASE(
    camps_of_stock_follow_what_was_handed_over,
    *utf::label("DER") *
        utf::description("one of D-125 went to the one person seen, one is left: it lasts for "
                         "one more, a hundredth of a camp of 100"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    QTest::keyClick(&desk.window, Qt::Key_Return, Qt::ControlModifier);
    BOOST_TEST_REQUIRE(desk.folder.onHand("D-125") == 1);
    desk.window.showPlace(DeskWindow::Place::stock);
    const auto& lines = *named<QTableView>(desk.window, "linesView").model();
    const auto camps = [&lines](const char* name) {
        for (int row = 0; row < lines.rowCount(); ++row)
            if (lines.index(row, LinesModel::lineColumn).data(LinesModel::rawRole).toString() ==
                QLatin1String(name))
                return lines.index(row, LinesModel::campsColumn).data(LinesModel::rawRole);
        return QVariant();
    };
    BOOST_TEST(std::abs(camps("D-125").toDouble() - 0.01) < 1e-9);
    BOOST_TEST(!camps("D-150").isValid()); // nothing of it was used: nothing is known
}

BOOST_AUTO_TEST_CASE(a_finding_has_its_class_and_what_it_cost_and_slips_their_arithmetic, *utf::label("PROP"))
{
    AuditDesk desk;
    const auto& model = *named<QTableView>(desk.window, "findingsView").model();
    QStringList classes, details;
    for (int row = 0; row < model.rowCount(); ++row) {
        classes << model.index(row, FindingsModel::classColumn).data().toString();
        details << model.index(row, FindingsModel::detailColumn).data().toString();
    }
    BOOST_TEST(!classes.contains(QString()));
    const QRegularExpression cost(QStringLiteral("D-125.*[0-9]\\.[0-9]+.* logMAR"));
    BOOST_TEST(details.filter(cost).size() > 0, details.join(QLatin1Char('|')).toStdString());
    BOOST_TEST_REQUIRE(desk.window.audit().chooseEntry(desk.off));
    const auto arithmetic = named<QTextBrowser>(desk.window, "slipsText").toPlainText();
    const QRegularExpression weighed(QStringLiteral("[01]\\.[0-9]{3}.*\n.* × .* × .* = "));
    BOOST_TEST(arithmetic.contains(weighed), arithmetic.toStdString());
}

BOOST_AUTO_TEST_CASE(a_slip_that_is_told_stands_in_the_list_with_its_probability, *utf::label("PROP"))
{
    FindingsModel model;
    AuditCase one;
    one.judged.facts.entry = "e";
    one.judged.facts.atMs = 1;
    one.told = SlipClass{};
    one.told->probability = 0.874;
    one.told->members = {{SlipKind::sphereSign, Eye::left}};
    model.show({one});
    BOOST_TEST_REQUIRE(model.rowCount() == 1);
    const auto told = model.index(0, FindingsModel::slipColumn).data().toString();
    BOOST_TEST(told.contains(QStringLiteral("0.87")), told.toStdString());
    BOOST_TEST(told.contains(slipWords(one.told->members.front())), told.toStdString());
}

/// As `kinds_differ_without_colour` of the bars: black ink on white, nothing else.
BOOST_AUTO_TEST_CASE(marks_of_the_plane_differ_without_colour, *utf::label("PROP"))
{
    const auto colours = coloursOf(Theme::sun);
    const auto font = QApplication::font();
    PlaneEye right, left, both;
    right.right = both.right = left.left = both.left = true;
    const std::vector<std::pair<const char*, QPixmap>> marks{
        {"pairs", stockMark(PlaneMarkKind::readyMade, true, 8.0, 1.0, colours)},
        {"lenses", stockMark(PlaneMarkKind::lens, true, 8.0, 1.0, colours)},
        {"none left", stockMark(PlaneMarkKind::readyMade, false, 8.0, 1.0, colours)},
        {"right eye", eyeMark(right, 1.0, colours, font)},
        {"left eye", eyeMark(left, 1.0, colours, font)},
        {"both eyes", eyeMark(both, 1.0, colours, font)},
        {"chosen", choiceMark(1.0, colours, false)},
        {"pointed at", choiceMark(1.0, colours, true)},
        {"ranks", rankedMark(1.0, colours)}};
    for (const auto& [name, mark] : marks) {
        const auto ink = inkOf(mark);
        BOOST_TEST((ink != inkOf(QPixmap())), name);
        for (const auto& [otherName, other] : marks)
            if (&mark != &other)
                BOOST_TEST((ink != inkOf(other)), name << " and " << otherName);
    }
}

BOOST_AUTO_TEST_CASE(points_of_a_chart_differ_by_where_they_lie_without_colour, *utf::label("PROP"))
{
    applyTheme(*qApp, Theme::sun);
    std::vector<QImage> pictures;
    for (int beyond = 0; beyond < 3; ++beyond) {
        ChartView view;
        view.resize(400, 300);
        ChartData chart;
        ChartDot dot;
        dot.across = 1.0;
        dot.up = 0.5;
        dot.beyond = beyond;
        chart.dots = {dot};
        view.show(chart);
        QTest::qWait(20);
        pictures.push_back(view.grab().toImage().convertToFormat(QImage::Format_Mono, Qt::ThresholdDither));
    }
    BOOST_TEST((pictures[0] != pictures[1]));
    BOOST_TEST((pictures[0] != pictures[2]));
    BOOST_TEST((pictures[1] != pictures[2]));
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_CASE(one_key_goes_on_to_the_next_look, *utf::label("PROP"))
{
    OpenDesk desk;
    for (const auto look : {Theme::dark, Theme::sun, Theme::light}) {
        QTest::keyClick(&desk.window, Qt::Key_F7);
        BOOST_TEST((themeNow() == look));
        BOOST_TEST((QApplication::palette().color(QPalette::Window) == coloursOf(look).window));
    }
}

BOOST_AUTO_TEST_SUITE_END()
