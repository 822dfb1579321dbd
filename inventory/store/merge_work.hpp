// SPDX-License-Identifier: GPL-3.0-or-later
// One merge of two ledgers at work; see merge.hpp. merge.cpp looks and refuses, merge_writing.cpp writes.
#pragma once

#include "core/record/merge_order.hpp"
#include "inventory/store/ledger_inside.hpp"
#include "inventory/store/merge.hpp"

#include <set>

namespace quarterstep
{

/// An entry as it is stored in the other ledger.
struct Incoming {
    std::int64_t position = 0;
    std::string idBytes;
    std::string kind;
    std::string person;
    std::string cancelsBytes;
    std::string payload;
    std::string hash;
};

/// Words of an incoming entry; blanked ones are empty.
struct IncomingText {
    std::string name;
    std::string salt;
    std::string words;
    bool blank = false;
};

class LedgerMerge
{
  public:
    LedgerMerge(Ledger& into, const Ledger& from);
    MergeReport run(bool dryRun, const ChainCheck& theirChain);

  private:
    void refuseUnfit(const ChainCheck& theirChain) const;
    /// Which entries are new, and in which order they can be applied.
    std::vector<std::size_t> plan();
    void readNew();
    std::int64_t lastNumber(const std::string& station);
    /// An entry whose station and number are here already must be the same one.
    void compare(const Statement& row, const std::string& station);
    [[nodiscard]] Error otherHash(const std::string& id) const;
    void take(const Statement& row, const std::string& station);
    bool isHere(const std::string& id);
    void lookUp(const std::string& cancels);
    MergeCounts counts();
    Error obstacle(const MergeOrder& found);
    std::string lastTaker(const SiteLine& line);
    void tellStations();
    /// Whether entries of one station come to a site on which another one wrote here what is not known there:
    /// neither saw what the other took. Stations that shared one ledger did.
    bool wentApart(const std::string& site);
    std::map<std::string, std::set<std::string>> stationsBySite();
    void insert(std::size_t index);
    void makeLine(const std::string& site, const std::string& line);
    std::int64_t keyOf(const std::string& station);
    std::vector<IncomingText> textsOf(std::int64_t position);
    /// What was forgotten there is forgotten here.
    void blankForgotten();

    Ledger::Inside& into_;
    Ledger::Inside& from_;
    std::string path_;
    Connection& ours_;
    Connection& theirs_;
    MergeReport report_;
    std::vector<MergeStep> steps_;
    std::vector<Incoming> incoming_; ///< one for each step
    std::set<std::string> known_;
    std::map<std::string, std::string> cancelled_;
    std::map<std::string, std::int64_t> theirLast_; ///< last number of each of their stations, by its bytes
    std::set<SiteLine> lines_;
    std::map<std::string, std::int64_t> keys_; ///< station id -> key here
    std::optional<Statement> sameNumber_;
    std::optional<Statement> byId_;
    std::optional<Statement> texts_;
};

} // namespace quarterstep
