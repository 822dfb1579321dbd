// SPDX-License-Identifier: GPL-3.0-or-later
// The bulk of a camp's day: presbyopes who want to read, then distance. Shares wanted of near, minus and plus
// pairs follow 84, 10 and 6 in a hundred (Vincent JE, Optom Vis Sci 2006;83:803-810).
#include "samples/generate/person.hpp"

#include <cmath>

namespace quarterstep::samples
{

namespace
{

constexpr std::initializer_list<const char*> complaints = {
    "print swims", "cannot thread a needle", "holds the page far away", "eyes tire over close work",
    "cannot read the price tags"};

int quarters(double dioptres)
{
    return static_cast<int>(std::lround(dioptres * 4.0));
}

/// Distance refraction of people past forty who come for near work: most near zero, some hyperopic, few
/// myopic.
void drawPresbyope(Person& person, Random& random)
{
    drawPerson(person, random, 54.0, 9.0, 40, 79);
    switch (random.pick({0.58, 0.30, 0.12})) {
    case 0:
        person.right.sphere = quarters(random.normal(0.10, 0.25));
        break;
    case 1:
        person.right.sphere = quarters(random.normalWithin(1.0, 0.5, 0.4, 2.6));
        break;
    default:
        person.right.sphere = quarters(random.normalWithin(-0.75, 0.4, -2.0, -0.25));
    }
    drawLeftSphere(person, random, 0.10);
    drawCylinders(person, random, 0.30, false);
    person.addition = drawAddition(person.age, random);
}

void record(Person& person, Random& random)
{
    recordDistance(person, random);
    person.set("prescriber", random.oneOf({"R-01", "R-02", "R-03"}));
    person.set("source", "final");
    if (random.chance(0.4))
        person.cells["frame_size"] = person.woman ? random.oneOf({"small", "medium", "medium"})
                                                  : random.oneOf({"medium", "medium", "large"});
}

void nearWanted(Person& person, Random& random, int)
{
    drawPresbyope(person, random);
    record(person, random);
    recordNear(person, random);
    person.set("purpose", "near");
    if (random.chance(0.45))
        person.set("symptoms", random.oneOf(complaints));
}

/// A near power found in the trial frame instead of an addition.
void nearByTrial(Person& person, Random& random, int)
{
    drawPresbyope(person, random);
    person.right.cylinder = person.left.cylinder = 0;
    record(person, random);
    recordNear(person, random);
    person.set("purpose", "near");
    person.set("near_right", writtenQuarters(person.right.sphere + person.addition));
    person.set("near_left", writtenQuarters(person.left.sphere + person.addition));
    person.cells.erase("add_right");
    person.cells.erase("add_left");
}

void bothWanted(Person& person, Random& random, int index)
{
    drawPerson(person, random, 56.0, 7.0, 45, 72);
    const double sphere = index % 2 == 0 ? random.normalWithin(-2.0, 0.8, -3.5, -1.0)
                                         : random.normalWithin(1.75, 0.5, 1.25, 3.0);
    person.right.sphere = quarters(sphere);
    drawLeftSphere(person, random, 0.05);
    drawCylinders(person, random, 0.30, false);
    person.addition = drawAddition(person.age, random);
    record(person, random);
    recordNear(person, random);
    person.set("purpose", index % 3 == 0 ? "" : "both");
}

void bifocalWanted(Person& person, Random& random, int)
{
    drawPerson(person, random, 58.0, 5.0, 48, 70);
    person.right.sphere = random.oneOf({0, 0, 1, -1, -4});
    person.left.sphere = person.right.sphere;
    drawCylinders(person, random, 0.15, false);
    person.addition = drawAddition(person.age, random);
    record(person, random);
    recordNear(person, random);
    person.set("purpose", "bifocal");
}

void intermediateWanted(Person& person, Random& random, int index)
{
    drawPresbyope(person, random);
    record(person, random);
    recordNear(person, random);
    person.set("purpose", "intermediate");
    if (index == 0)
        person.set("intermediate_mm", "700");
    person.set("symptoms", "net loom at arm's length");
}

void adultDistance(Person& person, Random& random, bool plus)
{
    if (plus) {
        drawPerson(person, random, 60.0, 5.0, 52, 72);
        person.right.sphere = quarters(random.normalWithin(1.75, 0.6, 1.0, 3.0));
    } else {
        drawPerson(person, random, 31.0, 8.0, 17, 48);
        person.right.sphere = quarters(random.normalWithin(-2.0, 1.0, -4.0, -0.75));
    }
    drawLeftSphere(person, random, 0.12);
    drawCylinders(person, random, 0.35, false);
    record(person, random);
    person.set("purpose", "distance");
}

void schoolMyope(Person& person, Random& random, int index)
{
    drawPerson(person, random, 11.5, 2.2, 7, 15);
    person.right.sphere = quarters(random.normalWithin(-2.0, 0.8, -3.5, -0.75));
    drawLeftSphere(person, random, 0.10);
    drawCylinders(person, random, 0.25, true);
    record(person, random);
    person.set("purpose", "distance");
    person.set("guardian", random.oneOf({"parent", "parent", "grandparent", "teacher"}));
    if (index < 3) {
        person.set("objective_right",
                   written({person.right.sphere - 1, person.right.cylinder, person.right.axis}));
        person.set("objective_left",
                   written({person.left.sphere - 2, person.left.cylinder, person.left.axis}));
    }
}

} // namespace

void addEverydayPeople(Group& group)
{
    addPeople(group, 110, 101, nearWanted);
    addPeople(group, 8, 102, nearByTrial);
    addPeople(group, 9, 103, bothWanted);
    addPeople(group, 5, 104, bifocalWanted);
    addPeople(group, 2, 105, intermediateWanted);
    addPeople(group, 3, 106, [](Person& p, Random& random, int) { adultDistance(p, random, false); });
    addPeople(group, 4, 107, [](Person& p, Random& random, int) { adultDistance(p, random, true); });
    addPeople(group, 6, 108, schoolMyope);
}

} // namespace quarterstep::samples
