// SPDX-License-Identifier: GPL-3.0-or-later
// audit draw, sheet, read and lots: a lot of hand-overs judged by a sample read again at the bench.
#include "app/command/audit_steps.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/session/lot.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/tolerance_file.hpp"

#include <QCoreApplication>
#include <QDateTime>

#include <cmath>

namespace quarterstep
{
namespace
{

template <class Number>
Number numberOption(const char* option, const Parsed<Number>& read)
{
    if (read)
        return read.value();
    throw optionError(option, read.complaint());
}

std::optional<int> wholeOption(const CommandLine& line, const char* option, long least, long most)
{
    if (!line.has(option))
        return std::nullopt;
    return static_cast<int>(numberOption<long>(option, parseWholeNumber(line.value(option), least, most)));
}

/// Per cent as a share.
double shareOption(const CommandLine& line, const char* option, double otherwise)
{
    if (!line.has(option))
        return otherwise;
    return numberOption<double>(option, parseNumber(line.value(option), 0.0, 100.0)) / 100.0;
}

LotWish wishOf(const CommandLine& line)
{
    LotWish wish;
    wish.sample = wholeOption(line, "--sample", 1, largestSample);
    wish.allowed = wholeOption(line, "--allowed", 0, largestSample);
    wish.fine = shareOption(line, "--fine", wish.fine);
    wish.bad = shareOption(line, "--bad", wish.bad);
    wish.risk = shareOption(line, "--risk", wish.risk);
    if (line.has("--seed"))
        wish.seed = static_cast<std::uint64_t>(
            numberOption<long>("--seed", parseWholeNumber(line.value("--seed"), 0, 1'000'000'000'000)));
    wish.since = dayOf(line, "--since");
    wish.until = dayOf(line, "--until");
    wish.actor = line.value("--actor");
    if (wish.fine >= wish.bad)
        refuseUsage("option-value",
                    {QS_SAY("core", "--fine is the share that may fail and must be smaller than --bad, "
                                    "the share that must not pass"),
                     {}});
    if (wish.sample && wish.allowed && *wish.allowed >= *wish.sample)
        refuseUsage(
            "option-value",
            {QS_SAY("core", "a plan that allows %1 failures among %2 accepts everything; allow fewer"),
             {std::to_string(*wish.allowed), std::to_string(*wish.sample)}});
    return wish;
}

QJsonArray jsonCurve(const std::vector<OperatingPoint>& curve)
{
    QJsonArray points;
    for (const auto& point : curve)
        points.append(QJsonObject{{"share", jsonNumber(point.share)},
                                  {"accepted", jsonNumber(point.accepted)},
                                  {"accepted_of_this_lot", jsonNumber(point.of)}});
    return points;
}

QJsonObject jsonLot(const Lot& lot)
{
    const auto& plan = lot.plan;
    const bool read = !lot.readBy.empty();
    return {
        {"lot", jsonTextOrNull(lot.id)},
        {"size", lot.size},
        {"sample", plan.plan.sample},
        {"allowed", plan.plan.allowed},
        {"spares", static_cast<int>(lot.handOvers.size()) - plan.plan.sample},
        {"seed", static_cast<qint64>(lot.seed)},
        {"since", jsonTextOrNull(lot.since)},
        {"until", jsonTextOrNull(lot.until)},
        {"fine", jsonNumber(plan.fine)},
        {"bad", jsonNumber(plan.bad)},
        {"provider_risk", jsonNumber(plan.risks.provider)},
        {"consumer_risk", jsonNumber(plan.risks.consumer)},
        {"results", jsonTextOrNull(lot.readBy)},
        {"read", read ? QJsonValue(lot.count.read) : QJsonValue(QJsonValue::Null)},
        {"failed", read ? QJsonValue(lot.count.failed) : QJsonValue(QJsonValue::Null)},
        {"decision", read ? QJsonValue(wordOf(decide(lot.count, plan.plan))) : QJsonValue(QJsonValue::Null)}};
}

/// The chance as a bar of twenty signs: the operating curve as a picture in text.
QString barOf(double chance)
{
    const int full = static_cast<int>(std::lround(chance * 20.0));
    return QString(full, QLatin1Char('#')) + QString(20 - full, QLatin1Char('.'));
}

void showPlan(const Lot& lot, Output& out)
{
    const auto& plan = lot.plan;
    out.line(commandWords(
                 QT_TRANSLATE_NOOP("command", "plan: read %1 of %2 hand-overs; accept when at most %3 fail"))
                 .arg(plan.plan.sample)
                 .arg(lot.size)
                 .arg(plan.plan.allowed));
    out.line(commandWords(QT_TRANSLATE_NOOP("command",
                                            "with %1 % failing a lot is refused %2 times in 100, with %3 % "
                                            "accepted %4 times in 100"))
                 .arg(percent(plan.fine), percent(plan.risks.provider), percent(plan.bad),
                      percent(plan.risks.consumer)));
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "failing %  accepted %  of this lot %")));
    for (const auto& point : operatingCurve(plan.plan, lot.size))
        out.line(QStringLiteral("%1  %2  %3  %4")
                     .arg(percent(point.share), 9)
                     .arg(percent(point.accepted), 10)
                     .arg(point.of ? percent(*point.of) : QStringLiteral("–"), 13)
                     .arg(barOf(point.accepted)));
}

void writeSheet(const CommandLine& line, const Camp& camp, const Lot& lot, Output& out)
{
    const auto text = benchSheetText(lot.id, sheetOf(camp, lot));
    if (!line.has("--output"))
        return out.text(QString::fromStdString(text));
    replaceFile(line.value("--output"), text, true);
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "%1 rows in %2"))
                 .arg(lot.handOvers.size())
                 .arg(QString::fromStdString(line.value("--output"))));
}

