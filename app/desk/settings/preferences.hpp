// SPDX-License-Identifier: GPL-3.0-or-later
// What belongs to the person at this laptop and not to a camp: look, size of the letters, language, printer,
// the camps opened last. Kept in the person's own settings file.
#pragma once

#include "app/desk/theme.hpp"

#include <QStringList>
#include <QVariantMap>

namespace quarterstep
{

/// Size of the letters in per cent of the usual, and the step of its keys.
inline constexpr int leastTextScale = 100;
inline constexpr int mostTextScale = 200;
inline constexpr int textScaleStep = 25;

struct Preferences {
    Theme theme = Theme::light;
    int textScale = leastTextScale;
    QString language;  ///< "ar"; empty = the system's
    QString printer;   ///< empty = the system's usual one
    QStringList camps; ///< folders, the last opened first
};

/// What cannot be understood in the file is left at its usual value.
[[nodiscard]] Preferences readPreferences();
/// Writes all of them; what cannot be written is lost without harm to any camp.
void keepPreferences(const Preferences& preferences);
/// Puts a folder first among the camps, without naming it twice; at most five are kept.
void rememberCamp(Preferences& preferences, const QString& folder);

/// Choices of the person for one camp folder, by a word for what they are about; kept beside the preferences,
/// since they are no business of others who open the camp.
void keepChoices(const QString& folder, const QString& about, const QVariantMap& choices);
[[nodiscard]] QVariantMap keptChoices(const QString& folder, const QString& about);

/// "light", "dark", "sun".
[[nodiscard]] QString nameOf(Theme theme);

} // namespace quarterstep
