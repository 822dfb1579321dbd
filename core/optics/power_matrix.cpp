// SPDX-License-Identifier: GPL-3.0-or-later
// The dioptric power matrix from and to power vectors: f11 = M + J0, f12 = J45, f22 = M - J0.
#include "core/optics/power_matrix.hpp"

namespace quarterstep
{

PowerMatrix toPowerMatrix(const PowerVector& vector)
{
    return {vector.m + vector.j0, vector.j45, vector.m - vector.j0};
}

PowerMatrix toPowerMatrix(const SpheroCylinder& power)
{
    return toPowerMatrix(toPowerVector(power));
}

PowerVector toPowerVector(const PowerMatrix& matrix)
{
    return {(matrix.f11 + matrix.f22) / 2.0, (matrix.f11 - matrix.f22) / 2.0, matrix.f12};
}

} // namespace quarterstep
