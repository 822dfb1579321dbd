// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/run.hpp"

#include <QCoreApplication>

#include <clocale>
#include <cstring>
#include <langinfo.h>

int main(int argc, char* argv[])
{
    // Text in and out is UTF-8 in any locale; Qt warns on standard error when the locale is not.
    std::setlocale(LC_ALL, "");
    if (std::strcmp(nl_langinfo(CODESET), "UTF-8") != 0)
        qputenv("LC_ALL", "C.UTF-8");
    const QCoreApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("quarterstep"));
    return quarterstep::runCommand({argv + (argc > 0 ? 1 : 0), argv + argc});
}
