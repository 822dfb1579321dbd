// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/criterion_rule_reader.hpp"

#include "inventory/text/numbers.hpp"

namespace quarterstep
{

namespace
{

constexpr double largestLimit = 100.0;

/// A limit as written: 0.50, or "< 1.00" for one that is itself outside.
std::optional<Limit> readLimit(YamlDocument& document, const YamlValue& value)
{
    const auto written = document.text(value);
    if (!written)
        return std::nullopt;
    const bool open = written->rfind('<', 0) == 0;
    const std::size_t begin = open ? written->find_first_not_of(' ', 1) : 0;
    const std::string digits = begin == std::string::npos ? std::string() : written->substr(begin);
    const auto number = parseNumber(digits, 0.0, largestLimit);
    if (!number) {
        Complaint complaint = number.complaint();
        complaint.offset = static_cast<int>(begin == std::string::npos ? written->size() : begin);
        document.tell(value, complaint);
        return std::nullopt;
    }
    return Limit{number.value(), open};
}

std::optional<Limit> readBand(YamlMap& map, const char* key, bool& good)
{
    const YamlValue* value = map.find(key);
    if (!value)
        return std::nullopt;
    auto limit = readLimit(map.document(), *value);
    good = good && limit.has_value();
    return limit;
}

bool inOrder(const std::optional<Limit>& lower, const std::optional<Limit>& upper)
{
    return !lower || !upper || lower->value < upper->value ||
           (lower->value == upper->value && lower->open && !upper->open);
}

Bands readBands(YamlMap& map, bool& good)
{
    Bands bands;
    bands.fits = readBand(map, "fits", good);
    bands.caution = readBand(map, "caution", good);
    bands.trial = readBand(map, "trial", good);
    if (!inOrder(bands.fits, bands.caution) || !inOrder(bands.fits, bands.trial) ||
        !inOrder(bands.caution, bands.trial)) {
        map.document().tell(Severity::error, map.value(), "bands-order",
                            {QS_SAY("core", "the limits must rise: fits, then caution, then trial"), {}});
        good = false;
    }
    return bands;
}

/// Whether any limit was written, right or wrong.
bool isLimited(const YamlMap& map)
{
    return map.find("fits") || map.find("caution") || map.find("trial") || map.find("by cylinder");
}

void checkLimited(YamlMap& map, bool& good)
{
    if (!map.isMap() || isLimited(map))
        return;
    map.document().tell(Severity::error, map.value(), "limit-missing",
                        {QS_SAY("core", "a limit is missing here; write fits, caution or trial"), {}});
    good = false;
}

void readOlder(YamlMap& map, CriterionRule& rule, bool& good)
{
    const YamlValue* value = map.find("from age");
    if (!value)
        return;
    YamlMap older(map.document(), *value, {"age", "fits", "caution", "trial"});
    const YamlValue* age = older.need("age");
    rule.olderFrom = age ? map.document().number(*age, 0.0, 120.0) : std::nullopt;
    rule.older = readBands(older, good);
    checkLimited(older, good);
    good = good && rule.olderFrom.has_value();
}

/// Limits of a minus power supplied for near work.
void readMinus(YamlMap& map, Criterion criterion, CriterionRule& rule, bool& good)
{
    const YamlValue* value = map.find("minus");
    if (!value)
        return;
    if (criterion != Criterion::powerSize) {
        map.document().tell(
            Severity::error, *value, "key-elsewhere",
            {QS_SAY("core", "\"%1\" means nothing for this criterion; delete it"), {"minus"}});
        good = false;
        return;
    }
    YamlMap minus(map.document(), *value, {"fits", "caution", "trial"});
    rule.minus = readBands(minus, good);
    checkLimited(minus, good);
}

void readByCylinder(YamlMap& map, CriterionRule& rule, bool& good)
{
    const YamlValue* value = map.find("by cylinder");
    if (!value)
        return;
    if (value->kind != YamlValue::Kind::list || value->items.empty()) {
        map.document().tell(Severity::error, *value, "steps-not-a-list",
                            {QS_SAY("core", "write the steps as a list: [{up to: 0.50, fits: 7}, …]"), {}});
        good = false;
        return;
    }
    for (const auto& item : value->items) {
        YamlMap step(map.document(), item, {"up to", "fits"});
        const YamlValue* upTo = step.need("up to");
        const YamlValue* fits = step.need("fits");
        const auto cylinder = upTo ? map.document().number(*upTo, 0.0, largestLimit) : std::nullopt;
        const auto limit = fits ? map.document().number(*fits, 0.0, 90.0) : std::nullopt;
        if (!cylinder || !limit) {
            good = false;
            continue;
        }
        const CylinderStep next{cylinder.value_or(0.0), limit.value_or(0.0)};
        if (!rule.byCylinder.empty() && rule.byCylinder.back().cylinder >= next.cylinder) {
            map.document().tell(Severity::error, *upTo, "steps-order",
                                {QS_SAY("core", "the steps must rise; put the smaller cylinder first"), {}});
            good = false;
        }
        rule.byCylinder.push_back(next);
    }
}

/// A key that only one criterion understands.
std::optional<double> readSpecial(YamlMap& map, const char* key, bool understood, double most, bool& good)
{
    const YamlValue* value = map.find(key);
    if (!value)
        return std::nullopt;
    if (!understood) {
        map.document().tell(Severity::error, *value, "key-elsewhere",
                            {QS_SAY("core", "\"%1\" means nothing for this criterion; delete it"), {key}});
        good = false;
        return std::nullopt;
    }
    auto number = map.document().number(*value, 0.0, most);
    good = good && number.has_value();
    return number;
}

void readSource(YamlMap& map, CriterionRule& rule, bool& good)
{
    const YamlValue* value = map.need("source");
    rule.source = value ? map.document().text(*value).value_or("") : "";
    if (value && value->kind == YamlValue::Kind::scalar && value->text.empty())
        map.document().tell(
            Severity::error, *value, "source-empty",
            {QS_SAY("core", "say where the limit comes from, or write: common practice"), {}});
    good = good && !rule.source.empty();
}

/// Either limits, or shown only.
void checkJudged(YamlMap& map, CriterionRule& rule, bool& good)
{
    const bool shownOnly = map.yesNo("shown only").value_or(false);
    rule.judged = !shownOnly;
    if (shownOnly && (isLimited(map) || rule.olderFrom || rule.neverFails)) {
        map.document().tell(Severity::error, map.value(), "limit-not-judged",
                            {QS_SAY("core", "shown only means no limits; keep one of the two"), {}});
        good = false;
    }
    if (!shownOnly)
        checkLimited(map, good);
}

} // namespace

std::optional<CriterionRule> readCriterionRule(YamlDocument& document, const YamlValue& value,
                                               Criterion criterion)
{
    YamlMap map(document, value,
                {"fits", "caution", "trial", "from age", "never fails", "hyperopic child under",
                 "with horizontal prism up to", "vertex recorded above", "minus", "by cylinder", "shown only",
                 "source"});
    if (!map.isMap())
        return std::nullopt;
    bool good = true;
    CriterionRule rule;
    rule.bands = readBands(map, good);
    rule.neverFails = map.yesNo("never fails").value_or(false);
    readOlder(map, rule, good);
    const bool angle = criterion == Criterion::axisError || criterion == Criterion::axisTurn;
    if (angle)
        readByCylinder(map, rule, good);
    else
        (void)readSpecial(map, "by cylinder", false, 0.0, good);
    rule.hyperopicChildUnder =
        readSpecial(map, "hyperopic child under", criterion == Criterion::balance, 18.0, good);
    rule.needsPrismUnder =
        readSpecial(map, "with horizontal prism up to", criterion == Criterion::centres, largestLimit, good);
    readMinus(map, criterion, rule, good);
    rule.vertexAbove =
        readSpecial(map, "vertex recorded above", criterion == Criterion::powerSize, largestLimit, good);
    readSource(map, rule, good);
    checkJudged(map, rule, good);
    return good ? std::optional(rule) : std::nullopt;
}

} // namespace quarterstep
