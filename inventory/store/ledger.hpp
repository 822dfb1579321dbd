// SPDX-License-Identifier: GPL-3.0-or-later
// The ledger: everything that happened, append-only, hash-chained, in SQLite through Qt SQL.
// One transaction a hand-over: the entry and its movements; a trigger keeps balances and a CHECK keeps them
// >= 0.
#pragma once

#include "core/finding.hpp"
#include "core/record/entry.hpp"

#include <memory>
#include <optional>
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
    std::optional<std::int64_t> firstBad;
    std::string what; ///< plain description of the first bad entry
};

/// One person for the person table; nothing but the camp code is needed.
struct LedgerPerson {
    std::string code;
    std::string name;
};

class Ledger
{
  public:
    enum class Mode { readOnly, readWrite };

    /// Opens the ledger; in readWrite mode it is made when missing. Throws Error: ledger-missing (3),
    /// ledger-not-a-database (3), ledger-newer (3), ledger-locked (4), ledger-unwritable (4), ledger-network
    /// (4).
    [[nodiscard]] static Ledger open(const std::string& path, Mode mode);
    Ledger(Ledger&&) noexcept;
    Ledger& operator=(Ledger&&) noexcept;
    ~Ledger();

    /// Posts entry and movements in one transaction; returns it with id, number and time set. All or nothing.
    /// Throws Error: stock-short (1: the balance would go below zero; argument = line), unknown-line (3),
    /// entry-gone (3: cancels an unknown or already cancelled entry), ledger-locked (4), ledger-full (4),
    /// ledger-replaced (4: the file was moved or replaced), ledger-failed (4).
    Entry post(const std::string& site, Entry entry);
    /// Makes the lines known with their first counts (an `opened` entry); lines already known are left alone.
    void introduce(const std::string& site, const std::vector<Balance>& counts);

    [[nodiscard]] std::vector<Balance> balances(const std::string& site) const;
    /// Balances of one site as they were after entry number `position`.
    [[nodiscard]] std::vector<Balance> balancesAt(const std::string& site, std::int64_t position) const;
    [[nodiscard]] std::int64_t position() const; ///< number of the last entry, 0 when empty
    [[nodiscard]] std::vector<Entry> entriesAfter(std::int64_t position) const;
    [[nodiscard]] std::optional<Entry> entry(const std::string& id) const;
    [[nodiscard]] ChainCheck checkChain() const;
    /// Persons live beside the chain, so that one can be erased without breaking it.
    void putPerson(const LedgerPerson& person);

  private:
    struct Inside;
    explicit Ledger(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

} // namespace quarterstep
