// SPDX-License-Identifier: GPL-3.0-or-later
// A walk over every page of the window: what takes the keyboard has its names, Tab goes as one reads, targets
// can be hit, and at 200 per cent on a small screen nothing is cut and everything can be reached.
#include "app/desk/bringing/bring_in_panel.hpp"
#include "app/desk/bringing/exchange_page.hpp"
#include "app/desk/guide/help_window.hpp"
#include "app/desk/opening/practice.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/theme.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QTest>

#include <functional>
#include <set>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
struct Page {
    const char* name;
    std::function<void(DeskWindow&)> show;
};

const std::vector<Page>& pagesOfDesk()
{
    static const std::vector<Page> pages{
        {"opening", [](DeskWindow& window) { window.showOpening(); }},
        {"a folder that was not opened",
         [](DeskWindow& window) { BOOST_TEST(!window.openCamp(QStringLiteral("/no-such-folder"))); }},
        {"trays", [](DeskWindow& window) { window.showTrays({}); }},
        {"settings", [](DeskWindow& window) { window.showSettings(); }},
        {"bringing in",
         [](DeskWindow& window) {
             window.showExchange();
             window.exchange().showPart(ExchangePage::bringInPart);
             QFile file(window.campFolder() + QStringLiteral("/theirs.txt"));
             BOOST_TEST(file.open(QIODevice::WriteOnly));
             file.write("ID;OD Sph;OS Sph\nK-1;-1,25;+0,50\nK-2;1,25;\n");
             file.close();
             window.exchange().bringIn().openFiles({file.fileName()});
             window.exchange().waitForReading();
         }},
        {"sending out", [](DeskWindow& window) { window.exchange().showPart(ExchangePage::sendOutPart); }},
        {"dispense",
         [](DeskWindow& window) {
             window.showPlace(DeskWindow::Place::dispense);
             BOOST_TEST(window.choosePerson(QStringLiteral("P-1")));
         }},
        {"stock",
         [](DeskWindow& window) {
             window.showPlace(DeskWindow::Place::stock);
             window.stock().showView(StockPlace::asTable);
             BOOST_TEST(window.stock().chooseLine("D-100"));
         }},
        {"packing",
         [](DeskWindow& window) {
             window.showPlace(DeskWindow::Place::stock);
             window.stock().showView(StockPlace::packing);
         }},
        {"transfers",
         [](DeskWindow& window) {
             window.showPlace(DeskWindow::Place::stock);
             window.stock().showView(StockPlace::transfers);
         }},
        {"practice", [](DeskWindow& window) {
             window.showPlace(DeskWindow::Place::dispense);
             window.practice().begin();
         }}};
    return pages;
}

/// Parts of Qt's own widgets (scroll bars, spin arrows, the views of combo boxes) are named by Qt.
bool named(const QWidget& widget)
{
    return !widget.objectName().startsWith(QStringLiteral("qt_")) && !widget.inherits("QSplitter") &&
           !widget.inherits("QComboBoxPrivateContainer") && !widget.inherits("QComboBoxListView") &&
           !widget.inherits("QHeaderView") && !widget.inherits("QTableCornerButton") &&
           !(widget.parentWidget() && widget.parentWidget()->inherits("QTabBar"));
}

std::string called(const QWidget& widget)
{
    return std::string(widget.metaObject()->className()) + " " + widget.objectName().toStdString();
}

/// What Tab reaches on the page that is shown, in the order of Tab, the header of the window left out.
std::vector<QWidget*> tabOrder(DeskWindow& window)
{
    std::vector<QWidget*> order;
    const auto* header = window.findChild<QWidget*>(QStringLiteral("deskHeader"));
    QWidget* widget = &window;
    do {
        widget = widget->nextInFocusChain();
        const bool byTab = (widget->focusPolicy() & Qt::TabFocus) != 0;
        if (byTab && widget->isVisible() && widget->isEnabled() && named(*widget) && !widget->focusProxy() &&
            widget->window() == &window && !header->isAncestorOf(widget))
            order.push_back(widget);
    } while (widget != &window);
    return order;
}

/// A frame, or what stands on one side of a splitter: read from its beginning to its end.
const QWidget* panelOf(const QWidget* widget)
{
    for (; widget; widget = widget->parentWidget())
        if (widget->property("panel").toBool() || widget->inherits("QScrollArea") ||
            (widget->parentWidget() && widget->parentWidget()->inherits("QSplitter")))
            return widget;
    return nullptr;
}

QRect placeOf(const QWidget& widget, const DeskWindow& window)
{
    return {widget.mapTo(&window, QPoint(0, 0)), widget.size()};
}

/// Whether `after` is read after `before` in one panel: further on in the same row, or lower.
bool readAfter(const QRect& before, const QRect& after, Qt::LayoutDirection direction)
{
    const bool sameRow = std::min(before.bottom(), after.bottom()) - std::max(before.top(), after.top()) >
                         std::min(before.height(), after.height()) / 2;
    if (!sameRow)
        return after.top() >= before.top();
    return direction == Qt::RightToLeft ? after.right() <= before.right() : after.left() >= before.left();
}
} // namespace

BOOST_AUTO_TEST_SUITE(pages)

