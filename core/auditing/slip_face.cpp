// SPDX-License-Identifier: GPL-3.0-or-later
// Slips in which the pair on the face is not the pair of the record: another line, another way up, off its
// label; and the pair that was given once and recorded twice. A focimeter reading, acuity with the pair,
// counts and returns speak of it; where none does, nothing is concluded.
#include "core/auditing/slip_parts.hpp"

#include "core/optics/power_vector.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

using S = SlipKind;
using Powers = PerEye<SpheroCylinder>;

constexpr double worthLooking = 4.0; ///< squared SDs, as for records
constexpr double offLabelM = 0.5;    ///< D: SD of a piece that is off its label (common practice)
constexpr double offLabelJ = 0.2;
constexpr double withinReach = 0.75; ///< D: lines farther from the reading than this are not asked
constexpr double onePower = 0.06;    ///< D
constexpr double enoughCylinder = 0.25;
constexpr double oneEyeShare = 0.4; ///< each eye alone; the rest is both at once
constexpr double bothEyesShare = 0.2;
constexpr double wasBackShare = 0.5;  ///< of misplaced pieces: came back lately (common practice)
constexpr double asideWhenOff = 0.3;  ///< P(line put aside later | it was off), (common practice)
constexpr double asideAnyway = 0.002; ///< P(line put aside later | the piece was right), (common practice)
constexpr double lotOff = 0.5;    ///< P(another piece of the line is off | this one is), (common practice)
constexpr double pieceOff = 0.02; ///< P(another piece is off | this one is right), (common practice)

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
        if (null_.worst >= worthLooking) {
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
        if (null_.worst < worthLooking)
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
        std::string lines;
        for (const auto& name : judged_.bestLines) {
            lines.append(lines.empty() ? "" : " + ").append(name);
            if (!given(name))
                scanned.witnesses *= counted(name, -1);
        }
        for (const auto& movement : judged_.facts.movements)
            if (std::find(judged_.bestLines.begin(), judged_.bestLines.end(), movement.line) ==
                judged_.bestLines.end())
                scanned.witnesses *= counted(movement.line, 1);
        add({scanned}, {QS_SAY("core", "%1 may have been given and another line recorded"), {lines}});
    }

    [[nodiscard]] bool given(const std::string& name) const
    {
        return std::any_of(judged_.facts.movements.begin(), judged_.facts.movements.end(),
                           [&](const Movement& movement) { return movement.line == name; });
    }

    /// Density of J0 and J45 of a piece that is off: its cylinder is right or not, as likely.
    [[nodiscard]] double offCylinder(const PowerVector& off) const
    {
        const auto both = [&](double spread) { return gauss(off.j0, spread) * gauss(off.j45, spread); };
        return 0.5 * both(model_.focimeterJ) + 0.5 * both(offLabelJ);
    }

    /// Density of M of both lenses of a pair that is off: both by as much, or each by its own, as likely.
    [[nodiscard]] double offPair(double right, double left) const
    {
        const double scatter = model_.focimeterM;
        const double alike = gauss((right + left) / 2.0, std::hypot(scatter / std::sqrt(2.0), offLabelM)) *
                             gauss(right - left, scatter * std::sqrt(2.0));
        const double each = std::hypot(scatter, offLabelM);
        return 0.5 * alike + 0.5 * gauss(right, each) * gauss(left, each);
    }

    /// Density of the readings where the lenses of these eyes are off in a way nobody knows.
    [[nodiscard]] double logOff(bool right, bool left) const
    {
        auto onFace = supply_;
        double density = 0.0;
        PerEye<std::optional<double>> spheres;
        for (const Eye eye : bothEyes) {
            const auto& reading = judged_.facts.later->pair.of(eye);
            if (!reading)
                continue;
            const auto off = toPowerVector(*reading) - toPowerVector(supply_.of(eye));
            if (!(eye == Eye::right ? right : left)) {
                density += logScatter(off, model_.focimeterM, model_.focimeterJ, model_.farShare);
                continue;
            }
            density += std::log(offCylinder(off));
            spheres.of(eye) = off.m;
            onFace.of(eye) = *reading;
        }
        if (spheres.right && spheres.left)
            density += std::log(offPair(*spheres.right, *spheres.left));
        else if (spheres.right || spheres.left)
            density += std::log(gauss(spheres.right ? *spheres.right : *spheres.left,
                                      std::hypot(model_.focimeterM, offLabelM)));
        return density + acuitiesOf(judged_, recorded_, onFace, model_).logDensity;
    }

    /// What later quarantine and the readings of the neighbours say of the line.
    [[nodiscard]] double lineFactor(const std::string& line) const
    {
        double factor = 1.0;
        if (scene_.lines != nullptr)
            factor = scene_.lines->putAside(line, judged_.facts.atMs)
                         ? asideWhenOff / asideAnyway
                         : (1.0 - asideWhenOff) / (1.0 - asideAnyway);
        for (const auto* other : scene_.near) {
            const auto& facts = other->facts;
            if (!facts.later || !facts.supply || facts.movements.size() != 1 ||
                facts.movements.front().line != line || !facts.later->pair.right)
                continue;
            const auto off =
                toPowerVector(*facts.later->pair.right) - toPowerVector(facts.supply->power.right);
            const bool far = squaredDistance(off, model_.focimeterM, model_.focimeterJ) > 3.0 * worthLooking;
            factor *= far ? lotOff / pieceOff : (1.0 - lotOff) / (1.0 - pieceOff);
        }
        return factor;
    }

    void offLabel()
    {
        const auto& movements = judged_.facts.movements;
        const auto told = [&](const std::string& line, double logDensity, std::optional<Eye> eye) {
            SlipMember off{S::lineOffLabel, eye, model_.priorOf(S::lineOffLabel), against(logDensity), 1.0};
            off.witnesses *= lineFactor(line);
            add({off}, {QS_SAY("core", "line %1 may be off its label"), {line}});
        };
        const bool aside = scene_.lines != nullptr && !movements.empty() &&
                           scene_.lines->putAside(movements.front().line, judged_.facts.atMs);
        if (!read()) {
            if (aside && movements.size() == 1)
                told(movements.front().line, null_.logDensity, {});
            return;
        }
        if (null_.worst < worthLooking)
            return;
        if (movements.size() == 1)
            return told(movements.front().line, logOff(true, true), {});
        for (const auto& movement : movements)
            if (movement.part == "right" || movement.part == "left")
                told(movement.line, logOff(movement.part == "right", movement.part == "left"),
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

double countFactor(const SlipScene& scene, const std::string& line, std::int64_t atMs, int expected,
                   const SlipModel& model)
{
    constexpr double seen = 0.85; ///< P(the count shows it), (common practice: other slips, other errors)
    const auto difference =
        scene.lines != nullptr ? scene.lines->nextDifference(line, atMs) : std::optional<int>{};
    if (!difference)
        return 1.0;
    if (*difference == 0)
        return (1.0 - seen) / (1.0 - model.countDiffers);
    return *difference * expected > 0 ? seen / (model.countDiffers / 2.0)
                                      : (1.0 - seen) / 2.0 / (model.countDiffers / 2.0);
}

bool scanWitnessed(const JudgedHandOver& judged, const SlipScene& scene)
{
    if (judged.facts.later && (judged.facts.later->pair.right || judged.facts.later->pair.left))
        return true;
    if (judged.facts.acuity)
        return true;
    const auto counted = [&](const std::string& line) {
        return scene.lines != nullptr && scene.lines->nextDifference(line, judged.facts.atMs);
    };
    return std::any_of(judged.bestLines.begin(), judged.bestLines.end(), counted) ||
           std::any_of(judged.facts.movements.begin(), judged.facts.movements.end(),
                       [&](const Movement& movement) { return counted(movement.line); });
}

std::vector<SlipClass> faceClasses(const JudgedHandOver& judged, const SlipScene& scene,
                                   const SlipModel& model)
{
    return Faces(judged, scene, model).all();
}

} // namespace quarterstep
