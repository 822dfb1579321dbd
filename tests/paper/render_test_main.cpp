// SPDX-License-Identifier: GPL-3.0-or-later
#define BOOST_TEST_MODULE paper_render
#include <boost/test/unit_test.hpp>

#include "app/paper/render/render.hpp"

#include <QCoreApplication>

int main(int argc, char* argv[])
{
    const auto application = quarterstep::drawingApplication(argc, argv);
    return boost::unit_test::unit_test_main([] { return true; }, argc, argv);
}
