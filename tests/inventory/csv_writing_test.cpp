// SPDX-License-Identifier: GPL-3.0-or-later
// Cells for spreadsheets: read back as they were, and never run.
#include "inventory/text/csv.hpp"
#include "inventory/text/csv_writing.hpp"
#include "inventory/text/source_text.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;

BOOST_AUTO_TEST_SUITE(csv_writing)

BOOST_AUTO_TEST_CASE(what_a_spreadsheet_would_run_is_kept_a_text, *utf::label("DER"))
{
    for (const auto* formula :
         {"=1+1", "+A1", "-A1", "@SUM(A1)", "\tx", "\rx", "=", "+", "-1.00 -0.50 x 90", "+1e3"})
        BOOST_TEST(guarded(formula) == "'" + std::string(formula));
    for (const auto* plain : {"", "-2", "+2.00", "-0.25", "N+200", "3", "a=b", "'x"})
        BOOST_TEST(guarded(plain) == plain);
}

BOOST_AUTO_TEST_CASE(cells_come_back_as_they_were, *utf::label("PROP"))
{
    const std::vector<std::string> cells{"plain", "a,b",  "say \"yes\"", "two\nlines",
                                         "=1+1",  "-A,1", "'quoted",     "-2"};
    const auto checked = checkText(csvRow(cells), "t");
    const auto rows = parseCsv(checked.value);
    BOOST_TEST(rows.findings.empty());
    BOOST_REQUIRE(rows.value.size() == 1U);
    BOOST_REQUIRE(rows.value[0].cells.size() == cells.size());
    for (std::size_t i = 0; i < cells.size(); ++i)
        BOOST_TEST(unguarded(rows.value[0].cells[i].text) == cells[i]);
}

BOOST_AUTO_TEST_SUITE_END()
