// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a cost add up to it, and the steps lead from one pair to the other.
#include "core/fitting/cost_parts.hpp"
#include "tests/session/people.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>
#include <numeric>
#include <random>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

struct Judged {
    Need need;
    Fit fit;
};

/// One seeing eye with these errors at distance; the other is not judged.
Judged oneEye(PowerVector error, double accommodation)
{
    Judged one;
    one.need.purpose = Purpose::distance;
    one.need.age = 30.0;
    one.need.eyes.right.accommodation = accommodation;
    one.need.eyes.left.seeing = false;
    EyeFit eye;
    eye.error = error;
    one.fit.eyes.right = eye;
    one.fit.cost = costOfError(error, forgivenMinus(one.need));
    return one;
}

double sumOf(const std::vector<CostPart>& parts)
{
    return std::accumulate(parts.begin(), parts.end(), 0.0,
                           [](double sum, const CostPart& part) { return sum + part.cost; });
}

double partOf(const std::vector<CostPart>& parts, CostKind kind)
{
    for (const auto& part : parts)
        if (part.kind == kind)
            return part.cost;
    return -1.0;
}

} // namespace

BOOST_AUTO_TEST_SUITE(cost_parts)

BOOST_AUTO_TEST_CASE(a_loss_is_shared_out_as_the_squares_that_add_up_under_it,
                     *utf::label("DER") *
                         utf::description("M = +0.30 D, J0 = 0.40 D: M² + J² = 0.25, of which 0.09 and 0.16; "
                                          "log10(1.25) = 0.09691"))
{
    const auto one = oneEye({0.30, 0.40, 0.0}, 0.0);
    const auto parts = costParts(one.need, one.fit);
    BOOST_TEST_REQUIRE(parts.size() == 3U);
    BOOST_TEST(std::abs(partOf(parts, CostKind::sphere) - 0.36 * 0.0969100130) < 1e-9);
    BOOST_TEST(std::abs(partOf(parts, CostKind::astigmatism) - 0.64 * 0.0969100130) < 1e-9);
    BOOST_TEST(partOf(parts, CostKind::strain) == 0.0);
}

BOOST_AUTO_TEST_CASE(what_a_young_eye_makes_up_for_costs_strain_and_no_sight,
                     *utf::label("DER") *
                         utf::description("0.05 logMAR a dioptre accommodated, matching section 6"))
{
    const auto one = oneEye({-0.50, 0.0, 0.0}, 1.00);
    const double taken = std::min(forgivenMinus(one.need), 0.50);
    BOOST_TEST_REQUIRE(taken > 0.0);
    const auto parts = costParts(one.need, one.fit);
    BOOST_TEST(std::abs(partOf(parts, CostKind::strain) - 0.05 * taken) < 1e-12);
    BOOST_TEST(std::abs(partOf(parts, CostKind::sphere) - std::log10(1.0 + std::pow(0.50 - taken, 2))) <
               1e-12);
}

BOOST_AUTO_TEST_CASE(parts_sum_to_the_cost_and_steps_lead_from_pair_to_pair, *utf::label("PROP"))
{
    std::vector<StockLine> stock;
    for (int quarter = -16; quarter <= 14; ++quarter)
        stock.push_back(pairOf("P" + std::to_string(quarter), 0.25 * quarter));
    const char* powers[] = {"-1.25", "-2.00 -1.00 x 35", "+0.75 -0.50 x 90", "-0.50", "+1.50"};
    int compared = 0;
    for (const double age : {9.0, 24.0, 46.0, 70.0})
        for (const auto* right : powers)
            for (const auto* left : powers) {
                const auto person = age > 45.0 ? reader(right, left, 2.0, age) : someone(right, left, age);
                const auto need = needFor(person, person.purpose, defaultRules().settings);
                BOOST_TEST_REQUIRE(bool(need));
                const auto& profile = *defaultRules().find(profileFor(person, person.purpose));
                const Fit* before = nullptr;
                std::vector<Fit> fits;
                for (const auto& line : stock) {
                    Supply supply;
                    supply.power = line.power;
                    supply.centres = Range{62.0, 62.0};
                    fits.push_back(judge(need.value(), supply, profile));
                }
                for (const auto& fit : fits) {
                    BOOST_TEST(std::abs(sumOf(costParts(need.value(), fit)) - fit.cost) < 1e-12);
                    const auto steps = costSteps(need.value(), before, fit);
                    double at = before != nullptr ? before->cost : 0.0;
                    for (const auto& step : steps) {
                        BOOST_TEST(step.from == at);
                        at = step.to;
                    }
                    BOOST_TEST(std::abs(at - fit.cost) < 1e-8); // steps below 1e-9 are left out
                    before = &fit;
                    ++compared;
                }
            }
    BOOST_TEST(compared == 4 * 25 * 31);
}

BOOST_AUTO_TEST_CASE(a_bifocal_need_has_parts_at_near_whatever_the_pair, *utf::label("PROP"))
{
    auto person = reader("-1.00 -0.50 x 30", "-0.75", 2.0);
    person.purpose = Purpose::bifocal;
    const auto need = needFor(person, Purpose::bifocal, defaultRules().settings).value();
    const auto& profile = *defaultRules().find(profileFor(person, Purpose::bifocal));
    Supply supply;
    supply.power = {sphereOf(-1.0), sphereOf(-1.0)};
    supply.centres = Range{62.0, 62.0};
    const auto plain = judge(need, supply, profile);
    supply.bifocalAddition = Dioptres{2.5};
    const auto bifocal = judge(need, supply, profile);
    const auto parts = costParts(need, bifocal);
    BOOST_TEST(partOf(parts, CostKind::nearSphere) > 0.0);
    BOOST_TEST(partOf(parts, CostKind::nearAstigmatism) > 0.0);
    BOOST_TEST(std::abs(sumOf(parts) - bifocal.cost) < 1e-12);
    double at = bifocal.cost;
    for (const auto& step : costSteps(need, &bifocal, plain))
        at = step.to;
    BOOST_TEST(std::abs(at - plain.cost) < 1e-8);
    BOOST_TEST(costParts(need, plain).size() == parts.size()); // the need decides which parts there are
}

BOOST_AUTO_TEST_SUITE_END()
