// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples/generate/acuity_model.hpp"

#include "samples/generate/random.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace quarterstep::samples
{

namespace
{

struct ChartLine {
    double logMar;
    const char* text;
};

constexpr std::array<ChartLine, 10> distanceChart{{{0.0, "6/6"},
                                                   {0.1, "6/7.5"},
                                                   {0.18, "6/9"},
                                                   {0.3, "6/12"},
                                                   {0.48, "6/18"},
                                                   {0.6, "6/24"},
                                                   {0.78, "6/36"},
                                                   {1.0, "6/60"},
                                                   {1.3, "3/60"},
                                                   {1.8, "CF 1 m"}}};
constexpr std::array<ChartLine, 10> nearChart{{{0.2, "N5"},
                                               {0.28, "N6"},
                                               {0.4, "N8"},
                                               {0.5, "N10"},
                                               {0.58, "N12"},
                                               {0.64, "N14"},
                                               {0.75, "N18"},
                                               {0.88, "N24"},
                                               {1.05, "N36"},
                                               {1.18, "N48"}}};

std::string nearestLine(std::span<const ChartLine> chart, double logMar)
{
    const ChartLine* best = &chart.front();
    for (const auto& line : chart)
        if (std::fabs(line.logMar - logMar) < std::fabs(best->logMar - logMar))
            best = &line;
    return best->text;
}

} // namespace

double comfortableAccommodation(double age)
{
    return std::clamp((15.0 - 0.25 * age) / 2.0, 0.0, 4.0);
}

double unaidedDistance(const Refraction& eye, double age, double best)
{
    const double mean = eye.meanSphere();
    const double left = mean > 0.0 ? std::max(0.0, mean - comfortableAccommodation(age)) : mean;
    const double astigmatism = 0.125 * eye.cylinder;
    return best + log10Of(1.0 + left * left + astigmatism * astigmatism);
}

double nearWithBlur(double blur, double best)
{
    return best + 0.15 +
           log10Of(1.0 + blur * blur); // print is read about a line and a half short of the chart
}

std::string distanceLine(double logMar)
{
    return nearestLine(distanceChart, logMar);
}

std::string nearLine(double logMar)
{
    return nearestLine(nearChart, logMar);
}

std::string writtenQuarters(int quarters)
{
    const int hundredths = std::abs(quarters) * 25;
    const int fraction = hundredths % 100;
    return std::string(quarters < 0   ? "-"
                       : quarters > 0 ? "+"
                                      : "") +
           std::to_string(hundredths / 100) + (fraction < 10 ? ".0" : ".") + std::to_string(fraction);
}

std::string written(const Refraction& eye)
{
    std::string text = writtenQuarters(eye.sphere);
    if (eye.cylinder != 0)
        text.append(" ").append(writtenQuarters(eye.cylinder)).append(" x ").append(std::to_string(eye.axis));
    return text;
}

} // namespace quarterstep::samples
