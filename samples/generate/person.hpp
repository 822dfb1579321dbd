// SPDX-License-Identifier: GPL-3.0-or-later
// One invented person while being made: refraction, and the cells of the prescription table.
#pragma once

#include "samples/generate/acuity_model.hpp"
#include "samples/generate/random.hpp"

#include <array>
#include <map>
#include <string>
#include <vector>

namespace quarterstep::samples
{

inline constexpr std::array<const char*, 42> columnNames{"person",
                                                         "age",
                                                         "sex",
                                                         "purpose",
                                                         "right",
                                                         "left",
                                                         "add_right",
                                                         "add_left",
                                                         "near_right",
                                                         "near_left",
                                                         "pd_mm",
                                                         "pd_right_mm",
                                                         "pd_left_mm",
                                                         "near_pd_mm",
                                                         "working_mm",
                                                         "intermediate_mm",
                                                         "vertex_mm",
                                                         "va_unaided_right",
                                                         "va_unaided_left",
                                                         "va_habitual_right",
                                                         "va_habitual_left",
                                                         "va_pinhole_right",
                                                         "va_pinhole_left",
                                                         "va_best_right",
                                                         "va_best_left",
                                                         "va_sphere_right",
                                                         "va_sphere_left",
                                                         "near_unaided",
                                                         "near_best",
                                                         "lens_implant",
                                                         "signs",
                                                         "symptoms",
                                                         "worn_right",
                                                         "worn_left",
                                                         "worn_add",
                                                         "objective_right",
                                                         "objective_left",
                                                         "cycloplegia",
                                                         "source",
                                                         "prescriber",
                                                         "frame_size",
                                                         "guardian"};

struct Person {
    int age = 50;
    bool woman = true;
    Refraction right;
    Refraction left;
    int addition = 0;       ///< quarters, both eyes; 0 = none
    double bestRight = 0.0; ///< logMAR with the final prescription
    double bestLeft = 0.0;
    double pd = 63.0; ///< mm, distance, true to a tenth
    std::map<std::string, std::string> cells;

    void set(const std::string& column, const std::string& text) { cells[column] = text; }
    [[nodiscard]] std::string row(const std::string& code) const;
};

/// What most records share.
void drawPerson(Person& person, Random& random, double meanAge, double deviation, double youngest,
                double oldest);
/// Cylinder and axis of both eyes. `share` of eyes have one of 0.50 D or more.
void drawCylinders(Person& person, Random& random, double share, bool child);
/// The left eye near the right one: usually within 0.25 D, sometimes (`unequal`) well apart.
void drawLeftSphere(Person& person, Random& random, double unequal);
/// Addition a refraction at this age would find, in quarters.
int drawAddition(int age, Random& random);

/// Writes refraction, acuities and PD into the cells.
void recordDistance(Person& person, Random& random);
/// Writes addition, near PD (measured for some, missing for others) and near acuities.
void recordNear(Person& person, Random& random);

using Group = std::vector<Person>;
/// Appends `count` people made by `make`, each from a stream of its own.
template <class Make>
void addPeople(Group& group, int count, std::uint64_t stream, Make make)
{
    for (int i = 0; i < count; ++i) {
        Random random(stream, static_cast<std::uint64_t>(i) + 1);
        Person person;
        make(person, random, i);
        group.push_back(person);
    }
}

/// People whose records are complete and plain (everyday_people.cpp) and everybody else (special_people.cpp).
void addEverydayPeople(Group& group);
void addSpecialPeople(Group& group);

} // namespace quarterstep::samples
