// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of near_addition.csv.
#include "core/optics/acuity_scale.hpp"
#include "core/optics/near_addition.hpp"
#include "inventory/text/age_table_file.hpp"
#include "tests/core/depth_checks.hpp"

#include <boost/test/unit_test.hpp>

#include <algorithm>

namespace quarterstep::check
{
namespace
{

void checkHofstetter(const Row& row)
{
    const auto amplitude = hofstetterAmplitude(numbers(row).at(0));
    nearAll(row, {{"min", amplitude.least}, {"mean", amplitude.mean}, {"max", amplitude.most}});
}

void checkHofstetterLeast(const Row& row)
{
    std::vector<double> least;
    for (const double age : numbers(row))
        least.push_back(hofstetterAmplitude(age).least);
    nearEach(row, least);
}

const AgeTable& table(const std::string& name)
{
    const auto& tables = defaultAgeTables();
    const auto found =
        std::find_if(tables.begin(), tables.end(), [&name](const auto& each) { return each.name == name; });
    BOOST_TEST_REQUIRE((found != tables.end()), "no table " << name);
    return *found;
}

/// What a table suggests at 40 cm, through the same function as everybody asks.
AdditionSuggestion suggestionOf(const std::string& name, double age)
{
    for (const auto& suggestion : suggestAdditions(age, 400.0, {table(name)}))
        if (suggestion.model == name)
            return suggestion;
    BOOST_FAIL("no suggestion from " << name << " at " << age);
    return {};
}

void checkTable(const Row& row, const std::string& name)
{
    std::vector<double> additions;
    for (const double age : numbers(row)) {
        const auto suggestion = suggestionOf(name, age);
        BOOST_TEST(suggestion.least == suggestion.most);
        additions.push_back(suggestion.most);
    }
    nearEach(row, additions);
}

void checkModel(const Row& row, const std::string& name)
{
    for (const auto& model : blurModels()) {
        if (name != model.name)
            continue;
        std::vector<double> losses;
        for (const double cylinder : numbers(row))
            losses.push_back(model.loss({0.0, cylinder / 2.0, 0.0}).value().most);
        nearEach(row, losses);
        return;
    }
    BOOST_FAIL("no model " << name);
}

void checkAddition(const Row& row, double amplitude, Reserve reserve)
{
    nearAll(row, {{"add", additionFor(amplitude, numbers(row).at(1), reserve)}});
}

void checkLetters(const Row& row)
{
    std::vector<double> letters;
    for (const double logMar : numbers(row)) {
        letters.push_back(lettersFromLogMar(logMar));
        BOOST_TEST(std::fabs(logMarFromLetters(letters.back()) - logMar) < 1e-12);
    }
    nearEach(row, letters);
}

} // namespace

const Checks& nearAdditionChecks()
{
    static const Checks checks{
        {"hofstetter", checkHofstetter},
        {"hofstetter least", checkHofstetterLeast},
        {"donders",
         [](const Row& r) {
             nearAll(r, {{"add", suggestionOf("donders", numbers(r).at(0)).most}});
         }},
        {"addition half", [](const Row& r) { checkAddition(r, numbers(r).at(0), Reserve::half); }},
        {"addition two thirds", [](const Row& r) { checkAddition(r, numbers(r).at(0), Reserve::oneThird); }},
        {"addition all used", [](const Row& r) { checkAddition(r, 2.0 * numbers(r).at(0), Reserve::half); }},
        {"accommodation used",
         [](const Row& r) {
             nearAll(r, {{"acc", accommodationUsed(numbers(r).at(0), numbers(r).at(1))}});
         }},
        {"through lens",
         [](const Row& r) {
             const double amplitude = amplitudeThroughLens(numbers(r).at(0), numbers(r).at(1));
             nearAll(r, {{"AA", amplitude}, {"cm", nearPoint(amplitude).value() / 10.0}});
         }},
        {"rule of thumb", [](const Row& r) { checkTable(r, "rule-of-thumb"); }},
        {"shahroud", [](const Row& r) { checkTable(r, "shahroud"); }},
        {"guangzhou", [](const Row& r) { checkTable(r, "guangzhou"); }},
        {"not letters",
         [](const Row& r) {
             awayFrom(r, numbers(r).at(0) - numbers(r).at(1), number(r.expected));
             BOOST_TEST(numbers(r).at(0) - numbers(r).at(1) == 50.0);
         }},
        {"letters", checkLetters},
        {"mean decimal", [](const Row& r) { near(r, meanDecimal(numbers(r)).value(), number(r.expected)); }},
        {"hoshikawa", [](const Row& r) { checkModel(r, "hoshikawa"); }},
        {"blendowske", [](const Row& r) { checkModel(r, "blendowske"); }},
    };
    return checks;
}

} // namespace quarterstep::check
