// SPDX-License-Identifier: GPL-3.0-or-later
// Every row of tests/check_values/optics.csv, by the function named in the row.
#include "core/optics/acuity.hpp"
#include "core/optics/angle.hpp"
#include "core/optics/boxing.hpp"
#include "core/optics/effectivity.hpp"
#include "core/optics/near_addition.hpp"
#include "core/optics/notation.hpp"
#include "core/optics/power_matrix.hpp"
#include "core/optics/power_vector.hpp"
#include "core/optics/prism.hpp"
#include "tests/core/check_values.hpp"

#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <functional>

namespace utf = boost::unit_test;

namespace quarterstep::check
{
namespace
{

constexpr std::size_t rowsInFile = 150; ///< so that no row is dropped in silence

double number(const std::string& text)
{
    return std::stod(text);
}

SpheroCylinder power(const std::string& text)
{
    const auto read = parsePower(text);
    BOOST_TEST_REQUIRE(static_cast<bool>(read), "cannot read " << text << ": " << read.complaint().code);
    return read.value();
}

PowerVector vectorOf(const std::string& text)
{
    return toPowerVector(power(text));
}

double logMarOf(const std::string& text)
{
    const auto read = parseAcuity(text);
    BOOST_TEST_REQUIRE(static_cast<bool>(read), "cannot read " << text);
    return read.value().logMar.value();
}

void near(const Row& row, double measured, double expected, const std::string& name = "")
{
    BOOST_TEST(std::fabs(measured - expected) <= row.within() + 1e-12,
               row.id << " " << name << ": " << measured << " against " << expected);
}

/// Compares whatever of M, J0, J45, B, S, C and axis the row names.
void expectVector(const Row& row, const PowerVector& vector)
{
    auto named = row.named();
    const auto written = toSpheroCylinder(vector);
    const bool plus = named.count("C") > 0 && number(named["C"]) > 0.0;
    const auto form = plus ? plusCylinderForm(written) : written;
    const std::map<std::string, double> measured{{"M", vector.m},
                                                 {"J0", vector.j0},
                                                 {"J45", vector.j45},
                                                 {"B", blurStrength(vector)},
                                                 {"S", form.sphere.value()},
                                                 {"C", form.cylinder.value()},
                                                 {"F", form.sphere.value()}};
    for (const auto& [name, text] : named)
        if (name == "axis")
            BOOST_TEST(turnBetween(form.axis, AxisDegrees{number(text)}) <= row.withinDegrees() + 1e-9,
                       row.id << " axis " << form.axis.value() << " against " << text);
        else
            near(row, measured.at(name), number(text), name);
}

void checkDoubleAngle(const Row& row)
{
    const auto vector = vectorOf(row.arguments.at(0));
    near(row, -2.0 * vector.j0, number(row.named().at("x")));
    near(row, -2.0 * vector.j45, number(row.named().at("y")));
}

void checkMean(const Row& row)
{
    std::vector<PowerVector> vectors;
    for (const auto& text : row.arguments)
        vectors.push_back(vectorOf(text));
    BOOST_TEST(vectors.size() == 18U);
    expectVector(row, meanVector(vectors));
}

PowerVector sumOf(const Row& row)
{
    PowerVector sum;
    for (const auto& text : row.arguments)
        sum = sum + vectorOf(text);
    return sum;
}

void checkMatrix(const Row& row)
{
    const auto matrix = toPowerMatrix(power(row.arguments.at(0)));
    const std::map<std::string, double> measured{
        {"f11", matrix.f11}, {"f12", matrix.f12}, {"f22", matrix.f22}};
    for (const auto& [name, text] : row.named())
        near(row, measured.at(name), number(text), name);
}

/// Compares written forms exactly as written: the form, not only the meaning.
void expectWritten(const Row& row, const SpheroCylinder& written)
{
    near(row, written.sphere.value(), number(row.named().at("S")), "S");
    near(row, written.cylinder.value(), number(row.named().at("C")), "C");
    BOOST_TEST(written.axis.value() == number(row.named().at("axis")));
}

void checkSphereUnchanged(const Row& row)
{
    for (const auto& text : row.arguments) {
        const auto written = power(text);
        BOOST_TEST((transposed(written) == written));
        BOOST_TEST(transposed(written).axis.value() == 180.0);
        BOOST_TEST(writePower(transposed(written)) == text);
    }
}

double vertexSphere(const Row& row)
{
    const auto moved = atVertexDistance(power(row.arguments.at(0)), Millimetres{number(row.arguments.at(1))},
                                        Millimetres{number(row.arguments.at(2))});
    BOOST_TEST_REQUIRE(moved.has_value());
    return moved->sphere.value();
}

void checkVertex(const Row& row)
{
    const auto moved = atVertexDistance(power(row.arguments.at(0)), Millimetres{number(row.arguments.at(1))},
                                        Millimetres{number(row.arguments.at(2))});
    BOOST_TEST_REQUIRE(moved.has_value());
    expectVector(row, toPowerVector(*moved));
}

void checkVertexThree(const Row& row)
{
    for (const auto& [name, text] : row.named()) {
        const auto moved = atVertexDistance(power(row.arguments.at(0)), Millimetres{number(name.substr(1))},
                                            Millimetres{0.0});
        BOOST_TEST_REQUIRE(moved.has_value());
        near(row, moved->sphere.value(), number(text), name);
    }
}

/// Compares base in, out, up and down ("BI", "BO", "BU", "BD") and V, a vertical prism without direction.
void checkPrismAt(const Row& row)
{
    const Eye eye = row.arguments.at(1) == "right" ? Eye::right : Eye::left;
    const auto prism = prismAt(toPowerMatrix(power(row.arguments.at(0))), eye, number(row.arguments.at(2)),
                               number(row.arguments.at(3)));
    const std::map<std::string, double> measured{
        {"BI", prism.in}, {"BO", -prism.in}, {"BU", prism.up}, {"BD", -prism.up}, {"V", std::fabs(prism.up)}};
    for (const auto& [name, text] : row.named())
        near(row, measured.at(name), number(text), name);
}

/// The decentration is the expected value; the prism met there is the argument.
void checkMillimetres(const Row& row)
{
    const double millimetres = number(row.named().at("mm"));
    const auto prism = prismAt(toPowerMatrix(power(row.arguments.at(0))), Eye::right, millimetres, 0.0);
    near(row, -prism.in, number(row.arguments.at(1)));
}

void checkPrismOfPair(const Row& row)
{
    const auto at = [&row](std::size_t lens, Eye eye, std::size_t nasal) {
        return prismAt(toPowerMatrix(power(row.arguments.at(lens))), eye, number(row.arguments.at(nasal)),
                       number(row.arguments.at(4)));
    };
    const auto right = at(0, Eye::right, 2);
    const auto left = at(1, Eye::left, 3);
    const auto pair = pairPrism(right, left);
    const std::map<std::string, double> measured{{"eye", std::fabs(right.in)},
                                                 {"total", std::fabs(pair.horizontal)},
                                                 {"R", std::fabs(right.up)},
                                                 {"L", std::fabs(left.up)},
                                                 {"diff", std::fabs(pair.vertical)}};
    for (const auto& [name, text] : row.named())
        near(row, measured.at(name), number(text), name);
}

void checkBase(const Row& row)
{
    const Eye eye = row.arguments.at(0) == "right" ? Eye::right : Eye::left;
    const EyePrism parts{number(row.arguments.at(1)), number(row.arguments.at(2))};
    const auto single = baseOf(parts, eye);
    near(row, single.amount, number(row.named().at("P")));
    BOOST_TEST(std::fabs(single.degrees - number(row.named().at("base"))) <= row.withinDegrees());
    const auto back = prismFromBase(single.amount, single.degrees, eye);
    BOOST_TEST(std::fabs(back.in - parts.in) < 1e-12);
    BOOST_TEST(std::fabs(back.up - parts.up) < 1e-12);
}

void checkAcuity(const Row& row)
{
    const double logMar = logMarOf(row.arguments.at(0));
    const std::map<std::string, double> measured{
        {"6/", snellenDenominator(logMar, 6.0)}, {"dec", decimalFromLogMar(logMar)}, {"logMAR", logMar}};
    for (const auto& [name, text] : row.named())
        near(row, measured.at(name), number(text), name);
}

void checkMeanAcuity(const Row& row)
{
    double sum = 0.0;
    for (const auto& text : row.arguments)
        sum += logMarOf(text);
    const double mean = sum / static_cast<double>(row.arguments.size());
    const std::map<std::string, double> measured{
        {"logMAR", mean}, {"dec", decimalFromLogMar(mean)}, {"ft", snellenDenominator(mean, 20.0)}};
    for (const auto& [name, text] : row.named())
        near(row, measured.at(name), number(text), name);
}

void checkHundred(const Row& row)
{
    near(row, 100.0 - 50.0 * logMarOf(row.arguments.at(0)), number(row.named().at("a")));
    near(row, 100.0 - 50.0 * logMarOf(row.arguments.at(1)), number(row.named().at("b")));
}

void checkLoss(const Row& row)
{
    const double loss = expectedLoss(number(row.arguments.at(0)));
    const std::map<std::string, double> measured{{"MAR", std::pow(10.0, loss)}, {"logMAR", loss}};
    for (const auto& [name, text] : row.named())
        near(row, measured.at(name), number(text), name);
}

/// Parts side by side: each argument's measure near its expected part, or away from it.
void checkEach(const Row& row, const std::function<double(const std::string&)>& measure, bool same)
{
    const auto expected = row.parts();
    BOOST_TEST_REQUIRE(expected.size() == row.arguments.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const double apart = std::fabs(measure(row.arguments[i]) - number(expected[i]));
        BOOST_TEST((apart <= row.within() + 1e-12) == same,
                   row.id << " " << row.arguments[i] << " " << apart);
    }
}

void expectEye(const Row& row, Eye eye)
{
    const auto read = parseEye(row.arguments.at(0), eye);
    auto named = row.named();
    if (named.count("refused") > 0) {
        BOOST_TEST(!read);
        BOOST_TEST(read.complaint().code == named["refused"]);
        return;
    }
    BOOST_TEST_REQUIRE(static_cast<bool>(read), read.complaint().code);
    const auto& written = read.value();
    BOOST_TEST(written.asWritten == row.arguments.at(0));
    if (named.count("state") > 0)
        BOOST_TEST((written.state == EyeState::balance));
    if (named.count("C") > 0)
        expectWritten(row, written.power);
    if (named.count("in") > 0) {
        near(row, written.prism.value().in, number(named["in"]));
        near(row, written.prism.value().up, number(named["up"]));
    }
}

void checkAdditions(const Row& row)
{
    const auto expected = row.parts();
    BOOST_TEST_REQUIRE(expected.size() == row.arguments.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const auto read = parseEye(row.arguments[i]);
        const std::string measured =
            read ? writeDioptres(read.value().addition.value()) : read.complaint().code;
        BOOST_TEST(measured == expected[i], row.arguments[i]);
    }
}

/// "distance > near" has this addition, or is refused with this code.
void checkNearWrittenOut(const Row& row)
{
    const auto expected = row.parts();
    BOOST_TEST_REQUIRE(expected.size() == row.arguments.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const auto both = split(row.arguments[i], '>');
        const auto addition = additionBetween(power(both.at(0)), power(both.at(1)));
        const std::string measured = addition ? writeDioptres(addition.value()) : addition.complaint().code;
        BOOST_TEST(measured == expected[i], row.arguments[i]);
    }
}

/// "text" names this eye; "text > eye", read for that eye, is refused with this code.
void checkEyeWords(const Row& row)
{
    const auto expected = row.parts();
    BOOST_TEST_REQUIRE(expected.size() == row.arguments.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const auto asked = split(row.arguments[i], '>');
        const auto named = eyeNamed(asked.at(0));
        const Eye eye =
            asked.size() > 1 ? (asked[1] == "left" ? Eye::left : Eye::right) : named.value_or(Eye::left);
        const auto read = parseEye(asked[0], eye);
        std::string measured = named ? (*named == Eye::right ? "right" : "left") : "both";
        if (!read)
            measured = read.complaint().code;
        BOOST_TEST(measured == expected[i], row.arguments[i]);
        if (read)
            BOOST_TEST(writePower(read.value().power) == "-1.00", row.arguments[i]);
    }
}

/// Each text is an acuity with this logMAR, or is refused with this code.
void checkAcuityTexts(const Row& row)
{
    const auto expected = row.parts();
    BOOST_TEST_REQUIRE(expected.size() == row.arguments.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const auto read = parseAcuity(row.arguments[i]);
        if (read)
            near(row, read.value().logMar.value(), number(expected[i]), row.arguments[i]);
        else
            BOOST_TEST(read.complaint().code == expected[i], row.arguments[i]);
    }
}

void checkAwayFrom(const Row& row, double measured, double printed)
{
    BOOST_TEST(std::fabs(measured - printed) > row.within(), row.id << " repeats " << printed);
}

/// The printed sum has the right mean sphere: its cylinder is the mistake.
void checkNotSum(const Row& row)
{
    const auto sum = toSpheroCylinder(sumOf(row));
    checkAwayFrom(row, sum.cylinder.value(), number(row.named().at("C")));
    BOOST_TEST(std::fabs(sum.sphere.value() - 2.0) < 1e-12);
    BOOST_TEST(std::fabs(sum.cylinder.value() + 4.25) < 1e-12);
}

void checkNotVertical(const Row& row)
{
    const double above = number(row.arguments.at(2));
    const auto up = [&](std::size_t lens, Eye eye) {
        return prismAt(toPowerMatrix(power(row.arguments.at(lens))), eye, 0.0, above);
    };
    const double apart = std::fabs(pairPrism(up(0, Eye::right), up(1, Eye::left)).vertical);
    checkAwayFrom(row, apart, number(row.named().at("prism")));
    BOOST_TEST(std::fabs(apart - 2.75) < 1e-12);
}

void checkAcuityBetween(const Row& row)
{
    const double logMar = logMarOf(row.arguments.at(0));
    BOOST_TEST(logMarOf(row.parts().at(0)) <= logMar);
    BOOST_TEST(logMar <= logMarOf(row.parts().at(1)));
}

double oblique(const std::string& j45)
{
    return toSpheroCylinder(PowerVector{0.0, 0.0, number(j45)}).axis.value();
}

PowerVector writtenVector(const Row& row)
{
    return {number(row.arguments.at(0)), number(row.arguments.at(1)), number(row.arguments.at(2))};
}

/// Over 60 lines: a table, a row a quantity.
const std::map<std::string, std::function<void(const Row&)>>& checks()
{
    static const std::map<std::string, std::function<void(const Row&)>> table{
        {"vector", [](const Row& r) { expectVector(r, vectorOf(r.arguments.at(0))); }},
        {"from vector", [](const Row& r) { expectVector(r, writtenVector(r)); }},
        {"double angle", checkDoubleAngle},
        {"difference",
         [](const Row& r) { expectVector(r, vectorOf(r.arguments.at(0)) - vectorOf(r.arguments.at(1))); }},
        {"sum", [](const Row& r) { expectVector(r, sumOf(r)); }},
        {"mean", checkMean},
        {"matrix", checkMatrix},
        {"transpose", [](const Row& r) { expectWritten(r, transposed(power(r.arguments.at(0)))); }},
        {"transpose sphere", checkSphereUnchanged},
        {"mean sphere",
         [](const Row& r) {
             near(r, meanSphere(power(r.arguments.at(0))).value(), number(r.named().at("M")));
         }},
        {"vertex", checkVertex},
        {"vertex and add",
         [](const Row& r) {
             near(r, vertexSphere(r) + number(r.arguments.at(3)), number(r.named().at("F")));
         }},
        {"vertex 10 12 14", checkVertexThree},
        {"prism at", checkPrismAt},
        {"millimetres for prism", checkMillimetres},
        {"prism of pair", checkPrismOfPair},
        {"base", checkBase},
        {"near centration",
         [](const Row& r) {
             near(r, centrationAt(number(r.arguments.at(0)), number(r.arguments.at(1))),
                  number(r.named().at("mm")));
         }},
        {"acuity", checkAcuity},
        {"mean acuity", checkMeanAcuity},
        {"hundred minus fifty logmar", checkHundred},
        {"loss", checkLoss},
        {"loss against chart",
         [](const Row& r) {
             checkEach(
                 r, [](const auto& b) { return expectedLoss(number(b)); }, true);
         }},
        {"written", [](const Row& r) { expectEye(r, Eye::right); }},
        {"written left", [](const Row& r) { expectEye(r, Eye::left); }},
        {"written additions", checkAdditions},
        {"written near", checkNearWrittenOut},
        {"eye words", checkEyeWords},
        {"acuity text", checkAcuityTexts},
        {"not sum", checkNotSum},
        {"axis where J0 is 0", [](const Row& r) { checkEach(r, oblique, true); }},
        {"transpose at right angles",
         [](const Row& r) {
             checkEach(
                 r, [](const auto& rx) { return transposed(power(rx)).axis.value(); }, true);
         }},
        {"not vertex", [](const Row& r) { checkAwayFrom(r, vertexSphere(r), number(r.named().at("F"))); }},
        {"not vertical difference", checkNotVertical},
        {"acuity between", checkAcuityBetween},
        {"not decimal",
         [](const Row& r) {
             checkEach(
                 r, [](const auto& va) { return decimalFromLogMar(logMarOf(va)); }, false);
         }},
        {"minutes of arc",
         [](const Row& r) {
             near(r, 1.0 / decimalFromLogMar(logMarOf(r.arguments.at(0))), number(r.expected));
         }},
        {"not loss",
         [](const Row& r) {
             checkEach(
                 r, [](const auto& b) { return expectedLoss(number(b)); }, false);
         }},
    };
    return table;
}

void checkRow(const Row& row)
{
    const auto found = checks().find(row.function);
    BOOST_TEST_REQUIRE((found != checks().end()), row.id << ": nobody checks " << row.function);
    found->second(row);
}

} // namespace

BOOST_AUTO_TEST_SUITE(optics_check_values)

BOOST_TEST_DECORATOR(*utf::label("REF") * utf::description("sources in tests/check_values/optics.csv"))
BOOST_DATA_TEST_CASE(a_published_value_is_met, utf::data::make(rowsOf("optics.csv", "REF")), row)
{
    checkRow(row);
}

BOOST_TEST_DECORATOR(*utf::label("DER") * utf::description("recomputed by two routes when the file was made"))
BOOST_DATA_TEST_CASE(a_recomputed_value_is_met, utf::data::make(rowsOf("optics.csv", "DER")), row)
{
    checkRow(row);
}

BOOST_AUTO_TEST_CASE(no_row_is_dropped_and_each_has_a_label, *utf::label("DER"))
{
    const auto checked = rowsOf("optics.csv", "REF").size() + rowsOf("optics.csv", "DER").size();
    BOOST_TEST(checked == rowsInFile);
    BOOST_TEST(rowsOf("optics.csv").size() == rowsInFile);
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep::check
