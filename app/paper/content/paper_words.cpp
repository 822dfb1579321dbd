// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/content/paper_words.hpp"

#include "app/session/wording.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

QString orBlank(const std::string& text, const char* otherwise)
{
    return text.empty() ? paperWords(otherwise) : typed(text);
}

QString rulesWords(const PaperSource& source)
{
    return paperWords(QT_TRANSLATE_NOOP("paper", "Rules %1, program version %2."))
        .arg(ltr(source.rulesHash), ltr(source.programVersion));
}

QString writtenAs(const WrittenEye& eye)
{
    switch (eye.state) {
    case EyeState::measured:
        return eye.asWritten.empty() ? powerWords(eye.power) : ltr(eye.asWritten);
    case EyeState::balance:
        return paperWords(QT_TRANSLATE_NOOP("paper", "balance lens"));
    case EyeState::artificial:
        return paperWords(QT_TRANSLATE_NOOP("paper", "artificial eye"));
    case EyeState::blind:
        return paperWords(QT_TRANSLATE_NOOP("paper", "does not see"));
    case EyeState::notMeasured:
        break;
    }
    return paperWords(QT_TRANSLATE_NOOP("paper", "not measured"));
}

/// "+2.00 add", or the near power found by trial.
QString nearWords(const EyeRecord& eye)
{
    if (eye.nearPower)
        return powerWords(*eye.nearPower);
    if (!eye.addition)
        return {};
    return paperWords(QT_TRANSLATE_NOOP("paper", "add %1")).arg(ltr(writeDioptres(*eye.addition)));
}

} // namespace

const char* wordOf(PaperKind kind)
{
    constexpr const char* words[paperKinds] = {
        "note",   "label",      "bin-label",     "packing-list", "count-sheet", "audit-sheet", "lab-order",
        "letter", "collection", "guardian-note", "teacher-note", "quick-card",  "audit-report"};
    return words[static_cast<std::size_t>(kind)];
}

QString paperName(PaperKind kind)
{
    static const char* const names[paperKinds] = {
        QT_TRANSLATE_NOOP("paper", "Note for the person"),
        QT_TRANSLATE_NOOP("paper", "Label of a line"),
        QT_TRANSLATE_NOOP("paper", "Label of a bin"),
        QT_TRANSLATE_NOOP("paper", "Packing list"),
        QT_TRANSLATE_NOOP("paper", "Count sheet"),
        QT_TRANSLATE_NOOP("paper", "Audit worksheet"),
        QT_TRANSLATE_NOOP("paper", "Order to the laboratory"),
        QT_TRANSLATE_NOOP("paper", "Letter to the eye clinic"),
        QT_TRANSLATE_NOOP("paper", "Glasses to collect"),
        QT_TRANSLATE_NOOP("paper", "Note for the guardian"),
        QT_TRANSLATE_NOOP("paper", "Note for the teacher"),
        QT_TRANSLATE_NOOP("paper", "Quick card"),
        QT_TRANSLATE_NOOP("paper", "Audit of hand-overs"),
    };
    return paperWords(names[static_cast<std::size_t>(kind)]);
}

QString paperWords(const char* text)
{
    return QCoreApplication::translate("paper", text);
}

QString told(const Sentence& sentence)
{
    Sentence isolated = sentence;
    for (auto& argument : isolated.arguments)
        argument = ltr(argument).toStdString();
    return say(isolated);
}

QString typed(const std::string& text)
{
    return QChar(0x2068) + QString::fromStdString(text) + QChar(0x2069);
}

QString figure(std::int64_t value)
{
    return ltr(QString::number(value));
}

Block titled(const QString& text)
{
    return {BlockKind::title, text, {}, {}, {}};
}

Block headed(const QString& text)
{
    return {BlockKind::heading, text, {}, {}, {}};
}

Block saying(const QString& text)
{
    return {BlockKind::text, text, {}, {}, {}};
}

Block warning(const QString& text)
{
    return {BlockKind::caution, text, {}, {}, {}};
}

Block field(const QString& name, const QString& value)
{
    return {BlockKind::field, name, value, {}, {}};
}

Block toWrite(const QString& name)
{
    return {BlockKind::blank, name, {}, {}, {}};
}

Block smallPrint(const QString& text)
{
    return {BlockKind::small, text, {}, {}, {}};
}

