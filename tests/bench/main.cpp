// SPDX-License-Identifier: GPL-3.0-or-later
// usage: bench [--short] [GROUP | GROUP/BEGINNING_OF_A_NAME]
// Prints `time NAME VALUE ns` (median a piece of work), `note TEXT`, and one line a budget:
// `ratio NAME VALUE at-least|at-most BUDGET`. Exit: 0 all kept, 1 one missed or two ways disagree.
#include "tests/bench/plan.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <string>
#include <string_view>

int main(int count, char** words)
{
    bool shortForm = false;
    std::string filter;
    for (int i = 1; i < count; ++i)
        if (std::string_view(words[i]) == "--short")
            shortForm = true;
        else
            filter = words[i];
    const QCoreApplication application(count, words);
    // A group at a time, so that none works in the memory that others have broken up.
    int worst = 0;
    for (const std::string group : {"optics", "scan", "joint", "worn", "report", "growth", "planning",
                                    "ledger", "shared", "audit", "exchange"}) {
        if (!filter.empty() && filter.substr(0, filter.find('/')) != group)
            continue;
        quarterstep::bench::Plan plan(shortForm, filter.empty() ? group + '/' : filter);
        quarterstep::bench::planGroup(plan);
        worst = std::max(worst, plan.run());
    }
    return worst;
}
