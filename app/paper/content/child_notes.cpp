// SPDX-License-Identifier: GPL-3.0-or-later
// Notes about a child: for the guardian, and for the teacher, who needs no prescription.
#include "app/paper/content/paper_words.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

void refuseGrownUp(const PersonRecord& person)
{
    if (person.age && !person.child())
        throw errorSaying(
            "paper-not-for",
            {QS_SAY("core", "%1 is not under 16; print the note for the person instead"), {person.person}},
            3);
}

bool wears(const PersonAnswer& answer)
{
    return answer.pair && (answer.pair->handedOver || answer.recommendation.verdict == Verdict::stock);
}

QString outcome(const PersonAnswer& answer)
{
    if (answer.pair && answer.pair->handedOver)
        return paperWords(QT_TRANSLATE_NOOP("paper", "The child was given glasses: %1."))
            .arg(purposeWords(answer.recommendation.purpose));
    switch (answer.recommendation.verdict) {
    case Verdict::stock:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Glasses are suggested for the child: %1."))
            .arg(purposeWords(answer.recommendation.purpose));
    case Verdict::custom:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Glasses are to be made for the child."));
    case Verdict::none:
        return paperWords(QT_TRANSLATE_NOOP("paper", "The child needs no glasses for this."));
    case Verdict::incomplete:
        return paperWords(QT_TRANSLATE_NOOP("paper", "The eye test is not finished; the child comes again."));
    case Verdict::refer:
        break;
    }
    return paperWords(QT_TRANSLATE_NOOP("paper", "The child should see the eye clinic before any glasses."));
}

QString clinicLine(Urgency urgency)
{
    switch (urgency) {
    case Urgency::sameDay:
        return paperWords(
            QT_TRANSLATE_NOOP("paper", "Please take the child and the letter to the eye clinic today."));
    case Urgency::soon:
        return paperWords(QT_TRANSLATE_NOOP(
            "paper", "Please take the child and the letter to the eye clinic in the next days."));
    case Urgency::routine:
        break;
    }
    return paperWords(QT_TRANSLATE_NOOP(
        "paper", "Please take the child and the letter to the eye clinic when it next receives people."));
}

} // namespace

Paper guardianNote(const PersonRecord& person, const PersonAnswer& answer, const PaperSource& source)
{
    refuseGrownUp(person);
    Paper paper{PaperKind::guardianNote, {titled(paperName(PaperKind::guardianNote))}};
    auto& blocks = paper.blocks;
    addHead(person, source, blocks);
    blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP("paper", "The eyes of your child were tested."))));
    blocks.push_back(saying(outcome(answer)));
    if (answer.recommendation.referral != Referral::no)
        blocks.push_back(warning(clinicLine(answer.recommendation.urgency)));
    blocks.push_back(prescriptionTable(person));
    if (wears(answer)) {
        blocks.push_back(
            toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "To be worn (as the prescriber told)"))));
        blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
            "paper", "The glasses may feel strange for a week. Double vision, pain or sudden loss of sight: "
                     "take them off and go to an eye clinic the same day."))));
        blocks.push_back(warning(purposeCaution(answer.recommendation.purpose)));
    }
    blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
        "paper", "Come back in 6 to 12 months, or at once if an eye turns or sees worse."))));
    blocks.push_back(toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "Told to (guardian), by"))));
    addPersonFoot(person, answer, source, blocks);
    return paper;
}

Paper teacherNote(const PersonRecord& person, const PersonAnswer& answer, const PaperSource& source)
{
    refuseGrownUp(person);
    Paper paper{PaperKind::teacherNote, {titled(paperName(PaperKind::teacherNote))}};
    auto& blocks = paper.blocks;
    addHead(person, source, blocks);
    blocks.push_back(saying(outcome(answer)));
    if (wears(answer)) {
        blocks.push_back(
            toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "To be worn (as the prescriber told)"))));
        blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
            "paper", "Please help the child to wear them, and to keep them clean and in their case."))));
        blocks.push_back(warning(purposeCaution(answer.recommendation.purpose)));
    } else {
        blocks.push_back(saying(paperWords(
            QT_TRANSLATE_NOOP("paper", "Please let the child sit where the board is read easily."))));
    }
    blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
        "paper", "Tell the guardian at once if an eye turns or hurts, or if the child sees worse."))));
    addPersonFoot(person, answer, source, blocks);
    return paper;
}

} // namespace quarterstep
