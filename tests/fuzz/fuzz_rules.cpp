// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as rules.yaml: no crash, no hang; what is read has a hash, and the same hash when read again.
#include "inventory/text/rules_file.hpp"
#include "inventory/text/rules_hash.hpp"

#include "tests/fuzz/checks.hpp"

using namespace quarterstep;
using fuzz::require;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string text(data, data + size);
    const auto reading = readRulesText(text, "rules.yaml");
    fuzz::checkFindings(reading.findings, fuzz::lineCount(text));
    if (!reading.usable())
        return 0;
    require(!reading.value.profiles.empty(), "the built-in profiles are there");
    require(reading.value.hash == rulesHash(reading.value), "the hash is that of the rules");
    require(readRulesText(text, "rules.yaml").value.hash == reading.value.hash, "and the same again");
    return 0;
}
