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

std::vector<std::uint32_t> turningNear(const std::vector<SpheroCylinder>& mounted, const Wanted& wanted,
                                       double cost)
{
    PowerColumns columns;
    for (const auto& power : mounted)
        columns.add(toPowerVector(power));
    return columns.near(wanted, cost);
}

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
    const auto& lenses = query.index.racks()[rack].lenses.of(eye);
    const auto wanted = query.wanted(eye);
    const auto add = [&](const SpheroCylinder& power, const PowerVector& vector) -> LensChoice& {
        const double costs = wanted.judged ? costOfError(vector - wanted.need, wanted.forgiven) : 0.0;
        return choices_.emplace_back(
            LensChoice{power, vector, costs, wanted.takes(vector), nullptr, nullptr, {}, {}});
    };
    std::map<PowerKey, std::size_t> turned;
    std::vector<SpheroCylinder> mounted;
    mounted.reserve(lenses.turning.size());
    for (const auto& lens : lenses.turning)
        mounted.push_back(turnedToMark(lens.power, query.need.eyes.of(eye), axisStep));
    for (const auto place : turningNear(mounted, wanted, cost)) {
        turned.emplace(keyOf(mounted[place]), choices_.size());
        add(mounted[place], toPowerVector(mounted[place])).turning = &lenses.turning[place];
    }
    for (const auto place : lenses.fixedColumns.near(wanted, cost)) {
        const auto& lens = lenses.fixed[place];
        const auto twin = turned.empty() ? turned.end() : turned.find(keyOf(lens.power));
        (twin != turned.end() ? choices_[twin->second] : add(lens.power, lens.vector)).fixed = &lens;
    }
    std::erase_if(choices_, [&](const LensChoice& one) { return !one.inReach && one.cost > cost; });
    std::sort(choices_.begin(), choices_.end(),
              [](const LensChoice& a, const LensChoice& b) { return a.cost < b.cost; });
}

const StockIndex::Lines& LensChoices::linesOf(const LensChoice& choice) const
{
    if (!choice.lines) {
        StockIndex::Lines lines;
        for (const auto* from : {choice.fixed, choice.turning})
            if (from != nullptr)
                for (const auto line : query_.usableOf(from->lines))
                    lines.push_back(line);
        std::sort(lines.begin(), lines.end());
        choice.lines = std::move(lines);
    }
    return *choice.lines;
}

