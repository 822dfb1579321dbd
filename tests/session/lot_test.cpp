// SPDX-License-Identifier: GPL-3.0-or-later
// Lots drawn from a ledger, read at the bench and decided; persons seen again; coverage of those who came.
#define BOOST_TEST_MODULE lots
#include <boost/test/unit_test.hpp>

#include "app/session/follow_up.hpp"
#include "app/session/hand_over.hpp"
#include "app/session/keeping.hpp"
#include "app/session/lot.hpp"
#include "inventory/text/tolerance_file.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/inventory/qt_application.hpp"

#include <QDateTime>

#include <set>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

BOOST_TEST_GLOBAL_FIXTURE(QtApplication);

const std::string sample = QS_SOURCE_DIR "/samples/orrowen_coast/";

/// The sample's day, handed over: 149 pairs.
struct ServedCamp {
    TemporaryFolder folder;
    Camp camp;
    ServedCamp() : camp(open())
    {
        std::vector<PersonRecord> people;
        for (const auto& row : readPrescriptionTable(sample + "people.csv", "").value.rows)
            if (row.record)
                people.push_back(*row.record);
        (void)dispenseTable(camp, people, {}, "AB", false);
    }
    [[nodiscard]] Camp open() const
    {
        for (const char* file : {"stock.yaml", "rules.yaml"})
            writeBytes(folder / file, readBytes(sample + file));
        return Camp::open(folder.path(), Ledger::Mode::readWrite);
    }
    Lot draw(const LotWish& wish = {})
    {
        (void)carryOut(camp, {lotEntry(drawLot(camp, wish), "CD")}, false);
        return lotNamed(camp, {});
    }
    [[nodiscard]] LotResult judged(const std::vector<BenchRow>& rows) const
    {
        AuditOptions options;
        options.nowMs = 4'000'000'000'000;
        return judgeLot(camp, rows, *chooseTolerances(defaultTolerances(), "").value(), options);
    }
};

/// Every pair reads as its label.
std::vector<BenchRow> asLabelled(const Camp& camp, const Lot& lot)
{
    std::vector<BenchRow> rows;
    for (std::size_t i = 0; i < lot.handOvers.size(); ++i) {
        const auto facts = factsOf(*camp.ledger().entry(lot.handOvers[i]));
        BenchRow row;
        row.lot = lot.id;
        row.row = static_cast<int>(i) + 1;
        row.found = true;
        for (const Eye eye : bothEyes)
            row.read.of(eye) = {facts.supply->power.of(eye), facts.supply->bifocalAddition, {}};
        rows.push_back(row);
    }
    return rows;
}

bool refused(const LotResult& result, const char* code)
{
    return result.findings.size() == 1 && result.findings.front().code == code;
}

} // namespace

BOOST_FIXTURE_TEST_SUITE(lots, ServedCamp)

BOOST_AUTO_TEST_CASE(a_draw_is_kept_and_the_same_for_a_seed, *utf::label("PROP"))
{
    LotWish wish;
    wish.sample = 19;
    wish.seed = 7;
    const auto first = drawLot(camp, wish);
    const auto kept = draw(wish);
    BOOST_TEST(kept.handOvers == first.handOvers);
    BOOST_TEST(kept.handOvers == drawLot(camp, wish).handOvers); // entries of lots do not change the lot
    wish.seed = 8;
    BOOST_TEST(kept.handOvers != drawLot(camp, wish).handOvers);
    BOOST_TEST(kept.size == 149);
    BOOST_TEST(kept.plan.plan.allowed == 2);
    BOOST_TEST(kept.handOvers.size() == 22U); // a fifth more, as spares
    BOOST_TEST(sheetOf(camp, kept).at(18).spare == false);
    BOOST_TEST(sheetOf(camp, kept).at(19).spare == true);
}

BOOST_AUTO_TEST_CASE(every_hand_over_of_the_lot_can_be_drawn, *utf::label("PROP"))
{
    std::set<std::string> seen;
    LotWish wish;
    wish.sample = 40;
    for (wish.seed = 0; wish.seed < 60 && seen.size() < 149; ++wish.seed) {
        const auto lot = drawLot(camp, wish);
        seen.insert(lot.handOvers.begin(), lot.handOvers.end());
    }
    BOOST_TEST(seen.size() == 149U);
}

BOOST_AUTO_TEST_CASE(what_was_taken_back_is_not_drawn, *utf::label("DER"))
{
    LotWish all;
    all.sample = 149;
    const auto one = drawLot(camp, all).handOvers.front();
    camp.post(undoOf(camp, one, "AB", "wrong person"));
    BOOST_CHECK_EXCEPTION((void)drawLot(camp, all), Error,
                          [](const Error& error) { return error.finding().code == "lot-too-small"; });
    all.sample = 148;
    const auto lot = drawLot(camp, all);
    BOOST_TEST(std::count(lot.handOvers.begin(), lot.handOvers.end(), one) == 0);
}

BOOST_AUTO_TEST_CASE(a_lot_of_other_days_is_empty_and_says_so, *utf::label("DER"))
{
    LotWish wish;
    wish.until = "2000-01-01";
    BOOST_CHECK_EXCEPTION((void)drawLot(camp, wish), Error,
                          [](const Error& error) { return error.finding().code == "lot-nobody"; });
}

