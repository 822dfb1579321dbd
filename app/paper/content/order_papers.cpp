// SPDX-License-Identifier: GPL-3.0-or-later
// Custom spectacles on paper: the order to the laboratory, and the note with which they are collected.
#include "app/paper/content/paper_words.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

/// A star marks what was not measured.
QString millimetres(const std::optional<double>& value, bool star = false)
{
    if (!value)
        return {};
    return ltr(QString::number(*value, 'f', 1) + (star ? QStringLiteral(" *") : QString()));
}

QStringList lensRow(Eye eye, const OrderedLens& lens, bool bifocal)
{
    const bool made = lens.state == EyeState::measured || lens.followsFellow;
    QStringList row{eyeName(eye)};
    row << (made ? powerWords(lens.power) : paperWords(QT_TRANSLATE_NOOP("paper", "no power")));
    if (bifocal)
        row << (lens.addition ? ltr(writeDioptres(*lens.addition)) : QString());
    const bool prism = lens.prism.in != 0.0 || lens.prism.up != 0.0;
    row << (prism ? ltr(writePrism(lens.prism)) : QStringLiteral("–"));
    row << millimetres(lens.centration, lens.centrationHalved) << millimetres(lens.height);
    return row;
}

Block lensTable(const LaboratoryOrder& order)
{
    const bool bifocal = order.purpose == Purpose::bifocal;
    Block table{BlockKind::table, {}, {}, {}, {3, 5, 3, 3, 3}};
    QStringList header{paperWords(QT_TRANSLATE_NOOP("paper", "Eye")),
                       paperWords(QT_TRANSLATE_NOOP("paper", "Power"))};
    if (bifocal) {
        header << paperWords(QT_TRANSLATE_NOOP("paper", "Addition"));
        table.widths.insert(table.widths.begin() + 2, 3);
    }
    header << paperWords(QT_TRANSLATE_NOOP("paper", "Prism"))
           << paperWords(QT_TRANSLATE_NOOP("paper", "Centre, mm"))
           << paperWords(QT_TRANSLATE_NOOP("paper", "Height, mm"));
    table.rows.push_back(header);
    for (const Eye eye : bothEyes)
        table.rows.push_back(lensRow(eye, order.lenses.of(eye), bifocal));
    return table;
}

QString formWords(CylinderForm form)
{
    switch (form) {
    case CylinderForm::minus:
        return paperWords(QT_TRANSLATE_NOOP("paper", "minus cylinders"));
    case CylinderForm::plus:
        return paperWords(QT_TRANSLATE_NOOP("paper", "plus cylinders"));
    case CylinderForm::asWritten:
        break;
    }
    return paperWords(QT_TRANSLATE_NOOP("paper", "as written"));
}

void addFrame(const LaboratoryOrder& order, std::vector<Block>& blocks)
{
    const auto frameName = paperWords(QT_TRANSLATE_NOOP("paper", "Frame"));
    if (!order.frame.empty()) // otherwise it is among what is missing
        blocks.push_back(field(frameName, typed(order.frame)));
    if (!order.frameSize.empty())
        blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Size")), ltr(order.frameSize)));
    if (order.vertexMm)
        blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Vertex distance, mm")),
                               millimetres(order.vertexMm)));
    if (order.workingMm)
        blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Working distance, mm")),
                               millimetres(order.workingMm)));
    blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Prescriber")),
                           order.prescriber.empty() ? QStringLiteral("–") : typed(order.prescriber)));
}

} // namespace

Paper laboratoryOrderPaper(const PersonRecord& person, const PersonAnswer& answer,
                           const LaboratoryOrder& order, const PaperSource& source)
{
    Paper paper{PaperKind::laboratoryOrder, {titled(paperName(PaperKind::laboratoryOrder))}};
    auto& blocks = paper.blocks;
    addHead(person, source, blocks);
    blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Purpose")), purposeWords(order.purpose)));
    blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Form")), formWords(order.form)));
    blocks.push_back(lensTable(order));
    if (order.lenses.right.centrationHalved || order.lenses.left.centrationHalved)
        blocks.push_back(smallPrint(paperWords(QT_TRANSLATE_NOOP(
            "paper", "* half of the distance between both eyes, not measured for this eye"))));
    addFrame(order, blocks);
    for (const auto& note : order.notes)
        blocks.push_back(saying(QStringLiteral("• ") + told(note)));
    if (!order.missing.empty()) {
        blocks.push_back(
            warning(paperWords(QT_TRANSLATE_NOOP("paper", "Not to be sent before these are measured:"))));
        for (const auto& missing : order.missing)
            blocks.push_back(toWrite(told(missing)));
    }
    blocks.push_back(toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "Wanted by, signature"))));
    blocks.push_back(barsOf(person.person));
    addPersonFoot(person, answer, source, blocks);
    return paper;
}

Paper collectionNote(const PersonRecord& person, const PersonAnswer& answer, const std::string& orderedOn,
                     const PaperSource& source)
{
    Paper paper{PaperKind::collection, {titled(paperName(PaperKind::collection))}};
    auto& blocks = paper.blocks;
    addHead(person, source, blocks);
    blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP("paper", "Glasses are being made for you: %1."))
                                .arg(purposeWords(answer.recommendation.purpose))));
    const auto ordered = paperWords(QT_TRANSLATE_NOOP("paper", "Ordered on"));
    blocks.push_back(orderedOn.empty() ? toWrite(ordered) : field(ordered, ltr(orderedOn)));
    blocks.push_back(toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "Collect at"))));
    blocks.push_back(toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "On or after"))));
    blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
        "paper", "Bring this paper. The glasses are measured and tried on you before you take them home."))));
    blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
        "paper", "If you cannot come, send somebody to tell us. Your sight gets worse, hurts or is suddenly "
                 "lost: do not wait, go to an eye clinic the same day."))));
    if (answer.interim)
        blocks.push_back(
            warning(paperWords(QT_TRANSLATE_NOOP("paper", "Until then: temporary pair. Not for driving."))));
    blocks.push_back(warning(purposeCaution(answer.recommendation.purpose)));
    blocks.push_back(barsOf(person.person));
    addPersonFoot(person, answer, source, blocks);
    return paper;
}

} // namespace quarterstep
