// SPDX-License-Identifier: GPL-3.0-or-later
// Which bins should be counted now, from entries made here.
#include "core/record/spot_count.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

Entry happened(EntryKind kind, const std::vector<std::string>& lines, const char* site = "Box")
{
    Entry entry;
    entry.kind = kind;
    entry.site = site;
    for (const auto& line : lines)
        entry.movements.push_back({line, kind == EntryKind::counted ? 0 : -1, "", 0, 0});
    return entry;
}

StockLine lineIn(const char* name, const char* bin)
{
    StockLine line;
    line.name = name;
    line.bin = bin;
    return line;
}

const std::vector<StockLine>& shelf()
{
    static const std::vector<StockLine> lines{lineIn("A", "C4"), lineIn("B", "C4"), lineIn("C", "C5"),
                                              lineIn("loose", "")};
    return lines;
}

} // namespace

BOOST_AUTO_TEST_SUITE(spot_count)

BOOST_AUTO_TEST_CASE(lines_of_one_bin_add_up_and_the_most_used_bin_comes_first, *utf::label("DER"))
{
    std::vector<Entry> entries{happened(EntryKind::opened, {"A", "B", "C", "loose"})};
    for (int i = 0; i < 3; ++i)
        entries.push_back(happened(EntryKind::handedOver, {"A"}));
    entries.push_back(happened(EntryKind::enteredInError, {"A"})); // put back: a hand in the bin again
    for (int i = 0; i < 2; ++i)
        entries.push_back(happened(EntryKind::received, {"B"}));
    for (int i = 0; i < 7; ++i)
        entries.push_back(happened(EntryKind::handedOver, {"C", "loose"}));
    entries.push_back(happened(EntryKind::handedOver, {"A"}, "another site"));
    const auto bins = binsToCount(entries, "Box", shelf(), 6);
    BOOST_TEST_REQUIRE(bins.size() == 2U); // what lies in no bin is not asked for
    BOOST_TEST(bins[0].bin == "C5");
    BOOST_TEST(bins[0].times == 7);
    BOOST_TEST(bins[1].bin == "C4");
    BOOST_TEST(bins[1].times == 6); // 3 + 1 + 2
    BOOST_TEST(bins[1].lines.size() == 2U);
    BOOST_TEST(binsToCount(entries, "Box", shelf(), 8).empty());
}

BOOST_AUTO_TEST_CASE(a_count_begins_anew_line_by_line, *utf::label("DER"))
{
    std::vector<Entry> entries;
    for (int i = 0; i < 5; ++i)
        entries.push_back(happened(EntryKind::handedOver, {"A", "B"}));
    BOOST_TEST(binsToCount(entries, "Box", shelf(), 10).size() == 1U);
    entries.push_back(happened(EntryKind::counted, {"A"}));
    BOOST_TEST(binsToCount(entries, "Box", shelf(), 6).empty());
    BOOST_TEST_REQUIRE(binsToCount(entries, "Box", shelf(), 5).size() == 1U);
    entries.push_back(happened(EntryKind::counted, {"B"}));
    BOOST_TEST(binsToCount(entries, "Box", shelf(), 1).empty());
}

BOOST_AUTO_TEST_CASE(both_lenses_out_of_one_bin_are_one_hand_in_it, *utf::label("DER"))
{
    BOOST_TEST(binsToCount(std::vector{happened(EntryKind::handedOver, {"C", "C"})}, "Box", shelf(), 1)
                   .front()
                   .times == 1);
}

BOOST_AUTO_TEST_SUITE_END()
