// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that takes the keyboard has an object name, a name for a screen reader and a tooltip.
#include "app/desk/places/stock_place.hpp"
#include "app/desk/settings/preferences.hpp"
#include "app/desk/theme.hpp"
#include "tests/desk/desk_walk.hpp"

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QFontMetrics>
#include <QPalette>
#include <QPlainTextEdit>
#include <QScrollBar>

using namespace quarterstep;
namespace utf = boost::unit_test;

BOOST_AUTO_TEST_SUITE(accessibility)

BOOST_AUTO_TEST_CASE(every_widget_that_takes_the_keyboard_can_be_named, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    desk.window.showOpening();
    desk.window.showTrays({});
    desk.window.showSettings();
    desk.window.showPlace(DeskWindow::Place::audit);
    BOOST_TEST_REQUIRE(desk.window.stock().chooseLine("D-100"));
    int walked = 0;
    for (const auto* widget : desk.window.findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !ours(*widget) || widget->inherits("QSplitter"))
            continue;
        ++walked;
        BOOST_TEST(!widget->objectName().isEmpty(), called(*widget) << " has no object name");
        BOOST_TEST(!widget->toolTip().isEmpty(), called(*widget) << " has no tooltip");
        auto* spoken = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(widget));
        BOOST_TEST((spoken && !spoken->text(QAccessible::Name).isEmpty()), called(*widget)
                                                                               << " has no spoken name");
    }
    BOOST_TEST(walked > 90); // 24 fields, 8 signs, 4 checks, buttons, lists, choices
}

BOOST_AUTO_TEST_CASE(words_stand_out_from_what_is_behind_them_in_every_look,
                     *utf::label("REF") *
                         utf::description("WCAG 2.2, 1.4.3 (4.5 : 1) and 1.4.6 (7 : 1) for sun mode"))
{
    for (const auto theme : {Theme::light, Theme::dark, Theme::sun}) {
        const auto colours = coloursOf(theme);
        const double least = theme == Theme::sun ? 7.0 : 4.5;
        for (const auto& behind : {colours.window, colours.base, colours.alternate})
            for (const auto& words : {colours.text, colours.muted, colours.accent, colours.caution,
                                      colours.trial, colours.outside})
                BOOST_TEST(contrast(words, behind) >= least, words.name().toStdString()
                                                                 << " on " << behind.name().toStdString());
        BOOST_TEST(contrast(colours.accentText, colours.accent) >= least);
    }
}

BOOST_AUTO_TEST_CASE(every_palette_of_the_program_can_be_read,
                     *utf::label("REF") *
                         utf::description("WCAG 2.2, 1.4.3 (4.5 : 1) and 1.4.6 (7 : 1) for sun mode; what is "
                                          "switched off is excepted there and held to the same here"))
{
    const std::pair<QPalette::ColorRole, QPalette::ColorRole> pairs[] = {
        {QPalette::WindowText, QPalette::Window},
        {QPalette::Text, QPalette::Base},
        {QPalette::Text, QPalette::AlternateBase},
        {QPalette::ButtonText, QPalette::Button},
        {QPalette::HighlightedText, QPalette::Highlight},
        {QPalette::PlaceholderText, QPalette::Base},
        {QPalette::ToolTipText, QPalette::ToolTipBase},
        {QPalette::Link, QPalette::Base},
        {QPalette::Link, QPalette::Window},
        {QPalette::BrightText, QPalette::Base}};
    for (const auto theme : {Theme::light, Theme::dark, Theme::sun}) {
        applyTheme(*qApp, theme);
        const auto palette = QApplication::palette();
        const double least = theme == Theme::sun ? 7.0 : 4.5;
        for (const auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled})
            for (const auto& [words, behind] : pairs)
                BOOST_TEST(contrast(palette.color(group, words), palette.color(group, behind)) >= least,
                           nameOf(theme).toStdString()
                               << ", group " << group << ": " << words << " on " << behind << " "
                               << contrast(palette.color(group, words), palette.color(group, behind)));
    }
    applyTheme(*qApp, Theme::light);
}

/// The most that anything stands out from what is most of the picture.
double mostContrast(const QImage& image)
{
    const auto behind = image.pixelColor(image.width() - 12, 6);
    double most = 1.0;
    for (int y = 4; y < image.height() - 4; ++y)
        for (int x = 8; x < image.width() - 8; ++x)
            most = std::max(most, contrast(image.pixelColor(x, y), behind));
    return most;
}

BOOST_AUTO_TEST_CASE(examples_in_empty_fields_can_be_read_as_they_are_painted,
                     *utf::label("REF") * utf::description("WCAG 2.2, 1.4.3 and 1.4.6"))
{
    for (const auto theme : {Theme::light, Theme::dark, Theme::sun}) {
        applyTheme(*qApp, theme);
        OpenDesk desk;
        desk.window.showPlace(DeskWindow::Place::stock);
        auto& filter = named<QWidget>(desk.window, "linesFilter");
        BOOST_TEST(!filter.hasFocus());
        const double least = theme == Theme::sun ? 7.0 : 4.5;
        BOOST_TEST(mostContrast(filter.grab().toImage()) >= least, nameOf(theme).toStdString());
        desk.window.showTrays({});
        auto& trays = named<QPlainTextEdit>(desk.window, "traysEdit");
        BOOST_TEST(mostContrast(trays.viewport()->grab().toImage()) >= least, nameOf(theme).toStdString());
    }
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_CASE(what_is_in_sight_stands_out_in_a_scroll_bar,
                     *utf::label("REF") * utf::description("WCAG 2.2, 1.4.11: 3 : 1"))
{
    for (const auto theme : {Theme::light, Theme::dark, Theme::sun}) {
        applyTheme(*qApp, theme);
        for (const auto orientation : {Qt::Horizontal, Qt::Vertical}) {
            QScrollBar bar(orientation);
            bar.setRange(0, 100);
            bar.setPageStep(100); // half of all is in sight: that at the beginning
            orientation == Qt::Horizontal ? bar.resize(300, 14) : bar.resize(14, 300);
            const auto image = bar.grab().toImage();
            const auto at = [&](int along) {
                return orientation == Qt::Horizontal ? image.pixelColor(along, 7)
                                                     : image.pixelColor(7, along);
            };
            BOOST_TEST(contrast(at(80), at(220)) >= 3.0, nameOf(theme).toStdString());
            BOOST_TEST(contrast(at(80), coloursOf(theme).base) >= 3.0, nameOf(theme).toStdString());
        }
    }
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_CASE(sun_mode_is_black_on_white_and_at_least_fourteen_points, *utf::label("PROP"))
{
    applyTheme(*qApp, Theme::sun);
    BOOST_TEST(QApplication::font().pointSizeF() >= 14.0);
    BOOST_TEST((QApplication::palette().color(QPalette::Window) == QColor(Qt::white)));
    BOOST_TEST((QApplication::palette().color(QPalette::WindowText) == QColor(Qt::black)));
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_CASE(the_fonts_have_the_signs_the_desk_writes, *utf::label("PROP"))
{
    const QFontMetrics metrics(QApplication::font());
    for (const char32_t sign :
         {U'\u0394', U'\u00B7', U'\u2212', U'\u00D7', U'\u25B8', U'\u25C2', U'\u2190', U'\u2192', U'\u0628'})
        BOOST_TEST(metrics.inFontUcs4(sign), "U+" << std::hex << static_cast<unsigned>(sign));
}

BOOST_AUTO_TEST_SUITE_END()
