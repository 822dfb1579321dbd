// SPDX-License-Identifier: GPL-3.0-or-later
// Over 300 lines: one maker, a short function a kind of block.
#include "app/paper/render/pieces.hpp"

#include "app/paper/content/picture.hpp"
#include "app/paper/render/bar_code.hpp"
#include "app/paper/render/words_shape.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace quarterstep
{
namespace
{

constexpr double mmPerInch = 25.4;
constexpr double widestModule = 0.26;     ///< mm: 2 dots at 203, 3 at 300 dots an inch
constexpr double narrowestModule = 0.165; ///< mm, what hand scanners and cameras still read (common practice)
constexpr double barIndent = 4.0;         ///< mm
constexpr double barWidth = 1.2;          ///< mm
constexpr double cellGap = 1.5;           ///< mm between columns
constexpr double narrowCell = 11.0;       ///< mm: below it a table is written row by row
constexpr double twoColumns = 70.0;       ///< mm: from it a field has its name beside the value
constexpr double narrowTable = 60.0;      ///< mm: the same
constexpr double smallestWhole = 8.0;     ///< points
constexpr double smallestPower = 9.0;     ///< points

double mm(double millimetres)
{
    return millimetres * unitsPerMm;
}

/// Makes the pieces of one paper.
class Maker
{
  public:
    explicit Maker(const Column& column) : column_(column), type_(column.type) {}

    void add(const Block& block)
    {
        switch (block.kind) {
        case BlockKind::title:
            words(block.text, type_.title, true).keepWithNext = true;
            return;
        case BlockKind::heading:
            words(block.text, type_.heading, true).keepWithNext = true;
            return;
        case BlockKind::text:
            words(block.text, type_.body, false);
            return;
        case BlockKind::small:
            words(block.text, type_.small, false);
            return;
        case BlockKind::caution:
            caution(block);
            return;
        case BlockKind::field:
            field(block);
            return;
        case BlockKind::power:
            power(block);
            return;
        case BlockKind::table:
            table(block);
            return;
        case BlockKind::bars:
            bars(block);
            return;
        case BlockKind::blank:
            blank(block);
            return;
        case BlockKind::cut:
            cut(block);
            return;
        case BlockKind::picture:
            picture(block);
            return;
        }
    }

    /// What follows a cut stays on one page.
    void keepCutTogether()
    {
        for (std::size_t i = cut_; i + 1 < made_.pieces.size(); ++i)
            made_.pieces[i].keepWithNext = true;
    }

    Pieces take() { return std::move(made_); }

  private:
    Piece& piece(double height)
    {
        made_.pieces.emplace_back();
        made_.pieces.back().gap = mm(type_.gap);
        made_.pieces.back().height = height;
        return made_.pieces.back();
    }

    Piece& words(const QString& text, double points, bool bold)
    {
        auto mark = wordsMark(text, points, bold, column_.width, column_);
        auto& made = piece(mark.place.height());
        made.marks.push_back(std::move(mark));
        return made;
    }

    static void put(Piece& made, Mark mark, double left, double top)
    {
        mark.place.moveTo(left, top);
        made.height = std::max(made.height, mark.place.bottom());
        made.marks.push_back(std::move(mark));
    }

    static Mark ruled(MarkKind kind, double width)
    {
        Mark mark;
        mark.kind = kind;
        mark.place = {0.0, 0.0, width, 0.0};
        return mark;
    }

    void caution(const Block& block)
    {
        auto mark = wordsMark(block.text, type_.body, true, column_.width - mm(barIndent), column_);
        auto& made = piece(mark.place.height());
        Mark bar;
        bar.kind = MarkKind::bar;
        bar.place = {0.0, 0.0, mm(barWidth), made.height};
        made.marks.push_back(bar);
        put(made, std::move(mark), mm(barIndent), 0.0);
    }

    void field(const Block& block)
    {
        if (column_.width < mm(twoColumns)) {
            words(block.text, type_.small, true).keepWithNext = true;
            auto& made = piece(0.0);
            made.gap = 0.0;
            put(made, whole(block.value, type_.body, column_.width), 0.0, 0.0);
            return;
        }
        const double name = column_.width * 0.32;
        auto& made = piece(0.0);
        put(made, wordsMark(block.text, type_.body * 0.85, true, name - mm(cellGap), column_), 0.0, 0.0);
        put(made, whole(block.value, type_.body, column_.width - name), name, 0.0);
    }

    /// As large as one line allows; in a box beside it where it lies.
    void power(const Block& block)
    {
        auto& made = piece(0.0);
        double width = column_.width;
        if (!block.value.isEmpty()) {
            Mark box = fitting(block.value, type_.power * 0.55, column_.width * 0.3);
            const double boxWidth = WordsShape(box).widest() + mm(3.0);
            width -= boxWidth + mm(2.0);
            Mark frame;
            frame.kind = MarkKind::frame;
            frame.place = {column_.width - boxWidth, 0.0, boxWidth, box.place.height() + mm(0.6)};
            made.height = frame.place.bottom();
            made.marks.push_back(frame);
            box.alignment = Qt::AlignHCenter;
            box.place.setWidth(boxWidth - mm(0.6));
            put(made, std::move(box), column_.width - boxWidth + mm(0.3), mm(0.3));
        }
        put(made, fitting(block.text, type_.power, width), 0.0, 0.0);
    }

    Mark fitting(const QString& text, double points, double width) const
    {
        for (;; points *= 0.94) {
            auto mark = wordsMark(text, points, true, mm(10000.0), column_);
            if (points * 0.94 < smallestPower || WordsShape(mark).widest() <= width - mm(0.2))
                return wordsMark(text, points, true, width, column_);
        }
    }

    /// A power or a code alone in its place stays on one line while it can be read: broken, its axis might be
    /// overlooked.
    [[nodiscard]] Mark whole(const QString& text, double points, double width) const
    {
        const bool alone = text.startsWith(QChar(0x2066)) && text.indexOf(QChar(0x2069)) == text.size() - 1;
        if (alone)
            while (points * 0.95 >= smallestWhole &&
                   WordsShape(wordsMark(text, points, false, mm(10000.0), column_)).widest() > width)
                points *= 0.95;
        return wordsMark(text, points, false, width, column_);
    }

    void table(const Block& block)
    {
        const double all = std::accumulate(block.widths.begin(), block.widths.end(), 0.0);
        const double least = *std::min_element(block.widths.begin(), block.widths.end());
        if (column_.width < mm(narrowTable) || column_.width * least / all < mm(narrowCell)) {
            rowByRow(block);
            return;
        }
        const auto header = static_cast<std::ptrdiff_t>(made_.pieces.size());
        for (const auto& row : block.rows) {
            const bool first = &row == block.rows.data();
            auto& made = piece(0.0);
            made.gap = first ? mm(type_.gap) : mm(0.7);
            made.keepWithNext = first;
            made.header = first ? -1 : header;
            double left = 0.0;
            for (qsizetype i = 0; i < row.size(); ++i) {
                const double width = column_.width * block.widths[static_cast<std::size_t>(i)] / all;
                put(made,
                    first ? wordsMark(row[i], type_.body * 0.75, true, width - mm(cellGap), column_)
                          : whole(row[i], type_.body, width - mm(cellGap)),
                    left, 0.0);
                left += width;
            }
            if (!first)
                made.height = std::max(made.height, mm(type_.blank * 0.7));
            put(made, ruled(MarkKind::line, column_.width), 0.0, made.height + mm(0.3));
        }
    }

    /// Where columns would be too narrow: one row below the other, each cell with its column's name.
    void rowByRow(const Block& block)
    {
        for (std::size_t row = 1; row < block.rows.size(); ++row) {
            for (qsizetype i = 0; i < block.rows[row].size(); ++i) {
                const QString cell =
                    block.rows[row][i].isEmpty() ? QStringLiteral("________") : block.rows[row][i];
                if (i == 0) {
                    words(cell, type_.body, true).keepWithNext = true;
                    continue;
                }
                auto& name = words(block.rows[0][i], type_.small, false);
                name.gap = 0.0;
                name.keepWithNext = true;
                auto& made = piece(0.0);
                made.gap = 0.0;
                put(made, whole(cell, type_.body, column_.width), 0.0, 0.0);
            }
        }
    }

    void blank(const Block& block)
    {
        const double name = column_.width * 0.45;
        auto mark = wordsMark(block.text, type_.body * 0.85, false, name - mm(cellGap), column_);
        const double height = std::max(mm(type_.blank), mark.place.height() + mm(0.5));
        auto& made = piece(height);
        const double top = height - mark.place.height();
        put(made, std::move(mark), 0.0, top);
        put(made, ruled(MarkKind::line, column_.width - name), name, height);
    }

    void cut(const Block& block)
    {
        auto mark = wordsMark(block.text, type_.small, false, column_.width, column_);
        auto& made = piece(0.0);
        put(made, ruled(MarkKind::dashes, column_.width), 0.0, mm(3.0));
        put(made, std::move(mark), 0.0, mm(3.6));
        cut_ = made_.pieces.size() - 1;
    }

    /// As wide as the column, with what it says below.
    void picture(const Block& block)
    {
        Mark mark;
        mark.kind = MarkKind::picture;
        mark.picture = block.picture;
        const double height = column_.width * block.picture->height / block.picture->width;
        mark.place = {0.0, 0.0, column_.width, height};
        auto& made = piece(0.0);
        made.keepWithNext = true; // its table
        put(made, std::move(mark), 0.0, 0.0);
        put(made, wordsMark(block.picture->says, type_.small, false, column_.width, column_), 0.0,
            height + mm(0.4));
    }

    /// Width of a module that fits into `room`, whole dots where dots are known; 0 = none does.
    [[nodiscard]] double moduleFor(double room, int modules) const
    {
        double width = std::min(room / unitsPerMm / modules, widestModule);
        if (column_.dotsPerInch > 0) {
            const double dot = mmPerInch / column_.dotsPerInch;
            width = std::floor(width / dot + 1e-6) * dot;
        }
        return width < narrowestModule ? 0.0 : mm(width);
    }

    void bars(const Block& block)
    {
        const QString below =
            block.text.isEmpty() ? block.value : block.value + QStringLiteral("  ") + block.text;
        const auto code = barCodeOf(block.value.toStdString());
        const auto modules = static_cast<int>(code.modules.size());
        double module = modules == 0 ? 0.0 : moduleFor(column_.width, modules + 2 * code.quietModules);
        Mark mark;
        mark.kind = MarkKind::bars;
        mark.modules = code.modules;
        if (module == 0.0 && modules > 0 && column_.roll) {
            mark.sideways = true;
            module = moduleFor(mm(1000.0), modules);
        }
        if (module == 0.0) {
            made_.withoutBars.push_back(block.value);
            words(below, type_.body * 0.85, true);
            return;
        }
        const double length = module * modules;
        auto& made = piece(0.0);
        mark.moduleWidth = module;
        mark.place = mark.sideways ? QRectF(0.0, 0.0, mm(type_.bars), length)
                                   : QRectF(0.0, 0.0, length, mm(type_.bars));
        const double height = mark.place.height();
        const bool sideways = mark.sideways;
        put(made, std::move(mark), sideways ? mm(2.0) : module * code.quietModules, 0.0);
        auto text = wordsMark(below, type_.small, false, column_.width, column_);
        put(made, std::move(text), 0.0, height + mm(0.4));
    }

    Column column_;
    PaperType type_;
    Pieces made_;
    std::size_t cut_ = std::numeric_limits<std::size_t>::max() - 1; ///< piece of the cut; none
};

} // namespace

Mark wordsMark(const QString& text, double points, bool bold, double width, const Column& column)
{
    Mark mark;
    mark.text = text;
    mark.points = points;
    mark.bold = bold;
    mark.rightToLeft = column.rightToLeft;
    mark.alignment = Qt::AlignLeft; // turned with the page
    mark.place = {0.0, 0.0, width, 0.0};
    mark.place.setHeight(WordsShape(mark).height());
    return mark;
}

Pieces piecesOf(const Paper& paper, const Column& column)
{
    Maker maker(column);
    for (const auto& block : paper.blocks)
        maker.add(block);
    maker.keepCutTogether();
    return maker.take();
}

} // namespace quarterstep
