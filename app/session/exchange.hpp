// SPDX-License-Identifier: GPL-3.0-or-later
// Prescriptions of other programs and instruments as rows of the prescription table, and the way back. Text
// comes as bytes, so that the clipboard takes the same way as a file.
#pragma once

#include "inventory/exchange/exchange.hpp"
#include "inventory/exchange/mapped_table.hpp"

#include <optional>
#include <span>

namespace quarterstep
{

struct FittingRules;

/// `dicom` is only a word here: its library lives in a program of its own.
enum class ExchangeFormat { fhir, fhirAlone, jsonLines, table, dicom };

/// As written on the command line: fhir, fhir-alone, json-lines, table, dicom.
[[nodiscard]] const char* wordOf(ExchangeFormat format);
[[nodiscard]] std::optional<ExchangeFormat> exchangeFormatOf(const std::string& word);

/// Reads text of a format. `name` stands in the findings ("clipboard").
[[nodiscard]] ImportedRows importText(ExchangeFormat format, const std::string& bytes,
                                      const std::string& name, const ImportOptions& options);
/// A table with the map that it was understood by, for somebody to look at first.
[[nodiscard]] Reading<MappedTable> importTable(const std::string& bytes, const std::string& name,
                                               const TableMap& given, const ImportOptions& options);
/// Reads a file, or standard input for "-".
[[nodiscard]] ImportedRows importFile(ExchangeFormat format, const std::string& path,
                                      const ImportOptions& options);

/// Each person with the rules that go with them: `profile`, or the one for age and purpose when it is empty.
[[nodiscard]] std::vector<ExchangePerson> stampedWith(const FittingRules& rules, const std::string& profile,
                                                      std::vector<PersonRecord> persons);

/// The persons in a format. fhirAlone takes one.
[[nodiscard]] Reading<std::string> exportText(ExchangeFormat format, std::span<const ExchangePerson> persons,
                                              const std::string& today);

/// Writes a new file; throws Error file-exists (3) where there is one, and what replaceFile throws.
void writeNewFile(const std::string& path, const std::string& bytes);
/// Today, ISO.
[[nodiscard]] std::string todayIso();

} // namespace quarterstep
