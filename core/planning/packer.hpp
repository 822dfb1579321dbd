// SPDX-License-Identifier: GPL-3.0-or-later
// Buys packs one after the other by what they serve on all draws for what they take of the limits.
#pragma once

#include "core/planning/packing_moves.hpp"
#include "core/planning/service_state.hpp"

namespace quarterstep
{

class Packer
{
  public:
    Packer(const PackingProblem& problem, const std::vector<Scenario>& scenarios);

    /// Begins anew with these packs; empty: with what is on hand.
    void start(const std::vector<int>& packs);
    /// Buys until nothing more can be bought that serves anybody. Every purchase goes into the curve. With a
    /// draw, some moves seem dearer and some cheaper than they are, so that another order comes about. `goOn`
    /// is asked with the part of the tightest limit that is spent; false ends the buying.
    void fill(std::vector<CurvePoint>* curve, Draw* draw = nullptr,
              const std::function<bool(double)>& goOn = {});

    [[nodiscard]] double share() const;
    /// The share, and a little for lines that more people could use (see spareOf): what is bought by.
    [[nodiscard]] double value() const;
    [[nodiscard]] const std::vector<int>& packs() const { return packs_; }
    [[nodiscard]] bool bundles() const { return moves_.bundles; }

  private:
    [[nodiscard]] bool fits(const PackingMove& move) const;
    [[nodiscard]] double gainOf(const PackingMove& move);
    [[nodiscard]] double spareOf(const PackingMove& move) const;
    [[nodiscard]] bool fillOnce(std::vector<CurvePoint>* curve, const std::vector<double>& favour,
                                const std::function<bool(double)>& goOn);
    void buy(const PackingMove& move);

    const PackingProblem& problem_;
    const std::vector<Scenario>& scenarios_;
    double needs_ = 0.0;
    std::vector<double> wanted_; ///< of each resource, each need shared out among its choices, over all draws
    PackingMoves moves_;
    std::vector<ServiceState> states_;
    std::vector<int> pieces_;
    std::vector<int> packs_;
    Spending spending_;
};

} // namespace quarterstep