const ToleranceSet& toleranceOf(const CommandLine& line, const ToleranceSets& sets)
{
    const auto chosen = chooseTolerances(sets, line.value("--set"));
    if (!chosen)
        throw errorSaying(chosen.complaint().code, chosen.complaint().sentence, Exit::usage);
    return *chosen.value();
}

QString outcomeWords(RowOutcome outcome)
{
    switch (outcome) {
    case RowOutcome::unread:
        return commandWords(QT_TRANSLATE_NOOP("command", "not read"));
    case RowOutcome::good:
        return commandWords(QT_TRANSLATE_NOOP("command", "reads as recorded"));
    case RowOutcome::offRecord:
        return commandWords(QT_TRANSLATE_NOOP("command", "the record does not match the pair"));
    case RowOutcome::outside:
        break;
    }
    return commandWords(QT_TRANSLATE_NOOP("command", "reads as recorded, outside a limit without a reason"));
}

void showRows(const LotResult& result, Output& out)
{
    for (const auto& row : result.judged) {
        if (row.outcome == RowOutcome::unread || row.outcome == RowOutcome::good)
            continue;
        auto text = commandWords(QT_TRANSLATE_NOOP("command", "row %1: %2"))
                        .arg(row.row)
                        .arg(outcomeWords(row.outcome));
        for (const auto& why : row.why)
            text += QStringLiteral("; ") + say(why);
        out.line(text);
    }
    out.line(say(decisionSentence(result.count, result.lot.plan.plan)));
    if (result.count.spareRead > 0)
        out.line(commandWords(QT_TRANSLATE_NOOP("command",
                                                "%1 more were read than the plan asks for; they are kept and "
                                                "not counted"))
                     .arg(result.count.spareRead));
}

QJsonObject jsonResult(const LotResult& result)
{
    QJsonArray rows;
    constexpr const char* words[] = {"unread", "good", "off-record", "outside"};
    for (const auto& row : result.judged) {
        QJsonArray why;
        for (const auto& each : row.why)
            why.append(say(each));
        rows.append(QJsonObject{{"row", row.row},
                                {"hand_over", jsonText(row.handOver)},
                                {"outcome", words[static_cast<std::size_t>(row.outcome)]},
                                {"why", why}});
    }
    return {{"lot", jsonText(result.lot.id)},
            {"read", result.count.read},
            {"failed", result.count.failed},
            {"allowed", result.lot.plan.plan.allowed},
            {"sample", result.lot.plan.plan.sample},
            {"decision", wordOf(decide(result.count, result.lot.plan.plan))},
            {"arithmetic", say(decisionSentence(result.count, result.lot.plan.plan))},
            {"rows", rows}};
}

} // namespace

int runAuditDraw(const CommandLine& line, Output& out)
{
    const auto wish = wishOf(line);
    auto camp = openForWork(line, out);
    auto lot = drawLot(camp, wish);
    if (!line.has("--json"))
        showPlan(lot, out);
    auto more = jsonLot(lot);
    more.insert("curve", jsonCurve(operatingCurve(lot.plan.plan, lot.size)));
    const int code = carryOutAndShow(line, camp, {lotEntry(lot, wish.actor)}, out, more);
    if (line.has("--output") && !line.has("--dry-run"))
        writeSheet(line, camp, lotNamed(camp, {}), out);
    return code;
}

int runAuditSheet(const CommandLine& line, Output& out)
{
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    out.tell(camp.findings());
    writeSheet(line, camp, lotNamed(camp, line.value("--lot")), out);
    return Exit::done;
}

int runAuditRead(const CommandLine& line, Output& out)
{
    auto sets = defaultTolerances();
    if (line.has("--tolerances")) {
        auto read = readToleranceFile(line.value("--tolerances"));
        endOnErrors(read.findings, out);
        sets = std::move(read.value);
    }
    const auto& set = toleranceOf(line, sets);
    const auto reading = readBenchSheet(line.arguments.back());
    endOnErrors(reading.findings, out);
    auto camp = openForWork(line, out);
    const auto expected = positionOf(camp);
    auto options = auditOptions(line, camp, out);
    const auto result = judgeLot(camp, reading.value, set, options);
    endOnErrors(result.findings, out);
    if (!line.has("--json"))
        showRows(result, out);
    (void)carryOutAndShow(line, camp, {lotReadEntry(result, line.value("--actor"))}, out, jsonResult(result),
                          expected);
    return decide(result.count, result.lot.plan.plan) == LotDecision::refused ? Exit::unserved : Exit::done;
}

int runAuditLots(const CommandLine& line, Output& out)
{
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    out.tell(camp.findings());
    const auto lots = lotsOf(camp);
    if (line.has("--json")) {
        QJsonArray array;
        for (const auto& lot : lots)
            array.append(jsonLot(lot));
        out.json(array);
        return Exit::done;
    }
    for (const auto& lot : lots) {
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "%1 of %2: %3 of %4, at most %5 may fail"))
                     .arg(ltr(lot.id), ltr(localDay(lot.atMs)))
                     .arg(lot.plan.plan.sample)
                     .arg(lot.size)
                     .arg(lot.plan.plan.allowed));
        out.line(QStringLiteral("  ") + (lot.readBy.empty()
                                             ? commandWords(QT_TRANSLATE_NOOP("command", "no results yet"))
                                             : say(decisionSentence(lot.count, lot.plan.plan))));
    }
    if (lots.empty())
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "no lot was drawn here yet")));
    return Exit::done;
}

} // namespace quarterstep
