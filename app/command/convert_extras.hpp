// SPDX-License-Identifier: GPL-3.0-or-later
// What convert adds to a power when asked: the power at another vertex distance, the prism at a point of the
// lens, the two crossed cylinders.
#pragma once

#include "app/command/command_line.hpp"

#include "core/optics/power_vector.hpp"

#include <QJsonObject>
#include <QString>

#include <optional>
#include <utility>

namespace quarterstep
{

class ConvertExtras
{
  public:
    /// Reads --vertex, --prism and --crossed. Throws Error vertex-distance or prism-point (2).
    explicit ConvertExtras(const CommandLine& line);

    /// "at_vertex", "prism_at", "crossed" as asked for.
    [[nodiscard]] QJsonObject json(const SpheroCylinder& power) const;
    /// The same for people, each after two blanks.
    [[nodiscard]] QString words(const SpheroCylinder& power) const;

  private:
    std::optional<std::pair<double, double>> vertex_; ///< from, to; mm
    std::optional<std::pair<double, double>>
        point_; ///< mm to the observer's right of the centre, mm above it
    bool crossed_ = false;
};

[[nodiscard]] QJsonObject jsonPower(const SpheroCylinder& power);
[[nodiscard]] QJsonObject jsonVector(const PowerVector& vector);
void insertAll(QJsonObject& into, const QJsonObject& from);

} // namespace quarterstep
