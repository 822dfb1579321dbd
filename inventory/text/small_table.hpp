// SPDX-License-Identifier: GPL-3.0-or-later
// What the readers of small tables share: from bytes to rows, where each named column stands, and rows that
// have as many cells as the header.
#pragma once

#include "inventory/text/csv.hpp"

#include <initializer_list>
#include <map>
#include <span>

namespace quarterstep
{

/// The header and the rows behind it; empty where an error was found. Findings: those of bytes and CSV,
/// table-empty, which names `columns`.
[[nodiscard]] std::vector<CsvRow> tableRows(const SourceText& source, const char* columns,
                                            std::vector<Finding>& findings);
[[nodiscard]] std::vector<CsvRow> tableRows(const std::string& bytes, const std::string& name,
                                            const char* columns, std::vector<Finding>& findings);

class SmallTable
{
  public:
    explicit SmallTable(std::vector<Finding>& findings) : findings_(findings) {}

    /// Where the columns stand; their names in any case of letters. Findings: those of the row's quoting,
    /// column-twice, and column-unknown for what is not among `known` (empty: any column may stand there).
    void readHeader(const CsvRow& header, std::span<const char* const> known = {});
    /// column-missing for each that is not there. @param sentence  %1 is the name of the column
    void need(std::initializer_list<const char*> columns, const char* sentence);
    [[nodiscard]] bool has(const char* column) const { return at_.count(column) > 0; }

    /// Whether the row can be read: as many cells as the header, nothing wrong in its quoting. Findings:
    /// those of its quoting, row-short, row-long.
    [[nodiscard]] bool isWhole(const CsvRow& row);
    /// The cell of a row that is whole; nullptr where the table has no such column.
    [[nodiscard]] const CsvCell* find(const CsvRow& row, const char* column) const;
    /// The cell of a column that is there.
    [[nodiscard]] const CsvCell& at(const CsvRow& row, const char* column) const
    {
        return row.cells[at_.at(column)];
    }

    void tell(const Position& place, std::string code, Sentence sentence,
              Severity severity = Severity::error);
    /// At the character that was not understood.
    void tell(const CsvCell& cell, const Complaint& complaint);

  private:
    std::vector<Finding>& findings_;
    std::map<std::string, std::size_t, std::less<>> at_;
    Position headerEnd_;
    std::size_t columns_ = 0;
};

} // namespace quarterstep
