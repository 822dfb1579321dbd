// SPDX-License-Identifier: GPL-3.0-or-later
// The order in which people are shown candidates, and which of them make the short list.
#pragma once

#include "core/fitting/candidates.hpp"

#include <tuple>

namespace quarterstep
{

/// What is compared, one after the other; smaller comes first. Costs are cut into steps of 0.02 logMAR.
struct RankKey {
    bool onTrial = false;
    long costStep = 0;
    int cautions = 0;
    int worseSideEyes = 0;
    long balanceStep = 0; ///< 0.25 D
    long prismStep = 0;   ///< quarters of the limit
    bool baseOutAtNear = false;
    double sizeSteps = 0.0;
    double scarcity = 0.0;
    double cost = 0.0;
    std::size_t parts = 0;
    std::string name;

    auto operator<=>(const RankKey&) const = default;
    /// Everything before the name, to be compared.
    [[nodiscard]] auto withoutName() const
    {
        return std::tie(onTrial, costStep, cautions, worseSideEyes, balanceStep, prismStep, baseOutAtNear,
                        sizeSteps, scarcity, cost, parts);
    }
};

/// Step of 0.02 logMAR that a cost falls into.
[[nodiscard]] long costStepOf(double cost);
/// The part of the key that the fit decides; and the part that its lines decide, filled in afterwards.
[[nodiscard]] RankKey fitKey(const Need& need, const Profile& profile, const Fit& fit);
void nameParts(RankKey& key, std::span<const StockLine> stock, const CandidateOptions& options,
               std::span<const Part> parts);
[[nodiscard]] double scarcityOf(const CandidateOptions& options, std::span<const Part> parts);
[[nodiscard]] std::string nameOf(std::span<const StockLine> stock, std::span<const Part> parts);
[[nodiscard]] RankKey rankKey(const Need& need, std::span<const StockLine> stock, const Profile& profile,
                              const CandidateOptions& options, const Candidate& candidate);

/// Sizes of mean supplied power compared, dioptres.
[[nodiscard]] bool weakerThan(double size, double other);
[[nodiscard]] bool strongerThan(double size, double other);
/// Places of a short list among ranked candidates, given the size of the mean power of each: the first, the
/// best weaker and the best stronger neighbour always (from three places up), then whoever ranks highest.
[[nodiscard]] std::vector<std::size_t> shortList(const std::vector<double>& sizes, std::size_t most);

} // namespace quarterstep
