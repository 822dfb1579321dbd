// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/session/injected_truth.hpp"

#include "core/fitting/stock_index.hpp"
#include "core/optics/power_vector.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/rules_file.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep::testing
{

namespace
{

using S = SlipKind;

double rounded(double value, double step)
{
    return std::round(value / step) * step;
}

/// Written as the trade writes: quarters, whole five degrees, minus cylinder.
SpheroCylinder writtenAs(const PowerVector& vector)
{
    const auto exact = toSpheroCylinder(vector);
    SpheroCylinder written{Dioptres{rounded(exact.sphere.value(), 0.25)},
                           Dioptres{rounded(exact.cylinder.value(), 0.25)},
                           AxisDegrees{rounded(exact.axis.value(), 5.0)}};
    if (written.axis.value() <= 0.0)
        written.axis = AxisDegrees{180.0};
    if (written.cylinder == Dioptres{})
        written.axis = AxisDegrees{180.0};
    return written;
}

class Generator
{
  public:
    explicit Generator(const TruthPlan& plan) : plan_(plan), random_(plan.seed) {}

    std::vector<TruthCase> all()
    {
        for (int round = 0; round < plan_.rounds; ++round)
            for (const auto& survey : people())
                one(survey);
        exchange();
        for (auto& each : cases_)
            finish(each);
        return std::move(cases_);
    }

  private:
    static const std::vector<PersonRecord>& people()
    {
        static const std::vector<PersonRecord> read = [] {
            std::vector<PersonRecord> found;
            const auto table =
                readPrescriptionTable(QS_SOURCE_DIR "/tests/open_data/survey_need_glasses.csv", "");
            for (const auto& row : table.value.rows)
                if (row.record && row.record->eyes.right.objective && row.record->eyes.left.objective &&
                    row.record->eyes.right.seeing() && row.record->eyes.left.seeing())
                    found.push_back(*row.record);
            return found;
        }();
        return read;
    }

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
        person.vertexMm = 12.0;
        for (const Eye eye : bothEyes) {
            auto& record = person.eyes.of(eye);
            const auto reading = toPowerVector(*record.objective);
            record.final.state = EyeState::measured;
            record.final.asWritten.clear();
            record.final.power =
                writtenAs({reading.m + normal(0.25), reading.j0 + normal(0.12), reading.j45 + normal(0.12)});
            record.worn.reset();
        }
        const double age = person.age.value_or(30.0);
        person.purpose = Purpose::distance;
        if (age >= 45.0) {
            const double addition = rounded(std::clamp(1.0 + (age - 45.0) * 0.075, 1.0, 2.5), 0.25);
            for (const Eye eye : bothEyes)
                person.eyes.of(eye).addition = Dioptres{addition};
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
        const double draw = even(0.0, 1.0);
        const auto& kinds = slipsPutIn();
        const auto which = static_cast<std::size_t>(draw / std::max(plan_.rate, 1e-12));
        return plan_.rate > 0.0 && which < kinds.size() ? kinds[which] : S::none;
    }

    /// The record as it came to be written; false where the slip changes nothing.
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
        default:
            return false;
        }
        return !(written.right.final.power == right && written.left.final.power == left);
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
        if (slip != S::none && slip != S::pairsExchanged) {
            if (infoOf(slip).entry) {
                if (!changeRecord(slip, person, before, eye))
                    return; // nothing to slip on
                given = suggestedFor(person);
            } else if (meant) {
                given = pickOther(slip, person, *meant);
            }
        }
        if (!given || (!meant && slip == S::none))
            return; // an order, not a hand-over
        TruthCase made;
        made.slip = slip;
        made.eye = eye;
        made.judged.facts = factsFor(person, given->parts);
        meant_.push_back(meant);
        records_.push_back(person);
        truths_.push_back(truth);
        cases_.push_back(std::move(made));
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
            if (one.slip != S::pairsExchanged || one.partner || next.slip != S::none || !meant_[i] ||
                !meant_[i + 1]) {
                if (one.slip == S::pairsExchanged && !one.partner)
                    one.slip = S::none;
                continue;
            }
            give(one.judged.facts, meant_[i + 1]->parts);
            give(next.judged.facts, meant_[i]->parts);
            next.slip = S::pairsExchanged;
            one.partner = i + 1;
            next.partner = i;
        }
        if (!cases_.empty() && !cases_.back().partner && cases_.back().slip == S::pairsExchanged)
            cases_.back().slip = S::none;
    }

    void finish(TruthCase& each)
    {
        const auto which = static_cast<std::size_t>(&each - cases_.data());
        const auto& meant = meant_[which];
        each.judged = judgeAgain(std::move(each.judged.facts), &defaultRules(), {truthBox(), &index()}, {});
        if (!meant) {
            each.moved = 9.0; // nothing of the box was to be given at all
            return;
        }
        for (const Eye eye : bothEyes) {
            const auto off = toPowerVector(each.judged.facts.supply->power.of(eye)) -
                             toPowerVector(meant->supply.power.of(eye));
            each.moved = std::max({each.moved, std::abs(off.m), std::abs(off.j0), std::abs(off.j45)});
        }
    }

    TruthPlan plan_;
    std::mt19937 random_;
    int number_ = 0;
    std::vector<TruthCase> cases_;
    std::vector<PersonRecord> records_;
    std::vector<PersonRecord> truths_;
    std::vector<std::optional<Candidate>> meant_;
};

