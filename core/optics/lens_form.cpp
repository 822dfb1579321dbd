// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/optics/lens_form.hpp"

#include <cmath>
#include <limits>

namespace quarterstep
{

double surfaceRadius(double power, double index)
{
    if (power == 0.0)
        return std::numeric_limits<double>::infinity();
    return 1000.0 * (index - 1.0) / power;
}

std::optional<double> surfaceSag(double curvature, double height)
{
    const double under = 1.0 - curvature * curvature * height * height;
    if (!(under >= 0.0))
        return std::nullopt;
    return curvature * height * height / (1.0 + std::sqrt(under));
}

std::optional<double> edgeThickness(double frontCurvature, double backCurvature, double centre, double height)
{
    const auto front = surfaceSag(frontCurvature, height);
    const auto back = surfaceSag(backCurvature, height);
    if (!front || !back)
        return std::nullopt;
    return centre - *front + *back;
}

std::optional<double> shapeFactor(double frontCurvature, double backCurvature)
{
    if (frontCurvature == backCurvature)
        return std::nullopt;
    return (frontCurvature + backCurvature) / (frontCurvature - backCurvature);
}

double thicknessByRule(double power, double index, double diameter, double edge)
{
    const double half = diameter / 2.0;
    return half * half * power / (2000.0 * (index - 1.0)) + edge;
}

double powerFromLensClock(double reading, double index)
{
    return reading * (index - 1.0) / (lensClockIndex - 1.0);
}

} // namespace quarterstep
