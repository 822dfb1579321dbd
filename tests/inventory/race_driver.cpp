// SPDX-License-Identifier: GPL-3.0-or-later
// One of several programs that ask for the last pieces at once, each from a camp folder of its own or from
// the same one. Every third ask is for a frame and two lenses, which move together or not at all; with
// `pairs` each is for one pair. Prints a line an ask: `given ID`, or the code of the refusal. Waits for a
// line on standard input before it begins, so that all begin together. usage: race_driver LOCATION FOLDER
// ASKS WHO [pairs]

#include "inventory/store/ledger.hpp"

#include <QCoreApplication>

#include <cstdio>
#include <iostream>
#include <string>

using namespace quarterstep;

namespace
{

Entry ask(int which, const std::string& who)
{
    Entry entry;
    entry.person = who + "-" + std::to_string(which);
    entry.fields = {{"profile", "adult-near"}};
    if (which % 3 == 0)
        entry.movements = {{"F", -1, "frame"}, {"L", -1, "right"}, {"L", -1, "left"}};
    else
        entry.movements = {{which % 3 == 1 ? "A" : "B", -1, "pair"}};
    return entry;
}

} // namespace

int main(int count, char** words)
{
    if (count < 5)
        return 2;
    const int step = count > 5 ? 3 : 1; // 1, 4, 7 … are all for the pair A
    const QCoreApplication application(count, words);
    try {
        auto ledger = Ledger::open(words[1], Ledger::Mode::readWrite, words[2]);
        std::puts("ready");
        std::fflush(stdout);
        std::string go;
        std::getline(std::cin, go);
        for (int i = 0; i < std::stoi(words[3]); ++i)
            try {
                std::printf("given %s\n",
                            ledger.post("Box", ask(step == 3 ? 3 * i + 1 : i, words[4])).id.c_str());
            } catch (const Error& error) {
                std::puts(error.finding().code.c_str());
            }
    } catch (const Error& error) {
        std::puts(error.finding().code.c_str());
        return error.exitCode();
    }
    return 0;
}
