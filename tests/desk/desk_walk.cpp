// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/desk/desk_walk.hpp"

#include "app/desk/bringing/bring_in_panel.hpp"
#include "app/desk/bringing/exchange_page.hpp"
#include "app/desk/opening/practice.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/shell/pin_guard.hpp"
#include "app/session/pins.hpp"

#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QPushButton>
#include <QTabBar>

#include <cmath>
#include <set>

namespace quarterstep
{

namespace
{
void showAudit(DeskWindow& window, int view, int tab)
{
    window.showPlace(DeskWindow::Place::audit);
    window.audit().waitForAudit();
    window.audit().showView(view);
    named<QTabBar>(window, "caseTabs").setCurrentIndex(tab);
}

void showPeople(DeskWindow& window, DispensePlace::PeoplePage page)
{
    window.showPlace(DeskWindow::Place::dispense);
    window.dispense().showPeoplePage(page);
}

/// The strip above the work, which asks for what was just pressed.
void showPin(DeskWindow& window)
{
    auto camp = Camp::open(window.campFolder().toStdString(), Ledger::Mode::readWrite);
    setPin(camp.ledger(), Role::keeper, "keeper 22");
    window.showPlace(DeskWindow::Place::stock);
    window.pins().run(Role::keeper, [] {});
    BOOST_TEST(named<QWidget>(window, "pinStrip").isVisible());
}

std::vector<WalkedPage> pagesToBegin()
{
    return {
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
        {"sending out", [](DeskWindow& window) { window.exchange().showPart(ExchangePage::sendOutPart); }}};
}

std::vector<WalkedPage> pagesOfPeople()
{
    return {
        {"dispense",
         [](DeskWindow& window) {
             window.showPlace(DeskWindow::Place::dispense);
             BOOST_TEST(window.choosePerson(QStringLiteral("P-1")));
         }},
        {"an empty card",
         [](DeskWindow& window) {
             window.showPlace(DeskWindow::Place::dispense);
             named<QPushButton>(window, "newPersonButton").click();
         }},
        {"plain reader", [](DeskWindow& window) { named<QTabBar>(window, "cardTabs").setCurrentIndex(1); }},
        {"the waiting line", [](DeskWindow& window) { showPeople(window, DispensePlace::linePage); }},
        {"orders", [](DeskWindow& window) {
             named<QTabBar>(window, "cardTabs").setCurrentIndex(0);
             showPeople(window, DispensePlace::ordersPage);
         }}};
}

std::vector<WalkedPage> pagesOfStock()
{
    return {{"stock",
             [](DeskWindow& window) {
                 window.dispense().showPeoplePage(DispensePlace::peoplePage);
                 window.showPlace(DeskWindow::Place::stock);
                 window.stock().showView(StockPlace::asTable);
                 BOOST_TEST(window.stock().chooseLine("D-100"));
             }},
            {"ladder", [](DeskWindow& window) { window.stock().showView(StockPlace::asLadder); }},
            {"box", [](DeskWindow& window) { window.stock().showView(StockPlace::asBox); }},
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
            {"a PIN is asked for", showPin}};
}

std::vector<WalkedPage> pagesOfAudit()
{
    return {{"why above another",
             [](DeskWindow& window) {
                 window.showPlace(DeskWindow::Place::dispense);
                 BOOST_TEST(window.choosePerson(QStringLiteral("P-1")));
                 named<QTabBar>(window, "whyTabs").setCurrentIndex(2);
             }},
            {"audit, findings", [](DeskWindow& window) { showAudit(window, 0, 0); }},
            {"audit, why not", [](DeskWindow& window) { showAudit(window, 0, 1); }},
            {"audit, charts", [](DeskWindow& window) { showAudit(window, 1, 0); }},
            {"audit, reasons",
             [](DeskWindow& window) {
                 showAudit(window, 1, 1);
                 named<QComboBox>(window, "chartKindBox").setCurrentIndex(3);
             }},
            {"audit, bench", [](DeskWindow& window) { showAudit(window, 2, 0); }},
            {"practice", [](DeskWindow& window) {
                 window.showPlace(DeskWindow::Place::dispense);
                 window.practice().begin();
             }}};
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

/// Whether `after` is read after `before` in one panel: further on in the same row, or lower.
bool readAfter(const QRect& before, const QRect& after, Qt::LayoutDirection direction)
{
    const bool sameRow = std::min(before.bottom(), after.bottom()) - std::max(before.top(), after.top()) >
                         std::min(before.height(), after.height()) / 2;
    if (!sameRow)
        return after.top() >= before.top();
    return direction == Qt::RightToLeft ? after.right() <= before.right() : after.left() >= before.left();
}

/// Panels beside each other are read from the side where lines begin, others from above.
bool panelsInOrder(const QRect& before, const QRect& after, Qt::LayoutDirection direction)
{
    const bool beside = before.top() < after.bottom() && after.top() < before.bottom();
    if (direction == Qt::RightToLeft)
        return beside ? after.right() <= before.left()
                      : after.top() > before.top() || after.right() <= before.left();
    return beside ? after.left() >= before.right()
                  : after.top() > before.top() || after.left() >= before.right();
}

/// Relative luminance, WCAG 2.2.
double luminance(const QColor& colour)
{
    const auto part = [](double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
    return 0.2126 * part(colour.redF()) + 0.7152 * part(colour.greenF()) + 0.0722 * part(colour.blueF());
}
} // namespace

const std::vector<WalkedPage>& pagesOfDesk()
{
    static const auto pages = [] {
        std::vector<WalkedPage> all;
        for (const auto& some : {pagesToBegin(), pagesOfPeople(), pagesOfStock(), pagesOfAudit()})
            all.insert(all.end(), some.begin(), some.end());
        return all;
    }();
    return pages;
}

const std::vector<WalkedPage>& otherWindows()
{
    static const std::vector<WalkedPage> windows{
        {"helpWindow", [](DeskWindow& window) { window.showHelp(); }},
        {"keySheet", [](DeskWindow& window) { window.showKeys(); }}};
    return windows;
}

Speaking::Speaking(const char* language)
{
    if (QLatin1String(language) == QLatin1String("en"))
        return;
    BOOST_TEST_REQUIRE(translator.load(QStringLiteral(":/i18n/quarterstep_") + QLatin1String(language)));
    QApplication::installTranslator(&translator);
    QApplication::setLayoutDirection(QLatin1String(language) == QLatin1String("ar") ? Qt::RightToLeft
                                                                                    : Qt::LeftToRight);
}

Speaking::~Speaking()
{
    QApplication::removeTranslator(&translator);
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

bool ours(const QWidget& widget)
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

std::vector<QWidget*> tabOrder(QWidget& window)
{
    std::vector<QWidget*> order;
    const auto* header = window.findChild<QWidget*>(QStringLiteral("deskHeader"));
    QWidget* widget = &window;
    do {
        widget = widget->nextInFocusChain();
        const bool byTab = (widget->focusPolicy() & Qt::TabFocus) != 0;
        if (byTab && widget->isVisible() && widget->isEnabled() && ours(*widget) && !widget->focusProxy() &&
            widget->window() == &window && (!header || !header->isAncestorOf(widget)))
            order.push_back(widget);
    } while (widget != &window);
    return order;
}

QRect placeOf(const QWidget& widget, const QWidget& window)
{
    return {widget.mapTo(&window, QPoint(0, 0)), widget.size()};
}

void readsInOrder(const std::vector<QWidget*>& order, const QWidget& window, const std::string& page)
{
    std::set<const QWidget*> left; // panels that the order has gone through
    for (std::size_t i = 1; i < order.size(); ++i) {
        const auto direction = order[i]->parentWidget()->layoutDirection();
        const auto* before = panelOf(order[i - 1]);
        const auto* now = panelOf(order[i]);
        const bool apart = before && now && !before->isAncestorOf(now) && !now->isAncestorOf(before);
        if (before != now && apart) {
            left.insert(before);
            BOOST_TEST((left.count(now) == 0U), page << ": Tab comes back for " << called(*order[i]));
            BOOST_TEST(panelsInOrder(placeOf(*before, window), placeOf(*now, window), direction),
                       page << ": " << called(*now) << " comes after " << called(*before));
        } else if (before == now) {
            BOOST_TEST(readAfter(placeOf(*order[i - 1], window), placeOf(*order[i], window), direction),
                       page << ": " << called(*order[i]) << " comes after " << called(*order[i - 1]));
        }
    }
}

double contrast(const QColor& a, const QColor& b)
{
    const double high = std::max(luminance(a), luminance(b));
    const double low = std::min(luminance(a), luminance(b));
    return (high + 0.05) / (low + 0.05);
}

} // namespace quarterstep
