// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/lens_search.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace quarterstep
{

namespace
{

constexpr std::size_t patience = 200; ///< visits in vain after which only what can pass is looked for

/// The frame as it is judged; a need that takes every pair as centred gets the PD of this one.
Supply centred(Need& need, Supply frame)
{
    followCentres(need, frame);
    return frame;
}

} // namespace

LensChoices::LensChoices(const Query& query, Eye eye, std::size_t rack, double axisStep, double cost)
    : query_(query), eye_(eye), alone_(query.need)
{
    alone_.eyes.of(eye == Eye::right ? Eye::left : Eye::right).seeing = false;
    if (query.need.pairLevel())
        alone_.meanSphereLoss.reset(); // asks whether both lenses are spheres
    gather(query.index.racks()[rack].lenses.of(eye), query.wanted(eye), axisStep, cost);
    byCost_.reserve(choices_.size());
    for (std::size_t i = 0; i < choices_.size(); ++i)
        byCost_.emplace_back(choices_[i].cost, static_cast<std::uint32_t>(i));
    passes_.resize(choices_.size(), Passes::unknown);
}

void LensChoices::gather(const StockIndex::Lenses& lenses, const Wanted& wanted, double axisStep, double cost)
{
    const auto add = [&](const SpheroCylinder& power, const PowerVector& vector) -> LensChoice* {
        const double costs = wanted.judged ? costOfError(vector - wanted.need, wanted.forgiven) : 0.0;
        const bool inReach = wanted.takes(vector);
        if (!inReach && costs > cost)
            return nullptr;
        return &choices_.emplace_back(LensChoice{power, vector, costs, inReach, nullptr, nullptr});
    };
    std::map<PowerKey, std::size_t> turned;
    if (!lenses.turning.empty()) {
        const AxisDegrees mark = markFor(query_.need.eyes.of(eye_), axisStep);
        PowerColumns columns;
        std::vector<SpheroCylinder> mounted;
        mounted.reserve(lenses.turning.size());
        for (const auto& lens : lenses.turning) {
            mounted.push_back({lens.power.sphere, lens.power.cylinder, mark});
            columns.add(toPowerVector(mounted.back()));
        }
        for (const auto place : columns.near(wanted, cost))
            if (auto* choice = add(mounted[place], toPowerVector(mounted[place]))) {
                turned.emplace(keyOf(mounted[place]), choices_.size() - 1);
                choice->turning = &lenses.turning[place];
            }
    }
    const auto places = lenses.fixedColumns.near(wanted, cost);
    choices_.reserve(choices_.size() + places.size());
    for (const auto place : places) {
        const auto& lens = lenses.fixed[place];
        const auto twin = turned.empty() ? turned.end() : turned.find(keyOf(lens.power));
        if (auto* choice = twin != turned.end() ? &choices_[twin->second] : add(lens.power, lens.vector))
            choice->fixed = &lens;
    }
}

std::uint32_t LensChoices::placeOf(std::size_t rank) const
{
    constexpr std::size_t fewest = 32;
    if (rank >= sorted_) {
        const auto to = std::min(byCost_.size(), std::max(fewest, 2 * (rank + 1)));
        const auto at = [&](std::size_t place) {
            return byCost_.begin() + static_cast<std::ptrdiff_t>(place);
        };
        if (to < byCost_.size())
            std::nth_element(at(sorted_), at(to), byCost_.end());
        std::sort(at(sorted_), at(to));
        sorted_ = to;
    }
    return byCost_[rank].second;
}

const StockIndex::Lines& LensChoices::linesOf(const LensChoice& choice) const
{
    if (choice.fixed == nullptr || choice.turning == nullptr)
        return choice.fixed != nullptr ? choice.fixed->lines : choice.turning->lines;
    auto& lines = merged_[&choice];
    if (lines.empty())
        std::merge(choice.fixed->lines.begin(), choice.fixed->lines.end(), choice.turning->lines.begin(),
                   choice.turning->lines.end(), std::back_inserter(lines));
    return lines;
}

bool LensChoices::usable(const LensChoice& choice) const
{
    return (choice.fixed != nullptr && query_.anyUsable(choice.fixed->lines)) ||
           (choice.turning != nullptr && query_.anyUsable(choice.turning->lines));
}

bool LensChoices::passes(std::uint32_t place) const
{
    auto& passes = passes_[place];
    if (passes == Passes::unknown) {
        const auto& choice = choices_[place];
        bool good = choice.inReach && usable(choice);
        if (good) {
            Supply supply;
            supply.power = {choice.power, choice.power};
            supply.equalPair = false;
            const KnownSupply known{{choice.vector, choice.vector}, choice.cost};
            judgeBriefly(fit_, alone_, supply, query_.profile, &known);
            good = fit_.band != Band::fails;
        }
        passes = good ? Passes::yes : Passes::no;
    }
    return passes == Passes::yes;
}

LensRack::LensRack(const Query& query, Eye eye, std::size_t rack, double axisStep)
{
    const auto& lenses = query.index.racks()[rack].lenses.of(eye);
    std::map<PowerKey, Group> byPower;
    const auto add = [&](const SpheroCylinder& power, const StockIndex::LensPower& lens) {
        auto& group = byPower.try_emplace(keyOf(power), Group{power, {}}).first->second;
        for (const auto line : query.usableOf(lens.lines))
            group.lines.push_back(line);
    };
    const AxisDegrees mark = markFor(query.need.eyes.of(eye), axisStep);
    for (const auto& lens : lenses.turning)
        add({lens.power.sphere, lens.power.cylinder, mark}, lens);
    for (const auto& lens : lenses.fixed)
        add(lens.power, lens);
    for (auto& [key, group] : byPower) {
        std::sort(group.lines.begin(), group.lines.end());
        if (!group.lines.empty())
            groups_.push_back(std::move(group));
    }
    std::sort(groups_.begin(), groups_.end(),
              [](const Group& a, const Group& b) { return a.lines.front() < b.lines.front(); });
}

std::optional<SpheroCylinder> LensRack::powerOf(const StockIndex::Lines& lines) const
{
    const auto found =
        std::lower_bound(groups_.begin(), groups_.end(), lines.front(),
                         [](const Group& group, std::uint32_t line) { return group.lines.front() < line; });
    if (found == groups_.end() || found->lines != lines)
        return {};
    return found->power;
}

Gauges::Gauges(const Need& need, const Supply& placed, Eye eye, const LensChoices& choices)
    : choices_(choices), wanted_(need.eyes.of(eye)), eye_(eye), needed_(toPowerVector(wanted_.power).m),
      all_(choices.size()), known_(choices.size(), 0)
{
    const auto& centres = *placed.centres;
    const double share = need.share.of(eye);
    nasal_[0] = centres.middle() / 2.0 - need.pd.middle() * share;
    if (need.pd.least != need.pd.most || centres.least != centres.most)
        for (const double pd : {need.pd.least, need.pd.most})
            for (const double between : {centres.least, centres.most})
                nasal_.at(ends_++) = between / 2.0 - pd * share;
    const double rise = placed.heightsDiffer.value_or(0.0) / 2.0;
    above_ = eye == Eye::right ? 0.0 - rise : rise;
}

const Gauge& Gauges::of(std::uint32_t place) const
{
    auto& gauge = all_[place];
    if (known_[place] != 0)
        return gauge;
    known_[place] = 1;
    const auto& vector = choices_.all()[place].vector;
    gauge.supplied = vector.m;
    gauge.error = gauge.supplied - needed_;
    const auto matrix = toPowerMatrix(vector);
    for (std::size_t i = 0; i < ends_; ++i) {
        const auto prism = prismAt(matrix, eye_, nasal_.at(i), above_);
        gauge.in[i] = prism.in - wanted_.prism.in;
        if (i == 0) // vertical prism is judged at the nominal PD
            gauge.up = prism.up - wanted_.prism.up;
    }
    return gauge;
}

FrameSearch::FrameSearch(const Query& query, const StockIndex::Lines& frames, const LensChoices& right,
                         const LensChoices& left)
    : query_(query), frames_(frames), right_(right), left_(left),
      frame_(frameSupply(query.stock[frames_.front()], query.settings)), need_(query.need),
      placed_(centred(need_, frame_)), reach_(pairReach(need_, placed_, query.profile)),
      gaugesRight_(need_, placed_, Eye::right, right), gaugesLeft_(need_, placed_, Eye::left, left)
{
    if (reach_.hopeless) {
        narrowed_ = true;
        narrowedFrom_ = -1.0;
    } else if (right.size() > 0 && left.size() > 0) {
        places_.push({right.byCost(0).cost + left.byCost(0).cost, 0, 0});
    }
}

bool FrameSearch::canPass(const Gauge& right, const Gauge& left) const
{
    return std::abs(right.error - left.error) <= reach_.canBalance &&
           std::abs(right.supplied - left.supplied) <= reach_.canDiffer &&
           std::abs(right.in[0] + left.in[0]) <= reach_.canTurnIn &&
           std::abs(right.up - left.up) <= reach_.canTurnUp;
}

bool FrameSearch::mustPass(const Gauge& right, const Gauge& left) const
{
    if (reach_.unsure || std::abs(right.error - left.error) > reach_.mustBalance ||
        std::abs(right.supplied - left.supplied) > reach_.mustDiffer ||
        std::abs(right.up - left.up) > reach_.mustTurnUp)
        return false;
    for (std::size_t i = 0; i < std::size(right.in); ++i)
        if (std::abs(right.in[i] + left.in[i]) > reach_.mustTurnIn)
            return false;
    return true;
}

double FrameSearch::next()
{
    if (!narrowed_ && visits_ >= patience && !places_.empty() && places_.top().cost > narrowedFrom_)
        keepWhatCanPass(narrowedFrom_);
    return places_.empty() ? std::numeric_limits<double>::infinity() : places_.top().cost;
}

void FrameSearch::advance(const Place& place)
{
    const auto push = [&](std::size_t right, std::size_t left) {
        if (right < right_.size() && left < left_.size())
            places_.push({right_.byCost(right).cost + left_.byCost(left).cost,
                          static_cast<std::uint32_t>(right), static_cast<std::uint32_t>(left)});
    };
    if (place.left == 0)
        push(place.right + 1U, 0);
    if (right_.passes(right_.placeOf(place.right)))
        push(place.right, place.left + 1U);
}

KnownSupply FrameSearch::mount(const LensChoice& right, const LensChoice& left)
{
    frame_.power = {right.power, left.power};
    return {{right.vector, left.vector}, right.cost + left.cost};
}

void FrameSearch::takeNext(Ranking& ranking)
{
    Place place = places_.top();
    places_.pop();
    if (!narrowed_) {
        narrowedFrom_ = place.cost;
        advance(place);
        place = {place.cost, right_.placeOf(place.right), left_.placeOf(place.left)};
    }
    if (!right_.passes(place.right) || !left_.passes(place.left)) {
        ++visits_;
        return;
    }
    const auto& right = right_.all()[place.right];
    const auto& left = left_.all()[place.left];
    if (canPass(gaugesRight_.of(place.right), gaugesLeft_.of(place.left))) {
        const auto known = mount(right, left);
        visits_ += ranking.judge(frame_, makingsOf(right_, right, left_, left), &known) ? 0 : 1;
        return;
    }
    ++visits_;
    if (ranking.failsNear(place.cost))
        ranking.fail(place.cost, makingsOf(right_, right, left_, left));
}

/// Left lenses by one number of their gauge, and how far it may lie from a number of the right lens.
struct FrameSearch::Window {
    std::vector<std::pair<double, std::uint32_t>> lefts; ///< rising
    double (*middle)(const Gauge& right);
    double width;

    [[nodiscard]] auto range(const Gauge& right) const
    {
        const double low = middle(right) - width;
        const double high = middle(right) + width;
        if (lefts.empty() || low > lefts.back().first || high < lefts.front().first)
            return std::pair{lefts.end(), lefts.end()};
        const auto before = [](const auto& left, double number) { return left.first < number; };
        const auto after = [](double number, const auto& left) { return number < left.first; };
        return std::pair{std::lower_bound(lefts.begin(), lefts.end(), low, before),
                         std::upper_bound(lefts.begin(), lefts.end(), high, after)};
    }
};

/// The difference that leaves out more: its width against how far the left lenses spread in it.
FrameSearch::Window FrameSearch::narrowest() const
{
    Window balance{{}, [](const Gauge& right) { return right.error; }, reach_.canBalance};
    Window prism{{}, [](const Gauge& right) { return 0.0 - right.in[0]; }, reach_.canTurnIn};
    for (std::uint32_t left = 0; left < left_.size(); ++left)
        if (left_.all()[left].inReach) {
            balance.lefts.emplace_back(gaugesLeft_.of(left).error, left);
            prism.lefts.emplace_back(gaugesLeft_.of(left).in[0], left);
        }
    const auto share = [](const Window& window) {
        const auto [least, most] = std::minmax_element(window.lefts.begin(), window.lefts.end());
        return least == window.lefts.end() ? 0.0 : window.width / (most->first - least->first + 1e-9);
    };
    auto& chosen = share(prism) < share(balance) ? prism : balance;
    std::sort(chosen.lefts.begin(), chosen.lefts.end());
    return std::move(chosen);
}

void FrameSearch::keepWhatCanPass(double after)
{
    narrowed_ = true;
    const Window window = narrowest();
    std::vector<Place> kept;
    for (std::uint32_t right = 0; right < right_.size(); ++right) {
        const auto& choice = right_.all()[right];
        if (!choice.inReach)
            continue;
        const auto& gauge = gaugesRight_.of(right);
        const auto [first, last] = window.range(gauge);
        for (auto left = first; left != last; ++left) {
            const double cost = choice.cost + left_.all()[left->second].cost;
            if (cost > after && canPass(gauge, gaugesLeft_.of(left->second)) && right_.passes(right) &&
                left_.passes(left->second))
                kept.push_back({cost, right, left->second});
        }
    }
    places_ = decltype(places_)(std::greater<>{}, std::move(kept));
}

void FrameSearch::collectMisses(Ranking& ranking, const LensChoices& right, const LensChoices& left,
                                double done)
{
    const bool wider = &right != &right_;
    std::optional<Gauges> widerRight;
    std::optional<Gauges> widerLeft;
    const auto& ofRight = wider ? widerRight.emplace(need_, placed_, Eye::right, right) : gaugesRight_;
    const auto& ofLeft = wider ? widerLeft.emplace(need_, placed_, Eye::left, left) : gaugesLeft_;
    for (std::size_t i = 0; i < right.size() && left.size() > 0; ++i) {
        const auto& rightLens = right.byCost(i);
        if (rightLens.cost + left.byCost(0).cost > ranking.missLimit())
            break;
        if (!right.usable(rightLens))
            continue;
        const bool rightPasses = right.passes(right.placeOf(i));
        for (std::size_t j = 0; j < left.size(); ++j) {
            const auto& leftLens = left.byCost(j);
            const double cost = rightLens.cost + leftLens.cost;
            if (cost > ranking.missLimit())
                break;
            const auto makings = [&] { return makingsOf(right, rightLens, left, leftLens); };
            if (!rightPasses || !left.passes(left.placeOf(j))) {
                if (left.usable(leftLens))
                    ranking.miss(cost, makings());
                continue;
            }
            const auto& gaugeRight = ofRight.of(right.placeOf(i));
            const auto& gaugeLeft = ofLeft.of(left.placeOf(j));
            if (narrowed_ && cost > narrowedFrom_ && (reach_.hopeless || !canPass(gaugeRight, gaugeLeft))) {
                ranking.miss(cost, makings());
            } else if (cost >= done && !mustPass(gaugeRight, gaugeLeft)) {
                const auto known = mount(rightLens, leftLens);
                ranking.judgeForMiss(cost, frame_, makings(), &known);
            }
        }
    }
}

Makings FrameSearch::makingsOf(const LensChoices& rights, const LensChoice& right, const LensChoices& lefts,
                               const LensChoice& left) const
{
    return {nullptr, &frames_, {&rights.linesOf(right), &lefts.linesOf(left)}, {right.power, left.power}};
}

} // namespace quarterstep
