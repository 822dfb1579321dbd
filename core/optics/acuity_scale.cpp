// SPDX-License-Identifier: GPL-3.0-or-later
// Letters, means, and the models of blur as a table.
#include "core/optics/acuity_scale.hpp"

#include "core/optics/acuity.hpp"

#include <array>
#include <cmath>

namespace quarterstep
{
namespace
{

constexpr double lettersAtZero = 100.0;
constexpr double lettersPerLogMar = 50.0;
constexpr double lineStep = 0.1;
/// Dioptres of mean sphere up to which a residual counts as pure cylinder.
constexpr double sphereInPlace = 0.125;

std::optional<LossRange> blendowske(const PowerVector& error)
{
    const double loss = expectedLoss(blurStrength(error));
    return LossRange{loss, loss};
}

/// 0.017 C^2 + 0.125 C - 0.116 less its value at C = 0.
std::optional<LossRange> hoshikawa(const PowerVector& error)
{
    if (std::fabs(error.m) > sphereInPlace)
        return std::nullopt;
    const double cylinder = cylinderSize(error);
    const double loss = 0.017 * cylinder * cylinder + 0.125 * cylinder;
    return LossRange{loss, loss};
}

/// 0.18 to 0.22 logMAR a dioptre of cylinder, the mean sphere in place.
std::optional<LossRange> inducedCylinder(const PowerVector& error)
{
    if (std::fabs(error.m) > sphereInPlace)
        return std::nullopt;
    const double cylinder = cylinderSize(error);
    return LossRange{0.18 * cylinder, 0.22 * cylinder};
}

/// A line for every 0.25 to 0.5 D.
std::optional<LossRange> lineRule(const PowerVector& error)
{
    const double blur = blurStrength(error);
    return LossRange{lineStep * blur / 0.5, lineStep * blur / 0.25};
}

const std::array<BlurModel, 4>& models()
{
    static const std::array<BlurModel, 4> table{
        BlurModel{"blendowske",
                  {QS_SAY("core", "log10(1 + b²): low blur of any kind; no axis and no pupil in it"), {}},
                  "Blendowske R, Optom Vis Sci 2015 (PMID 25955640, abstract)",
                  true,
                  blendowske},
        BlurModel{
            "hoshikawa",
            {QS_SAY("core", "0.017 C² + 0.125 C: left-over cylinder C in presbyopes, mean sphere in place"),
             {}},
            "Hoshikawa et al., Sci Rep 2021;11:6958 (318 eyes, R² 0.544; less its value at C = 0)",
            false,
            hoshikawa},
        BlurModel{
            "induced-cylinder",
            {QS_SAY("core", "0.18 to 0.22 logMAR a dioptre of cylinder, mean sphere in place, far"), {}},
            "Clin Optom 2023;15:105-117, doi 10.2147/OPTO.S405472 (14 presbyopes)",
            false,
            inducedCylinder},
        BlurModel{"line-rule",
                  {QS_SAY("core", "one line lost for every 0.25 to 0.5 D of blur"), {}},
                  "common practice",
                  false,
                  lineRule}};
    return table;
}

} // namespace

double lettersFromLogMar(double logMar)
{
    return lettersAtZero - lettersPerLogMar * logMar;
}

double logMarFromLetters(double letters)
{
    return (lettersAtZero - letters) / lettersPerLogMar + 0.0;
}

double logMarWithLetters(double lineLogMar, int missed, int lettersInLine)
{
    return lineLogMar + lineStep * missed / lettersInLine;
}

std::optional<double> meanLogMar(const std::vector<double>& logMars)
{
    if (logMars.empty())
        return std::nullopt;
    double sum = 0.0;
    for (const double logMar : logMars)
        sum += logMar;
    return sum / static_cast<double>(logMars.size());
}

std::optional<double> meanDecimal(const std::vector<double>& decimals)
{
    std::vector<double> logMars;
    for (const double decimal : decimals) {
        if (!(decimal > 0.0))
            return std::nullopt;
        logMars.push_back(logMarFromDecimal(decimal));
    }
    const auto mean = meanLogMar(logMars);
    if (!mean)
        return std::nullopt;
    return decimalFromLogMar(*mean);
}

std::span<const BlurModel> blurModels()
{
    return models();
}

} // namespace quarterstep
