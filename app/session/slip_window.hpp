// SPDX-License-Identifier: GPL-3.0-or-later
// Hand-overs wait here until those after them are known: two persons' pairs may have been exchanged.
#pragma once

#include "core/auditing/slip.hpp"

#include <deque>
#include <memory>

namespace quarterstep
{

class SlipWindow
{
  public:
    using Done = std::function<void(JudgedHandOver&, const SlipAnswer&)>;

    SlipWindow(const SlipModel& model, const Settings& settings, BoxThen box, Done done)
        : model_(model), settings_(settings), box_(box), done_(std::move(done))
    {
    }

    void take(JudgedHandOver judged);
    /// Lets go of what still waits.
    void finish();

    /// Hand-overs looked at before and after one.
    static constexpr std::size_t around = 10;

  private:
    void answer(std::size_t which);

    const SlipModel& model_;
    const Settings& settings_;
    BoxThen box_;
    Done done_;
    std::deque<std::unique_ptr<JudgedHandOver>> waiting_;
    std::size_t answered_ = 0; ///< of those waiting, from the front
};

} // namespace quarterstep
