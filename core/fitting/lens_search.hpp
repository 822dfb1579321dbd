// SPDX-License-Identifier: GPL-3.0-or-later
// A lens for each eye in one kind of frame. Lenses of each eye are sorted by their cost, so that pairs come
// in rising cost from the cheapest; where hardly any pair passes although each lens does, the pairs that can
// pass at all are found by the differences that the two eyes bear.
#pragma once

#include "core/fitting/ranking.hpp"

namespace quarterstep
{

/// One mounted power for one eye.
struct LensChoice {
    SpheroCylinder power;
    PowerVector vector;
    double cost = 0.0;
    bool inReach = false;
    const StockIndex::LensPower* fixed = nullptr;   ///< where its lines stand
    const StockIndex::LensPower* turning = nullptr; ///< and those that are turned to it
    mutable std::optional<StockIndex::Lines> lines; ///< usable ones, looked up when first asked for
    mutable std::optional<bool> passes;             ///< good in its own eye, asked for when needed
};

/// Lenses of one rack for one eye in frames of one axis step, by rising cost: all within reach, and all up to
/// `cost`.
class LensChoices
{
  public:
    LensChoices(const Query& query, Eye eye, std::size_t rack, double axisStep, double cost);

    [[nodiscard]] const std::vector<LensChoice>& all() const { return choices_; }
    [[nodiscard]] const StockIndex::Lines& linesOf(const LensChoice& choice) const;
    /// Whether any line of it can be taken, and it does not fail in its own eye.
    [[nodiscard]] bool passes(const LensChoice& choice) const;

  private:
    const Query& query_;
    Eye eye_;
    Need alone_; ///< with the fellow eye taken away
    mutable Fit fit_;
    std::vector<LensChoice> choices_;
};

/// The lenses of a rack by mounted power, for a fellow eye that must get the same lines.
class LensRack
{
  public:
    LensRack(const Query& query, Eye eye, std::size_t rack, double axisStep);
    /// The mounted power whose usable lines are exactly these; empty when there is none.
    [[nodiscard]] std::optional<SpheroCylinder> powerOf(const StockIndex::Lines& lines) const;

  private:
    struct Group {
        SpheroCylinder power;
        StockIndex::Lines lines;
    };
    std::vector<Group> groups_; ///< by first line
};

/// What every lens of an eye adds to the differences of the pair in one frame.
struct Gauge {
    double error = 0.0;    ///< error M
    double supplied = 0.0; ///< supplied M
    double in[5] = {};     ///< prism base-in at the nominal PD and centres, and at the ends of their ranges
    double up = 0.0;
};

class FrameSearch
{
  public:
    FrameSearch(const Query& query, StockIndex::Lines frames, const LensChoices& right,
                const LensChoices& left);

    /// Cost of the next pair that may rank; none left: infinity.
    [[nodiscard]] double next();
    /// Judges it.
    void takeNext(Ranking& ranking);
    /// Pairs whose misses are not known from the ranking, up to the ranking's limit. `again`: with more
    /// lenses than at the first time.
    void collectMisses(Ranking& ranking, const LensChoices& right, const LensChoices& left,
                       double done) const;

  private:
    struct Place {
        double cost;
        std::uint32_t right;
        std::uint32_t left;
        bool operator>(const Place& other) const { return cost > other.cost; }
    };

    [[nodiscard]] std::vector<Gauge> gauges(Eye eye, const LensChoices& choices) const;
    [[nodiscard]] bool canPass(const Gauge& right, const Gauge& left) const;
    [[nodiscard]] bool mustPass(const Gauge& right, const Gauge& left) const;
    struct Window;
    [[nodiscard]] Window windowOf(double (*number)(const Gauge&), double (*middle)(const Gauge&),
                                  double width) const;
    void advance(const Place& place);
    void keepWhatCanPass(double after);
    [[nodiscard]] Supply supplyOf(const LensChoice& right, const LensChoice& left) const;
    [[nodiscard]] Makings makingsOf(const LensChoice& right, const LensChoice& left) const;

    const Query& query_;
    StockIndex::Lines frames_;
    const LensChoices& right_;
    const LensChoices& left_;
    Supply frame_;
    Need need_;     ///< with the PD of this frame where every pair is taken as centred
    Supply placed_; ///< the frame as it is judged
    PairReach reach_;
    std::vector<Gauge> gaugesRight_;
    std::vector<Gauge> gaugesLeft_;
    std::priority_queue<Place, std::vector<Place>, std::greater<>> places_;
    std::size_t visits_ = 0;
    bool narrowed_ = false; ///< places_ holds only what can pass
    double narrowedFrom_ = 0.0;
};

} // namespace quarterstep
