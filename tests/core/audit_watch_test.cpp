// SPDX-License-Identifier: GPL-3.0-or-later
// What only the course of a ledger shows, and when it is forgotten again.
#include "core/auditing/ledger_watch.hpp"
#include "core/record/day.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

/// A ledger watched up to day 400.
struct Watched {
    AuditThresholds thresholds;
    std::set<std::string> gone;
    LedgerWatch watch{thresholds, 400 * dayMs, gone};
    std::vector<AuditFinding> heard;

    void take(EntryKind kind, const std::string& id, int onDay, const std::string& person,
              std::map<std::string, std::string> fields = {}, const std::string& line = "L")
    {
        Entry entry;
        entry.id = id;
        entry.kind = kind;
        entry.atMs = onDay * dayMs;
        entry.person = person;
        entry.fields = std::move(fields);
        if (kind == EntryKind::handedOver || kind == EntryKind::quarantined)
            entry.movements = {{line, kind == EntryKind::handedOver ? -1 : 0, "pair"}};
        watch.take(entry, [this](AuditFinding finding) { heard.push_back(std::move(finding)); });
    }
    void finish()
    {
        watch.finish([this](AuditFinding finding) { heard.push_back(std::move(finding)); });
    }
    [[nodiscard]] std::vector<std::string> of(AuditClass kind) const
    {
        std::vector<std::string> entries;
        for (const auto& finding : heard)
            if (finding.kind == kind)
                entries.push_back(finding.entry);
        return entries;
    }
};

using Entries = std::vector<std::string>;
const std::map<std::string, std::string> far{{"purpose", "distance"}};

} // namespace

BOOST_AUTO_TEST_SUITE(audit_watch)

BOOST_AUTO_TEST_CASE(a_second_pair_is_told_within_days_and_not_later_nor_after_a_return, *utf::label("DER"))
{
    Watched ledger; // seven days count
    ledger.take(EntryKind::handedOver, "a1", 0, "A", far);
    ledger.take(EntryKind::handedOver, "a2", 3, "A", far);
    ledger.take(EntryKind::handedOver, "a3", 11, "A", far);
    ledger.take(EntryKind::handedOver, "b1", 11, "B", far);
    ledger.take(EntryKind::returned, "b2", 12, "B");
    ledger.take(EntryKind::handedOver, "b3", 12, "B", far);
    ledger.take(EntryKind::handedOver, "c1", 12, "C", far);
    ledger.take(EntryKind::handedOver, "c2", 12, "C", {{"purpose", "near"}});
    ledger.take(EntryKind::handedOver, "n1", 12, "", far);
    ledger.take(EntryKind::handedOver, "n2", 12, "", far); // nobody is known to have had one already
    BOOST_TEST(ledger.of(AuditClass::duplicateHandOver) == (Entries{"a2"}), boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(pairs_of_a_line_that_turns_out_bad_are_told_for_half_a_year, *utf::label("DER"))
{
    Watched ledger; // 180 days
    ledger.take(EntryKind::handedOver, "old", 0, "A", far);
    ledger.take(EntryKind::handedOver, "lately", 100, "B", far);
    ledger.take(EntryKind::handedOver, "other", 181, "C", far, "M");
    ledger.take(EntryKind::quarantined, "q1", 182, "", {{"cause", "damaged"}});
    BOOST_TEST(ledger.of(AuditClass::quarantinedLine).empty());
    ledger.take(EntryKind::quarantined, "q2", 182, "", {{"cause", "off-label"}});
    BOOST_TEST(ledger.of(AuditClass::quarantinedLine) == (Entries{"lately"}),
               boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(an_order_that_was_delivered_is_waited_for_no_more, *utf::label("DER"))
{
    Watched ledger;
    for (const std::string id : {"o1", "o2"}) {
        ledger.take(EntryKind::ordered, id, 10, "P-" + id);
        ledger.take(EntryKind::orderArrived, id + "a", 20, "P-" + id, {{"order", id}});
        ledger.take(EntryKind::orderChecked, id + "c", 21, "P-" + id, {{"order", id}});
    }
    ledger.take(EntryKind::delivered, "o1d", 30, "P-o1", {{"order", "o1"}});
    ledger.watch.takeJudged({}); // of nobody: nothing waits for it
    ledger.finish();
    BOOST_TEST(ledger.of(AuditClass::orderNotCollected) == (Entries{"o2"}), boost::test_tools::per_element());
    BOOST_TEST(ledger.heard.size() == 1U);
}

BOOST_AUTO_TEST_CASE(an_order_entered_as_not_collected_is_told_at_once_and_not_again, *utf::label("DER"))
{
    Watched ledger;
    ledger.take(EntryKind::ordered, "o1", 10, "A");
    ledger.take(EntryKind::orderArrived, "a1", 20, "A", {{"order", "o1"}});
    ledger.take(EntryKind::orderChecked, "c1", 21, "A", {{"order", "o1"}});
    ledger.take(EntryKind::notCollected, "n1", 90, "A", {{"order", "o1"}});
    ledger.finish();
    BOOST_TEST(ledger.of(AuditClass::orderNotCollected) == (Entries{"n1"}), boost::test_tools::per_element());
}

BOOST_AUTO_TEST_SUITE_END()
