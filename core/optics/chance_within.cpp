// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/optics/chance_within.hpp"

#include <boost/math/quadrature/gauss.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace quarterstep
{

namespace
{

constexpr double reach = 6.0;   // standard deviations beyond which a normal part is nothing: 2e-9
constexpr double finest = 5.01; // least deviations that one panel of twenty nodes may span, half the disc

/// One principal component.
struct Component {
    double mean = 0.0;
    double deviation = 1.0;

    [[nodiscard]] double density(double x) const
    {
        const double z = (x - mean) / deviation;
        return std::exp(-0.5 * z * z) / (deviation * std::sqrt(2.0 * std::numbers::pi));
    }
    [[nodiscard]] double below(double x) const
    {
        return 0.5 * std::erfc((mean - x) / (deviation * std::numbers::sqrt2));
    }
};

/// Integral of density(x) · rest(half width left at x) over -radius … radius, x = radius sin t.
template <class Rest>
double across(const Component& component, double radius, int panels, Rest rest)
{
    const double from = std::max(-radius, component.mean - reach * component.deviation);
    const double to = std::min(radius, component.mean + reach * component.deviation);
    if (from >= to)
        return 0.0;
    const auto under = [&](double t) {
        const double left = radius * std::cos(t);
        return component.density(radius * std::sin(t)) * left * rest(left);
    };
    const double first = std::asin(from / radius);
    const double step = (std::asin(to / radius) - first) / panels;
    double sum = 0.0;
    for (int i = 0; i < panels; ++i)
        sum += boost::math::quadrature::gauss<double, 20>::integrate(under, first + i * step,
                                                                     first + (i + 1) * step);
    return sum;
}

double along(const PowerVector& direction, const PowerVector& vector)
{
    return direction.m * vector.m + direction.j0 * vector.j0 + direction.j45 * vector.j45;
}

} // namespace

double chanceWithin(const PowerVector& mean, const Covariance& scatter, double radius)
{
    if (!(radius > 0.0))
        return 0.0;
    const auto principal = principalScatter(scatter);
    std::array<Component, 3> parts;
    for (std::size_t i = 0; i < parts.size(); ++i)
        parts[i] = {along(principal[i].direction, mean),
                    std::max(leastScatter, std::sqrt(std::max(0.0, principal[i].variance)))};
    const int panels = 1 + static_cast<int>(std::min(40.0, radius / (finest * parts[2].deviation)));
    const auto third = [&](double half) { return parts[2].below(half) - parts[2].below(-half); };
    const double chance =
        across(parts[0], radius, panels, [&](double disc) { return across(parts[1], disc, panels, third); });
    return std::clamp(chance, 0.0, 1.0);
}

} // namespace quarterstep
