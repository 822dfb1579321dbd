// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/content/report_words.hpp"

#include "app/paper/content/paper_words.hpp"
#include "app/paper/content/picture.hpp"
#include "app/session/keeping.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/words.hpp"
#include "core/record/masking.hpp"

#include <QCoreApplication>

namespace quarterstep
{

QString countWords(const ShownCount& count)
{
    return count ? figure(*count)
                 : paperWords(QT_TRANSLATE_NOOP("paper", "under %1")).arg(figure(leastShown));
}

QString ratioWords(const ReportGroup& group)
{
    if (group.judged == ShownCount(0))
        return paperWords(QT_TRANSLATE_NOOP("paper", "none yet"));
    if (!group.shown())
        return paperWords(QT_TRANSLATE_NOOP("paper", "%1 of %2"))
            .arg(countWords(group.mismatches), countWords(group.judged));
    const Tally tally{*group.judged, *group.mismatches};
    const auto limits = exactLimits(tally);
    return paperWords(QT_TRANSLATE_NOOP("paper", "%1 of %2, %3 (95 % limits %4 to %5)"))
        .arg(figure(tally.mismatches), figure(tally.judged), shareWords(tally.share()),
             shareWords(limits.lower), shareWords(limits.upper));
}

QString stepWords(NextStep step)
{
    switch (step) {
    case NextStep::refraction:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Refraction"));
    case NextStep::dispensing:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Dispensing"));
    case NextStep::bin:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Bin"));
    case NextStep::supplier:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Supplier"));
    case NextStep::stock:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Stock"));
    case NextStep::followUp:
        return paperWords(QT_TRANSLATE_NOOP("paper", "Follow-up"));
    case NextStep::record:
        break;
    }
    return paperWords(QT_TRANSLATE_NOOP("paper", "Record"));
}

QString atOddsWords()
{
    return paperWords(QT_TRANSLATE_NOOP(
        "paper",
        "At odds: by the record, the pair is not one that the rules would call acceptable, or what was "
        "measured beside the record speaks against it. This page is about records; a person decides what "
        "they mean. Nothing here is a ranking."));
}

QString byWords(const std::string& by)
{
    if (by == "site")
        return paperWords(QT_TRANSLATE_NOOP("paper", "Site"));
    if (by == "week")
        return paperWords(QT_TRANSLATE_NOOP("paper", "Week from"));
    if (by == "profile")
        return paperWords(QT_TRANSLATE_NOOP("paper", "Rules"));
    if (by == "purpose")
        return paperWords(QT_TRANSLATE_NOOP("paper", "Purpose"));
    if (by == "kind")
        return paperWords(QT_TRANSLATE_NOOP("paper", "Kind of pair"));
    return paperWords(QT_TRANSLATE_NOOP("paper", "Desk (numbers of this report)"));
}

QString byHeading(const std::string& by)
{
    if (by == "site")
        return paperWords(QT_TRANSLATE_NOOP("paper", "By site"));
    if (by == "week")
        return paperWords(QT_TRANSLATE_NOOP("paper", "By week"));
    if (by == "profile")
        return paperWords(QT_TRANSLATE_NOOP("paper", "By rules"));
    if (by == "purpose")
        return paperWords(QT_TRANSLATE_NOOP("paper", "By purpose"));
    if (by == "kind")
        return paperWords(QT_TRANSLATE_NOOP("paper", "By kind of pair"));
    return paperWords(QT_TRANSLATE_NOOP("paper", "By desk"));
}

QString groupName(const std::string& by, const std::string& name)
{
    if (const auto purpose = purposeNamed(name); purpose && by == "purpose")
        return say(*purpose);
    if (by == "kind" && name == "ready-made")
        return paperWords(QT_TRANSLATE_NOOP("paper", "ready-made"));
    if (by == "kind" && name == "bifocal")
        return paperWords(QT_TRANSLATE_NOOP("paper", "bifocal"));
    if (by == "kind")
        return paperWords(QT_TRANSLATE_NOOP("paper", "lenses in a frame"));
    return ltr(name);
}

QString cellName(const std::string& name)
{
    for (const auto& stage : stagesOfFollowUp())
        if (name == stage.word)
            return say({stage.words, {}});
    if (const auto wear = wearNamed(name))
        return say({wordsOf(*wear), {}});
    static const std::pair<const char*, const char*> words[] = {
        {"not-seen", QT_TRANSLATE_NOOP("paper", "nobody has looked yet")},
        {"met", QT_TRANSLATE_NOOP("paper", "met")},
        {"under-met", QT_TRANSLATE_NOOP("paper", "under-met")},
        {"unmet", QT_TRANSLATE_NOOP("paper", "unmet")},
        {"no-need", QT_TRANSLATE_NOOP("paper", "no need")},
        {"other-cause", QT_TRANSLATE_NOOP("paper", "another cause")},
        {"unknown", QT_TRANSLATE_NOOP("paper", "not known")}};
    for (const auto& [word, text] : words)
        if (name == word)
            return paperWords(text);
    return typed(name);
}

} // namespace quarterstep
