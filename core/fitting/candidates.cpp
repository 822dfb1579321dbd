// SPDX-License-Identifier: GPL-3.0-or-later
// The search: ready-made pairs and frames with two lenses in one stream of rising cost, judged until nothing
// that costs more can enter the short list; then the nearest misses, in circles that widen until there are
// enough.
#include "core/fitting/candidates.hpp"

#include "core/fitting/lens_search.hpp"

#include <algorithm>
#include <deque>
#include <limits>
#include <memory>

namespace quarterstep
{

namespace
{

constexpr double everything = std::numeric_limits<double>::infinity();
constexpr double firstCircle = 0.05; ///< cost of the first look for misses, logMAR
constexpr double lastCircle = 2.0;   ///< beyond it everything is looked at

/// Two powers of ready-made pairs.
struct NearPair {
    double cost = 0.0;
    const StockIndex::PairPower* powers = nullptr;
    bool inReach = false;
};

/// Frames that are the same to the eye, at least one of them usable.
struct Mount {
    StockIndex::Lines frames; ///< usable ones
    std::size_t bench = 0;
};

/// A rack and an axis step: mounts of one bench take the same lenses in the same way.
struct Bench {
    std::size_t rack = 0;
    double axisStep = 0.0;
};

/// Equal to the last bit, not only as written.
bool sameBits(const SpheroCylinder& a, const SpheroCylinder& b)
{
    return a.sphere.value() == b.sphere.value() && a.cylinder.value() == b.cylinder.value() &&
           a.axis.value() == b.axis.value();
}

struct Choices {
    LensChoices right;
    LensChoices left;
};
using ChoicesOfBench = std::vector<std::unique_ptr<Choices>>;

class Search
{
  public:
    explicit Search(const Query& query) : query_(query), ranking_(query)
    {
        findMounts();
        gatherPairs(firstCircle, Beyond::nothing);
        choices_ = choicesWithin(firstCircle);
    }

    CandidateLists run()
    {
        if (query_.need.pairLevel())
            for (const auto& mount : mounts_)
                frames_.emplace_back(query_, mount.frames, choices_[mount.bench]->right,
                                     choices_[mount.bench]->left);
        else
            oneEye([&](const LensChoice& choice, const Supply& supply, const Makings& makings) {
                if (choice.inReach)
                    ranking_.judge(supply, makings);
            });
        rank();
        if (query_.options.misses && (!query_.options.everyRanked || !ranking_.anyAcceptable()))
            findMisses();
        return ranking_.lists();
    }

  private:
    void findMounts();
    void gatherPairs(double circle, Beyond beyond);
    [[nodiscard]] ChoicesOfBench choicesWithin(double circle) const;
    template <class Do>
    void eachGroup(const NearPair& pair, Do act) const;
    template <class Do>
    void oneEye(Do act) const;
    void rank();
    void findMisses();
    void missesWithin();

