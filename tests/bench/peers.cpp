// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/peers.hpp"

#include "core/fitting/order.hpp"
#include "core/fitting/stock_index.hpp"
#include "core/optics/power_matrix.hpp"

#include <nanoflann.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>

namespace quarterstep::bench
{

namespace
{

constexpr double tolerance = 1e-6;
constexpr double widestBlur = 0.75;

struct PlainLens {
    PowerVector power;
    SpheroCylinder written;
    std::size_t line = 0;
};

/// Cost at distance with one dioptre of minus forgiven (ages 16 to 39).
double plainCost(const PowerVector& error)
{
    const double taken = error.m < 0.0 ? std::min(1.0, -error.m) : 0.0;
    const double m = error.m + taken;
    return std::log10(1.0 + m * m + error.j0 * error.j0 + error.j45 * error.j45) + 0.05 * taken;
}

/// 0 fails, 1 on trial, 2 acceptable: one eye.
int plainEye(const PowerVector& error)
{
    const double blur = std::sqrt(error.m * error.m + error.j0 * error.j0 + error.j45 * error.j45);
    const double cylinder = 2.0 * std::sqrt(error.j0 * error.j0 + error.j45 * error.j45);
    if (error.m > 0.5 + tolerance || error.m < -0.75 - tolerance || blur > 0.75 + tolerance ||
        cylinder > 1.25 + tolerance)
        return 0;
    return blur <= 0.5 + tolerance && cylinder <= 0.75 + tolerance ? 2 : 1;
}

/// More cylinder than needed, or what a sphere would do better.
bool plainCylinder(const PowerVector& supplied, const PowerVector& needed, const PowerVector& error)
{
    const auto size = [](const PowerVector& power) {
        return 2.0 * std::sqrt(power.j0 * power.j0 + power.j45 * power.j45);
    };
    return size(supplied) < tolerance ||
           (size(supplied) - size(needed) <= 0.25 + tolerance && size(error) < size(needed) - tolerance);
}

} // namespace

BestLenses doubleLoop(const Need& need, const std::vector<StockLine>& stock)
{
    std::vector<PlainLens> lenses;
    double centres = 0.0;
    for (std::size_t i = 0; i < stock.size(); ++i)
        if (stock[i].kind == LineKind::lens)
            lenses.push_back({toPowerVector(stock[i].power.right), stock[i].power.right, i});
        else
            centres = *stock[i].centres;
    const auto neededRight = toPowerVector(need.eyes.right.power);
    const auto neededLeft = toPowerVector(need.eyes.left.power);
    const double decentred = (centres - need.pd.least) / 20.0; // cm an eye
    BestLenses best;
    for (const auto& right : lenses)
        for (const auto& left : lenses) {
            const auto errorRight = right.power - neededRight;
            const auto errorLeft = left.power - neededLeft;
            const int passes = std::min(plainEye(errorRight), plainEye(errorLeft));
            if (passes == 0 || std::abs(errorRight.m - errorLeft.m) >= 1.0 - tolerance ||
                std::abs(right.power.m - left.power.m) >= 2.0 - tolerance)
                continue;
            const double prism = decentred * (right.power.m + right.power.j0 + left.power.m + left.power.j0);
            if (std::abs(prism) > 1.0 + tolerance || !plainCylinder(right.power, neededRight, errorRight) ||
                !plainCylinder(left.power, neededLeft, errorLeft))
                continue;
            const double cost = plainCost(errorRight) + plainCost(errorLeft);
            const bool onTrial = passes == 1;
            if (!best.any || (best.onTrial && !onTrial) || (best.onTrial == onTrial && cost < best.cost))
                best = {true, onTrial, cost};
        }
    return best;
}

std::vector<std::string> rankedAmong(const Need& need, const std::vector<StockLine>& stock,
                                     const Profile& profile, const Settings& settings,
                                     const std::vector<std::size_t>& places)
{
    struct Kept {
        RankKey key;
        double size;
    };
    std::vector<Kept> kept;
    for (const std::size_t place : places) {
        const std::array parts{Part{place, PartSide::pair}};
        const auto supply = *supplyOf(parts, stock, need, settings);
        const auto fit = judge(need, supply, profile);
        if (!fit.acceptable() && !fit.onTrial())
            continue;
        auto key = fitKey(need, profile, fit);
        nameParts(key, stock, {}, parts);
        double sum = 0.0;
        int eyes = 0;
        for (const Eye eye : bothEyes)
            if (need.eyes.of(eye).seeing) {
                sum += meanSphere(supply.power.of(eye)).value();
                ++eyes;
            }
        kept.push_back({std::move(key), std::abs(sum / eyes)});
    }
    std::sort(kept.begin(), kept.end(), [](const Kept& a, const Kept& b) { return a.key < b.key; });
    std::vector<double> sizes;
    for (const auto& one : kept)
        sizes.push_back(one.size);
    std::vector<std::string> names;
    for (const std::size_t place : shortList(sizes, 6))
        names.push_back(kept[place].key.name);
    return names;
}

std::vector<std::size_t> firstsOf(const std::vector<StockLine>& stock)
{
    std::map<std::pair<PowerKey, PowerKey>, std::size_t> seen;
    std::vector<std::size_t> firsts;
    for (std::size_t i = 0; i < stock.size(); ++i)
        if (seen.emplace(std::pair{keyOf(stock[i].power.right), keyOf(stock[i].power.left)}, i).second)
            firsts.push_back(i);
    return firsts;
}

/// Points of the tree and the tree.
struct TreePeer::Tree {
    std::vector<std::array<double, 3>> points;
    std::vector<PowerVector> left;
    std::vector<std::size_t> lines;

