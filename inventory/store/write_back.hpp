// SPDX-License-Identifier: GPL-3.0-or-later
// stock.yaml follows the ledger: read again under the folder's lock, splice the digits that changed, replace
// atomically (temporary, fsync, rename, fsync the folder).
#pragma once

#include "inventory/store/ledger.hpp"
#include "inventory/text/stock_file.hpp"

namespace quarterstep
{

/// A line whose count in the file was changed by a person: not what the ledger said at the position written.
struct EditedCount {
    std::string line;
    int inFile = 0;
    int inLedger = 0; ///< at the position the file reflects
};

/// What the ledger says of a line; nothing where it does not know it.
struct LineCount {
    int onHand = 0;
    int held = 0;
    int quarantined = 0;
    bool known = false;
};
[[nodiscard]] std::vector<LineCount> countsOfLines(const std::vector<StockLine>& lines, const Snapshot& now);
/// Into as many lines; those that are not known keep theirs.
void putCounts(std::vector<StockLine>& lines, const std::vector<LineCount>& counts);

struct WriteBackResult {
    StockFile file;                ///< as it stands now
    std::vector<LineCount> counts; ///< of its lines, in the ledger
    std::int64_t position = 0;     ///< of the ledger, which the file now follows
    bool replaced = false;
    std::vector<EditedCount>
        edited; ///< waiting to be accepted or discarded; what moves meanwhile moves from them
    std::vector<Finding> findings;
};

/// The stock file of a camp folder.
[[nodiscard]] std::string stockPath(const std::string& folder);

/// Brings the file in `folder` up to the ledger. Lines edited by hand keep their count, less or more what
/// moved since, and are reported. Lines new in the file are introduced to the ledger. Throws Error:
/// folder-locked (4), file-unwritable (4), not-a-regular-file (4), and what readStockFile finds as Error (3).
[[nodiscard]] WriteBackResult writeBack(const std::string& folder, Ledger& ledger);
/// The same; when the bytes are still those of `lastRead` they are not parsed again.
[[nodiscard]] WriteBackResult writeBack(const std::string& folder, Ledger& ledger, StockFile lastRead);

/// Compares without writing anything (reading verbs).
[[nodiscard]] std::vector<EditedCount> editedCounts(const StockFile& file, const Ledger& ledger);

/// Posts a `counted` entry for each edited line, so that the ledger says what the file says (plus what moved
/// since the position the file reflects); then writes back. Lines that are no longer edited are left out.
WriteBackResult acceptEdited(const std::string& folder, Ledger& ledger, const std::vector<EditedCount>& lines,
                             const std::string& reason);
/// Puts the ledger's counts back over edited lines.
WriteBackResult discardEdited(const std::string& folder, Ledger& ledger,
                              const std::vector<EditedCount>& lines);

/// Writes bytes to a file the safe way. Only a regular file (or a new name) is replaced; anything else is
/// written straight to. The mode of the file is kept; a new one is read by its owner alone when `ownerOnly`.
/// Throws Error file-unwritable (4). Nothing is lost on failure: old bytes or new, never a mixture.
void replaceFile(const std::string& path, const std::string& bytes, bool ownerOnly = false);

/// Advisory lock on a folder, released on destruction. Waits up to `waitMs`, then throws Error folder-locked
/// (4).
class FolderLock
{
  public:
    explicit FolderLock(const std::string& folder, int waitMs = 5000);
    FolderLock(const FolderLock&) = delete;
    FolderLock& operator=(const FolderLock&) = delete;
    ~FolderLock();

  private:
    int descriptor_ = -1;
};

} // namespace quarterstep
