// SPDX-License-Identifier: GPL-3.0-or-later
// The ledger: everything that happened, append-only, hash-chained, in a file or in a database that several
// stations share.
// One transaction a hand-over: the entry and its movements; a trigger keeps balances and a CHECK keeps them
// >= 0.
#pragma once

#include "core/finding.hpp"
#include "core/record/entry.hpp"

#include <functional>
#include <initializer_list>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace quarterstep
{

struct Balance {
    std::string line;
    int onHand = 0;
    int held = 0;
    int quarantined = 0;
};

struct ChainCheck {
    bool ok = true;
    std::int64_t entries = 0;
    std::int64_t checked = 0; ///< the last ones; all of them after `checkChain`
    std::optional<std::int64_t> firstBad;
    std::string what;                             ///< plain description of the first bad entry
    std::optional<std::int64_t> badPosition = {}; ///< of the first bad entry in the order of arrival
};

/// Told while a chain is walked: entries checked so far. What it throws ends the walk.
using ChainWatch = std::function<void(std::int64_t checked)>;

/// One entry as stored, for reading a whole ledger without holding it: see entryFrom.
struct StoredEntry {
    std::int64_t position = 0;
    std::string payload;
    std::map<std::string, std::string> texts; ///< that are still there
};
/// The entry of a stored text. Empty when it cannot be read.
[[nodiscard]] std::optional<Entry> entryFrom(const StoredEntry& stored);

/// Counts of a site and the position they stand for, read in one statement so that they belong together.
struct Snapshot {
    std::int64_t position = 0;
    std::vector<Balance> balances; ///< in the order of the bytes of their lines' names
    /// Of a line; null when the ledger does not know it.
    [[nodiscard]] const Balance* of(const std::string& line) const;
};

/// One movement of a line with its entry, and the count on hand after it.
struct CardRow {
    Entry entry; ///< without its other movements
    Movement movement;
    std::int64_t position = 0;
    std::int64_t balance = 0;
};

/// What was erased of a person.
struct Forgotten {
    bool known = false;       ///< whether the person table had a row
    std::int64_t texts = 0;   ///< blanked
    std::int64_t entries = 0; ///< which keep the camp code
    std::int64_t older = 0;   ///< of these, with words in the chain itself, as form 1 wrote them
};

/// One person for the person table; nothing but the camp code is needed.
struct LedgerPerson {
    std::string code;
    std::string name;
};

/// Links of the chain that are checked at each opening.
inline constexpr std::int64_t linksAtOpening = 100;

class Ledger
{
  public:
    enum class Mode { readOnly, readWrite };

    /// Opens the ledger at a path, or the shared one at postgresql://login@host:port/database, for the camp
    /// folder given (the folder of the file when it is a file). In readWrite mode a file is made when
    /// missing; a shared ledger is set up once (shared_ledger.hpp). A connection belongs to the thread that
    /// opened it, and a QCoreApplication must exist. Throws Error: ledger-missing (3), ledger-not-a-database
    /// (3), ledger-newer (3), ledger-address (3), ledger-locked (4), ledger-unwritable (4), ledger-network
    /// (4), ledger-unreachable (4), ledger-not-allowed (4).
    [[nodiscard]] static Ledger open(const std::string& location, Mode mode, const std::string& folder = {});
    Ledger(Ledger&&) noexcept;
    Ledger& operator=(Ledger&&) noexcept;
    ~Ledger();

    /// Whether the ledger was last written at another place (copied or restored). Then it can only be read
    /// until the keeper says "moved here" (claimPlace) or "second station" (becomeSecondStation); `post` and
    /// `introduce` throw ledger-moved (4).
    [[nodiscard]] bool moved() const;
    [[nodiscard]] bool writable() const;
    /// "Moved here": this place becomes the place of the ledger. No other copy may be used from now on.
    void claimPlace();
    /// "Second station": from now on entries are numbered and chained under a station id of their own, so
    /// that this ledger and the one it was copied from can be merged.
    void becomeSecondStation();
    /// The copy of an older form that opening left beside the ledger; empty when there was nothing to do.
    [[nodiscard]] const std::string& migratedFrom() const;
    [[nodiscard]] const std::string& path() const; ///< or address, as people are shown it
    [[nodiscard]] std::string station() const;     ///< id of this station, 36 characters

    /// Posts entry and movements in one transaction; returns it with id, number and time set. All or nothing.
    /// Throws Error: stock-short (1: the balance would go below zero; argument = line), unknown-line (3),
    /// entry-gone (3: cancels an unknown or already cancelled entry), ledger-locked (4), ledger-full (4),
    /// ledger-replaced (4: the file was moved or replaced), ledger-moved (4), ledger-failed (4),
    /// ledger-unreachable (4), ledger-not-allowed (4), entry-form (3: not what an entry of its kind looks
    /// like). When the connection to a server is lost at the commit, the entry is looked for and, if it is
    /// not there, posted again under the same id. An `enteredInError` entry without movements gets those of
    /// the entry it cancels, turned round.
    Entry post(const std::string& site, Entry entry);
    /// All of them in one transaction, or none. With `expected` only while that is still the last position;
    /// otherwise Error ledger-went-on (4).
    std::vector<Entry> postAll(const std::string& site, std::vector<Entry> entries,
                               std::optional<std::int64_t> expected = std::nullopt);
    /// Makes the lines known with their first counts (an `opened` entry); lines already known are left alone.
    void introduce(const std::string& site, const std::vector<Balance>& counts);

    [[nodiscard]] std::vector<Balance> balances(const std::string& site) const;
    [[nodiscard]] Snapshot snapshot(const std::string& site) const;
    /// Counts of one site as they were at `position`; lines not known then are left out.
    [[nodiscard]] std::vector<Balance> balancesAt(const std::string& site, std::int64_t position) const;
    /// Counts with which the lines of a site were introduced.
    [[nodiscard]] std::vector<Balance> firstCounts(const std::string& site) const;
    [[nodiscard]] std::int64_t position() const; ///< of the last entry in the order of arrival, 0 when empty
    [[nodiscard]] std::vector<Entry> entriesAfter(std::int64_t position) const;
    /// Gives the entries from after `position` one by one in the order of arrival, until `take`
    /// says false. Nothing is held back: memory does not grow with the ledger.
    void eachStored(std::int64_t position, const std::function<bool(StoredEntry)>& take) const;
    /// Ids of the entries that a later one took back.
    [[nodiscard]] std::set<std::string> takenBackIds() const;
    /// The newest entry of a kind, for a look at what was written last.
    [[nodiscard]] std::optional<Entry> lastOf(EntryKind kind) const;
    [[nodiscard]] std::optional<Entry> entry(const std::string& id) const;
    // Parts of what happened, in the order of arrival. Entries that take others back are among them: they
    // carry the person and the movements of what they take back.
    [[nodiscard]] std::vector<Entry> entriesOfKinds(std::initializer_list<EntryKind> kinds) const;
    [[nodiscard]] std::vector<Entry> entriesOfPerson(const std::string& code) const;
    /// Those that hold pieces or let them go.
    [[nodiscard]] std::vector<Entry> entriesHolding() const;
    /// Every entry in the order of arrival, from the typed columns: id, kind, time, person, movements, the
    /// entry taken back; `fields` and `site` only where there is no movement or the kind is `counted`.
    /// Nothing is kept in memory.
    void replay(const std::function<void(const Entry&)>& take) const;
    /// The stock card of a line, oldest first.
    [[nodiscard]] std::vector<CardRow> card(const std::string& site, const std::string& line) const;
    /// Every hash, every number, every typed column against its payload, every text that is still there
    /// against its salted hash, and the counts against the movements.
    [[nodiscard]] ChainCheck checkChain(const ChainWatch& watch = {}) const;
    /// The same for the last entries alone, without the counts: what every opening can afford.
    [[nodiscard]] ChainCheck checkRecent(std::int64_t most = linksAtOpening) const;
    /// A consistent copy in a new file that only its owner reads. Throws Error file-exists (3),
    /// file-unwritable (4), ledger-full (4).
    void copyTo(const std::string& target) const;
    /// Puts everything into an empty shared ledger that was set up, or a new file, and leaves this one:
    /// entries stay as they are, and what is written there comes from a station of its own. A file that was
    /// left can be read, or claimed again. Throws Error ledger-not-empty (3), file-exists (3), ledger-went-on
    /// (4) when something was posted meanwhile, and what opening throws.
    void moveTo(const std::string& location);
    /// Persons live beside the chain, so that one can be erased without breaking it. All of them in one
    /// transaction, or none; a name that is there is replaced.
    void putPersons(const std::vector<LedgerPerson>& persons);
    /// How long to wait for others who write before ledger-locked is thrown; two seconds at first. A window
    /// waits a blink and repeats, so that it stays alive.
    void setPatience(int ms);
    /// What the keeper settled for this ledger; empty when it is not set. An empty value takes it away.
    [[nodiscard]] std::string setting(const std::string& name) const;
    void setSetting(const std::string& name, const std::string& value);
    [[nodiscard]] std::optional<LedgerPerson> person(const std::string& code) const;
    /// Erases the person's row, blanks words and salts of the entries of the person and empties the journal;
    /// entries keep the camp code, the chain stays valid. Copies of the folder are not reached.
    Forgotten forgetPerson(const std::string& code);
    /// What forgetPerson would erase.
    [[nodiscard]] Forgotten toForget(const std::string& code) const;

  private:
    friend class LedgerTransaction;
    friend class LedgerMerge;
    struct Inside;
    explicit Ledger(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

} // namespace quarterstep
