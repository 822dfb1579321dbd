// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/hand_over.hpp"
#include "app/session/keeping.hpp"
#include "app/session/unserved.hpp"

#include "core/fitting/reasons.hpp"
#include "core/fitting/words.hpp"
#include "core/optics/notation.hpp"
#include "core/record/judgement.hpp"
#include "inventory/text/record_text.hpp"

#include <algorithm>
#include <map>

namespace quarterstep
{

namespace
{

/// What the parts make; empty where they make no pair.
std::optional<Supply> supplyFor(const Camp& camp, const HandOver& given)
{
    const auto& answer = *given.recommendation;
    return answer.need ? supplyOf(given.parts, camp.stock(), *answer.need, camp.rules().settings)
                       : std::nullopt;
}

/// The pair picked, judged as matching judges it. Empty where the parts do not make a pair.
std::optional<Fit> fitOf(const Camp& camp, const HandOver& given)
{
    const auto& answer = *given.recommendation;
    const Profile* profile = camp.rules().find(answer.profile);
    const auto supply = supplyFor(camp, given);
    if (!supply || profile == nullptr)
        return {};
    return judge(*answer.need, *supply, *profile, given.trial ? &*given.trial : nullptr);
}

bool unequalPair(const Camp& camp, const HandOver& given)
{
    if (given.parts.size() != 1)
        return given.parts.size() == 3 &&
               camp.stock()[given.parts[1].line].name != camp.stock()[given.parts[2].line].name;
    return !camp.stock()[given.parts[0].line].equalPowers();
}

void objectToVerdict(const HandOver& given, std::vector<Objection>& objections)
{
    const auto& answer = *given.recommendation;
    if (answer.referral == Referral::before)
        objections.push_back({{QS_SAY("core", "to be referred before any glasses are given"), {}}, true});
    if (answer.verdict == Verdict::none)
        objections.push_back({{QS_SAY("core", "nothing is needed for this purpose"), {}}, true});
    if (answer.verdict == Verdict::incomplete && answer.reasonKey != "on_trial")
        for (const auto& need : answer.needs)
            objections.push_back({need, true});
}

void objectToFit(const Camp& camp, const HandOver& given, std::vector<Objection>& objections)
{
    const auto fit = fitOf(camp, given);
    if (!given.recommendation->need)
        return; // told as incomplete
    if (!fit) {
        objections.push_back({{QS_SAY("core", "these lines do not make a pair"), {}}, false});
        return;
    }
    if (fit->onTrial())
        objections.push_back({{QS_SAY("core", "on trial: type the acuity with this pair first"), {}}, false});
    if (const auto* failing = fit->firstWith(Band::fails))
        objections.push_back({failingSentence(*failing), true});
    if (const auto supply = supplyFor(camp, given))
        for (const auto& off : offLabel(*supply, given.reading))
            objections.push_back(
                {off.eye == Eye::right
                     ? Sentence{QS_SAY("core", "the focimeter reads %1 right, the pair has %2"),
                                {writePower(*given.reading.right), writePower(supply->power.right)}}
                     : Sentence{QS_SAY("core", "the focimeter reads %1 left, the pair has %2"),
                                {writePower(*given.reading.left), writePower(supply->power.left)}},
                 true});
    if (unequalPair(camp, given) && !given.checks.powerByFocimeter)
        objections.push_back(
            {{QS_SAY("core", "an unequal pair: read each eye with the focimeter first"), {}}, true});
}

void objectToCounts(const Camp& camp, const HandOver& given, std::vector<Objection>& objections)
{
    std::map<std::size_t, int> wanted;
    for (const auto& part : given.parts)
        ++wanted[part.line];
    for (const auto& [line, count] : wanted)
        if (camp.stock()[line].available() + heldFor(camp, given.recommendation->person, camp.stock()[line]) <
            count)
            objections.push_back({{QS_SAY("core", "none left of %1"), {camp.stock()[line].name}}, false});
}

} // namespace

Entry entryFor(const Camp& camp, const HandOver& given)
{
    const auto& answer = *given.recommendation;
    Entry entry;
    entry.kind = EntryKind::handedOver;
    entry.actor = given.actor;
    entry.person = answer.person;
    auto& fields = entry.fields;
    fields["purpose"] = wordOf(answer.purpose);
    fields["profile"] = answer.profile;
    if (const Profile* profile = camp.rules().find(answer.profile))
        fields["profile_version"] = profile->version;
    fields["rules_hash"] = camp.rules().hash;
    fields["final"] = given.finalAsWritten;
    entry.texts["reason"] = given.reason;
    entry.texts["record"] = given.record;
    if (const auto person = readRecordText(given.record))
        putDemandFields(*person, answer, fields);
    fields["referral"] = wordOf(answer.referral);
    const auto& checks = given.checks;
    fields["checks"] = std::string(checks.powerByFocimeter ? "power " : "") +
                       (checks.fitOnFace ? "fit " : "") + (checks.acuityWithPair ? "acuity " : "") +
                       (checks.instructionsGiven ? "instructions " : "");
    if (fields["checks"].empty())
        fields["checks"] = "none";
    else
        fields["checks"].pop_back();
    if (const auto fit = fitOf(camp, given)) {
        putJudgement(entry, *fit);
        fields["supplied"] = supplyText(*supplyFor(camp, given));
    }
    putReading(given.reading, fields);
    if (given.trial)
        for (const Eye eye : bothEyes)
            if (const auto& typed = given.trial->distance.of(eye))
                fields[eye == Eye::right ? "acuity_right" : "acuity_left"] = typed->asRecorded;
    if (given.trial && given.trial->near)
        fields["acuity_near"] = given.trial->near->asRecorded;
    std::map<std::size_t, int> held; // what was kept for this person goes first
    for (const auto& part : given.parts) {
        const auto& line = camp.stock()[part.line];
        auto& left = held.emplace(part.line, heldFor(camp, entry.person, line)).first->second;
        entry.movements.push_back({line.name, -1, wordOf(part.side), left > 0 ? -1 : 0, 0});
        left -= left > 0 ? 1 : 0;
    }
    return entry;
}

std::vector<Objection> objectionsTo(const Camp& camp, const HandOver& given)
{
    std::vector<Objection> objections;
    if (given.parts.empty()) {
        objections.push_back({{QS_SAY("core", "no pair chosen"), {}}, false});
        return objections;
    }
    objectToVerdict(given, objections);
    objectToFit(camp, given, objections);
    objectToCounts(camp, given, objections);
    if (!given.reason.empty())
        std::erase_if(objections, [](const Objection& objection) { return objection.reasonHelps; });
    return objections;
}

Entry handOver(Camp& camp, const HandOver& given)
{
    const auto objections = objectionsTo(camp, given);
    if (!objections.empty())
        throw errorSaying("hand-over-refused", objections.front().sentence, 1);
    return camp.post(entryFor(camp, given));
}

} // namespace quarterstep
