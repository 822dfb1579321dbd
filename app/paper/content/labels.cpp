// SPDX-License-Identifier: GPL-3.0-or-later
// Labels: sign and power are the largest thing on them, the bin stands beside in a box.
#include "app/paper/content/paper_words.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace quarterstep
{
namespace
{

Block largest(const QString& text, const std::string& bin)
{
    return {BlockKind::power, text, bin.empty() ? QString() : ltr(bin), {}, {}};
}

QString right()
{
    return paperWords(QT_TRANSLATE_NOOP("paper", "RIGHT"));
}

QString left()
{
    return paperWords(QT_TRANSLATE_NOOP("paper", "LEFT"));
}

/// The cylinder of a lens that is turned when it is mounted has no axis yet.
QString labelPower(const SpheroCylinder& power, bool anyAxis)
{
    if (!anyAxis || power.cylinder == Dioptres{})
        return powerWords(power);
    return ltr(writeDioptres(power.sphere) + " " + writeDioptres(power.cylinder));
}

void addPowers(const StockLine& line, std::vector<Block>& blocks)
{
    if (line.kind == LineKind::frame || line.kind == LineKind::other) {
        const auto& what = line.frame.model.empty() ? line.name : line.frame.model;
        blocks.push_back(largest(line.frame.model.empty() ? ltr(what) : typed(what), line.bin));
        return;
    }
    if (line.kind == LineKind::readyMade && !line.equalPowers()) {
        blocks.push_back(largest(right() + QLatin1Char(' ') + powerWords(line.power.right), line.bin));
        blocks.push_back(largest(left() + QLatin1Char(' ') + powerWords(line.power.left), {}));
        return;
    }
    QString text = labelPower(line.power.right, line.anyAxis);
    if (line.bifocalAddition)
        text +=
            QLatin1Char(' ') +
            paperWords(QT_TRANSLATE_NOOP("paper", "add %1")).arg(ltr(writeDioptres(*line.bifocalAddition)));
    if (line.side == LensSide::right)
        text = right() + QLatin1Char(' ') + text;
    if (line.side == LensSide::left)
        text = left() + QLatin1Char(' ') + text;
    blocks.push_back(largest(text, line.bin));
}

QString useWords(const std::string& use)
{
    if (use == "near")
        return paperWords(QT_TRANSLATE_NOOP("paper", "NEAR"));
    if (use == "distance")
        return paperWords(QT_TRANSLATE_NOOP("paper", "DISTANCE"));
    if (use == "intermediate")
        return paperWords(QT_TRANSLATE_NOOP("paper", "ARM'S LENGTH"));
    if (use == "bifocal")
        return paperWords(QT_TRANSLATE_NOOP("paper", "BIFOCAL"));
    return QString::fromStdString(use);
}

QString centresWords(const StockLine& line)
{
    const auto mm = ltr(QString::number(*line.centres, 'g', 4));
    return line.centresFrom == CentresFrom::assumed
               ? paperWords(QT_TRANSLATE_NOOP("paper", "centres %1 mm (assumed)")).arg(mm)
               : paperWords(QT_TRANSLATE_NOOP("paper", "centres %1 mm")).arg(mm);
}

QString sizeWords(const std::string& size)
{
    if (size == "small")
        return paperWords(QT_TRANSLATE_NOOP("paper", "size S"));
    if (size == "medium")
        return paperWords(QT_TRANSLATE_NOOP("paper", "size M"));
    if (size == "large")
        return paperWords(QT_TRANSLATE_NOOP("paper", "size L"));
    return {};
}

QString facts(const StockLine& line)
{
    QStringList words;
    const auto add = [&words](const QString& text) {
        if (!text.isEmpty())
            words << text;
    };
    add(useWords(line.use));
    if (line.centres && line.kind != LineKind::lens)
        add(centresWords(line));
    if (line.kind == LineKind::lens)
        add(ltr(line.shape));
    if (line.kind == LineKind::lens && line.anyAxis && !(line.power.right.cylinder == Dioptres{}))
        add(paperWords(QT_TRANSLATE_NOOP("paper", "axis set when mounted")));
    add(sizeWords(line.frame.sizeClass));
    if (!line.frame.colour.empty())
        add(typed(line.frame.colour));
    if (line.origin == Origin::used)
        add(paperWords(QT_TRANSLATE_NOOP("paper", "used pair")));
    return words.join(QStringLiteral(" · "));
}

} // namespace

Paper stockLabel(const StockLine& line, const PaperSource& source)
{
    Paper paper{PaperKind::stockLabel, {}};
    auto& blocks = paper.blocks;
    addPowers(line, blocks);
    if (const auto words = facts(line); !words.isEmpty())
        blocks.push_back(headed(words));
    Block bars = barsOf(line.code.empty() ? line.name : line.code);
    if (!line.code.empty())
        bars.text = ltr(line.name); // digits alone would not say which line
    blocks.push_back(bars);
    QString foot = paperWords(QT_TRANSLATE_NOOP("paper", "Rules %1, program %2."))
                       .arg(ltr(source.rulesHash), ltr(source.programVersion));
    if (line.use == "near")
        foot = paperWords(QT_TRANSLATE_NOOP("paper", "For near work only.")) + QLatin1Char(' ') + foot;
    blocks.push_back(smallPrint(foot));
    return paper;
}

Paper binLabel(const std::string& bin, std::span<const StockLine> lines, const PaperSource& source)
{
    Paper paper{PaperKind::binLabel, {}};
    paper.blocks.push_back(largest(ltr(bin), {}));
    std::vector<std::string> names;
    for (const auto& line : lines)
        if (line.bin == bin)
            names.push_back(line.name);
    std::sort(names.begin(), names.end());
    QStringList words;
    for (const auto& name : names)
        words << ltr(name);
    paper.blocks.push_back(saying(words.join(QStringLiteral(", "))));
    paper.blocks.push_back(smallPrint(typed(source.site) + QStringLiteral(" · ") +
                                      paperWords(QT_TRANSLATE_NOOP("paper", "Rules %1, program %2."))
                                          .arg(ltr(source.rulesHash), ltr(source.programVersion))));
    return paper;
}

} // namespace quarterstep
