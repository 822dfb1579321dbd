// SPDX-License-Identifier: GPL-3.0-or-later
// Tolerance sets and the judging of a focimeter reading against an order.
// Rules follow ANSI Z80.1 (sphere meridian in minus-cylinder form, cylinder, axis by cylinder, addition,
// prism) and ISO 8980-1 (both principal meridians and the cylinder). Values are data with their own
// provenance.
#pragma once

#include "core/finding.hpp"
#include "core/optics/prism.hpp"
#include "core/optics/sphero_cylinder.hpp"

#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace quarterstep
{
/// The upper end of a range of powers that has none.
inline constexpr double noUpperEnd = std::numeric_limits<double>::infinity();

/// One cell of a table of tolerances: the first row whose upper ends take in the order is used (ends
/// included).
struct ToleranceRow {
    double powerUpTo = noUpperEnd;    ///< size of power, D; of the addition itself in its table
    double cylinderUpTo = noUpperEnd; ///< size of the ordered cylinder, D
    std::optional<double> limit;      ///< D or degrees; empty: not judged in this cell
    bool percent = false;             ///< `limit` is per cent of the size ordered
};

/// Prism of a lens or a pair. A reading fails only when it is over the prism limit *and*, where `orMm`
/// stands, over the prism of that displacement too: the standard joins the two by "or" in its table and test.
struct PrismRow {
    double orderedUpTo = noUpperEnd; ///< size of the ordered prism, prism dioptres
    double powerUpTo = noUpperEnd;   ///< size of the power along the direction, D
    double prism = 0.0;              ///< prism dioptres
    double orMm = 0.0;               ///< 0: none
    double plusMm = 0.0;             ///< the prism of this displacement of the strongest meridian is added
};

enum class PrismOf { pair, eachLens };

struct PrismRule {
    PrismOf of = PrismOf::pair;
    std::vector<PrismRow> rows; ///< empty: not judged
};

/// Which meridians the first rule judges.
enum class MeridianRule {
    sphere, ///< the sphere of the minus-cylinder form, by its own size
    both    ///< each principal meridian, by the larger size of the two
};

enum class Confidence { seenInSource, secondHand, fromMemory };

struct ToleranceSet {
    std::string name;
    std::string standard;
    std::string edition;
    std::string covers;
    std::string provenance;
    Confidence confidence = Confidence::fromMemory;
    bool enabled = false; ///< sets from memory are not, until somebody has compared them with the standard
    std::string why;      ///< why it is not enabled
    MeridianRule meridians = MeridianRule::both;
    std::vector<ToleranceRow> meridian;
    std::vector<ToleranceRow> cylinder;
    std::vector<ToleranceRow> axis;
    std::vector<ToleranceRow> addition;
    PrismRule horizontal;
    PrismRule vertical;
    std::optional<double> leastPower; ///< scope of the standard, D (ready-to-wear)
    std::optional<double> mostPower;
};

/// Sets by name, and the one used when nobody names one.
struct ToleranceSets {
    std::string usual;
    std::vector<ToleranceSet> sets;

    [[nodiscard]] const ToleranceSet* named(const std::string& name) const;
};

/// The set of a name (empty: the usual one). Refused: tolerances-unknown, tolerances-not-enabled (says why).
/// The pointer lives as long as `sets`.
[[nodiscard]] Parsed<const ToleranceSet*> chooseTolerances(const ToleranceSets& sets,
                                                           const std::string& name);

/// A lens as ordered or as read.
struct LensValues {
    SpheroCylinder power;
    std::optional<Dioptres> addition;
    EyePrism prism; ///< at the point ordered
};

enum class ToleranceRule {
    sphereMeridian,
    higherMeridian,
    lowerMeridian,
    cylinder,
    axis,
    addition,
    horizontalPrism,
    verticalPrism
};

/// One rule judged. `error` is read - ordered in the unit of the rule (D, degrees 0 to 90, prism dioptres; of
/// a pair: base in of both together, base up right less left).
struct ToleranceResult {
    ToleranceRule rule = ToleranceRule::cylinder;
    std::optional<Eye> eye; ///< empty: of the pair
    double error = 0.0;
    std::optional<double> limit; ///< empty: shown, not judged
    double excess = 0.0;         ///< how much beyond the limit; 0 within it
    Sentence sentence;           ///< what was read, the limit, and by how much it is passed

    [[nodiscard]] bool passes() const { return excess == 0.0; }
};

struct ToleranceJudgement {
    std::vector<ToleranceResult> results; ///< in the order of ToleranceRule, right before left
    std::vector<Sentence> notes;          ///< what the set does not cover
    [[nodiscard]] bool passes() const;
};

/// Judges one lens. Limits are inclusive (1e-6). Cylinder and axis of either cylinder sign; the axis is
/// judged by the *ordered* cylinder and only when the reading has one.
[[nodiscard]] ToleranceJudgement judgeLens(const ToleranceSet& set, Eye eye, const LensValues& ordered,
                                           const LensValues& read);

/// Judges a pair: each lens, and the prism of the pair. `centresOff` is the measured distance between centres
/// less the ordered one, mm; with it the displacement rule uses the measurement. Without it the displacement
/// is worked out from the prism, shared equally by both lenses, and only where they have 0.50 D or more along
/// the direction.
[[nodiscard]] ToleranceJudgement judgePair(const ToleranceSet& set, const PerEye<LensValues>& ordered,
                                           const PerEye<LensValues>& read,
                                           std::optional<double> centresOff = std::nullopt);

/// Limit of a table for an order, in the unit of the rule; empty where no row holds or the row is not judged.
/// A limit printed as 0.12, 0.37 … is an eighth with its last digit dropped, as powers are read: it takes in
/// 0.125, 0.375 …
[[nodiscard]] std::optional<double> limitFor(const std::vector<ToleranceRow>& rows, double power,
                                             double cylinder, double ordered);

/// Name of a rule for machines: "sphere_meridian", "axis" …
[[nodiscard]] const char* ruleName(ToleranceRule rule);
/// "D", "°" or "Δ".
[[nodiscard]] const char* ruleUnit(ToleranceRule rule);

} // namespace quarterstep
