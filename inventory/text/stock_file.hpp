// SPDX-License-Identifier: GPL-3.0-or-later
// stock.yaml: what exists and how many. The format is described in app/help/files.md.
#pragma once

#include "core/fitting/stock_line.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace quarterstep
{

/// Place of a plain value in the bytes of the file: [begin, end).
struct ByteSpan {
    std::size_t begin = 0;
    std::size_t end = 0;
};

struct StockFile {
    std::string site;
    std::string ledger = "ledger.sqlite"; ///< as written: file beside stock.yaml or postgresql://…
    std::int64_t writtenAfter = -1;       ///< ledger position reflected; -1 = no `written` yet
    std::string countsHash;               ///< as written; 8 hex digits or empty
    std::vector<StockLine> lines;

    std::string bytes;                ///< the file as read, byte order mark included
    std::vector<ByteSpan> countSpans; ///< digits of `on hand`, one a line
    ByteSpan afterSpan;               ///< digits of written.after, empty when absent
    ByteSpan hashSpan;                ///< digits of written.counts, empty when absent
    std::size_t linesKeyBegin =
        0;                 ///< byte where the line with `lines:` begins; in a flow map, the key itself
    bool flowFile = false; ///< the whole file is one map in braces
};

/// Reads and checks; every error with its place, all in one run, sorted by position. A missing file, a folder
/// or an unreadable file is a finding too (code file-missing, file-is-folder, file-unreadable).
[[nodiscard]] Reading<StockFile> readStockFile(const std::string& path);
[[nodiscard]] Reading<StockFile> readStockText(std::string bytes, const std::string& name);

/// Hash over (line, on hand) pairs in file order: first 8 hex digits of SHA-256.
[[nodiscard]] std::string countsHash(const std::vector<StockLine>& lines);

/// New bytes with these counts and this position: only digits (and the `written` line, put directly above
/// `lines:` the first time) differ. `counts` in the order of file.lines; the hash is over `hashed` when it is
/// given (the ledger's counts, where lines edited by hand keep their own).
[[nodiscard]] std::string spliceCounts(const StockFile& file, const std::vector<int>& counts,
                                       std::int64_t after, const std::vector<int>& hashed = {});

/// New bytes of a stock file in which the key `ledger` names another ledger; put directly above `lines:` when
/// it is not there yet. Finding ledger-not-plain when the value is written in a way that cannot be replaced.
[[nodiscard]] Reading<std::string> spliceLedger(const StockFile& file, const std::string& name,
                                                const std::string& ledger);

} // namespace quarterstep
