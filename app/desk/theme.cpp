// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/theme.hpp"

#include "app/desk/desk_style.hpp"

#include <QApplication>
#include <QFont>
#include <QFontMetrics>
#include <QPalette>

namespace quarterstep
{

namespace
{
constexpr auto themeProperty = "quarterstepTheme";
constexpr int aroundLetters = 6; ///< px in a field, for signs that reach out of their line
constexpr auto scaleProperty = "quarterstepTextScale";

QColor rgb(unsigned value)
{
    return QColor::fromRgb(QRgb(0xff000000U | value));
}

QPalette paletteOf(const Colours& c)
{
    QPalette palette;
    palette.setColor(QPalette::Window, c.window);
    palette.setColor(QPalette::WindowText, c.text);
    palette.setColor(QPalette::Base, c.base);
    palette.setColor(QPalette::AlternateBase, c.alternate);
    palette.setColor(QPalette::Text, c.text);
    palette.setColor(QPalette::Button, c.base);
    palette.setColor(QPalette::ButtonText, c.text);
    palette.setColor(QPalette::BrightText, c.caution);
    palette.setColor(QPalette::Highlight, c.accent);
    palette.setColor(QPalette::HighlightedText, c.accentText);
    palette.setColor(QPalette::Link, c.accent);
    palette.setColor(QPalette::PlaceholderText, c.muted);
    palette.setColor(QPalette::ToolTipBase, c.base);
    palette.setColor(QPalette::ToolTipText, c.text);
    palette.setColor(QPalette::Mid, c.border);
    palette.setColor(QPalette::Midlight, c.border);
    palette.setColor(QPalette::Light, c.alternate);
    palette.setColor(QPalette::Dark, c.muted);
    palette.setColor(QPalette::Shadow, c.border);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, c.muted);
    palette.setColor(QPalette::Disabled, QPalette::Base, c.window);
    palette.setColor(QPalette::Disabled, QPalette::Button, c.window);
    palette.setColor(QPalette::Disabled, QPalette::Highlight, c.muted);
    palette.setColor(QPalette::Disabled, QPalette::HighlightedText, c.base);
    return palette;
}

/// Fields to type in have their colour from the palette: one said here would make their examples as pale
/// again. %1 base, %2 border, %3 text, %4 muted, %5 accent, %6 text on accent, %7 caution, %8 width of the
/// focus line, %9 and %10 points of titles and banners, %11 pixels of the line of a
/// field
QString sheetOf(const Colours& c, Theme theme, double points)
{
    return QStringLiteral(
               "QFrame[panel=\"true\"],QFrame#cardFrame,QFrame#answerFrame,QFrame#handOverFrame,QFrame#"
               "planeFrame,QFrame#"
               "waitingFrame,"
               "QFrame#whyFrame,QFrame#linesFrame,QFrame#stockCardFrame,QFrame#stockWorkFrame,QFrame#"
               "editsFrame{background:%1;border:1px solid %2;border-radius:8px;}"
               "QLabel[role=\"heading\"]{font-weight:700;color:%3;padding-top:0.12em;qproperty-indent:"
               "0;}" // a hamza is tall
               "QLabel[role=\"hint\"]{color:%4;padding-top:0.12em;qproperty-indent:0;}"
               "QLabel[role=\"title\"]{font-weight:700;color:%3;font-size:%9pt;}"
               "QLabel[role=\"banner\"]{font-weight:700;color:%3;font-size:%10pt;}"
               "QLabel[role=\"badge\"]{font-weight:700;color:%7;border:2px solid "
               "%7;border-radius:4px;padding:2px 8px;}"
               "QPlainTextEdit,QTextBrowser,QListWidget{background:%1;border:1px solid "
               "%4;border-radius:4px;}"
               "QListWidget::item{padding:6px;}"
               "QPlainTextEdit:focus,QTextBrowser:focus,QListWidget:focus{border:%8px solid %5;}"
               "QLabel[role=\"complaint\"]{color:%7;}"
               "QLineEdit{background:%1;border:1px solid %4;border-radius:4px;padding:1px "
               "6px;min-height:%11px;}"
               "QAbstractSpinBox{min-height:%11px;}"
               "QLineEdit:focus{border:%8px solid %5;padding:0px 5px;}"
               "QLineEdit:disabled{background:transparent;border:1px dashed %2;}"
               "QLineEdit[complained=\"true\"]{border:%8px dashed %7;padding:0px 5px;}"
               "QLineEdit[complained=\"true\"]:focus{border:%8px solid %7;padding:0px 5px;}"
               "QPushButton{background:%1;color:%3;border:1px solid %4;border-radius:5px;padding:5px 14px;}"
               "QPushButton:focus{border:%8px solid %5;padding:4px 13px;}"
               "QPushButton:disabled{color:%4;border:1px dashed %2;}"
               "QPushButton[primary=\"true\"]:enabled{background:%5;color:%6;border:1px solid "
               "%5;font-weight:700;}"
               "QPushButton:checked{border:%8px solid %5;padding:4px 13px;background:%5;color:%6;}"
               "QPushButton[primary=\"true\"]:enabled:focus,QPushButton:checked:focus{border:%8px solid "
               "%5;padding:4px 13px;}"
               "QPushButton:pressed{background:%2;}"
               "QAbstractItemView{background:%1;border:%8px solid transparent;outline:none;}"
               "QHeaderView{border:none;}"
               "QTableView{gridline-color:%2;}"
               "QTableCornerButton::section{background:%1;border:none;border-bottom:1px solid %2;}"
               "QScrollArea[read=\"true\"]{border:%8px solid transparent;}"
               "QAbstractItemView:focus,QScrollArea[read=\"true\"]:focus{border:%8px solid %5;}"
               "QHeaderView::section{background:%1;color:%4;border:none;border-bottom:1px solid "
               "%2;padding:3px 6px;}"
               "QScrollArea,QWidget#prescriptionCard,QWidget#cardViewport{background:transparent;border:none;"
               "}"
               "QSplitter::handle{background:transparent;}"
               "QToolTip{background:%1;color:%3;border:1px solid %2;padding:4px;}"
               "QFrame#messageBar{background:%1;border:2px solid %5;border-radius:8px;}"
               "QFrame#messageBar[tone=\"error\"],QFrame#campNotes{border:2px solid %7;}"
               "QFrame#campNotes{background:%1;border-radius:8px;}")
        .arg(c.base.name(), c.border.name(), c.text.name(), c.muted.name(), c.accent.name(),
             c.accentText.name(), c.caution.name(),
             theme == Theme::sun ? QStringLiteral("3") : QStringLiteral("2"))
        .arg(points * 1.3)
        .arg(points * 2.0)
        .arg(QFontMetrics(QApplication::font()).height() + aroundLetters);
}
} // namespace

