// SPDX-License-Identifier: GPL-3.0-or-later
// The search against an exhaustive one, over random small stocks and people.
#define BOOST_TEST_MODULE search
#include <boost/test/unit_test.hpp>

#include "core/fitting/need.hpp"
#include "core/fitting/order.hpp"
#include "core/fitting/power_columns.hpp"
#include "core/fitting/stock_index.hpp"
#include "inventory/text/rules_file.hpp"
#include "tests/session/exhaustive_search.hpp"

#include <array>
#include <cstdlib>
#include <random>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{

/// Random numbers that are the same on every machine.
class Dice
{
  public:
    explicit Dice(unsigned seed) : random_(seed) {}
    int below(int most) { return static_cast<int>(random_() % static_cast<unsigned>(most)); }
    bool once(int in) { return below(in) == 0; }
    double quarters(int least, int most) { return (least + below(most - least + 1)) / 4.0; }

  private:
    std::mt19937 random_;
};

/// Powers near -1.00, so that many lie just inside, on and just outside a limit.
SpheroCylinder someLens(Dice& dice)
{
    SpheroCylinder power{Dioptres{dice.quarters(-10, 3)}, Dioptres{}, AxisDegrees{180.0}};
    if (dice.once(3))
        power = {power.sphere, Dioptres{dice.quarters(-6, 4)}, AxisDegrees{5.0 * (1 + dice.below(36))}};
    return power;
}

void count(Dice& dice, StockLine& line)
{
    line.onHand = dice.below(5);
    line.held = dice.once(5) ? 1 : 0;
    line.quarantined = dice.once(8) ? 1 : 0;
    line.origin = dice.once(6) ? Origin::used : Origin::fresh;
    line.frame.sizeClass = dice.once(3) ? "medium" : dice.once(3) ? "large" : "";
}

void centre(Dice& dice, StockLine& line)
{
    if (!dice.once(4))
        line.centres = 58.0 + 2.0 * dice.below(5);
    line.centresFrom = dice.once(5) ? CentresFrom::assumed : CentresFrom::label;
    if (dice.once(3))
        line.heightsDiffer = 0.5 * dice.below(5);
}

StockLine someLine(Dice& dice, int number, bool bifocals)
{
    StockLine line;
    line.name = std::string(1, static_cast<char>('Z' - dice.below(26))) + std::to_string(number);
    count(dice, line);
    const int kind = dice.below(4);
    line.kind = kind == 0 ? LineKind::readyMade : kind == 1 ? LineKind::frame : LineKind::lens;
    if (line.kind == LineKind::lens) {
        line.power.right = someLens(dice);
        line.power.left = line.power.right;
        line.shape = dice.once(3) ? "square" : "round";
        line.side = dice.once(4) ? LensSide::right : dice.once(4) ? LensSide::left : LensSide::either;
        line.anyAxis = dice.once(2);
        return line;
    }
    centre(dice, line);
    if (line.kind == LineKind::frame) {
        line.takes = dice.once(3) ? std::vector<std::string>{"square", "round"}
                                  : std::vector<std::string>{dice.once(3) ? "square" : "round"};
        line.axisStep = dice.once(2) ? 5.0 : dice.once(2) ? 1.0 : 15.0;
        line.frame.lens = dice.once(2) ? 46.0 : 0.0;
        line.frame.bridge = 16.0;
        return line;
    }
    line.power.right = someLens(dice);
    line.power.left = dice.once(2) ? line.power.right : someLens(dice);
    line.use = dice.once(4) ? "near" : "";
    if (bifocals && dice.once(2))
        line.bifocalAddition = Dioptres{dice.quarters(4, 10)};
    return line;
}

