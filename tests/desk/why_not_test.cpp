// SPDX-License-Identifier: GPL-3.0-or-later
// Why not, as bars: picture and table hold the same, the steps lead from pair to pair, the limit is where it
// is, and in a right-to-left language all of it is mirrored.
#include "app/desk/models/bars_model.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/plots/bars_view.hpp"
#include "app/desk/theme.hpp"
#include "app/session/wording.hpp"
#include "tests/desk/given_camp.hpp"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QComboBox>
#include <QImage>
#include <QTabBar>
#include <QTableView>
#include <QTest>

#include <cmath>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{

const BarsView& barsOf(DeskWindow& window, const char* name = "whyNotBars")
{
    return named<BarsView>(window, name);
}

/// Every row of the table is the bar beside it.
void tableHoldsThePicture(const QAbstractItemModel& table, const ShareBars& picture)
{
    BOOST_TEST_REQUIRE(table.rowCount() == static_cast<int>(picture.bars.size()));
    for (int row = 0; row < table.rowCount(); ++row) {
        const auto& bar = picture.bars[static_cast<std::size_t>(row)];
        const auto cell = [&](int column) {
            return table.index(row, column).data().toString().toStdString();
        };
        BOOST_TEST(cell(BarsModel::nameColumn) == bar.name.toStdString());
        BOOST_TEST(cell(BarsModel::figureColumn) == bar.figure.toStdString());
        BOOST_TEST(cell(BarsModel::kindColumn) == kindOfBar(bar.kind).toStdString());
        BOOST_TEST(table.index(row, BarsModel::figureColumn).data(BarsModel::rawRole).toDouble() ==
                   bar.to - bar.from);
    }
}

ShareBars twoBars()
{
    ShareBars picture;
    picture.steps = true;
    picture.most = 1.0;
    picture.bars = {
        {QStringLiteral("first"), QStringLiteral("0.250"), {}, 0.0, 0.25, ShareBar::Kind::whole},
        {QStringLiteral("second"), QStringLiteral("+0.500"), {}, 0.25, 0.75, ShareBar::Kind::more}};
    return picture;
}

} // namespace

BOOST_AUTO_TEST_SUITE(why_not)

BOOST_AUTO_TEST_CASE(from_the_better_pair_to_the_pair_given_step_by_step, *utf::label("PROP"))
{
    AuditDesk desk;
    BOOST_TEST_REQUIRE(desk.window.audit().chooseEntry(desk.off));
    named<QTabBar>(desk.window, "caseTabs").setCurrentIndex(1);
    auto& pictures = named<QComboBox>(desk.window, "whyNotBox");
    BOOST_TEST(pictures.count() == 4); // both ways to see a pair, for both pairs
    const auto& bars = barsOf(desk.window);
    BOOST_TEST(bars.isVisible());
    BOOST_TEST_REQUIRE(bars.picture().bars.size() >= 3U);
    const auto& all = bars.picture().bars;
    BOOST_TEST((all.front().kind == ShareBar::Kind::whole && all.back().kind == ShareBar::Kind::whole));
    BOOST_TEST(all.back().to > all.front().to); // the pair given costs more
    for (std::size_t at = 1; at + 1 < all.size(); ++at)
        BOOST_TEST(std::abs(all[at].from - all[at - 1].to) < 1e-12);
    BOOST_TEST(std::abs(all.back().to - all[all.size() - 2].to) < 1e-8);
    for (int at = 0; at < pictures.count(); ++at) {
        pictures.setCurrentIndex(at);
        tableHoldsThePicture(*named<QTableView>(desk.window, "whyNotTable").model(), bars.picture());
    }
    BOOST_TEST_REQUIRE(desk.window.audit().chooseEntry(desk.off));
}

BOOST_AUTO_TEST_CASE(limits_used_up_are_measured_over_limit_and_what_fails_stands_first,
                     *utf::label("DER") *
                         utf::description("blur 0.40 of 0.50 D is 80 %; prism 1.5 of 1.0 is 150 %"))
{
    Fit fit;
    CriterionResult blur;
    blur.criterion = Criterion::blur;
    blur.eye = Eye::right;
    blur.measured = 0.40;
    blur.limit = 0.50;
    blur.band = Band::fits;
    CriterionResult prism;
    prism.criterion = Criterion::horizontalPrism;
    prism.measured = 1.5;
    prism.limit = 1.0;
    prism.band = Band::fails;
    CriterionResult shown = prism;
    shown.band = Band::shown; // no verdict, no bar
    fit.criteria = {blur, prism, shown};
    const auto picture = limitBars(fit);
    BOOST_TEST_REQUIRE(picture.bars.size() == 2U);
    BOOST_TEST(picture.mark == 1.0);
    BOOST_TEST((picture.bars[0].kind == ShareBar::Kind::beyond));
    BOOST_TEST(std::abs(picture.bars[0].to - 1.5) < 1e-12);
    BOOST_TEST((picture.bars[1].kind == ShareBar::Kind::within));
    BOOST_TEST(std::abs(picture.bars[1].to - 0.8) < 1e-12);
    BOOST_TEST((picture.bars[1].figure == ltr(QStringLiteral("80 %"))), picture.bars[1].figure.toStdString());
    BOOST_TEST(!limitBars(Fit{}).whyNot.isEmpty());
}

