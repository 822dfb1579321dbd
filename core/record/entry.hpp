// SPDX-License-Identifier: GPL-3.0-or-later
// What happened, as values: an entry and the movements that belong to it. Entries are append-only.
#pragma once

#include "core/finding.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace quarterstep
{

enum class EntryKind {
    opened,         ///< lines made known with their first counts
    received,       ///< from a supplier or donor
    handedOver,     ///< to a person
    returned,       ///< by a person; into quarantine until cleaned and read
    exchanged,      ///< one pair back, another out
    counted,        ///< a count, with or without a difference
    writtenOff,     ///< damaged, missing, given away …
    held,           ///< kept for a person or an order
    quarantined,    ///< not to be handed over until released
    released,       ///< from being held, or from quarantine
    transferredOut, ///< sent to another site
    transferredIn,  ///< taken in from another site
    notNeeded,      ///< no spectacles needed
    declined,
    incomplete, ///< something is missing before anything can be given
    adjusted,   ///< repaired or adjusted, nothing moves
    ordered,    ///< custom spectacles; may hold a frame
    orderArrived,
    orderChecked,
    delivered,
    remade, ///< back to the laboratory
    notCollected,
    referred,
    notServed,     ///< nothing in the stock is good enough, or none was left
    exported,      ///< rows of persons left the ledger
    lotDrawn,      ///< hand-overs drawn for the bench
    lotRead,       ///< what the bench read of them
    followedUp,    ///< a person seen again: worn or not
    enteredInError ///< takes another entry back
};
inline constexpr std::size_t entryKinds = 29;

/// A change of one line's counts at one site. Held and quarantined pieces are part of those on hand.
struct Movement {
    std::string line;
    int delta = 0;
    std::string part; ///< pair | right | left | frame or empty
    int held = 0;
    int quarantined = 0;
    bool operator==(const Movement&) const = default;
};

/// Payload values are text or integers written as text; `fields` is serialised canonically once and hashed as
/// stored. `texts` is what people wrote in their own words: it stands beside the chain, which holds only a
/// salted hash of it, so that it can be blanked.
struct Entry {
    std::string id;          ///< UUIDv7, 36 characters; empty until posted
    std::int64_t number = 0; ///< per station, from 1
    EntryKind kind = EntryKind::handedOver;
    std::int64_t atMs = 0; ///< UTC, milliseconds
    std::string actor;
    std::string person;  ///< camp code or empty
    std::string cancels; ///< id of the entry entered in error
    std::map<std::string, std::string> fields;
    std::vector<Movement> movements;
    std::map<std::string, std::string> texts; ///< "reason", "note"; empty texts are not kept
    std::string site;                         ///< set when posted or read
};

/// What a kind of entry may do to a count.
enum class Change { none, more, fewer, either };

/// What an entry of a kind looks like.
struct KindRule {
    EntryKind kind = EntryKind::handedOver;
    const char* word = ""; ///< stable, in ledgers and JSON ("handed-over")
    Change onHand = Change::none;
    Change held = Change::none;
    Change quarantined = Change::none;
    bool movesNothing = false; ///< whether an entry without movements is allowed
    bool needsPerson = false;
    std::vector<const char*> needs; ///< fields or texts that must be there
};
/// What entries of a kind may move and must have.
[[nodiscard]] const KindRule& ruleOf(EntryKind kind);
/// The stable word of a kind.
[[nodiscard]] const char* wordOf(EntryKind kind);
/// The kind of a word; empty when no kind has it.
[[nodiscard]] std::optional<EntryKind> entryKindFrom(std::string_view word);

/// Why this entry cannot be posted as an entry of its kind; empty when it can.
[[nodiscard]] std::optional<Sentence> objectionTo(const Entry& entry);

/// The movements that undo these.
[[nodiscard]] std::vector<Movement> turnedRound(std::vector<Movement> movements);

/// Causes of a write-off or of a difference in a count, as ledgers and JSON have them.
[[nodiscard]] const std::vector<const char*>& causesOfLoss();
[[nodiscard]] bool isCauseOfLoss(std::string_view word);

} // namespace quarterstep
