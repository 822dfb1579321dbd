// SPDX-License-Identifier: GPL-3.0-or-later
// One result of a tolerance rule and its words; choosing a set.
#include "core/optics/lens_tolerance_parts.hpp"

#include "core/optics/text_reader.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace quarterstep
{
namespace
{

constexpr double inclusive = 1e-6;

struct RuleWords {
    const char* name;
    const char* unit;
    const char* within;
    const char* beyond;
    const char* shown;
};

/// In the order of ToleranceRule.
constexpr std::array<RuleWords, 8> ruleWords{{
    {"sphere_meridian", "D", QS_SAY("core", "sphere meridian off by %1, limit %2"),
     QS_SAY("core", "sphere meridian off by %1, limit %2: %3 too much"),
     QS_SAY("core", "sphere meridian off by %1: shown only, the set has no limit for it")},
    {"higher_meridian", "D", QS_SAY("core", "more plus principal meridian off by %1, limit %2"),
     QS_SAY("core", "more plus principal meridian off by %1, limit %2: %3 too much"),
     QS_SAY("core", "more plus principal meridian off by %1: shown only, the set has no limit for it")},
    {"lower_meridian", "D", QS_SAY("core", "more minus principal meridian off by %1, limit %2"),
     QS_SAY("core", "more minus principal meridian off by %1, limit %2: %3 too much"),
     QS_SAY("core", "more minus principal meridian off by %1: shown only, the set has no limit for it")},
    {"cylinder", "D", QS_SAY("core", "cylinder off by %1, limit %2"),
     QS_SAY("core", "cylinder off by %1, limit %2: %3 too much"),
     QS_SAY("core", "cylinder off by %1: shown only, the set has no limit for it")},
    {"axis", "°", QS_SAY("core", "axis off by %1, limit %2"),
     QS_SAY("core", "axis off by %1, limit %2: %3 too much"),
     QS_SAY("core", "axis off by %1: shown only, the set has no limit for it")},
    {"addition", "D", QS_SAY("core", "addition off by %1, limit %2"),
     QS_SAY("core", "addition off by %1, limit %2: %3 too much"),
     QS_SAY("core", "addition off by %1: shown only, the set has no limit for it")},
    {"horizontal_prism", "Δ", QS_SAY("core", "horizontal prism off by %1, limit %2"),
     QS_SAY("core", "horizontal prism off by %1, limit %2: %3 too much"),
     QS_SAY("core", "horizontal prism off by %1: shown only, the set has no limit for it")},
    {"vertical_prism", "Δ", QS_SAY("core", "vertical prism off by %1, limit %2"),
     QS_SAY("core", "vertical prism off by %1, limit %2: %3 too much"),
     QS_SAY("core", "vertical prism off by %1: shown only, the set has no limit for it")},
}};

const RuleWords& wordsOf(ToleranceRule rule)
{
    return ruleWords.at(static_cast<std::size_t>(rule));
}

std::string textOf(double value, ToleranceRule rule, bool sign)
{
    const int decimals = rule == ToleranceRule::axis ? 1 : 3;
    const std::string digits = writeShort(value, decimals);
    const bool plus = sign && value > 0.0 && digits != "0" && rule != ToleranceRule::axis;
    const char* blank = rule == ToleranceRule::axis ? "" : " ";
    return (plus ? "+" : "") + digits + blank + wordsOf(rule).unit;
}

} // namespace

ToleranceResult toleranceResult(ToleranceRule rule, std::optional<Eye> eye, double error,
                                std::optional<double> limit)
{
    ToleranceResult result{rule, eye, error + 0.0, limit, 0.0, {}};
    const std::string size = textOf(error, rule, true);
    if (!limit) {
        result.sentence = {wordsOf(rule).shown, {size}};
        return result;
    }
    const double over = std::fabs(error) - *limit;
    if (!(over <= inclusive)) // not a number fails
        result.excess = over;
    const std::string limitText = textOf(*limit, rule, false);
    if (result.passes())
        result.sentence = {wordsOf(rule).within, {size, limitText}};
    else
        result.sentence = {wordsOf(rule).beyond, {size, limitText, textOf(result.excess, rule, false)}};
    return result;
}

const ToleranceSet* ToleranceSets::named(const std::string& name) const
{
    const auto found =
        std::find_if(sets.begin(), sets.end(), [&name](const ToleranceSet& set) { return set.name == name; });
    return found == sets.end() ? nullptr : &*found;
}

Parsed<const ToleranceSet*> chooseTolerances(const ToleranceSets& sets, const std::string& name)
{
    const ToleranceSet* set = sets.named(name.empty() ? sets.usual : name);
    if (set == nullptr) {
        std::string names;
        for (const auto& known : sets.sets)
            names += (names.empty() ? "" : ", ") + known.name;
        return Complaint{"tolerances-unknown",
                         {QS_SAY("core", "there is no tolerance set “%1”; there are: %2"), {name, names}},
                         0};
    }
    if (!set->enabled)
        return Complaint{"tolerances-not-enabled",
                         {QS_SAY("core", "the tolerance set “%1” is not enabled: %2"), {set->name, set->why}},
                         0};
    return set;
}

const char* ruleName(ToleranceRule rule)
{
    return wordsOf(rule).name;
}

const char* ruleUnit(ToleranceRule rule)
{
    return wordsOf(rule).unit;
}

} // namespace quarterstep
