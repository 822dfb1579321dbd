// SPDX-License-Identifier: GPL-3.0-or-later
// What is looked at has the room it needs: pages, columns, bins, powers below an axis; and what tells where
// one is stands out.
#include "app/desk/models/box_model.hpp"
#include "app/desk/models/card_model.hpp"
#include "app/desk/models/cells_model.hpp"
#include "app/desk/models/lines_model.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/plots/chart_data.hpp"
#include "app/desk/plots/ladder_data.hpp"
#include "app/desk/shell/one_page_layout.hpp"
#include "app/desk/theme.hpp"
#include "app/session/wording.hpp"
#include "tests/desk/desk_walk.hpp"

#include <QApplication>
#include <QHeaderView>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableView>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
/// A window of the small screen at the place Stock.
struct SmallScreen : OpenDesk {
    explicit SmallScreen(StockPlace::View view)
    {
        window.resize(1366, 768);
        window.showPlace(DeskWindow::Place::stock);
        window.stock().showView(view);
        for (int round = 0; round < 5; ++round) // parts fold once they know how wide they are
            QTest::qWait(20);
    }
    /// Pixels of the page that are out of sight.
    int outOfSight()
    {
        for (auto* around = window.stock().parentWidget(); around; around = around->parentWidget())
            if (const auto* area = qobject_cast<QScrollArea*>(around))
                return area->verticalScrollBar()->maximum();
        return -1;
    }
};

int pixelsOf(const QImage& image, const QColor& colour)
{
    int found = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            found += image.pixelColor(x, y) == colour ? 1 : 0;
    return found;
}
} // namespace

BOOST_AUTO_TEST_SUITE(room)

BOOST_AUTO_TEST_CASE(a_page_out_of_sight_asks_for_no_room, *utf::label("PROP"))
{
    QWidget box;
    OnePageLayout pages(&box);
    auto* few = new QLabel(QStringLiteral("a word"));
    auto* many = new QLabel(QStringLiteral("many words ").repeated(200));
    many->setWordWrap(true);
    many->setMinimumSize(700, 500);
    pages.addWidget(few);
    pages.addWidget(many);
    BOOST_TEST(pages.minimumSize().height() < 100);
    BOOST_TEST(pages.minimumSize().width() < 300);
    BOOST_TEST(!pages.hasHeightForWidth());
    pages.setCurrentIndex(1);
    BOOST_TEST(pages.minimumSize().height() >= 500);
    BOOST_TEST(pages.hasHeightForWidth());
    BOOST_TEST(pages.heightForWidth(800) > many->fontMetrics().height() * 10);
}

BOOST_AUTO_TEST_CASE(packing_and_transfers_are_whole_on_a_small_screen, *utf::label("REG"))
{
    for (const auto* language : {"en", "ar", "hi"}) {
        const Speaking speaking(language);
        for (const auto view : {StockPlace::asTable, StockPlace::packing, StockPlace::transfers}) {
            SmallScreen desk(view);
            BOOST_TEST(desk.outOfSight() == 0, language << ", view " << view << ": " << desk.outOfSight());
        }
    }
}

