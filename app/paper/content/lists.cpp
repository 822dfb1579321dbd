// SPDX-License-Identifier: GPL-3.0-or-later
// Lists to work by: packing, a blind count, an audit at the table.
#include "app/paper/content/paper_words.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/words.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <tuple>

namespace quarterstep
{
namespace
{

QString tickBox()
{
    return QStringLiteral("☐");
}

QString orDash(const std::string& text)
{
    return text.empty() ? QStringLiteral("–") : ltr(text);
}

QString purposeOf(const std::string& word)
{
    if (const auto purpose = purposeNamed(word))
        return say(*purpose);
    return typed(word);
}

/// The lines, and for a lot what the pair should read.
QString pairWords(const AuditRow& row)
{
    if (row.labelRight.empty())
        return ltr(row.lines);
    return ltr(row.lines) + QLatin1Char('\n') + ltr("R " + row.labelRight) + QLatin1Char('\n') +
           ltr("L " + row.labelLeft);
}

} // namespace

namespace
{
/// Boxes are mostly numbers: 2 comes before 10.
std::string boxKey(const std::string& box)
{
    constexpr std::size_t digits = 9;
    const bool number = !box.empty() && box.size() < digits &&
                        std::all_of(box.begin(), box.end(), [](char c) { return c >= '0' && c <= '9'; });
    return number ? std::string(digits - box.size(), '0') + box : box;
}
} // namespace

PackingRow packingRow(const StockLine& line, std::string box, std::string bin, int quantity)
{
    if (bin.empty())
        bin = line.bin;
    PackingRow row{std::move(box), std::move(bin), line.name, {}, quantity};
    if (line.kind == LineKind::readyMade || line.kind == LineKind::lens)
        row.power = line.equalPowers()
                        ? writePower(line.power.right)
                        : "R " + writePower(line.power.right) + " L " + writePower(line.power.left);
    return row;
}

Paper packingList(std::vector<PackingRow> rows, const PaperSource& source)
{
    std::stable_sort(rows.begin(), rows.end(), [](const PackingRow& a, const PackingRow& b) {
        return std::tuple(boxKey(a.box), a.bin, a.line) < std::tuple(boxKey(b.box), b.bin, b.line);
    });
    Paper paper{PaperKind::packingList, {titled(paperName(PaperKind::packingList))}};
    auto& blocks = paper.blocks;
    blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Day and place")),
                           ltr(source.day) + QStringLiteral(" · ") + typed(source.site)));
    std::map<std::string, std::pair<std::string, int>> boxes;
    for (const auto& row : rows) {
        auto& [box, count] = boxes[boxKey(row.box)];
        box = row.box;
        count += row.quantity;
    }
    for (const auto& [key, each] : boxes) {
        const auto& [box, count] = each;
        blocks.push_back(
            headed(paperWords(QT_TRANSLATE_NOOP("paper", "Box %1: %2 pieces"))
                       .arg(box.empty() ? QStringLiteral("–") : typed(box), ltr(QString::number(count)))));
        Block table{BlockKind::table, {}, {}, {}, {2, 6, 4, 2, 2}};
        table.rows.push_back({paperWords(QT_TRANSLATE_NOOP("paper", "Bin")),
                              paperWords(QT_TRANSLATE_NOOP("paper", "Line")),
                              paperWords(QT_TRANSLATE_NOOP("paper", "Power")),
                              paperWords(QT_TRANSLATE_NOOP("paper", "Pieces")),
                              paperWords(QT_TRANSLATE_NOOP("paper", "Packed"))});
        for (const auto& row : rows)
            if (row.box == box)
                table.rows.push_back({orDash(row.bin), ltr(row.line), orDash(row.power),
                                      ltr(QString::number(row.quantity)), tickBox()});
        blocks.push_back(table);
    }
    blocks.push_back(toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "Packed by"))));
    blocks.push_back(toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "Counted again by"))));
    addFoot(source, blocks);
    return paper;
}

Paper countSheetPaper(const std::vector<CountRow>& rows, const PaperSource& source)
{
    Paper paper{PaperKind::countSheet, {titled(paperName(PaperKind::countSheet))}};
    auto& blocks = paper.blocks;
    blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Day and place")),
                           ltr(source.day) + QStringLiteral(" · ") + typed(source.site)));
    blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
        "paper", "Count what lies there. Two persons; what the book says is not asked before the end."))));
    Block table{BlockKind::table, {}, {}, {}, {2, 6, 3, 6}};
    table.rows.push_back({paperWords(QT_TRANSLATE_NOOP("paper", "Bin")),
                          paperWords(QT_TRANSLATE_NOOP("paper", "Line")),
                          paperWords(QT_TRANSLATE_NOOP("paper", "Counted")),
                          paperWords(QT_TRANSLATE_NOOP("paper", "Remark"))});
    for (const auto& row : rows)
        table.rows.push_back({orDash(row.bin), ltr(row.line), {}, {}});
    blocks.push_back(table);
    blocks.push_back(toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "Counted by (initials)"))));
    blocks.push_back(toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "Second person (initials)"))));
    addFoot(source, blocks);
    return paper;
}

Paper auditSheet(const std::vector<AuditRow>& rows, const PaperSource& source)
{
    Paper paper{PaperKind::auditSheet, {titled(paperName(PaperKind::auditSheet))}};
    auto& blocks = paper.blocks;
    blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Day and place")),
                           ltr(source.day) + QStringLiteral(" · ") + typed(source.site)));
    blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
        "paper", "Read the pair with the focimeter, take the acuity with it, then compare with the record. "
                 "Where they differ write: the record does not match the pair."))));
    Block table{BlockKind::table, {}, {}, {}, {4, 3, 6, 4, 3, 3, 3, 3}};
    table.rows.push_back(
        {paperWords(QT_TRANSLATE_NOOP("paper", "Entry")), paperWords(QT_TRANSLATE_NOOP("paper", "Code")),
         paperWords(QT_TRANSLATE_NOOP("paper", "Recorded")), paperWords(QT_TRANSLATE_NOOP("paper", "Line")),
         paperWords(QT_TRANSLATE_NOOP("paper", "Read right")),
         paperWords(QT_TRANSLATE_NOOP("paper", "Read left")),
         paperWords(QT_TRANSLATE_NOOP("paper", "Acuity")),
         paperWords(QT_TRANSLATE_NOOP("paper", "Finding"))});
    for (const auto& row : rows)
        table.rows.push_back({ltr(row.entry) + QLatin1Char('\n') + ltr(row.day),
                              ltr(row.person),
                              ltr("R " + row.right) + QLatin1Char('\n') + ltr("L " + row.left) +
                                  QLatin1Char('\n') + purposeOf(row.purpose) + QStringLiteral(" · ") +
                                  ltr(row.profile),
                              pairWords(row),
                              {},
                              {},
                              {},
                              {}});
    blocks.push_back(table);
    blocks.push_back(toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "Read by"))));
    addFoot(source, blocks);
    return paper;
}

} // namespace quarterstep
