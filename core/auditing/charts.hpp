// SPDX-License-Identifier: GPL-3.0-or-later
// Charts of the audit as values: points and limits, for whoever draws them and for the table beside them.
// Nothing is ranked: groups stand in the order of their names. Sources of the limits: rates.hpp.
#pragma once

#include "core/auditing/rates.hpp"
#include "core/finding.hpp"

#include <span>
#include <string>
#include <vector>

namespace quarterstep
{

struct GroupTally {
    std::string name;
    Tally tally;
};

struct FunnelPoint {
    std::string name;
    Tally tally;
    ShareLimits exact;    ///< Clopper-Pearson, 95 %
    Funnel funnel{};      ///< against the share of all
    std::int64_t alert{}; ///< more mismatches than this: beyond 95 %
    std::int64_t alarm{}; ///< more than this: beyond 99.9 %
};

/// Limits at one number of hand-overs, as shares: above the upper or below the lower one is beyond.
struct FunnelStep {
    std::int64_t judged = 0;
    ShareLimits alert; ///< 95 %
    ShareLimits alarm; ///< 99.9 %
};

struct FunnelChart {
    double share = 0.0;
    std::vector<FunnelPoint> points;
    std::vector<FunnelStep> limits; ///< rising, from 1 to the largest group
};
/// @param share of all, in [0, 1]. Groups without hand-overs are left out. At most `steps` limits beside
/// those at the groups themselves.
[[nodiscard]] FunnelChart funnelChart(std::span<const GroupTally> groups, double share, int steps = 60);

/// Largest count c with P(X < c) <= tail for n trials at `share`: fewer than c is beyond the lower limit.
[[nodiscard]] std::int64_t funnelLower(std::int64_t trials, double share, double tail);

/// One run of good hand-overs that ended with a mismatch.
struct GPoint {
    std::int64_t good = 0;
    std::string entry;   ///< of the mismatch
    bool beyond = false; ///< longer than the upper limit: better than the share says
};
struct GSeries {
    double share = 0.0;
    GChart limits; ///< three sigma by probability, 0.00135
    std::vector<GPoint> points;
    std::int64_t running = 0;   ///< good ones since the last mismatch
    bool runningBeyond = false; ///< and these are more than the upper limit already
    Sentence whyNot;            ///< why nothing is drawn; empty: drawn
    [[nodiscard]] bool drawn() const { return whyNot.empty(); }
};
/// @param runs as they followed each other; the share is that of mismatches among all of them.
[[nodiscard]] GSeries gSeries(std::span<const GPoint> runs, std::int64_t running, const Tally& all);

struct PPoint {
    std::string name;
    Tally tally;
    ShareLimits limits; ///< of this many hand-overs: they step with the volume
    bool beyond = false;
};
struct PChart {
    double share = 0.0;
    std::int64_t needs = 0; ///< hand-overs a group must have
    std::vector<PPoint> points;
    Sentence whyNot; ///< why nothing is drawn; empty: drawn
    [[nodiscard]] bool drawn() const { return whyNot.empty(); }
};
/// Drawn only where every group is large enough for a lower limit above nought (n > 9 (1 - p) / p) and fewer
/// than a quarter of the groups have no mismatch; otherwise it says why not. The points are there either way.
[[nodiscard]] PChart pChart(std::span<const GroupTally> groups, double share);

} // namespace quarterstep
