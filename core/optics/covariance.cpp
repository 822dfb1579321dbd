// SPDX-License-Identifier: GPL-3.0-or-later
// Principal directions by Jacobi's plane rotations: for 3 × 3 they end in a few sweeps and need no special
// case for equal or vanishing variances.
#include "core/optics/covariance.hpp"

#include "core/optics/quantiles.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace quarterstep
{
namespace
{

using Matrix3 = std::array<std::array<double, 3>, 3>;

Matrix3 matrixOf(const Covariance& c)
{
    return {{{c.mm, c.m0, c.m45}, {c.m0, c.j00, c.j045}, {c.m45, c.j045, c.j4545}}};
}

double offDiagonal(const Matrix3& a)
{
    return std::fabs(a[0][1]) + std::fabs(a[0][2]) + std::fabs(a[1][2]);
}

/// One rotation in the plane (p, q) that makes a[p][q] zero; the same turn is kept in `vectors`.
void rotate(Matrix3& a, Matrix3& vectors, std::size_t p, std::size_t q)
{
    if (a[p][q] == 0.0)
        return;
    const double theta = (a[q][q] - a[p][p]) / (2.0 * a[p][q]);
    const double t = (theta < 0.0 ? -1.0 : 1.0) / (std::fabs(theta) + std::sqrt(theta * theta + 1.0));
    const double c = 1.0 / std::sqrt(t * t + 1.0);
    const double s = t * c;
    for (std::size_t k = 0; k < 3; ++k) {
        const double kp = a[k][p];
        const double kq = a[k][q];
        a[k][p] = c * kp - s * kq;
        a[k][q] = s * kp + c * kq;
    }
    for (std::size_t k = 0; k < 3; ++k) {
        const double pk = a[p][k];
        const double qk = a[q][k];
        a[p][k] = c * pk - s * qk;
        a[q][k] = s * pk + c * qk;
    }
    for (auto& row : vectors) {
        const double vp = row[p];
        const double vq = row[q];
        row[p] = c * vp - s * vq;
        row[q] = s * vp + c * vq;
    }
    a[p][q] = a[q][p] = 0.0;
}

double dot(const PowerVector& a, const PowerVector& b)
{
    return a.m * b.m + a.j0 * b.j0 + a.j45 * b.j45;
}

Ellipsoid ellipsoid(const PowerVector& centre, const Covariance& covariance, double radiusSquared)
{
    Ellipsoid result;
    result.centre = centre;
    result.radiusSquared = radiusSquared;
    const auto principal = principalScatter(covariance);
    for (std::size_t i = 0; i < principal.size(); ++i) {
        result.halfAxes[i] = std::sqrt(radiusSquared * std::max(0.0, principal[i].variance));
        result.directions[i] = principal[i].direction;
    }
    return result;
}

} // namespace

std::optional<Covariance> covarianceOf(const std::vector<PowerVector>& vectors)
{
    if (vectors.size() < 2)
        return std::nullopt;
    const auto mean = meanVector(vectors);
    Covariance sum;
    for (const auto& vector : vectors) {
        const auto d = vector - mean;
        sum.mm += d.m * d.m;
        sum.m0 += d.m * d.j0;
        sum.m45 += d.m * d.j45;
        sum.j00 += d.j0 * d.j0;
        sum.j045 += d.j0 * d.j45;
        sum.j4545 += d.j45 * d.j45;
    }
    const double k = 1.0 / (static_cast<double>(vectors.size()) - 1.0);
    return Covariance{k * sum.mm, k * sum.m0, k * sum.m45, k * sum.j00, k * sum.j045, k * sum.j4545};
}

std::array<PrincipalScatter, 3> principalScatter(const Covariance& covariance)
{
    constexpr int mostSweeps = 50;
    constexpr double nothing = 1e-15;
    Matrix3 a = matrixOf(covariance);
    Matrix3 vectors{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
    for (int sweep = 0; sweep < mostSweeps && offDiagonal(a) > nothing * covariance.total(); ++sweep) {
        rotate(a, vectors, 0, 1);
        rotate(a, vectors, 0, 2);
        rotate(a, vectors, 1, 2);
    }
    std::array<PrincipalScatter, 3> principal;
    for (std::size_t i = 0; i < 3; ++i)
        principal[i] = {a[i][i], {vectors[0][i], vectors[1][i], vectors[2][i]}};
    std::stable_sort(principal.begin(), principal.end(),
                     [](const auto& x, const auto& y) { return x.variance > y.variance; });
    return principal;
}

std::optional<double> mahalanobisSquared(const Covariance& covariance, const PowerVector& away)
{
    constexpr double singular = 1e-12;
    const auto principal = principalScatter(covariance);
    if (!(principal[2].variance > singular * principal[0].variance))
        return std::nullopt;
    double distance = 0.0;
    for (const auto& [variance, direction] : principal) {
        const double along = dot(direction, away);
        distance += along * along / variance;
    }
    return distance;
}

double Ellipsoid::volume() const
{
    return 4.0 / 3.0 * std::numbers::pi * halfAxes[0] * halfAxes[1] * halfAxes[2];
}

Ellipsoid ellipsoidOfDistribution(const PowerVector& mean, const Covariance& covariance, double p)
{
    return ellipsoid(mean, covariance, chiSquareQuantile(p, 3.0));
}

std::optional<Ellipsoid> ellipsoidOfMean(const PowerVector& mean, const Covariance& covariance, int count,
                                         double p)
{
    const auto quantile = hotellingQuantile(p, 3, count);
    if (!quantile)
        return std::nullopt;
    return ellipsoid(mean, covariance, *quantile / count);
}

} // namespace quarterstep