StockLine spherePair(double power, double centres, const std::string& bin)
{
    StockLine line;
    line.name = writeDioptres(Dioptres{power}) + "-" + std::to_string(std::lround(centres));
    line.power = {sphereOf(power), sphereOf(power)};
    line.centres = centres;
    line.bin = bin;
    line.onHand = 1'000'000;
    return line;
}

} // namespace

const std::vector<StockLine>& truthBox()
{
    static const std::vector<StockLine> lines = [] {
        std::vector<StockLine> box;
        constexpr double centres[] = {58.0, 62.0, 66.0};
        for (std::size_t wide = 0; wide < 3; ++wide)
            for (int i = -24; i <= 24; ++i)
                if (i != 0)
                    box.push_back(
                        spherePair(i * 0.25, centres[wide],
                                   std::string(1, static_cast<char>('A' + wide)) + std::to_string(i + 25)));
        int bin = 0;
        for (int i = -24; i <= 24; ++i)
            for (const double cylinder : {0.0, -0.75, -1.25, -1.75}) {
                StockLine lens = spherePair(i * 0.25, 0.0, "L" + std::to_string(++bin));
                lens.kind = LineKind::lens;
                lens.centres.reset();
                lens.shape = "round 44";
                lens.power.right.cylinder = lens.power.left.cylinder = Dioptres{cylinder};
                lens.anyAxis = cylinder != 0.0;
                lens.name = "L" + writeDioptres(Dioptres{i * 0.25}) + writeDioptres(Dioptres{cylinder});
                box.push_back(lens);
            }
        for (const double wide : centres) {
            StockLine frame = spherePair(0.0, wide, "F" + std::to_string(std::lround(wide)));
            frame.kind = LineKind::frame;
            frame.name = "F" + std::to_string(std::lround(wide));
            frame.takes = {"round 44"};
            box.push_back(frame);
        }
        return box;
    }();
    return lines;
}

const std::vector<SlipKind>& slipsPutIn()
{
    static const std::vector<SlipKind> kinds{S::sphereSign,
                                             S::cylinderSign,
                                             S::halfTranspositionUnturned,
                                             S::halfTranspositionTurned,
                                             S::axisTurned90,
                                             S::axisMirrored,
                                             S::axisDigits,
                                             S::columnsExchanged,
                                             S::decimalShift,
                                             S::powerMisread,
                                             S::additionOnDistance,
                                             S::eyesSwapped,
                                             S::rightIntoLeft,
                                             S::previousPerson,
                                             S::neighbouringBin,
                                             S::otherCentresOrSize,
                                             S::cylinderIgnored,
                                             S::cylinderAddedWhole,
                                             S::cylinderSubtracted,
                                             S::otherPurpose,
                                             S::pairsExchanged,
                                             S::lensesExchanged};
    return kinds;
}

std::vector<TruthCase> injectedTruth(const TruthPlan& plan)
{
    return Generator(plan).all();
}

SlipAnswer answerTo(const std::vector<TruthCase>& cases, std::size_t which, const SlipModel& model)
{
    constexpr std::size_t around = 10;
    SlipScene scene;
    scene.before = which > 0 ? &cases[which - 1].judged : nullptr;
    const auto first = which > around ? which - around : 0;
    for (auto i = first; i < std::min(cases.size(), which + around + 1); ++i)
        if (i != which)
            scene.near.push_back(&cases[i].judged);
    scene.box = {truthBox(), nullptr};
    scene.settings = &defaultRules().settings;
    return slipOf(cases[which].judged, scene, model);
}

} // namespace quarterstep::testing
