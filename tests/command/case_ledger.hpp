// SPDX-License-Identifier: GPL-3.0-or-later
// A look into the ledger of a case, and a hand on it that the program would never lend.
#pragma once

#include <string>

namespace quarterstep::check
{

/// Id of the entry with this number. Throws std::runtime_error where there is none.
[[nodiscard]] std::string entryIdOf(const std::string& ledger, int number);
/// "{entry-N}" in a text becomes the id of entry N.
[[nodiscard]] std::string withEntries(std::string text, const std::string& ledger);
/// Past every safeguard: changes the first entry that has the text, and puts the rule against changes back.
void rewriteEntry(const std::string& ledger, const std::string& from, const std::string& to);

} // namespace quarterstep::check
