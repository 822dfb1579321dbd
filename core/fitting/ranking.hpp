// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps what a search judged: what ranks, what fails nearest, and whether more of the search could still
// change the short list.
#pragma once

#include "core/fitting/order.hpp"
#include "core/fitting/supplies.hpp"

#include <array>
#include <queue>

namespace quarterstep
{

/// The parts of one pair: one line, or a frame with two lenses. Asks for no memory.
class Way
{
  public:
    Way() = default;
    explicit Way(std::size_t pair) : parts_{Part{pair, PartSide::pair}}, count_(1) {}
    Way(std::size_t frame, std::size_t right, std::size_t left)
        : parts_{Part{frame, PartSide::frame}, Part{right, PartSide::right}, Part{left, PartSide::left}},
          count_(3)
    {
    }
    [[nodiscard]] std::span<const Part> parts() const { return {parts_.data(), count_}; }

  private:
    std::array<Part, 3> parts_{};
    std::size_t count_ = 0; ///< 0: there is none
};

/// Lines that are the same to the eye, part by part: a group of ready-made pairs, or frames with lenses. The
/// lists live as long as the search and may name lines that cannot be used.
struct Makings {
    const StockIndex::Lines* pairs = nullptr;
    const StockIndex::Lines* frames = nullptr;
    PerEye<const StockIndex::Lines*> lenses{nullptr, nullptr};
    PerEye<SpheroCylinder> mounted; ///< powers of the lenses as they sit

    /// Every way to take the parts, frames first; one lens line for both sides only with two lenses in it.
    [[nodiscard]] std::vector<Way> ways(const Query& query) const;
    /// The first of them, without making the rest.
    [[nodiscard]] Way firstWay(const Query& query) const;
    [[nodiscard]] Supply supply(const Query& query) const;
};

struct Judged {
    RankKey key; ///< its name is filled when everything else is equal to another's
    Way way;
    Makings makings;
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
    bool judge(const Supply& supply, const Makings& makings, const KnownSupply* known = nullptr);
    /// Keeps what is known to fail, met while ranking.
    void fail(double cost, const Makings& makings);
    /// Whether something that fails at this cost can still be among the nearest.
    [[nodiscard]] bool failsNear(double cost) const;
    /// Keeps what is known to fail among the nearest misses, when it is near enough.
    void miss(double cost, const Makings& makings);
    /// Judges; keeps it among the nearest misses when it fails.
    void judgeForMiss(double cost, const Supply& supply, const Makings& makings,
                      const KnownSupply* known = nullptr);

    [[nodiscard]] bool anyAcceptable() const;
    /// Whether nothing of this cost or more can enter the short list.
    [[nodiscard]] bool settled(double cost);
    /// Forgets the misses but those met while ranking.
    void restartMisses();
    /// Cost beyond which nothing is a nearest miss any more.
    [[nodiscard]] double missLimit() const;

    [[nodiscard]] CandidateLists lists();

  private:
    void keepNear(Failures& failures, double cost, const Makings& makings);
    /// Hands `act` every Judged that these makings are: one a group, or one a way.
    template <class Act>
    void eachKeyed(const Makings& makings, const RankKey& key, bool fails, Act act) const;
    [[nodiscard]] bool before(Judged& a, Judged& b) const;
    [[nodiscard]] std::vector<Judged*> inOrder(std::vector<Judged>& judged) const;
    [[nodiscard]] Candidate candidateOf(const Judged& judged) const;

    const Query& query_;
    Fit fit_; ///< room that is used again
    std::vector<Judged> ranked_;
    Failures failed_; ///< met while ranking
    Failures misses_;
    long lookedAtStep_ = -1;
    bool settled_ = false;
};

} // namespace quarterstep
