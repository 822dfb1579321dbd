// SPDX-License-Identifier: GPL-3.0-or-later
#define BOOST_TEST_MODULE faults
#include "tests/inventory/qt_application.hpp"

#include <boost/test/unit_test.hpp>

using quarterstep::test::QtApplication;

BOOST_TEST_GLOBAL_FIXTURE(QtApplication);
