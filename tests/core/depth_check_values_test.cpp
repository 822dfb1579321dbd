// SPDX-License-Identifier: GPL-3.0-or-later
// Every row of lens_form.csv, near_addition.csv and statistics.csv, by the function named in the row.
#include "tests/core/depth_checks.hpp"

#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;

namespace quarterstep::check
{
namespace
{

/// Rows in each file, so that none is dropped in silence.
const std::map<std::string, std::size_t> rowsInFiles{
    {"lens_form.csv", 29}, {"near_addition.csv", 21}, {"statistics.csv", 16}};

std::vector<Row> labelled(const std::string& label)
{
    std::vector<Row> rows;
    for (const auto& [file, count] : rowsInFiles)
        for (auto& row : rowsOf(file, label))
            rows.push_back(row);
    return rows;
}

void checkRow(const Row& row)
{
    for (const auto* table : {&lensFormChecks(), &nearAdditionChecks(), &statisticsChecks()})
        if (const auto found = table->find(row.function); found != table->end()) {
            found->second(row);
            return;
        }
    BOOST_FAIL(row.id << ": nobody checks " << row.function);
}

} // namespace

BOOST_AUTO_TEST_SUITE(depth_check_values)

BOOST_TEST_DECORATOR(*utf::label("REF") * utf::description("source in each row"))
BOOST_DATA_TEST_CASE(a_published_value_of_depth_is_met, utf::data::make(labelled("REF")), row)
{
    checkRow(row);
}

BOOST_TEST_DECORATOR(*utf::label("DER") * utf::description("recomputed; source of the method in each row"))
BOOST_DATA_TEST_CASE(a_recomputed_value_of_depth_is_met, utf::data::make(labelled("DER")), row)
{
    checkRow(row);
}

BOOST_AUTO_TEST_CASE(no_row_of_depth_is_dropped, *utf::label("DER"))
{
    for (const auto& [file, count] : rowsInFiles)
        BOOST_TEST(rowsOf(file).size() == count, file << " has " << rowsOf(file).size());
    std::size_t all = 0;
    for (const auto& [file, count] : rowsInFiles)
        all += count;
    BOOST_TEST(labelled("REF").size() + labelled("DER").size() == all);
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep::check
