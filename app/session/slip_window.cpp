// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/slip_window.hpp"

namespace quarterstep
{

namespace
{

/// A neighbour in time counts only within this, ms: the same camp day.
constexpr std::int64_t sameDay = 12 * 3'600'000;

bool nearInTime(const JudgedHandOver& one, const JudgedHandOver& other)
{
    return one.facts.site == other.facts.site && std::abs(one.facts.atMs - other.facts.atMs) <= sameDay;
}

} // namespace

void SlipWindow::answer(std::size_t which)
{
    auto& judged = *waiting_[which];
    SlipScene scene;
    if (which > 0 && nearInTime(judged, *waiting_[which - 1]))
        scene.before = waiting_[which - 1].get();
    const auto first = which > around ? which - around : 0;
    for (auto i = first; i < std::min(waiting_.size(), which + around + 1); ++i)
        if (i != which && nearInTime(judged, *waiting_[i]))
            scene.near.push_back(waiting_[i].get());
    scene.box = box_;
    scene.settings = &settings_;
    done_(judged, slipOf(judged, scene, model_));
}

void SlipWindow::take(JudgedHandOver judged)
{
    waiting_.push_back(std::make_unique<JudgedHandOver>(std::move(judged)));
    if (waiting_.size() > answered_ + around)
        answer(answered_++);
    if (answered_ > around) {
        waiting_.pop_front();
        --answered_;
    }
}

void SlipWindow::finish()
{
    while (answered_ < waiting_.size())
        answer(answered_++);
    waiting_.clear();
    answered_ = 0;
}

} // namespace quarterstep
