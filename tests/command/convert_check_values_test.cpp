// SPDX-License-Identifier: GPL-3.0-or-later
// `convert --json` over the power-vector and transposition rows of the check values, through the program.
#include "tests/command/case_runner.hpp"
#include "tests/core/check_values.hpp"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <boost/test/unit_test.hpp>

#include <cmath>

namespace utf = boost::unit_test;

namespace quarterstep::check
{
namespace
{

constexpr int vectorRows = 9;
constexpr int transpositionRows = 16;

struct Converted {
    std::vector<Row> rows;
    QJsonArray answers;
};

Converted convertRows(const std::string& function)
{
    Converted converted;
    const CaseFile none;
    const CaseRunner runner(none);
    std::vector<std::string> words{"quarterstep", "convert", "--json"};
    for (const auto& row : rowsOf("optics.csv"))
        if (row.function == function) {
            converted.rows.push_back(row);
            words.push_back(row.arguments.at(0));
        }
    const auto ran = runner.run(words);
    BOOST_TEST(ran.status == 0);
    BOOST_TEST(ran.err == "");
    BOOST_TEST(ran.out.find("-0,") == std::string::npos, "a minus zero is written");
    converted.answers = QJsonDocument::fromJson(QByteArray::fromStdString(ran.out)).array();
    BOOST_TEST_REQUIRE(converted.answers.size() == static_cast<qsizetype>(converted.rows.size()));
    return converted;
}

void expectNumber(const QJsonValue& value, const std::string& expected, double tolerance,
                  const std::string& what)
{
    BOOST_TEST(value.isDouble(), what << " is no number");
    BOOST_TEST(std::fabs(value.toDouble() - std::stod(expected)) <= tolerance + 1e-9,
               what << ": " << value.toDouble() << " against " << expected);
}

} // namespace

BOOST_AUTO_TEST_SUITE(convert_check_values)

BOOST_AUTO_TEST_CASE(power_vectors_come_out_of_the_program_as_published,
                     *utf::label("REF") * utf::description("rows PV of tests/check_values/optics.csv"))
{
    const auto converted = convertRows("vector");
    BOOST_TEST(converted.rows.size() == static_cast<std::size_t>(vectorRows));
    const std::map<std::string, const char*> names{{"M", "m"}, {"J0", "j0"}, {"J45", "j45"}, {"B", "blur"}};
    for (std::size_t i = 0; i < converted.rows.size(); ++i) {
        const auto& row = converted.rows[i];
        const auto answer = converted.answers[static_cast<qsizetype>(i)].toObject();
        BOOST_TEST(answer["as_written"].toString().toStdString() == row.arguments.at(0));
        for (const auto& [name, text] : row.named())
            expectNumber(answer[names.at(name)], text, row.within(), row.id + " " + name);
    }
}

BOOST_AUTO_TEST_CASE(both_cylinder_forms_come_out_of_the_program_as_published,
                     *utf::label("REF") * utf::description("rows TR of tests/check_values/optics.csv"))
{
    const auto converted = convertRows("transpose");
    BOOST_TEST(converted.rows.size() == static_cast<std::size_t>(transpositionRows));
    for (std::size_t i = 0; i < converted.rows.size(); ++i) {
        const auto& row = converted.rows[i];
        auto named = row.named();
        const auto answer = converted.answers[static_cast<qsizetype>(i)].toObject();
        const bool plus = std::stod(named["C"]) > 0.0;
        const auto form = plus ? answer["plus_form"].toObject() : answer;
        expectNumber(form["sphere"], named["S"], row.within(), row.id + " S");
        expectNumber(form["cylinder"], named["C"], row.within(), row.id + " C");
        expectNumber(form["axis"], named["axis"], row.withinDegrees(), row.id + " axis");
    }
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep::check
