// SPDX-License-Identifier: GPL-3.0-or-later
// What importers and exporters share. An importer gives rows of the prescription table: a record, or the
// findings that say why not; what it left out on purpose, and what it kept without using it, stands among the
// findings.
#pragma once

#include "inventory/text/prescription_table.hpp"

#include <functional>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace quarterstep
{

/// The rules of fit in force where something is exported.
struct RulesStamp {
    std::string profile;
    std::string version;
    std::string hash; ///< of all rules, hex
};

/// A person as they leave: the record and the rules that go with it.
struct ExchangePerson {
    PersonRecord record;
    RulesStamp rules;
};

struct ImportOptions {
    std::string today; ///< ISO date; gives the age of a prescription, and refuses one of tomorrow
    /// Called from time to time with what is done of all: resources, rows or files.
    /// Where it throws, nothing was read, and that is thrown on.
    std::function<void(std::size_t done, std::size_t of)> progress;
};

using ImportedRows = Reading<std::vector<TableRow>>;

/// Where the parts of a record stand, by column of the prescription table.
using PartPlaces = std::map<std::string, Position>;

/// Completes a row: the checks that every row of the prescription table gets, told at the places of its
/// parts, and a refusal where a person comes twice. Leaves no record behind an error.
class RowEnd
{
  public:
    explicit RowEnd(const ImportOptions& options) : options_(options) {}
    void finish(PersonRecord record, const PartPlaces& places, TableRow& row);

  private:
    const ImportOptions& options_;
    std::map<std::string, Position> seen_;
};

/// One eye as text: power and prism, or the word of the state. It reads back the same, but a prism that is a
/// thousandth neither by its components nor by amount and angle is rounded to one.
[[nodiscard]] std::string eyeWords(const WrittenEye& eye, Eye side);

/// Dioptres or prism dioptres as a decimal without plus: two decimals, more where they are needed.
[[nodiscard]] std::string decimalText(double value);

/// Reads a number that a machine wrote: finite, |value| <= most. Exponents are taken; what is finer than a
/// thousandth is refused unless `fine`.
[[nodiscard]] Parsed<double> machineNumber(const std::string& text, double most, bool fine = false);

/// A prescription table (CSV) of all rows that have a record: only columns that somebody fills and that are
/// not left out, then those that the table does not know. Progress as in ImportOptions.
[[nodiscard]] std::string
tableText(const std::vector<TableRow>& rows, const std::set<std::string>& without = {},
          const std::function<void(std::size_t done, std::size_t of)>& progress = {});

/// Columns that are never exported: they name people or hold their own words. tellStays says so (note
/// not-carried).
[[nodiscard]] bool staysHere(const std::string& column);
void tellStays(const PersonRecord& record, const std::string& column, std::vector<Finding>& findings);
/// rules_profile, rules_version and rules_hash of an earlier export.
[[nodiscard]] bool isRulesColumn(const std::string& column);
/// Keeps the rules by which a record left elsewhere in those columns.
void keepRules(PersonRecord& record, const RulesStamp& rules);

/// Whether there is an error among findings.
[[nodiscard]] bool hasError(const std::vector<Finding>& findings);

} // namespace quarterstep