PersonRecord somePerson(Dice& dice, Purpose purpose)
{
    PersonRecord person;
    person.person = "T";
    person.purpose = purpose;
    if (!dice.once(6))
        person.age = 5.0 + dice.below(65);
    for (const Eye eye : bothEyes) {
        auto& record = person.eyes.of(eye);
        record.final.power = someLens(dice);
        record.addition = Dioptres{dice.quarters(4, 10)};
        if (dice.once(8))
            record.final.prism = EyePrism{dice.once(2) ? 0.5 : -1.0, 0.0};
    }
    if (dice.once(6))
        person.eyes.of(dice.once(2) ? Eye::right : Eye::left).final.state = EyeState::balance;
    if (!dice.once(4))
        person.distancePd = 58.0 + dice.below(10);
    if (dice.once(3))
        person.vertexMm = 12.0;
    person.frameSize = dice.once(3) ? "medium" : "";
    if (dice.once(6))
        for (const Eye eye : bothEyes) {
            person.eyes.of(eye).acuity.meanSphere = parseAcuity("6/12").value();
            person.eyes.of(eye).acuity.best = parseAcuity("6/6").value();
        }
    return person;
}

std::string told(const Candidate& candidate, const std::vector<StockLine>& stock)
{
    std::string text;
    for (const auto& part : candidate.parts)
        text += stock[part.line].name + (part.side == PartSide::left ? "(left) " : " ");
    for (const auto& parts : candidate.alike) {
        text += "= ";
        for (const auto& part : parts)
            text += stock[part.line].name + ' ';
    }
    return text + std::to_string(candidate.fit.cost) + (candidate.fit.onTrial() ? " on trial" : "") +
           (candidate.fit.acceptable() ? " acceptable" : "") + '\n';
}

std::string told(const CandidateLists& lists, const std::vector<StockLine>& stock)
{
    std::string text;
    for (const auto& candidate : lists.ranked)
        text += told(candidate, stock);
    text += "misses\n";
    for (const auto& candidate : lists.misses)
        text += told(candidate, stock);
    return text + (lists.anyStockedPower ? "some" : "none");
}

CandidateOptions someOptions(Dice& dice, std::size_t lines)
{
    CandidateOptions options;
    options.everyLine = dice.once(4);
    options.onlyAvailable = !dice.once(4);
    options.most = static_cast<std::size_t>(1 + dice.below(8));
    if (dice.once(3))
        for (std::size_t i = 0; i < lines; ++i)
            options.scarcity.push_back(dice.below(3));
    return options;
}

std::string told(const RankKey& key)
{
    std::string text = key.onTrial ? "trial" : "";
    for (const double number :
         {static_cast<double>(key.costStep), static_cast<double>(key.cautions),
          static_cast<double>(key.worseSideEyes), static_cast<double>(key.balanceStep),
          static_cast<double>(key.prismStep), key.baseOutAtNear ? 1.0 : 0.0, key.sizeSteps})
        text += ' ' + std::to_string(number);
    return text;
}

/// The verdict that a search asks for against the whole judgement, for every ready-made pair; empty when they
/// agree to the last bit.
std::string briefDisagreement(const Need& need, const std::vector<StockLine>& stock, const Profile& profile,
                              const Settings& settings)
{
    for (std::size_t i = 0; i < stock.size(); ++i) {
        const std::array parts{Part{i, PartSide::pair}};
        const auto supply = supplyOf(parts, stock, need, settings);
        if (!supply)
            continue;
        const auto whole = judge(need, *supply, profile);
        Fit brief;
        judgeBriefly(brief, need, *supply, profile);
        const bool fails = whole.band == Band::fails;
        if (whole.band != brief.band || whole.cost != brief.cost ||
            (!fails && (told(fitKey(need, profile, whole)) != told(fitKey(need, profile, brief)))))
            return stock[i].name + " under " + profile.name + ": " + told(fitKey(need, profile, whole)) +
                   " against " + told(fitKey(need, profile, brief));
    }
    return "";
}

using MakeStock = std::vector<StockLine> (*)(Dice& dice, Purpose purpose);

