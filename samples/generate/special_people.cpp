// SPDX-License-Identifier: GPL-3.0-or-later
// The people of whom a camp sees a few a day, put in on purpose: children, one seeing eye, nothing needed,
// own pair still good, incomplete records, signs that send somebody to the clinic, lens implants, prism, high
// powers.
#include "samples/generate/person.hpp"

#include <array>
#include <cmath>

namespace quarterstep::samples
{

namespace
{

void record(Person& person, Random& random, const char* purpose)
{
    recordDistance(person, random);
    if (person.addition > 0)
        recordNear(person, random);
    person.set("purpose", purpose);
    person.set("prescriber", random.oneOf({"R-01", "R-02", "R-03"}));
    person.set("source", "final");
}

void drawChild(Person& person, Random& random, Refraction right, Refraction left, int age)
{
    drawPerson(person, random, age, 1.0, age - 0.5, age + 0.4);
    person.right = right;
    person.left = left;
    person.set("guardian", random.oneOf({"parent", "grandparent", "teacher"}));
}

/// Acuity with the mean sphere in the trial frame: the loss the cylinder left out should cost.
void recordMeanSphereAcuity(Person& person)
{
    const auto loss = [](const Refraction& eye) { return log10Of(1.0 + eye.cylinder * eye.cylinder / 64.0); };
    person.set("va_sphere_right", distanceLine(person.bestRight + loss(person.right)));
    person.set("va_sphere_left", distanceLine(person.bestLeft + loss(person.left)));
}

void childOf(Person& person, Random& random, int index)
{
    struct Case {
        int age;
        Refraction right;
        Refraction left;
    };
    constexpr std::array<Case, 11> cases{
        {{6, {17, 0, 180}, {18, 0, 180}},      // hyperope, letter to the clinic
         {9, {8, -2, 180}, {8, -2, 175}},      // hyperope
         {12, {-5, -2, 180}, {-6, 0, 180}},    // objective reading only
         {8, {-3, 0, 180}, {-3, -2, 5}},       // objective reading only
         {7, {4, 0, 180}, {6, 0, 180}},        // an eye turns
         {5, {0, 0, 180}, {-2, 0, 180}},       // white pupil
         {13, {-6, 0, 180}, {-7, 0, 180}},     // no prescriber named
         {14, {-26, -3, 180}, {-27, -2, 175}}, // worse than 6/60 without
         {11, {-6, -3, 180}, {-6, -3, 170}},   // tried with the mean sphere
         {15, {-8, -4, 5}, {-7, -4, 175}},     // tried with the mean sphere
         {12, {-4, 0, 180}, {-10, 0, 180}}}};  // needs a lens of its own for each eye
    const auto& it = cases[static_cast<std::size_t>(index)];
    drawChild(person, random, it.right, it.left, it.age);
    record(person, random, "distance");
    if (index < 2)
        person.set("cycloplegia", "yes");
    if (index == 2 || index == 3)
        person.set("source", "objective");
    if (index == 4)
        person.set("signs", "squint");
    if (index == 5)
        person.set("signs", "white pupil");
    if (index == 6)
        person.set("prescriber", "");
    if (index == 8 || index == 9)
        recordMeanSphereAcuity(person);
}

/// A reader or a distance wearer with one seeing eye; the other is written as a word.
void oneSeeingEye(Person& person, Random& random, int index)
{
    constexpr std::array<const char*, 6> words{"artificial",   "blind",      "blind",
                                               "not measured", "artificial", "balance"};
    const bool distance = index >= 4;
    drawPerson(person, random, distance ? 34.0 : 60.0, 5.0, 20, 75);
    person.right.sphere = person.left.sphere =
        distance ? random.oneOf({-6, -7, -9}) : random.oneOf({0, 1, 3});
    person.addition = distance ? 0 : drawAddition(person.age, random);
    record(person, random, distance ? "distance" : "near");
    const std::string side = random.chance(0.5) ? "right" : "left";
    person.set(side, words[static_cast<std::size_t>(index)]);
    for (const char* stem : {"va_unaided_", "va_best_", "va_pinhole_", "add_"})
        person.cells.erase(stem + side);
}

/// Sees well enough without: small distance errors, and short-sighted presbyopes who read bare-eyed.
void needsNothing(Person& person, Random& random, int index)
{
    if (index < 3) {
        drawPerson(person, random, 28.0, 5.0, 18, 38);
        person.right.sphere = random.oneOf({0, -1, 1});
        person.left.sphere = random.oneOf({0, -1, -2});
        person.bestRight = person.bestLeft = 0.0;
        record(person, random, "distance");
        return;
    }
    drawPerson(person, random, 56.0, 4.0, 50, 64);
    person.addition = drawAddition(person.age, random);
    person.right.sphere = person.left.sphere = -person.addition;
    person.bestRight = person.bestLeft = 0.0;
    record(person, random, "near");
}

/// Wears a pair that still agrees with the final prescription and keeps the acuity.
void ownPairFits(Person& person, Random& random, int index)
{
    drawPerson(person, random, 33.0, 8.0, 18, 50);
    person.right.sphere = person.left.sphere = -random.between(6, 13);
    if (index % 2 == 1)
        person.right.cylinder = person.left.cylinder = -2;
    record(person, random, "distance");
    person.set("worn_right", written(person.right));
    person.set("worn_left", written(person.left));
    person.set("va_habitual_right", distanceLine(person.bestRight));
    person.set("va_habitual_left", distanceLine(person.bestLeft));
}

/// Near work wanted without an addition, or an addition too early to be believed.
void notComplete(Person& person, Random& random, int index)
{
    const bool early = index >= 4;
    drawPerson(person, random, early ? 29.0 : 52.0, 4.0, early ? 22 : 42, early ? 34 : 66);
    person.right.sphere = person.left.sphere = random.oneOf({0, 1, 2});
    person.addition = early ? 5 : 0;
    record(person, random, "near");
    if (!early)
        person.set("near_unaided", "N14");
    person.set("symptoms", early ? "headache after sewing" : "print swims");
}

void withSigns(Person& person, Random& random, int index)
{
    constexpr std::array<const char*, 4> signs{"sudden loss", "red eye; pain", "flashes or floaters",
                                               "double vision"};
    drawPerson(person, random, 58.0, 6.0, 45, 72);
    person.right.sphere = person.left.sphere = random.oneOf({0, 2});
    person.addition = drawAddition(person.age, random);
    if (index == 0)
        person.bestLeft = 1.0;
    record(person, random, "near");
    person.set("signs", signs[static_cast<std::size_t>(index)]);
}

/// Spectacles do not bring the sight: readers if they help, and a letter to the clinic.
void poorSight(Person& person, Random& random, int index)
{
    drawPerson(person, random, 68.0, 6.0, 55, 82);
    person.right.sphere = person.left.sphere = random.oneOf({-2, 0, 2});
    person.addition = drawAddition(person.age, random) + 1;
    constexpr std::array<double, 5> best{0.6, 0.48, 0.6, 0.78, 0.48};
    person.bestRight = best[static_cast<std::size_t>(index)];
    person.bestLeft = person.bestRight - 0.12;
    record(person, random, "near");
    const bool better = index == 4; // the pinhole beats the final: refract again
    for (const char* side : {"right", "left"}) {
        const double reached = std::string(side) == "right" ? person.bestRight : person.bestLeft;
        person.set(std::string("va_pinhole_") + side, distanceLine(better ? reached - 0.3 : reached));
    }
}

void lensImplant(Person& person, Random& random, int index)
{
    drawPerson(person, random, index == 0 ? 31.0 : 67.0, 5.0, index == 0 ? 25 : 55, index == 0 ? 34 : 80);
    person.right.sphere = random.oneOf({-1, 0, 1});
    person.left.sphere = person.right.sphere;
    if (index % 2 == 1)
        person.right.cylinder = -3;
    person.right.axis = random.oneOf({85, 90, 95});
    person.addition = 10;
    record(person, random, "near");
    person.set("lens_implant", index < 3 ? "both" : "right");
}

void prescribedPrism(Person& person, Random& random, int index)
{
    drawPerson(person, random, 42.0, 6.0, 30, 55);
    person.right.sphere = person.left.sphere = -8;
    record(person, random, "distance");
    const std::string prism = index == 0 ? " 1 base in" : " 2 base out";
    person.set("right", written(person.right) + prism);
    person.set("left", written(person.left) + prism);
}

void highPower(Person& person, Random& random, int index)
{
    constexpr std::array<int, 4> spheres{-30, -22, 22, -20};
    drawPerson(person, random, 36.0, 8.0, 20, 60);
    person.right.sphere = spheres[static_cast<std::size_t>(index)];
    person.left.sphere = person.right.sphere + 1;
    record(person, random, "distance");
    if (index < 3) // the last one lacks it and is asked for it
        person.set("vertex_mm", random.oneOf({"12", "13", "14"}));
}

} // namespace

void addSpecialPeople(Group& group)
{
    addPeople(group, 11, 201, childOf);
    addPeople(group, 6, 202, oneSeeingEye);
    addPeople(group, 6, 203, needsNothing);
    addPeople(group, 5, 204, ownPairFits);
    addPeople(group, 6, 205, notComplete);
    addPeople(group, 4, 206, withSigns);
    addPeople(group, 5, 207, poorSight);
    addPeople(group, 4, 208, lensImplant);
    addPeople(group, 2, 209, prescribedPrism);
    addPeople(group, 4, 210, highPower);
}

} // namespace quarterstep::samples
