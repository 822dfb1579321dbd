// SPDX-License-Identifier: GPL-3.0-or-later
// How long the window is away at a stretch while a long table is read, corrected, brought in and comes to
// wait.
#include "tests/bench/desk_bringing.hpp"

#include "app/desk/bringing/bring_in_panel.hpp"
#include "app/desk/bringing/exchange_page.hpp"
#include "app/desk/desk_window.hpp"
#include "app/desk/lasting/frame_watch.hpp"
#include "app/session/tray.hpp"
#include "tests/bench/loop_turns.hpp"

#include <QAbstractItemModel>
#include <QComboBox>
#include <QFile>
#include <QTableView>
#include <QTemporaryDir>

#include <algorithm>
#include <functional>
#include <iostream>

namespace quarterstep
{

namespace
{
void writeTable(const QString& path, int rows)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return;
    file.write("ID;OD Sph;OD Cyl;OD Ax;OS Sph;OS Cyl;OS Ax;Add;PD\n");
    for (int row = 0; row < rows; ++row)
        file.write(QStringLiteral("M-%1;-%2,25;+0,50;%3;-1,00;;;2,00;6%4,5\n")
                       .arg(row)
                       .arg(row % 6)
                       .arg(row % 180 + 1)
                       .arg(row % 8)
                       .toUtf8());
}

/// Everything the window does with a long table, step by step, each watched.
class Bringing
{
  public:
    Bringing(DeskWindow& window, int rows)
        : window_(window), panel_(window.exchange().bringIn()), rows_(rows),
          list_(*window.findChild<QTableView*>(QStringLiteral("waitingView"))->model())
    {
    }

    bool reads(const QString& path)
    {
        return step(
                   "reading", [&] { panel_.openFiles({path}); }, [this] { return !panel_.isBusy(); }) &&
               panel_.shown() && panel_.shown()->taken == static_cast<std::size_t>(rows_);
    }
    bool readsAgain()
    {
        auto* decimal = window_.findChild<QComboBox*>(QStringLiteral("decimalBox"));
        decimal->setCurrentIndex(2);
        return step(
            "reading_again", [&] { Q_EMIT decimal->activated(2); }, [this] { return !panel_.isBusy(); });
    }
    bool bringsIn()
    {
        return step(
            "bringing_in", [&] { panel_.bringIn(); }, [this] { return list_.rowCount() == rows_; });
    }
    [[nodiscard]] double longest() const { return longest_; }

  private:
    bool step(const char* name, const std::function<void()>& begin, const std::function<bool()>& ended)
    {
        FrameWatch watch;
        double longest = ownMsOf(begin);
        const bool done = waitedFor(ended, longest);
        std::cout << "note desk/" << name << ": longest turn of the loop " << longest
                  << " ms of its own processor time; away at most " << watch.longestMs() << " ms by the clock"
                  << std::endl;
        longest_ = std::max(longest_, longest);
        return done;
    }

    DeskWindow& window_;
    BringInPanel& panel_;
    int rows_;
    const QAbstractItemModel& list_;
    double longest_ = 0.0;
};
} // namespace

bool bringsInFluently(bool inShort)
{
    const QTemporaryDir folder;
    const int rows = inShort ? 500 : 10'000;
    const auto table = folder.filePath(QStringLiteral("theirs.txt"));
    const auto stock = stockOfTray("Bench", "near +1.00 to +3.50 by 0.50: 10 centres 62\n");
    writeNewStock(folder.path().toStdString(), stock.value.bytes);
    writeTable(table, rows);
    DeskWindow window;
    window.resize(1366, 768);
    window.show();
    if (!window.openCamp(folder.path()))
        return false;
    window.showExchange();
    Bringing bringing(window, rows);
    if (!bringing.reads(table) || !bringing.readsAgain() || !bringing.bringsIn()) {
        std::cerr << "the desk did not bring in " << rows << " rows\n";
        return false;
    }
    const double ratio = bringing.longest() / longestFrameMs;
    std::cout << "ratio desk/longest_turn_of_bringing_in_over_a_frame " << ratio << " at-most 1" << std::endl;
    return inShort || ratio <= 1.0;
}

} // namespace quarterstep
