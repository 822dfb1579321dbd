// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples/generate/person.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep::samples
{

namespace
{

int quartersOf(double dioptres)
{
    return static_cast<int>(std::lround(dioptres * 4.0));
}

int axisNear(double degrees, Random& random)
{
    const int step = random.chance(0.85) ? 5 : 1;
    int axis = static_cast<int>(std::lround(random.normal(degrees, 12.0) / step)) * step % 180;
    if (axis <= 0)
        axis += 180;
    return axis;
}

/// Half millimetres as a ruler is read: whole ones mostly.
std::string readOffRuler(double mm, Random& random)
{
    const int halves =
        random.chance(0.8) ? 2 * static_cast<int>(std::lround(mm)) : static_cast<int>(std::lround(2.0 * mm));
    return std::to_string(halves / 2) + (halves % 2 == 0 ? "" : ".5");
}

} // namespace

std::string Person::row(const std::string& code) const
{
    std::string text = code;
    for (std::size_t i = 1; i < columnNames.size(); ++i) {
        const auto cell = cells.find(columnNames[i]);
        text += ',';
        if (cell != cells.end())
            text += cell->second;
    }
    return text + "\n";
}

void drawPerson(Person& person, Random& random, double meanAge, double deviation, double youngest,
                double oldest)
{
    person.age = static_cast<int>(std::lround(random.normalWithin(meanAge, deviation, youngest, oldest)));
    person.woman = random.chance(0.55);
    if (person.age < 16) // about 50 mm at 5 years, 58 to 60 at 15
        person.pd = 45.0 + person.age - 0.2 * std::max(0, person.age - 8) + random.normal(0.0, 1.8);
    else
        person.pd = random.normalWithin(person.woman ? 62.5 : 64.5, 3.2, 54.0, 74.0);
    const auto best = [&] {
        constexpr double lines[] = {0.0, 0.1, 0.18};
        return lines[person.age < 45 ? random.pick({0.80, 0.15, 0.05}) : random.pick({0.55, 0.25, 0.20})];
    };
    person.bestRight = best();
    person.bestLeft = random.chance(0.75) ? person.bestRight : best();
    person.set("age", std::to_string(person.age));
    person.set("sex", person.woman ? "F" : "M");
}

void drawCylinders(Person& person, Random& random, double share, bool child)
{
    // Exponential sizes whose share from 0.375 D (written 0.50) upwards is `share`.
    const double mean = -0.375 / naturalLog(share);
    const auto size = [](double cylinder) {
        const int quarters = std::min(12, quartersOf(cylinder));
        return quarters < 2 ? 0 : quarters;
    };
    const double drawn = random.exponential(mean);
    person.right.cylinder = -size(drawn);
    person.left.cylinder = -size(std::max(0.0, drawn + random.normal(0.0, 0.3)));
    const int kind = child ? random.pick({0.75, 0.15, 0.10}) : random.pick({0.25, 0.55, 0.20});
    const double meridian = kind == 0 ? 180.0 : kind == 1 ? 90.0 : 45.0;
    person.right.axis = axisNear(meridian, random);
    person.left.axis = axisNear(180.0 - person.right.axis, random);
}

void drawLeftSphere(Person& person, Random& random, double unequal)
{
    const double apart = random.chance(unequal)
                             ? random.oneOf({-1.0, 1.0}) * random.normalWithin(1.1, 0.5, 0.5, 2.5)
                             : random.normal(0.0, 0.15);
    person.left.sphere = quartersOf(0.25 * person.right.sphere + apart);
}

int drawAddition(int age, Random& random)
{
    const double mean = age < 45   ? 1.05
                        : age < 50 ? 1.50
                        : age < 55 ? 1.75
                        : age < 60 ? 1.95
                        : age < 65 ? 2.10
                                   : 2.25;
    return std::clamp(quartersOf(random.normal(mean, 0.30)), 3, 12);
}

void recordDistance(Person& person, Random& random)
{
    person.set("right", written(person.right));
    person.set("left", written(person.left));
    const auto eye = [&](const char* side, const Refraction& refraction, double best) {
        const double unaided =
            std::max(best, unaidedDistance(refraction, person.age, best) + random.normal(0.0, 0.04));
        person.set(std::string("va_unaided_") + side, distanceLine(unaided));
        person.set(std::string("va_best_") + side, distanceLine(best));
        if (unaided > 0.45)
            person.set(std::string("va_pinhole_") + side,
                       distanceLine(best + (random.chance(0.6) ? 0.1 : 0.0)));
    };
    eye("right", person.right, person.bestRight);
    eye("left", person.left, person.bestLeft);
    if (!random.chance(0.92))
        return; // PD not taken
    if (!random.chance(0.12)) {
        person.set("pd_mm", readOffRuler(person.pd, random));
        return;
    }
    const int right = static_cast<int>(std::lround(person.pd / 2.0 + random.normal(0.0, 0.5)));
    const int left = static_cast<int>(std::lround(person.pd)) - right;
    person.set("pd_right_mm", std::to_string(right));
    person.set("pd_left_mm", std::to_string(left));
}

void recordNear(Person& person, Random& random)
{
    const int apart = random.chance(0.06) ? random.oneOf({-1, 1}) : 0;
    person.set("add_right", writtenQuarters(person.addition));
    person.set("add_left", writtenQuarters(person.addition + apart));
    int working = 400;
    if (random.chance(0.25)) {
        working = random.oneOf({330, 350, 450, 500});
        person.set("working_mm", std::to_string(working));
    }
    if (random.chance(0.45)) {
        const double near = person.pd * working / (working + 27.0) + random.normal(0.0, 0.6);
        person.set("near_pd_mm", readOffRuler(near, random));
    }
    const double need =
        0.25 * person.addition + std::min(person.right.meanSphere(), person.left.meanSphere());
    const double best = std::min(person.bestRight, person.bestLeft);
    person.set("near_unaided", nearLine(nearWithBlur(std::fabs(need), best) + random.normal(0.0, 0.03)));
    person.set("near_best", best < 0.15 ? "N5" : nearLine(best + 0.15));
}

} // namespace quarterstep::samples
