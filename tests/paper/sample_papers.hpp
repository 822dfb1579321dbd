// SPDX-License-Identifier: GPL-3.0-or-later
// Every paper, made from invented people and lines: usual ones, and ones with everything as long as it gets.
#pragma once

#include "app/paper/content/papers.hpp"
#include "tests/session/people.hpp"

#include <string>
#include <vector>

namespace quarterstep::testing
{

inline PaperSource sourceOfPapers()
{
    return {"Orrowen Point box 2", "2026-03-01", "4be1a2c35d60f718", "0.1.0"};
}

/// A reason of exactly 200 characters.
inline std::string reasonOf200()
{
    std::string text;
    while (text.size() < 200)
        text += "tried both pairs by the window, sees the net better with this one; ";
    return text.substr(0, 200);
}

inline StockLine longestLine()
{
    auto line = pairOf("D-1175+0475-62M-TORTOISESHELL-GREY", -11.75);
    line.power = {SpheroCylinder{Dioptres{-11.75}, Dioptres{-4.75}, AxisDegrees{175.0}},
                  SpheroCylinder{Dioptres{-10.25}, Dioptres{-4.25}, AxisDegrees{165.0}}};
    line.use = "distance";
    line.bin = "CRATE-12";
    line.frame.model = "Kittiwake reinforced with adjustable nose pads";
    line.frame.colour = "tortoiseshell grey";
    line.frame.sizeClass = "medium";
    return line;
}

/// The answer for a person, with the pair that is suggested or given.
inline PersonAnswer answered(const PersonRecord& person, const std::vector<StockLine>& stock,
                             bool handedOver = false, const std::string& reason = {})
{
    PersonAnswer answer;
    answer.recommendation = inDetail(person, stock);
    answer.profileVersion = "1";
    const auto& ranked = answer.recommendation.candidates.ranked;
    const std::vector<Part> firstLine{{0, PartSide::pair}};
    if (!ranked.empty())
        answer.pair = pairFor(answer.recommendation, ranked.front().parts, stock, defaultRules());
    else if (handedOver)
        answer.pair = pairFor(answer.recommendation, firstLine, stock, defaultRules());
    if (answer.pair) {
        answer.pair->handedOver = handedOver;
        answer.pair->reason = reason;
    }
    return answer;
}

struct NamedPaper {
    std::string name;
    Paper paper;
};

inline PersonRecord withAcuity(PersonRecord person, const char* unaided, const char* best)
{
    see(person, &EyeAcuities::unaided, unaided);
    see(person, &EyeAcuities::best, best);
    return person;
}

inline PersonRecord childOf(double power)
{
    auto child =
        withAcuity(someone(writePower(sphereOf(power)), writePower(sphereOf(power)), 9.0), "6/24", "6/6");
    child.writtenOn = "2026-02-27";
    return child;
}

inline PersonRecord talker()
{
    auto person = withAcuity(someone("-11.75 -4.75 x 175", "-10.25 -4.25 x 165", 70.0), "6/60", "6/24");
    person.prescriber = "Prescriber with a rather long name of the coast clinic";
    person.symptoms = reasonOf200();
    person.signs = {Sign::halos, Sign::distortion, Sign::fieldLoss};
    return person;
}

/// Notes for the five verdicts and both kinds of referral.
inline std::vector<NamedPaper> notes()
{
    const auto source = sourceOfPapers();
    const std::vector<StockLine> stock{pairOf("N+200-62M-BK", 2.0), pairOf("D-200-62M-BK", -2.0)};
    const auto note = [&](const PersonRecord& person, bool given = false, const std::string& reason = {}) {
        return handOverNote(person, answered(person, stock, given, reason), source);
    };
    auto refer = withAcuity(someone("-2.00", "-2.00"), "6/24", "6/6");
    refer.signs = {Sign::suddenLoss};
    auto withLetter = withAcuity(reader("0.00", "0.00", 2.0), "6/18", "6/18");
    auto incomplete = reader("0.00", "0.00", 2.0);
    for (const Eye eye : bothEyes)
        incomplete.eyes.of(eye).addition.reset();
    return {{"stock", note(withAcuity(reader("0.00", "0.00", 2.0), "6/6", "6/6"))},
            {"given", note(withAcuity(someone("-2.25", "-2.00"), "6/24", "6/6"), true)},
            {"custom", note(withAcuity(someone("-6.00", "-6.00"), "6/60", "6/6"))},
            {"none", note(withAcuity(someone("0.00", "+0.25"), "6/6", "6/6"))},
            {"incomplete", note(incomplete)},
            {"refer", note(refer)},
            {"with", note(withLetter, true)}};
}

/// One of each other kind.
inline std::vector<NamedPaper> otherPapers()
{
    const auto source = sourceOfPapers();
    const std::vector<StockLine> stock{pairOf("D-200-62M-BK", -2.0)};
    const auto child = childOf(-2.0);
    const auto grown = withAcuity(someone("-6.00 -0.75 x 10", "-6.25"), "6/60", "6/18");
    const auto grownAnswer = answered(grown, stock);
    auto near = pairOf("N+200-62M-BK", 2.0);
    near.use = "near";
    near.bin = "C4";
    auto sided = lensOf("LR-150", "-1.50 -0.50 x 90");
    sided.side = LensSide::right;
    auto coded = near;
    coded.code = "2000000000015";
    return {
        {"letter", referralLetter(grown, grownAnswer, source)},
        {"lab-order", laboratoryOrderPaper(grown, grownAnswer, *grownAnswer.recommendation.order, source)},
        {"collection", collectionNote(grown, grownAnswer, "2026-02-20", source)},
        {"guardian-note", guardianNote(child, answered(child, stock, true), source)},
        {"teacher-note", teacherNote(child, answered(child, stock, true), source)},
        {"label", stockLabel(near, source)},
        {"label-sided", stockLabel(sided, source)},
        {"label-code", stockLabel(coded, source)},
        {"bin-label", binLabel("C4", std::vector<StockLine>{near}, source)},
        {"packing-list",
         packingList({{"2", "C4", "N+200-62M-BK", "+2.00", 6}, {"1", "A1", "L-100", "-1.00", 4}}, source)},
        {"count-sheet", countSheetPaper({{"C4", "N+200-62M-BK"}, {"", "CASE"}}, source)},
        {"audit-sheet",
         auditSheet({{"7", "2026-03-01", "0042", "near", "0.00", "+0.25", "N+200-62M-BK", "adult-near 1"}},
                    source)},
        {"card-optician", quickCard(Role::optician, source)},
        {"card-keeper", quickCard(Role::keeper, source)},
        {"card-supervisor", quickCard(Role::supervisor, source)}};
}

/// Everything as long as it gets: names, models, reasons of 200 characters.
inline std::vector<NamedPaper> longestPapers()
{
    auto source = sourceOfPapers();
    source.site = "Orrowen Point harbour hall, box 2 of 14, upper floor";
    const auto line = longestLine();
    const auto person = talker();
    const auto answer = answered(person, {line}, true, reasonOf200());
    auto order = *answered(person, {pairOf("D-200-62M-BK", -2.0)}).recommendation.order;
    order.frame = line.frame.model + ", " + line.frame.colour;
    auto child = childOf(-2.0);
    child.prescriber = person.prescriber;
    auto childAnswer = answered(child, {line}, true, reasonOf200());
    std::vector<PackingRow> packed(
        60, {"B", line.bin, line.name,
             "R " + writePower(line.power.right) + " L " + writePower(line.power.left), 12});
    std::vector<CountRow> counted(45, {line.bin, line.name});
    std::vector<AuditRow> audited(15,
                                  {"1234567", "2026-03-01", "PERSON-000123", "distance", "-11.75 -4.75 x 175",
                                   "-10.25 -4.25 x 165", line.name, "adult-distance 12"});
    return {{"note", handOverNote(person, answer, source)},
            {"letter", referralLetter(person, answer, source)},
            {"lab-order", laboratoryOrderPaper(person, answer, order, source)},
            {"collection", collectionNote(person, answer, "", source)},
            {"guardian-note", guardianNote(child, childAnswer, source)},
            {"teacher-note", teacherNote(child, childAnswer, source)},
            {"label", stockLabel(line, source)},
            {"bin-label", binLabel(line.bin, std::vector<StockLine>(12, line), source)},
            {"packing-list", packingList(packed, source)},
            {"count-sheet", countSheetPaper(counted, source)},
            {"audit-sheet", auditSheet(audited, source)}};
}

} // namespace quarterstep::testing
