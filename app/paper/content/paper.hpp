// SPDX-License-Identifier: GPL-3.0-or-later
// A paper as blocks of text in the chosen language: what stands on it, not where. `render` lays blocks out
// and paints them; `plain_text` writes them as lines. Powers, axes, line names and codes stand in isolates
// (U+2066 … U+2069), so that a right-to-left language leaves them as they are written.
#pragma once

#include <QString>
#include <QStringList>

#include <memory>
#include <vector>

namespace quarterstep
{

struct Picture;

enum class BlockKind {
    title,
    heading,
    text,
    caution, ///< stands out by its bar and its mark, not by colour
    field,   ///< `text`: `value`
    power,   ///< the largest there is; `value` in a box beside it (a bin)
    table,
    bars,   ///< `value` as a bar code with its text below
    blank,  ///< `text`, then a line to write on
    cut,    ///< here the paper is cut; what follows comes back
    small,  ///< rules, version, what this paper is not
    picture ///< `picture`; its table follows
};

struct Block {
    BlockKind kind = BlockKind::text;
    QString text;
    QString value;
    std::vector<QStringList> rows; ///< table: the first row names the columns
    std::vector<int> widths;       ///< table: shares of the width, one a column
    std::shared_ptr<const Picture> picture = {};
};

enum class PaperKind {
    note,
    stockLabel,
    binLabel,
    packingList,
    countSheet,
    auditSheet,
    laboratoryOrder,
    letter,
    collection,
    guardianNote,
    teacherNote,
    quickCard,
    auditReport
};
inline constexpr std::size_t paperKinds = 13;

struct Paper {
    PaperKind kind = PaperKind::note;
    std::vector<Block> blocks;
};

/// Where and when a paper is made, and by which rules: for its foot.
struct PaperSource {
    std::string site;
    std::string day;            ///< ISO date
    std::string rulesHash;      ///< of every profile and setting in use
    std::string programVersion; ///< "0.1.0"
};

/// The word of a paper on the command line: "note", "label" …
[[nodiscard]] const char* wordOf(PaperKind kind);
/// What the paper is, in the chosen language.
[[nodiscard]] QString paperName(PaperKind kind);

} // namespace quarterstep
