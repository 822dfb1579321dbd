// SPDX-License-Identifier: GPL-3.0-or-later
// The application that Qt wants before anything of it is used: a global fixture of a test program.
#pragma once

#include <QCoreApplication>

namespace quarterstep::test
{

struct QtApplication {
    int count = 1;
    char name[5] = "test";
    char* arguments[2] = {name, nullptr};
    QCoreApplication application{count, arguments};
};

} // namespace quarterstep::test
