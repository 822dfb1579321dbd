// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/help/topics.hpp"

/// Marks words for translation without needing more than a literal.
#define QT_TRANSLATE_NOOP(context, text) text

namespace quarterstep
{

std::span<const HelpTopic> helpTopics()
{
    static constexpr HelpTopic topics[] = {
        {"first-day",
         QT_TRANSLATE_NOOP("command", "the first day of the optician, the keeper, the supervisor"),
         firstDayHelpText},
        {"desk", QT_TRANSLATE_NOOP("command", "the window: beginning, drafts, settings, languages"),
         deskHelpText},
        {"power-vectors", QT_TRANSLATE_NOOP("command", "powers as vectors, in pictures"),
         powerVectorsHelpText},
        {"cautions", QT_TRANSLATE_NOOP("command", "children, signs, driving, high powers: what to mind"),
         cautionsHelpText},
        {"matching",
         QT_TRANSLATE_NOOP("command", "how a pair is judged: every limit, its source, every flag"),
         matchingHelpText},
        {"notation", QT_TRANSLATE_NOOP("command", "how powers, prisms and acuities may be written"),
         notationHelpText},
        {"optics", QT_TRANSLATE_NOOP("command", "every formula, with range, error and source"),
         opticsHelpText},
        {"tolerances", QT_TRANSLATE_NOOP("command", "a focimeter reading against what was ordered"),
         tolerancesHelpText},
        {"paper", QT_TRANSLATE_NOOP("command", "every paper that is printed, and how"), paperHelpText},
        {"planning",
         QT_TRANSLATE_NOOP("command",
                           "the waiting line and the next boxes: what is optimal, bounded, assumed"),
         planningHelpText},
        {"audit",
         QT_TRANSLATE_NOOP("command", "what an audit finds, which slips it can see and which it cannot"),
         auditHelpText},
        {"durability", QT_TRANSLATE_NOOP("command", "what is promised about records, and how it is tested"),
         durabilityHelpText},
        {"privacy", QT_TRANSLATE_NOOP("command", "what is kept of persons, what leaves, how to forget"),
         privacyHelpText},
        {"evidence", QT_TRANSLATE_NOOP("command", "how firm the published ground is, and what nobody knows"),
         evidenceHelpText},
        {"exchange", QT_TRANSLATE_NOOP("command", "prescriptions from elsewhere, and in open standards"),
         exchangeHelpText},
        {"grammar", QT_TRANSLATE_NOOP("command", "every file that is read or written, as grammar"),
         grammarHelpText},
        {"files", QT_TRANSLATE_NOOP("command", "files, exit codes and the codes of findings"), filesHelpText},
    };
    return topics;
}

} // namespace quarterstep
