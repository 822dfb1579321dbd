// SPDX-License-Identifier: GPL-3.0-or-later
// The person's own note: what was written, what was given and what it leaves, what to mind, when to come
// back.
#include "app/paper/content/paper_words.hpp"
#include "app/paper/content/what_is_left.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace quarterstep
{
namespace
{

/// Which title: by verdict; a referral before any glasses stands above everything.
QString titleOf(const Recommendation& answer, const std::optional<PaperPair>& pair)
{
    if (pair && pair->handedOver)
        return paperWords(QT_TRANSLATE_NOOP("paper", "Your glasses"));
    switch (answer.verdict) {
    case Verdict::stock:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Glasses suggested for you"));
    case Verdict::custom:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Glasses to be made for you"));
    case Verdict::none:
        return paperWords(QT_TRANSLATE_NOOP("paper", "No glasses needed"));
    case Verdict::incomplete:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Not finished yet"));
    case Verdict::refer:
        break;
    }
    return paperWords(QT_TRANSLATE_NOOP("paper", "Please go to the eye clinic first"));
}

QString clinicWords(Urgency urgency)
{
    switch (urgency) {
    case Urgency::sameDay:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Go to the eye clinic today, and take the letter."));
    case Urgency::soon:
        return paperWords(
            QT_TRANSLATE_NOOP("paper", "Go to the eye clinic in the next days, and take the letter."));
    case Urgency::routine:
        break;
    }
    return paperWords(QT_TRANSLATE_NOOP(
        "paper", "Go to the eye clinic when it next receives people, and take the letter."));
}

/// "RIGHT" only where right and left are separate pieces.
QString pieceWords(const PaperPair::Piece& piece)
{
    switch (piece.side) {
    case PartSide::right:
        return paperWords(QT_TRANSLATE_NOOP("paper", "right lens %1")).arg(ltr(piece.line.name));
    case PartSide::left:
        return paperWords(QT_TRANSLATE_NOOP("paper", "left lens %1")).arg(ltr(piece.line.name));
    case PartSide::frame:
        return paperWords(QT_TRANSLATE_NOOP("paper", "frame %1")).arg(ltr(piece.line.name));
    case PartSide::pair:
        break;
    }
    return ltr(piece.line.name);
}

QString modelWords(const PaperPair& pair)
{
    QStringList words;
    for (const auto& piece : pair.pieces)
        for (const auto* text : {&piece.line.frame.model, &piece.line.frame.colour})
            if (!text->empty())
                words << typed(*text);
    return words.join(QStringLiteral(", "));
}

void addPair(const Recommendation& answer, const PaperPair& pair, std::vector<Block>& blocks)
{
    QStringList pieces;
    for (const auto& piece : pair.pieces)
        pieces << pieceWords(piece);
    blocks.push_back(headed(pair.handedOver ? paperWords(QT_TRANSLATE_NOOP("paper", "What you were given"))
                                            : paperWords(QT_TRANSLATE_NOOP("paper", "What is suggested"))));
    blocks.push_back(saying(purposeWords(answer.purpose)));
    for (const Eye eye : bothEyes)
        if (!pair.supply.bifocalAddition)
            blocks.push_back(field(eyeName(eye), powerWords(pair.supply.power.of(eye))));
        else
            blocks.push_back(
                field(eyeName(eye), powerWords(pair.supply.power.of(eye)) + QLatin1Char(' ') +
                                        paperWords(QT_TRANSLATE_NOOP("paper", "add %1"))
                                            .arg(ltr(writeDioptres(*pair.supply.bifocalAddition)))));
    blocks.push_back(
        field(paperWords(QT_TRANSLATE_NOOP("paper", "Line")), pieces.join(QStringLiteral(", "))));
    if (const auto model = modelWords(pair); !model.isEmpty())
        blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Frame")), model));
    blocks.push_back(headed(paperWords(QT_TRANSLATE_NOOP("paper", "What is left"))));
    if (answer.need)
        for (const auto& line : whatIsLeft(*answer.need, pair.fit))
            blocks.push_back(saying(line));
    if (const auto* failing = pair.fit.firstWith(Band::fails))
        blocks.push_back(warning(
            paperWords(QT_TRANSLATE_NOOP("paper", "Outside limit: %1.")).arg(say(failing->criterion))));
    if (!pair.reason.empty())
        blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Given because")), typed(pair.reason)));
}

bool anyUsed(const PaperPair& pair)
{
    return std::any_of(pair.pieces.begin(), pair.pieces.end(),
                       [](const auto& piece) { return piece.line.origin == Origin::used; });
}

/// What everybody who leaves with a pair is told.
void addWearing(const PersonRecord& person, const Recommendation& answer, const PaperPair& pair,
                std::vector<Block>& blocks)
{
    blocks.push_back(headed(paperWords(QT_TRANSLATE_NOOP("paper", "Please mind"))));
    blocks.push_back(warning(purposeCaution(answer.purpose)));
    if (anyUsed(pair))
        blocks.push_back(
            saying(paperWords(QT_TRANSLATE_NOOP("paper", "This pair was worn by somebody before."))));
    if (person.oneSeeingEye())
        blocks.push_back(warning(paperWords(QT_TRANSLATE_NOOP(
            "paper", "You see with one eye: ask for lenses that do not break, and wear eye protection."))));
    blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
        "paper", "New glasses may feel strange for a week. Double vision, pain or sudden loss of sight: stop "
                 "wearing them and go to an eye clinic the same day."))));
    if (person.child())
        blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
            "paper", "Wear them as the prescriber told. Come back in 6 to 12 months, or at once if an eye "
                     "turns or sees worse."))));
    else
        blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
            "paper", "Come back if your sight changes, and for a new eye test in two years."))));
}