BOOST_AUTO_TEST_CASE(pairs_that_read_as_labelled_pass_and_others_fail, *utf::label("DER"))
{
    LotWish wish;
    wish.sample = 19;
    const auto lot = draw(wish);
    auto rows = asLabelled(camp, lot);
    auto result = judged(rows);
    BOOST_REQUIRE(result.usable());
    BOOST_TEST(result.count.read == 19);
    BOOST_TEST(result.count.failed == 0);
    BOOST_TEST(result.count.spareRead == 3);
    BOOST_TEST((decide(result.count, lot.plan.plan) == LotDecision::accepted));

    const auto off = [](SpheroCylinder power) {
        power.sphere = Dioptres{power.sphere.value() + 0.5};
        return power;
    };
    for (const std::size_t at : {0U, 5U, 7U})
        rows[at].read.right.power = off(rows[at].read.right.power);
    rows[1].found = false;
    rows[1].notFoundSaid = true;
    result = judged(rows);
    BOOST_TEST((result.judged[0].outcome == RowOutcome::offRecord));
    BOOST_TEST(!result.judged[0].why.empty());
    BOOST_TEST((result.judged[1].outcome == RowOutcome::unread));
    BOOST_TEST(result.count.read == 19); // a spare stands in
    BOOST_TEST(result.count.failed == 3);
    BOOST_TEST((decide(result.count, lot.plan.plan) == LotDecision::refused));
}

BOOST_AUTO_TEST_CASE(results_stand_in_the_ledger_and_are_entered_once, *utf::label("DER"))
{
    LotWish wish;
    wish.sample = 5;
    const auto lot = draw(wish);
    const auto rows = asLabelled(camp, lot);
    const auto posted = camp.post(lotReadEntry(judged(rows), "CD"));
    BOOST_TEST(lotNamed(camp, lot.id).readBy == posted.id);
    BOOST_TEST(lotNamed(camp, lot.id).count.read == 5);
    BOOST_TEST(refused(judged(rows), "lot-read-twice"));
    camp.post(undoOf(camp, posted.id, "CD", "wrong sheet"));
    BOOST_TEST(judged(rows).usable()); // taken back, they can be entered anew
    BOOST_TEST(camp.ledger().checkChain().ok);
}

BOOST_AUTO_TEST_CASE(a_sheet_of_another_camp_or_lot_is_refused, *utf::label("DER"))
{
    LotWish wish;
    wish.sample = 5;
    const auto lot = draw(wish);
    auto rows = asLabelled(camp, lot);
    auto other = rows;
    for (auto& row : other)
        row.lot = "01a21320-06da-760a-8dc1-6b7c0924ce2e";
    BOOST_TEST(refused(judged(other), "lot-not-drawn"));
    other = rows;
    other.back().lot = "elsewhere";
    BOOST_TEST(refused(judged(other), "lot-mixed"));
    other = rows;
    other.back().row = 99;
    BOOST_TEST(refused(judged(other), "reading-no-row"));
    BOOST_TEST(refused(judged({}), "reading-missing"));
    BOOST_CHECK_THROW((void)lotNamed(camp, "nowhere"), Error);
}

BOOST_AUTO_TEST_CASE(a_person_is_seen_again_only_with_a_pair, *utf::label("DER"))
{
    const auto facts = followUpFacts(camp);
    BOOST_REQUIRE(!facts.wearers.empty());
    const auto& first = facts.wearers.front();
    const std::int64_t later = first.givenMs + 30LL * 86'400'000;
    BOOST_TEST(followUpsDue(facts.wearers, facts.seen, later).size() == facts.wearers.size());
    camp.post(followUpEntry(camp, {first.person, Wear::worn, {"6/9", ""}, "likes them", "CD"}));
    BOOST_TEST(countWear(followUpFacts(camp).wearers, followUpFacts(camp).seen).wearing == 1);
    BOOST_CHECK_EXCEPTION((void)followUpEntry(camp, {"nobody", Wear::worn, {}, "", ""}), Error,
                          [](const Error& error) { return error.finding().code == "person-no-pair"; });
}

BOOST_AUTO_TEST_CASE(coverage_counts_everybody_with_a_record_and_moves_by_what_was_measured,
                     *utf::label("PROP"))
{
    const auto before = coverageOfCamp(camp);
    BOOST_TEST(before.people == 200); // those without a pair have their record too
    int all = 0;
    for (const int count : before.after.count)
        all += count;
    BOOST_TEST(all == before.people);
    // Acuity with the pair, typed when seen again, turns "not known" into met; left at home, into unmet
    // again.
    int met = 0;
    for (const auto& wearer : followUpFacts(camp).wearers)
        if (wearer.purposes == "distance" && met < 3) {
            ++met;
            camp.post(followUpEntry(camp, {wearer.person, Wear::worn, {"6/6", "6/6"}, "", ""}));
        }
    const auto after = coverageOfCamp(camp);
    BOOST_TEST(after.before.of(SightNeed::met) == before.before.of(SightNeed::met));
    BOOST_TEST(after.after.of(SightNeed::unknown) <= before.after.of(SightNeed::unknown));
    BOOST_TEST(after.after.of(SightNeed::met) >= before.after.of(SightNeed::met));
    BOOST_TEST(after.after.of(SightNeed::unknown) + after.after.of(SightNeed::met) ==
               before.after.of(SightNeed::unknown) + before.after.of(SightNeed::met));
}

BOOST_AUTO_TEST_SUITE_END()