BOOST_AUTO_TEST_CASE(of_100_hand_overs_reasons_and_the_rest_add_up,
                     *utf::label("DER") *
                         utf::description("20 judged, 3 and 1 at odds: 15 and 5 of 100, 80 agree"))
{
    const std::vector<FirstReason> reasons{{AuditClass::outsideWithoutReason, Criterion::blur, 3},
                                           {AuditClass::betterPairInBox, std::nullopt, 1}};
    const auto picture = reasonBars(reasons, 20);
    BOOST_TEST_REQUIRE(picture.bars.size() == 4U);
    BOOST_TEST(picture.bars[1].from == 100.0);
    BOOST_TEST(picture.bars[1].to == 85.0);
    BOOST_TEST(picture.bars[2].to == 80.0);
    BOOST_TEST(picture.bars[3].to == 80.0);
    BOOST_TEST(!reasonBars({}, 0).whyNot.isEmpty());
}

BOOST_AUTO_TEST_CASE(the_chart_of_reasons_is_that_of_the_audit, *utf::label("PROP"))
{
    AuditDesk desk;
    desk.window.audit().showView(1);
    named<QComboBox>(desk.window, "chartKindBox").setCurrentIndex(3);
    const auto& bars = barsOf(desk.window, "reasonBars");
    BOOST_TEST(bars.isVisible());
    BOOST_TEST(!named<QWidget>(desk.window, "auditChart").isVisible());
    BOOST_TEST_REQUIRE(bars.picture().bars.size() >= 3U); // two judged, one of them at odds
    BOOST_TEST(bars.picture().bars.back().to == 50.0);
    tableHoldsThePicture(*named<QTableView>(desk.window, "reasonTable").model(), bars.picture());
}

BOOST_AUTO_TEST_CASE(the_model_of_bars_is_sound, *utf::label("PROP"))
{
    BarsModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.show(twoBars());
    BOOST_TEST(model.rowCount() == 2);
    model.show({});
    BOOST_TEST(model.rowCount() == 0);
}

BOOST_AUTO_TEST_CASE(a_right_to_left_language_reads_the_bars_from_the_right, *utf::label("PROP"))
{
    BarsView view(QStringLiteral("bars"));
    view.resize(600, 200);
    view.show(twoBars());
    const auto first = view.barRect(0);
    const auto second = view.barRect(1);
    BOOST_TEST(first.width() * 2 - second.width() <= 2);
    BOOST_TEST(std::abs(second.left() - first.right()) <= 2); // begins where the one before ends
    view.setLayoutDirection(Qt::RightToLeft);
    for (int row = 0; row < 2; ++row) {
        const auto before = row == 0 ? first : second;
        const auto after = view.barRect(row);
        BOOST_TEST(after.left() == 600 - 1 - before.right());
        BOOST_TEST(after.size().width() == before.size().width());
    }
    BOOST_TEST(view.barRect(2).isEmpty());
}

/// The kinds are told apart by their filling: two bars of one length that differ in kind alone are not the
/// same picture, not even where all colours are one.
BOOST_AUTO_TEST_CASE(kinds_differ_without_colour, *utf::label("PROP"))
{
    applyTheme(*qApp, Theme::sun);
    std::vector<QImage> pictures;
    for (const auto kind : {ShareBar::Kind::whole, ShareBar::Kind::more, ShareBar::Kind::less,
                            ShareBar::Kind::within, ShareBar::Kind::beyond}) {
        BarsView view(QStringLiteral("bars"));
        view.resize(400, 100);
        ShareBars picture;
        picture.bars = {{QString(), QString(), {}, 0.0, 0.5, kind}};
        view.show(picture);
        pictures.push_back(view.grab().toImage().convertToFormat(QImage::Format_Mono));
    }
    for (std::size_t a = 0; a < pictures.size(); ++a)
        for (std::size_t b = a + 1; b < pictures.size(); ++b)
            BOOST_TEST((pictures[a] != pictures[b]), a << " and " << b);
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_SUITE_END()
