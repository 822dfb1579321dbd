// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/session/injected_witnesses.hpp"

#include "core/auditing/slip_parts.hpp"
#include "core/fitting/need.hpp"
#include "core/optics/power_vector.hpp"
#include "inventory/text/rules_file.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep::testing
{

namespace
{

using S = SlipKind;

class Measurer
{
  public:
    Measurer(std::mt19937& random, std::vector<TruthCase>& cases, const std::vector<PersonRecord>& truths,
             const Misplaced& wasBack)
        : random_(random), cases_(cases), truths_(truths), wasBack_(wasBack)
    {
    }

    LineHistory all()
    {
        for (std::size_t i = 0; i < cases_.size(); ++i)
            placeInTime(i);
        countBoxes();
        return std::move(lines_);
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

    /// Sixty a day, four minutes each; then what is measured of some pairs.
    void placeInTime(std::size_t which)
    {
        auto& each = cases_[which];
        auto& facts = each.judged.facts;
        facts.atMs = static_cast<std::int64_t>(which / aDay) * dayMs +
                     static_cast<std::int64_t>(which % aDay) * 240'000;
        if (even(0.0, 1.0) < 0.5)
            typeAcuity(each, truths_[which]);
        if (even(0.0, 1.0) >= 0.3)
            return;
        auto later = std::make_shared<LaterWitness>();
        for (const Eye eye : bothEyes) {
            auto read = toPowerVector(each.onFace.of(eye));
            read = {read.m + normal(0.06), read.j0 + normal(0.05), read.j45 + normal(0.05)};
            later->pair.of(eye) = toSpheroCylinder(read);
        }
        facts.later = later;
    }

    void typeAcuity(TruthCase& each, const PersonRecord& truth)
    {
        auto& facts = each.judged.facts;
        TrialAcuity trial;
        const auto need = needFor(truth, truth.purpose, defaultRules().settings);
        double near = 9.0;
        for (const Eye eye : bothEyes) {
            auto error = toPowerVector(each.onFace.of(eye)) - toPowerVector(need.value().eyes.of(eye).power);
            if (facts.purpose == Purpose::near && error.m < 0.0)
                error.m = std::min(0.0, error.m + need.value().eyes.of(eye).accommodation);
            const double loss = expectedLoss(blurStrength(error));
            near = std::min(near, loss);
            if (facts.purpose == Purpose::distance)
                trial.distance.of(eye) = Acuity{loss + normal(0.10), "as typed"};
            trial.best.of(eye) = truth.eyes.of(eye).acuity.best;
        }
        if (facts.purpose == Purpose::near)
            trial.near = NearAcuity{6.0 * std::pow(10.0, near + normal(0.12)), {}, "as typed"};
        facts.acuity = trial;
    }

    /// Every second day the whole box is counted; pieces come back, the misplaced ones mostly and others too.
    void countBoxes()
    {
        std::map<std::string, int> difference;
        for (std::size_t i = 0; i < cases_.size(); ++i) {
            for (const auto& movement : cases_[i].judged.facts.movements)
                ++difference[movement.line];
            for (const auto& line : cases_[i].gone)
                --difference[line];
            if (i % aDay + 1 == aDay && even(0.0, 1.0) < 0.5)
                countBox(static_cast<std::int64_t>(i / aDay) * dayMs + dayMs / 2, difference);
        }
        for (const auto& [which, line] : wasBack_)
            if (even(0.0, 1.0) < 0.8)
                comeBack(line, cases_[which].judged.facts.atMs - 3'600'000);
        for (std::size_t day = 0; day * aDay < cases_.size(); ++day)
            if (even(0.0, 1.0) < 0.5)
                comeBack(truthBox()[anyOf(truthBox().size())].name, static_cast<std::int64_t>(day) * dayMs);
    }

    void countBox(std::int64_t atMs, std::map<std::string, int>& difference)
    {
        Entry counted;
        counted.kind = EntryKind::counted;
        counted.atMs = atMs;
        for (const auto& line : truthBox()) {
            const double error = even(0.0, 1.0);
            const int off = error < 0.01 ? -1 : error < 0.02 ? 1 : 0;
            counted.movements.push_back({line.name, difference[line.name] + off, ""});
        }
        difference.clear();
        lines_.take(counted);
    }

    void comeBack(const std::string& line, std::int64_t atMs)
    {
        Entry back;
        back.kind = EntryKind::returned;
        back.atMs = atMs;
        back.movements.push_back({line, 1, "pair"});
        lines_.take(back);
    }

    static constexpr std::int64_t dayMs = 86'400'000;

    std::mt19937& random_;
    std::vector<TruthCase>& cases_;
    const std::vector<PersonRecord>& truths_;
    const Misplaced& wasBack_;
    LineHistory lines_;
};

} // namespace

LineHistory measured(std::mt19937& random, std::vector<TruthCase>& cases,
                     const std::vector<PersonRecord>& truths, const Misplaced& wasBack)
{
    return Measurer(random, cases, truths, wasBack).all();
}

bool witnessed(const TruthCase& each, const PersonRecord& truth, const LineHistory& lines)
{
    const auto& facts = each.judged.facts;
    const auto counted = [&](const Movement& movement) {
        return lines.nextDifference(movement.line, facts.atMs).has_value();
    };
    switch (each.slip) {
    case S::additionLeftOut:
    case S::additionAsNearPower: // picked so: the pair itself speaks
        return !facts.record->eyes.right.nearPower || facts.record->wornAddition || facts.acuity;
    case S::nearPdAsDistance:
        return facts.record->nearPd.has_value();
    case S::returnedWrongBin:
    case S::lineOffLabel:
        return facts.later != nullptr;
    case S::axisTurnedMounting:
        return facts.later || facts.acuity;
    case S::recordedTwice:
        return std::all_of(facts.movements.begin(), facts.movements.end(), counted);
    default: // a slip of a power that hardly changes it cannot be told from none
        return !infoOf(each.slip).entry || each.slip == S::monocularPd ||
               !sameFinals(truthOf(truth).finals, truthOf(*facts.record).finals);
    }
}

} // namespace quarterstep::testing
