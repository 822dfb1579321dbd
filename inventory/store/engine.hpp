// SPDX-License-Identifier: GPL-3.0-or-later
// What the two databases do differently, and nothing else: SQLite keeps a ledger in a file of the camp
// folder, PostgreSQL keeps one that several camp folders share. Statements are the same for both and stand
// with those who use them.
#pragma once

#include "inventory/store/ledger.hpp"
#include "inventory/store/link.hpp"

#include <unordered_map>

namespace quarterstep
{

enum class LedgerState { empty, older, ready };

/// The station that writes here.
struct OwnStation {
    std::int64_t key = 0; ///< 0: this place has none yet
    std::string id;       ///< 16 bytes
    bool moved = false;   ///< the ledger was last written at another place
};

/// What movements add up to.
struct MovedSum {
    std::int64_t onHand = 0;
    std::int64_t held = 0;
    std::int64_t quarantined = 0;
};
using LineSums = std::unordered_map<std::string, MovedSum>;

class StoreEngine
{
  public:
    /// The engine for a location: postgresql://… or a path.
    [[nodiscard]] static std::unique_ptr<StoreEngine> of(const std::string& location);
    StoreEngine() = default;
    StoreEngine(const StoreEngine&) = delete;
    StoreEngine& operator=(const StoreEngine&) = delete;
    virtual ~StoreEngine() = default;

    [[nodiscard]] virtual std::string shown() const = 0; ///< the location without anything secret
    /// Opens the database. Null when it fails, and then says why, without the kind.
    [[nodiscard]] virtual std::unique_ptr<StoreLink> connect(Connection::Access access, int busyMs,
                                                             StoreFailure& failure) = 0;
    /// Kind of a failure the driver told, by its code.
    [[nodiscard]] virtual FailureKind kindOf(const std::string& code) const = 0;
    /// How long a statement is repeated that found the ledger held by others, in ms; 0 where the database
    /// waits by itself.
    [[nodiscard]] virtual int patienceMs() const = 0;
    virtual void setPatience(int ms) = 0;
    /// Whether BEGIN and COMMIT are prepared as well; a server is told them as they are, since only then its
    /// driver says that a COMMIT rolled back.
    [[nodiscard]] virtual bool preparesTransactions() const = 0;

    [[nodiscard]] virtual const char* beginWriting() const = 0;
    [[nodiscard]] virtual const char* beginReading() const = 0;

    /// Before connecting: makes the file when it is missing and may be made.
    virtual void makeReady(Ledger::Mode mode) = 0;
    /// Throws where a reader must not be given the bare file.
    virtual void allowBareReading() const = 0;
    /// Throws Error ledger-replaced (4) when what is open is not what the location names any more.
    virtual void requireSame() const = 0;
    /// Also throws Error ledger-not-a-database (3) when a rule of the tables is missing.
    [[nodiscard]] virtual LedgerState state(Connection& connection) = 0;
    /// What the database itself finds wrong in its pages; empty when nothing, or when that is the server's
    /// own business. Reads everything.
    [[nodiscard]] virtual std::string damage(Connection& connection) = 0;
    /// Sets and reads back what makes commits last; makes the tables of an empty ledger where that is done in
    /// passing.
    virtual void settleToWrite(Connection& connection, LedgerState state) = 0;
    virtual void settleToRead(Connection& connection) = 0;
    /// The station of the place that writes here: of the file, or of the camp folder.
    [[nodiscard]] virtual OwnStation station(Connection& connection, const std::string& folder,
                                             bool writing) = 0;
    /// Inside a transaction: the place of the ledger is here from now on, also under a station id of its own.
    virtual void claim(Connection& connection, bool asSecondStation) = 0;

    /// Lets today's statements read an older form, and the end of that.
    virtual void readOlderForm(Connection& connection) = 0;
    /// Brings it to today's form; the name of the copy made before.
    [[nodiscard]] virtual std::string bringUp(Connection& connection) = 0;

    /// What moved each line of a site after a position. A file steps through the rows, which takes a third of
    /// the time of its own sums; a server adds up where the rows are.
    [[nodiscard]] virtual LineSums movedSince(Connection& connection, const std::string& site,
                                              std::int64_t position) const = 0;

    /// Tells whether two connections speak to the same ledger.
    [[nodiscard]] virtual std::string identity(Connection& connection) const = 0;
    /// Before something is erased: bytes of what goes are overwritten.
    virtual void overwriteErased(Connection& connection) = 0;
    /// After it: false while somebody else keeps the old bytes in the journal.
    [[nodiscard]] virtual bool emptyJournal(Connection& connection) = 0;
    /// A copy in a new file. Throws Error file-exists (3), file-unwritable (4), ledger-full (4).
    virtual void copyTo(Connection& connection, const std::string& target) = 0;
    /// Takes over everything of another ledger, before connecting: into a new file, or into tables without an
    /// entry.
    virtual void takeOver(Connection& from) = 0;
    /// Inside a transaction: this ledger is used from here no more, so that nobody goes on in it unawares.
    virtual void leave(Connection& connection) = 0;
};

} // namespace quarterstep
