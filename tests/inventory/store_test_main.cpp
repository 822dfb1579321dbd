// SPDX-License-Identifier: GPL-3.0-or-later
// Qt finds its database driver only while an application object exists.
#define BOOST_TEST_MODULE store
#include <boost/test/unit_test.hpp>

#include "tests/inventory/stores.hpp"

#include <QCoreApplication>

namespace
{
struct Application {
    int count = 1;
    char name[6] = "store";
    char* arguments[2] = {name, nullptr};
    QCoreApplication application{count, arguments};
    Application()
    {
        if (quarterstep::test::onServer())
            (void)quarterstep::test::server();
    }
};
} // namespace

BOOST_TEST_GLOBAL_FIXTURE(Application);
