// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/depth_checks.hpp"

#include "core/optics/notation.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>

namespace quarterstep::check
{

double number(const std::string& text)
{
    return std::stod(text);
}

std::vector<double> numbers(const Row& row)
{
    std::vector<double> values;
    for (const auto& text : row.arguments)
        values.push_back(number(text));
    return values;
}

SpheroCylinder power(const std::string& text)
{
    const auto read = parsePower(text);
    BOOST_TEST_REQUIRE(static_cast<bool>(read), "cannot read " << text << ": " << read.complaint().code);
    return read.value();
}

void near(const Row& row, double measured, double expected, const std::string& name)
{
    BOOST_TEST(std::fabs(measured - expected) <= row.within() + 1e-12,
               row << " " << name << ": " << measured << " against " << expected);
}

void nearAll(const Row& row, const std::map<std::string, double>& measured)
{
    for (const auto& [name, text] : row.named()) {
        BOOST_TEST_REQUIRE(measured.count(name) == 1U, row << ": nobody measures " << name);
        near(row, measured.at(name), number(text), name);
    }
}

void nearEach(const Row& row, const std::vector<double>& measured)
{
    const auto expected = row.parts();
    BOOST_TEST_REQUIRE(expected.size() == measured.size(), row);
    for (std::size_t i = 0; i < expected.size(); ++i)
        near(row, measured[i], number(expected[i]), row.arguments.at(i));
}

void awayFrom(const Row& row, double measured, double printed)
{
    BOOST_TEST(std::fabs(measured - printed) > row.within(), row << " repeats " << printed);
}

} // namespace quarterstep::check
