// SPDX-License-Identifier: GPL-3.0-or-later
// What everybody in a line could be given: the acceptable candidates of `recommend`, counted in groups of
// lines that are the same to the eye. The only way from the model of fit into planning.
#pragma once

#include "core/fitting/recommendation.hpp"

#include <array>
#include <cstdint>
#include <span>

namespace quarterstep
{

/// Lines that are the same to the eye, and how many pieces they hold together.
struct Resource {
    std::vector<std::uint32_t> lines; ///< into the stock, rising
    int available = 0;
};

/// One acceptable way to serve somebody.
struct Choice {
    std::array<std::uint32_t, 3> resources{}; ///< pair; or frame, right lens, left lens
    std::uint8_t parts = 1;                   ///< 1 or 3
    bool caution = false;
    std::int32_t loss = 0; ///< of the model's cost, 1e-4 logMAR, over the seeing eyes; and prism, see lossOf
    float lossLogMar = 0.0F;
    float prism = 0.0F; ///< horizontal, total error, Δ

    [[nodiscard]] std::span<const std::uint32_t> used() const { return {resources.data(), parts}; }
};

/// One person and purpose.
struct Waiting {
    std::string person;
    Purpose purpose = Purpose::distance;
    bool child = false;
    bool secondPair = false;     ///< the other purpose of a set of two comes first
    double bareLoss = 0.0;       ///< logMAR lost without any pair, sum over the seeing eyes
    std::vector<Choice> choices; ///< in the order of `match`; empty: nothing acceptable is left
    std::string reasonKey;       ///< of the recommendation
    Sentence reason;
};

/// Persons and purposes that are not in the line: nothing needed, something missing, the clinic first.
struct NotInLine {
    std::string person;
    Purpose purpose = Purpose::distance;
    Verdict verdict = Verdict::none;
    std::string reasonKey;
    Sentence reason;
};

/// The stock as planning counts it.
class Resources
{
  public:
    explicit Resources(std::span<const StockLine> stock);

    [[nodiscard]] std::uint32_t of(std::size_t line) const { return resourceOf_[line]; }
    [[nodiscard]] const std::vector<Resource>& all() const { return all_; }

  private:
    std::vector<Resource> all_;
    std::vector<std::uint32_t> resourceOf_;
};

/// Prism at its usual limit of 1 Δ weighs as much as one step of the order of candidates, 0.02 logMAR
/// (derived: below what a chart can tell, above nothing).
[[nodiscard]] std::int32_t lossOf(double cost, double horizontalPrism);

struct LineEntries {
    std::vector<Waiting> waiting;
    std::vector<NotInLine> others;
};

/// Adds one person's purposes. `options.candidates` is set up by optionsForPlanning. Pure.
void lineUp(const PersonRecord& person, std::span<const StockLine> stock, const Resources& resources,
            const FittingRules& rules, const MatchOptions& options, LineEntries& entries);

/// The same verdicts as `match`, every acceptable candidate of whoever is served.
[[nodiscard]] MatchOptions optionsForPlanning(MatchOptions options, const StockIndex& index);

} // namespace quarterstep
