// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/rules_archive.hpp"

#include "core/fitting/criteria/table.hpp"
#include "inventory/text/rules_hash.hpp"

#include <algorithm>
#include <charconv>

namespace quarterstep
{

namespace
{

using Cells = std::vector<std::string>;

Cells cut(const std::string& text, char at)
{
    Cells cells;
    std::size_t begin = 0;
    for (std::size_t end = 0; end != std::string::npos; begin = end + 1) {
        end = text.find(at, begin);
        cells.push_back(text.substr(begin, end == std::string::npos ? end : end - begin));
    }
    return cells;
}

/// Throws away nothing: what cannot be read shows when the hash is compared.
double numberIn(const std::string& text)
{
    double value = 0.0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

std::optional<double> optionalIn(const std::string& text)
{
    return text == "-" ? std::nullopt : std::optional(numberIn(text));
}

std::optional<Limit> limitIn(const std::string& text)
{
    if (text == "-" || text.empty())
        return std::nullopt;
    const bool open = text.front() == '<';
    return Limit{numberIn(open ? text.substr(1) : text), open};
}

Bands bandsIn(const std::string& text)
{
    const auto cells = cut(text, '|');
    return cells.size() == 3 ? Bands{limitIn(cells[0]), limitIn(cells[1]), limitIn(cells[2])} : Bands{};
}

Range rangeIn(const std::string& text)
{
    const auto dots = text.find("..");
    return dots == std::string::npos ? Range{}
                                     : Range{numberIn(text.substr(0, dots)), numberIn(text.substr(dots + 2))};
}

void takeSettings(const Cells& cells, Settings& settings)
{
    settings.stockVertex = numberIn(cells[1]);
    settings.adultDistancePd = rangeIn(cells[2]);
    settings.adultNearPd = rangeIn(cells[3]);
    settings.unknownCentres = rangeIn(cells[4]);
    settings.useUsedPairs = cells[5] == "yes";
    settings.holdBackSecondPair = cells[6] == "yes";
}

CriterionRule ruleIn(const Cells& cells)
{
    CriterionRule rule;
    rule.judged = cells[1] == "yes";
    rule.bands = bandsIn(cells[2]);
    rule.neverFails = cells[3] == "yes";
    rule.olderFrom = optionalIn(cells[4]);
    rule.older = bandsIn(cells[5]);
    if (const auto minus = bandsIn(cells[6]); minus != Bands{})
        rule.minus = minus;
    rule.hyperopicChildUnder = optionalIn(cells[7]);
    rule.needsPrismUnder = optionalIn(cells[8]);
    rule.vertexAbove = optionalIn(cells[9]);
    for (const auto& step : cut(cells[10], ';'))
        if (const auto colon = step.find(':'); colon != std::string::npos)
            rule.byCylinder.push_back({numberIn(step.substr(0, colon)), numberIn(step.substr(colon + 1))});
    rule.source = cells[11];
    return rule;
}

constexpr std::size_t settingsCells = 7;
constexpr std::size_t profileCells = 4;
constexpr std::size_t ruleCells = 12;

bool takeRow(const Cells& cells, FittingRules& rules)
{
    if (cells[0] == "settings" && cells.size() == settingsCells) {
        takeSettings(cells, rules.settings);
        return true;
    }
    if (cells[0] == "profile" && cells.size() == profileCells) {
        rules.profiles.push_back({cells[1], cells[2], cells[3] == "yes", {}});
        return true;
    }
    const auto& table = criterionTable();
    const auto info =
        std::find_if(table.begin(), table.end(), [&](const auto& row) { return cells[0] == row.name; });
    if (info == table.end() || cells.size() != ruleCells || rules.profiles.empty())
        return false;
    rules.profiles.back().of(info->criterion) = ruleIn(cells);
    return true;
}

/// Whether every line of `text` stands in `whole`, in the same order.
bool holdsEveryLine(const std::string& whole, const std::string& text)
{
    const auto lines = cut(whole, '\n');
    auto at = lines.begin();
    for (const auto& line : cut(text, '\n')) {
        at = std::find(at, lines.end(), line);
        if (at == lines.end())
            return false;
        ++at;
    }
    return true;
}

} // namespace

std::optional<FittingRules> readCanonicalRules(const std::string& text)
{
    FittingRules rules;
    std::size_t begin = 0;
    while (begin < text.size()) {
        const auto end = std::min(text.find('\n', begin), text.size());
        if (!takeRow(cut(text.substr(begin, end - begin), '\t'), rules))
            return std::nullopt;
        begin = end + 1;
    }
    // A criterion that came later is not in the text and was not judged; what is in it must be read back
    // whole.
    if (!holdsEveryLine(canonicalRules(rules), text))
        return std::nullopt;
    rules.hash = rulesHash(text);
    return rules;
}

} // namespace quarterstep
