// SPDX-License-Identifier: GPL-3.0-or-later
// An open camp folder: stock.yaml, rules.yaml and the ledger together. The desk and every verb work
// through it.
#pragma once

#include "core/fitting/recommendation.hpp"
#include "core/fitting/stock_index.hpp"
#include "inventory/store/ledger_news.hpp"
#include "inventory/store/write_back.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/rules_file.hpp"

namespace quarterstep
{

/// The files of a camp folder, read and checked.
struct CampFiles {
    std::string folder;
    StockFile stock;
    FittingRules rules;
    std::vector<Finding> findings;
    std::optional<Ledger> ledger; ///< where it was opened meanwhile: the one of the usual name
};
/// The long part of opening, on whatever thread. Throws CampNotOpened (3) with everything found.
[[nodiscard]] CampFiles readCampFiles(const std::string& folder);
/// The same, and opens the ledger of the usual name meanwhile for writing, if it is there and of the form of
/// today: nothing is made or brought up before the files are known to be in order.
[[nodiscard]] CampFiles readCampFilesAndLedger(const std::string& folder);

/// Where the ledger is that stock.yaml of this folder names: a file beside it, or an address.
[[nodiscard]] std::string ledgerLocation(const std::string& folder, const std::string& ledger);

/// The caution chain-broken when one of the last entries of the ledger at `location` is not as it was
/// written; nothing when all are, or when it cannot be read now. With a connection of its own: on any thread,
/// beside an open camp.
[[nodiscard]] std::optional<Finding> lookAtLastEntries(const std::string& location,
                                                       const std::string& folder);

class Camp
{
  public:
    /// Opens a folder. readWrite makes the ledger when missing and heals stock.yaml after a crash; readOnly
    /// needs neither a ledger nor a folder that can be written to. A ledger that was last written at another
    /// place is opened for reading, with the finding ledger-moved; when one of its last entries is not as it
    /// was written, with chain-broken. Throws CampNotOpened (3) with everything found in the files,
    /// and what Ledger::open and writeBack throw.
    [[nodiscard]] static Camp open(const std::string& folder, Ledger::Mode mode);
    /// Whether opening looks at the last entries of the chain, or whoever opens does so afterwards
    /// (lookAtLastEntries): that takes as long as all the rest where the last entries are large.
    enum class LastEntries { lookedAt, left };
    /// The same with files that were read before, on the thread that will use the camp.
    [[nodiscard]] static Camp open(CampFiles files, Ledger::Mode mode,
                                   LastEntries last = LastEntries::lookedAt);

    [[nodiscard]] const std::string& folder() const { return folder_; }
    [[nodiscard]] const std::string& site() const { return file_.site; }
    /// Of the ledger: see ledgerLocation.
    [[nodiscard]] std::string ledgerAt() const { return ledgerLocation(folder_, file_.ledger); }
    /// Lines with on hand, held and quarantined as the ledger has them now.
    [[nodiscard]] const std::vector<StockLine>& stock() const { return stock_; }
    /// Of the stock, made when first asked for and kept while the lines are the same to the eye. One thread.
    [[nodiscard]] const StockIndex& index() const;
    [[nodiscard]] const FittingRules& rules() const { return rules_; }
    [[nodiscard]] const std::vector<Finding>& findings() const { return findings_; }
    [[nodiscard]] const std::vector<EditedCount>& edited() const { return edited_; }
    [[nodiscard]] bool hasLedger() const { return ledger_.has_value(); }
    /// Throws Error ledger-missing (3) when there is none.
    [[nodiscard]] Ledger& ledger();
    [[nodiscard]] const Ledger& ledger() const;

    /// Posts an entry, writes stock.yaml back and refreshes the counts. Once the entry stands in the ledger,
    /// a file that cannot be written is a finding (stock-file-behind), not an error: it is healed at the next
    /// opening.
    Entry post(Entry entry);
    /// The same for several, in one transaction: see Ledger::postAll.
    std::vector<Entry> postAll(std::vector<Entry> entries,
                               std::optional<std::int64_t> expected = std::nullopt);
    /// Whether something was posted since this camp looked last, by another station or program. One question
    /// to a file; of a shared ledger what a look in the background found within the last half a second, so
    /// that nobody waits for a server.
    [[nodiscard]] bool isBehind() const;
    /// Reads file and balances again (a person, another station or verb may have written).
    void refresh();
    /// After the ledger was written to in another way than by posting: refresh, but a file that cannot be
    /// written is a finding (stock-file-behind).
    void refreshAfterWriting();
    /// Index of a line by name.
    [[nodiscard]] std::optional<std::size_t> lineNamed(const std::string& name) const;

    /// Edited counts: make them true in the ledger (with a reason), or put the ledger's counts back.
    void acceptEdits(const std::vector<EditedCount>& lines, const std::string& reason);
    void discardEdits(const std::vector<EditedCount>& lines);
    /// "Moved here": see Ledger::claimPlace.
    void claimPlace();
    /// "Second station": see Ledger::becomeSecondStation.
    void becomeSecondStation();

    /// While one lives, posting leaves stock.yaml alone; it is written once at the end (a batch of
    /// hand-overs). A crash in between is healed at the next opening, as any other.
    class WriteBackPause
    {
      public:
        explicit WriteBackPause(Camp& camp) : camp_(camp) { ++camp_.pauses_; }
        WriteBackPause(const WriteBackPause&) = delete;
        WriteBackPause& operator=(const WriteBackPause&) = delete;
        ~WriteBackPause();

      private:
        Camp& camp_;
    };

  private:
    void openLedger(Ledger::Mode mode, LastEntries last, std::optional<Ledger> opened);
    void take(WriteBackResult result);
    void takeFile(StockFile file, const std::vector<LineCount>& counts);
    void takeUnwritten(StockFile file);
    [[nodiscard]] StockFile asOnDisk() const;
    void takeBalances(const Snapshot& snapshot);
    void tell(const Finding& finding);
    void tellBehind(const Error& error);
    void tellMigrated();
    void placeIsSettled();
    void keepRules(std::vector<Entry>& entries);

    std::string folder_;
    StockFile file_;               ///< as it stands on the disk, but for its lines
    std::vector<StockLine> stock_; ///< its lines with the counts of the ledger
    std::vector<int> inFile_;      ///< on hand of each line as it stands on the disk
    mutable std::optional<StockIndex> index_;
    FittingRules rules_;
    std::optional<Ledger> ledger_;
    mutable std::unique_ptr<LedgerNews> news_; ///< of a shared ledger, once somebody asks
    std::vector<Finding> findings_;
    std::vector<EditedCount> edited_;
    std::int64_t position_ = 0; ///< of the ledger when its counts were taken last
    int pauses_ = 0;
    bool rulesKept_ = false; ///< whether the ledger holds the text of these rules
};

/// What people are told about a chain that is not in order.
[[nodiscard]] Sentence brokenChain(const ChainCheck& chain);

/// Thrown by Camp::open: everything found in the folder's files.
class CampNotOpened : public Error
{
  public:
    explicit CampNotOpened(std::vector<Finding> findings);
    [[nodiscard]] const std::vector<Finding>& findings() const { return findings_; }

  private:
    std::vector<Finding> findings_;
};

} // namespace quarterstep