    [[nodiscard]] std::size_t kdtree_get_point_count() const { return points.size(); }
    [[nodiscard]] double kdtree_get_pt(std::size_t place, std::size_t part) const
    {
        return points[place][part];
    }
    template <class Box>
    bool kdtree_get_bbox(Box& /*box*/) const
    {
        return false;
    }

    using Index =
        nanoflann::KDTreeSingleIndexAdaptor<nanoflann::L2_Simple_Adaptor<double, Tree>, Tree, 3, std::size_t>;
    std::unique_ptr<Index> index;
};

TreePeer::TreePeer(const std::vector<StockLine>& stock) : stock_(stock), tree_(std::make_unique<Tree>())
{
    for (const std::size_t first : firstsOf(stock)) {
        const auto right = toPowerVector(stock[first].power.right);
        tree_->points.push_back({right.m, right.j0, right.j45});
        tree_->left.push_back(toPowerVector(stock[first].power.left));
        tree_->lines.push_back(first);
    }
    tree_->index = std::make_unique<Tree::Index>(3, *tree_, nanoflann::KDTreeSingleIndexAdaptorParams(10));
}

TreePeer::~TreePeer() = default;

std::vector<std::string> TreePeer::ranked(const Need& need, const Profile& profile,
                                          const Settings& settings) const
{
    const auto right = toPowerVector(need.eyes.right.power);
    const auto left = toPowerVector(need.eyes.left.power);
    const double query[3] = {right.m, right.j0, right.j45};
    std::vector<std::pair<std::size_t, double>> hits;
    nanoflann::SearchParams unsorted;
    unsorted.sorted = false;
    const double radius = widestBlur + 1e-5;
    std::vector<std::size_t> places;
    if (need.eyes.right.seeing) {
        tree_->index->radiusSearch(query, radius * radius, hits, unsorted);
        for (const auto& [place, distance] : hits)
            places.push_back(place);
    } else {
        places.resize(tree_->points.size());
        std::iota(places.begin(), places.end(), std::size_t{0});
    }
    if (need.eyes.left.seeing)
        std::erase_if(places,
                      [&](std::size_t place) { return blurStrength(tree_->left[place] - left) > radius; });
    for (auto& place : places)
        place = tree_->lines[place];
    return rankedAmong(need, stock_, profile, settings, places);
}

} // namespace quarterstep::bench
