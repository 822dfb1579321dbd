// SPDX-License-Identifier: GPL-3.0-or-later
// The box from which the hand-overs with known slips are served, the slips, and the answer to each.
#include "tests/session/injected_truth.hpp"

#include "core/optics/notation.hpp"
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

double rounded(double value, double step)
{
    return std::round(value / step) * step;
}

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

const std::vector<PersonRecord>& surveyPeople()
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
                                             S::additionLeftOut,
                                             S::additionAsNearPower,
                                             S::monocularPd,
                                             S::nearPdAsDistance,
                                             S::neighbouringBin,
                                             S::otherCentresOrSize,
                                             S::cylinderIgnored,
                                             S::cylinderAddedWhole,
                                             S::cylinderSubtracted,
                                             S::otherPurpose,
                                             S::pairsExchanged,
                                             S::lensesExchanged,
                                             S::axisTurnedMounting,
                                             S::returnedWrongBin,
                                             S::otherLineScanned,
                                             S::lineOffLabel,
                                             S::recordedTwice};
    return kinds;
}

double rateOf(const TruthPlan& plan, std::size_t place)
{
    return plan.uneven ? plan.rate * 0.25 * static_cast<double>(1 + place * 5 % 7) : plan.rate;
}

SlipAnswer answerTo(const Truths& truths, std::size_t which, const SlipModel& model)
{
    constexpr std::size_t around = 10;
    constexpr std::int64_t sameDay = 12LL * 3'600'000;
    const auto& cases = truths.cases;
    const auto& facts = cases[which].judged.facts;
    const auto near = [&](std::size_t i) {
        return std::abs(cases[i].judged.facts.atMs - facts.atMs) <= sameDay;
    };
    SlipScene scene;
    scene.before = which > 0 && near(which - 1) ? &cases[which - 1].judged : nullptr;
    const auto first = which > around ? which - around : 0;
    for (auto i = first; i < std::min(cases.size(), which + around + 1); ++i)
        if (i != which && near(i))
            scene.near.push_back(&cases[i].judged);
    scene.box = {truthBox(), nullptr};
    scene.settings = &defaultRules().settings;
    scene.lines = &truths.lines;
    EarlierHandOver earlier;
    for (std::size_t i = first; i < which; ++i)
        if (cases[i].judged.facts.person == facts.person && cases[i].judged.facts.purpose == facts.purpose) {
            earlier = {cases[i].judged.facts.entry, cases[i].judged.facts.atMs,
                       cases[i].judged.facts.movements};
            scene.earlier = &earlier;
        }
    return slipOf(cases[which].judged, scene, model);
}

} // namespace quarterstep::testing
