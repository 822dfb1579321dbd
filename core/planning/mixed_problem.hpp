// SPDX-License-Identifier: GPL-3.0-or-later
// One class of a line with lenses in frames: a linear program over the ways to serve each person, its columns
// priced in as they are needed, and a plan made from it.
#pragma once

#include "core/planning/linear_program.hpp"
#include "core/planning/waiting_line.hpp"

namespace quarterstep
{

inline constexpr double pricedIn = 1e-7; ///< gain over its price from which a column comes in

/// Of the rows of the program, all >= 0.
struct LinePrices {
    std::vector<double> resource;
    std::vector<double> floor;
};

/// A plan and the prices it came from.
struct MixedResult {
    std::vector<std::int32_t> choiceOf; ///< one a line entry
    LinePrices prices;
    bool proved = false;
};

/// One person: the entry of the line, what serving counts.
struct MixedMember {
    std::size_t entry = 0;
    double weight = 1.0;
};

class MixedProblem
{
  public:
    MixedProblem(const std::vector<Waiting>& line, const std::vector<int>& available, const Aims& aims,
                 std::vector<MixedMember> members, std::vector<ServiceFloor> floors)
        : line_(line), available_(available), aims_(aims), members_(std::move(members)),
          floors_(std::move(floors)), floorOf_(line.size(), -1)
    {
        double most = 0.0;
        for (const auto& member : members_) {
            double worst = 0.0;
            for (const auto& choice : line_[member.entry].choices)
                worst = std::max(worst, lossOfChoice(choice));
            most += worst;
            total_ += member.weight;
        }
        lossUnit_ = 1.0 / (1.0 + most);
        for (std::size_t floor = 0; floor < floors_.size(); ++floor)
            for (const auto person : floors_[floor].people)
                floorOf_[person] = static_cast<int>(floor);
    }

    MixedResult solve(const PlanOptions& options);
    /// What no plan of these members can pass: weight of the served. Holds for any prices >= 0.
    [[nodiscard]] double bound(const LinePrices& prices) const;
    /// Least loss of any plan of these members that serves this weight, logMAR.
    [[nodiscard]] double lossBound(const LinePrices& prices, double weight) const;

  private:
    struct Column {
        std::size_t member = 0;
        std::size_t choice = 0;
        std::size_t column = 0;
    };

    [[nodiscard]] double lossOfChoice(const Choice& choice) const
    {
        double scarcity = 0.0; // a hundredth of a loss unit: only decides between equals
        for (const auto resource : choice.used())
            scarcity += aims_.scarcity[resource];
        return choice.loss + 0.01 * scarcity;
    }
    [[nodiscard]] double gainOf(const MixedMember& member, const Choice& choice) const
    {
        return member.weight - lossUnit_ * lossOfChoice(choice);
    }
    [[nodiscard]] const std::vector<Choice>& choicesOf(std::size_t member) const
    {
        return line_[members_[member].entry].choices;
    }
    [[nodiscard]] static double priceOf(const Choice& choice, const LinePrices& prices)
    {
        double price = 0.0;
        for (const auto resource : choice.used())
            price += prices.resource[resource];
        return price;
    }
    [[nodiscard]] double worthAt(const LinePrices& prices, bool withLoss) const;
    void improve(std::vector<int>& left, const PlanOptions& options, MixedResult& result) const;
    [[nodiscard]] std::vector<std::size_t> worstPlaced(const MixedResult& result) const;
    [[nodiscard]] double worthOf(const MixedResult& result) const;
    void makeRows();
    void beginAtPlan();
    void beginWith(const std::vector<double>& pricesBefore);
    void addColumn(std::size_t member, std::size_t choice, bool wholeNumber = false);
    [[nodiscard]] LinePrices prices() const;
    bool priceIn();
    void roundPlan(const PlanOptions& options, MixedResult& result);
    void searchRest(const std::vector<std::size_t>& rest, std::vector<int>& left, const PlanOptions& options,
                    MixedResult& result) const;
    void fill(std::vector<int>& left, MixedResult& result) const;
    [[nodiscard]] bool makeRoom(std::size_t member, std::vector<int>& left, MixedResult& result) const;

    const std::vector<Waiting>& line_;
    const std::vector<int>& available_;
    const Aims& aims_;
    std::vector<MixedMember> members_;
    std::vector<ServiceFloor> floors_;
    std::vector<int> floorOf_;
    double total_ = 0.0;
    double lossUnit_ = 1.0;
    LinearProgram program_;
    std::vector<std::size_t> personRow_;
    std::vector<std::size_t> resourceRow_;
    std::vector<std::size_t> floorRow_;
    std::vector<Column> columns_;
    std::vector<std::vector<bool>> isIn_;
};

} // namespace quarterstep
