// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/content/plain_text.hpp"

#include "app/paper/content/picture.hpp"

#include <algorithm>

namespace quarterstep
{
namespace
{

constexpr int blankLength = 24;

/// Characters that take room.
int lengthOf(const QString& text)
{
    return static_cast<int>(withoutIsolates(text).size());
}

QStringList wrapped(const QString& text, int width)
{
    QStringList lines;
    for (const auto& paragraph : text.split(QLatin1Char('\n'))) {
        QString line;
        for (const auto& word : paragraph.split(QLatin1Char(' '))) {
            if (!line.isEmpty() && lengthOf(line) + 1 + lengthOf(word) > width) {
                lines << line;
                line = word;
            } else {
                line += line.isEmpty() ? word : QLatin1Char(' ') + word;
            }
        }
        lines << line;
    }
    return lines;
}

/// The first line begins with `mark`, the others with as many blanks.
QString hanging(const QString& mark, const QString& text, int width)
{
    const QString blanks(mark.size(), QLatin1Char(' '));
    QString all;
    for (const auto& line : wrapped(text, width - static_cast<int>(mark.size())))
        all += (all.isEmpty() ? mark : blanks) + line + QLatin1Char('\n');
    return all;
}

QString tableText(const Block& block)
{
    std::vector<int> widths(static_cast<std::size_t>(block.rows.front().size()), 0);
    const auto flat = [](QString cell) { return cell.replace(QLatin1Char('\n'), QStringLiteral(" / ")); };
    for (const auto& row : block.rows)
        for (qsizetype i = 0; i < row.size(); ++i) {
            auto& width = widths[static_cast<std::size_t>(i)];
            width = std::max(width, lengthOf(flat(row[i])));
        }
    QString all;
    for (const auto& row : block.rows) {
        QString line;
        for (qsizetype i = 0; i < row.size(); ++i) {
            const QString cell = flat(row[i]);
            line += (i > 0 ? QStringLiteral("  ") : QString()) + cell +
                    QString(widths[static_cast<std::size_t>(i)] - lengthOf(cell), QLatin1Char(' '));
        }
        while (line.endsWith(QLatin1Char(' ')))
            line.chop(1);
        all += line + QLatin1Char('\n');
    }
    return all;
}

QString blockText(const Block& block, int width)
{
    switch (block.kind) {
    case BlockKind::title:
        return block.text + QLatin1Char('\n') + QString(lengthOf(block.text), QLatin1Char('=')) +
               QLatin1Char('\n');
    case BlockKind::heading:
        return QLatin1Char('\n') + hanging({}, block.text, width);
    case BlockKind::caution:
        return hanging(QStringLiteral("! "), block.text, width);
    case BlockKind::field:
        return hanging({}, block.text + QStringLiteral(": ") + block.value, width);
    case BlockKind::power:
        return block.text +
               (block.value.isEmpty() ? QString() : QStringLiteral("   [") + block.value + QLatin1Char(']')) +
               QLatin1Char('\n');
    case BlockKind::table:
        return tableText(block);
    case BlockKind::bars:
        return QStringLiteral("|||| ") + block.value +
               (block.text.isEmpty() ? QString() : QStringLiteral("  ") + block.text) + QLatin1Char('\n');
    case BlockKind::blank:
        return block.text + QStringLiteral(": ") + QString(blankLength, QLatin1Char('_')) + QLatin1Char('\n');
    case BlockKind::cut:
        return QStringLiteral("\n- - - - ") + block.text + QStringLiteral(" - - - -\n");
    case BlockKind::picture: // its table follows
        return hanging({}, block.picture->says, width);
    case BlockKind::text:
    case BlockKind::small:
        break;
    }
    return hanging({}, block.text, width);
}

} // namespace

QString withoutIsolates(QString text)
{
    for (const ushort mark : {ushort{0x2066}, ushort{0x2068}, ushort{0x2069}})
        text.remove(QChar(mark));
    return text;
}

QString plainText(const Paper& paper, bool rightToLeft, int width)
{
    QString text;
    for (const auto& block : paper.blocks)
        text += blockText(block, width);
    return rightToLeft ? text : withoutIsolates(text);
}

} // namespace quarterstep
