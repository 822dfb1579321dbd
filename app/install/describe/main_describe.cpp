// SPDX-License-Identifier: GPL-3.0-or-later
// quarterstep-describe FILE…: writes what is installed beside the programs, each file by its name:
// quarterstep.1, quarterstep-desk.1, quarterstep.bash, _quarterstep (zsh), quarterstep.fish. Used by the
// build, not installed.
#include "app/desk/desk_options.hpp"
#include "app/install/describe/describe.hpp"

#include <QCommandLineOption>
#include <QCoreApplication>
#include <QFileInfo>
#include <QSaveFile>
#include <QTextStream>

namespace
{

QString textOf(const QString& name)
{
    using namespace quarterstep;
    if (name == QLatin1String("quarterstep.1"))
        return manualPage();
    if (name == QLatin1String("quarterstep-desk.1"))
        return manualPageOfDesk(deskCommandLineOptions());
    if (name == QLatin1String("quarterstep.bash"))
        return completionForBash();
    if (name == QLatin1String("_quarterstep"))
        return completionForZsh();
    if (name == QLatin1String("quarterstep.fish"))
        return completionForFish();
    return {};
}

} // namespace

int main(int argc, char* argv[])
{
    const QCoreApplication application(argc, argv);
    for (const auto& path : QCoreApplication::arguments().mid(1)) {
        const auto text = textOf(QFileInfo(path).fileName());
        QSaveFile file(path);
        if (text.isEmpty() || !file.open(QIODevice::WriteOnly) || file.write(text.toUtf8()) < 0 ||
            !file.commit()) {
            QTextStream(stderr) << "quarterstep-describe: cannot write " << path << Qt::endl;
            return 2;
        }
    }
    return 0;
}
