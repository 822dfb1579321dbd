// SPDX-License-Identifier: GPL-3.0-or-later
// The keeper's work through an open camp.
#define BOOST_TEST_MODULE keeping
#include <boost/test/unit_test.hpp>

#include "app/session/hand_over.hpp"
#include "app/session/keeping.hpp"
#include "app/session/order_file_for.hpp"
#include "app/session/planning_demand.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/inventory/qt_application.hpp"
#include "tests/session/people.hpp"

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

const std::string stockText = "format: quarterstep stock 1\n"
                              "site: Orrowen Point box 2\n"
                              "lines:\n"
                              "  - {line: A, kind: ready-made, power: +2.00, bin: B2, on hand: 3}\n"
                              "  - {line: B, kind: ready-made, power: +2.50, bin: B1, on hand: 1}\n";

struct Work {
    TemporaryFolder folder;
    Camp camp;
    Work() : camp(opened(folder)) {}

    static Camp opened(const TemporaryFolder& folder)
    {
        writeBytes(folder / "stock.yaml", stockText);
        return Camp::open(folder.path(), Ledger::Mode::readWrite);
    }
    [[nodiscard]] std::string file() const { return readBytes(folder / "stock.yaml"); }
    [[nodiscard]] int onHand(const std::string& line) const
    {
        return camp.stock()[*camp.lineNamed(line)].onHand;
    }
    Entry handOver(const std::string& line, std::int64_t atMs = 0)
    {
        Entry entry;
        entry.person = "P-1";
        entry.atMs = atMs;
        entry.movements = {{line, -1, "pair"}};
        return camp.post(entry);
    }
};

QuantityRow row(const std::string& line, int quantity, const std::string& reason = {})
{
    return {line, quantity, reason, {}, {"list", 2, 1}};
}

SingleWork single(EntryKind kind, const std::string& line, int quantity = 1)
{
    SingleWork work;
    work.kind = kind;
    work.line = line;
    work.quantity = quantity;
    work.person = "P-1";
    work.reason = "why";
    work.cause = "damaged";
    return work;
}

} // namespace

BOOST_TEST_GLOBAL_FIXTURE(QtApplication);

BOOST_AUTO_TEST_CASE(a_delivery_is_one_entry_and_the_file_follows, *utf::label("PROP"))
{
    Work work;
    const auto kept =
        carryOut(work.camp, deliveryOf({row("A", 5), row("B", 0)}, {"AB", "a donor", "", false, ""}), false);
    BOOST_TEST(kept.entries.size() == 1U);
    BOOST_TEST(kept.lines.size() == 1U);
    BOOST_TEST(kept.lines[0].before.onHand == 3);
    BOOST_TEST(kept.lines[0].after.onHand == 8);
    BOOST_TEST(work.file().find("bin: B2, on hand: 8") != std::string::npos);
    BOOST_TEST(work.camp.ledger().entry(kept.entries[0].id)->fields.at("from") == "a donor");
    BOOST_TEST(deliveryOf({row("A", 0)}, {}).empty());
}

BOOST_AUTO_TEST_CASE(a_dry_run_says_the_same_and_refuses_the_same, *utf::label("PROP"))
{
    const std::vector<std::vector<Entry>> works{
        deliveryOf({row("A", 2)}, {}),
        transferOut({row("A", 4)}, {"", "North", "", ""}),
        {singleEntry(single(EntryKind::held, "A", 3)), singleEntry(single(EntryKind::writtenOff, "A"))},
        {singleEntry(single(EntryKind::quarantined, "B")), singleEntry(single(EntryKind::quarantined, "B"))},
        {singleEntry(single(EntryKind::returned, "A")), singleEntry(single(EntryKind::released, "NONE"))},
        {singleEntry(single(EntryKind::declined, ""))},
    };
    for (const auto& entries : works) {
        Work work;
        const auto before = work.file();
        const auto position = work.camp.ledger().position();
        std::vector<std::string> said;
        for (const bool dryRun : {true, false}) {
            std::string text;
            const auto refused = errorOf([&] {
                for (const auto& line : carryOut(work.camp, entries, dryRun).lines)
                    text += line.line + std::to_string(line.after.onHand) + " " +
                            std::to_string(line.after.held) + " " + std::to_string(line.after.quarantined);
            });
            said.push_back(text + refused.first + std::to_string(refused.second));
            if (dryRun) {
                BOOST_TEST(work.file() == before);
                BOOST_TEST(work.camp.ledger().position() == position);
            }
        }
        BOOST_TEST(said[0] == said[1]);
        BOOST_TEST(work.camp.ledger().checkChain().ok);
    }
}

BOOST_AUTO_TEST_CASE(a_sheet_is_in_the_order_of_the_bins_and_tells_no_count, *utf::label("DER"))
{
    const Work work;
    const auto sheet = countSheet(work.camp);
    BOOST_REQUIRE(sheet.size() == 2U);
    BOOST_TEST(sheet[0].line == "B");
    BOOST_TEST(countSheet(work.camp, "B2").size() == 1U);
    BOOST_TEST(countSheet(work.camp, "B9").empty());
}

BOOST_AUTO_TEST_CASE(a_count_is_refused_when_something_was_posted_meanwhile, *utf::label("PROP"))
{
    Work work;
    const auto position = work.camp.ledger().position();
    const auto counted = countOf(work.camp, {row("A", 2, "one broke"), row("B", 1)}, {"AB", "CD", "", ""});
    BOOST_TEST(counted.findings.empty());
    BOOST_TEST(counted.entries.size() == 2U);
    work.handOver("A");
    QS_CHECK_ERROR("ledger-went-on", 4, carryOut(work.camp, counted.entries, false, position));
    BOOST_TEST(work.onHand("A") == 2);
    const auto again = countOf(work.camp, {row("A", 2), row("B", 1)}, {"AB", "CD", "", ""});
    carryOut(work.camp, again.entries, false, work.camp.ledger().position());
    BOOST_TEST(work.onHand("A") == 2);
}

