// SPDX-License-Identifier: GPL-3.0-or-later
// A PIN per role, as a guard against slips: a hand at the wrong screen, not somebody who has the file. Kept
// in the settings of the ledger as libsodium's password hash (Argon2id with a random salt); nothing here is
// of our own making.
#pragma once

#include "inventory/store/ledger.hpp"

namespace quarterstep
{

enum class Role { optician, keeper, supervisor };
inline constexpr Role allRoles[] = {Role::optician, Role::keeper, Role::supervisor};

[[nodiscard]] const char* wordOf(Role role);
[[nodiscard]] std::optional<Role> roleNamed(const std::string& word);

/// For whom something is written, and so whose PIN is asked for: by the verb of the command line and, where
/// that matters, its step, kind or option. The desk asks by the same words for what it does. Not in the
/// table: the optician.
[[nodiscard]] Role roleAskedBy(std::string_view verb, std::string_view step = {});

/// Fewest and most bytes of a PIN.
inline constexpr std::size_t shortestPin = 4;
inline constexpr std::size_t longestPin = 64;

[[nodiscard]] bool hasPin(const Ledger& ledger, Role role);
[[nodiscard]] bool pinFits(const Ledger& ledger, Role role, const std::string& pin);
/// Throws Error pin-wrong (4) unless it fits.
void requireFit(const Ledger& ledger, Role role, const std::string& pin);
/// Whose PIN is needed to set or remove that of a role: the supervisor's once there is one, before its own.
[[nodiscard]] Role roleChangingPinOf(const Ledger& ledger, Role role);
/// Throws Error pin-form (3) for one that is too short or too long, ledger-failed (4) when there is no memory
/// for the hash, and what writing throws.
void setPin(Ledger& ledger, Role role, const std::string& pin);
void removePin(Ledger& ledger, Role role);

} // namespace quarterstep
