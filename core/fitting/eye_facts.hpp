// SPDX-License-Identifier: GPL-3.0-or-later
// Small questions to a record that several rules ask: better eye, any seeing eye.
#pragma once

#include "core/fitting/prescription.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace quarterstep
{

/// Printed acuities are rounded to two decimals.
inline constexpr double roundingSlack = 0.005;
inline const double logMar6over9 = std::log10(9.0 / 6.0);
inline const double logMar6over12 = std::log10(12.0 / 6.0);
/// logMAR of an acuity; empty where none was taken or it is none of a chart.
[[nodiscard]] inline std::optional<double> logMarOf(const std::optional<Acuity>& acuity)
{
    return acuity ? acuity->logMar : std::nullopt;
}

/// Best of the seeing eyes; empty when neither was taken.
template <class Get>
std::optional<double> betterEye(const PersonRecord& person, Get get)
{
    std::optional<double> better;
    for (const Eye eye : bothEyes) {
        const auto& record = person.eyes.of(eye);
        if (!record.seeing())
            continue;
        const auto value = logMarOf(get(record.acuity));
        if (value && (!better || *value < *better))
            better = value;
    }
    return better;
}

template <class Function>
bool anySeeingEye(const PersonRecord& person, Function function)
{
    return std::any_of(std::begin(bothEyes), std::end(bothEyes), [&](Eye eye) {
        const auto& record = person.eyes.of(eye);
        return record.seeing() && function(record);
    });
}

} // namespace quarterstep