    const Query& query_;
    Ranking ranking_;
    std::vector<NearPair> pairs_;
    std::vector<Mount> mounts_;
    std::vector<Bench> benches_;
    ChoicesOfBench choices_; ///< of the first circle
    ChoicesOfBench wider_;   ///< of the circle after it
    std::deque<FrameSearch> frames_;
    bool allInReach_ = false;  ///< pairs_ holds what is in reach beyond the circle too
    double done_ = everything; ///< what may rank and costs less was judged
};

void Search::findMounts()
{
    if (query_.need.purpose == Purpose::bifocal)
        return;
    for (const auto& group : query_.index.frames()) {
        Mount mount{query_.usableOf(group.frames), 0};
        if (mount.frames.empty())
            continue;
        const Bench bench{group.rack, query_.stock[mount.frames.front()].axisStep};
        const auto found = std::find_if(benches_.begin(), benches_.end(), [&](const Bench& one) {
            return one.rack == bench.rack && one.axisStep == bench.axisStep;
        });
        mount.bench = static_cast<std::size_t>(found - benches_.begin());
        if (found == benches_.end())
            benches_.push_back(bench);
        mounts_.push_back(std::move(mount));
    }
}

void Search::gatherPairs(double circle, Beyond beyond)
{
    const auto& pairs = query_.index.pairs(query_.need.purpose == Purpose::bifocal);
    const PerEye<Wanted> wanted{query_.wanted(Eye::right), query_.wanted(Eye::left)};
    pairs_.clear();
    for (const auto place : pairs.right.nearPairs(pairs.left, wanted, circle, beyond)) {
        const auto& powers = pairs.powers[place];
        NearPair pair{0.0, &powers, true};
        for (const Eye eye : bothEyes)
            if (query_.need.eyes.of(eye).seeing) {
                const auto& vector = powers.vector.of(eye);
                pair.cost += query_.need.eyes.of(eye).nearPower
                                 ? costOf(query_.need, eye, powers.power.of(eye), powers.addition)
                                 : costOfError(vector - wanted.of(eye).need, wanted.of(eye).forgiven);
                pair.inReach = pair.inReach && wanted.of(eye).takes(vector);
            }
        if (pair.cost <= circle || (pair.inReach && beyond == Beyond::inReach))
            pairs_.push_back(pair);
    }
    std::sort(pairs_.begin(), pairs_.end(),
              [](const NearPair& a, const NearPair& b) { return a.cost < b.cost; });
}

ChoicesOfBench Search::choicesWithin(double circle) const
{
    ChoicesOfBench choices;
    for (const auto& bench : benches_)
        choices.push_back(std::make_unique<Choices>(
            Choices{LensChoices(query_, Eye::right, bench.rack, bench.axisStep, circle),
                    LensChoices(query_, Eye::left, bench.rack, bench.axisStep, circle)}));
    return choices;
}

template <class Do>
void Search::eachGroup(const NearPair& pair, Do act) const
{
    for (const auto group : pair.powers->groups) {
        const auto& lines = query_.index.group(group);
        const auto first = std::find_if(lines.begin(), lines.end(),
                                        [this](std::uint32_t line) { return query_.usable(line); });
        if (first == lines.end())
            continue;
        const auto& line = query_.stock[*first];
        const bool asNoted = sameBits(line.power.right, pair.powers->power.right) &&
                             sameBits(line.power.left, pair.powers->power.left);
        const KnownSupply known{pair.powers->vector, pair.cost};
        act(readyMadeSupply(line, query_.settings), Makings{&lines, nullptr, {nullptr, nullptr}, {}},
            asNoted ? &known : nullptr);
    }
}

/// One seeing eye: the fellow gets a lens of the same lines.
template <class Do>
void Search::oneEye(Do act) const
{
    const Eye eye = query_.need.eyes.left.seeing ? Eye::left : Eye::right;
    const Eye fellow = eye == Eye::right ? Eye::left : Eye::right;
    const auto& choicesOf = wider_.empty() ? choices_ : wider_;
    for (const auto& mount : mounts_) {
        const auto& seeing = eye == Eye::right ? choicesOf[mount.bench]->right : choicesOf[mount.bench]->left;
        const LensRack rack(query_, fellow, benches_[mount.bench].rack, benches_[mount.bench].axisStep);
        for (const auto& choice : seeing.all()) {
            const auto& all = seeing.linesOf(choice);
            const auto lines = query_.usableOf(all);
            const auto power = lines.empty() ? std::nullopt : rack.powerOf(lines);
            if (!power)
                continue;
            Supply supply = frameSupply(query_.stock[mount.frames.front()], query_.settings);
            supply.power.of(eye) = choice.power;
            supply.power.of(fellow) = *power;
            act(choice, supply, Makings{nullptr, &mount.frames, {&all, &all}, supply.power});
        }
    }
}

void Search::rank()
{
    std::size_t place = 0;
    for (;;) {
        const bool gathered = place < pairs_.size();
        FrameSearch* frame = nullptr;
        double cost = gathered ? pairs_[place].cost : allInReach_ ? everything : firstCircle;
        for (auto& one : frames_)
            if (const double next = one.next(); next < cost) {
                cost = next;
                frame = &one;
            }
        if (cost == everything)
            return;
        if (ranking_.settled(cost)) {
            done_ = cost;
            return;
        }
        if (frame != nullptr) {
            frame->takeNext(ranking_);
        } else if (!gathered) {
            gatherPairs(firstCircle, Beyond::inReach);
            allInReach_ = true;
            place = static_cast<std::size_t>(
                std::find_if(pairs_.begin(), pairs_.end(),
                             [](const NearPair& pair) { return pair.cost > firstCircle; }) -
                pairs_.begin());
        } else {
            if (pairs_[place].inReach)
                eachGroup(pairs_[place],
                          [&](const Supply& supply, const Makings& makings, const KnownSupply* known) {
                              ranking_.judge(supply, makings, known);
                          });
            ++place;
        }
    }
}

void Search::missesWithin()
{
    for (const auto& pair : pairs_) {
        if (pair.cost > ranking_.missLimit())
            break;
        if (pair.inReach && pair.cost < done_)
            continue;
        eachGroup(pair, [&](const Supply& supply, const Makings& makings, const KnownSupply* known) {
            if (pair.inReach)
                ranking_.judgeForMiss(pair.cost, supply, makings, known);
            else
                ranking_.miss(pair.cost, makings);
        });
    }
    const auto& choices = wider_.empty() ? choices_ : wider_;
    for (std::size_t i = 0; i < frames_.size(); ++i)
        frames_[i].collectMisses(ranking_, choices[mounts_[i].bench]->right, choices[mounts_[i].bench]->left,
                                 done_);
    if (!query_.need.pairLevel())
        oneEye([&](const LensChoice& choice, const Supply& /*supply*/, const Makings& makings) {
            if (!choice.inReach)
                ranking_.miss(choice.cost, makings);
        });
}

void Search::findMisses()
{
    for (double circle = firstCircle;; circle = circle > lastCircle ? everything : 3.0 * circle) {
        ranking_.restartMisses();
        if (circle > firstCircle) {
            gatherPairs(circle, Beyond::nothing);
            wider_ = choicesWithin(circle);
        }
        missesWithin();
        if (ranking_.missLimit() <= circle || circle == everything)
            return;
    }
}

} // namespace

CandidateLists findCandidates(const Need& need, std::span<const StockLine> stock, const Profile& profile,
                              const Settings& settings, const CandidateOptions& options)
{
    std::optional<StockIndex> own;
    const StockIndex& index = options.index != nullptr ? *options.index : own.emplace(stock);
    const Query query{need, stock, index, profile, settings, options};
    return Search(query).run();
}

} // namespace quarterstep
