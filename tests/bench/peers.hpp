// SPDX-License-Identifier: GPL-3.0-or-later
// Plain ways to the answers of the search, written as one would write them without thinking of speed.
#pragma once

#include "core/fitting/candidates.hpp"

#include <memory>

namespace quarterstep::bench
{

/// The best two lenses in the frame of `stock` by cost, acceptable before on trial.
struct BestLenses {
    bool any = false;
    bool onTrial = false;
    double cost = 0.0;
};

/// Two loops over all lenses, each power a struct of doubles; the limits are those of adult-distance for a
/// person under 40 with known PD and centres.
[[nodiscard]] BestLenses doubleLoop(const Need& need, const std::vector<StockLine>& stock);

/// For every ready-made pair the first of the same powers: peers, too, look at each power once.
[[nodiscard]] std::vector<std::size_t> firstsOf(const std::vector<StockLine>& stock);

/// Names of the short list among the lines at `places`, each judged; all places: the scan.
[[nodiscard]] std::vector<std::string> rankedAmong(const Need& need, const std::vector<StockLine>& stock,
                                                   const Profile& profile, const Settings& settings,
                                                   const std::vector<std::size_t>& places);
/// A k-d tree over the power vectors of the right lenses: those within the widest blur that may pass, then
/// the left lenses by the same distance, then judged.
class TreePeer
{
  public:
    explicit TreePeer(const std::vector<StockLine>& stock);
    ~TreePeer();
    [[nodiscard]] std::vector<std::string> ranked(const Need& need, const Profile& profile,
                                                  const Settings& settings) const;

  private:
    struct Tree;
    const std::vector<StockLine>& stock_;
    std::unique_ptr<Tree> tree_;
};

} // namespace quarterstep::bench
