// SPDX-License-Identifier: GPL-3.0-or-later
// What the keeper's verbs share: reading lists, opening the camp, saying what was done.
#pragma once

#include "app/command/inputs.hpp"
#include "app/session/entry_words.hpp"
#include "app/session/keeping.hpp"

#include <QJsonObject>

namespace quarterstep
{

/// Throws Error (2) with this code.
[[noreturn]] void refuseUsage(std::string code, Sentence sentence);
/// The value of an option cannot be read: says where in it, and why.
[[noreturn]] void refuseOption(const std::string& option, const Complaint& complaint);

/// Throws Error option-value (2) that names the causes of a loss.
[[noreturn]] void refuseCause(const std::string& word);

/// The camp of --camp, for reading when --dry-run. Its findings and counts edited by hand are told.
[[nodiscard]] Camp openForWork(const CommandLine& line, Output& out);

/// Caution count-edited for each count changed by hand.
void tellEdits(const Camp& camp, Output& out);

/// Rows of the list (a file or "-"), or the one of --line and --quantity. Findings are told; throws
/// FilesNotRead when there is an error, Error option-missing (2) when neither is given or both are.
[[nodiscard]] std::vector<QuantityRow> rowsOf(const CommandLine& line, const std::string& list, Output& out);

/// --quantity as a number of pieces, 1 when left out. Throws Error (2).
[[nodiscard]] int quantityOf(const CommandLine& line);

/// Tells these findings; after an error also that nothing was written, and throws FilesNotRead.
void endOnErrors(const std::vector<Finding>& findings, Output& out);

/// With --skip-bad-rows names the rows that these errors belong to and takes them out; otherwise, and when an
/// error belongs to no row, as endOnErrors. True when rows were taken out.
bool keepGoodRows(const CommandLine& line, const std::vector<Finding>& findings,
                  std::vector<QuantityRow>& rows, Output& out);

/// Carries the entries out (or tries them, with --dry-run) and says what became of the counts.
int carryOutAndShow(const CommandLine& line, Camp& camp, std::vector<Entry> entries, Output& out,
                    QJsonObject more = {}, std::optional<std::int64_t> expected = std::nullopt);

/// An entry in JSON: {id, number, kind, at, site, person, movements[]}.
[[nodiscard]] QJsonObject jsonEntry(const Entry& entry);
/// The position of the ledger, to be sure that nothing comes between reading and posting.
[[nodiscard]] std::optional<std::int64_t> positionOf(const Camp& camp);

} // namespace quarterstep
