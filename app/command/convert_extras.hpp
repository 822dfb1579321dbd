// SPDX-License-Identifier: GPL-3.0-or-later
// What convert adds to a power when asked: at another vertex distance, prism at a point and decentration for
// a prism, crossed cylinders, together with another power, along a meridian, the addition to a near power,
// the acuity lost.
#pragma once

#include "app/command/command_line.hpp"

#include "core/optics/power_vector.hpp"
#include "core/optics/prism.hpp"

#include <QJsonObject>
#include <QString>

#include <optional>
#include <utility>

namespace quarterstep
{

class ConvertExtras
{
  public:
    /// Reads --vertex, --prism, --decentre, --crossed, --over, --meridian, --near and --loss. Throws Error
    /// vertex-distance, prism-point, prism-wanted, meridian, power-option (2).
    explicit ConvertExtras(const CommandLine& line);

    /// "at_vertex", "prism_at", "decentration", "crossed", "combined", "in_meridian", "addition_to_near",
    /// "loss" as asked for.
    [[nodiscard]] QJsonObject json(const SpheroCylinder& power, Eye eye) const;
    /// The same for people, each after two blanks.
    [[nodiscard]] QString words(const SpheroCylinder& power, Eye eye) const;

  private:
    std::optional<std::pair<double, double>> vertex_; ///< from, to; mm
    std::optional<std::pair<double, double>>
        point_; ///< mm to the observer's right of the centre, mm above it
    std::optional<EyePrism> wanted_;
    std::optional<SpheroCylinder> over_;
    std::optional<SpheroCylinder> near_;
    std::optional<double> meridian_; ///< degrees
    bool crossed_ = false;
    bool loss_ = false;
};

/// Number `index` behind an option; `code` and `refusal` (with %1) are thrown for what is none or out of
/// range.
[[nodiscard]] double optionNumber(const CommandLine& line, const char* option, std::size_t index,
                                  double least, double most, const char* code, const char* refusal);

[[nodiscard]] QJsonObject jsonPower(const SpheroCylinder& power);
[[nodiscard]] QJsonObject jsonVector(const PowerVector& vector);
void insertAll(QJsonObject& into, const QJsonObject& from);

} // namespace quarterstep
