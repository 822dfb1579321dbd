// SPDX-License-Identifier: GPL-3.0-or-later
// Papers for the persons of a table: what the ledger says was given, what was picked, or what is suggested.
#include "app/command/inputs.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/picked.hpp"
#include "app/command/print.hpp"
#include "core/fitting/stock_index.hpp"
#include "core/fitting/words.hpp"
#include "core/record/life.hpp"

#include <algorithm>

namespace quarterstep
{
namespace
{

struct Given {
    std::vector<Part> parts;
    std::string reason;
};

/// The latest hand-over to this person for this purpose that stands; its lines may have left the stock.
std::optional<Given> givenTo(const Camp& camp, const std::vector<Entry>& entries,
                             const Recommendation& answer)
{
    const auto gone = takenBack(entries);
    std::optional<Given> given;
    for (const auto& entry : entries) {
        const auto purpose = entry.fields.find("purpose");
        if (entry.kind != EntryKind::handedOver || entry.person != answer.person ||
            gone.count(entry.id) > 0 || purpose == entry.fields.end() ||
            purpose->second != wordOf(answer.purpose))
            continue;
        Given each;
        for (const auto& movement : entry.movements)
            if (const auto index = camp.lineNamed(movement.line))
                each.parts.push_back({*index, sideNamed(movement.part)});
        if (each.parts.size() != entry.movements.size())
            continue;
        if (const auto reason = entry.texts.find("reason"); reason != entry.texts.end())
            each.reason = reason->second;
        given = std::move(each);
    }
    return given;
}

class PersonPapers
{
  public:
    PersonPapers(PaperKind kind, const CommandLine& line, const PrintBox& box)
        : kind_(kind), line_(line), box_(box), index_(box.stock), options_(matchOptions(line, box.rules))
    {
        options_.candidates.index = &index_;
        options_.details = kind == PaperKind::laboratoryOrder;
        options_.form = cylinderFormOf(line);
        if (box.camp && box.camp->hasLedger())
            entries_ = box.camp->ledger().entriesAfter(0);
    }

    void add(const PersonRecord& person, std::vector<Paper>& papers)
    {
        auto answers = recommend(person, box_.stock, box_.rules, options_);
        if (line_.has("--purpose") || line_.has("--lines"))
            answers = {chosenPurpose(line_, std::move(answers))};
        for (auto& answer : answers)
            if (line_.has("--person") || isFor(person, answer))
                papers.push_back(paperFor(person, answered(person, std::move(answer))));
    }

  private:
    /// Which persons of a whole table get the paper.
    [[nodiscard]] bool isFor(const PersonRecord& person, const Recommendation& answer) const
    {
        switch (kind_) {
        case PaperKind::letter:
            return answer.referral != Referral::no;
        case PaperKind::laboratoryOrder:
        case PaperKind::collection:
            return answer.verdict == Verdict::custom;
        case PaperKind::guardianNote:
        case PaperKind::teacherNote:
            return person.child();
        default:
            return true;
        }
    }

    [[nodiscard]] PersonAnswer answered(const PersonRecord& person, Recommendation answer) const
    {
        PersonAnswer told;
        const auto given = box_.camp ? givenTo(*box_.camp, entries_, answer) : std::nullopt;
        const auto& ranked = answer.candidates.ranked;
        const auto trial = trialOf(line_, person);
        const auto pairOf = [&](std::span<const Part> parts) {
            return pairFor(answer, parts, box_.stock, box_.rules, trial ? &*trial : nullptr);
        };
        if (line_.has("--lines"))
            told.pair = pairOf(partsNamed(linesTyped(line_.value("--lines")), box_.stock));
        else if (given)
            told.pair = pairOf(given->parts);
        else if (!ranked.empty() && answer.verdict == Verdict::stock)
            told.pair = pairOf(ranked.front().parts);
        if (line_.has("--lines") && !told.pair)
            throw errorSaying(
                "not-a-pair",
                {QS_SAY("core", "%1 does not make a pair; name a ready-made pair, or frame, right "
                                "lens, left lens separated by commas"),
                 {line_.value("--lines")}},
                Exit::badData);
        if (told.pair && (given || line_.has("--lines")))
            told.pair->handedOver = true;
        if (told.pair)
            told.pair->reason = line_.has("--reason") ? line_.value("--reason") : given ? given->reason : "";
        if (answer.interim)
            told.interim = pairOf(answer.interim->parts);
        if (const auto* profile = box_.rules.find(answer.profile))
            told.profileVersion = profile->version;
        told.recommendation = std::move(answer);
        return told;
    }

    [[nodiscard]] Paper paperFor(const PersonRecord& person, const PersonAnswer& answer) const
    {
        switch (kind_) {
        case PaperKind::letter:
            return referralLetter(person, answer, box_.source);
        case PaperKind::laboratoryOrder:
            return orderFor(person, answer);
        case PaperKind::collection:
            return collectionNote(person, answer, orderedOn(person), box_.source);
        case PaperKind::guardianNote:
            return guardianNote(person, answer, box_.source);
        case PaperKind::teacherNote:
            return teacherNote(person, answer, box_.source);
        default:
            return handOverNote(person, answer, box_.source);
        }
    }

    [[nodiscard]] Paper orderFor(const PersonRecord& person, const PersonAnswer& answer) const
    {
        if (!answer.recommendation.need)
            throw errorSaying(
                "paper-not-for",
                {QS_SAY("core", "the prescription of %1 is not complete; there is no order to print"),
                 {person.person}},
                Exit::badData);
        return laboratoryOrderPaper(
            person, answer, laboratoryOrder(person, *answer.recommendation.need, options_.form), box_.source);
    }

    [[nodiscard]] std::string orderedOn(const PersonRecord& person) const
    {
        std::string day;
        for (const auto& order : ordersIn(entries_))
            if (order.open() && order.person == person.person)
                day = localDay(order.orderedMs);
        return day;
    }

    PaperKind kind_;
    const CommandLine& line_;
    const PrintBox& box_;
    StockIndex index_;
    MatchOptions options_;
    std::vector<Entry> entries_;
};

} // namespace

std::vector<Paper> personPapers(PaperKind kind, const CommandLine& line, const PrintBox& box, Output& out,
                                bool& bad)
{
    if (line.arguments.size() != 2)
        refuseUsage("arguments-missing",
                    {QS_SAY("core", "`print %1` needs the prescription table"), {line.arguments.front()}});
    for (const char* option : {"--lines", "--reason", "--purpose"})
        if (line.has(option) && !line.has("--person"))
            refuseUsage("option-missing",
                        {QS_SAY("core", "%1 is for one person; add --person CODE"), {option}});
    CommandLine people = line;
    people.arguments.erase(people.arguments.begin()); // the word of the paper
    const auto table = readTable(people, out);
    PersonPapers made(kind, line, box);
    std::vector<Paper> papers;
    bool found = false;
    for (const auto& row : table.rows) {
        if (line.has("--person") && row.person != line.value("--person"))
            continue;
        found = true;
        bad = bad || !row.record;
        if (row.record)
            made.add(*row.record, papers);
    }
    if (line.has("--person") && !found)
        throw errorSaying(
            "person-unknown",
            {QS_SAY("core", "nobody in %1 has the code %2"), {line.arguments.back(), line.value("--person")}},
            Exit::badData);
    if (papers.empty() && bad)
        throw FilesNotRead(); // the rows were told
    return papers;
}

} // namespace quarterstep
