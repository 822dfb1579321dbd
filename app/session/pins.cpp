// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/pins.hpp"

#include <sodium.h>

#include <array>

namespace quarterstep
{

namespace
{

std::string settingOf(Role role)
{
    return std::string("pin ") + wordOf(role);
}

void requireSodium()
{
    if (sodium_init() < 0)
        throw errorSaying("ledger-failed", {QS_SAY("core", "the library for PINs cannot be used here"), {}},
                          4);
}

} // namespace

const char* wordOf(Role role)
{
    constexpr const char* words[] = {"optician", "keeper", "supervisor"};
    return words[static_cast<std::size_t>(role)];
}

std::optional<Role> roleNamed(const std::string& word)
{
    for (const auto role : allRoles)
        if (word == wordOf(role))
            return role;
    return std::nullopt;
}

bool hasPin(const Ledger& ledger, Role role)
{
    return !ledger.setting(settingOf(role)).empty();
}

bool pinFits(const Ledger& ledger, Role role, const std::string& pin)
{
    requireSodium();
    const auto kept = ledger.setting(settingOf(role));
    return kept.size() < crypto_pwhash_STRBYTES &&
           crypto_pwhash_str_verify(kept.c_str(), pin.data(), pin.size()) == 0;
}

void setPin(Ledger& ledger, Role role, const std::string& pin)
{
    if (pin.size() < shortestPin || pin.size() > longestPin)
        throw errorSaying("pin-form",
                          {QS_SAY("core", "a PIN has %1 to %2 characters; nothing was written"),
                           {std::to_string(shortestPin), std::to_string(longestPin)}},
                          3);
    requireSodium();
    std::array<char, crypto_pwhash_STRBYTES> kept{};
    if (crypto_pwhash_str(kept.data(), pin.data(), pin.size(), crypto_pwhash_OPSLIMIT_INTERACTIVE,
                          crypto_pwhash_MEMLIMIT_INTERACTIVE) != 0)
        throw errorSaying(
            "ledger-failed",
            {QS_SAY("core", "there is not enough memory to keep a PIN; close other programs"), {}}, 4);
    ledger.setSetting(settingOf(role), kept.data());
}

void removePin(Ledger& ledger, Role role)
{
    ledger.setSetting(settingOf(role), {});
}

} // namespace quarterstep
