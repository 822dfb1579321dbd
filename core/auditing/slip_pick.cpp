// SPDX-License-Identifier: GPL-3.0-or-later
// Picking slips: the record is right, the pair is another one than would be suggested. Asked only where it
// is.
#include "core/auditing/slip_parts.hpp"

#include "core/fitting/need.hpp"
#include "core/fitting/words.hpp"
#include "core/joined.hpp"
#include "core/optics/notation.hpp"
#include "core/optics/power_vector.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace quarterstep
{

namespace
{

using S = SlipKind;

constexpr double samePower = 0.01;     ///< D
constexpr double nearPower = 0.13;     ///< D: a stock step of 0.25 rounded to the nearest
constexpr double enoughCylinder = 0.5; ///< D: a smaller one hardly moves the pick

/// "C4" -> "C", 4; empty number where there is none.
struct BinPlace {
    std::string shelf;
    std::optional<int> number;
};

BinPlace placeOf(const std::string& bin)
{
    std::size_t digits = bin.size();
    while (digits > 0 && std::isdigit(static_cast<unsigned char>(bin[digits - 1])) != 0)
        --digits;
    BinPlace place{bin.substr(0, digits), {}};
    if (digits < bin.size() && bin.size() - digits < 7)
        place.number = std::stoi(bin.substr(digits));
    return place;
}

class Picks
{
  public:
    Picks(const JudgedHandOver& judged, const SlipScene& scene, const SlipModel& model)
        : judged_(judged), scene_(scene), model_(model),
          null_(givenWhenMeant(judged, false, *judged.fit, model))
    {
    }

    std::vector<SlipClass> all()
    {
        if (judged_.best)
            insteadOfBest();
        otherPurpose();
        additionAsNearPower();
        lensesExchanged();
        for (const auto* other : scene_.near)
            exchangedWith(*other);
        return std::move(classes_);
    }

  private:
    [[nodiscard]] SlipMember member(SlipKind kind, double pair) const
    {
        return {kind, {}, model_.priorOf(kind), 1.0, pair / null_};
    }

    [[nodiscard]] const Supply& given() const { return *judged_.facts.supply; }

    [[nodiscard]] std::vector<const StockLine*> givenLines() const
    {
        std::vector<const StockLine*> lines;
        for (const auto& movement : judged_.facts.movements)
            for (const auto& line : scene_.box.lines)
                if (line.name == movement.line)
                    lines.push_back(&line);
        return lines;
    }

    /// The lines of a hand-over as parts; empty where one is not known here.
    [[nodiscard]] std::vector<Part> partsOf(const HandOverFacts& facts) const
    {
        std::vector<Part> parts;
        for (const auto& movement : facts.movements)
            for (std::size_t i = 0; i < scene_.box.lines.size(); ++i)
                if (scene_.box.lines[i].name == movement.line)
                    parts.push_back({i, sideNamed(movement.part)});
        return parts.size() == facts.movements.size() ? parts : std::vector<Part>{};
    }

    /// What these parts are on the face of whoever has this need: a lens that turns is set to this need's
    /// axis.
    [[nodiscard]] std::optional<Supply> supplyFor(const Need& need, std::vector<Part> parts) const
    {
        if (parts.empty() || scene_.settings == nullptr)
            return std::nullopt;
        std::stable_sort(parts.begin(), parts.end(), [](const Part& a, const Part& b) {
            return (a.side == PartSide::frame) > (b.side == PartSide::frame);
        });
        return supplyOf(parts, scene_.box.lines, need, *scene_.settings);
    }

    [[nodiscard]] bool equalPowers() const
    {
        for (const Eye eye : bothEyes) {
            const auto off =
                toPowerVector(given().power.of(eye)) - toPowerVector(judged_.best->supply.power.of(eye));
            if (blurStrength(off) > samePower)
                return false;
        }
        return true;
    }

    /// Whether the mean spheres given are those of somebody who reads the need as sphere plus `part`
    /// cylinders.
    [[nodiscard]] bool readAs(double part) const
    {
        bool any = false;
        for (const Eye eye : bothEyes) {
            const auto& need = judged_.need->eyes.of(eye);
            if (!need.seeing)
                continue;
            const double cylinder = need.power.cylinder.value();
            const double wanted = need.power.sphere.value() + part * cylinder;
            any = any || std::abs(cylinder) >= enoughCylinder;
            if (std::abs(toPowerVector(given().power.of(eye)).m - wanted) > nearPower)
                return false;
        }
        return any;
    }

    /// The pair meant is the one suggested: ways in which another one came into the hand.
    void insteadOfBest()
    {
        SlipClass group;
        const bool equal = equalPowers();
        bool beside = false;
        for (const auto* line : givenLines())
            for (std::size_t i = 0; i < judged_.bestBins.size(); ++i)
                beside =
                    beside || (line->name != judged_.bestLines[i] && besides(line->bin, judged_.bestBins[i]));
        if (beside)
            group.members.push_back(member(S::neighbouringBin, 1.0 / 3.0));
        if (equal)
            group.members.push_back(member(S::otherCentresOrSize, 1.0 / 3.0));
        if (!equal && readAs(0.0))
            group.members.push_back(member(S::cylinderIgnored, model_.suggestedGiven));
        if (!equal && readAs(1.0))
            group.members.push_back(member(S::cylinderAddedWhole, model_.suggestedGiven));
        if (!equal && readAs(-0.5))
            group.members.push_back(member(S::cylinderSubtracted, model_.suggestedGiven));
        if (!scanWitnessed(judged_, scene_))
            group.members.push_back(member(S::otherLineScanned, model_.suggestedGiven / linesToPickFrom));
        group.members.push_back(member(S::otherPick, 1.0 / linesToPickFrom));
        group.detail = {QS_SAY("core", "%1 would be suggested by this record"),
                        {joined(judged_.bestLines, " + ")}};
        classes_.push_back(std::move(group));
    }

    /// Whether a pair fits another need as well as what would be suggested.
    [[nodiscard]] static bool heals(const JudgedHandOver& whose, const Need& need, const Supply& supply)
    {
        const auto fit = judge(need, supply, *whose.profile);
        return fit.acceptable() && (!whose.best || asGoodAs(need, *whose.profile, fit, whose.best->fit));
    }

    void otherPurpose()
    {
        if (scene_.settings == nullptr)
            return;
        for (const auto purpose : {Purpose::distance, Purpose::near}) {
            if (purpose == judged_.facts.purpose)
                continue;
            const auto need = needFor(*judged_.facts.record, purpose, *scene_.settings);
            if (!need)
                continue;
            const auto fit = judge(need.value(), given(), *judged_.profile);
            if (!fit.acceptable())
                continue;
            SlipClass group;
            group.members.push_back(member(S::otherPurpose, model_.suggestedGiven / 2.0));
            if (judged_.facts.purpose == Purpose::near)
                group.members.push_back(member(S::additionLeftOut, model_.suggestedGiven));
            group.detail = {purpose == Purpose::near
                                ? QS_SAY("core", "the pair given fits this person's near need")
                                : QS_SAY("core", "the pair given fits this person's distance "
                                                 "need"),
                            {}};
            classes_.push_back(std::move(group));
        }
    }

    /// The addition taken for the whole near power: a pair of that sphere, whatever the distance power.
    void additionAsNearPower()
    {
        if (judged_.facts.purpose != Purpose::near)
            return;
        bool moved = false;
        for (const Eye eye : bothEyes) {
            const auto& need = judged_.need->eyes.of(eye);
            if (!need.seeing)
                continue;
            if (need.addition <= 0.0 ||
                std::abs(toPowerVector(given().power.of(eye)).m - need.addition) > nearPower)
                return;
            moved = moved || std::abs(toPowerVector(need.power).m - need.addition) > nearPower;
        }
        if (!moved)
            return;
        SlipClass group;
        group.members.push_back(member(S::additionAsNearPower, model_.suggestedGiven));
        group.detail = {QS_SAY("core", "the pair given is a reader of the addition alone"), {}};
        classes_.push_back(std::move(group));
    }

    void lensesExchanged()
    {
        auto parts = partsOf(judged_.facts);
        for (auto& part : parts)
            if (part.side == PartSide::right || part.side == PartSide::left)
                part.side = part.side == PartSide::right ? PartSide::left : PartSide::right;
        std::sort(parts.begin(), parts.end(), [](const Part& a, const Part& b) { return a.side < b.side; });
        const auto turned = supplyFor(*judged_.need, std::move(parts));
        if (!turned || turned->power == given().power || !heals(judged_, *judged_.need, *turned))
            return;
        SlipClass group;
        group.members.push_back(member(S::lensesExchanged, model_.suggestedGiven));
        group.detail = {QS_SAY("core", "with right and left lens exchanged the pair fits"), {}};
        classes_.push_back(std::move(group));
    }

    /// Accepted only where both hand-overs are at odds and both heal.
    void exchangedWith(const JudgedHandOver& other)
    {
        if (other.suggested || !other.fit || other.facts.person == judged_.facts.person)
            return;
        const auto here = supplyFor(*judged_.need, partsOf(other.facts));
        const auto there = supplyFor(*other.need, partsOf(judged_.facts));
        if (!heals(judged_, *judged_.need, here ? *here : *other.facts.supply) ||
            !heals(other, *other.need, there ? *there : given()))
            return;
        const double others = givenWhenMeant(other, false, *other.fit, model_);
        const double both = model_.suggestedGiven * model_.suggestedGiven / others;
        SlipClass group;
        group.members.push_back(member(S::pairsExchanged, both / static_cast<double>(scene_.near.size())));
        group.other = other.facts.entry;
        group.detail = {QS_SAY("core", "the pair given fits the person of entry %1, and that one fits here"),
                        {other.facts.entry}};
        classes_.push_back(std::move(group));
    }

    const JudgedHandOver& judged_;
    const SlipScene& scene_;
    const SlipModel& model_;
    double null_;
    std::vector<SlipClass> classes_;
};

} // namespace

bool besides(const std::string& one, const std::string& other)
{
    const auto a = placeOf(one);
    const auto b = placeOf(other);
    return !one.empty() && a.shelf == b.shelf && a.number && b.number && std::abs(*a.number - *b.number) <= 1;
}

double givenWhenMeant(const JudgedHandOver& judged, bool suggested, const Fit& fit, const SlipModel& model)
{
    if (suggested)
        return model.suggestedGiven;
    if (fit.acceptable() || fit.onTrial()) {
        const auto others = std::max<std::size_t>(1, judged.acceptableGroups);
        return (1.0 - model.suggestedGiven) / static_cast<double>(others);
    }
    return (judged.facts.reasonGiven ? model.outsideWithReason : model.outsideGiven) / linesToPickFrom;
}

std::vector<SlipClass> pickClasses(const JudgedHandOver& judged, const SlipScene& scene,
                                   const SlipModel& model)
{
    if (!judged.fit || !judged.facts.supply || judged.suggested)
        return {};
    return Picks(judged, scene, model).all();
}

} // namespace quarterstep
