// SPDX-License-Identifier: GPL-3.0-or-later
// Conversions of powers against plain loops with the same formulas on bare doubles: what the strong types,
// the exact right angles and the folded axes cost.
#include "tests/bench/plan.hpp"

#include "core/optics/effectivity.hpp"

#include <benchmark/benchmark.h>

#include <cmath>
#include <memory>
#include <numbers>
#include <random>

namespace quarterstep::bench
{

namespace
{

struct PlainPower {
    double sphere;
    double cylinder;
    double axis;
};

struct PlainVector {
    double m;
    double j0;
    double j45;
};

/// The same powers both ways: spheres and cylinders in quarter dioptres, whole axes.
struct Powers {
    std::vector<SpheroCylinder> written;
    std::vector<PowerVector> vectors;
    std::vector<PlainPower> plain;
    std::vector<PlainVector> plainVectors;
    std::vector<SpheroCylinder> writtenOut;
    std::vector<PowerVector> vectorsOut;
    std::vector<PlainPower> plainOut;
    std::vector<PlainVector> plainVectorsOut;
};

constexpr double radian = std::numbers::pi / 180.0;

std::shared_ptr<Powers> somePowers(std::size_t count)
{
    auto powers = std::make_shared<Powers>();
    std::mt19937 random(20250);
    for (std::size_t i = 0; i < count; ++i) {
        const PlainPower plain{static_cast<double>(random() % 81) / 4.0 - 10.0,
                               static_cast<double>(random() % 17) / -4.0,
                               static_cast<double>(random() % 180 + 1)};
        powers->plain.push_back(plain);
        powers->written.push_back(
            {Dioptres{plain.sphere}, Dioptres{plain.cylinder}, AxisDegrees{plain.axis}});
        powers->vectors.push_back(toPowerVector(powers->written.back()));
        const auto& vector = powers->vectors.back();
        powers->plainVectors.push_back({vector.m, vector.j0, vector.j45});
    }
    powers->writtenOut.resize(count);
    powers->vectorsOut.resize(count);
    powers->plainOut.resize(count);
    powers->plainVectorsOut.resize(count);
    return powers;
}

double plainFold(double axis)
{
    while (axis > 180.0)
        axis -= 180.0;
    while (axis <= 0.0)
        axis += 180.0;
    return axis;
}

PlainVector plainToVector(const PlainPower& power)
{
    const double half = power.cylinder / 2.0;
    const double doubled = 2.0 * power.axis * radian;
    return {power.sphere + half, -half * std::cos(doubled), -half * std::sin(doubled)};
}

PlainPower plainToWritten(const PlainVector& vector)
{
    const double size = 2.0 * std::sqrt(vector.j0 * vector.j0 + vector.j45 * vector.j45);
    const double axis = 0.5 * std::atan2(vector.j45, vector.j0) / radian;
    return {vector.m + size / 2.0, -size, plainFold(axis)};
}

PlainPower plainTransposed(const PlainPower& power)
{
    return {power.sphere + power.cylinder, -power.cylinder, plainFold(power.axis + 90.0)};
}

PlainPower plainAtVertex(const PlainPower& power, double metres)
{
    const double along = power.sphere / (1.0 - metres * power.sphere);
    const double across = power.sphere + power.cylinder;
    return {along, across / (1.0 - metres * across) - along, power.axis};
}

/// Measures `convert` over `in`, into `out`.
template <class In, class Out, class Convert>
void measureEach(Plan& plan, const std::string& name, const std::shared_ptr<Powers>& powers,
                 std::vector<In> Powers::*in, std::vector<Out> Powers::*out, Convert convert)
{
    auto* of = powers.get();
    plan.measure(name, static_cast<double>((of->*in).size()), [powers, in, out, convert] {
        const auto& from = *powers.*in;
        auto& to = *powers.*out;
        for (std::size_t i = 0; i < from.size(); ++i)
            to[i] = convert(from[i]);
        benchmark::DoNotOptimize(to.data());
        benchmark::ClobberMemory();
    });
}

} // namespace

void planOptics(Plan& plan)
{
    const auto powers = somePowers(plan.size(4096, 64));
    constexpr double from = 14.0;
    constexpr double to = 12.0;
    measureEach(plan, "optics/to_vector/plain", powers, &Powers::plain, &Powers::plainVectorsOut,
                [](const PlainPower& power) { return plainToVector(power); });
    measureEach(plan, "optics/to_vector/ours", powers, &Powers::written, &Powers::vectorsOut,
                [](const SpheroCylinder& power) { return toPowerVector(power); });
    measureEach(plan, "optics/to_written/plain", powers, &Powers::plainVectors, &Powers::plainOut,
                [](const PlainVector& vector) { return plainToWritten(vector); });
    measureEach(plan, "optics/to_written/ours", powers, &Powers::vectors, &Powers::writtenOut,
                [](const PowerVector& vector) { return toSpheroCylinder(vector); });
    measureEach(plan, "optics/transposed/plain", powers, &Powers::plain, &Powers::plainOut,
                [](const PlainPower& power) { return plainTransposed(power); });
    measureEach(plan, "optics/transposed/ours", powers, &Powers::written, &Powers::writtenOut,
                [](const SpheroCylinder& power) { return transposed(power); });
    measureEach(plan, "optics/at_vertex/plain", powers, &Powers::plain, &Powers::plainOut,
                [](const PlainPower& power) { return plainAtVertex(power, (from - to) / 1000.0); });
    measureEach(plan, "optics/at_vertex/ours", powers, &Powers::written, &Powers::writtenOut,
                [](const SpheroCylinder& power) {
                    return atVertexDistance(power, Millimetres{from}, Millimetres{to}).value_or(power);
                });
    // The plain loops may be vectorised and fold no exact zeros; ours are checked calls, one power each.
    plan.atLeastTimesFaster("optics/to_vector", "optics/to_vector/plain", "optics/to_vector/ours", 1.0);
    plan.atLeastTimesFaster("optics/to_written", "optics/to_written/plain", "optics/to_written/ours", 0.6);
    plan.atLeastTimesFaster("optics/transposed", "optics/transposed/plain", "optics/transposed/ours", 0.2);
    plan.atLeastTimesFaster("optics/at_vertex", "optics/at_vertex/plain", "optics/at_vertex/ours", 0.15);
}

} // namespace quarterstep::bench
