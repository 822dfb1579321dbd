// SPDX-License-Identifier: GPL-3.0-or-later
// Persons with random prescriptions, for round trips; the seed is told by whoever draws.
#pragma once

#include "inventory/exchange/exchange.hpp"

#include <random>

namespace quarterstep::check
{

/// Powers in steps of 0.01, 0.125 or 0.25 D, either cylinder sign, prism by components or oblique, additions,
/// distances, eyes that were not refracted.
[[nodiscard]] PersonRecord randomPerson(std::mt19937& random, int number);
[[nodiscard]] std::vector<ExchangePerson> randomPersons(unsigned seed, int count);

/// The prescription and the measures as text, to compare; powers and prisms to the last bit.
[[nodiscard]] std::string essence(const PersonRecord& person);

} // namespace quarterstep::check