BOOST_AUTO_TEST_CASE(at_200_per_cent_level_and_count_of_a_line_are_in_sight, *utf::label("REG"))
{
    applyTheme(*qApp, Theme::light, 200);
    for (const auto* language : {"en", "ar", "hi"}) {
        const Speaking speaking(language);
        SmallScreen desk(StockPlace::asTable);
        const auto& lines = named<QTableView>(desk.window, "linesView");
        for (int column = 0; column <= LinesModel::onHandColumn; ++column) {
            const int left = lines.columnViewportPosition(column);
            BOOST_TEST((left >= 0 && left + lines.columnWidth(column) <= lines.viewport()->width()),
                       language << ": column " << column << " at " << left << " of "
                                << lines.viewport()->width());
        }
        BOOST_TEST(lines.viewport()->height() >= 5 * lines.rowHeight(0));
    }
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_CASE(at_200_per_cent_a_transfer_is_whole, *utf::label("REG"))
{
    applyTheme(*qApp, Theme::light, 200);
    for (const auto* language : {"en", "ar", "hi"}) {
        const Speaking speaking(language);
        SmallScreen desk(StockPlace::transfers);
        BOOST_TEST(desk.outOfSight() == 0, language << ": " << desk.outOfSight());
    }
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_CASE(in_the_sun_the_count_on_a_card_is_in_sight, *utf::label("REG"))
{
    applyTheme(*qApp, Theme::sun);
    for (const auto* language : {"en", "ar", "hi"}) {
        const Speaking speaking(language);
        SmallScreen desk(StockPlace::asTable);
        BOOST_TEST_REQUIRE(desk.window.stock().chooseLine("D-100"));
        const auto& card = named<QTableView>(desk.window, "cardView");
        const int left = card.columnViewportPosition(CardModel::balanceColumn);
        BOOST_TEST(
            (left >= 0 && left + card.columnWidth(CardModel::balanceColumn) <= card.viewport()->width()),
            language << ": at " << left << " of " << card.viewport()->width());
    }
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_CASE(a_heading_stands_over_its_figures, *utf::label("PROP"))
{
    SmallScreen desk(StockPlace::asTable);
    BOOST_TEST_REQUIRE(desk.window.stock().chooseLine("D-100"));
    for (const auto* name : {"linesView", "cardView"}) {
        const auto& model = *named<QTableView>(desk.window, name).model();
        BOOST_TEST_REQUIRE(model.rowCount() > 0, name);
        for (int column = 0; column < model.columnCount(); ++column)
            BOOST_TEST((model.headerData(column, Qt::Horizontal, Qt::TextAlignmentRole) ==
                        model.index(0, column).data(Qt::TextAlignmentRole)),
                       name << " " << column);
    }
}

BOOST_AUTO_TEST_CASE(the_words_of_every_bin_have_room, *utf::label("PROP"))
{
    SmallScreen desk(StockPlace::asBox);
    const auto& box = named<QTableView>(desk.window, "boxView");
    BOOST_TEST_REQUIRE(box.model()->rowCount() > 0);
    const int widest = box.fontMetrics().averageCharWidth() * 13;
    for (int column = 0; column < box.model()->columnCount(); ++column)
        BOOST_TEST(box.columnWidth(column) <= widest);
    for (int row = 0; row < box.model()->rowCount(); ++row)
        BOOST_TEST(box.rowHeight(row) >= static_cast<const QAbstractItemView&>(box).sizeHintForRow(row), row);
}

BOOST_AUTO_TEST_CASE(a_bin_tears_no_axis_and_no_addition_from_its_sign, *utf::label("PROP"))
{
    StockLine astigmatic;
    astigmatic.name = "X";
    astigmatic.bin = "A1";
    astigmatic.power.right = astigmatic.power.left =
        SpheroCylinder{Dioptres{-2.0}, Dioptres{-0.75}, AxisDegrees{180.0}};
    StockLine bifocal = astigmatic;
    bifocal.bin = "A2";
    bifocal.power.right = bifocal.power.left = sphereOf(0.0);
    bifocal.bifocalAddition = Dioptres{1.5};
    BoxModel model;
    model.show({astigmatic, bifocal});
    BOOST_TEST(model.cellOf("A1").data().toString().contains(QStringLiteral("-2.00 -0.75\u00A0x\u00A0180")));
    BOOST_TEST(model.cellOf("A2").data().toString().contains(QStringLiteral("ADD\u00A0+1.50")));
}

BOOST_AUTO_TEST_CASE(long_words_of_a_short_list_go_on_in_the_next_line_and_none_is_cut, *utf::label("REG"))
{
    CellsModel model;
    const QString words =
        QStringLiteral("without it fewer are served, and nothing else would do ").repeated(2);
    MadeTable table{{QStringLiteral("Pack"), QStringLiteral("Why")}, {}};
    for (int row = 0; row < 12; ++row)
        table.rows.push_back({{QStringLiteral("N+200"), QStringLiteral("N+200")}, {words, words}});
    const std::unique_ptr<QTableView> view(tableOf(&model, QStringLiteral("view"), QStringLiteral("view")));
    view->horizontalHeader()->setStretchLastSection(true);
    wrapRows(*view);
    model.show(table);
    view->resize(700, 300);
    view->show();
    const auto whole = [&view, &words] {
        QTest::qWait(50);
        const int width = view->columnWidth(1);
        BOOST_TEST(view->columnViewportPosition(1) + width <= view->viewport()->width());
        const auto needed =
            view->fontMetrics().boundingRect(QRect(0, 0, width - 8, 1000), Qt::TextWordWrap, words);
        BOOST_TEST(view->rowHeight(3) >= needed.height(), view->rowHeight(3) << " of " << needed.height());
        return view->rowHeight(3);
    };
    const int beside = whole();
    view->resize(350, 300);
    BOOST_TEST(whole() > beside);
    view->resize(1800, 300);
    BOOST_TEST(whole() < beside);
}

BOOST_AUTO_TEST_CASE(powers_below_the_ladder_stand_apart, *utf::label("DER"))
{
    BOOST_TEST(rungStep(9.0, 720, 60) == 1.0); // 80 pixels for each
    BOOST_TEST(rungStep(9.0, 540, 60) == 1.0); // 60: just enough
    BOOST_TEST(rungStep(9.0, 539, 60) == 2.0);
    BOOST_TEST(rungStep(20.0, 300, 60) == 4.0);
    BOOST_TEST(rungStep(9.0, 0, 60) == 1.0); // not shown yet
    BOOST_TEST(rungStep(40.0, 10, 60) == 16.0);
}

BOOST_AUTO_TEST_CASE(shares_beside_an_axis_are_per_cents, *utf::label("DER"))
{
    const auto said = [](double share) {
        auto words = shareTick(share);
        return words.remove(QChar(0x2066)).remove(QChar(0x2069)).toStdString();
    };
    BOOST_TEST(said(0.925) == "92.5 %");
    BOOST_TEST(said(0.9) == "90 %");
    BOOST_TEST(said(1.0) == "100 %");
    BOOST_TEST(said(0.0) == "0 %");
}

BOOST_AUTO_TEST_CASE(the_example_of_trays_begins_where_one_types, *utf::label("REG"))
{
    const Speaking speaking("ar");
    OpenDesk desk;
    desk.window.showTrays({});
    auto& trays = named<QPlainTextEdit>(desk.window, "traysEdit");
    const auto image = trays.viewport()->grab().toImage();
    int first = image.width();
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < first; ++x)
            if (image.pixelColor(x, y) != image.pixelColor(image.width() - 2, image.height() - 2))
                first = x;
    BOOST_TEST(first < 20, "the example begins at " << first << " of " << image.width());
}

BOOST_AUTO_TEST_CASE(scroll_bars_stand_out_in_every_look,
                     *utf::label("REF") * utf::description("WCAG 2.2, 1.4.11: 3 : 1"))
{
    for (const auto theme : {Theme::light, Theme::dark, Theme::sun}) {
        applyTheme(*qApp, theme);
        QScrollBar bar(Qt::Vertical);
        bar.resize(bar.sizeHint().width(), 300);
        bar.setRange(0, 100);
        bar.setPageStep(50);
        const auto image = bar.grab().toImage();
        const int middle = image.width() / 2;
        BOOST_TEST(contrast(image.pixelColor(middle, 80), image.pixelColor(middle, 260)) >= 3.0,
                   nameOf(theme).toStdString());
    }
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_CASE(the_keyboard_on_a_chosen_button_takes_nothing_from_its_letters, *utf::label("REG"))
{
    for (const auto theme : {Theme::light, Theme::dark, Theme::sun}) {
        applyTheme(*qApp, theme);
        const auto colours = coloursOf(theme);
        SmallScreen desk(StockPlace::asTable);
        auto& button = named<QPushButton>(desk.window, "linesAsTable");
        named<QWidget>(desk.window, "linesFilter").setFocus();
        const auto without = button.grab().toImage();
        button.setFocus();
        BOOST_TEST_REQUIRE(button.hasFocus());
        const auto with = button.grab().toImage();
        BOOST_TEST(pixelsOf(with, colours.accentText) > pixelsOf(without, colours.accentText) + 40,
                   "no ring in " << nameOf(theme).toStdString());
        BOOST_TEST(pixelsOf(with, colours.accent) * 2 > pixelsOf(without, colours.accent));
    }
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_SUITE_END()
