// SPDX-License-Identifier: GPL-3.0-or-later
// quarterstep-paper: the same verbs with drawing linked in. `quarterstep print` goes on here when it is to
// draw, so that the other verbs start without fonts and window system (4 ms of processor time instead of 11).
#include "app/command/print.hpp"
#include "app/command/run.hpp"
#include "app/paper/render/render.hpp"

#include <QCoreApplication>

int main(int argc, char* argv[])
{
    quarterstep::speakUtf8();
    const auto application = quarterstep::drawingApplication(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("quarterstep"));
    quarterstep::drawPapersWith(quarterstep::drawPapers);
    return quarterstep::runCommand({argv + (argc > 0 ? 1 : 0), argv + argc});
}
