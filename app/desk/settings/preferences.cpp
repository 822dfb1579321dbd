// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/settings/preferences.hpp"

#include <QCryptographicHash>
#include <QDir>
#include <QSettings>

#include <algorithm>

namespace quarterstep
{

namespace
{
constexpr int campsKept = 5;

QSettings preferencesFile()
{
    return QSettings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("quarterstep"),
                     QStringLiteral("desk"));
}

/// A folder's name can hold what a key of settings cannot.
QString keyOf(const QString& folder, const QString& about)
{
    const auto hash =
        QCryptographicHash::hash(QDir(folder).absolutePath().toUtf8(), QCryptographicHash::Sha256);
    return QStringLiteral("%1/%2").arg(about, QString::fromLatin1(hash.toHex().left(16)));
}
} // namespace

QString nameOf(Theme theme)
{
    switch (theme) {
    case Theme::dark:
        return QStringLiteral("dark");
    case Theme::sun:
        return QStringLiteral("sun");
    case Theme::light:
        break;
    }
    return QStringLiteral("light");
}

Preferences readPreferences()
{
    const auto file = preferencesFile();
    Preferences read;
    read.theme = themeNamed(file.value(QStringLiteral("look")).toString()).value_or(read.theme);
    read.textScale = std::clamp(file.value(QStringLiteral("text_scale"), leastTextScale).toInt(),
                                leastTextScale, mostTextScale);
    read.language = file.value(QStringLiteral("language")).toString();
    read.printer = file.value(QStringLiteral("printer")).toString();
    read.camps = file.value(QStringLiteral("camps")).toStringList();
    return read;
}

void keepPreferences(const Preferences& preferences)
{
    auto file = preferencesFile();
    file.setValue(QStringLiteral("look"), nameOf(preferences.theme));
    file.setValue(QStringLiteral("text_scale"), preferences.textScale);
    file.setValue(QStringLiteral("language"), preferences.language);
    file.setValue(QStringLiteral("printer"), preferences.printer);
    file.setValue(QStringLiteral("camps"), preferences.camps);
}

void keepChoices(const QString& folder, const QString& about, const QVariantMap& choices)
{
    preferencesFile().setValue(keyOf(folder, about), choices);
}

QVariantMap keptChoices(const QString& folder, const QString& about)
{
    return preferencesFile().value(keyOf(folder, about)).toMap();
}

void rememberCamp(Preferences& preferences, const QString& folder)
{
    const auto whole = QDir(folder).absolutePath();
    preferences.camps.removeAll(whole);
    preferences.camps.prepend(whole);
    preferences.camps = preferences.camps.mid(0, campsKept);
}

} // namespace quarterstep