BOOST_AUTO_TEST_CASE(a_hand_over_is_taken_back_on_its_day_only, *utf::label("PROP"))
{
    Work work;
    const auto old = work.handOver("A", 1'700'000'000'000);
    QS_CHECK_ERROR("undo-too-late", 1, undoOf(work.camp, old.id, "AB", "why"));
    QS_CHECK_ERROR("entry-gone", 3, handOverToday(work.camp, "P-1"));
    const auto today = work.handOver("A");
    BOOST_TEST(handOverToday(work.camp, "P-1") == today.id);
    const auto second = work.handOver("B");
    QS_CHECK_ERROR("entry-unclear", 3, handOverToday(work.camp, "P-1"));
    work.camp.post(undoOf(work.camp, second.id, "AB", "why"));
    BOOST_TEST(work.onHand("B") == 1);
    carryOut(work.camp, {undoOf(work.camp, handOverToday(work.camp, "P-1"), "AB", "why")}, false);
    BOOST_TEST(work.onHand("A") == 2);
    QS_CHECK_ERROR("entry-gone", 3, undoOf(work.camp, "no id", "AB", "why"));
}

BOOST_AUTO_TEST_CASE(other_numbers_than_were_sent_are_told, *utf::label("DER"))
{
    Entry sent;
    sent.movements = {{"A", -2, ""}, {"B", -1, ""}};
    BOOST_TEST(transferDiffers(sent, {row("A", 2), row("B", 1)}).empty());
    const auto told = transferDiffers(sent, {row("A", 1), row("C", 1)});
    BOOST_REQUIRE(told.size() == 3U);
    BOOST_TEST(told[0].code == "transfer-differs");
    BOOST_TEST(told[0].position.line == 2);
}

BOOST_AUTO_TEST_CASE(an_order_holds_its_frame_until_it_leaves, *utf::label("PROP"))
{
    Work work;
    const auto placed = carryOut(work.camp, {singleEntry(single(EntryKind::ordered, "A"))}, false).entries[0];
    const auto step = [&](EntryKind kind) {
        carryOut(work.camp, {orderStep(work.camp, placed.id, kind, single(kind, ""))}, false);
    };
    BOOST_TEST(openOrderOf(work.camp, "P-1").id == placed.id);
    QS_CHECK_ERROR("order-step", 1, step(EntryKind::orderChecked));
    step(EntryKind::orderArrived);
    QS_CHECK_ERROR("order-step", 1, undoOf(work.camp, placed.id, "AB", "why"));
    step(EntryKind::orderChecked);
    step(EntryKind::notCollected);
    BOOST_TEST(work.onHand("A") == 2);
    BOOST_TEST(work.camp.stock()[0].held == 0);
    QS_CHECK_ERROR("order-gone", 3, openOrderOf(work.camp, "P-1"));
    QS_CHECK_ERROR("order-gone", 3, orderStep(work.camp, "no id", EntryKind::orderArrived, {}));
    BOOST_TEST(work.camp.ledger().checkChain().ok);
}

BOOST_AUTO_TEST_CASE(an_order_keeps_its_prescription_until_its_person_is_forgotten, *utf::label("PROP"))
{
    Work work;
    auto person = testing::someone("-2.00 -1.25 x 175", "-2.50");
    person.person = "P-1";
    const auto answers = recommend(person, {}, work.camp.rules(), {});
    BOOST_REQUIRE(answers.size() == 1U);
    const auto words = single(EntryKind::ordered, "");
    carryOut(work.camp, {orderEntry(work.camp, words, person, answers[0])}, false);
    const auto order = openOrderOf(work.camp, "P-1");
    const auto ordered = orderedFor(work.camp, order);
    BOOST_REQUIRE(ordered.has_value());
    BOOST_TEST(ordered->person.eyes.right.final.asWritten == "-2.00 -1.25 x 175");
    BOOST_TEST(ordered->person.distancePd.value() == 62.0);
    BOOST_TEST((ordered->answer.purpose == Purpose::distance));
    BOOST_TEST(ordered->answer.profile == answers[0].profile);
    BOOST_TEST(demandFromLedger(work.camp).demand.records == 1);
    (void)work.camp.ledger().forgetPerson("P-1");
    BOOST_TEST(!orderedFor(work.camp, order).has_value());
    const auto demand = demandFromLedger(work.camp).demand; // by the fields of the entry
    BOOST_TEST(demand.records == 0);
    BOOST_TEST(demand.unread == 0);
    BOOST_TEST(work.camp.ledger().checkChain().ok);
    auto incomplete = answers[0];
    incomplete.need.reset();
    QS_CHECK_ERROR("paper-not-for", 3, orderEntry(work.camp, words, person, incomplete));
}

BOOST_AUTO_TEST_CASE(an_order_of_before_has_no_prescription, *utf::label("PROP"))
{
    Work work;
    carryOut(work.camp, {singleEntry(single(EntryKind::ordered, "A"))}, false);
    BOOST_TEST(!orderedFor(work.camp, openOrderOf(work.camp, "P-1")).has_value());
    BOOST_TEST(demandFromLedger(work.camp).demand.unread == 1);
}
