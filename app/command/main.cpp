// SPDX-License-Identifier: GPL-3.0-or-later
// quarterstep: the program of the command line.
#include "app/command/run.hpp"

#include <QCoreApplication>

int main(int argc, char* argv[])
{
    quarterstep::speakUtf8();
    const QCoreApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("quarterstep"));
    return quarterstep::runCommand({argv + (argc > 0 ? 1 : 0), argv + argc});
}
