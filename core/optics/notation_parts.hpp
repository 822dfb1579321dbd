// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a written prescription, each read from one reading head. A part that is refused leaves its
// complaint in `complaint`, the first one wins. Internal to core/optics.
#pragma once

#include "core/optics/notation.hpp"
#include "core/optics/text_reader.hpp"

namespace quarterstep
{

inline constexpr double largestSphere = 40.0;
inline constexpr double largestCylinder = 20.0;
inline constexpr double largestAddition = 20.0;

class PartsReader
{
  public:
    explicit PartsReader(const std::string& text) : head(text) {}

    TextReader head;
    std::optional<Complaint> complaint;

    /// Which dioptre value is read: decides limits, words and whether a sign is needed.
    enum class Role { sphere, cylinder, addition, signedValue };

    /// Sphere, cylinder and axis. `axisNeeded` false: a cylinder may stand without axis, `axisGiven` tells.
    std::optional<SpheroCylinder> takePower(bool axisNeeded, bool& axisGiven);
    /// One dioptre value.
    std::optional<Dioptres> takeDioptres(Role role);
    /// "1 base in", "2 BU 0.5 BI", "1.5 base 217". Empty without complaint when no prism comes next.
    std::optional<EyePrism> takePrism(Eye eye);
    /// "Add +2.00". Empty without complaint when no addition comes next.
    std::optional<Dioptres> takeAddition();
    /// Complains about anything that is left.
    bool finish();

  private:
    bool refuse(std::string code, Sentence sentence, int offset);
    bool takeZeroWord();
    bool takeEmptySlot();
    std::optional<double> checkedSize(const WrittenNumber& number, Role role, int start);
    bool cylinderNext();
    std::optional<Dioptres> takeSphere();
    std::optional<Dioptres> takeCylinder();
    bool takeEmptyCylinder();
    std::optional<AxisDegrees> takeAxis();
    bool refuseAxisWithoutCylinder();
    bool prismNext();
    bool takeBase(double amount, Eye eye, EyePrism& sum, bool& horizontal, bool& vertical);
};

} // namespace quarterstep
