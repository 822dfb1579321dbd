// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/merge_order.hpp"

#include <algorithm>
#include <tuple>

namespace quarterstep
{

namespace
{

class Merging
{
  public:
    Merging(std::span<const MergeStep> steps, MergeCounts counts, std::set<std::string> known,
            std::map<std::string, std::string> cancelled)
        : steps_(steps), counts_(std::move(counts)), known_(std::move(known)),
          cancelled_(std::move(cancelled))
    {
        for (std::size_t i = 0; i < steps.size(); ++i)
            queues_[steps[i].station].push_back(i);
        for (auto& [station, queue] : queues_)
            std::reverse(queue.begin(), queue.end()); // the next one last
    }

    MergeOrder run()
    {
        for (;;) {
            const auto heads = headsInOrder();
            if (heads.empty())
                return std::move(result_);
            const auto next = std::find_if(heads.begin(), heads.end(), [this](std::size_t head) {
                return obstacleOf(steps_[head]) == MergeObstacle::none;
            });
            if (next == heads.end())
                return stuckAt(heads.front());
            apply(*next);
        }
    }

  private:
    [[nodiscard]] std::vector<std::size_t> headsInOrder() const
    {
        std::vector<std::size_t> heads;
        for (const auto& [station, queue] : queues_)
            if (!queue.empty())
                heads.push_back(queue.back());
        std::sort(heads.begin(), heads.end(), [this](std::size_t a, std::size_t b) {
            return std::tie(steps_[a].atMs, steps_[a].station) < std::tie(steps_[b].atMs, steps_[b].station);
        });
        return heads;
    }

    [[nodiscard]] MergeObstacle obstacleOf(const MergeStep& step)
    {
        if (!step.cancels.empty() && cancelled_.count(step.cancels) > 0)
            return MergeObstacle::takenBackTwice;
        if (!step.cancels.empty() && known_.count(step.cancels) == 0)
            return MergeObstacle::takesBackUnknown;
        return lineBelowZero(step) ? MergeObstacle::belowZero : MergeObstacle::none;
    }

    /// The first line that the step would take below what is there.
    [[nodiscard]] std::optional<SiteLine> lineBelowZero(const MergeStep& step) const
    {
        MergeCounts after;
        for (const auto& movement : step.movements) {
            SiteLine key{step.site, movement.line};
            const auto now = counts_.find(key);
            auto& count = after.emplace(key, now == counts_.end() ? MergeCount{} : now->second).first->second;
            add(count, movement);
            if (count.held < 0 || count.quarantined < 0 || count.onHand < count.held + count.quarantined)
                return key;
        }
        return std::nullopt;
    }

    static void add(MergeCount& count, const Movement& movement)
    {
        count.onHand += movement.delta;
        count.held += movement.held;
        count.quarantined += movement.quarantined;
    }

    void apply(std::size_t index)
    {
        const auto& step = steps_[index];
        for (const auto& movement : step.movements) {
            add(counts_[{step.site, movement.line}], movement);
            if (movement.delta < 0 || movement.held > 0 || movement.quarantined > 0)
                takers_[{step.site, movement.line}][step.station] = step.id;
        }
        known_.insert(step.id);
        if (!step.cancels.empty())
            cancelled_[step.cancels] = step.id;
        result_.order.push_back(index);
        queues_[step.station].pop_back();
    }

    MergeOrder stuckAt(std::size_t index)
    {
        const auto& step = steps_[index];
        result_.step = index;
        result_.obstacle = obstacleOf(step);
        if (result_.obstacle == MergeObstacle::takenBackTwice)
            result_.other = cancelled_.at(step.cancels);
        if (result_.obstacle != MergeObstacle::belowZero)
            return std::move(result_);
        result_.line = *lineBelowZero(step);
        if (const auto takers = takers_.find(result_.line); takers != takers_.end())
            for (const auto& [station, id] : takers->second)
                if (station != step.station || result_.other.empty())
                    result_.other = id;
        return std::move(result_);
    }

    std::span<const MergeStep> steps_;
    MergeCounts counts_;
    std::set<std::string> known_;
    std::map<std::string, std::string> cancelled_;
    std::map<std::string, std::vector<std::size_t>> queues_;        ///< by station
    std::map<SiteLine, std::map<std::string, std::string>> takers_; ///< station -> its last entry that took
    MergeOrder result_;
};

} // namespace

MergeOrder mergeOrder(std::span<const MergeStep> steps, MergeCounts counts, std::set<std::string> known,
                      std::map<std::string, std::string> cancelled)
{
    return Merging(steps, std::move(counts), std::move(known), std::move(cancelled)).run();
}

} // namespace quarterstep
