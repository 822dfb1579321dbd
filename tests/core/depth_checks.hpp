// SPDX-License-Identifier: GPL-3.0-or-later
// How each kind of row of the check values is checked, by the name in its column `function`.
#pragma once

#include "core/optics/sphero_cylinder.hpp"
#include "tests/core/check_values.hpp"

#include <functional>

namespace quarterstep::check
{

using Checks = std::map<std::string, std::function<void(const Row&)>>;

[[nodiscard]] const Checks& lensFormChecks();
[[nodiscard]] const Checks& nearAdditionChecks();
[[nodiscard]] const Checks& statisticsChecks();

// Shared by them.
[[nodiscard]] double number(const std::string& text);
/// The arguments as numbers, from the first on.
[[nodiscard]] std::vector<double> numbers(const Row& row);
[[nodiscard]] SpheroCylinder power(const std::string& text);
/// Fails with id, source and both values unless they agree within the row's tolerance.
void near(const Row& row, double measured, double expected, const std::string& name = "");
/// Every named part of `expected` near the measured value of that name.
void nearAll(const Row& row, const std::map<std::string, double>& measured);
/// Parts side by side with measured values.
void nearEach(const Row& row, const std::vector<double>& measured);
/// Fails when the measured value repeats a printed mistake.
void awayFrom(const Row& row, double measured, double printed);

} // namespace quarterstep::check
