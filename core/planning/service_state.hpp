// SPDX-License-Identifier: GPL-3.0-or-later
// How many needs of a scenario the pieces serve, kept up to date while pieces are added: a largest matching,
// grown one way of exchange at a time. Ready-made pairs exactly; lenses in frames are given where all parts
// are free.
#pragma once

#include "core/planning/packing.hpp"

namespace quarterstep
{

class ServiceState
{
  public:
    ServiceState(const std::vector<Waiting>& needs, const Scenario& scenario, std::size_t resources);

    /// Adds pieces of several resources, then serves, for parts that only serve together. Returns how many
    /// more needs are served.
    int addAll(const std::vector<std::pair<std::uint32_t, int>>& pieces);
    /// Lenses in frames: whoever holds a part that somebody unserved lacks moves to something else that is
    /// free. Returns how many more needs are served. Nothing without such choices.
    int makeRoom();
    [[nodiscard]] int served() const { return served_; }
    [[nodiscard]] std::size_t needs() const { return needs_.size(); }

    /// Changes after `mark` can be taken back by `undo`.
    void mark();
    void undo();

  private:
    struct Way {
        std::uint32_t need;
        std::uint32_t choice;
    };
    struct Change {
        enum class Kind { left, given, closed } kind;
        std::uint32_t place;
        std::int32_t before;
    };

    bool augment(std::uint32_t resource);
    bool reach(std::uint32_t resource);
    void setLeft(std::uint32_t resource, int value);
    void give(std::uint32_t need, std::int32_t choice);
    [[nodiscard]] const Choice& choiceOf(std::uint32_t need, std::uint32_t choice) const
    {
        return needs_[need]->choices[choice];
    }
    void hold(std::uint32_t need, std::int32_t choice);
    void drop(std::uint32_t need);
    bool moveAway(std::uint32_t need, std::uint32_t choice, std::uint32_t lacking);
    bool makeRoomFor(std::uint32_t need);
    [[nodiscard]] bool partsFree(const Choice& choice) const;

    std::vector<const Waiting*> needs_;
    std::vector<std::uint32_t> firstWay_; ///< by resource
    std::vector<Way> ways_;               ///< of each resource
    std::vector<bool> bundled_;           ///< resource takes part in a bundle
    bool bundles_ = false;
    std::vector<std::vector<std::uint32_t>> holders_; ///< of each resource, while room is made
    std::vector<int> left_;
    std::vector<std::int32_t> given_; ///< choice of each need or -1
    std::vector<bool> closed_;        ///< no way of exchange leads from here to somebody unserved
    std::vector<std::uint32_t> visited_;
    std::vector<std::uint32_t> trail_;
    std::uint32_t visit_ = 0;
    int served_ = 0;
    int servedAtMark_ = 0;
    bool recording_ = false;
    std::vector<Change> changes_;
};

} // namespace quarterstep
