// SPDX-License-Identifier: GPL-3.0-or-later
// audit: every hand-over of the ledger judged again, and what the course of events shows.
#include "app/command/audit.hpp"
#include "app/command/audit_steps.hpp"

#include "app/command/inputs.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/witness_table.hpp"

#include <QCoreApplication>
#include <QDateTime>

#include <algorithm>
#include <set>
#include <thread>

namespace quarterstep
{
namespace
{

/// Reading the ledger keeps one processor busy; more judges than this would wait for it.
constexpr unsigned mostThreads = 4;

QJsonObject jsonFinding(const ToldFinding& told)
{
    QJsonValue slip = QJsonValue::Null;
    if (told.slip) {
        QJsonArray members;
        std::set<std::string> seen;
        for (const auto& member : told.slip->members)
            if (seen.insert(infoOf(member.kind).word).second)
                members.append(infoOf(member.kind).word);
        slip = QJsonObject{{"name", infoOf(told.slip->kind()).word},
                           {"probability", jsonNumber(told.slip->probability)},
                           {"members", members},
                           {"other_entry", jsonTextOrNull(told.slip->other)},
                           {"detail", say(told.slip->detail)}};
    }
    return {{"entry", jsonText(told.finding.entry)},
            {"class", infoOf(told.finding.kind).word},
            {"detail", say(told.finding.detail)},
            {"slip", slip}};
}

const char* funnelWord(Funnel funnel)
{
    return funnel == Funnel::alarm ? "alarm" : funnel == Funnel::alert ? "alert" : "inside";
}

QJsonObject jsonRate(const AuditRate& rate)
{
    return {{"by", jsonText(rate.by)},
            {"name", jsonText(rate.name)},
            {"judged", static_cast<qint64>(rate.tally.judged)},
            {"mismatches", static_cast<qint64>(rate.tally.mismatches)},
            {"share", jsonNumber(rate.tally.share())},
            {"lower", jsonNumber(rate.limits.lower)},
            {"upper", jsonNumber(rate.limits.upper)},
            {"funnel", funnelWord(rate.funnel)}};
}

/// Whole camp first, exact limits; a p-chart only where the volume carries one, else why not.
void showRates(const std::vector<AuditRate>& rates, Output& out)
{
    const auto percent = [](double share) { return QString::number(100.0 * share, 'f', 1); };
    for (const auto& rate : rates)
        out.line(
            QStringLiteral("  ") +
            commandWords(QT_TRANSLATE_NOOP("command", "%1 %2: %3 of %4, %5 % (95 %: %6 to %7), funnel %8"))
                .arg(QString::fromStdString(rate.by), ltr(rate.name))
                .arg(rate.tally.mismatches)
                .arg(rate.tally.judged)
                .arg(percent(rate.tally.share()), percent(rate.limits.lower), percent(rate.limits.upper),
                     QLatin1String(funnelWord(rate.funnel))));
    if (rates.empty() || rates.front().tally.mismatches == 0 ||
        rates.front().tally.mismatches == rates.front().tally.judged)
        return;
    const double share = rates.front().tally.share();
    const auto chart = gChart(share);
    out.line(
        QStringLiteral("  ") +
        commandWords(QT_TRANSLATE_NOOP("command", "g-chart: between two mismatches half the time at most %1 "
                                                  "hand-overs; more than %2 in a row is better than this"))
            .arg(chart.centre)
            .arg(chart.upper));
    out.line(QStringLiteral("  ") +
             commandWords(QT_TRANSLATE_NOOP("command",
                                            "a p-chart needs camps of %1 hand-overs or more at this share "
                                            "to show that things got better"))
                 .arg(*pChartNeeds(share)));
}

void tellChain(const AuditSummary& summary, const Camp& camp, Output& out)
{
    if (summary.chain.ok)
        return;
    out.tell(Severity::error, {camp.ledger().path(), 0, 0}, "chain-broken", auditStopsAt(summary.chain));
}

} // namespace

AuditOptions auditOptions(const CommandLine& line, const Camp& camp, Output& out)
{
    AuditOptions options;
    options.nowMs = QDateTime::currentMSecsSinceEpoch();
    options.profile = line.value("--profile");
    if (!options.profile.empty() && camp.rules().find(options.profile) == nullptr)
        throw usageError("profile-unknown",
                         {QS_SAY("core", "there is no profile named %1 in these rules"), {options.profile}});
    if (line.has("--priors")) {
        auto read = readAuditFile(line.value("--priors"));
        out.tell(read.findings);
        if (!read.usable())
            throw FilesNotRead();
        options.settings = std::move(read.value);
    }
    if (line.has("--witnesses")) {
        auto read = readWitnessFile(line.value("--witnesses"));
        out.tell(read.findings);
        if (!read.usable())
            throw FilesNotRead();
        for (const auto& [entry, later] : read.value)
            if (!camp.ledger().entry(entry))
                throw errorSaying("entry-gone",
                                  {QS_SAY("core", "no standing hand-over with the id %1"), {entry}},
                                  Exit::badData);
        options.later = std::move(read.value);
    }
    options.threads = static_cast<int>(std::clamp(std::thread::hardware_concurrency(), 1U, mostThreads));
    return options;
}

void showAuditJson(const AuditAnswer& answer, Output& out)
{
    QJsonArray findings;
    for (const auto& finding : answer.findings)
        findings.append(jsonFinding(finding));
    QJsonArray rates;
    for (const auto& rate : answer.summary.rates)
        rates.append(jsonRate(rate));
    const auto& chain = answer.summary.chain;
    out.json(QJsonObject{
        {"entries", static_cast<qint64>(answer.summary.entries)},
        {"hand_overs", static_cast<qint64>(answer.summary.handOvers)},
        {"judged", static_cast<qint64>(answer.summary.judged)},
        {"mismatches", static_cast<qint64>(answer.summary.mismatches)},
        {"findings", findings},
        {"rates", rates},
        {"chain", QJsonObject{{"ok", chain.ok},
                              {"first_bad", chain.firstBad ? QJsonValue(static_cast<qint64>(*chain.firstBad))
                                                           : QJsonValue(QJsonValue::Null)}}}});
}

void showAuditText(const AuditAnswer& answer, Output& out)
{
    for (const auto& [finding, slip] : answer.findings) {
        out.line(ltr(finding.entry) + QStringLiteral("  ") + say({infoOf(finding.kind).words, {}}) +
                 QStringLiteral(": ") + say(finding.detail) + QStringLiteral("  [") +
                 QLatin1String(infoOf(finding.kind).word) + QStringLiteral("]"));
        if (slip)
            out.line(QStringLiteral("    ") +
                     commandWords(QT_TRANSLATE_NOOP("command", "likeliest, %1 of 100: %2; %3"))
                         .arg(QString::number(slip->probability * 100.0, 'f', 0), slipWords(*slip),
                              say(slip->detail)));
    }
    const auto& summary = answer.summary;
    out.line(
        commandWords(QT_TRANSLATE_NOOP(
                         "command", "entries %1, hand-overs %2, judged again %3, record and pair at odds %4"))
            .arg(summary.entries)
            .arg(summary.handOvers)
            .arg(summary.judged)
            .arg(summary.mismatches));
    for (const auto& [kind, count] : summary.byClass)
        out.line(QStringLiteral("  %1  ").arg(count, 5) + say({infoOf(kind).words, {}}) +
                 QStringLiteral(" → ") + say({infoOf(kind).next, {}}));
    if (summary.mismatches > 0)
        showRates(summary.rates, out);
    if (summary.entries == 0)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "the ledger is empty: nothing to audit")));
}

int runAudit(const CommandLine& line, Output& out)
{
    if (!line.arguments.empty())
        return runAuditStep(line, out);
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    out.tell(camp.findings());
    const auto options = auditOptions(line, camp, out);
    if (line.has("--explain-entry"))
        return explainAudit(line, camp, options, out);
    AuditAnswer answer;
    AuditEars ears;
    ears.finding = [&](AuditFinding finding) { answer.findings.push_back({std::move(finding), {}}); };
    ears.judged = [&](const JudgedHandOver& judged, const SlipAnswer& slips) {
        const auto* told = slips.told(options.settings.slips);
        for (const auto& finding : judged.findings)
            answer.findings.push_back({finding, told != nullptr && infoOf(finding.kind).mismatch
                                                    ? std::optional(*told)
                                                    : std::nullopt});
    };
    answer.summary = auditCamp(camp, options, ears);
    tellChain(answer.summary, camp, out);
    if (line.has("--json"))
        showAuditJson(answer, out);
    else
        showAuditText(answer, out);
    return answer.findings.empty() && answer.summary.chain.ok ? Exit::done : Exit::unserved;
}

} // namespace quarterstep
