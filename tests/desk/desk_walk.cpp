// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/desk/desk_walk.hpp"

#include "app/desk/bringing/bring_in_panel.hpp"
#include "app/desk/bringing/exchange_page.hpp"
#include "app/desk/opening/practice.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/stock_place.hpp"

#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QTabBar>

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
} // namespace

const std::vector<WalkedPage>& pagesOfDesk()
{
    static const std::vector<WalkedPage> pages{
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
        {"why above another",
         [](DeskWindow& window) {
             window.showPlace(DeskWindow::Place::dispense);
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

} // namespace quarterstep
