// SPDX-License-Identifier: GPL-3.0-or-later
// What is to be printed, how and where to: plain values for whoever draws.
#pragma once

#include "app/paper/content/paper.hpp"
#include "app/translations/catalogue.hpp"

#include <functional>
#include <string>

namespace quarterstep
{

enum class PaperSize { a4, a5, a6, roll80, roll58, label };

/// The size of a word ("a6", "roll-58" …); empty when no size has it.
[[nodiscard]] const PaperSize* sizeNamed(const std::string& word);
/// What a paper is printed on when nothing is said. Labels go onto a sheet of A4, many to a page.
[[nodiscard]] PaperSize usualSize(PaperKind kind);

/// Millimetres. 63.5 × 38.1 lies three times seven on A4, a usual sheet of labels (common practice).
struct LabelSize {
    double width = 63.5;
    double height = 38.1;
};

struct PaperJob {
    std::vector<Paper> papers;
    const Language* language = nullptr;
    PaperSize size = PaperSize::a4;
    LabelSize label;
    bool large = false;  ///< large print
    int dotsPerInch = 0; ///< of the printer: bars are whole dots; 0 = not known (PDF)
    std::string output;  ///< .pdf or .png, or empty
    std::string printer; ///< or empty
};

/// What came of a job.
struct PaperDrawn {
    std::vector<std::string> files;   ///< none for a printer
    std::vector<QString> withoutBars; ///< names whose bars do not fit; they stand in words alone
};

/// Told after each page; false stops. Called by whoever draws, in the thread that draws.
using PaperProgress = std::function<bool(int done, int total)>;

} // namespace quarterstep
