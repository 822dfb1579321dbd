// SPDX-License-Identifier: GPL-3.0-or-later
// The keeper's work: deliveries, counts by two, transfers, and what is entered one at a time. Each function
// makes the entries; `carryOut` posts all of them or none, or only says what would come of them.
#pragma once

#include "app/session/camp.hpp"
#include "core/record/life.hpp"
#include "inventory/text/quantity_list.hpp"

namespace quarterstep
{

/// Counts of a line before and after.
struct LineChange {
    std::string line;
    Balance before;
    Balance after;
};

struct KeptWork {
    std::vector<Entry> entries; ///< as posted; without id and number after a dry run
    std::vector<LineChange> lines;
    bool dryRun = false;
};

/// Posts the entries in one transaction and writes stock.yaml back; with `dryRun` nothing is written, and
/// what would be refused is refused the same way. Throws Error: entry-form (3), unknown-line (3), stock-short
/// (1), ledger-went-on (4) when `expected` is given and something was posted since, and the ledger's own.
KeptWork carryOut(Camp& camp, std::vector<Entry> entries, bool dryRun,
                  std::optional<std::int64_t> expected = std::nullopt);

/// Gives each row the name of its line where a code was scanned. Findings: unknown-line for what is not in
/// stock.yaml, code-check-digit, line-twice for a line by its name and by its code.
[[nodiscard]] std::vector<Finding> takeNames(const Camp& camp, std::vector<QuantityRow>& rows);

struct Delivery {
    std::string actor;
    std::string from; ///< supplier or donor; at a transfer the site
    std::string note;
    bool quarantine = false; ///< until samples were read with the focimeter
    std::string lot = {};
};
/// @return entries of one delivery; none when every quantity is 0
[[nodiscard]] std::vector<Entry> deliveryOf(const std::vector<QuantityRow>& rows, const Delivery& delivery);

/// One line of a blind sheet: no count stands on it.
struct SheetLine {
    std::string bin;
    std::string line;
};
/// In the order of the bins, then of the names; one bin alone when it is named.
[[nodiscard]] std::vector<SheetLine> countSheet(const Camp& camp, const std::string& bin = {});

struct CountBy {
    std::string counter; ///< initials
    std::string second;  ///< initials of the other person
    std::string reason;  ///< for differences whose row has none
    std::string cause;
};
struct CountDifference {
    std::string line;
    int book = 0;
    int counted = 0;
};
struct CountWork {
    std::vector<Entry> entries; ///< one for each reason and cause; lines without a difference in their own
    std::vector<CountDifference> lines;
    std::vector<Finding> findings; ///< count-reason, count-initials
};
/// Compares with the counts of the ledger now.
[[nodiscard]] CountWork countOf(const Camp& camp, const std::vector<QuantityRow>& rows, const CountBy& by);

struct Transfer {
    std::string actor;
    std::string site; ///< the other one
    std::string note;
    std::string sent; ///< entry that sent it, when taken in
};
[[nodiscard]] std::vector<Entry> transferOut(const std::vector<QuantityRow>& rows, const Transfer& transfer);
[[nodiscard]] std::vector<Entry> transferIn(const std::vector<QuantityRow>& rows, const Transfer& transfer);
/// Finding transfer-differs (caution) for each line that arrives in another number than was sent.
[[nodiscard]] std::vector<Finding> transferDiffers(const Entry& sent, const std::vector<QuantityRow>& rows);

/// What is entered one at a time.
struct SingleWork {
    EntryKind kind = EntryKind::returned;
    std::string line;
    int quantity = 1;
    std::string back; ///< exchanged: the line that comes back
    std::string actor;
    std::string person;
    std::string cause;
    std::string reason;
    std::string note;
    std::string lot = {};
    std::string until;            ///< ISO date, of what is held
    bool fromQuarantine = false;  ///< released from quarantine, not from being held
    bool straightToStock = false; ///< returned clean and read: not into quarantine
};
[[nodiscard]] Entry singleEntry(const SingleWork& work);

/// Quarantines what was received of a lot and is still available, line by line. Throws Error lot-unknown (3)
/// when nothing of it is.
[[nodiscard]] Entry quarantineOfLot(const Camp& camp, const SingleWork& work);

/// The entry that takes back `id`. A hand-over only on the day it was made. Throws Error entry-gone (3),
/// undo-too-late (1), order-step (1: an order with steps that stand).
[[nodiscard]] Entry undoOf(const Camp& camp, const std::string& id, const std::string& actor,
                           const std::string& reason);
/// The id of the person's only hand-over today that was not taken back. Throws Error entry-gone (3) when
/// there is none, entry-unclear (3) when there are several.
[[nodiscard]] std::string handOverToday(const Camp& camp, const std::string& person);

/// Pieces of a line held for this person here.
[[nodiscard]] int heldFor(const Camp& camp, const std::string& person, const StockLine& line);

/// Every order and every transfer in the air of a ledger.
[[nodiscard]] std::vector<Order> ordersOf(const Ledger& ledger);
[[nodiscard]] std::vector<Entry> flyingIn(const Ledger& ledger);

/// Throws Error order-gone (3).
[[nodiscard]] Order orderNamed(const Camp& camp, const std::string& id);
/// A step of an order. Throws Error order-gone (3), order-step (1: not what may follow).
[[nodiscard]] Entry orderStep(const Camp& camp, const std::string& order, EntryKind step,
                              const SingleWork& words);
/// The person's only open order. Throws Error order-gone (3), order-unclear (3).
[[nodiscard]] Order openOrderOf(const Camp& camp, const std::string& person);

/// Milliseconds of local time before UTC at a moment, and its day as ISO date.
[[nodiscard]] std::int64_t localOffsetMs(std::int64_t atMs);
[[nodiscard]] std::string localDay(std::int64_t atMs);

} // namespace quarterstep
