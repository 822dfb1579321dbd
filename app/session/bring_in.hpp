// SPDX-License-Identifier: GPL-3.0-or-later
// Prescriptions brought in at the desk: a file, the clipboard or the files of instruments, read as a dry run
// first; then kept as a prescription table of its own in the camp folder, beside people.csv, which is never
// written into.
#pragma once

#include "app/session/exchange.hpp"

#include <QString>

#include <memory>
#include <set>

namespace quarterstep
{

/// What is brought in. Bytes that were read once are not read again.
struct BringSource {
    std::vector<std::string> paths;           ///< one, or of instruments several; empty for the clipboard
    std::shared_ptr<const std::string> bytes; ///< of the first path, or of the clipboard

    [[nodiscard]] std::string name() const { return paths.empty() ? "clipboard" : paths.front(); }
};

/// A dry run: what would be brought in, and everything that was found.
struct BroughtIn {
    ExchangeFormat format = ExchangeFormat::table;
    std::vector<TableRow> rows;
    std::vector<Finding> findings;    ///< of the file as a whole
    std::optional<MappedTable> table; ///< how a table was understood; its rows stand above
    std::vector<std::size_t> told;    ///< rows about which something was found
    std::size_t taken = 0;
    std::size_t refused = 0;
};

/// What bytes hold, by how they begin: DICOM by its mark, JSON by its brace, anything else is a table.
[[nodiscard]] ExchangeFormat formatFound(const std::string& bytes);

/// Reads the bytes of a source where they were not read yet. Errors: file-*.
[[nodiscard]] Reading<BringSource> withBytes(BringSource source);

/// Reads a source that has its bytes. Codes that are `known` already are refused (person-waiting). What the
/// progress throws ends it.
[[nodiscard]] BroughtIn readBroughtIn(const BringSource& source, const TableMap& given,
                                      const std::set<std::string>& known, const ImportOptions& options);

/// What was read of a person, in one line, ready to show.
[[nodiscard]] QString recordWords(const PersonRecord& person);

/// Writes the rows that have a record as brought-in-DAY.csv (or -2, -3 …) into the folder; returns the path.
/// What the progress throws ends it before anything is written. Throws Error as writeNewFile.
[[nodiscard]] std::string keepBroughtIn(const std::string& folder, const std::vector<TableRow>& rows,
                                        const ImportOptions& options);
/// The tables in a folder that keepBroughtIn wrote, in the order of their names.
[[nodiscard]] std::vector<std::string> broughtInTables(const std::string& folder);

} // namespace quarterstep
