// SPDX-License-Identifier: GPL-3.0-or-later
// Handing over to one person what the optician picked, with the acuity typed and the reason given.
#include "app/command/dispense.hpp"

#include "app/command/answers.hpp"
#include "app/command/output.hpp"

#include <algorithm>
#include <sstream>

namespace quarterstep
{
namespace
{

Error usage(std::string code, Sentence sentence)
{
    return errorSaying(std::move(code), std::move(sentence), Exit::usage);
}

std::vector<std::string> listOf(const std::string& text)
{
    std::vector<std::string> words;
    std::istringstream stream(text);
    for (std::string word; std::getline(stream, word, ',');)
        words.push_back(word);
    return words;
}

HandOverChecks checksOf(const CommandLine& line)
{
    HandOverChecks checks;
    for (const auto& word : listOf(line.value("--checks"))) {
        if (word == "power")
            checks.powerByFocimeter = true;
        else if (word == "fit")
            checks.fitOnFace = true;
        else if (word == "instructions")
            checks.instructionsGiven = true;
        else
            throw usage("option-value",
                        {QS_SAY("core", "“%1” is not a check; write power, fit or instructions"), {word}});
    }
    return checks;
}

template <class T>
std::optional<T> acuityOf(const CommandLine& line, const char* option, Parsed<T> (*parse)(const std::string&))
{
    if (!line.has(option))
        return std::nullopt;
    const auto read = parse(line.value(option));
    if (!read) {
        Finding finding;
        finding.position = {option, 1, read.complaint().offset + 1};
        finding.code = read.complaint().code;
        finding.sentence = read.complaint().sentence;
        throw Error(std::move(finding), Exit::usage);
    }
    return read.value();
}

std::optional<TrialAcuity> trialOf(const CommandLine& line)
{
    TrialAcuity trial;
    trial.distance.right = acuityOf(line, "--acuity-right", parseAcuity);
    trial.distance.left = acuityOf(line, "--acuity-left", parseAcuity);
    trial.near = acuityOf(line, "--near-acuity", parseNearAcuity);
    if (!trial.distance.right && !trial.distance.left && !trial.near)
        return std::nullopt;
    return trial;
}

const PersonRecord& personOf(const CommandLine& line, const std::vector<PersonRecord>& people)
{
    const auto code = line.value("--person");
    const auto found =
        std::find_if(people.begin(), people.end(), [&](const auto& each) { return each.person == code; });
    if (found == people.end())
        throw errorSaying("person-unknown",
                          {QS_SAY("core", "nobody in %1 has the code %2"), {line.arguments.front(), code}},
                          Exit::badData);
    return *found;
}

Recommendation chosenPurpose(const CommandLine& line, std::vector<Recommendation> answers)
{
    if (line.has("--purpose")) {
        const auto purpose = purposeNamed(line.value("--purpose"));
        const auto found = std::find_if(answers.begin(), answers.end(),
                                        [&](const auto& answer) { return answer.purpose == purpose; });
        if (found == answers.end())
            throw usage("purpose-unknown",
                        {QS_SAY("core", "%1 is not a purpose of this person"), {line.value("--purpose")}});
        return *found;
    }
    if (answers.size() != 1)
        throw usage(
            "purpose-missing",
            {QS_SAY("core",
                    "this person needs more than one pair; say which with --purpose %1 or --purpose %2"),
             {jsonWord(answers.at(0).purpose), jsonWord(answers.at(1).purpose)}});
    return answers.front();
}

std::size_t lineNamed(const Camp& camp, const std::string& name)
{
    const auto index = camp.lineNamed(name);
    if (!index)
        throw errorSaying("unknown-line", {QS_SAY("core", "there is no line %1 in this camp"), {name}},
                          Exit::badData);
    return *index;
}

/// A ready-made pair alone, or frame, right lens, left lens in this order whatever the order typed; one lens
/// line serves both sides.
std::vector<Part> partsOf(const std::vector<std::string>& names, const Camp& camp)
{
    std::vector<Part> parts;
    std::vector<std::size_t> lenses;
    for (const auto& name : names) {
        const auto index = lineNamed(camp, name);
        const auto& line = camp.stock()[index];
        if (line.kind == LineKind::lens)
            lenses.push_back(index);
        else
            parts.push_back({index, line.kind == LineKind::frame ? PartSide::frame : PartSide::pair});
    }
    if (lenses.size() == 1)
        lenses.push_back(lenses.front());
    if (lenses.size() == 2 && camp.stock()[lenses[0]].side == LensSide::left &&
        camp.stock()[lenses[1]].side != LensSide::left)
        std::swap(lenses[0], lenses[1]);
    for (std::size_t i = 0; i < lenses.size(); ++i)
        parts.push_back({lenses[i], i == 0 ? PartSide::right : PartSide::left});
    return parts;
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
    for (const char* option :
         {"--purpose", "--lines", "--reason", "--acuity-right", "--acuity-left", "--near-acuity", "--checks"})
        if (line.has(option) && !line.has("--person"))
            throw usage("option-missing",
                        {QS_SAY("core", "%1 is for one person; add --person CODE"), {option}});
    if (line.has("--purpose") && !purposeNamed(line.value("--purpose")))
        throw usage("option-value",
                    {QS_SAY("core", "“%1” is not a purpose; write distance, near, intermediate or bifocal"),
                     {line.value("--purpose")}});
    (void)checksOf(line);
    (void)trialOf(line);
}

BatchResult dispensePicked(const CommandLine& line, Camp& camp, const std::vector<PersonRecord>& people,
                           const MatchOptions& options, Output& out)
{
    const auto& person = personOf(line, people);
    auto withTrial = options;
    withTrial.trial = trialOf(line);
    BatchResult result;
    result.before = countsOf(camp);
    BatchAnswer answer;
    answer.recommendation = chosenPurpose(line, recommend(person, camp.stock(), camp.rules(), withTrial));
    HandOver given;
    given.recommendation = &answer.recommendation;
    given.parts = partsOf(listOf(line.value("--lines")), camp);
    const auto& ranked = answer.recommendation.candidates.ranked;
    if (!line.has("--lines") && !ranked.empty())
        given.parts = ranked.front().parts;
    given.reason = line.value("--reason");
    given.trial = withTrial.trial;
    if (given.trial)
        for (const Eye eye : bothEyes)
            given.trial->best.of(eye) = person.eyes.of(eye).acuity.best;
    given.checks = checksOf(line);
    given.checks.acuityWithPair = given.trial.has_value();
    given.actor = line.value("--actor");
    given.finalAsWritten =
        "R " + person.eyes.right.final.asWritten + " L " + person.eyes.left.final.asWritten;
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
