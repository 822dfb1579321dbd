// SPDX-License-Identifier: GPL-3.0-or-later
// The three looks of the desk: light for a tent, dark for a dim room, sun (black on white, large) for
// outdoors. No meaning hangs on a colour alone: every coloured word is also a word, every mark also a shape.
#pragma once

#include <QColor>
#include <QString>

#include <optional>

class QApplication;

namespace quarterstep
{

enum class Theme { light, dark, sun };

/// The colours of a look by what they are for.
struct Colours {
    QColor window;    ///< behind everything
    QColor base;      ///< cards, lists, fields
    QColor alternate; ///< every second row
    QColor text;
    QColor muted; ///< labels and hints; still at least 4.5 : 1 on window and base
    QColor border;
    QColor accent;     ///< suggested, selection, rings
    QColor accentText; ///< on accent
    QColor caution;
    QColor trial;
    QColor outside;
};

[[nodiscard]] Colours coloursOf(Theme theme);
/// Sets style, palette, font and style sheet of the whole program; letters at `textScale` per cent.
void applyTheme(QApplication& application, Theme theme, int textScale = 100);
/// The same in two steps: everything but the style sheet, and that.
void applyPlainTheme(QApplication& application, Theme theme, int textScale);
void applySheet(QApplication& application);
/// Size of the letters last applied, per cent.
[[nodiscard]] int textScaleNow();
/// Points of ordinary letters in a look before they are scaled.
[[nodiscard]] double pointsOf(Theme theme);
/// The look last applied; light when none was.
[[nodiscard]] Theme themeNow();
/// "light", "dark", "sun"; empty for anything else.
[[nodiscard]] std::optional<Theme> themeNamed(const QString& name);

} // namespace quarterstep
