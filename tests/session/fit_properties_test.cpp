// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for any person and any box: more stock never worsens the best, an improvement never lowers a
// rank, and a mirrored person with a mirrored pair has the mirrored fit.
#include "core/fitting/fit_chance.hpp"
#include "core/fitting/order.hpp"
#include "tests/session/people.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>
#include <iostream>
#include <random>
#include <tuple>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

/// Random people and lines; every draw on the quarter-dioptre grid, axes in whole degrees.
class Draw
{
  public:
    explicit Draw(unsigned seed) : random_(seed) { std::cout << "seed " << seed << '\n'; }

    int whole(int least, int most) { return std::uniform_int_distribution<int>(least, most)(random_); }
    double quarters(int least, int most) { return 0.25 * whole(least, most); }

    SpheroCylinder power()
    {
        const double cylinder = whole(0, 2) == 0 ? -quarters(1, 6) : 0.0;
        return {Dioptres{quarters(-14, 10)}, Dioptres{cylinder},
                AxisDegrees{cylinder == 0.0 ? 180.0 : whole(1, 180)}};
    }

    PersonRecord person()
    {
        auto person = someone("0.00", "0.00", whole(5, 80));
        for (const Eye eye : bothEyes)
            person.eyes.of(eye).final.power = power();
        if (whole(0, 2) > 0) // most people's eyes are alike
            person.eyes.left.final.power = person.eyes.right.final.power;
        if (whole(0, 3) == 0)
            person.eyes.right.final.prism = EyePrism{0.5 * whole(0, 3), 0.5 * whole(-2, 2)};
        person.distancePd = whole(56, 70);
        if (whole(0, 2) == 0) {
            person.eyes.right.monocularPd = whole(28, 34);
            person.eyes.left.monocularPd = whole(28, 34);
        }
        if (whole(0, 4) == 0)
            person.distancePd.reset();
        person.vertexMm = 12.0;
        return person;
    }

    StockLine line(const std::string& name)
    {
        auto line = pairOf(name, quarters(-14, 10), whole(56, 70));
        if (whole(0, 3) == 0)
            line.power = {power(), power()};
        if (whole(0, 2) == 0)
            line.heightsDiffer = 0.5 * whole(-4, 4);
        return line;
    }

    std::vector<StockLine> box(int lines, const std::string& prefix)
    {
        std::vector<StockLine> stock;
        stock.reserve(static_cast<std::size_t>(lines));
        for (int i = 0; i < lines; ++i)
            stock.push_back(line(prefix + std::to_string(i)));
        return stock;
    }

  private:
    std::mt19937 random_;
};

const Profile& profileOf(const PersonRecord& person)
{
    return *defaultRules().find(profileFor(person, Purpose::distance));
}

Need needOf(const PersonRecord& person)
{
    return needFor(person, Purpose::distance, defaultRules().settings).value();
}

/// Acceptable before on trial before outside; then the key.
using Rank = std::tuple<int, RankKey>;

Rank rankOf(const Need& need, const Supply& supply, const Profile& profile, double scarcity = 0.0)
{
    static const std::vector<StockLine> one{pairOf("A", 0.0)};
    CandidateOptions options;
    options.scarcity = {scarcity};
    Candidate candidate;
    candidate.parts = {Part{0, PartSide::pair}};
    candidate.supply = supply;
    candidate.fit = judge(need, supply, profile);
    auto key = rankKey(need, one, profile, options, candidate);
    if (candidate.fit.acceptable() || candidate.fit.onTrial())
        return {candidate.fit.acceptable() ? 0 : 1, key};
    RankKey byCost; // misses stand in order of cost alone
    byCost.cost = key.cost;
    return {2, byCost};
}

Supply supplyOf(const StockLine& line)
{
    Supply supply;
    supply.power = line.power;
    supply.equalPair = line.equalPowers();
    supply.centres = Range{*line.centres, *line.centres};
    supply.heightsDiffer = line.heightsDiffer;
    return supply;
}

} // namespace

BOOST_AUTO_TEST_SUITE(properties)

BOOST_AUTO_TEST_CASE(more_stock_never_worsens_the_best_candidate, *utf::label("PROP"))
{
    Draw draw(20261126U);
    int served = 0;
    for (int round = 0; round < 300; ++round) {
        const auto person = draw.person();
        const auto need = needOf(person);
        const auto& profile = profileOf(person);
        auto stock = draw.box(12, "S");
        const CandidateOptions options;
        const auto before = findCandidates(need, stock, profile, defaultRules().settings, options);
        const auto more = draw.box(draw.whole(1, 8), "T");
        stock.insert(stock.end(), more.begin(), more.end());
        const auto after = findCandidates(need, stock, profile, defaultRules().settings, options);
        if (before.ranked.empty())
            continue;
        ++served;
        BOOST_REQUIRE(!after.ranked.empty());
        BOOST_TEST((rankKey(need, stock, profile, options, after.ranked.front()) <=
                    rankKey(need, stock, profile, options, before.ranked.front())));
    }
    BOOST_TEST(served > 50);
}

