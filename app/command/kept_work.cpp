// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/kept_work.hpp"

#include "app/command/output.hpp"
#include "app/command/pin_entry.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/yaml_map.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace quarterstep
{
namespace
{

QJsonObject jsonMovement(const Movement& movement)
{
    return {{"line", jsonText(movement.line)},
            {"on_hand", movement.delta},
            {"held", movement.held},
            {"quarantined", movement.quarantined}};
}

QJsonObject jsonChange(const LineChange& change)
{
    const auto& after = change.after;
    return {{"line", jsonText(change.line)},
            {"on_hand_before", change.before.onHand},
            {"on_hand_after", after.onHand},
            {"held_after", after.held},
            {"quarantined_after", after.quarantined},
            {"available_after", after.onHand - after.held - after.quarantined}};
}

QString changeWords(const LineChange& change)
{
    QString text = QStringLiteral("%1  ").arg(ltr(change.line), -24) +
                   commandWords(QT_TRANSLATE_NOOP("command", "on hand %1, was %2"))
                       .arg(change.after.onHand)
                       .arg(change.before.onHand);
    if (change.after.held != change.before.held)
        text += QStringLiteral("; ") + commandWords(QT_TRANSLATE_NOOP("command", "held %1, was %2"))
                                           .arg(change.after.held)
                                           .arg(change.before.held);
    if (change.after.quarantined != change.before.quarantined)
        text += QStringLiteral("; ") + commandWords(QT_TRANSLATE_NOOP("command", "in quarantine %1, was %2"))
                                           .arg(change.after.quarantined)
                                           .arg(change.before.quarantined);
    return text;
}

void showWork(const KeptWork& work, Output& out)
{
    for (const auto& change : work.lines)
        out.line(changeWords(change));
    for (const auto& entry : work.entries)
        if (!work.dryRun)
            out.line(commandWords(QT_TRANSLATE_NOOP("command", "entry %1: %2, %3"))
                         .arg(entry.number)
                         .arg(kindWords(entry.kind), ltr(entry.id)));
    if (work.entries.empty())
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "nothing to write")));
    if (work.dryRun)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
}

} // namespace

void refuseUsage(std::string code, Sentence sentence)
{
    throw errorSaying(std::move(code), std::move(sentence), Exit::usage);
}

void refuseOption(const std::string& option, const Complaint& complaint)
{
    Finding finding;
    finding.position = {option, 1, complaint.offset + 1};
    finding.code = complaint.code;
    finding.sentence = complaint.sentence;
    throw Error(std::move(finding), Exit::usage);
}

void refuseCause(const std::string& word)
{
    refuseUsage("option-value",
                {QS_SAY("core", "“%1” is not a cause; write one of %2"), {word, listed(causesOfLoss())}});
}

void tellEdits(const Camp& camp, Output& out)
{
    for (const auto& each : camp.edited())
        out.tell(Severity::caution, {stockPath(camp.folder()), 0, 0}, "count-edited",
                 {QS_SAY("core", "line %1 was changed by hand to %2, the ledger had %3; take it over with "
                                 "`quarterstep stock --accept-edits` or put it back with --discard-edits"),
                  {each.line, std::to_string(each.inFile), std::to_string(each.inLedger)}});
}

Camp openForWork(const CommandLine& line, Output& out)
{
    auto camp = Camp::open(line.value("--camp"),
                           line.has("--dry-run") ? Ledger::Mode::readOnly : Ledger::Mode::readWrite);
    out.tell(camp.findings());
    tellEdits(camp, out);
    if (!line.has("--dry-run"))
        requirePin(line, camp);
    return camp;
}

int quantityOf(const CommandLine& line)
{
    if (!line.has("--quantity"))
        return 1;
    const auto number = parseWholeNumber(line.value("--quantity"), 1, mostPieces);
    if (number)
        return static_cast<int>(number.value());
    throw optionError("--quantity", number.complaint());
}

