// SPDX-License-Identifier: GPL-3.0-or-later
#define BOOST_TEST_MODULE dicom
#include <boost/test/unit_test.hpp>
