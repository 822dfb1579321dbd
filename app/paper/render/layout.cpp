// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/render/layout.hpp"

#include "app/paper/render/pieces.hpp"
#include "core/finding.hpp"

#include <algorithm>

namespace quarterstep
{
namespace
{

/// Millimetres; height 0: a roll, as long as it gets.
struct Sheet {
    double width = 0.0;
    double height = 0.0;
    double margin = 0.0;
};

Sheet sheetOf(PaperSize size, const LabelSize& label)
{
    switch (size) {
    case PaperSize::a4:
        return {210.0, 297.0, 12.0};
    case PaperSize::a5:
        return {148.0, 210.0, 10.0};
    case PaperSize::a6:
        return {105.0, 148.0, 7.0};
    case PaperSize::roll80:
        return {80.0, 0.0, 4.0};
    case PaperSize::roll58:
        return {58.0, 0.0, 5.0};
    case PaperSize::label:
        break;
    }
    return {label.width, label.height, 0.0};
}

bool isLabel(PaperKind kind)
{
    return kind == PaperKind::stockLabel || kind == PaperKind::binLabel;
}

/// People read their own papers with poor sight; staff papers are denser.
PaperType typeOf(PaperKind kind, bool large)
{
    PaperType type;
    switch (kind) {
    case PaperKind::laboratoryOrder:
    case PaperKind::letter:
        type = {14.0, 11.0, 10.5, 7.5, 30.0, 9.0, 1.0, 7.5};
        break;
    case PaperKind::packingList:
    case PaperKind::countSheet:
        type = {16.0, 12.0, 11.0, 8.0, 30.0, 10.0, 1.6, 9.0};
        break;
    case PaperKind::auditSheet:
        type = {16.0, 12.0, 9.0, 8.0, 30.0, 10.0, 1.6, 12.0};
        break;
    case PaperKind::auditReport:
        type = {15.0, 11.0, 9.0, 7.5, 30.0, 9.0, 1.2, 5.0};
        break;
    case PaperKind::quickCard:
        type = {22.0, 17.0, 16.0, 9.0, 40.0, 12.0, 3.5, 10.0};
        break;
    default:
        break;
    }
    if (large)
        for (auto* each : {&type.title, &type.heading, &type.body, &type.small})
            *each *= 16.0 / 12.0;
    return type;
}

PaperType labelType(PaperKind kind, const LabelSize& size, double scale)
{
    const double of = std::min(size.width / 63.5, size.height / 38.1) * scale;
    const double power = kind == PaperKind::binLabel ? 46.0 : 38.0;
    return {14.0 * of, 10.0 * of, 9.0 * of, std::max(5.0, 6.0 * of), power * of, std::max(6.0, 9.5 * of),
            0.7 * of,  8.0 * of};
}

/// Turned for a right-to-left language: what stood left stands right.
void mirror(Page& page)
{
    for (auto& mark : page.marks) {
        mark.place.moveLeft(page.width - mark.place.right());
        if (mark.kind == MarkKind::words && mark.alignment == Qt::AlignLeft)
            mark.alignment = Qt::AlignRight;
    }
}

void place(const Piece& piece, double left, double top, Page& page)
{
    for (auto mark : piece.marks) {
        mark.place.translate(left, top);
        page.marks.push_back(std::move(mark));
    }
}

/// Pieces of one paper onto pages.
class Pages
{
  public:
    Pages(const Sheet& sheet, std::vector<Page>& pages) : sheet_(sheet), pages_(pages) { turn(); }

    void flow(const std::vector<Piece>& pieces)
    {
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            const auto& piece = pieces[i];
            double room = piece.height;
            for (std::size_t next = i; pieces[next].keepWithNext && next + 1 < pieces.size(); ++next)
                room += pieces[next + 1].gap + pieces[next + 1].height;
            room = std::min(room, std::max(piece.height, bottom() - sheet_.margin * unitsPerMm));
            if (!empty_ && sheet_.height > 0.0 && top_ + piece.gap + room > bottom()) {
                turn();
                if (piece.header >= 0)
                    put(pieces[static_cast<std::size_t>(piece.header)]);
            }
            put(piece);
        }
        if (sheet_.height == 0.0)
            pages_.back().height = top_ + sheet_.margin * unitsPerMm;
    }

  private:
    [[nodiscard]] double bottom() const { return (sheet_.height - sheet_.margin) * unitsPerMm; }

    void turn()
    {
        pages_.push_back({sheet_.width * unitsPerMm, sheet_.height * unitsPerMm, {}});
        top_ = sheet_.margin * unitsPerMm;
        empty_ = true;
    }

    void put(const Piece& piece)
    {
        if (!empty_)
            top_ += piece.gap;
        place(piece, sheet_.margin * unitsPerMm, top_, pages_.back());
        top_ += piece.height;
        empty_ = false;
    }

    Sheet sheet_;
    std::vector<Page>& pages_;
    double top_ = 0.0;
    bool empty_ = true;
};

/// "2 / 3" in the margin, where a paper has several pages.
void number(std::vector<Page>& pages, const Sheet& sheet, const Column& column)
{
    if (pages.size() < 2 || sheet.height == 0.0)
        return;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        auto mark = wordsMark(QStringLiteral("\u2066%1 / %2\u2069").arg(i + 1).arg(pages.size()), 7.0, false,
                              20.0 * unitsPerMm, column);
        mark.alignment = Qt::AlignHCenter;
        mark.place.moveTo(pages[i].width / 2.0 - 10.0 * unitsPerMm,
                          (sheet.height - sheet.margin + 1.0) * unitsPerMm);
        pages[i].marks.push_back(std::move(mark));
    }
}

