// SPDX-License-Identifier: GPL-3.0-or-later
// quarterstep-dicom: the same verbs with the library for DICOM linked in. `quarterstep import` and `export`
// go on here, so that the other verbs start without it (4 ms of processor time instead of 10).
#include "app/command/exchange_dicom.hpp"
#include "app/command/run.hpp"

#include <QCoreApplication>

int main(int argc, char* argv[])
{
    quarterstep::speakUtf8();
    const QCoreApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("quarterstep"));
    quarterstep::exchangeDicomWith({quarterstep::readDicom, quarterstep::writeDicom});
    return quarterstep::runCommand({argv + (argc > 0 ? 1 : 0), argv + argc});
}
