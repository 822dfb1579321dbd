// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps what a search judged: what ranks, what fails nearest, and whether more of the search could still
// change the short list.
#pragma once

#include "core/fitting/order.hpp"
#include "core/fitting/supplies.hpp"

#include <queue>

namespace quarterstep
{

/// Lines that are the same to the eye, part by part: a group of ready-made pairs, or frames with lenses.
struct Makings {
    StockIndex::Lines pairs;
    StockIndex::Lines frames;
    PerEye<StockIndex::Lines> lenses;

    /// Every way to take the parts, frames first; one lens line for both sides only with two lenses in it.
    [[nodiscard]] std::vector<std::vector<Part>> ways(const Query& query) const;
    /// The first of them, without making the rest.
    [[nodiscard]] std::vector<Part> firstWay(const Query& query) const;
};

struct Judged {
    RankKey key;
    std::vector<Part> parts;
    Supply supply;
    Makings makings; ///< empty where every line counts alone
    double meanSphere = 0.0;
};

/// Pairs that fail: the nearest by cost, and a few more.
class Failures
{
  public:
    explicit Failures(std::size_t most) : most_(most) {}
    /// Cost beyond which nothing is among the nearest any more.
    [[nodiscard]] double limit() const;
    [[nodiscard]] bool admits(double cost) const;
    void add(Judged judged);
    [[nodiscard]] std::vector<Judged>& all() { return all_; }

  private:
    std::size_t most_;
    std::vector<Judged> all_;
    std::priority_queue<double> costs_; ///< of the nearest, the farthest on top
};

class Ranking
{
  public:
    explicit Ranking(const Query& query)
        : query_(query), failed_(query.options.most), misses_(query.options.most)
    {
    }

    /// Judges, and keeps it among the ranked or the failed. False when it failed.
    bool judge(const Supply& supply, const Makings& makings);
    /// Keeps what is known to fail, met while ranking.
    void fail(double cost, const Supply& supply, const Makings& makings);
    /// Whether something that fails at this cost can still be among the nearest.
    [[nodiscard]] bool failsNear(double cost) const;
    /// Keeps what is known to fail among the nearest misses, when it is near enough.
    void miss(double cost, const Supply& supply, const Makings& makings);
    /// Judges; keeps it among the nearest misses when it fails.
    void judgeForMiss(double cost, const Supply& supply, const Makings& makings);

    [[nodiscard]] bool anyAcceptable() const;
    /// Whether nothing of this cost or more can enter the short list.
    [[nodiscard]] bool settled(double cost);
    /// Forgets the misses but those met while ranking.
    void restartMisses();
    /// Cost beyond which nothing is a nearest miss any more.
    [[nodiscard]] double missLimit() const;

    [[nodiscard]] CandidateLists lists();

  private:
    void keepNear(Failures& failures, double cost, const Supply& supply, const Makings& makings);
    [[nodiscard]] std::vector<Judged> keyed(const Supply& supply, const Makings& makings, const RankKey& key,
                                            bool fails) const;
    [[nodiscard]] Candidate candidateOf(Judged& judged) const;

    const Query& query_;
    Fit fit_; ///< room that is used again
    std::vector<Judged> ranked_;
    Failures failed_; ///< met while ranking
    Failures misses_;
    long lookedAtStep_ = -1;
    bool settled_ = false;
};

} // namespace quarterstep
