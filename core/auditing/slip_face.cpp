// SPDX-License-Identifier: GPL-3.0-or-later
// Slips in which the pair on the face is not the pair of the record: another line, another way up, off its
// label; and the pair that was given once and recorded twice. A focimeter reading, acuity with the pair,
// counts and returns speak of it; where none does, nothing is concluded. (Over 300 lines: one class, whose
// hypotheses share the densities worked out once.)
#include "core/auditing/slip_parts.hpp"

#include "core/joined.hpp"
#include "core/optics/power_vector.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

using S = SlipKind;
using Powers = PerEye<SpheroCylinder>;

constexpr double withinReach = 0.75; ///< D: lines farther from the reading than this are not asked
constexpr double onePower = 0.06;    ///< D
constexpr double enoughCylinder = 0.25;
constexpr double oneEyeShare = 0.4; ///< each eye alone; the rest is both at once
constexpr double bothEyesShare = 0.2;
constexpr double wasBackShare = 0.5; ///< of misplaced pieces: came back lately (common practice)
class Faces
{
  public:
    Faces(const JudgedHandOver& judged, const SlipScene& scene, const SlipModel& model)
        : judged_(judged), scene_(scene), model_(model), recorded_(truthOf(*judged.facts.record)),
          supply_(judged.facts.supply->power), null_(densityWith(supply_))
    {
    }

    std::vector<SlipClass> all()
    {
        recordedTwice();
        if (null_.worst >= worthAsking) {
            turned();
            exchanged();
        }
        if (read())
            otherPieces();
        else
            scannedAsOther();
        offLabel();
        return std::move(classes_);
    }

  private:
    [[nodiscard]] bool read() const
    {
        const auto& later = judged_.facts.later;
        return later && (later->pair.right || later->pair.left);
    }

    /// Readings of the pair and acuities, if these powers were on the face.
    [[nodiscard]] WitnessFit densityWith(const Powers& onFace) const
    {
        auto fit = acuitiesOf(judged_, recorded_, onFace, model_);
        if (!judged_.facts.later)
            return fit;
        for (const Eye eye : bothEyes)
            if (const auto& reading = judged_.facts.later->pair.of(eye)) {
                const auto off = toPowerVector(*reading) - toPowerVector(onFace.of(eye));
                fit.logDensity += logScatter(off, model_.focimeterM, model_.focimeterJ, model_.farShare);
                fit.worst = std::max(fit.worst, squaredDistance(off, model_.focimeterM, model_.focimeterJ));
            }
        return fit;
    }

    [[nodiscard]] double against(double logDensity) const
    {
        return std::exp(std::clamp(logDensity - null_.logDensity, -600.0, 600.0));
    }

    [[nodiscard]] SlipMember member(SlipKind kind, double share, const Powers& onFace,
                                    std::optional<Eye> eye = {}) const
    {
        return {kind, eye, model_.priorOf(kind) * share, against(densityWith(onFace).logDensity), 1.0};
    }

    void add(std::vector<SlipMember> members, Sentence detail, std::string other = {})
    {
        SlipClass group;
        group.members = std::move(members);
        group.detail = std::move(detail);
        group.other = std::move(other);
        classes_.push_back(std::move(group));
    }

    [[nodiscard]] const StockLine* lineNamed(const std::string& name) const
    {
        const auto found = std::find_if(scene_.box.lines.begin(), scene_.box.lines.end(),
                                        [&](const StockLine& line) { return line.name == name; });
        return found == scene_.box.lines.end() ? nullptr : &*found;
    }

    /// The line of an eye; of a ready-made pair both are the same.
    [[nodiscard]] const StockLine* lineOf(Eye eye) const
    {
        for (const auto& movement : judged_.facts.movements) {
            const bool its = movement.part == (eye == Eye::right ? "right" : "left");
            if (its || judged_.facts.movements.size() == 1)
                return lineNamed(movement.line);
        }
        return nullptr;
    }

    [[nodiscard]] double counted(const std::string& line, int expected) const
    {
        return countFactor(scene_, line, judged_.facts.atMs, expected, model_);
    }

    /// The same lines for the same person and purpose within days, and only one pair gone from the box.
    void recordedTwice()
    {
        const auto* earlier = scene_.earlier;
        if (earlier == nullptr || earlier->movements != judged_.facts.movements)
            return;
        SlipMember twice{
            S::recordedTwice, {}, model_.priorOf(S::recordedTwice), 1.0, 1.0 / model_.secondPair};
        for (const auto& movement : judged_.facts.movements)
            twice.witnesses *= counted(movement.line, 1);
        add({twice},
            {QS_SAY("core", "entry %1 records the same pair for the same purpose"), {earlier->entry}},
            earlier->entry);
    }