BOOST_AUTO_TEST_CASE(an_improvement_on_its_own_side_never_lowers_a_rank, *utf::label("PROP"))
{
    Draw draw(20261127U);
    const auto nearer = [](double value, double wanted) { return wanted + (value - wanted) / 2.0; };
    int rises = 0;
    for (int round = 0; round < 2000; ++round) {
        auto person = draw.person();
        person.eyes.right.final.prism.reset();
        person.distancePd = 62.0; // the same in both eyes, so that each change improves one thing
        person.eyes.right.monocularPd.reset();
        const auto& power = person.eyes.right.final.power = person.eyes.left.final.power;
        const auto need = needOf(person);
        const auto& profile = profileOf(person);
        Supply supply = supplyOf(draw.line("A"));
        const double off = draw.quarters(-4, 4);
        supply.power.right = supply.power.left = sphereOf(meanSphere(power).value() + off);
        supply.equalPair = true;
        supply.frameSize = "large";
        Need sized = need;
        sized.frameSize = draw.whole(0, 1) == 0 ? "small" : "";
        const int what = draw.whole(0, 5);
        if (what == 0 || what == 4) { // another power would meet another prism: looked at through the centres
            supply.centres = Range{62.0, 62.0};
            supply.heightsDiffer = 0.0;
        }
        const auto before = rankOf(sized, supply, profile, 1.0);
        Supply better = supply;
        double scarcity = 1.0;
        switch (what) {
        case 0: // error of both eyes halved
            better.power.right = better.power.left = sphereOf(meanSphere(power).value() + off / 2.0);
            break;
        case 1: // centres nearer to the PD
            better.centres = Range{nearer(supply.centres->least, 62.0), nearer(supply.centres->most, 62.0)};
            break;
        case 2: // heights more alike
            better.heightsDiffer = supply.heightsDiffer.value_or(0.0) / 2.0;
            break;
        case 3: // size class
            better.frameSize = "medium";
            break;
        case 4: // what is left of the cylinder
            better.power.right = better.power.left =
                SpheroCylinder{Dioptres{power.sphere.value() + off}, power.cylinder, power.axis};
            break;
        default:
            scarcity = 0.5;
        }
        const auto after = rankOf(sized, better, profile, scarcity);
        BOOST_TEST((after <= before), "round " << round << ", change " << what);
        rises += after < before ? 1 : 0;
    }
    BOOST_TEST(rises > 500);
}

namespace
{

SpheroCylinder mirrored(const SpheroCylinder& power)
{
    const double axis = 180.0 - power.axis.value();
    return {power.sphere, power.cylinder, AxisDegrees{axis <= 0.0 ? 180.0 : axis}};
}

PersonRecord mirrored(const PersonRecord& person)
{
    PersonRecord other = person;
    std::swap(other.eyes.right, other.eyes.left);
    for (const Eye eye : bothEyes)
        other.eyes.of(eye).final.power = mirrored(other.eyes.of(eye).final.power);
    return other;
}

StockLine mirrored(const StockLine& line)
{
    StockLine other = line;
    other.power = {mirrored(line.power.left), mirrored(line.power.right)};
    if (line.heightsDiffer)
        other.heightsDiffer = -*line.heightsDiffer;
    return other;
}

Eye fellowOf(Eye eye)
{
    return eye == Eye::right ? Eye::left : Eye::right;
}

void checkEyes(const Fit& fit, const Fit& mirror)
{
    for (const Eye eye : bothEyes) {
        const auto& here = fit.eyes.of(eye)->error;
        const auto& there = mirror.eyes.of(fellowOf(eye))->error;
        BOOST_TEST(std::abs(here.m - there.m) < 1e-9);
        BOOST_TEST(std::abs(here.j0 - there.j0) < 1e-9);
        BOOST_TEST(std::abs(here.j45 + there.j45) < 1e-9); // an oblique axis changes its side
    }
}

void checkCriteria(const Fit& fit, const Fit& mirror)
{
    BOOST_REQUIRE_EQUAL(fit.criteria.size(), mirror.criteria.size());
    for (const auto& result : fit.criteria) {
        const auto twin =
            std::find_if(mirror.criteria.begin(), mirror.criteria.end(), [&](const auto& other) {
                return other.criterion == result.criterion &&
                       (!result.eye ? !other.eye : other.eye && *other.eye == fellowOf(*result.eye));
            });
        BOOST_REQUIRE(twin != mirror.criteria.end());
        BOOST_TEST(std::abs(result.measured - twin->measured) < 1e-6);
        BOOST_TEST((result.band == twin->band));
    }
}

} // namespace

BOOST_AUTO_TEST_CASE(a_mirrored_person_with_a_mirrored_pair_has_the_mirrored_fit, *utf::label("PROP"))
{
    Draw draw(20261128U);
    for (int round = 0; round < 500; ++round) {
        const auto person = draw.person();
        const auto line = draw.line("A");
        const auto& profile = profileOf(person);
        const auto need = needOf(person);
        const auto mirrorNeed = needOf(mirrored(person));
        const auto fit = judge(need, supplyOf(line), profile);
        const auto mirror = judge(mirrorNeed, supplyOf(mirrored(line)), profile);
        BOOST_TEST((fit.band == mirror.band));
        BOOST_TEST(std::abs(fit.cost - mirror.cost) < 1e-9);
        BOOST_TEST(fit.cautions == mirror.cautions);
        BOOST_TEST(std::abs(fit.prism.horizontal - mirror.prism.horizontal) < 1e-6);
        BOOST_TEST(std::abs(fit.prism.vertical + mirror.prism.vertical) <
                   1e-6); // right above left turns round
        checkEyes(fit, mirror);
        checkCriteria(fit, mirror);
        Candidate a;
        a.fit = fit;
        Candidate b;
        b.fit = mirror;
        const auto chance = chancesOf(need, a, profile);
        const auto other = chancesOf(mirrorNeed, b, profile);
        BOOST_TEST(std::abs(*chance.right - *other.left) < 1e-6);
    }
}

BOOST_AUTO_TEST_SUITE_END()
