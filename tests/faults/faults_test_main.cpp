// SPDX-License-Identifier: GPL-3.0-or-later
#define BOOST_TEST_MODULE faults
#include <boost/test/unit_test.hpp>

#include <QCoreApplication>

namespace
{
struct Application {
    int count = 1;
    char name[7] = "faults";
    char* arguments[2] = {name, nullptr};
    QCoreApplication application{count, arguments};
};
} // namespace

BOOST_TEST_GLOBAL_FIXTURE(Application);