std::vector<StockLine> smallStock(Dice& dice, Purpose purpose)
{
    std::vector<StockLine> stock;
    const int lines = 4 + dice.below(26);
    for (int i = 0; i < lines; ++i)
        stock.push_back(someLine(dice, i, purpose == Purpose::bifocal));
    return stock;
}

/// Many lenses; those that hardly ever go together are a case of their own.
std::vector<StockLine> crowdedLenses(Dice& dice, Purpose /*purpose*/)
{
    std::vector<StockLine> stock;
    while (stock.size() < 110) {
        auto line = someLine(dice, static_cast<int>(stock.size()), false);
        if (line.kind == LineKind::lens || (line.kind == LineKind::frame && stock.size() < 4))
            stock.push_back(line);
    }
    return stock;
}

/// So many powers that whole blocks of them are passed over.
std::vector<StockLine> crowdedPairs(Dice& dice, Purpose purpose)
{
    std::vector<StockLine> stock;
    while (stock.size() < 1500) {
        auto line = someLine(dice, static_cast<int>(stock.size()), purpose == Purpose::bifocal);
        if (line.kind == LineKind::readyMade) {
            line.power.left = someLens(dice);
            stock.push_back(line);
        }
    }
    return stock;
}

/// One random person against one random stock; empty when both searches agree.
std::string disagreement(unsigned seed, MakeStock make = smallStock)
{
    Dice dice(seed);
    const Purpose purposes[] = {Purpose::distance, Purpose::distance, Purpose::near, Purpose::intermediate,
                                Purpose::bifocal};
    const Purpose purpose = purposes[dice.below(5)];
    const auto stock = make(dice, purpose);
    Settings settings;
    settings.useUsedPairs = !dice.once(3);
    auto need = needFor(somePerson(dice, purpose), purpose, settings).value();
    if (!need.pdKnown && dice.once(3))
        need.pdKnown = need.pdFollowsCentres = true;
    const auto& profiles = defaultRules().profiles;
    const auto& profile = profiles[static_cast<std::size_t>(dice.below(static_cast<int>(profiles.size())))];
    const auto options = someOptions(dice, stock.size());
    if (auto brief = briefDisagreement(need, stock, profile, settings); !brief.empty())
        return brief;
    const auto fast = told(findCandidates(need, stock, profile, settings, options), stock);
    const auto slow = told(exhaustiveSearch(need, stock, profile, settings, options), stock);
    return fast == slow ? "" : profile.name + "\nsearch:\n" + fast + "\nexhaustive:\n" + slow;
}

unsigned seeds()
{
    return std::getenv("QS_LONG") != nullptr ? 100000U : 3000U;
}

} // namespace

BOOST_AUTO_TEST_CASE(the_search_agrees_with_an_exhaustive_one, *utf::label("PROP"))
{
    for (unsigned seed = 1; seed <= seeds(); ++seed) {
        const auto difference = disagreement(seed);
        BOOST_TEST_REQUIRE(difference == "", "seed " << seed << ": " << difference);
    }
}

BOOST_AUTO_TEST_CASE(many_lenses_and_many_powers_are_searched_as_well_as_few, *utf::label("PROP"))
{
    for (unsigned seed = 1; seed <= (seeds() > 3000 ? 400U : 12U); ++seed) {
        const auto ofLenses = disagreement(seed, crowdedLenses);
        BOOST_TEST_REQUIRE(ofLenses == "", "lenses, seed " << seed << ": " << ofLenses);
        const auto ofPairs = disagreement(seed, crowdedPairs);
        BOOST_TEST_REQUIRE(ofPairs == "", "pairs, seed " << seed << ": " << ofPairs);
    }
}

