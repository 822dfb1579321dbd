// SPDX-License-Identifier: GPL-3.0-or-later
// The power plane as data. Across: mean power M. Up: the astigmatic part, sqrt(J0^2 + J45^2), half the
// cylinder. Distances are kept: a stocked sphere stands from an eye exactly as far as the blur it would
// leave, and the chosen pair is placed so that its distance from each eye is the blur of its fit. M, J0, J45:
// Thibos LN, Wheeler W, Horner D, Optom Vis Sci 1997;74:367-375.
#pragma once

#include "core/fitting/recommendation.hpp"

namespace quarterstep
{

struct PlanePoint {
    double mean = 0.0;        ///< M, dioptres
    double astigmatism = 0.0; ///< half the cylinder, dioptres; below 0 only for a chosen pair
    bool operator==(const PlanePoint&) const = default;
};

struct PlaneEye {
    PlanePoint at;
    PlanePoint letter;  ///< where its letter stands: beside `at` where the two letters would cover each other
    bool right = false; ///< which letters stand in the mark: one, or both where the eyes need the same
    bool left = false;
};

enum class PlaneMarkKind { readyMade, lens };

/// All stock of one power: one mark.
struct PlaneMark {
    PlanePoint at;
    PlaneMarkKind kind = PlaneMarkKind::readyMade;
    int available = 0;
    int lines = 0;
};

/// The chosen pair as one eye meets it.
struct PlaneChoice {
    Eye eye = Eye::right;
    PlanePoint at;
    double blur = 0.0;
};

/// A pair of the list, by its row there: first what ranks, then what falls outside a limit.
struct PlanePair {
    int row = 0;
    bool ranked = false;
    std::vector<PlaneChoice> eyes;
};

struct PlotData {
    std::vector<PlaneEye> eyes;
    std::vector<PlanePair> pairs;
    std::vector<PlaneMark> stock; ///< by kind, mean, astigmatism
    std::vector<PlaneChoice> choice;
    std::optional<double> fitsRing;  ///< radius in dioptres, from the profile's blur limit
    std::optional<double> trialRing; ///< the same, for pairs on trial
    Range mean{-2.0, 2.0};           ///< part of the plane to show
    Range astigmatism{-1.25, 1.5};   ///< its lower end; the upper one follows from the shape of the window
};

/// The picture for one answer. `chosen` may be null. Without a need only the stock is shown.
[[nodiscard]] PlotData planeOf(const Recommendation& recommendation, std::span<const StockLine> stock,
                               const Profile* profile, const Candidate* chosen);

/// The row of the pair that stands nearest to a point and not farther than `reach` (D) from it; -1 for none.
/// Of pairs at one place the first.
[[nodiscard]] int pairNear(const PlotData& data, const PlanePoint& point, double reach);

/// Stock alone, before anybody was asked about.
[[nodiscard]] PlotData planeOfStock(std::span<const StockLine> stock);

} // namespace quarterstep
