// SPDX-License-Identifier: GPL-3.0-or-later
// People and lines made up for tests of the fit.
#pragma once

#include "core/fitting/recommendation.hpp"
#include "inventory/text/rules_file.hpp"

#include <algorithm>

namespace quarterstep::testing
{

inline EyeRecord eyeOf(const std::string& text, Eye eye = Eye::right)
{
    EyeRecord record;
    record.final = parseEye(text, eye).value();
    return record;
}

inline PersonRecord someone(const std::string& right, const std::string& left, double age = 30.0)
{
    PersonRecord person;
    person.person = "T-1";
    person.age = age;
    person.purpose = Purpose::distance;
    person.prescriber = "named";
    person.eyes = {eyeOf(right), eyeOf(left, Eye::left)};
    person.distancePd = 62.0;
    return person;
}

inline PersonRecord reader(const std::string& right, const std::string& left, double addition,
                           double age = 55.0)
{
    auto person = someone(right, left, age);
    person.purpose = Purpose::near;
    person.nearPd = 60.0;
    for (const Eye eye : bothEyes)
        person.eyes.of(eye).addition = Dioptres{addition};
    return person;
}

inline void see(PersonRecord& person, std::optional<Acuity> EyeAcuities::*which, const char* text)
{
    for (const Eye eye : bothEyes)
        person.eyes.of(eye).acuity.*which = parseAcuity(text).value();
}

inline StockLine pairOf(const std::string& name, double power, double centres = 62.0)
{
    StockLine line;
    line.name = name;
    line.power = {sphereOf(power), sphereOf(power)};
    line.centres = centres;
    line.onHand = 3;
    return line;
}

inline StockLine lensOf(const std::string& name, const std::string& power)
{
    const auto read = parseLensPower(power).value();
    auto line = pairOf(name, 0.0);
    line.kind = LineKind::lens;
    line.centres.reset();
    line.shape = "round 44";
    line.power = {read.power, read.power};
    line.anyAxis = !read.axisGiven;
    return line;
}

inline StockLine frameOf(const std::string& name, double centres, double axisStep = 5.0)
{
    auto line = pairOf(name, 0.0, centres);
    line.kind = LineKind::frame;
    line.takes = {"round 44"};
    line.axisStep = axisStep;
    return line;
}

inline Recommendation first(const PersonRecord& person, const std::vector<StockLine>& stock,
                            const MatchOptions& options = {})
{
    return recommend(person, stock, defaultRules(), options).front();
}

inline Recommendation inDetail(const PersonRecord& person, const std::vector<StockLine>& stock)
{
    MatchOptions options;
    options.details = true;
    return first(person, stock, options);
}

inline const Flag* flagOf(const Recommendation& answer, const std::string& code)
{
    const auto found = std::find_if(answer.flags.begin(), answer.flags.end(),
                                    [&](const Flag& flag) { return flag.code == code; });
    return found == answer.flags.end() ? nullptr : &*found;
}

inline bool flagged(const Recommendation& answer, const std::string& code)
{
    return flagOf(answer, code) != nullptr;
}

} // namespace quarterstep::testing
