// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/beside.hpp"

#include <QCoreApplication>
#include <QFileInfo>

namespace quarterstep
{

QString programBeside(const char* program)
{
    const QString here = QCoreApplication::applicationDirPath();
    const QString name = QString::fromUtf8(program);
    const QString installed = here + QStringLiteral("/" QUARTERSTEP_LIBEXEC_FROM_BIN "/") + name;
    return QFileInfo::exists(installed) ? installed : here + QLatin1Char('/') + name;
}

} // namespace quarterstep
