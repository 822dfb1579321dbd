// SPDX-License-Identifier: GPL-3.0-or-later
// audit due: who is to be seen again, what was found, and the effective coverage of those who came.
#include "app/command/audit_steps.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/session/follow_up.hpp"
#include "app/session/wording.hpp"
#include "core/auditing/rates.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

QString stateWords(DueState state)
{
    if (state == DueState::soon)
        return commandWords(QT_TRANSLATE_NOOP("command", "soon"));
    return state == DueState::due ? commandWords(QT_TRANSLATE_NOOP("command", "due"))
                                  : commandWords(QT_TRANSLATE_NOOP("command", "late"));
}

QJsonObject jsonCoverage(const EffectiveCoverage& coverage)
{
    return {{"met", coverage.of(SightNeed::met)},
            {"under_met", coverage.of(SightNeed::underMet)},
            {"unmet", coverage.of(SightNeed::unmet)},
            {"no_need", coverage.of(SightNeed::none)},
            {"other_cause", coverage.of(SightNeed::otherCause)},
            {"unknown", coverage.of(SightNeed::unknown)},
            {"share", jsonNumber(coverage.share())}};
}

QJsonObject jsonDue(const std::vector<FollowUpDue>& due, const WearCount& wear,
                    const CoverageOfCamp& coverage)
{
    QJsonArray rows;
    for (const auto& each : due)
        rows.append(QJsonObject{{"person", jsonText(each.wearer.person)},
                                {"lines", jsonText(each.wearer.lines)},
                                {"purposes", jsonText(each.wearer.purposes)},
                                {"given", jsonText(localDay(each.wearer.givenMs))},
                                {"days", each.days},
                                {"stage", stagesOfFollowUp()[each.stage].word},
                                {"state", wordOf(each.state)}});
    QJsonObject outcomes;
    for (std::size_t i = 0; i < wearOutcomes; ++i)
        if (static_cast<Wear>(i) != Wear::notFound)
            outcomes.insert(QLatin1String(wordOf(static_cast<Wear>(i))), wear.by[i]);
    return {{"due", rows},
            {"wear", QJsonObject{{"met", wear.met},
                                 {"wearing", wear.wearing},
                                 {"not_found", wear.notFound},
                                 {"not_seen", wear.notSeen},
                                 {"outcomes", outcomes}}},
            {"effective_coverage", QJsonObject{{"people", coverage.people},
                                               {"before", jsonCoverage(coverage.before)},
                                               {"after", jsonCoverage(coverage.after)}}}};
}

void showCoverage(const char* words, const EffectiveCoverage& coverage, Output& out)
{
    const auto share = coverage.share();
    out.line(QStringLiteral("  ") +
             commandWords(words).arg(share ? percent(*share) + QStringLiteral(" %") : QStringLiteral("–")) +
             QStringLiteral(": ") +
             commandWords(QT_TRANSLATE_NOOP(
                              "command", "met %1, under-met %2, unmet %3; no need %4, another cause %5, not "
                                         "known %6"))
                 .arg(coverage.of(SightNeed::met))
                 .arg(coverage.of(SightNeed::underMet))
                 .arg(coverage.of(SightNeed::unmet))
                 .arg(coverage.of(SightNeed::none))
                 .arg(coverage.of(SightNeed::otherCause))
                 .arg(coverage.of(SightNeed::unknown)));
}

void showWear(const WearCount& wear, Output& out)
{
    if (wear.met == 0)
        return out.line(commandWords(QT_TRANSLATE_NOOP("command", "nobody has been seen again yet")));
    const auto limits = exactLimits({wear.met, wear.wearing});
    out.line(
        commandWords(QT_TRANSLATE_NOOP("command", "seen again %1, with the pair %2, %3 % (95 %: %4 to %5)"))
            .arg(wear.met)
            .arg(wear.wearing)
            .arg(percent(Tally{wear.met, wear.wearing}.share()), percent(limits.lower),
                 percent(limits.upper)));
    for (std::size_t i = 0; i < wearOutcomes; ++i)
        if (wear.by[i] > 0)
            out.line(QStringLiteral("  %1  ").arg(wear.by[i], 5) + say({wordsOf(static_cast<Wear>(i)), {}}));
}

} // namespace

int runAuditDue(const CommandLine& line, Output& out)
{
    const auto now = asOfMs(line);
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    out.tell(camp.findings());
    const auto facts = followUpFacts(camp);
    const auto due = followUpsDue(facts.wearers, facts.seen, now);
    const auto wear = countWear(facts.wearers, facts.seen);
    const auto coverage = coverageOfCamp(camp);
    if (line.has("--json")) {
        out.json(jsonDue(due, wear, coverage));
        return Exit::done;
    }
    for (const auto& each : due)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "%1  %2: %3, %4, given %5, %6 days ago"))
                     .arg(ltr(each.wearer.person), stateWords(each.state),
                          say({stagesOfFollowUp()[each.stage].words, {}}), ltr(each.wearer.lines),
                          ltr(localDay(each.wearer.givenMs)))
                     .arg(each.days));
    if (due.empty())
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "nobody is due to be seen again")));
    showWear(wear, out);
    out.line(commandWords(
                 QT_TRANSLATE_NOOP("command", "effective coverage for distance, of %1 persons with a record"))
                 .arg(coverage.people));
    showCoverage(QT_TRANSLATE_NOOP("command", "as they came %1"), coverage.before, out);
    showCoverage(QT_TRANSLATE_NOOP("command", "as they are now %1"), coverage.after, out);
    return Exit::done;
}

} // namespace quarterstep