bool LensChoices::passes(const LensChoice& choice) const
{
    if (!choice.passes) {
        Supply supply;
        supply.power = {choice.power, choice.power};
        supply.equalPair = false;
        choice.passes = choice.inReach && !linesOf(choice).empty();
        if (*choice.passes) {
            judgeInto(fit_, alone_, supply, query_.profile);
            choice.passes = fit_.band != Band::fails;
        }
    }
    return *choice.passes;
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
    for (const auto& lens : lenses.turning)
        add(turnedToMark(lens.power, query.need.eyes.of(eye), axisStep), lens);
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

FrameSearch::FrameSearch(const Query& query, StockIndex::Lines frames, const LensChoices& right,
                         const LensChoices& left)
    : query_(query), frames_(std::move(frames)), right_(right), left_(left),
      frame_(frameSupply(query.stock[frames_.front()], query.settings)), need_(query.need),
      placed_(centred(need_, frame_)), reach_(pairReach(need_, placed_, query.profile)),
      gaugesRight_(gauges(Eye::right, right)), gaugesLeft_(gauges(Eye::left, left))
{
    if (reach_.hopeless) {
        narrowed_ = true;
        narrowedFrom_ = -1.0;
    } else if (!right.all().empty() && !left.all().empty()) {
        places_.push({right.all()[0].cost + left.all()[0].cost, 0, 0});
    }
}

std::vector<Gauge> FrameSearch::gauges(Eye eye, const LensChoices& choices) const
{
    const auto& need = need_;
    const auto& centres = *placed_.centres;
    std::vector<std::pair<double, double>> ends{{need.pd.middle(), centres.middle()}};
    if (need.pd.least != need.pd.most || centres.least != centres.most)
        for (const double pd : {need.pd.least, need.pd.most})
            for (const double between : {centres.least, centres.most})
                ends.emplace_back(pd, between);
    const double rise = placed_.heightsDiffer.value_or(0.0) / 2.0;
    const double above = eye == Eye::right ? 0.0 - rise : rise;
    const auto& wanted = need.eyes.of(eye);
    const double needed = toPowerVector(wanted.power).m;
    std::vector<Gauge> all;
    all.reserve(choices.all().size());
    for (const auto& choice : choices.all()) {
        auto& gauge = all.emplace_back();
        gauge.supplied = choice.vector.m;
        gauge.error = gauge.supplied - needed;
        const auto matrix = toPowerMatrix(choice.vector);
        for (std::size_t i = 0; i < ends.size(); ++i) {
            const double nasal = ends[i].second / 2.0 - ends[i].first * need.share.of(eye);
            const auto prism = prismAt(matrix, eye, nasal, above);
            gauge.in[i] = prism.in - wanted.prism.in;
            if (i == 0) // vertical prism is judged at the nominal PD
                gauge.up = prism.up - wanted.prism.up;
        }
    }
    return all;
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
    const auto& rights = right_.all();
    const auto& lefts = left_.all();
    const auto push = [&](std::size_t right, std::size_t left) {
        if (right < rights.size() && left < lefts.size())
            places_.push({rights[right].cost + lefts[left].cost, static_cast<std::uint32_t>(right),
                          static_cast<std::uint32_t>(left)});
    };
    if (place.left == 0)
        push(place.right + 1U, 0);
    if (right_.passes(rights[place.right]))
        push(place.right, place.left + 1U);
}

void FrameSearch::takeNext(Ranking& ranking)
{
    const Place place = places_.top();
    places_.pop();
    if (!narrowed_) {
        narrowedFrom_ = place.cost;
        advance(place);
    }
    const auto& right = right_.all()[place.right];
    const auto& left = left_.all()[place.left];
    if (!right_.passes(right) || !left_.passes(left)) {
        ++visits_;
        return;
    }
    if (canPass(gaugesRight_[place.right], gaugesLeft_[place.left])) {
        visits_ += ranking.judge(supplyOf(right, left), makingsOf(right, left)) ? 0 : 1;
        return;
    }
    ++visits_;
    if (ranking.failsNear(place.cost))
        ranking.fail(place.cost, supplyOf(right, left), makingsOf(right, left));
}

/// Left lenses by one number of their gauge, and how far it may lie from a number of the right lens.
struct FrameSearch::Window {
    std::vector<std::pair<double, std::uint32_t>> lefts; ///< rising
    double (*middle)(const Gauge& right);
    double width;

    [[nodiscard]] auto range(const Gauge& right) const
    {
        const auto before = [](const auto& left, double number) { return left.first < number; };
        const auto after = [](double number, const auto& left) { return number < left.first; };
        return std::pair{std::lower_bound(lefts.begin(), lefts.end(), middle(right) - width, before),
                         std::upper_bound(lefts.begin(), lefts.end(), middle(right) + width, after)};
    }
};

FrameSearch::Window FrameSearch::windowOf(double (*number)(const Gauge&), double (*middle)(const Gauge&),
                                          double width) const
{
    Window window{{}, middle, width};
    for (std::size_t left = 0; left < left_.all().size(); ++left)
        if (left_.all()[left].inReach)
            window.lefts.emplace_back(number(gaugesLeft_[left]), static_cast<std::uint32_t>(left));
    std::sort(window.lefts.begin(), window.lefts.end());
    return window;
}

void FrameSearch::keepWhatCanPass(double after)
{
    narrowed_ = true;
    const auto& rights = right_.all();
    const Window balance = windowOf([](const Gauge& left) { return left.error; },
                                    [](const Gauge& right) { return right.error; }, reach_.canBalance);
    const Window prism = windowOf([](const Gauge& left) { return left.in[0]; },
                                  [](const Gauge& right) { return 0.0 - right.in[0]; }, reach_.canTurnIn);
    std::vector<Place> kept;
    for (std::size_t right = 0; right < rights.size(); ++right) {
        if (!rights[right].inReach)
            continue;
        const auto& gauge = gaugesRight_[right];
        const auto byBalance = balance.range(gauge);
        const auto byPrism = prism.range(gauge);
        const bool fewer = byPrism.second - byPrism.first < byBalance.second - byBalance.first;
        const auto [first, last] = fewer ? byPrism : byBalance;
        for (auto left = first; left != last; ++left) {
            const auto place = left->second;
            const double cost = rights[right].cost + left_.all()[place].cost;
            if (cost > after && canPass(gauge, gaugesLeft_[place]) && right_.passes(rights[right]) &&
                left_.passes(left_.all()[place]))
                kept.push_back({cost, static_cast<std::uint32_t>(right), place});
        }
    }
    places_ = decltype(places_)(std::greater<>{}, std::move(kept));
}

void FrameSearch::collectMisses(Ranking& ranking, const LensChoices& right, const LensChoices& left,
                                double done) const
{
    const auto& rights = right.all();
    const auto& lefts = left.all();
    if (lefts.empty())
        return;
    const bool wider = &right != &right_;
    const auto gaugesRight = wider ? gauges(Eye::right, right) : std::vector<Gauge>{};
    const auto gaugesLeft = wider ? gauges(Eye::left, left) : std::vector<Gauge>{};
    const auto& ofRight = wider ? gaugesRight : gaugesRight_;
    const auto& ofLeft = wider ? gaugesLeft : gaugesLeft_;
    for (std::size_t i = 0; i < rights.size(); ++i) {
        if (rights[i].cost + lefts[0].cost > ranking.missLimit())
            break;
        if (right.linesOf(rights[i]).empty())
            continue;
        const bool rightPasses = right.passes(rights[i]);
        for (std::size_t j = 0; j < lefts.size(); ++j) {
            const double cost = rights[i].cost + lefts[j].cost;
            if (cost > ranking.missLimit())
                break;
            if (!rightPasses || !left.passes(lefts[j])) {
                if (!left.linesOf(lefts[j]).empty())
                    ranking.miss(cost, supplyOf(rights[i], lefts[j]), makingsOf(rights[i], lefts[j]));
                continue;
            }
            const bool can = !reach_.hopeless && canPass(ofRight[i], ofLeft[j]);
            if (narrowed_ && cost > narrowedFrom_ && !can)
                ranking.miss(cost, supplyOf(rights[i], lefts[j]), makingsOf(rights[i], lefts[j]));
            else if (cost >= done && !mustPass(ofRight[i], ofLeft[j]))
                ranking.judgeForMiss(cost, supplyOf(rights[i], lefts[j]), makingsOf(rights[i], lefts[j]));
        }
    }
}

Supply FrameSearch::supplyOf(const LensChoice& right, const LensChoice& left) const
{
    Supply supply = frame_;
    supply.power = {right.power, left.power};
    return supply;
}

Makings FrameSearch::makingsOf(const LensChoice& right, const LensChoice& left) const
{
    return {{}, frames_, {right_.linesOf(right), left_.linesOf(left)}};
}

} // namespace quarterstep
