// SPDX-License-Identifier: GPL-3.0-or-later
#define BOOST_TEST_MODULE command
#include <boost/test/unit_test.hpp>

#include <QCoreApplication>

namespace
{

/// Qt's database plugins want an application; the program under test runs in processes of its own.
struct Application {
    int count = 1;
    char name[13] = "command_test";
    char* arguments[2] = {name, nullptr};
    QCoreApplication application{count, arguments};
};

} // namespace

BOOST_TEST_GLOBAL_FIXTURE(Application);