/// Each lens passes in its own eye. Those with the cylinder needed are too strong in one eye and too weak in
/// the other, so that 400 pairs of them fail together (difference supplied) before the first pair that
/// passes.
std::vector<StockLine> lensesApart(Dice& dice)
{
    StockLine frame;
    frame.name = "F";
    frame.kind = LineKind::frame;
    frame.onHand = 3;
    frame.centres = 62.0;
    frame.takes = {"round"};
    frame.axisStep = 5.0;
    std::vector<StockLine> stock{frame};
    const auto add = [&](LensSide side, double sphere, double cylinder) {
        StockLine line = frame;
        line.kind = LineKind::lens;
        line.centres.reset();
        line.takes.clear();
        line.name = (side == LensSide::right ? "R" : "L") + std::to_string(stock.size());
        line.shape = "round";
        line.side = side;
        line.power.right = {Dioptres{sphere}, Dioptres{cylinder}, AxisDegrees{180.0}};
        line.power.left = line.power.right;
        stock.push_back(line);
    };
    for (int i = 0; i < 20; ++i) {
        add(LensSide::right, -1.00 + 0.25 + 0.005 * i, -0.75);
        add(LensSide::left, -2.50 - 0.25 - 0.005 * i, -0.75);
    }
    for (int i = 0; i < 3; ++i) {
        add(LensSide::right, -1.375 + 0.01 * dice.below(4), 0.0);
        add(LensSide::left, -2.875 - 0.01 * dice.below(4), 0.0);
    }
    return stock;
}

BOOST_AUTO_TEST_CASE(lenses_that_hardly_ever_go_together_are_searched_like_any_others, *utf::label("PROP"))
{
    PersonRecord person;
    person.person = "T";
    person.age = 10.0;
    person.distancePd = 62.0;
    person.purpose = Purpose::distance;
    person.eyes.right.final.power = {Dioptres{-1.00}, Dioptres{-0.75}, AxisDegrees{180.0}};
    person.eyes.left.final.power = {Dioptres{-2.50}, Dioptres{-0.75}, AxisDegrees{180.0}};
    const Settings settings;
    const auto need = needFor(person, Purpose::distance, settings).value();
    const auto& school = *defaultRules().find("school");
    for (unsigned seed = 1; seed <= 5; ++seed) {
        Dice dice(seed);
        const auto stock = lensesApart(dice);
        const CandidateOptions options;
        const auto lists = findCandidates(need, stock, school, settings, options);
        BOOST_TEST_REQUIRE(!lists.ranked.empty());
        BOOST_TEST(lists.ranked.front().fit.acceptable());
        BOOST_TEST(told(lists, stock) ==
                   told(exhaustiveSearch(need, stock, school, settings, options), stock));
    }
}

BOOST_AUTO_TEST_CASE(blocks_of_powers_leave_out_nothing_that_belongs, *utf::label("PROP"))
{
    Dice dice(4);
    for (int round = 0; round < 200; ++round) {
        PowerColumns right;
        PowerColumns left;
        for (int i = 0; i < 700; ++i) {
            right.add(toPowerVector(someLens(dice)));
            left.add(toPowerVector(someLens(dice)));
        }
        PerEye<Wanted> wanted;
        for (const Eye eye : bothEyes) {
            auto& one = wanted.of(eye);
            one.judged = !dice.once(5);
            one.need = toPowerVector(someLens(dice));
            one.reach = {dice.quarters(0, 4), dice.quarters(0, 4), dice.quarters(0, 3), dice.quarters(0, 4)};
            one.forgiven = dice.once(2) ? 0.0 : dice.quarters(0, 4);
        }
        const double cost = 0.01 * dice.below(40);
        const auto beyond = dice.once(2) ? Beyond::inReach : Beyond::nothing;
        const auto one = right.near(wanted.right, cost, beyond);
        const auto two = right.nearPairs(left, wanted, cost, beyond);
        right.finish();
        left.finish();
        BOOST_TEST_REQUIRE((right.near(wanted.right, cost, beyond) == one), "round " << round);
        BOOST_TEST_REQUIRE((right.nearPairs(left, wanted, cost, beyond) == two), "round " << round);
    }
}