Column columnOf(const PaperJob& job, double width, const PaperType& type)
{
    Column column;
    column.width = width;
    column.type = type;
    column.rightToLeft = job.language != nullptr && job.language->rightToLeft;
    column.roll = job.size == PaperSize::roll58 || job.size == PaperSize::roll80;
    column.dotsPerInch = job.dotsPerInch;
    return column;
}

double heightOf(const std::vector<Piece>& pieces)
{
    double height = 0.0;
    for (const auto& piece : pieces)
        height += (&piece == pieces.data() ? 0.0 : piece.gap) + piece.height;
    return height;
}

constexpr double padding = 2.5; ///< mm round the text of a label

/// The pieces of a label at the largest scale that its height holds.
Pieces labelPieces(const Paper& paper, const PaperJob& job, const LabelSize& size)
{
    for (int hundredths = 100; hundredths >= 50; hundredths -= 5) {
        const double scale = hundredths / 100.0;
        const auto column =
            columnOf(job, (size.width - 2.0 * padding) * unitsPerMm, labelType(paper.kind, size, scale));
        auto made = piecesOf(paper, column);
        if (column.roll || heightOf(made.pieces) <= (size.height - 2.0 * padding + 1.0) * unitsPerMm)
            return made;
    }
    throw errorSaying("label-too-small",
                      {QS_SAY("core", "a label of this size does not hold its text; choose a larger one with "
                                      "--label-size, or a shorter name: %1"),
                       {paper.blocks.front().text.toStdString()}},
                      3);
}

void placeLabel(const Pieces& made, const LabelSize& size, double left, double top, Page& page)
{
    const double slack = size.height * unitsPerMm - heightOf(made.pieces);
    double at = top + std::min(padding * unitsPerMm, slack / 2.0);
    for (const auto& piece : made.pieces) {
        at += &piece == made.pieces.data() ? 0.0 : piece.gap;
        place(piece, left + padding * unitsPerMm, at, page);
        at += piece.height;
    }
}

/// Labels in rows and columns on a sheet, or one a page of a roll or of labels.
class LabelSheets
{
  public:
    LabelSheets(const PaperJob& job, LaidOut& laid)
        : job_(job), laid_(laid), sheet_(sheetOf(job.size, job.label)), size_(job.label)
    {
        if (sheet_.height == 0.0)
            size_.width =
                sheet_.width - 2.0 * sheet_.margin + 2.0 * padding; // the paper's margin is the label's
        single_ = sheet_.height == 0.0 || job.size == PaperSize::label;
        across_ = std::max(1, static_cast<int>((sheet_.width - 8.0 + gapAcross) / (size_.width + gapAcross)));
        down_ = std::max(1, static_cast<int>((sheet_.height - 8.0) / size_.height));
    }

    void add(const Paper& paper)
    {
        const auto made = labelPieces(paper, job_, {size_.width, job_.label.height});
        laid_.withoutBars.insert(laid_.withoutBars.end(), made.withoutBars.begin(), made.withoutBars.end());
        if (single_) {
            if (sheet_.height == 0.0)
                size_.height = heightOf(made.pieces) / unitsPerMm + 2.0 * padding;
            laid_.pages.push_back({sheet_.width * unitsPerMm, size_.height * unitsPerMm, {}});
            placeLabel(made, size_, (sheet_.width - size_.width) / 2.0 * unitsPerMm, 0.0, laid_.pages.back());
            return;
        }
        if (count_ % (across_ * down_) == 0)
            laid_.pages.push_back({sheet_.width * unitsPerMm, sheet_.height * unitsPerMm, {}});
        const int at = count_++ % (across_ * down_);
        const int row = at / across_;
        const double width = across_ * size_.width + (across_ - 1) * gapAcross;
        const double left = (sheet_.width - width) / 2.0 + at % across_ * (size_.width + gapAcross);
        const double top = (sheet_.height - down_ * size_.height) / 2.0 + row * size_.height;
        placeLabel(made, size_, left * unitsPerMm, top * unitsPerMm, laid_.pages.back());
    }

  private:
    static constexpr double gapAcross = 2.5; ///< mm between columns of a usual sheet of labels

    const PaperJob& job_;
    LaidOut& laid_;
    Sheet sheet_;
    LabelSize size_;
    bool single_ = false;
    int across_ = 1;
    int down_ = 1;
    int count_ = 0;
};

void addPaper(const Paper& paper, const PaperJob& job, LaidOut& laid)
{
    const auto sheet = sheetOf(job.size, job.label);
    const auto column =
        columnOf(job, (sheet.width - 2.0 * sheet.margin) * unitsPerMm, typeOf(paper.kind, job.large));
    const auto made = piecesOf(paper, column);
    laid.withoutBars.insert(laid.withoutBars.end(), made.withoutBars.begin(), made.withoutBars.end());
    std::vector<Page> pages;
    Pages(sheet, pages).flow(made.pieces);
    number(pages, sheet, column);
    laid.pages.insert(laid.pages.end(), pages.begin(), pages.end());
}

} // namespace

LaidOut layOut(const PaperJob& job)
{
    LaidOut laid;
    LabelSheets labels(job, laid);
    for (const auto& paper : job.papers) {
        if (isLabel(paper.kind))
            labels.add(paper);
        else
            addPaper(paper, job, laid);
    }
    if (job.language != nullptr && job.language->rightToLeft)
        for (auto& page : laid.pages)
            mirror(page);
    return laid;
}

} // namespace quarterstep
