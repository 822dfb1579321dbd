// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/random_persons.hpp"

#include "inventory/text/numbers.hpp"
#include "inventory/text/record_text.hpp"

#include <cmath>

namespace quarterstep::check
{

namespace
{

int below(std::mt19937& random, int limit)
{
    return static_cast<int>(random() % static_cast<unsigned>(limit));
}

double steps(std::mt19937& random, double most)
{
    constexpr double sizes[] = {0.25, 0.25, 0.125, 0.01};
    const double step = sizes[below(random, 4)];
    const int count = static_cast<int>(most / step);
    return std::round((below(random, 2 * count + 1) - count) * step * 1000.0) / 1000.0;
}

WrittenEye randomEye(std::mt19937& random, Eye side)
{
    WrittenEye eye;
    if (below(random, 25) == 0) {
        eye.state = static_cast<EyeState>(1 + below(random, 4));
    } else {
        eye.power.sphere = Dioptres{steps(random, 12.0)};
        if (below(random, 3) > 0) {
            eye.power.cylinder = Dioptres{steps(random, 5.0)};
            if (eye.power.cylinder != Dioptres{})
                eye.power.axis = AxisDegrees{1.0 + below(random, 180)};
        }
        if (below(random, 5) == 0)
            eye.prism = EyePrism{(below(random, 17) - 8) * 0.25, (below(random, 17) - 8) * 0.25};
        else if (below(random, 8) == 0)
            eye.prism = prismFromBase(1 + below(random, 12) * 0.5, below(random, 360), side);
    }
    eye.asWritten = eyeWords(eye, side);
    return eye;
}

} // namespace

PersonRecord randomPerson(std::mt19937& random, int number)
{
    PersonRecord person;
    person.person = "K-" + std::to_string(number) + (number % 7 == 0 ? " é; \"quay\", =1" : "");
    person.age = 5.0 + below(random, 80);
    const bool added = below(random, 2) == 0;
    for (const Eye side : bothEyes) {
        auto& eye = person.eyes.of(side);
        eye.final = randomEye(random, side);
        if (added && eye.seeing())
            eye.addition = Dioptres{0.75 + below(random, 12) * 0.25};
        if (number % 3 == 0)
            eye.monocularPd = 25.0 + below(random, 40) * 0.5;
    }
    if (number % 3 == 1)
        person.distancePd = 54.0 + below(random, 40) * 0.5;
    if (number % 5 == 0)
        person.nearPd = 50.0 + below(random, 8);
    if (number % 4 == 0)
        person.vertexMm = 10.0 + below(random, 8) * 0.5;
    if (number % 2 == 0)
        person.prescriber = "Osric, of the quay";
    if (number % 3 != 2)
        person.writtenOn =
            "2026-0" + std::to_string(1 + below(random, 9)) + "-1" + std::to_string(below(random, 10));
    person.position = {"drawn", number, 1};
    return person;
}

std::vector<ExchangePerson> randomPersons(unsigned seed, int count)
{
    std::mt19937 random(seed);
    std::vector<ExchangePerson> persons;
    for (int number = 1; number <= count; ++number)
        persons.push_back({randomPerson(random, number), {"adult-distance", "1", "0123456789abcdef"}});
    return persons;
}

std::string essence(const PersonRecord& person)
{
    std::string text;
    for (const auto& [name, cell] : recordCells(person))
        if (name != "right" && name != "left")
            text.append(name).append(": ").append(cell).append("\n");
    for (const Eye side : bothEyes) {
        const auto& eye = person.eyes.of(side).final;
        const auto prism = eye.prism.value_or(EyePrism{});
        text += std::to_string(static_cast<int>(eye.state)) + " " +
                std::to_string(eye.power.sphere.thousandths()) + " " +
                std::to_string(eye.power.cylinder.thousandths()) + " " + writeNumber(eye.power.axis.value()) +
                " " + writeNumber(prism.in) + " " + writeNumber(prism.up) + "\n";
    }
    return text;
}

} // namespace quarterstep::check
