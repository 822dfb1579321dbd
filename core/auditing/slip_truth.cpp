// SPDX-License-Identifier: GPL-3.0-or-later
// A truth of the record: taken from it, compared with another, written out.
#include "core/auditing/slip_parts.hpp"

#include "core/fitting/need.hpp"
#include "core/optics/notation.hpp"
#include "core/optics/power_vector.hpp"

#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double sameComponent = 0.06; ///< D: under half of the smallest step, 0.125
constexpr double sameDistance = 0.6;   ///< mm

} // namespace

Truth truthOf(const PersonRecord& record)
{
    Truth truth;
    for (const Eye eye : bothEyes) {
        truth.finals.of(eye) = record.eyes.of(eye).final.power;
        truth.addition.of(eye) = additionOf(record.eyes.of(eye));
    }
    truth.pd = record.distancePd;
    const auto& right = record.eyes.right.monocularPd;
    const auto& left = record.eyes.left.monocularPd;
    if (!truth.pd && right && left)
        truth.pd = *right + *left;
    return truth;
}

bool sameFinals(const Finals& one, const Finals& other)
{
    for (const Eye eye : bothEyes) {
        const auto off = toPowerVector(one.of(eye)) - toPowerVector(other.of(eye));
        if (std::abs(off.m) > sameComponent || std::abs(off.j0) > sameComponent ||
            std::abs(off.j45) > sameComponent)
            return false;
    }
    return true;
}

bool sameTruth(const Truth& one, const Truth& other)
{
    for (const Eye eye : bothEyes)
        if (std::abs(one.addition.of(eye).value_or(0.0) - other.addition.of(eye).value_or(0.0)) >
            sameComponent)
            return false;
    return std::abs(one.pd.value_or(0.0) - other.pd.value_or(0.0)) <= sameDistance &&
           sameFinals(one.finals, other.finals);
}

std::string finalsText(const Finals& finals)
{
    return "R " + writePower(finals.right) + " L " + writePower(finals.left);
}

std::string truthText(const Truth& truth)
{
    auto text = finalsText(truth.finals);
    if (const auto& right = truth.addition.right)
        text += " add " + writeDioptres(Dioptres{*right});
    if (truth.addition.left && truth.addition.left != truth.addition.right)
        text += " / " + writeDioptres(Dioptres{*truth.addition.left});
    if (truth.pd)
        text += " PD " + std::to_string(std::lround(*truth.pd));
    return text;
}

} // namespace quarterstep
