// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/slip_window.hpp"

#include "core/record/day.hpp"

namespace quarterstep
{

namespace
{

/// A neighbour in time counts only within this, ms: the same camp day.
constexpr std::int64_t sameDay = 12LL * 3'600'000;

bool nearInTime(const JudgedHandOver& one, const JudgedHandOver& other)
{
    return one.facts.site == other.facts.site && std::abs(one.facts.atMs - other.facts.atMs) <= sameDay;
}

} // namespace

std::optional<EarlierHandOver> SlipWindow::earlierThan(const JudgedHandOver& judged)
{
    const auto& facts = judged.facts;
    while (!givenInTime_.empty() &&
           double(facts.atMs - givenInTime_.front().first) > duplicateDays_ * dayMs) {
        const auto old = given_.find(givenInTime_.front().second);
        if (old != given_.end() && old->second.atMs == givenInTime_.front().first)
            given_.erase(old);
        givenInTime_.pop_front();
    }
    if (facts.person.empty())
        return std::nullopt;
    const auto key = facts.person + "\t" + std::to_string(static_cast<int>(facts.purpose));
    auto& place = given_[key];
    auto earlier = place.entry.empty() ? std::nullopt : std::optional(std::move(place));
    place = {facts.entry, facts.atMs, facts.movements};
    givenInTime_.emplace_back(facts.atMs, key);
    return earlier;
}

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
    scene.lines = &lines_;
    const auto earlier = earlierThan(judged);
    scene.earlier = earlier ? &*earlier : nullptr;
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
