// SPDX-License-Identifier: GPL-3.0-or-later
// A lens for each eye in one kind of frame. Lenses of each eye are sorted by their cost, so that pairs come
// in rising cost from the cheapest; where hardly any pair passes although each lens does, the pairs that can
// pass at all are found by the differences that the two eyes bear.
#pragma once

#include "core/fitting/lens_choices.hpp"

namespace quarterstep
{

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
