// SPDX-License-Identifier: GPL-3.0-or-later
// quarterstep-desk: reads the command line, makes the window, runs it, or paints it into a file.
#include "app/desk/desk_program.hpp"
#include "app/desk/desk_window.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"

#include <QApplication>
#include <QDeadlineTimer>
#include <QTextStream>

#include <optional>
#include <utility>

using namespace quarterstep;

namespace
{
int say(const QString& text, int exitCode)
{
    QTextStream(exitCode == 0 ? stdout : stderr) << text << Qt::endl;
    return exitCode;
}

/// Until what is read beside the window is there and the parts have their places.
void settle(DeskWindow& window)
{
    constexpr int rounds = 10; // parts fold once they know how wide they are, and others follow them
    constexpr int patience = 10000;
    for (int round = 0; round < rounds; ++round)
        QApplication::processEvents();
    if (!window.work().running())
        return;
    for (const QDeadlineTimer end(patience); window.work().running() && !end.hasExpired();)
        QApplication::processEvents(QEventLoop::AllEvents, 50);
    for (int round = 0; round < rounds; ++round)
        QApplication::processEvents();
}

/// 0 painted, 1 no such person or line, 3 the camp cannot be opened, 4 the file cannot be written.
int paintInto(DeskWindow& window, const DeskOptions& options, bool opened)
{
    if (!opened)
        return say(window.messages().text(), 3);
    if (const auto missing = showNamed(window, options); !missing.isEmpty())
        return say(missing, 1);
    settle(window);
    QWidget* shown = &window;
    for (const auto* name : {"helpWindow", "keySheet"}) // windows of their own
        if (auto* other = window.findChild<QWidget*>(QLatin1String(name)); other && other->isVisible())
            shown = other;
    if (!shown->grab().save(options.screenshot, "PNG"))
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
    auto early = options.screenshot.isEmpty() ? readAhead(options) : std::future<CampFiles>();
    QApplication application(argc, argv);
    DeskProgram program(application, options, std::move(early));
    if (!options.screenshot.isEmpty()) {
        program.window().show();
        QApplication::processEvents();
        return paintInto(program.window(), options,
                         options.folder.isEmpty() || program.window().openCamp(options.folder));
    }
    program.begin();
    return QApplication::exec();
}
