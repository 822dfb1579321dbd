// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/pair_reading.hpp"

#include "core/optics/notation.hpp"
#include "inventory/text/tolerance_file.hpp"

namespace quarterstep
{

namespace
{
const char* readingField(Eye eye)
{
    return eye == Eye::right ? "read_right" : "read_left";
}
} // namespace

std::vector<ReadingOff> offLabel(const Supply& supply, const PairReading& reading)
{
    std::vector<ReadingOff> off;
    const auto& sets = defaultTolerances();
    const auto set = chooseTolerances(sets, {});
    for (const auto eye : bothEyes) {
        const auto& read = reading.of(eye);
        if (!set || !read)
            continue;
        for (const auto& result :
             judgeLens(*set.value(), eye, {supply.power.of(eye), {}, {}}, {*read, {}, {}}).results)
            if (!result.passes())
                off.push_back({eye, result.sentence});
    }
    return off;
}

bool agrees(const Supply& supply, const PairReading& reading)
{
    return reading.right && reading.left && offLabel(supply, reading).empty();
}

void putReading(const PairReading& reading, std::map<std::string, std::string>& fields)
{
    for (const auto eye : bothEyes)
        if (const auto& read = reading.of(eye))
            fields[readingField(eye)] = writePower(*read);
}

PairReading readingIn(const std::map<std::string, std::string>& fields)
{
    PairReading reading;
    for (const auto eye : bothEyes)
        if (const auto found = fields.find(readingField(eye)); found != fields.end())
            if (const auto power = parsePower(found->second))
                reading.of(eye) = power.value();
    return reading;
}

} // namespace quarterstep