Colours coloursOf(Theme theme)
{
    switch (theme) {
    case Theme::dark:
        return {rgb(0x14191c), rgb(0x1e262b), rgb(0x242e34), rgb(0xe8edef), rgb(0xa3b3bb), rgb(0x3b484f),
                rgb(0x6cbbdc), rgb(0x0a1317), rgb(0xf3a95f), rgb(0xc8aef2), rgb(0xa3b3bb)};
    case Theme::sun:
        return {rgb(0xffffff), rgb(0xffffff), rgb(0xffffff), rgb(0x000000), rgb(0x000000), rgb(0x000000),
                rgb(0x000000), rgb(0xffffff), rgb(0x000000), rgb(0x000000), rgb(0x000000)};
    case Theme::light:
        break;
    }
    return {rgb(0xf1efe8), rgb(0xffffff), rgb(0xf8f6f1), rgb(0x1b2a32), rgb(0x53626a), rgb(0xd3cec1),
            rgb(0x0e5a78), rgb(0xffffff), rgb(0x954600), rgb(0x5a3d8c), rgb(0x53626a)};
}

double pointsOf(Theme theme)
{
    return theme == Theme::sun ? 14.0 : 10.0;
}

void applyTheme(QApplication& application, Theme theme, int textScale)
{
    applyPlainTheme(application, theme, textScale);
    applySheet(application);
}

void applyPlainTheme(QApplication& application, Theme theme, int textScale)
{
    const auto colours = coloursOf(theme);
    application.setProperty(themeProperty, static_cast<int>(theme));
    application.setProperty(scaleProperty, textScale);
    application.setStyle(new DeskStyle); // the application takes it over; the analyser does not see that
    application.setPalette(paletteOf(colours)); // NOLINT(clang-analyzer-cplusplus.NewDeleteLeaks)
    auto font = application.font();
    font.setPointSizeF(pointsOf(theme) * textScale / 100.0);
    application.setFont(font);
}

void applySheet(QApplication& application)
{
    application.setStyleSheet(sheetOf(coloursOf(themeNow()), themeNow(), QApplication::font().pointSizeF()));
}

int textScaleNow()
{
    const int set = qApp ? qApp->property(scaleProperty).toInt() : 0;
    return set > 0 ? set : 100;
}

Theme themeNow()
{
    return static_cast<Theme>(qApp ? qApp->property(themeProperty).toInt() : 0);
}

std::optional<Theme> themeNamed(const QString& name)
{
    if (name == QLatin1String("light"))
        return Theme::light;
    if (name == QLatin1String("dark"))
        return Theme::dark;
    if (name == QLatin1String("sun"))
        return Theme::sun;
    return std::nullopt;
}

} // namespace quarterstep
