// SPDX-License-Identifier: GPL-3.0-or-later
#define BOOST_TEST_MODULE exchange
#include <boost/test/unit_test.hpp>
