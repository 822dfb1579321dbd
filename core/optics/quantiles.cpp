// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/optics/quantiles.hpp"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>

namespace quarterstep
{

double chiSquareQuantile(double p, double freedom)
{
    return boost::math::quantile(boost::math::chi_squared(freedom), p);
}

double fQuantile(double p, double above, double below)
{
    return boost::math::quantile(boost::math::fisher_f(above, below), p);
}

std::optional<double> hotellingQuantile(double p, int dimensions, int count)
{
    if (count <= dimensions)
        return std::nullopt;
    const double d = dimensions;
    const double left = count - dimensions;
    return d * (count - 1.0) / left * fQuantile(p, d, left);
}

} // namespace quarterstep
