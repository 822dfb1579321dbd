// SPDX-License-Identifier: GPL-3.0-or-later
// The letter to the clinic: the observation and the wish, never a diagnosis. Each reason for a referral has
// words of its own here, since the flags of matching speak to the optician.
#include "app/paper/content/paper_words.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace quarterstep
{
namespace
{

struct Observation {
    const char* code; ///< of a flag
    const char* text;
};

const Observation observations[] = {
    {"sudden-loss", QT_TRANSLATE_NOOP("paper", "Says that sight was lost suddenly.")},
    {"pain", QT_TRANSLATE_NOOP("paper", "Says that an eye hurts.")},
    {"red-eye", QT_TRANSLATE_NOOP("paper", "An eye is red.")},
    {"flashes-or-floaters", QT_TRANSLATE_NOOP("paper", "Sees new flashes or floaters.")},
    {"double-vision", QT_TRANSLATE_NOOP("paper", "Sees double.")},
    {"white-pupil", QT_TRANSLATE_NOOP("paper", "A pupil looks white.")},
    {"child-squint", QT_TRANSLATE_NOOP("paper", "A child; the eyes do not look the same way.")},
    {"cycloplegia-wanted", QT_TRANSLATE_NOOP("paper", "The prescriber asks for a refraction with drops.")},
    {"distortion", QT_TRANSLATE_NOOP("paper", "Straight lines look bent or broken.")},
    {"field-loss", QT_TRANSLATE_NOOP("paper", "A part of the field of view is missing.")},
    {"halos", QT_TRANSLATE_NOOP("paper", "Sees rings round lights.")},
    {"child-below-6-9",
     QT_TRANSLATE_NOOP("paper", "A child who does not reach 6/9 in each eye with the final prescription.")},
    {"child-below-6-60", QT_TRANSLATE_NOOP("paper", "A child who came with less than 6/60 in an eye.")},
    {"child-high-power",
     QT_TRANSLATE_NOOP("paper", "A child with +3.50 D or more, or a cylinder of 1.50 D or more.")},
    {"young-difference", QT_TRANSLATE_NOOP("paper", "Under 8 years; the eyes differ by 1.50 D or more.")},
    {"adult-below-6-12",
     QT_TRANSLATE_NOOP("paper", "Less than 6/12 in the better eye with the best prescription found.")},
    {"high-power", QT_TRANSLATE_NOOP("paper", "A mean sphere beyond 6.00 D.")},
    {"aphakia", QT_TRANSLATE_NOOP("paper", "A sphere of +8.00 D or more.")},
};

void addObservations(const PersonRecord& person, const Recommendation& answer, std::vector<Block>& blocks)
{
    blocks.push_back(headed(paperWords(QT_TRANSLATE_NOOP("paper", "What was observed"))));
    for (const auto& each : observations)
        if (std::any_of(answer.flags.begin(), answer.flags.end(),
                        [&](const Flag& flag) { return flag.code == each.code; }))
            blocks.push_back(saying(QStringLiteral("• ") + paperWords(each.text)));
    if (!person.symptoms.empty())
        blocks.push_back(
            field(paperWords(QT_TRANSLATE_NOOP("paper", "In the person's words")), typed(person.symptoms)));
}

QString acuityWords(const std::optional<Acuity>& acuity)
{
    return acuity ? ltr(acuity->asRecorded) : QStringLiteral("–");
}

Block acuityTable(const PersonRecord& person)
{
    Block table{BlockKind::table, {}, {}, {}, {2, 2, 2, 2, 2}};
    table.rows.push_back(
        {paperWords(QT_TRANSLATE_NOOP("paper", "Acuity")), paperWords(QT_TRANSLATE_NOOP("paper", "bare")),
         paperWords(QT_TRANSLATE_NOOP("paper", "own pair")),
         paperWords(QT_TRANSLATE_NOOP("paper", "pinhole")), paperWords(QT_TRANSLATE_NOOP("paper", "best"))});
    for (const Eye eye : bothEyes) {
        const auto& acuity = person.eyes.of(eye).acuity;
        table.rows.push_back({eyeName(eye), acuityWords(acuity.unaided), acuityWords(acuity.habitual),
                              acuityWords(acuity.pinhole), acuityWords(acuity.best)});
    }
    return table;
}

QString wish(Urgency urgency)
{
    switch (urgency) {
    case Urgency::sameDay:
        return paperWords(
            QT_TRANSLATE_NOOP("paper", "Please see this person today, and tell us on the part below."));
    case Urgency::soon:
        return paperWords(QT_TRANSLATE_NOOP(
            "paper", "Please see this person in the next days, and tell us on the part below."));
    case Urgency::routine:
        break;
    }
    return paperWords(QT_TRANSLATE_NOOP(
        "paper", "Please see this person at a usual appointment, and tell us on the part below."));
}

QString glassesWords(const PersonAnswer& answer)
{
    if (answer.recommendation.referral == Referral::before)
        return paperWords(QT_TRANSLATE_NOOP("paper", "No glasses are given until you have seen the person."));
    if (answer.pair && answer.pair->handedOver)
        return paperWords(QT_TRANSLATE_NOOP("paper", "Glasses were given today: %1"))
            .arg(purposeWords(answer.recommendation.purpose));
    return paperWords(QT_TRANSLATE_NOOP("paper", "No glasses are recorded as given yet."));
}

/// What comes back from the clinic.
void addStub(const PersonRecord& person, const PaperSource& source, std::vector<Block>& blocks)
{
    blocks.push_back(
        {BlockKind::cut, paperWords(QT_TRANSLATE_NOOP("paper", "Please return this part")), {}, {}, {}});
    blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Code")), ltr(person.person)));
    blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Return to")), typed(source.site)));
    for (const char* name : {QT_TRANSLATE_NOOP("paper", "Seen on"), QT_TRANSLATE_NOOP("paper", "Found"),
                             QT_TRANSLATE_NOOP("paper", "Done"),
                             QT_TRANSLATE_NOOP("paper", "Glasses: may be given / wait / other prescription"),
                             QT_TRANSLATE_NOOP("paper", "Signature")})
        blocks.push_back(toWrite(paperWords(name)));
    blocks.push_back(barsOf(person.person));
}

} // namespace

Paper referralLetter(const PersonRecord& person, const PersonAnswer& answer, const PaperSource& source)
{
    const auto& recommendation = answer.recommendation;
    if (recommendation.referral == Referral::no)
        throw errorSaying("paper-not-for",
                          {QS_SAY("core", "nothing of %1 asks for a referral; there is no letter to print"),
                           {person.person}},
                          3);
    Paper paper{PaperKind::letter, {titled(paperName(PaperKind::letter))}};
    auto& blocks = paper.blocks;
    addHead(person, source, blocks);
    if (person.age)
        blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Age")),
                               ltr(QString::number(static_cast<int>(*person.age)))));
    blocks.push_back(
        toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "Name (write it in only if the person agrees)"))));
    addObservations(person, recommendation, blocks);
    blocks.push_back(acuityTable(person));
    blocks.push_back(headed(paperWords(QT_TRANSLATE_NOOP("paper", "Prescription found"))));
    blocks.push_back(prescriptionTable(person));
    blocks.push_back(headed(paperWords(QT_TRANSLATE_NOOP("paper", "What we ask"))));
    blocks.push_back(warning(wish(recommendation.urgency)));
    blocks.push_back(saying(glassesWords(answer)));
    addPersonFoot(person, answer, source, blocks);
    addStub(person, source, blocks);
    return paper;
}

} // namespace quarterstep
