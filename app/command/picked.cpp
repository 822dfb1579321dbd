// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/picked.hpp"

#include "app/command/answers.hpp"
#include "core/fitting/line_code.hpp"
#include "core/fitting/words.hpp"
#include "inventory/text/source_text.hpp"

#include <algorithm>
#include <sstream>

namespace quarterstep
{
namespace
{

template <class T>
std::optional<T> acuityOf(const CommandLine& line, const char* option, Parsed<T> (*parse)(const std::string&))
{
    if (!line.has(option))
        return std::nullopt;
    const auto read = parse(line.value(option));
    if (!read)
        throw optionError(option, read.complaint());
    return read.value();
}

std::size_t lineNamed(std::span<const StockLine> stock, const std::string& name)
{
    const auto found = lineScanned(stock, name);
    if (!found)
        throw errorSaying(found.complaint().code, found.complaint().sentence, Exit::badData);
    return found.value();
}

} // namespace

std::vector<std::string> namesIn(const std::string& text)
{
    std::vector<std::string> words;
    std::istringstream stream(text);
    for (std::string word; std::getline(stream, word, ',');)
        words.push_back(word);
    return words;
}

std::vector<std::string> linesTyped(const std::string& text)
{
    if (text != "-")
        return namesIn(text);
    const auto bytes = readBytes("-");
    const auto checked =
        bytes.usable() ? checkText(bytes.value, "-") : Reading<SourceText>{{}, bytes.findings};
    if (!checked.usable())
        throw Error(checked.findings.front(), Exit::badData);
    std::vector<std::string> names;
    std::istringstream rows(checked.value.text());
    for (std::string row; std::getline(rows, row);) {
        row.erase(row.find_last_not_of(" \t\r") + 1);
        row.erase(0, row.find_first_not_of(" \t"));
        if (!row.empty())
            names.push_back(row);
    }
    if (names.empty())
        throw usageError("option-value", {QS_SAY("core", "no line was scanned into standard input"), {}});
    return names;
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

std::optional<TrialAcuity> trialOf(const CommandLine& line, const PersonRecord& person)
{
    auto trial = trialOf(line);
    if (trial)
        for (const Eye eye : bothEyes)
            trial->best.of(eye) = person.eyes.of(eye).acuity.best;
    return trial;
}

const PersonRecord& personNamed(const std::string& code, const CommandLine& line,
                                const std::vector<PersonRecord>& people)
{
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
            throw usageError("purpose-unknown", {QS_SAY("core", "%1 is not a purpose of this person"),
                                                 {line.value("--purpose")}});
        return *found;
    }
    if (answers.size() != 1)
        throw usageError(
            "purpose-missing",
            {QS_SAY("core",
                    "this person needs more than one pair; say which with --purpose %1 or --purpose %2"),
             {jsonWord(answers.at(0).purpose), jsonWord(answers.at(1).purpose)}});
    return answers.front();
}

std::vector<Part> partsNamed(const std::vector<std::string>& names, std::span<const StockLine> stock)
{
    std::vector<Part> parts;
    std::vector<std::size_t> lenses;
    for (const auto& name : names) {
        const auto index = lineNamed(stock, name);
        const auto& line = stock[index];
        if (line.kind == LineKind::lens)
            lenses.push_back(index);
        else
            parts.push_back({index, line.kind == LineKind::frame ? PartSide::frame : PartSide::pair});
    }
    if (lenses.size() == 1)
        lenses.push_back(lenses.front());
    if (lenses.size() == 2 && stock[lenses[0]].side == LensSide::left &&
        stock[lenses[1]].side != LensSide::left)
        std::swap(lenses[0], lenses[1]);
    for (std::size_t i = 0; i < lenses.size(); ++i)
        parts.push_back({lenses[i], i == 0 ? PartSide::right : PartSide::left});
    return parts;
}

} // namespace quarterstep
