// SPDX-License-Identifier: GPL-3.0-or-later
// The words on the command line of the desk.
#pragma once

#include "app/desk/theme.hpp"

#include <QCommandLineOption>
#include <QSize>
#include <QStringList>

#include <optional>

namespace quarterstep
{

struct DeskOptions {
    QString folder;
    std::optional<Theme> theme;   ///< empty = the person's own, as the next
    std::optional<int> textScale; ///< per cent
    bool rightToLeft = false;
    QString language;   ///< empty = the system's
    QString screenshot; ///< file to paint the window into, then leave
    QSize size{1366, 768};
    QString person; ///< camp code to load at the start
    QString bring;  ///< file to bring in
    QString place;  ///< page to show at the start; empty = the usual one
    QString line;   ///< stock line to choose at the start
    bool help = false;
    bool version = false;
    QString problem; ///< what cannot be understood; empty = nothing
};

/// All but --help and --version, in the language installed.
[[nodiscard]] QList<QCommandLineOption> deskCommandLineOptions();
/// A stock.yaml named instead of a folder stands for the folder it is in.
[[nodiscard]] DeskOptions readDeskOptions(const QStringList& arguments);
[[nodiscard]] QString deskHelp();

} // namespace quarterstep
