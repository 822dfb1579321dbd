// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/session/injected_truth.hpp"
#include "tests/session/injected_witnesses.hpp"

#include "core/fitting/stock_index.hpp"
#include "core/optics/boxing.hpp"
#include "core/optics/power_vector.hpp"
#include "inventory/text/rules_file.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep::testing
{

namespace
{

using S = SlipKind;

class Generator
{
  public:
    explicit Generator(const TruthPlan& plan) : plan_(plan), random_(plan.seed) {}

    Truths all()
    {
        for (int round = 0; round < plan_.rounds; ++round)
            for (const auto& survey : surveyPeople())
                one(survey);
        exchange();
        auto lines = measured(random_, cases_, truths_, wasBack_);
        for (auto& each : cases_)
            finish(each, lines);
        return {std::move(cases_), std::move(lines)};
    }

  private:
    double normal(double spread) { return std::normal_distribution<double>(0.0, spread)(random_); }
    double even(double least, double most)
    {
        return std::uniform_real_distribution<double>(least, most)(random_);
    }
    std::size_t anyOf(std::size_t count)
    {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(random_);
    }

    PersonRecord personFrom(const PersonRecord& survey)
    {
        PersonRecord person = survey;
        person.objectiveOnly = false;
        person.person = std::to_string(++number_);
        person.prescriber = "yes";
        person.distancePd = std::round(even(56.0, 68.0));
        person.nearPd.reset();
        if (even(0.0, 1.0) < 0.5)
            person.nearPd = std::round(centrationAt(*person.distancePd, person.working()) + normal(0.6));
        person.vertexMm = 12.0;
        for (const Eye eye : bothEyes) {
            auto& record = person.eyes.of(eye);
            const auto reading = toPowerVector(*record.objective);
            record.final.state = EyeState::measured;
            record.final.asWritten.clear();
            record.final.power =
                writtenAs({reading.m + normal(0.25), reading.j0 + normal(0.12), reading.j45 + normal(0.12)});
            record.worn.reset();
            record.acuity = {};
            record.acuity.best = parseAcuity("6/6").value();
        }
        person.wornAddition.reset();
        person.nearBest.reset();
        const double age = person.age.value_or(30.0);
        person.purpose = Purpose::distance;
        if (age >= 45.0) {
            const double addition = rounded(std::clamp(1.0 + (age - 45.0) * 0.075, 1.0, 2.5), 0.25);
            for (const Eye eye : bothEyes)
                person.eyes.of(eye).addition = Dioptres{addition};
            person.nearBest = parseNearAcuity("N6").value();
            if (even(0.0, 1.0) < 0.6)
                person.wornAddition = Dioptres{rounded(std::max(0.0, addition + normal(0.35)), 0.25)};
            if (even(0.0, 1.0) < 0.5)
                person.purpose = Purpose::near;
        }
        return person;
    }

    [[nodiscard]] std::optional<Candidate> suggestedFor(const PersonRecord& person) const
    {
        MatchOptions options;
        options.candidates.index = &index();
        options.candidates.alike = false;
        const auto answers = recommend(person, truthBox(), defaultRules(), options);
        const auto& answer = answers.front();
        if (answer.verdict != Verdict::stock)
            return std::nullopt;
        return answer.candidates.ranked.front();
    }

    static const StockIndex& index()
    {
        static const StockIndex made{truthBox()};
        return made;
    }

    S drawn()
    {
        double left = even(0.0, 1.0);
        const auto& kinds = slipsPutIn();
        for (std::size_t i = 0; i < kinds.size(); ++i) {
            left -= rateOf(plan_, i);
            if (left < 0.0)
                return kinds[i];
        }
        return S::none;
    }

    /// The record as it came to be written; false where the slip changes nothing.
    /// Over 60 lines: a case a slip.
    bool changeRecord(S slip, PersonRecord& person, const PersonRecord* before, std::optional<Eye>& which)
    {
        const auto written = person.eyes;
        auto& right = person.eyes.right.final.power;
        auto& left = person.eyes.left.final.power;
        const Eye eye = even(0.0, 1.0) < 0.5 ? Eye::right : Eye::left;
        which.reset();
        if (slip < S::additionOnDistance)
            which = eye;
        auto& power = person.eyes.of(eye).final.power;
        const double s = power.sphere.value();
        const double c = power.cylinder.value();
        const double a = power.axis.value();
        const auto axis = [](double degrees) {
            const double turned = std::fmod(degrees + 180.0, 180.0);
            return AxisDegrees{turned <= 0.0 ? 180.0 : turned};
        };
        switch (slip) {
        case S::sphereSign:
            power.sphere = Dioptres{-s};
            break;
        case S::cylinderSign:
            power.cylinder = Dioptres{-c};
            break;
        case S::halfTranspositionUnturned:
            power = {Dioptres{s + c}, Dioptres{-c}, axis(a)};
            break;
        case S::halfTranspositionTurned:
            power = {Dioptres{s}, Dioptres{-c}, axis(a + 90.0)};
            break;
        case S::axisTurned90:
            power.axis = axis(a + 90.0);
            break;
        case S::axisMirrored:
            power.axis = axis(180.0 - a);
            break;
        case S::axisDigits: {
            const long whole = std::lround(a);
            const long other = whole / 100 * 100 + whole % 10 * 10 + whole / 10 % 10;
            if (other < 1 || other > 180)
                return false;
            power.axis = AxisDegrees{static_cast<double>(other)};
            break;
        }
        case S::columnsExchanged:
            power = {Dioptres{c}, Dioptres{s}, axis(a)};
            break;
        case S::decimalShift:
            power.sphere = Dioptres{s / 10.0};
            break;
        case S::powerMisread:
            power.sphere = Dioptres{s + (even(0.0, 1.0) < 0.5 ? 1.0 : -1.0)};
            break;
        case S::additionOnDistance:
            for (const Eye each : bothEyes)
                person.eyes.of(each).final.power = withSphereAdded(
                    person.eyes.of(each).final.power, person.eyes.of(each).addition.value_or(Dioptres{}));
            break;
        case S::eyesSwapped:
            std::swap(right, left);
            break;
        case S::rightIntoLeft:
            left = right;
            break;
        case S::previousPerson:
            if (before == nullptr)
                return false;
            right = before->eyes.right.final.power;
            left = before->eyes.left.final.power;
            break;
        case S::additionLeftOut:
        case S::additionAsNearPower:
        case S::monocularPd:
        case S::nearPdAsDistance:
            return changeNear(slip, person);
        default:
            return false;
        }
        return !(written.right.final.power == right && written.left.final.power == left);
    }

    /// The near power written without the addition, or the addition as the near power; the PD of one eye, or
    /// of near.
    static bool changeNear(S slip, PersonRecord& person)
    {
        if (slip == S::monocularPd)
            person.distancePd = *person.distancePd / 2.0;
        if (slip == S::nearPdAsDistance)
            person.distancePd = std::round(centrationAt(*person.distancePd, person.working()));
        if (slip == S::monocularPd || slip == S::nearPdAsDistance)
            return true;
        if (person.purpose != Purpose::near)
            return false;
        for (const Eye eye : bothEyes) {
            auto& record = person.eyes.of(eye);
            const double addition = record.addition->value();
            if (slip == S::additionAsNearPower && std::abs(record.final.power.sphere.value()) < 0.5)
                return false;
            record.nearPower = slip == S::additionLeftOut ? record.final.power : sphereOf(addition);
            record.addition.reset();
        }
        return true;
    }

    /// Another pair than the one meant; empty where the slip gives the same.
    std::optional<Candidate> pickOther(S slip, const PersonRecord& person, const Candidate& meant)
    {
        auto other = person;
        for (const Eye eye : bothEyes) {
            auto& power = other.eyes.of(eye).final.power;
            const double s = power.sphere.value();
            const double c = power.cylinder.value();
            if (slip == S::cylinderIgnored)
                power = sphereOf(s);
            if (slip == S::cylinderAddedWhole)
                power = sphereOf(s + c);
            if (slip == S::cylinderSubtracted)
                power = sphereOf(s - c / 2.0);
        }
        if (slip == S::additionLeftOut && person.purpose == Purpose::near) {
            other.purpose = Purpose::distance;
            return suggestedFor(other);
        }
        if (slip == S::additionAsNearPower && person.purpose == Purpose::near) {
            for (const Eye eye : bothEyes) {
                other.eyes.of(eye).nearPower = sphereOf(person.eyes.of(eye).addition->value());
                other.eyes.of(eye).addition.reset();
            }
            return suggestedFor(other);
        }
        if (slip == S::additionLeftOut || slip == S::additionAsNearPower)
            return std::nullopt;
        if (slip == S::otherPurpose)
            other.purpose = person.purpose == Purpose::near ? Purpose::distance : Purpose::near;
        if (slip == S::cylinderIgnored || slip == S::cylinderAddedWhole || slip == S::cylinderSubtracted ||
            (slip == S::otherPurpose && person.eyes.right.addition))
            return suggestedFor(other);
        Candidate picked = meant;
        const auto& lines = truthBox();
        if (slip == S::lensesExchanged && meant.parts.size() == 3) {
            std::swap(picked.parts[1].line, picked.parts[2].line);
            return picked;
        }
        auto& part = picked.parts[meant.parts.size() == 3 ? 1 + anyOf(2) : 0];
        std::vector<std::size_t> ways;
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const auto& line = lines[i];
            const auto& was = lines[part.line];
            if (i == part.line || line.kind != was.kind)
                continue;
            const bool samePower = line.power.right == was.power.right;
            if (slip == S::neighbouringBin && line.bin.substr(0, 1) == was.bin.substr(0, 1) &&
                std::abs(std::stoi(line.bin.substr(1)) - std::stoi(was.bin.substr(1))) == 1)
                ways.push_back(i);
            if (slip == S::otherCentresOrSize && samePower && line.kind == LineKind::readyMade)
                ways.push_back(i);
        }
        if (ways.empty())
            return std::nullopt;
        part.line = ways[anyOf(ways.size())];
        return picked;
    }

    void one(const PersonRecord& survey)
    {
        auto person = personFrom(survey);
        const auto truth = person;
        const auto meant = suggestedFor(person);
        auto slip = drawn();
        const PersonRecord* before = records_.empty() ? nullptr : &records_.back();
        std::optional<Candidate> given = meant;
        std::optional<Eye> eye;
        const bool pickedSo = // these come about in both ways
            (slip == S::additionLeftOut || slip == S::additionAsNearPower) && even(0.0, 1.0) < 0.5;
        if (infoOf(slip).entry && !pickedSo) {
            if (!changeRecord(slip, person, before, eye))
                return; // nothing to slip on
            given = suggestedFor(person);
            if (!given && slip == S::monocularPd)
                given = meant; // chosen by what was measured
        } else if (meant && slip != S::none && slip != S::pairsExchanged && !onFaceOnly(slip)) {
            given = pickOther(slip, person, *meant);
        }
        if (!given || (!meant && (slip == S::none || onFaceOnly(slip))))
            return; // an order, not a hand-over
        TruthCase made;
        made.slip = slip;
        made.eye = eye;
        made.judged.facts = factsFor(person, given->parts);
        made.onFace = made.judged.facts.supply->power;
        for (const auto& part : given->parts)
            made.gone.push_back(truthBox()[part.line].name);
        if (onFaceOnly(slip) && slip != S::recordedTwice && !changeFace(made, given->parts))
            made.slip = S::none;
        keep(made, person, truth, meant);
        if (slip == S::recordedTwice || even(0.0, 1.0) < secondPairs) {
            made.slip = slip == S::recordedTwice ? slip : S::none;
            made.judged.facts.entry += "-again";
            if (slip == S::recordedTwice) {
                cases_.back().slip = S::none;
                made.gone.clear();
            } else if (cases_.back().slip != S::none) {
                return;
            }
            keep(made, person, truth, meant);
        }
    }

    void keep(const TruthCase& made, const PersonRecord& person, const PersonRecord& truth,
              const std::optional<Candidate>& meant)
    {
        meant_.push_back(meant);
        records_.push_back(person);
        truths_.push_back(truth);
        cases_.push_back(made);
    }

    /// Slips in which the record is right, or right but for the line, and the pair is another.
    static bool onFaceOnly(S slip)
    {
        return slip == S::axisTurnedMounting || slip == S::returnedWrongBin || slip == S::otherLineScanned ||
               slip == S::lineOffLabel || slip == S::recordedTwice;
    }

    /// False where there is nothing to slip on.
    bool changeFace(TruthCase& made, const std::vector<Part>& parts)
    {
        const auto& lines = truthBox();
        if (made.slip == S::axisTurnedMounting) {
            if (parts.size() != 3)
                return false;
            const Eye eye = even(0.0, 1.0) < 0.5 ? Eye::right : Eye::left;
            auto& power = made.onFace.of(eye);
            if (std::abs(power.cylinder.value()) < 0.5)
                return false;
            const double axis = even(0.0, 1.0) < 0.5 ? power.axis.value() + 90.0 : 180.0 - power.axis.value();
            power.axis = AxisDegrees{std::fmod(axis + 179.999, 180.0) + 0.001};
            made.eye = eye;
            return true;
        }
        if (made.slip == S::lineOffLabel) {
            const double off = (even(0.0, 1.0) < 0.5 ? 1.0 : -1.0) * even(0.25, 0.75);
            if (parts.size() == 3)
                made.eye = even(0.0, 1.0) < 0.5 ? Eye::right : Eye::left;
            for (const Eye eye : bothEyes)
                if (!made.eye || *made.eye == eye)
                    made.onFace.of(eye) = withSphereAdded(made.onFace.of(eye), Dioptres{off});
            return true;
        }
        const auto place = parts.size() == 3 ? 1 + anyOf(2) : 0;
        const auto other = oneOfKind(parts[place].line, made.slip == S::otherLineScanned ? 1.0 : 3.0);
        if (!other)
            return false;
        if (made.slip == S::returnedWrongBin) {
            if (parts.size() == 3)
                made.eye = parts[place].side == PartSide::right ? Eye::right : Eye::left;
            for (const Eye eye : bothEyes)
                if (!made.eye || *made.eye == eye)
                    made.onFace.of(eye).sphere = lines[*other].power.of(eye).sphere;
            made.gone[place] = lines[*other].name;
            wasBack_.emplace_back(cases_.size(), lines[*other].name);
            return true;
        }
        auto scanned = parts; // what was meant went out
        scanned[place].line = *other;
        give(made.judged.facts, scanned);
        return made.judged.facts.supply.has_value();
    }

    /// Another line of the kind and cylinder, its sphere within so many dioptres.
    std::optional<std::size_t> oneOfKind(std::size_t was, double within)
    {
        const auto& lines = truthBox();
        std::vector<std::size_t> ways;
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const double off = lines[i].power.right.sphere.value() - lines[was].power.right.sphere.value();
            if (lines[i].kind == lines[was].kind && off != 0.0 && std::abs(off) <= within &&
                lines[i].power.right.cylinder == lines[was].power.right.cylinder)
                ways.push_back(i);
        }
        return ways.empty() ? std::nullopt : std::optional(ways[anyOf(ways.size())]);
    }

    static HandOverFacts factsFor(const PersonRecord& person, const std::vector<Part>& parts)
    {
        HandOverFacts facts;
        facts.entry = person.person;
        facts.person = person.person;
        facts.purpose = person.purpose;
        facts.profile = profileFor(person, person.purpose);
        facts.checks = "fit";
        facts.record = person;
        give(facts, parts);
        return facts;
    }

    static void give(HandOverFacts& facts, const std::vector<Part>& parts)
    {
        facts.movements.clear();
        constexpr const char* sides[] = {"pair", "right", "left", "frame"};
        for (const auto& part : parts)
            facts.movements.push_back(
                {truthBox()[part.line].name, -1, sides[static_cast<std::size_t>(part.side)]});
        const auto need = needFor(*facts.record, facts.purpose, defaultRules().settings);
        if (need)
            facts.supply = supplyOf(parts, truthBox(), need.value(), defaultRules().settings);
    }

    /// The pairs of a person and the next one change hands.
    void exchange()
    {
        for (std::size_t i = 0; i + 1 < cases_.size(); ++i) {
            auto& one = cases_[i];
            auto& next = cases_[i + 1];
            if (one.slip != S::pairsExchanged || one.partner || next.slip != S::none || (i + 1) % aDay == 0 ||
                !meant_[i] || !meant_[i + 1] || one.judged.facts.person == next.judged.facts.person) {
                if (one.slip == S::pairsExchanged && !one.partner)
                    one.slip = S::none;
                continue;
            }
            give(one.judged.facts, meant_[i + 1]->parts);
            give(next.judged.facts, meant_[i]->parts);
            one.onFace = one.judged.facts.supply->power;
            next.onFace = next.judged.facts.supply->power;
            std::swap(one.gone, next.gone);
            next.slip = S::pairsExchanged;
            one.partner = i + 1;
            next.partner = i;
        }
        if (!cases_.empty() && !cases_.back().partner && cases_.back().slip == S::pairsExchanged)
            cases_.back().slip = S::none;
    }

    void finish(TruthCase& each, const LineHistory& lines)
    {
        const auto which = static_cast<std::size_t>(&each - cases_.data());
        const auto& meant = meant_[which];
        each.judged = judgeAgain(std::move(each.judged.facts), &defaultRules(), {truthBox(), &index()}, {});
        each.witnessed = witnessed(each, truths_[which], lines);
        if (!meant) {
            each.moved = 9.0; // nothing of the box was to be given at all
            return;
        }
        for (const Eye eye : bothEyes)
            for (const auto& power : {each.judged.facts.supply->power.of(eye), each.onFace.of(eye)}) {
                const auto off = toPowerVector(power) - toPowerVector(meant->supply.power.of(eye));
                each.moved = std::max({each.moved, std::abs(off.m), std::abs(off.j0), std::abs(off.j45)});
            }
    }

    static constexpr double secondPairs = 0.003;

    TruthPlan plan_;
    std::mt19937 random_;
    int number_ = 0;
    std::vector<TruthCase> cases_;
    std::vector<PersonRecord> records_;
    std::vector<PersonRecord> truths_;
    std::vector<std::optional<Candidate>> meant_;
    Misplaced wasBack_;
};

} // namespace

Truths injectedTruth(const TruthPlan& plan)
{
    return Generator(plan).all();
}

} // namespace quarterstep::testing
