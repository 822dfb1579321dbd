// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/session/survey_eyes.hpp"

#include "core/fitting/fit.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <string>

namespace quarterstep::testing
{

namespace
{

std::vector<RightEye> readEyes()
{
    std::ifstream file(QS_SOURCE_DIR "/tests/open_data/survey_right_eyes.csv");
    std::string row;
    std::getline(file, row);
    std::vector<RightEye> eyes;
    while (std::getline(file, row)) {
        std::vector<std::string> cells(1);
        for (const char c : row)
            if (c == ',')
                cells.emplace_back();
            else
                cells.back() += c;
        const auto power = [&](std::size_t at) {
            const auto number = [&](std::size_t i) { return cells[i].empty() ? 0.0 : std::stod(cells[i]); };
            const double axis = number(at + 2);
            return toPowerVector(SpheroCylinder{Dioptres{number(at)}, Dioptres{number(at + 1)},
                                                AxisDegrees{axis > 0.0 ? axis : 180.0}});
        };
        RightEye eye;
        eye.age = std::stod(cells[0]);
        eye.glasses = !cells[4].empty();
        eye.error = power(4) - power(1);
        const auto line = std::find(lines.begin(), lines.end(), std::stoi(cells[7]));
        eye.code = static_cast<std::size_t>(line - lines.begin());
        eyes.push_back(eye);
    }
    return eyes;
}

} // namespace

double logMarOf(std::size_t code)
{
    return lines.at(code) == 666 ? 1.1 : std::log10(lines.at(code) / 20.0);
}

const std::vector<RightEye>& eyes()
{
    static const std::vector<RightEye> all = readEyes();
    return all;
}

double shippedK(double age)
{
    Need need;
    need.age = age;
    return forgivenMinus(need);
}

} // namespace quarterstep::testing
