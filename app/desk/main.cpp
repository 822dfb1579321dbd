// SPDX-License-Identifier: GPL-3.0-or-later
// quarterstep-desk: reads the command line, makes the window, runs it, or paints it into a file.
#include "app/desk/desk_options.hpp"
#include "app/desk/desk_window.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/places/stock_place.hpp"

#include <QApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTextStream>
#include <QTimer>
#include <QTranslator>

#include <optional>

using namespace quarterstep;

namespace
{
void installLanguage(QApplication& application, const DeskOptions& options)
{
    const QLocale locale = options.language.isEmpty() ? QLocale::system() : QLocale(options.language);
    auto* ours = new QTranslator(&application);
    if (ours->load(locale, QStringLiteral("quarterstep"), QStringLiteral("_"), QStringLiteral(":/i18n")))
        QApplication::installTranslator(ours);
    auto* base = new QTranslator(&application);
    if (base->load(locale, QStringLiteral("qtbase"), QStringLiteral("_"),
                   QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QApplication::installTranslator(base);
    const bool mirrored =
        options.rightToLeft || (!options.language.isEmpty() && locale.textDirection() == Qt::RightToLeft);
    QApplication::setLayoutDirection(mirrored ? Qt::RightToLeft : Qt::LeftToRight);
}

int say(const QString& text, int exitCode)
{
    QTextStream(exitCode == 0 ? stdout : stderr) << text << Qt::endl;
    return exitCode;
}

/// The person, the place and the line named on the command line; what cannot be found, in words.
QString showNamed(DeskWindow& window, const DeskOptions& options)
{
    if (!options.person.isEmpty() && !window.choosePerson(options.person))
        return QCoreApplication::translate("DeskOptions", "no readable person %1 in people.csv")
            .arg(options.person);
    if (options.place.startsWith(QLatin1String("stock")) || !options.line.isEmpty())
        window.showPlace(DeskWindow::Place::stock);
    if (options.place == QLatin1String("stock-ladder") || options.place == QLatin1String("stock-box"))
        window.stock().showView(options.place == QLatin1String("stock-box") ? 2 : 1);
    if (!options.line.isEmpty() && !window.stock().chooseLine(options.line.toStdString()))
        return QCoreApplication::translate("DeskOptions", "no line %1 in this stock").arg(options.line);
    return {};
}

/// 0 painted, 1 no such person or line, 3 the camp cannot be opened, 4 the file cannot be written.
int paintInto(DeskWindow& window, const DeskOptions& options, bool opened)
{
    if (!opened)
        return say(window.messages().text(), 3);
    if (const auto missing = showNamed(window, options); !missing.isEmpty())
        return say(missing, 1);
    QApplication::processEvents();
    if (!window.grab().save(options.screenshot, "PNG"))
        return say(QCoreApplication::translate("DeskOptions", "cannot write %1").arg(options.screenshot), 4);
    return 0;
}

/// What needs no window: help, version, and what cannot be understood. Empty = go on.
std::optional<int> answerWithoutWindow(int& argc, char** argv, DeskOptions& options)
{
    const QCoreApplication plain(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("quarterstep-desk"));
    options = readDeskOptions(QCoreApplication::arguments());
    if (!options.problem.isEmpty())
        return say(options.problem, 2);
    if (options.help)
        return say(deskHelp(), 0);
    if (options.version)
        return say(QStringLiteral("quarterstep-desk " QUARTERSTEP_VERSION), 0);
    return std::nullopt;
}
} // namespace

int main(int argc, char** argv)
{
    DeskOptions options;
    if (const auto answered = answerWithoutWindow(argc, argv, options))
        return *answered;
    if (!options.screenshot.isEmpty() && qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen"); // a picture needs no screen
    QApplication application(argc, argv);
    installLanguage(application, options);
    applyTheme(application, options.theme);
    DeskWindow window;
    window.resize(options.size);
    window.show();
    if (!options.screenshot.isEmpty()) {
        QApplication::processEvents();
        return paintInto(window, options, options.folder.isEmpty() || window.openCamp(options.folder));
    }
    // The window is painted before the camp is read.
    QTimer::singleShot(0, &window, [&window, &options] {
        if (!options.folder.isEmpty() && window.openCamp(options.folder))
            showNamed(window, options);
    });
    return QApplication::exec();
}