Block barsOf(const std::string& text)
{
    return {BlockKind::bars, {}, QString::fromStdString(text), {}, {}};
}

QString eyeName(Eye eye)
{
    return eye == Eye::right ? paperWords(QT_TRANSLATE_NOOP("paper", "Right eye"))
                             : paperWords(QT_TRANSLATE_NOOP("paper", "Left eye"));
}

QString powerWords(const SpheroCylinder& power)
{
    return ltr(writePower(power));
}

Block prescriptionTable(const PersonRecord& person)
{
    Block table{BlockKind::table, {}, {}, {}, {3, 4}};
    const bool near = !nearWords(person.eyes.right).isEmpty() || !nearWords(person.eyes.left).isEmpty();
    table.rows.push_back({paperWords(QT_TRANSLATE_NOOP("paper", "Eye")),
                          paperWords(QT_TRANSLATE_NOOP("paper", "Distance, as written"))});
    if (near) {
        table.rows.front() << paperWords(QT_TRANSLATE_NOOP("paper", "Near"));
        table.widths.push_back(3);
    }
    for (const Eye eye : bothEyes) {
        QStringList row{eyeName(eye), writtenAs(person.eyes.of(eye).final)};
        if (near)
            row << nearWords(person.eyes.of(eye));
        table.rows.push_back(row);
    }
    return table;
}

QString purposeWords(Purpose purpose)
{
    switch (purpose) {
    case Purpose::near:
        return paperWords(QT_TRANSLATE_NOOP("paper", "for near: reading, sewing, telephone"));
    case Purpose::intermediate:
        return paperWords(QT_TRANSLATE_NOOP("paper", "for work at arm's length"));
    case Purpose::bifocal:
        return paperWords(QT_TRANSLATE_NOOP("paper", "for far (upper part) and near (lower part)"));
    default:
        return paperWords(QT_TRANSLATE_NOOP("paper", "for far: walking, school board, faces"));
    }
}

QString purposeCaution(Purpose purpose)
{
    switch (purpose) {
    case Purpose::near:
        return paperWords(
            QT_TRANSLATE_NOOP("paper", "For near work only. Not for walking, riding or driving."));
    case Purpose::intermediate:
        return paperWords(
            QT_TRANSLATE_NOOP("paper", "For work at arm's length only. Not for walking, riding or driving."));
    case Purpose::bifocal:
        return paperWords(QT_TRANSLATE_NOOP(
            "paper", "The lower part is for near: take care on steps and kerbs. Drive only if your sight "
                     "with these meets the law where you live."));
    default:
        return paperWords(
            QT_TRANSLATE_NOOP("paper", "Drive only if your sight with these meets the law where you live."));
    }
}

void addHead(const PersonRecord& person, const PaperSource& source, std::vector<Block>& blocks)
{
    if (person.person.empty())
        throw errorSaying(
            "paper-person-empty",
            {QS_SAY("core", "this person has no camp code; give one before anything is printed"), {}}, 3);
    blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Code")), ltr(person.person)));
    blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Day and place")),
                           ltr(source.day) + QStringLiteral(" · ") + typed(source.site)));
}

void addPersonFoot(const PersonRecord& person, const PersonAnswer& answer, const PaperSource& source,
                   std::vector<Block>& blocks)
{
    const auto& profile = answer.recommendation.profile;
    blocks.push_back(smallPrint(
        paperWords(QT_TRANSLATE_NOOP("paper", "Suggested from the prescription of %1 of %2 by rules %3, "
                                              "version %4. This is not an eye examination."))
            .arg(orBlank(person.prescriber, QT_TRANSLATE_NOOP("paper", "(prescriber not named)")),
                 person.writtenOn.empty() ? paperWords(QT_TRANSLATE_NOOP("paper", "(no date)"))
                                          : ltr(person.writtenOn),
                 ltr(profile), ltr(answer.profileVersion))));
    blocks.push_back(smallPrint(rulesWords(source)));
}

void addFoot(const PaperSource& source, std::vector<Block>& blocks)
{
    blocks.push_back(smallPrint(ltr(source.day) + QStringLiteral(" · ") + typed(source.site) +
                                QStringLiteral(" · ") + rulesWords(source)));
}

} // namespace quarterstep
