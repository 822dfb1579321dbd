// SPDX-License-Identifier: GPL-3.0-or-later
// Hand-overs wait here until those after them are known: two persons' pairs may have been exchanged.
#pragma once

#include "core/auditing/slip.hpp"

#include <deque>
#include <memory>
#include <unordered_map>

namespace quarterstep
{

class SlipWindow
{
  public:
    using Done = std::function<void(JudgedHandOver&, const SlipAnswer&)>;

    /// @param lines          counts and returns of the site of the box
    /// @param duplicateDays  how far back the same pair for the same person is remembered
    SlipWindow(const SlipModel& model, const Settings& settings, BoxThen box, const LineHistory& lines,
               double duplicateDays, Done done)
        : model_(model), settings_(settings), box_(box), lines_(lines), duplicateDays_(duplicateDays),
          done_(std::move(done))
    {
    }

    void take(JudgedHandOver judged);
    /// Lets go of what still waits.
    void finish();

    /// Hand-overs looked at before and after one.
    static constexpr std::size_t around = 10;

  private:
    void answer(std::size_t which);
    /// The hand-over before of the same person for the same purpose, and this one takes its place.
    [[nodiscard]] std::optional<EarlierHandOver> earlierThan(const JudgedHandOver& judged);

    const SlipModel& model_;
    const Settings& settings_;
    BoxThen box_;
    const LineHistory& lines_;
    double duplicateDays_;
    Done done_;
    std::unordered_map<std::string, EarlierHandOver> given_; ///< by person and purpose, of the last days
    std::deque<std::pair<std::int64_t, std::string>> givenInTime_;
    std::deque<std::unique_ptr<JudgedHandOver>> waiting_;
    std::size_t answered_ = 0; ///< of those waiting, from the front
};

} // namespace quarterstep
