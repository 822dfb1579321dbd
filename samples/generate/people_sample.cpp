// SPDX-License-Identifier: GPL-3.0-or-later
// The people of the invented camp, in the order in which they queue.
#include "samples/generate/person.hpp"
#include "samples/generate/samples.hpp"

#include <utility>

namespace quarterstep::samples
{

namespace
{

constexpr std::uint64_t queueStream = 300;

/// The order in which people come: shuffled once (Fisher and Yates), always the same.
void shuffle(Group& group)
{
    Random random(queueStream, 1);
    for (std::size_t i = group.size(); i > 1; --i)
        std::swap(group[i - 1], group[static_cast<std::size_t>(random.between(0, static_cast<int>(i) - 1))]);
}

std::string codeOf(std::size_t number)
{
    const std::string digits = std::to_string(number);
    return "W-" + std::string(3 - digits.size(), '0') + digits;
}

} // namespace

std::string peopleSample()
{
    Group group;
    addEverydayPeople(group);
    addSpecialPeople(group);
    shuffle(group);
    std::string text;
    for (const char* name : columnNames)
        text += (text.empty() ? "" : ",") + std::string(name);
    text += "\n";
    for (std::size_t i = 0; i < group.size(); ++i)
        text += group[i].row(codeOf(i + 1));
    return text;
}

} // namespace quarterstep::samples
