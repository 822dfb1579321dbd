// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/pins.hpp"

#include <sodium.h>

#include <algorithm>
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

struct AskedRow {
    std::string_view verb;
    std::string_view step; ///< empty: every other one of that verb
    Role role;
};

constexpr AskedRow askedTable[] = {
    {"receive", {}, Role::keeper},
    {"count", {}, Role::keeper},
    {"transfer", {}, Role::keeper},
    {"record", "written-off", Role::keeper},
    {"record", "held", Role::keeper},
    {"record", "quarantined", Role::keeper},
    {"record", "released", Role::keeper},
    {"stock", "--accept-edits", Role::keeper},
    {"stock", "--discard-edits", Role::keeper},
    {"stock", {}, Role::supervisor}, // a folder that moved, a second station
    {"import", {}, Role::supervisor},
    {"export", {}, Role::supervisor},
    {"forget", {}, Role::supervisor},
    {"audit", {}, Role::supervisor},
    {"settings", {}, Role::supervisor}, // of the camp, for everybody: at the desk only
};

} // namespace

Role roleAskedBy(std::string_view verb, std::string_view step)
{
    const auto* row = std::find_if(std::begin(askedTable), std::end(askedTable), [&](const AskedRow& asked) {
        return asked.verb == verb && (asked.step.empty() || asked.step == step);
    });
    return row == std::end(askedTable) ? Role::optician : row->role;
}

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

void requireFit(const Ledger& ledger, Role role, const std::string& pin)
{
    if (!pinFits(ledger, role, pin))
        throw errorSaying(
            "pin-wrong",
            {QS_SAY("core", "this is not the PIN of the %1; nothing was written"), {wordOf(role)}}, 4);
}

Role roleChangingPinOf(const Ledger& ledger, Role role)
{
    return hasPin(ledger, Role::supervisor) ? Role::supervisor : role;
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
