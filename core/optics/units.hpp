// SPDX-License-Identifier: GPL-3.0-or-later
// Strong types for the quantities of the trade. `.value()` opens them.
// Two quantities are equal when they agree to a thousandth of their unit, so 0.12 and 0.125 stay distinct.
#pragma once

#include <cmath>
#include <compare>

namespace quarterstep
{

template <class Unit>
class Quantity
{
  public:
    constexpr Quantity() = default;
    constexpr explicit Quantity(double value) : value_(value) {}

    [[nodiscard]] constexpr double value() const { return value_; }
    /// The value in thousandths of the unit (milli-dioptres, micrometres …), rounded half away from zero.
    [[nodiscard]] constexpr long thousandths() const
    {
        return static_cast<long>(value_ * 1000.0 + (value_ < 0 ? -0.5 : 0.5));
    }

    constexpr Quantity operator+() const { return *this; }
    constexpr Quantity operator-() const { return Quantity(0.0 - value_); } // 0 - x: never gives -0
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.value_ + b.value_); }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.value_ - b.value_); }
    friend constexpr Quantity operator*(Quantity a, double b) { return Quantity(a.value_ * b); }
    friend constexpr Quantity operator*(double a, Quantity b) { return Quantity(a * b.value_); }
    friend constexpr Quantity operator/(Quantity a, double b) { return Quantity(a.value_ / b); }
    friend constexpr bool operator==(Quantity a, Quantity b) { return a.thousandths() == b.thousandths(); }
    friend constexpr auto operator<=>(Quantity a, Quantity b) { return a.thousandths() <=> b.thousandths(); }

  private:
    double value_ = 0.0;
};

using Dioptres = Quantity<struct DioptreUnit>;           ///< reciprocal metres
using PrismDioptres = Quantity<struct PrismDioptreUnit>; ///< cm of deviation per metre
using Millimetres = Quantity<struct MillimetreUnit>;
using AxisDegrees = Quantity<struct AxisUnit>; ///< ISO 8429, (0, 180]

enum class Eye { right, left };

/// A value for each eye, right first.
template <class T>
struct PerEye {
    T right{};
    T left{};

    [[nodiscard]] T& of(Eye eye) { return eye == Eye::right ? right : left; }
    [[nodiscard]] const T& of(Eye eye) const { return eye == Eye::right ? right : left; }
    bool operator==(const PerEye&) const = default;
};

inline constexpr Eye bothEyes[] = {Eye::right, Eye::left};

} // namespace quarterstep