BOOST_AUTO_TEST_CASE(what_takes_the_keyboard_has_its_names_on_every_page, *utf::label("PROP"))
{
    OpenDesk desk;
    for (const auto& page : pagesOfDesk()) {
        page.show(desk.window);
        for (const auto* widget : desk.window.findChildren<QWidget*>()) {
            if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible() || !named(*widget))
                continue;
            BOOST_TEST(!widget->objectName().isEmpty(), page.name << ": " << called(*widget));
            BOOST_TEST(!widget->toolTip().isEmpty(), page.name << ": no tooltip: " << called(*widget));
            auto* spoken = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(widget));
            BOOST_TEST((spoken && !spoken->text(QAccessible::Name).isEmpty()),
                       page.name << ": no spoken name: " << called(*widget));
        }
    }
}

BOOST_AUTO_TEST_CASE(tab_goes_as_one_reads_on_every_page_in_both_directions, *utf::label("PROP"))
{
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        QApplication::setLayoutDirection(direction);
        OpenDesk desk;
        for (const auto& page : pagesOfDesk()) {
            page.show(desk.window);
            QApplication::processEvents();
            const auto order = tabOrder(desk.window);
            BOOST_TEST(order.size() > 3U, page.name);
            std::set<const QWidget*> left; // panels that Tab has gone through
            for (std::size_t i = 1; i < order.size(); ++i) {
                const auto* before = panelOf(order[i - 1]);
                const auto* now = panelOf(order[i]);
                if (before != now && !before->isAncestorOf(now) && !now->isAncestorOf(before)) {
                    left.insert(before);
                    BOOST_TEST((left.count(now) == 0U),
                               page.name << ": Tab comes back for " << called(*order[i]));
                } else if (before == now) {
                    BOOST_TEST(readAfter(placeOf(*order[i - 1], desk.window), placeOf(*order[i], desk.window),
                                         direction),
                               page.name << ": " << called(*order[i]) << " comes after "
                                         << called(*order[i - 1]));
                }
            }
        }
        QApplication::setLayoutDirection(Qt::LeftToRight);
    }
}

BOOST_AUTO_TEST_CASE(targets_can_be_hit,
                     *utf::label("REF") * utf::description("WCAG 2.2, 2.5.8: 24 by 24 pixels"))
{
    for (const auto theme : {Theme::light, Theme::dark, Theme::sun}) {
        applyTheme(*qApp, theme);
        OpenDesk desk;
        for (const auto& page : pagesOfDesk()) {
            page.show(desk.window);
            QApplication::processEvents();
            for (const auto* widget : desk.window.findChildren<QWidget*>()) {
                const bool target = qobject_cast<const QAbstractButton*>(widget) ||
                                    qobject_cast<const QComboBox*>(widget) ||
                                    qobject_cast<const QLineEdit*>(widget);
                if (!target || !widget->isVisible() || !named(*widget))
                    continue;
                BOOST_TEST(widget->height() >= 24,
                           page.name << ": " << called(*widget) << " " << widget->height());
                BOOST_TEST(widget->width() >= 24,
                           page.name << ": " << called(*widget) << " " << widget->width());
            }
        }
    }
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_CASE(at_200_per_cent_on_a_small_screen_nothing_is_cut_and_all_can_be_reached,
                     *utf::label("PROP"))
{
    for (const auto& [theme, scale] :
         {std::pair{Theme::light, 200}, std::pair{Theme::sun, 100}, std::pair{Theme::sun, 200}}) {
        applyTheme(*qApp, theme, scale);
        OpenDesk desk;
        for (const auto& page : pagesOfDesk()) {
            page.show(desk.window);
            QTest::qWait(20); // parts fold once they know how wide they are
            BOOST_TEST(desk.window.width() <= 1366,
                       page.name << ": the window grew to " << desk.window.width());
            BOOST_TEST(desk.window.height() <= 768,
                       page.name << ": the window grew to " << desk.window.height());
            for (const auto* widget : desk.window.findChildren<QWidget*>()) {
                const auto* label = qobject_cast<const QLabel*>(widget);
                const bool text = qobject_cast<const QAbstractButton*>(widget) ||
                                  qobject_cast<const QComboBox*>(widget) ||
                                  (label && !label->wordWrap() && !label->text().isEmpty());
                if (!text || !widget->isVisible() || !named(*widget) || widget->window() != &desk.window)
                    continue;
                BOOST_TEST(widget->width() >= widget->minimumSizeHint().width(),
                           page.name << ": " << called(*widget) << " is cut: " << widget->width() << " of "
                                     << widget->minimumSizeHint().width());
                BOOST_TEST(widget->height() >= widget->fontMetrics().height(),
                           page.name << ": " << called(*widget) << " is cut at its foot");
            }
            for (const auto* part : named<QWidget>(desk.window, "deskHeader").findChildren<QWidget*>())
                if (part->isVisible() && part->parentWidget()->objectName() == QStringLiteral("deskHeader"))
                    BOOST_TEST(part->parentWidget()->rect().contains(part->geometry()),
                               page.name << ": " << called(*part) << " hangs out of the header");
            // Whatever lies outside of the screen lies inside something that scrolls.
            for (const auto* widget : tabOrder(desk.window)) {
                bool scrolls = false;
                for (const auto* around = widget->parentWidget(); around; around = around->parentWidget())
                    scrolls = scrolls || qobject_cast<const QScrollArea*>(around);
                const bool inside = desk.window.rect().contains(placeOf(*widget, desk.window));
                BOOST_TEST((inside || scrolls), page.name << ": " << called(*widget) << " cannot be reached");
            }
        }
    }
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_SUITE_END()
