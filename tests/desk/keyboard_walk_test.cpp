// SPDX-License-Identifier: GPL-3.0-or-later
// A walk over every page of the window by the keys themselves, forward and back: Tab comes to everything that
// takes the keyboard, in the order of reading, stays nowhere, and where it stands is seen.
#include "app/desk/theme.hpp"
#include "tests/desk/desk_walk.hpp"

#include <QApplication>
#include <QScrollArea>
#include <QTabBar>
#include <QTest>

#include <algorithm>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
/// Whether Tab should stop at it now.
bool takesTab(const QWidget& widget, const QWidget& window)
{
    return (widget.focusPolicy() & Qt::TabFocus) == Qt::TabFocus && widget.isVisible() &&
           widget.isEnabled() && ours(widget) && !widget.focusProxy() && widget.window() == &window;
}

std::vector<QWidget*> stopsOf(const QWidget& window)
{
    std::vector<QWidget*> stops;
    for (auto* widget : window.findChildren<QWidget*>())
        if (takesTab(*widget, window))
            stops.push_back(widget);
    return stops;
}

/// Whether enough of it is in sight: all, or as much as fits where it scrolls.
bool inSight(const QWidget& widget)
{
    auto room = widget.size();
    for (const auto* around = widget.parentWidget(); around; around = around->parentWidget())
        if (const auto* area = qobject_cast<const QScrollArea*>(around))
            room = room.boundedTo(area->viewport()->size());
    const auto seen = widget.visibleRegion().boundingRect().size();
    return seen.width() >= room.width() - 1 && seen.height() >= room.height() - 1;
}

/// As it looks on a panel, with nothing but that behind it.
QImage pictureOf(QWidget& widget)
{
    QImage image(widget.size(), QImage::Format_RGB32);
    image.fill(QApplication::palette().color(QPalette::Base));
    widget.render(&image, {}, {}, QWidget::DrawChildren);
    return image;
}

/// Pixels that stand out from what they were by 3 : 1 or more.
int changedBetween(const QImage& before, const QImage& after)
{
    int changed = 0;
    for (int y = 0; y < before.height(); ++y)
        for (int x = 0; x < before.width(); ++x)
            if (before.pixel(x, y) != after.pixel(x, y) &&
                contrast(before.pixelColor(x, y), after.pixelColor(x, y)) >= 3.0)
                ++changed;
    return changed;
}

struct Walk {
    QWidget& window;
    const std::string page;
    bool looks; ///< whether the keyboard must be seen where it is, which takes pictures

    /// Every widget that Tab stops at, from `first` until it comes back there.
    std::vector<QWidget*> by(Qt::Key key, QWidget* first)
    {
        std::vector<QWidget*> order;
        first->setFocus(Qt::TabFocusReason);
        constexpr std::size_t arrows = 5; // of Qt's own, beside tabs that have no room
        const auto stops = stopsOf(window).size();
        for (auto* at = first; at && order.size() < stops + arrows; at = QApplication::focusWidget()) {
            if (at == first && !order.empty())
                return order;
            BOOST_TEST(inSight(*at), page << ": " << called(*at) << " is not in sight");
            order.push_back(at);
            press(key, *at);
            if (QApplication::focusWidget() == at && stops > 1)
                break;
        }
        BOOST_ERROR(page << ": Tab does not come back from " << called(*order.back()));
        return order;
    }

    void press(Qt::Key key, QWidget& at)
    {
        const auto focused = looks ? pictureOf(at) : QImage();
        QTest::keyClick(&at, key, key == Qt::Key_Backtab ? Qt::ShiftModifier : Qt::NoModifier);
        if (!looks || at.hasFocus())
            return;
        const auto left = pictureOf(at);
        BOOST_TEST_REQUIRE((left.size() == focused.size()), page << ": " << called(at));
        const int changed = changedBetween(focused, left);
        const auto* tabs = qobject_cast<const QTabBar*>(&at); // of those, it is on one
        const auto size = tabs ? tabs->tabRect(tabs->currentIndex()).size() : at.size();
        const int around = 2 * (size.width() + size.height());
        BOOST_TEST(changed >= around / 2, page << ": the keyboard is not seen on " << called(at) << ": "
                                               << changed << " of " << around);
    }
};

/// Forward and back over what is shown.
void walkOver(QWidget& window, const std::string& page, bool looks)
{
    window.activateWindow();
    QTest::qWait(20); // parts fold once they know how wide they are
    auto stops = stopsOf(window);
    BOOST_TEST_REQUIRE(!stops.empty(), page);
    QWidget* first = nullptr; // in the order of the window, whoever has the keyboard now
    for (auto* at = window.nextInFocusChain(); !first; at = at->nextInFocusChain())
        first = takesTab(*at, window) ? at : nullptr;
    Walk walk{window, page, looks};
    const auto forward = walk.by(Qt::Key_Tab, first);
    for (auto* stop : stops)
        if (takesTab(*stop, window)) // what is typed nowhere can still switch something off
            BOOST_TEST((std::find(forward.begin(), forward.end(), stop) != forward.end()),
                       page << ": Tab does not come to " << called(*stop));
    readsInOrder(forward, window, page);
    walk.looks = false;
    auto back = walk.by(Qt::Key_Backtab, first);
    std::reverse(back.begin() + 1, back.end());
    BOOST_TEST((back == forward), page << ": Shift+Tab goes another way");
}

void walkOverAll(bool looks, const std::string& look)
{
    AuditDesk desk;
    for (const auto& page : pagesOfDesk()) {
        page.show(desk.window);
        walkOver(desk.window, look + ", " + page.name, looks);
    }
    for (const auto& page : otherWindows()) {
        page.show(desk.window);
        walkOver(named<QWidget>(desk.window, page.name), look + ", " + page.name, looks);
    }
}
} // namespace

BOOST_AUTO_TEST_SUITE(keyboard_walk)

BOOST_AUTO_TEST_CASE(tab_comes_to_everything_as_one_reads_and_is_seen, *utf::label("PROP"))
{
    for (const auto theme : {Theme::dark, Theme::sun, Theme::light}) {
        applyTheme(*qApp, theme);
        walkOverAll(true, nameOf(theme).toStdString());
    }
}

BOOST_AUTO_TEST_CASE(tab_goes_as_one_reads_from_right_to_left, *utf::label("PROP"))
{
    const Speaking speaking("ar");
    walkOverAll(false, "mirrored");
}

BOOST_AUTO_TEST_SUITE_END()
