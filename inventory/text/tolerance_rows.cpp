// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/tolerance_rows.hpp"

namespace quarterstep
{

namespace
{

constexpr double largestPower = 100.0;
constexpr double largestLimit = 90.0;
constexpr double largestMm = 50.0;

/// The items of a list under a key; null and told when it is no list, or empty.
const YamlValue* listUnder(YamlMap& map, const char* key)
{
    const YamlValue* value = map.find(key);
    if (value == nullptr)
        return nullptr;
    if (value->kind == YamlValue::Kind::list && !value->items.empty())
        return value;
    map.document().tell(
        Severity::error, *value, "rows-not-a-list",
        {QS_SAY("core", "write the rows as a list: [{power up to: 6.50, limit: 0.13}, …]"), {}});
    return nullptr;
}

/// One row: exactly one of limit, percent and `not judged: yes`.
void readRow(YamlDocument& document, const YamlValue& item, std::vector<ToleranceRow>& rows)
{
    YamlMap map(document, item, {"power up to", "cylinder up to", "limit", "percent", "not judged"});
    if (!map.isMap())
        return;
    ToleranceRow row;
    row.powerUpTo = map.number("power up to", 0.0, largestPower).value_or(noUpperEnd);
    row.cylinderUpTo = map.number("cylinder up to", 0.0, largestPower).value_or(noUpperEnd);
    const bool unjudged = map.yesNo("not judged").value_or(false);
    const int said = (map.find("limit") ? 1 : 0) + (map.find("percent") ? 1 : 0) + (unjudged ? 1 : 0);
    if (said != 1) {
        document.tell(Severity::error, item, "row-limit",
                      {QS_SAY("core", "a row has one of: limit, percent, or not judged: yes"), {}});
        return;
    }
    row.percent = map.find("percent") != nullptr;
    row.limit =
        row.percent ? map.number("percent", 0.0, largestLimit) : map.number("limit", 0.0, largestLimit);
    if (row.limit || unjudged)
        rows.push_back(row);
}

void readPrismRow(YamlDocument& document, const YamlValue& item, std::vector<PrismRow>& rows)
{
    YamlMap map(document, item, {"ordered up to", "power up to", "prism", "or mm", "plus mm"});
    const YamlValue* prism = map.need("prism");
    if (prism == nullptr)
        return;
    PrismRow row;
    row.orderedUpTo = map.number("ordered up to", 0.0, largestPower).value_or(noUpperEnd);
    row.powerUpTo = map.number("power up to", 0.0, largestPower).value_or(noUpperEnd);
    row.orMm = map.number("or mm", 0.0, largestMm).value_or(0.0);
    row.plusMm = map.number("plus mm", 0.0, largestMm).value_or(0.0);
    const auto size = document.number(*prism, 0.0, largestLimit);
    if (!size)
        return;
    row.prism = *size;
    rows.push_back(row);
}

} // namespace

std::vector<ToleranceRow> readToleranceRows(YamlMap& set, const char* key)
{
    std::vector<ToleranceRow> rows;
    if (const YamlValue* list = listUnder(set, key))
        for (const auto& item : list->items)
            readRow(set.document(), item, rows);
    return rows;
}

PrismRule readPrismRule(YamlMap& set, const char* key)
{
    PrismRule rule;
    const YamlValue* value = set.find(key);
    if (value == nullptr)
        return rule;
    YamlMap map(set.document(), *value, {"of", "rows"});
    if (!map.isMap())
        return rule;
    if (map.need("of") != nullptr)
        rule.of = map.word("of", {"pair", "each lens"}).value_or(0) == 0 ? PrismOf::pair : PrismOf::eachLens;
    (void)map.need("rows");
    if (const YamlValue* list = listUnder(map, "rows"))
        for (const auto& item : list->items)
            readPrismRow(set.document(), item, rule.rows);
    return rule;
}

} // namespace quarterstep
