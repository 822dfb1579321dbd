// SPDX-License-Identifier: GPL-3.0-or-later
// Kinds of entries: their words, and what an entry of each kind may look like.
#include "core/record/entry.hpp"

#include <boost/test/unit_test.hpp>

#include <set>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

Entry entryOf(EntryKind kind, const std::vector<Movement>& movements)
{
    Entry entry;
    entry.kind = kind;
    entry.person = "P-1";
    entry.movements = movements;
    for (const char* name : ruleOf(kind).needs)
        entry.fields[name] = "given";
    if (kind == EntryKind::enteredInError)
        entry.cancels = "an id";
    return entry;
}

} // namespace

BOOST_AUTO_TEST_SUITE(entries)

BOOST_AUTO_TEST_CASE(each_kind_has_a_word_of_its_own_that_leads_back_to_it, *utf::label("PROP"))
{
    std::set<std::string> words;
    for (std::size_t i = 0; i < entryKinds; ++i) {
        const auto kind = static_cast<EntryKind>(i);
        BOOST_TEST((ruleOf(kind).kind == kind), wordOf(kind));
        BOOST_TEST((entryKindFrom(wordOf(kind)) == kind));
        words.insert(wordOf(kind));
    }
    BOOST_TEST(words.size() == entryKinds);
    BOOST_TEST(!entryKindFrom("stolen by crows").has_value());
    BOOST_CHECK_THROW((void)ruleOf(static_cast<EntryKind>(entryKinds)), std::out_of_range);
}

BOOST_AUTO_TEST_CASE(a_kind_allows_only_its_own_movements, *utf::label("DER"))
{
    const Movement in{"A", 1, "", 0, 0};
    const Movement out{"A", -1, "", 0, 0};
    const Movement hold{"A", 0, "", 1, 0};
    const Movement bar{"A", 0, "", 0, 1};
    const auto fine = [](EntryKind kind, const Movement& movement) {
        return !objectionTo(entryOf(kind, {movement}));
    };
    BOOST_TEST(fine(EntryKind::received, in));
    BOOST_TEST(!fine(EntryKind::received, out));
    BOOST_TEST(fine(EntryKind::handedOver, out));
    BOOST_TEST(!fine(EntryKind::handedOver, in));
    BOOST_TEST(!fine(EntryKind::handedOver, hold));
    BOOST_TEST((fine(EntryKind::handedOver, {"A", -1, "", -1, 0})));
    BOOST_TEST((fine(EntryKind::returned, {"A", 1, "", 0, 1})));
    BOOST_TEST(fine(EntryKind::counted, in));
    BOOST_TEST(fine(EntryKind::counted, out));
    BOOST_TEST(fine(EntryKind::held, hold));
    BOOST_TEST(!fine(EntryKind::held, bar));
    BOOST_TEST(fine(EntryKind::quarantined, bar));
    BOOST_TEST((fine(EntryKind::released, {"A", 0, "", -1, 0})));
    BOOST_TEST(!fine(EntryKind::released, hold));
    BOOST_TEST(!fine(EntryKind::declined, out));
    BOOST_TEST((!fine(EntryKind::received, {"", 1, "", 0, 0})));
}

BOOST_AUTO_TEST_CASE(what_a_kind_needs_must_be_there, *utf::label("DER"))
{
    auto entry = entryOf(EntryKind::writtenOff, {{"A", -1, "", 0, 0}});
    BOOST_TEST(!objectionTo(entry));
    entry.fields["cause"].clear();
    BOOST_TEST(objectionTo(entry)->arguments.back() == "cause");
    entry = entryOf(EntryKind::quarantined, {{"A", 0, "", 0, 1}});
    entry.fields.clear();
    BOOST_TEST(objectionTo(entry).has_value());
    entry.texts["reason"] = "scratched"; // words beside the chain count as well
    BOOST_TEST(!objectionTo(entry));
    entry = entryOf(EntryKind::declined, {});
    BOOST_TEST(!objectionTo(entry));
    entry.person.clear();
    BOOST_TEST(objectionTo(entry).has_value());
    BOOST_TEST(objectionTo(entryOf(EntryKind::received, {})).has_value());
    entry = entryOf(EntryKind::received, {{"A", 1, "", 0, 0}});
    entry.cancels = "an id";
    BOOST_TEST(objectionTo(entry).has_value());
}

BOOST_AUTO_TEST_CASE(movements_and_their_opposites_add_up_to_nothing, *utf::label("PROP"))
{
    const std::vector<Movement> movements{{"A", -1, "pair", -1, 0}, {"B", 3, "", 0, 2}};
    const auto back = turnedRound(movements);
    for (std::size_t i = 0; i < movements.size(); ++i) {
        BOOST_TEST(movements[i].delta + back[i].delta == 0);
        BOOST_TEST(movements[i].held + back[i].held == 0);
        BOOST_TEST(movements[i].quarantined + back[i].quarantined == 0);
        BOOST_TEST(back[i].part == movements[i].part);
    }
    BOOST_TEST((turnedRound(back) == movements));
}

BOOST_AUTO_TEST_SUITE_END()