void addCustom(const PersonRecord& person, const PersonAnswer& answer, std::vector<Block>& blocks)
{
    blocks.push_back(saying(paperWords(
        QT_TRANSLATE_NOOP("paper", "Nothing in the box comes near enough, so glasses are to be made."))));
    if (!answer.recommendation.reason.empty())
        blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "For the optician")),
                               told(answer.recommendation.reason)));
    blocks.push_back(toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "Collect at"))));
    blocks.push_back(toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "On or after"))));
    if (!answer.interim)
        return;
    blocks.push_back(
        warning(paperWords(QT_TRANSLATE_NOOP("paper", "Until then: temporary pair. Not for driving."))));
    addPair(answer.recommendation, *answer.interim, blocks);
    addWearing(person, answer.recommendation, *answer.interim, blocks);
}

void addIncomplete(const Recommendation& answer, std::vector<Block>& blocks)
{
    blocks.push_back(
        saying(paperWords(QT_TRANSLATE_NOOP("paper", "Something is missing before glasses can be given:"))));
    for (const auto& need : answer.needs)
        blocks.push_back(saying(QStringLiteral("• ") + told(need)));
    blocks.push_back(toWrite(paperWords(QT_TRANSLATE_NOOP("paper", "Come back on"))));
}

void addNone(const Recommendation& answer, std::vector<Block>& blocks)
{
    blocks.push_back(saying(purposeWords(answer.purpose)));
    if (!answer.reason.empty())
        blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Because")), told(answer.reason)));
    blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
        "paper", "Come back if your sight changes, and for a new eye test in two years."))));
}

void addVerdict(const PersonRecord& person, const PersonAnswer& answer, std::vector<Block>& blocks)
{
    const auto& recommendation = answer.recommendation;
    if (answer.pair && (answer.pair->handedOver || recommendation.verdict == Verdict::stock)) {
        addPair(recommendation, *answer.pair, blocks);
        addWearing(person, recommendation, *answer.pair, blocks);
    } else if (recommendation.verdict == Verdict::custom) {
        addCustom(person, answer, blocks);
    } else if (recommendation.verdict == Verdict::incomplete) {
        addIncomplete(recommendation, blocks);
    } else if (recommendation.verdict == Verdict::none) {
        addNone(recommendation, blocks);
    } else {
        blocks.push_back(saying(
            paperWords(QT_TRANSLATE_NOOP("paper", "Glasses wait until the clinic has seen your eyes."))));
    }
}

} // namespace

std::optional<PaperPair> pairFor(const Recommendation& answer, std::span<const Part> parts,
                                 std::span<const StockLine> stock, const FittingRules& rules,
                                 const TrialAcuity* trial)
{
    const auto* profile = rules.find(answer.profile);
    if (!answer.need || profile == nullptr || parts.empty())
        return std::nullopt;
    auto supply = supplyOf(parts, stock, *answer.need, rules.settings);
    if (!supply)
        return std::nullopt;
    PaperPair pair;
    pair.fit = judge(*answer.need, *supply, *profile, trial);
    pair.supply = std::move(*supply);
    for (const auto& part : parts)
        pair.pieces.push_back({part.side, stock[part.line]});
    return pair;
}

Paper handOverNote(const PersonRecord& person, const PersonAnswer& answer, const PaperSource& source)
{
    const auto& recommendation = answer.recommendation;
    Paper paper{PaperKind::note, {titled(titleOf(recommendation, answer.pair))}};
    auto& blocks = paper.blocks;
    addHead(person, source, blocks);
    if (recommendation.referral != Referral::no)
        blocks.push_back(warning(clinicWords(recommendation.urgency)));
    blocks.push_back(headed(paperWords(QT_TRANSLATE_NOOP("paper", "Your prescription"))));
    blocks.push_back(prescriptionTable(person));
    addVerdict(person, answer, blocks);
    if (recommendation.recheck)
        blocks.push_back(
            saying(paperWords(QT_TRANSLATE_NOOP("paper", "Your eyes should be measured once more."))));
    blocks.push_back(barsOf(person.person));
    addPersonFoot(person, answer, source, blocks);
    return paper;
}

} // namespace quarterstep
