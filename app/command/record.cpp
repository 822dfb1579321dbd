// SPDX-License-Identifier: GPL-3.0-or-later
// record: what is entered one at a time: returned, exchanged, written off, held, quarantined, released, who
// went without, and what was entered in error.
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/session/follow_up.hpp"

#include <QDate>

#include <algorithm>

namespace quarterstep
{
namespace
{

struct SingleRow {
    EntryKind kind;
    bool line;   ///< needs --line
    bool person; ///< needs --person
};

constexpr SingleRow singles[] = {
    {EntryKind::returned, true, false},        {EntryKind::exchanged, true, true},
    {EntryKind::writtenOff, true, false},      {EntryKind::held, true, false},
    {EntryKind::quarantined, true, false},     {EntryKind::released, true, false},
    {EntryKind::notNeeded, false, true},       {EntryKind::declined, false, true},
    {EntryKind::incomplete, false, true},      {EntryKind::adjusted, false, true},
    {EntryKind::referred, false, true},        {EntryKind::followedUp, false, true},
    {EntryKind::enteredInError, false, false},
};

std::string kindsListed()
{
    std::string words;
    for (const auto& row : singles)
        words += (words.empty() ? "" : ", ") + std::string(wordOf(row.kind));
    return words;
}

const SingleRow& rowOf(const std::string& word)
{
    const auto found = std::find_if(std::begin(singles), std::end(singles),
                                    [&](const SingleRow& row) { return word == wordOf(row.kind); });
    if (found == std::end(singles))
        refuseUsage("option-value",
                    {QS_SAY("core", "“%1” is nothing to record; write one of %2"), {word, kindsListed()}});
    return *found;
}

void need(const CommandLine& line, const char* option, const std::string& kind)
{
    if (line.value(option).empty())
        refuseUsage("option-missing", {QS_SAY("core", "`record %1` needs %2"), {kind, option}});
}

/// A bad lot goes into quarantine wherever it lies.
bool isLot(const CommandLine& line, EntryKind kind)
{
    return kind == EntryKind::quarantined && line.has("--lot") && !line.has("--line");
}

void checkOptions(const CommandLine& line, const SingleRow& row)
{
    const std::string kind = wordOf(row.kind);
    if (row.line && !isLot(line, row.kind))
        need(line, "--line", kind);
    if (row.person)
        need(line, "--person", kind);
    if (row.kind == EntryKind::exchanged)
        need(line, "--back", kind);
    if (row.kind == EntryKind::quarantined)
        need(line, "--reason", kind);
    if (row.kind == EntryKind::writtenOff)
        need(line, "--cause", kind);
    if (row.kind == EntryKind::followedUp)
        need(line, "--wear", kind);
    if (line.has("--cause") && !isCauseOfLoss(line.value("--cause")))
        refuseCause(line.value("--cause"));
    if (line.has("--until") &&
        !QDate::fromString(QString::fromStdString(line.value("--until")), Qt::ISODate).isValid())
        refuseUsage("option-value",
                    {QS_SAY("core", "“%1” is not a day; write it as 2026-03-01"), {line.value("--until")}});
    if (row.kind == EntryKind::enteredInError && line.has("--entry") == line.has("--person"))
        refuseUsage(
            "option-missing",
            {QS_SAY("core", "`record %1` needs --entry ID, or --person CODE for the hand-over of today"),
             {kind}});
    if (row.kind == EntryKind::enteredInError)
        need(line, "--reason", kind);
}

/// An acuity as typed, checked. Throws Error (2) with its place.
std::string acuityOf(const CommandLine& line, const char* option)
{
    if (!line.has(option))
        return {};
    const auto read = parseAcuity(line.value(option));
    if (read)
        return line.value(option);
    throw optionError(option, read.complaint());
}

FollowUpLook lookOf(const CommandLine& line)
{
    const auto wear = wearNamed(line.value("--wear"));
    if (!wear)
        refuseUsage(
            "option-value",
            {QS_SAY("core",
                    "“%1” is no outcome; write one of worn, with-them, at-home, broken, lost, stopped, "
                    "not-found"),
             {line.value("--wear")}});
    return {line.value("--person"),
            *wear,
            {acuityOf(line, "--acuity-right"), acuityOf(line, "--acuity-left")},
            line.value("--note"),
            line.value("--actor")};
}

SingleWork workOf(const CommandLine& line, EntryKind kind)
{
    SingleWork work;
    work.kind = kind;
    work.line = line.value("--line");
    work.quantity = quantityOf(line);
    work.back = line.value("--back");
    work.actor = line.value("--actor");
    work.person = line.value("--person");
    work.cause = line.value("--cause");
    work.reason = line.value("--reason");
    work.note = line.value("--note");
    work.lot = line.value("--lot");
    work.until = line.value("--until");
    work.straightToStock = line.has("--to-stock");
    work.fromQuarantine = line.has("--quarantine");
    return work;
}

/// Released without saying from where: from quarantine when nothing is held.
void guessWhere(SingleWork& work, const Camp& camp)
{
    const auto index = camp.lineNamed(work.line);
    if (work.kind != EntryKind::released || work.fromQuarantine || !index)
        return;
    const auto& line = camp.stock()[*index];
    if (line.held > 0 && line.quarantined > 0)
        refuseUsage("option-missing",
                    {QS_SAY("core", "line %1 has pieces held and in quarantine; say --quarantine or --held"),
                     {work.line}});
    work.fromQuarantine = line.held == 0;
}

Entry cancelled(const CommandLine& line, const Camp& camp)
{
    const auto id = line.has("--entry") ? line.value("--entry") : handOverToday(camp, line.value("--person"));
    return undoOf(camp, id, line.value("--actor"), line.value("--reason"));
}

} // namespace

int runRecord(const CommandLine& line, Output& out)
{
    const auto& row = rowOf(line.arguments.front());
    checkOptions(line, row);
    auto work = workOf(line, row.kind);
    const auto look = row.kind == EntryKind::followedUp ? std::optional(lookOf(line)) : std::nullopt;
    auto camp = openForWork(line, out);
    if (row.kind == EntryKind::enteredInError)
        return carryOutAndShow(line, camp, {cancelled(line, camp)}, out);
    if (look)
        return carryOutAndShow(line, camp, {followUpEntry(camp, *look)}, out);
    if (isLot(line, row.kind))
        return carryOutAndShow(line, camp, {quarantineOfLot(camp, work)}, out);
    std::vector<QuantityRow> rows;
    for (auto* name : {&work.line, &work.back})
        if (!name->empty()) {
            rows.assign(1, {*name, work.quantity, {}, {}, {name == &work.line ? "--line" : "--back", 0, 0}});
            endOnErrors(takeNames(camp, rows), out);
            *name = rows.front().line;
        }
    if (!line.has("--held"))
        guessWhere(work, camp);
    return carryOutAndShow(line, camp, {singleEntry(work)}, out);
}

} // namespace quarterstep
