// SPDX-License-Identifier: GPL-3.0-or-later
// Handing over to one person what the optician picked, with the acuity typed and the reason given.
#include "app/command/dispense.hpp"

#include "app/command/answers.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/command/picked.hpp"
#include "core/fitting/words.hpp"
#include "core/optics/notation.hpp"
#include "inventory/text/record_text.hpp"

namespace quarterstep
{
namespace
{

HandOverChecks checksOf(const CommandLine& line)
{
    HandOverChecks checks;
    for (const auto& word : namesIn(line.value("--checks"))) {
        if (word == "power")
            checks.powerByFocimeter = true;
        else if (word == "fit")
            checks.fitOnFace = true;
        else if (word == "instructions")
            checks.instructionsGiven = true;
        else
            throw usageError(
                "option-value",
                {QS_SAY("core", "“%1” is not a check; write power, fit or instructions"), {word}});
    }
    return checks;
}

PairReading readingOf(const CommandLine& line)
{
    PairReading reading;
    for (const auto& [eye, option] :
         {std::pair{Eye::right, "--read-right"}, std::pair{Eye::left, "--read-left"}}) {
        if (!line.has(option))
            continue;
        const auto power = parsePower(line.value(option));
        if (!power)
            refuseOption(option, power.complaint());
        reading.of(eye) = power.value();
    }
    return reading;
}

std::vector<std::pair<std::string, int>> countsOf(const Camp& camp)
{
    std::vector<std::pair<std::string, int>> counts;
    for (const auto& line : camp.stock())
        counts.emplace_back(line.name, line.onHand);
    return counts;
}

void refuseObjections(const Camp& camp, const HandOver& given, Output& out)
{
    const auto objections = objectionsTo(camp, given);
    if (objections.empty())
        return;
    for (std::size_t i = 0; i + 1 < objections.size(); ++i)
        out.tell(Severity::error, Position{}, "hand-over-refused", objections[i].sentence);
    throw errorSaying("hand-over-refused", objections.back().sentence, Exit::unserved);
}

} // namespace

void checkPick(const CommandLine& line)
{
    for (const char* option : {"--purpose", "--lines", "--reason", "--acuity-right", "--acuity-left",
                               "--near-acuity", "--checks", "--read-right", "--read-left"})
        if (line.has(option) && !line.has("--person"))
            throw usageError("option-missing",
                             {QS_SAY("core", "%1 is for one person; add --person CODE"), {option}});
    if (line.value("--lines") == "-" && line.arguments.front() == "-")
        throw usageError(
            "option-value",
            {QS_SAY("core", "standard input is the table already; name a file for one of the two"), {}});
    if (line.has("--purpose") && !purposeNamed(line.value("--purpose")))
        throw usageError(
            "option-value",
            {QS_SAY("core", "“%1” is not a purpose; write distance, near, intermediate or bifocal"),
             {line.value("--purpose")}});
    (void)checksOf(line);
    (void)readingOf(line);
    (void)trialOf(line);
}

BatchResult dispensePicked(const CommandLine& line, Camp& camp, const std::vector<PersonRecord>& people,
                           const MatchOptions& options, Output& out)
{
    const auto& person = personNamed(line.value("--person"), line, people);
    auto withTrial = options;
    withTrial.trial = trialOf(line);
    BatchResult result;
    result.before = countsOf(camp);
    BatchAnswer answer;
    answer.recommendation = chosenPurpose(line, recommend(person, camp.stock(), camp.rules(), withTrial));
    HandOver given;
    given.recommendation = &answer.recommendation;
    given.parts = partsNamed(linesTyped(line.value("--lines")), camp.stock());
    const auto& ranked = answer.recommendation.candidates.ranked;
    if (!line.has("--lines") && !ranked.empty())
        given.parts = ranked.front().parts;
    given.reason = line.value("--reason");
    given.trial = trialOf(line, person);
    given.checks = checksOf(line);
    given.reading = readingOf(line);
    given.checks.powerByFocimeter =
        given.checks.powerByFocimeter || (given.reading.right && given.reading.left);
    given.checks.acuityWithPair = given.trial.has_value();
    given.actor = line.value("--actor");
    given.finalAsWritten =
        "R " + person.eyes.right.final.asWritten + " L " + person.eyes.left.final.asWritten;
    given.record = recordText(person);
    refuseObjections(camp, given, out);
    for (const auto& part : given.parts)
        answer.lines.push_back(camp.stock()[part.line].name);
    if (!line.has("--dry-run"))
        answer.entry = handOver(camp, given);
    result.after = countsOf(camp);
    if (line.has("--dry-run"))
        for (const auto& part : given.parts)
            --result.after[part.line].second;
    result.answers.push_back(std::move(answer));
    return result;
}

} // namespace quarterstep
