// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of lens_form.csv.
#include "core/optics/angle.hpp"
#include "core/optics/boxing.hpp"
#include "core/optics/decentration.hpp"
#include "core/optics/effectivity.hpp"
#include "core/optics/lens_form.hpp"
#include "tests/core/depth_checks.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>

namespace quarterstep::check
{
namespace
{

ThickLens thickLens(const Row& row)
{
    const auto v = numbers(row);
    return {v.at(0), v.at(1), Millimetres{v.at(2)}, v.at(3)};
}

void checkVertexPowers(const Row& row)
{
    const auto lens = thickLens(row);
    nearAll(row, {{"nominal", nominalPower(lens)},
                  {"front vertex", frontVertexPower(lens).value()},
                  {"back vertex", backVertexPower(lens).value()}});
}

void checkNotBackVertex(const Row& row)
{
    awayFrom(row, backVertexPower(thickLens(row)).value(), number(row.named().at("back")));
}

/// Centre thickness of a plano-convex lens: sag of its front and its edge.
void checkPlanoConvex(const Row& row)
{
    const auto v = numbers(row);
    const double sag = surfaceSag(1.0 / v.at(0), v.at(1) / 2.0).value();
    nearAll(row, {{"sag", sag}, {"tC", v.at(2) + sag}});
}

void checkCurvedMinus(const Row& row)
{
    const auto v = numbers(row);
    const double half = v.at(3) / 2.0;
    const double front = 1.0 / surfaceRadius(v.at(0), v.at(2));
    const double back = -1.0 / surfaceRadius(v.at(1), v.at(2));
    nearAll(row, {{"z1", surfaceSag(front, half).value()},
                  {"z2", surfaceSag(back, half).value()},
                  {"tE", edgeThickness(front, back, v.at(4), half).value()}});
}

void checkSagOfPower(const Row& row)
{
    const auto v = numbers(row);
    nearAll(row, {{"sag", surfaceSag(1.0 / surfaceRadius(v.at(0), v.at(1)), v.at(2) / 2.0).value()}});
}

void checkEdgeAndShape(const Row& row)
{
    const auto v = numbers(row);
    nearAll(row, {{"edge", edgeThickness(v.at(0), v.at(1), v.at(2), v.at(3)).value()},
                  {"shape", shapeFactor(v.at(0), v.at(1)).value()}});
}

void checkThicknessRule(const Row& row)
{
    const auto v = numbers(row);
    const double sag = surfaceSag(1.0 / surfaceRadius(v.at(0), v.at(1)), v.at(2) / 2.0).value();
    nearAll(row, {{"approx", thicknessByRule(v.at(0), v.at(1), v.at(2), v.at(3))}, {"exact", sag + v.at(3)}});
}

void checkLeastBlank(const Row& row)
{
    const auto v = numbers(row);
    const double each = decentrationFromBox(v.at(0), v.at(1), v.at(2));
    nearAll(row, {{"mm", leastBlank(v.at(3), each, v.at(4))}});
}

void checkBoxAndBlank(const Row& row)
{
    const auto v = numbers(row);
    const double each = decentrationFromBox(v.at(0), v.at(1), v.at(2));
    nearAll(
        row,
        {{"dec", each}, {"MBS", leastBlank(v.at(3), each, 0.0)}, {"MBS2", leastBlank(v.at(3), each, 2.0)}});
}

void checkNotBlank(const Row& row)
{
    const auto v = numbers(row);
    awayFrom(row, leastBlank(v.at(0), v.at(1), v.at(2)), number(row.named().at("mm")));
    BOOST_TEST(leastBlank(v.at(0), v.at(1), v.at(2)) == 68.0);
}

Eye eyeOf(const Row& row)
{
    return row.arguments.at(1) == "right" ? Eye::right : Eye::left;
}

DecentrationAnswer answerOf(const Row& row)
{
    return decentrationFor(toPowerMatrix(power(row.arguments.at(0))), eyeOf(row),
                           {number(row.arguments.at(2)), number(row.arguments.at(3))});
}

void checkDecentre(const Row& row)
{
    const auto answer = answerOf(row);
    BOOST_TEST((answer.kind == DecentrationAnswer::Kind::one), row);
    nearAll(row, {{"in", answer.moved.in}, {"up", answer.moved.up}});
    BOOST_TEST(std::fabs(answer.given.in - number(row.arguments.at(2))) < 1e-9);
    BOOST_TEST(std::fabs(answer.given.up - number(row.arguments.at(3))) < 1e-9);
}

void checkNoDecentration(const Row& row)
{
    static const std::map<std::string, DecentrationAnswer::Kind> kinds{
        {"none", DecentrationAnswer::Kind::none},
        {"line", DecentrationAnswer::Kind::line},
        {"no power", DecentrationAnswer::Kind::noPower}};
    const auto answer = answerOf(row);
    BOOST_TEST((answer.kind == kinds.at(row.named().at("kind"))), row);
    near(row, std::hypot(answer.missing.in, answer.missing.up), number(row.named().at("missing")));
    if (answer.kind == DecentrationAnswer::Kind::line)
        near(row, answer.moved.in, -5.0);
}

void checkAsWorn(const Row& row)
{
    const auto worn = asWorn(power(row.arguments.at(0)), Millimetres{number(row.arguments.at(1))},
                             Millimetres{number(row.arguments.at(2))});
    BOOST_TEST_REQUIRE(worn.has_value());
    nearAll(row, {{"change", worn->change.m}});
}

} // namespace

const Checks& lensFormChecks()
{
    static const Checks table{
        {"band",
         [](const Row& r) {
             const auto v = numbers(r);
             nearAll(r, {{"JH", v.at(0) * sineOfDegrees(v.at(1))}});
         }},
        {"vertex powers", checkVertexPowers},
        {"not back vertex", checkNotBackVertex},
        {"plano-convex", checkPlanoConvex},
        {"curved minus", checkCurvedMinus},
        {"sag of power", checkSagOfPower},
        {"edge and shape", checkEdgeAndShape},
        {"thickness rule", checkThicknessRule},
        {"lens clock",
         [](const Row& r) {
             nearAll(r, {{"F", powerFromLensClock(numbers(r).at(0), numbers(r).at(1))}});
         }},
        {"inset",
         [](const Row& r) {
             nearAll(r, {{"mm", nearInset(numbers(r).at(0), numbers(r).at(1))}});
         }},
        {"decentration from box",
         [](const Row& r) {
             const auto v = numbers(r);
             nearAll(r, {{"mm", decentrationFromBox(v.at(0), v.at(1), v.at(2))}});
         }},
        {"least blank", checkLeastBlank},
        {"blank by decentration",
         [](const Row& r) {
             const auto v = numbers(r);
             nearAll(r, {{"mm", leastBlank(v.at(0), v.at(1), v.at(2))}});
         }},
        {"above centre line",
         [](const Row& r) {
             nearAll(r, {{"mm", aboveCentreLine(numbers(r).at(0), numbers(r).at(1))}});
         }},
        {"box and blank", checkBoxAndBlank},
        {"not blank", checkNotBlank},
        {"decentre", checkDecentre},
        {"no decentration", checkNoDecentration},
        {"as worn", checkAsWorn},
    };
    return table;
}

} // namespace quarterstep::check
