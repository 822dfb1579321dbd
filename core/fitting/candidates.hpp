// SPDX-License-Identifier: GPL-3.0-or-later
// Pairs that the stock can make up for a need, judged and ordered.
#pragma once

#include "core/fitting/fit.hpp"
#include "core/fitting/stock_line.hpp"

#include <span>

namespace quarterstep
{

/// A part taken from a line: which line and for which side.
enum class PartSide { pair, right, left, frame };
struct Part {
    std::size_t line = 0; ///< index into the stock searched
    PartSide side = PartSide::pair;
};

struct Candidate {
    std::vector<Part> parts; ///< ready-made: one; prefabricated: frame, right, left
    Supply supply;
    Fit fit;
    std::vector<std::vector<Part>> alike; ///< same optics in other colours, models or bins
    PerEye<double> mountedAxis{0.0, 0.0}; ///< prefabricated lens with a cylinder: mark to turn to, 0 = none
    PerEye<std::optional<double>> chance; ///< filled on request, see fit_chance.hpp
};

class StockIndex; // stock_index.hpp

struct CandidateOptions {
    bool everyLine = false;    ///< one candidate a line instead of one a group
    bool onlyAvailable = true; ///< skip what is not available
    std::size_t most = 6;      ///< groups kept in each list
    bool alike = true;         ///< fill Candidate::alike (frames and lenses multiply)
    /// All that ranks, however long the list, without sources; misses only where nothing acceptable ranks.
    bool everyRanked = false;
    bool misses = true;           ///< look for the nearest that fail, too
    std::vector<double> scarcity; ///< per line, higher = keep; empty = none
    /// Of this very stock (its counts may have changed since), to spare making it for every person; null =
    /// made for this once.
    const StockIndex* index = nullptr;
};

struct CandidateLists {
    std::vector<Candidate> ranked; ///< acceptable, then on trial, in order
    std::vector<Candidate> misses; ///< nearest that fail, by cost
    bool anyStockedPower = false;  ///< whether any line could be judged at all
};

/// Exact: the lists are those of judging every pair and every frame with every two lenses. Sources are not
/// named (nameSources). Pure; never throws.
[[nodiscard]] CandidateLists findCandidates(const Need& need, std::span<const StockLine> stock,
                                            const Profile& profile, const Settings& settings,
                                            const CandidateOptions& options);

/// The supply of named parts, for judging what somebody picked. Empty where the parts do not make a pair.
[[nodiscard]] std::optional<Supply> supplyOf(std::span<const Part> parts, std::span<const StockLine> stock,
                                             const Need& need, const Settings& settings);

} // namespace quarterstep