std::vector<QuantityRow> rowsOf(const CommandLine& line, const std::string& list, Output& out)
{
    if (list.empty() == !line.has("--line"))
        refuseUsage("option-missing",
                    {QS_SAY("core", "`%1` needs either a list or --line LINE [--quantity N]"), {line.verb}});
    if (list.empty()) {
        QuantityRow row;
        row.line = line.value("--line");
        row.quantity = quantityOf(line);
        row.place.file = "--line";
        return {row};
    }
    auto reading = readQuantityList(list);
    std::vector<Position> left;
    auto good = line.has("--skip-bad-rows") ? goodRows(reading, left) : std::nullopt;
    if (!good) {
        endOnErrors(reading.findings, out);
        return std::move(reading.value.rows);
    }
    out.tell(reading.findings);
    for (const auto& place : left)
        out.tell(Severity::caution, place, "row-skipped", {QS_SAY("core", "this row was left out"), {}});
    return std::move(*good);
}

bool keepGoodRows(const CommandLine& line, const std::vector<Finding>& findings,
                  std::vector<QuantityRow>& rows, Output& out)
{
    std::vector<QuantityRow> left;
    for (const auto& finding : findings) {
        if (finding.severity != Severity::error)
            continue;
        const auto row = std::find_if(rows.begin(), rows.end(), [&](const QuantityRow& each) {
            return each.place == finding.position;
        });
        if (row == rows.end() || !line.has("--skip-bad-rows")) {
            endOnErrors(findings, out);
            return false;
        }
        left.push_back(*row);
    }
    out.tell(findings);
    for (const auto& row : left) {
        out.tell(Severity::caution, row.place, "row-skipped",
                 {QS_SAY("core", "row of %1 left out"), {row.line}});
        std::erase_if(rows, [&](const QuantityRow& each) { return each.place == row.place; });
    }
    return !left.empty();
}

void endOnErrors(const std::vector<Finding>& findings, Output& out)
{
    out.tell(findings);
    const bool bad = std::any_of(findings.begin(), findings.end(),
                                 [](const Finding& each) { return each.severity == Severity::error; });
    if (!bad)
        return;
    out.tell(Severity::error, Position{}, "nothing-written",
             {QS_SAY("core", "nothing was written; mend what stands above and repeat"), {}});
    throw FilesNotRead();
}

int carryOutAndShow(const CommandLine& line, Camp& camp, std::vector<Entry> entries, Output& out,
                    QJsonObject more, std::optional<std::int64_t> expected)
{
    const auto told = camp.findings().size();
    const auto work = carryOut(camp, std::move(entries), line.has("--dry-run"), expected);
    for (std::size_t i = told; i < camp.findings().size(); ++i)
        out.tell(camp.findings()[i]);
    if (!line.has("--json")) {
        showWork(work, out);
        return Exit::done;
    }
    QJsonArray posted;
    for (const auto& entry : work.entries)
        posted.append(jsonEntry(entry));
    QJsonArray lines;
    for (const auto& change : work.lines)
        lines.append(jsonChange(change));
    more.insert("site", jsonText(camp.site()));
    more.insert("dry_run", work.dryRun);
    more.insert("entries", posted);
    more.insert("lines", lines);
    out.json(more);
    return Exit::done;
}

QJsonObject jsonEntry(const Entry& entry)
{
    QJsonArray movements;
    for (const auto& movement : entry.movements)
        movements.append(jsonMovement(movement));
    return {{"id", jsonTextOrNull(entry.id)},
            {"number", entry.number == 0 ? QJsonValue(QJsonValue::Null)
                                         : QJsonValue(static_cast<qint64>(entry.number))},
            {"kind", wordOf(entry.kind)},
            {"person", jsonTextOrNull(entry.person)},
            {"movements", movements}};
}

std::optional<std::int64_t> positionOf(const Camp& camp)
{
    if (!camp.hasLedger())
        return std::nullopt;
    return camp.ledger().position();
}

} // namespace quarterstep
