// SPDX-License-Identifier: GPL-3.0-or-later
// Comma-separated values (RFC 4180): quotes, doubled quotes, line breaks inside quotes; LF or CRLF line ends.
#pragma once

#include "inventory/text/source_text.hpp"

namespace quarterstep
{

/// A cell without its quotes and without blanks around it; `place` is that of its first character.
struct CsvCell {
    std::string text;
    Position place;
};

/// One record. `findings` holds what was wrong in its quoting (csv-quote-inside, csv-after-quote).
struct CsvRow {
    int line = 0;
    std::vector<CsvCell> cells;
    Position end; ///< just behind the last cell
    std::vector<Finding> findings;
};

/// All records; wholly empty lines are left out. Findings of the file: csv-quote-open, csv-lone-return.
[[nodiscard]] Reading<std::vector<CsvRow>> parseCsv(const SourceText& source, char separator = ',');

} // namespace quarterstep