    /// One lens or both with the axis elsewhere: crossed, mirrored, or as it lay.
    void turned()
    {
        if (judged_.facts.movements.size() != 3)
            return;
        const auto axis = [](const SpheroCylinder& power, int form) {
            const double was = power.axis.value();
            const double is = form == 0 ? was + 90.0 : form == 1 ? 180.0 - was : 180.0;
            const double folded = std::fmod(is + 360.0, 180.0);
            return SpheroCylinder{power.sphere, power.cylinder, AxisDegrees{folded <= 0.0 ? 180.0 : folded}};
        };
        for (int form = 0; form < 3; ++form)
            for (const auto eye :
                 {std::optional(Eye::right), std::optional(Eye::left), std::optional<Eye>()}) {
                auto onFace = supply_;
                bool any = false;
                for (const Eye each : bothEyes)
                    if ((!eye || *eye == each) &&
                        std::abs(supply_.of(each).cylinder.value()) >= enoughCylinder) {
                        onFace.of(each) = axis(supply_.of(each), form);
                        any = any || !(onFace.of(each) == supply_.of(each));
                    }
                if (any)
                    addTurned(onFace, member(S::axisTurnedMounting, (eye ? oneEyeShare : bothEyesShare) / 3.0,
                                             onFace, eye));
            }
    }

    void addTurned(const Powers& onFace, const SlipMember& member)
    {
        for (std::size_t i = 0; i < turned_.size(); ++i)
            if (sameFinals(turned_[i].first, onFace)) {
                classes_[turned_[i].second].members.push_back(member);
                return;
            }
        turned_.emplace_back(onFace, classes_.size());
        add({member}, {QS_SAY("core", "recorded %1; what was read fits %2"),
                       {finalsText(supply_), finalsText(onFace)}});
    }

    void exchanged()
    {
        const Powers other{supply_.left, supply_.right};
        if (judged_.facts.movements.size() == 3 && !sameFinals(other, supply_))
            add({member(S::lensesExchanged, 1.0, other)},
                {QS_SAY("core", "recorded %1; what was read fits %2"),
                 {finalsText(supply_), finalsText(other)}});
    }

    /// Whether anything read of an eye is far from the record and near this power.
    [[nodiscard]] bool inReach(const std::optional<SpheroCylinder>& reading,
                               const SpheroCylinder& power) const
    {
        return reading && blurStrength(toPowerVector(*reading) - toPowerVector(power)) <= withinReach;
    }

    /// The reading says which line the piece is of: it lay in the wrong bin, was taken from the bin beside,
    /// or is the pair meant and another was scanned.
    void otherPieces()
    {
        if (null_.worst < worthAsking)
            return;
        const bool lenses = judged_.facts.movements.size() == 3;
        for (const Eye eye : bothEyes) {
            const auto* recorded = lineOf(eye);
            const auto& reading = judged_.facts.later->pair.of(eye);
            if (recorded == nullptr || !reading || (!lenses && eye == Eye::left))
                continue;
            double alike = 0.0;
            double back = 0.0;
            for (const auto& line : scene_.box.lines) {
                alike += line.kind == recorded->kind ? 1.0 : 0.0;
                back += line.kind == recorded->kind && cameBack(line) ? 1.0 : 0.0;
            }
            for (const auto& line : scene_.box.lines)
                if (line.kind == recorded->kind && &line != recorded)
                    otherPiece(eye, *recorded, line, wasBack(line, back) + (1.0 - wasBackShare) / alike);
        }
    }

    [[nodiscard]] bool cameBack(const StockLine& line) const
    {
        return scene_.lines != nullptr && scene_.lines->cameBack(line.name, judged_.facts.atMs);
    }

    [[nodiscard]] double wasBack(const StockLine& line, double all) const
    {
        return cameBack(line) ? wasBackShare / all : 0.0;
    }

