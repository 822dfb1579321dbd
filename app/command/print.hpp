// SPDX-License-Identifier: GPL-3.0-or-later
// The verb print: which papers, from a camp and a table; who draws them.
#pragma once

#include "app/command/command_line.hpp"
#include "app/command/output.hpp"
#include "app/paper/content/paper_job.hpp"
#include "app/paper/content/papers.hpp"
#include "app/session/camp.hpp"

namespace quarterstep
{

/// What the papers are made from.
struct PrintBox {
    std::vector<StockLine> stock;
    FittingRules rules;
    std::optional<Camp> camp; ///< with --camp
    PaperSource source;
};

/// Papers for persons of the table. `bad` is set when a row could not be read.
[[nodiscard]] std::vector<Paper> personPapers(PaperKind kind, const CommandLine& line, const PrintBox& box,
                                              Output& out, bool& bad);
/// Labels, lists, worksheets and cards.
[[nodiscard]] std::vector<Paper> boxPapers(PaperKind kind, const CommandLine& line, const PrintBox& box,
                                           Output& out);

/// --language, English when left out. Throws Error option-value (2).
[[nodiscard]] const Language& languageOf(const CommandLine& line);

/// Draws a job; throws Error. Null in the program that has no drawing of its
/// own: `print` then goes on in the one that has (quarterstep-paper, beside it), so that no other verb waits
/// for fonts and a window system to be loaded.
using DrawPapers = PaperDrawn (*)(const PaperJob&, const PaperProgress&);
void drawPapersWith(DrawPapers draw);

} // namespace quarterstep
