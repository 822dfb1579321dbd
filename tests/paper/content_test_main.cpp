// SPDX-License-Identifier: GPL-3.0-or-later
#define BOOST_TEST_MODULE paper_content
#include <boost/test/unit_test.hpp>

#include <QCoreApplication>

int main(int argc, char* argv[])
{
    const QCoreApplication application(argc, argv);
    return boost::unit_test::unit_test_main([] { return true; }, argc, argv);
}
