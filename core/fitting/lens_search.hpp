// SPDX-License-Identifier: GPL-3.0-or-later
// A lens for each eye in one kind of frame. Lenses of each eye are sorted by their cost, so that pairs come
// in rising cost from the cheapest; where hardly any pair passes although each lens does, the pairs that can
// pass at all are found by the differences that the two eyes bear.
#pragma once

#include "core/fitting/ranking.hpp"

#include <map>

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
};

/// Lenses of one rack for one eye in frames of one axis step, by rising cost: all within reach, and all up to
/// `cost`. Sorted as far as somebody asked: mostly the cheapest few are looked at.
class LensChoices
{
  public:
    LensChoices(const Query& query, Eye eye, std::size_t rack, double axisStep, double cost);

    [[nodiscard]] std::size_t size() const { return choices_.size(); }
    /// In no order; places of this list are what the others ask for.
    [[nodiscard]] const std::vector<LensChoice>& all() const { return choices_; }
    /// Place of the lens that comes `rank`th by cost.
    [[nodiscard]] std::uint32_t placeOf(std::size_t rank) const;
    [[nodiscard]] const LensChoice& byCost(std::size_t rank) const { return choices_[placeOf(rank)]; }
    /// All of its lines, usable or not.
    [[nodiscard]] const StockIndex::Lines& linesOf(const LensChoice& choice) const;
    [[nodiscard]] bool usable(const LensChoice& choice) const;
    /// Whether any line of it can be taken, and it does not fail in its own eye.
    [[nodiscard]] bool passes(std::uint32_t place) const;

  private:
    void gather(const StockIndex::Lenses& lenses, const Wanted& wanted, double axisStep, double cost);

    const Query& query_;
    Eye eye_;
    Need alone_; ///< with the fellow eye taken away
    std::vector<LensChoice> choices_;
    mutable Fit fit_;
    mutable std::vector<std::pair<double, std::uint32_t>> byCost_;
    mutable std::size_t sorted_ = 0;
    mutable std::map<const LensChoice*, StockIndex::Lines> merged_; ///< lines that turn and lines that do not
    enum class Passes : char { unknown, yes, no };
    mutable std::vector<Passes> passes_;
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

/// Gauges of the lenses of one eye, worked out when first asked for.
class Gauges
{
  public:
    /// `need` and `placed` as the frame is judged; all live as long as this.
    Gauges(const Need& need, const Supply& placed, Eye eye, const LensChoices& choices);
    [[nodiscard]] const Gauge& of(std::uint32_t place) const;

  private:
    const LensChoices& choices_;
    const EyeNeed& wanted_;
    Eye eye_;
    double needed_;
    double above_;                  ///< mm, of the lens's centre
    std::array<double, 5> nasal_{}; ///< mm, at the nominal PD and centres, and at the ends of their ranges
    std::size_t ends_ = 1;
    mutable std::vector<Gauge> all_;
    mutable std::vector<char> known_;
};

class FrameSearch
{
  public:
    /// `frames` and the choices live as long as the search.
    FrameSearch(const Query& query, const StockIndex::Lines& frames, const LensChoices& right,
                const LensChoices& left);

    /// Cost of the next pair that may rank; none left: infinity.
    [[nodiscard]] double next();
    /// Judges it.
    void takeNext(Ranking& ranking);
    /// Pairs whose misses are not known from the ranking, up to the ranking's limit. `again`: with more
    /// lenses than at the first time.
    void collectMisses(Ranking& ranking, const LensChoices& right, const LensChoices& left, double done);

  private:
    struct Place {
        double cost;
        std::uint32_t right; ///< rank by cost while not narrowed, then place among the choices
        std::uint32_t left;
        bool operator>(const Place& other) const { return cost > other.cost; }
    };

    [[nodiscard]] bool canPass(const Gauge& right, const Gauge& left) const;
    [[nodiscard]] bool mustPass(const Gauge& right, const Gauge& left) const;
    struct Window;
    [[nodiscard]] Window narrowest() const;
    void advance(const Place& place);
    void keepWhatCanPass(double after);
    /// Puts the two powers into the frame, for judging.
    KnownSupply mount(const LensChoice& right, const LensChoice& left);
    [[nodiscard]] Makings makingsOf(const LensChoices& rights, const LensChoice& right,
                                    const LensChoices& lefts, const LensChoice& left) const;

    const Query& query_;
    const StockIndex::Lines& frames_;
    const LensChoices& right_;
    const LensChoices& left_;
    Supply frame_;
    Need need_;     ///< with the PD of this frame where every pair is taken as centred
    Supply placed_; ///< the frame as it is judged
    PairReach reach_;
    Gauges gaugesRight_;
    Gauges gaugesLeft_;
    std::priority_queue<Place, std::vector<Place>, std::greater<>> places_;
    std::size_t visits_ = 0;
    bool narrowed_ = false; ///< places_ holds only what can pass
    double narrowedFrom_ = 0.0;
};

} // namespace quarterstep
