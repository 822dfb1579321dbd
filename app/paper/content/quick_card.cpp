// SPDX-License-Identifier: GPL-3.0-or-later
// One page a role: what to do, in the order of the day.
#include "app/paper/content/paper_words.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

#include <iterator>

namespace quarterstep
{
namespace
{

// Too long for a line of the lists below.
const char* const tellAndGive =
    QT_TRANSLATE_NOOP("paper", "Tell what the glasses are for, what is left, and when to come back; give the "
                               "note.");
const char* const copyTheFolder =
    QT_TRANSLATE_NOOP("paper", "Close the program, then copy the whole folder to a stick at the end of the "
                               "day.");
const char* const lookForTheSlip =
    QT_TRANSLATE_NOOP("paper", "Take a sample of pairs, read them, and look for the slip, not for somebody "
                               "to blame.");

const char* const opticianSteps[] = {
    QT_TRANSLATE_NOOP("paper", "Type the camp code and the final prescription as written; signs always."),
    QT_TRANSLATE_NOOP("paper", "Pain, red eye, sudden loss, flashes, double vision: the clinic first."),
    QT_TRANSLATE_NOOP("paper", "Measure the distance between the eyes; for reading the near one."),
    QT_TRANSLATE_NOOP("paper", "Fetch what is suggested from its bin and scan the label."),
    QT_TRANSLATE_NOOP("paper", "Read the pair with the focimeter: does it hold what the label says?"),
    QT_TRANSLATE_NOOP("paper", "Try it on the face; take the acuity of each eye with it."),
    QT_TRANSLATE_NOOP("paper", "Outside a limit: say no, or write the reason in your own words."),
    tellAndGive,
    QT_TRANSLATE_NOOP("paper", "Put back what was tried and not taken, each into the bin of its label."),
};

const char* const keeperSteps[] = {
    QT_TRANSLATE_NOOP("paper", "Take in a delivery by scanning it; a new lot waits until samples are read."),
    QT_TRANSLATE_NOOP("paper", "Print labels for what came; one on each case, one on each bin."),
    QT_TRANSLATE_NOOP("paper", "A pair off its label goes into quarantine, never back into the bin."),
    QT_TRANSLATE_NOOP("paper", "Returned pairs are cleaned and read before they are given again."),
    QT_TRANSLATE_NOOP("paper", "Count by two persons on the blind sheet; every difference has a reason."),
    QT_TRANSLATE_NOOP("paper", "Send to another site with a list; what arrives is counted there."),
    copyTheFolder,
};

const char* const supervisorSteps[] = {
    QT_TRANSLATE_NOOP("paper", "Choose the rules with the prescriber, and name them to the team."),
    QT_TRANSLATE_NOOP("paper", "Look at what was given outside a limit, and at its reasons, each evening."),
    QT_TRANSLATE_NOOP("paper", "Every letter to the clinic is counted when its lower part comes back."),
    QT_TRANSLATE_NOOP("paper", "Every pair that is ordered is followed until it is collected."),
    lookForTheSlip,
    QT_TRANSLATE_NOOP("paper", "Codes leave the camp, names do not."),
};

std::span<const char* const> stepsOf(Role role)
{
    switch (role) {
    case Role::optician:
        return opticianSteps;
    case Role::keeper:
        return keeperSteps;
    case Role::supervisor:
        break;
    }
    return supervisorSteps;
}

QString roleWords(Role role)
{
    switch (role) {
    case Role::optician:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Quick card: at the table"));
    case Role::keeper:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Quick card: keeper of the box"));
    case Role::supervisor:
        break;
    }
    return paperWords(QT_TRANSLATE_NOOP("paper", "Quick card: supervisor"));
}

} // namespace

Paper quickCard(Role role, const PaperSource& source)
{
    Paper paper{PaperKind::quickCard, {titled(roleWords(role))}};
    auto& blocks = paper.blocks;
    int number = 0;
    for (const char* step : stepsOf(role))
        blocks.push_back(
            saying(QStringLiteral("%1  %2").arg(ltr(QString::number(++number)), paperWords(step))));
    blocks.push_back(headed(paperWords(QT_TRANSLATE_NOOP("paper", "Told with every pair"))));
    for (const Purpose purpose : {Purpose::near, Purpose::distance})
        blocks.push_back(warning(purposeCaution(purpose)));
    blocks.push_back(saying(paperWords(QT_TRANSLATE_NOOP(
        "paper", "A suggestion is not an eye examination. The prescriber and the optician decide."))));
    addFoot(source, blocks);
    return paper;
}

} // namespace quarterstep
