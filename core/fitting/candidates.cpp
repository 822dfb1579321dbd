// SPDX-License-Identifier: GPL-3.0-or-later
// Candidates: ready-made pairs, and frame + right lens + left lens; judged by optical group, ordered,
// shortened.
#include "core/fitting/candidates.hpp"

#include "core/fitting/order.hpp"
#include "core/optics/angle.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

namespace quarterstep
{

namespace
{

constexpr std::size_t missesKept = 2; // lens groups that fail in their own eye, kept for the nearest misses

using PowerKey = std::tuple<long, long, long>;

PowerKey keyOf(const SpheroCylinder& power)
{
    const auto form = minusCylinderForm(power);
    return {form.sphere.thousandths(), form.cylinder.thousandths(),
            form.cylinder == Dioptres{} ? 0 : form.axis.thousandths()};
}

long micrometres(const std::optional<double>& millimetres)
{
    return millimetres ? std::lround(*millimetres * 1000.0) : -1;
}

std::optional<double> centresOf(const StockLine& line)
{
    if (line.centres)
        return line.centres;
    if (line.kind == LineKind::frame && line.frame.lens > 0.0)
        return line.frame.lens + line.frame.bridge;
    return {};
}

bool usable(const StockLine& line, const Settings& settings, const CandidateOptions& options)
{
    if (line.origin == Origin::used && !settings.useUsedPairs)
        return false;
    return !options.onlyAvailable || line.available() > 0;
}

void setCentres(const StockLine& line, const Settings& settings, Supply& supply)
{
    const auto centres = centresOf(line);
    supply.centres = centres ? Range{*centres, *centres} : settings.unknownCentres;
    supply.centresAssumed = !centres || line.centresFrom == CentresFrom::assumed;
    supply.heightsDiffer = line.heightsDiffer;
    supply.frameSize = line.frame.sizeClass;
}

Supply readyMadeSupply(const StockLine& line, const Settings& settings)
{
    Supply supply;
    supply.power = line.power;
    supply.bifocalAddition = line.bifocalAddition;
    supply.equalPair = line.equalPowers();
    setCentres(line, settings, supply);
    return supply;
}

/// Axis of the frame's mark nearest to the axis needed, (0, 180].
double nearestMark(double axis, double step)
{
    return foldAxis(step > 0.0 ? std::round(axis / step) * step : axis).value();
}

/// The lens as it will sit: an `any` axis is turned to the nearest mark.
SpheroCylinder mounted(const StockLine& lens, Eye eye, const Need& need, double axisStep)
{
    SpheroCylinder power = lens.power.right;
    if (!lens.anyAxis || power.cylinder == Dioptres{})
        return power;
    const auto wanted = toSpheroCylinder(toPowerVector(need.eyes.of(eye).power));
    const auto given = minusCylinderForm(power);
    if (wanted.cylinder == Dioptres{})
        return {given.sphere, given.cylinder, AxisDegrees{180.0}};
    return {given.sphere, given.cylinder, AxisDegrees{nearestMark(wanted.axis.value(), axisStep)}};
}

bool takesShape(const StockLine& frame, const StockLine& lens)
{
    return std::find(frame.takes.begin(), frame.takes.end(), lens.shape) != frame.takes.end();
}

bool sideAllows(const StockLine& lens, Eye eye)
{
    return lens.side == LensSide::either || (lens.side == LensSide::right) == (eye == Eye::right);
}

/// Everything the search needs to pass along.
struct Search {
    const Need& need;
    std::span<const StockLine> stock;
    const Profile& profile;
    const Settings& settings;
    const CandidateOptions& options;
    std::vector<Candidate> found;
};

void addReadyMade(Search& s)
{
    using Key = std::tuple<PowerKey, PowerKey, long, long, std::string, std::string, long, bool, std::size_t>;
    std::map<Key, std::size_t> groups;
    for (std::size_t i = 0; i < s.stock.size(); ++i) {
        const auto& line = s.stock[i];
        const bool bifocalWanted = s.need.purpose == Purpose::bifocal;
        if (line.kind != LineKind::readyMade || !usable(line, s.settings, s.options) ||
            line.bifocalAddition.has_value() != bifocalWanted)
            continue;
        const Key key{keyOf(line.power.right),
                      keyOf(line.power.left),
                      line.bifocalAddition ? line.bifocalAddition->thousandths() : -1,
                      micrometres(line.centres),
                      line.use,
                      line.frame.sizeClass,
                      micrometres(line.heightsDiffer),
                      line.centresFrom == CentresFrom::assumed,
                      s.options.everyLine ? i : 0};
        const auto [place, fresh] = groups.emplace(key, s.found.size());
        if (!fresh) {
            s.found[place->second].alike.push_back({Part{i, PartSide::pair}});
            continue;
        }
        Candidate candidate;
        candidate.parts = {Part{i, PartSide::pair}};
        candidate.supply = readyMadeSupply(line, s.settings);
        candidate.fit = judge(s.need, candidate.supply, s.profile);
        s.found.push_back(std::move(candidate));
    }
}

/// A lens group for one eye in one frame group: equal mounted power, any line of it.
struct LensChoice {
    SpheroCylinder power;
    std::vector<std::size_t> lines;
    double nearness = 0.0;
    bool fails = false; ///< outside a limit of its own eye, whatever the other eye gets
};

/// Nearness to the need, and whether the eye alone already rules the lens out: with the fellow eye taken
/// away, judge sees the criteria of one eye only, and those do not change when the fellow comes back.
void rate(const Search& s, Eye eye, LensChoice& choice)
{
    const Eye fellow = eye == Eye::right ? Eye::left : Eye::right;
    const Eye judged = s.need.eyes.of(eye).seeing ? eye : fellow; // a balance lens follows the fellow eye
    Need alone = s.need;
    alone.eyes.of(judged == Eye::right ? Eye::left : Eye::right).seeing = false;
    Supply supply;
    supply.power = {choice.power, choice.power};
    supply.equalPair = false;
    choice.nearness = blurStrength(toPowerVector(choice.power) - toPowerVector(s.need.eyes.of(judged).power));
    choice.fails = judge(alone, supply, s.profile).band == Band::fails;
}

std::vector<LensChoice> lensesFor(const Search& s, const StockLine& frame, Eye eye)
{
    std::map<PowerKey, LensChoice> byPower;
    for (std::size_t i = 0; i < s.stock.size(); ++i) {
        const auto& lens = s.stock[i];
        if (lens.kind != LineKind::lens || !usable(lens, s.settings, s.options) || !takesShape(frame, lens) ||
            !sideAllows(lens, eye))
            continue;
        const auto power = mounted(lens, eye, s.need, frame.axisStep);
        auto& choice = byPower[keyOf(power)];
        choice.power = power;
        choice.lines.push_back(i);
    }
    std::vector<LensChoice> choices;
    for (auto& [key, choice] : byPower) {
        rate(s, eye, choice);
        choices.push_back(std::move(choice));
    }
    std::sort(choices.begin(), choices.end(), [](const auto& a, const auto& b) {
        return std::tuple(a.fails, a.nearness, a.lines.front()) <
               std::tuple(b.fails, b.nearness, b.lines.front());
    });
    const auto firstFailing =
        std::find_if(choices.begin(), choices.end(), [](const auto& c) { return c.fails; });
    const auto passing = static_cast<std::size_t>(firstFailing - choices.begin());
    choices.resize(std::min(choices.size(), passing + missesKept));
    return choices;
}

/// Lines for right and left, one line serving both only with two lenses in it.
std::vector<std::pair<std::size_t, std::size_t>> linePairs(const Search& s, const LensChoice& right,
                                                           const LensChoice& left)
{
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    for (const std::size_t r : right.lines)
        for (const std::size_t l : left.lines)
            if (r != l || !s.options.onlyAvailable || s.stock[r].available() >= 2)
                pairs.emplace_back(r, l);
    return pairs;
}

double mountedAxisOf(const StockLine& lens, const SpheroCylinder& power)
{
    return lens.anyAxis && power.cylinder != Dioptres{} ? power.axis.value() : 0.0;
}

void addMounted(Search& s, const std::vector<std::size_t>& frames, const LensChoice& right,
                const LensChoice& left)
{
    const auto pairs = linePairs(s, right, left);
    if (pairs.empty())
        return;
    Candidate candidate;
    candidate.supply.power = {right.power, left.power};
    candidate.supply.equalPair = false;
    setCentres(s.stock[frames.front()], s.settings, candidate.supply);
    candidate.fit = judge(s.need, candidate.supply, s.profile);
    candidate.mountedAxis = {mountedAxisOf(s.stock[pairs.front().first], right.power),
                             mountedAxisOf(s.stock[pairs.front().second], left.power)};
    for (const std::size_t frame : frames)
        for (const auto& [r, l] : pairs) {
            std::vector<Part> parts{{frame, PartSide::frame}, {r, PartSide::right}, {l, PartSide::left}};
            if (candidate.parts.empty()) {
                candidate.parts = std::move(parts);
            } else if (s.options.everyLine) {
                Candidate other = candidate;
                other.parts = std::move(parts);
                s.found.push_back(std::move(other));
            } else {
                candidate.alike.push_back(std::move(parts));
            }
        }
    s.found.push_back(std::move(candidate));
}

void addPrefabricated(Search& s)
{
    if (s.need.purpose == Purpose::bifocal)
        return;
    using Key = std::tuple<long, std::string, std::set<std::string>, long, long, bool>;
    std::map<Key, std::vector<std::size_t>> frameGroups;
    for (std::size_t i = 0; i < s.stock.size(); ++i) {
        const auto& line = s.stock[i];
        if (line.kind == LineKind::frame && usable(line, s.settings, s.options))
            frameGroups[{micrometres(centresOf(line)), line.frame.sizeClass,
                         std::set<std::string>(line.takes.begin(), line.takes.end()),
                         std::lround(line.axisStep * 1000), micrometres(line.heightsDiffer),
                         line.centresFrom == CentresFrom::assumed}]
                .push_back(i);
    }
    for (const auto& [key, frames] : frameGroups) {
        const auto& frame = s.stock[frames.front()];
        const auto rights = lensesFor(s, frame, Eye::right);
        const auto lefts = lensesFor(s, frame, Eye::left);
        for (const auto& right : rights)
            for (const auto& left : lefts)
                if (s.need.pairLevel() || right.lines == left.lines)
                    addMounted(s, frames, right, left);
    }
}

} // namespace

CandidateLists findCandidates(const Need& need, std::span<const StockLine> stock, const Profile& profile,
                              const Settings& settings, const CandidateOptions& options)
{
    Search search{need, stock, profile, settings, options, {}};
    addReadyMade(search);
    addPrefabricated(search);
    CandidateLists lists = orderCandidates(need, stock, profile, options, std::move(search.found));
    for (auto* list : {&lists.ranked, &lists.misses})
        for (auto& candidate : *list)
            nameSources(candidate.fit, profile);
    return lists;
}

std::optional<Supply> supplyOf(std::span<const Part> parts, std::span<const StockLine> stock,
                               const Need& need, const Settings& settings)
{
    if (parts.size() == 1 && parts[0].side == PartSide::pair && parts[0].line < stock.size() &&
        stock[parts[0].line].kind == LineKind::readyMade)
        return readyMadeSupply(stock[parts[0].line], settings);
    const StockLine* frame = nullptr;
    PerEye<const StockLine*> lens{nullptr, nullptr};
    for (const auto& part : parts) {
        if (part.line >= stock.size())
            return {};
        const auto& line = stock[part.line];
        if (part.side == PartSide::frame && line.kind == LineKind::frame)
            frame = &line;
        if ((part.side == PartSide::right || part.side == PartSide::left) && line.kind == LineKind::lens)
            lens.of(part.side == PartSide::right ? Eye::right : Eye::left) = &line;
    }
    if (parts.size() != 3 || frame == nullptr || lens.right == nullptr || lens.left == nullptr)
        return {};
    Supply supply;
    supply.equalPair = false;
    for (const Eye eye : bothEyes) {
        if (!takesShape(*frame, *lens.of(eye)) || !sideAllows(*lens.of(eye), eye))
            return {};
        supply.power.of(eye) = mounted(*lens.of(eye), eye, need, frame->axisStep);
    }
    setCentres(*frame, settings, supply);
    return supply;
}

} // namespace quarterstep
