// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/optics/quantiles.hpp"

#include <algorithm>
#include <cmath>

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/students_t.hpp>

namespace quarterstep
{
namespace
{

struct Moments {
    double mean = 0.0;
    double deviation = 0.0; ///< n - 1
};

std::optional<Moments> momentsOf(const std::vector<double>& values)
{
    constexpr std::size_t fewest = 3;
    if (values.size() < fewest)
        return std::nullopt;
    const auto count = static_cast<double>(values.size());
    Moments moments;
    for (const double value : values)
        moments.mean += value / count;
    double squares = 0.0;
    for (const double value : values)
        squares += (value - moments.mean) * (value - moments.mean);
    moments.deviation = std::sqrt(squares / (count - 1.0));
    if (!(moments.deviation > 0.0))
        return std::nullopt;
    return moments;
}

} // namespace

double chiSquareQuantile(double p, double freedom)
{
    return boost::math::quantile(boost::math::chi_squared(freedom), p);
}

double fQuantile(double p, double above, double below)
{
    return boost::math::quantile(boost::math::fisher_f(above, below), p);
}

double studentQuantile(double p, double freedom)
{
    return boost::math::quantile(boost::math::students_t(freedom), p);
}

std::optional<double> hotellingQuantile(double p, int dimensions, int count)
{
    if (count <= dimensions)
        return std::nullopt;
    const double d = dimensions;
    const double left = count - dimensions;
    return d * (count - 1.0) / left * fQuantile(p, d, left);
}

std::optional<double> grubbsStatistic(const std::vector<double>& values)
{
    const auto moments = momentsOf(values);
    if (!moments)
        return std::nullopt;
    double farthest = 0.0;
    for (const double value : values)
        farthest = std::max(farthest, std::fabs(value - moments->mean));
    return farthest / moments->deviation;
}

std::optional<double> grubbsScore(const std::vector<double>& values, double value)
{
    const auto moments = momentsOf(values);
    if (!moments)
        return std::nullopt;
    return std::fabs(value - moments->mean) / moments->deviation;
}

std::optional<double> grubbsCritical(int count, double alpha, Sides sides)
{
    constexpr int fewest = 3;
    if (count < fewest)
        return std::nullopt;
    const double n = count;
    const double share = alpha / (sides == Sides::two ? 2.0 * n : n);
    const double t = studentQuantile(1.0 - share, n - 2.0);
    return (n - 1.0) / std::sqrt(n) * std::sqrt(t * t / (n - 2.0 + t * t));
}

} // namespace quarterstep
