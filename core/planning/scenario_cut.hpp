// SPDX-License-Identifier: GPL-3.0-or-later
// One scenario against pieces that may be parts: how many needs could be served at most, and prices of the
// pieces that prove it. At any prices >= 0 no pieces serve more than the pieces at their prices and, for each
// need, what serving it is worth above the price of its cheapest choice (Lagrange).
#pragma once

#include "core/planning/linear_program.hpp"
#include "core/planning/packing.hpp"

#include <map>

namespace quarterstep
{

struct ScenarioCut {
    double flow = 0.0;  ///< needs served at these pieces, parts of needs allowed
    double fixed = 0.0; ///< needs that the prices leave, whatever the pieces are
    std::vector<std::pair<std::uint32_t, double>> prices; ///< of resources, > 0
};

class ScenarioService
{
  public:
    ScenarioService(const PackingProblem& problem, const Scenario& scenario);

    [[nodiscard]] ScenarioCut cutAt(const std::vector<double>& pieces);
    /// Pieces of each resource that could find somebody, all choices counted.
    [[nodiscard]] const std::map<std::uint32_t, int>& wanted() const { return wanted_; }
    [[nodiscard]] int servable() const { return servable_; }

  private:
    /// Needs with the same choices.
    struct Group {
        const std::vector<Choice>* choices = nullptr;
        int needs = 0;
        std::vector<bool> isIn; ///< choice has a column
    };

    [[nodiscard]] ScenarioCut cutOfNetwork(const std::vector<double>& pieces) const;
    [[nodiscard]] ScenarioCut cutOfProgram(const std::vector<double>& pieces);
    void makeProgram();
    void addColumn(std::size_t group, std::size_t choice);
    bool priceIn(const std::vector<double>& prices);

    std::vector<Group> groups_;
    std::map<std::uint32_t, int> wanted_;
    int servable_ = 0;
    bool bundles_ = false;
    std::vector<std::uint32_t> resources_; ///< that anybody wants, rising
    std::map<std::uint32_t, std::size_t> placeOf_;
    LinearProgram program_;                ///< only where there are bundles
    std::vector<std::size_t> resourceRow_; ///< by place
    std::vector<std::size_t> groupRow_;
};

} // namespace quarterstep