    void otherPiece(Eye eye, const StockLine& recorded, const StockLine& line, double share)
    {
        auto onFace = supply_;
        if (judged_.facts.movements.size() == 1) {
            onFace = line.power;
        } else {
            onFace.of(eye) = line.power.of(eye);
            if (line.anyAxis)
                onFace.of(eye).axis = supply_.of(eye).axis;
        }
        if (sameFinals(onFace, supply_) || !inReach(judged_.facts.later->pair.of(eye), onFace.of(eye)))
            return;
        const auto which = judged_.facts.movements.size() == 3 ? std::optional(eye) : std::nullopt;
        const double counts = counted(recorded.name, 1) * counted(line.name, -1);
        std::vector<SlipMember> members{member(S::returnedWrongBin, share, onFace, which)};
        if (besides(recorded.bin, line.bin))
            members.push_back(member(S::neighbouringBin, 0.5, onFace, which));
        auto scanned = member(S::otherLineScanned, 1.0, onFace, which);
        scanned.pair = scannedPair(onFace);
        if (scanned.pair > 0.0)
            members.push_back(scanned);
        for (auto& each : members)
            each.witnesses *= counts;
        for (auto& [powers, place] : pieces_)
            if (sameFinals(powers, onFace)) {
                auto& known = classes_[place].members;
                known.insert(known.end(), members.begin(), members.end());
                return;
            }
        pieces_.emplace_back(onFace, classes_.size());
        add(std::move(members),
            {QS_SAY("core", "what was read fits %1; the record says %2"), {line.name, recorded.name}});
    }

    /// P(this was given and another scanned) against P(pair recorded | null); nought where it does not fit.
    [[nodiscard]] double scannedPair(const Powers& onFace) const
    {
        auto supply = *judged_.facts.supply;
        supply.power = onFace;
        const auto fit = judge(*judged_.need, supply, *judged_.profile);
        if (!fit.acceptable() || fit.cost > judged_.fit->cost)
            return 0.0;
        return model_.suggestedGiven / linesToPickFrom /
               givenWhenMeant(judged_, judged_.suggested, *judged_.fit, model_);
    }

    /// Without a reading: the pair suggested may have been given, and another line scanned.
    void scannedAsOther()
    {
        if (judged_.suggested || !judged_.best || !scanWitnessed(judged_, scene_))
            return;
        auto scanned = member(S::otherLineScanned, 1.0, judged_.best->supply.power);
        scanned.pair = model_.suggestedGiven / linesToPickFrom /
                       givenWhenMeant(judged_, judged_.suggested, *judged_.fit, model_);
        for (const auto& name : judged_.bestLines)
            if (!given(name))
                scanned.witnesses *= counted(name, -1);
        for (const auto& movement : judged_.facts.movements)
            if (std::find(judged_.bestLines.begin(), judged_.bestLines.end(), movement.line) ==
                judged_.bestLines.end())
                scanned.witnesses *= counted(movement.line, 1);
        add({scanned}, {QS_SAY("core", "%1 may have been given and another line recorded"),
                        {joined(judged_.bestLines, " + ")}});
    }

    [[nodiscard]] bool given(const std::string& name) const
    {
        return std::any_of(judged_.facts.movements.begin(), judged_.facts.movements.end(),
                           [&](const Movement& movement) { return movement.line == name; });
    }

    void offLabel()
    {
        const auto& movements = judged_.facts.movements;
        const auto told = [&](const std::string& line, double logDensity, std::optional<Eye> eye) {
            SlipMember off{S::lineOffLabel, eye, model_.priorOf(S::lineOffLabel), against(logDensity), 1.0};
            off.witnesses *= lineOffFactor(judged_, scene_, line, model_);
            add({off}, {QS_SAY("core", "line %1 may be off its label"), {line}});
        };
        const bool aside = scene_.lines != nullptr && !movements.empty() &&
                           scene_.lines->putAside(movements.front().line, judged_.facts.atMs);
        if (!read()) {
            if (aside && movements.size() == 1)
                told(movements.front().line, null_.logDensity, {});
            return;
        }
        if (null_.worst < worthAsking)
            return;
        if (movements.size() == 1)
            return told(movements.front().line, logOffLabel(judged_, recorded_, {true, true}, model_), {});
        for (const auto& movement : movements)
            if (movement.part == "right" || movement.part == "left")
                told(movement.line,
                     logOffLabel(judged_, recorded_, {movement.part == "right", movement.part == "left"},
                                 model_),
                     movement.part == "right" ? Eye::right : Eye::left);
    }

    const JudgedHandOver& judged_;
    const SlipScene& scene_;
    const SlipModel& model_;
    Truth recorded_;
    Powers supply_;
    WitnessFit null_;
    std::vector<SlipClass> classes_;
    std::vector<std::pair<Powers, std::size_t>> turned_; ///< what was on the face, and its class
    std::vector<std::pair<Powers, std::size_t>> pieces_;
};

} // namespace

std::vector<SlipClass> faceClasses(const JudgedHandOver& judged, const SlipScene& scene,
                                   const SlipModel& model)
{
    return Faces(judged, scene, model).all();
}

} // namespace quarterstep
