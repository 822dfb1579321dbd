// SPDX-License-Identifier: GPL-3.0-or-later
// A walk over every page of the window: what takes the keyboard has its names, targets can be hit, and at
// 200 per cent on a small screen nothing is cut and everything can be reached.
#include "app/desk/theme.hpp"
#include "tests/desk/desk_walk.hpp"

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
/// Words that wrap have the height they need at their width.
bool wordsFit(const QLabel& label)
{
    return !label.wordWrap() || label.text().isEmpty() ||
           label.heightForWidth(label.width()) <= label.height() + 1;
}

/// Parts that a layout puts beside each other do not lie over each other.
void nothingCovers(const QWidget& parent, const std::string& page)
{
    QList<const QWidget*> parts;
    for (const auto* child : parent.findChildren<QWidget*>(Qt::FindDirectChildrenOnly))
        if (child->isVisible() && !child->isWindow() && ours(*child) && !child->size().isEmpty())
            parts << child;
    for (qsizetype a = 0; a < parts.size(); ++a)
        for (qsizetype b = a + 1; b < parts.size(); ++b) {
            const auto common = parts[a]->geometry() & parts[b]->geometry();
            BOOST_TEST((common.width() <= 1 || common.height() <= 1),
                       page << ": " << called(*parts[a]) << " lies over " << called(*parts[b]));
        }
}

/// What the head of the window does without on a small screen; it stands in the place Stock and in the title.
bool leftOut(const QWidget& widget)
{
    return widget.size().isEmpty() && (widget.objectName() == QStringLiteral("summaryLabel") ||
                                       widget.objectName() == QStringLiteral("sampleLabel"));
}

/// Parts fold once they know how wide they are, and what is around them follows: until nothing moves any
/// more, however busy the machine is.
void settle(const QWidget& window)
{
    const auto places = [&window] {
        std::vector<QRect> all;
        for (const auto* widget : window.findChildren<QWidget*>())
            all.push_back(widget->geometry());
        return all;
    };
    constexpr int rounds = 100;
    std::vector<QRect> before;
    for (int round = 0; round < rounds && before != places(); ++round) {
        before = places();
        QTest::qWait(20);
    }
}
} // namespace

BOOST_AUTO_TEST_SUITE(pages)

BOOST_AUTO_TEST_CASE(what_takes_the_keyboard_has_its_names_on_every_page, *utf::label("PROP"))
{
    AuditDesk desk;
    auto pages = pagesOfDesk();
    pages.insert(pages.end(), otherWindows().begin(), otherWindows().end());
    for (const auto& page : pages) {
        page.show(desk.window);
        for (const auto* widget : desk.window.findChildren<QWidget*>()) {
            if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible() || !ours(*widget))
                continue;
            BOOST_TEST(!widget->objectName().isEmpty(), page.name << ": " << called(*widget));
            BOOST_TEST(!widget->toolTip().isEmpty(), page.name << ": no tooltip: " << called(*widget));
            auto* spoken = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(widget));
            BOOST_TEST((spoken && !spoken->text(QAccessible::Name).isEmpty()),
                       page.name << ": no spoken name: " << called(*widget));
        }
    }
}

BOOST_AUTO_TEST_CASE(targets_can_be_hit,
                     *utf::label("REF") * utf::description("WCAG 2.2, 2.5.8: 24 by 24 pixels"))
{
    for (const auto theme : {Theme::light, Theme::dark, Theme::sun}) {
        applyTheme(*qApp, theme);
        AuditDesk desk;
        for (const auto& page : pagesOfDesk()) {
            page.show(desk.window);
            QApplication::processEvents();
            for (const auto* widget : desk.window.findChildren<QWidget*>()) {
                const bool target = qobject_cast<const QAbstractButton*>(widget) ||
                                    qobject_cast<const QComboBox*>(widget) ||
                                    qobject_cast<const QLineEdit*>(widget);
                if (!target || !widget->isVisible() || !ours(*widget))
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
    for (const auto& [theme, scale, language] :
         {std::tuple{Theme::light, 200, "en"}, std::tuple{Theme::light, 200, "ar"},
          std::tuple{Theme::light, 200, "hi"}, std::tuple{Theme::sun, 100, "en"},
          std::tuple{Theme::sun, 200, "en"}}) {
        applyTheme(*qApp, theme, scale);
        const Speaking speaking(language);
        AuditDesk desk;
        for (const auto& page : pagesOfDesk()) {
            page.show(desk.window);
            settle(desk.window);
            BOOST_TEST(desk.window.width() <= 1366,
                       page.name << ": the window grew to " << desk.window.width());
            BOOST_TEST(desk.window.height() <= 768,
                       page.name << ": the window grew to " << desk.window.height());
            for (const auto* widget : desk.window.findChildren<QWidget*>()) {
                const auto* label = qobject_cast<const QLabel*>(widget);
                const bool text = qobject_cast<const QAbstractButton*>(widget) ||
                                  qobject_cast<const QComboBox*>(widget) ||
                                  (label && !label->wordWrap() && !label->text().isEmpty());
                if (!text || !widget->isVisible() || leftOut(*widget) || !ours(*widget) ||
                    widget->window() != &desk.window)
                    continue;
                BOOST_TEST(widget->width() >= widget->minimumSizeHint().width(),
                           page.name << ": " << called(*widget) << " is cut: " << widget->width() << " of "
                                     << widget->minimumSizeHint().width());
                BOOST_TEST(widget->height() >= widget->fontMetrics().height(),
                           page.name << ": " << called(*widget) << " is cut at its foot");
            }
            for (const auto* widget : desk.window.findChildren<QWidget*>()) {
                if (!widget->isVisible() || widget->window() != &desk.window)
                    continue;
                if (const auto* label = qobject_cast<const QLabel*>(widget); label && !leftOut(*label))
                    BOOST_TEST(wordsFit(*label), language << " " << page.name << ": " << called(*label)
                                                          << " is cut: " << label->height() << " of "
                                                          << label->heightForWidth(label->width()));
                if (widget->layout() && !widget->inherits("QStackedWidget"))
                    nothingCovers(*widget, std::string(language) + " " + page.name);
            }
            for (const auto* part : named<QWidget>(desk.window, "deskHeader").findChildren<QWidget*>())
                if (part->isVisible() && !leftOut(*part) &&
                    part->parentWidget()->objectName() == QStringLiteral("deskHeader"))
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
