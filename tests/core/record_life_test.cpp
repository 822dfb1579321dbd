// SPDX-License-Identifier: GPL-3.0-or-later
// Orders, transfers and the keeper's figures from entries made here.
#include "core/record/life.hpp"
#include "core/record/stock_figures.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

constexpr std::int64_t dayLong = 86'400'000;

struct Diary {
    std::vector<Entry> entries;

    std::string add(EntryKind kind, int day, const std::vector<Movement>& movements = {},
                    const std::string& person = "P", const std::map<std::string, std::string>& fields = {})
    {
        Entry entry;
        entry.id = "E" + std::to_string(entries.size() + 1);
        entry.kind = kind;
        entry.atMs = day * dayLong + 3'600'000;
        entry.site = "Box";
        entry.person = person;
        entry.movements = movements;
        entry.fields = fields;
        if (kind == EntryKind::enteredInError)
            entry.cancels = fields.at("of");
        entries.push_back(entry);
        return entry.id;
    }
};

StockLine lineOf(const std::string& name, int onHand, std::optional<int> least, std::optional<int> most)
{
    StockLine line;
    line.name = name;
    line.onHand = onHand;
    line.keepLeast = least;
    line.keepMost = most;
    return line;
}

} // namespace

BOOST_AUTO_TEST_SUITE(record_life)

BOOST_AUTO_TEST_CASE(an_order_goes_its_way_and_back_when_it_is_remade, *utf::label("DER"))
{
    Diary diary;
    const auto id = diary.add(EntryKind::ordered, 1, {{"F", 0, "frame", 1, 0}}, "P-1");
    const auto step = [&](EntryKind kind) { return diary.add(kind, 2, {}, "P-1", {{"order", id}}); };
    const auto now = [&] { return ordersIn(diary.entries).at(0); };
    BOOST_TEST(mayFollow(now(), EntryKind::orderArrived));
    BOOST_TEST(!mayFollow(now(), EntryKind::delivered));
    BOOST_TEST(!mayFollow(now(), EntryKind::remade));
    step(EntryKind::orderArrived);
    step(EntryKind::orderChecked);
    BOOST_TEST(wordOf(now().state) == std::string("checked"));
    const auto remade = step(EntryKind::remade);
    BOOST_TEST(wordOf(now().state) == std::string("ordered"));
    BOOST_TEST(now().remakes == 1);
    diary.add(EntryKind::enteredInError, 2, {}, "P-1", {{"of", remade}});
    BOOST_TEST(wordOf(now().state) == std::string("checked"));
    BOOST_TEST(mayFollow(now(), EntryKind::notCollected));
    BOOST_TEST(now().held.size() == 1U);
    diary.add(EntryKind::delivered, 3, {{"F", -1, "frame", -1, 0}}, "P-1", {{"order", id}});
    BOOST_TEST(!now().open());
    BOOST_TEST(now().held.empty());
    BOOST_TEST(mayFollow(now(), EntryKind::remade)); // not tolerated
    diary.add(EntryKind::enteredInError, 3, {}, "P-1", {{"of", id}});
    BOOST_TEST(ordersIn(diary.entries).empty());
}

BOOST_AUTO_TEST_CASE(what_was_sent_is_in_the_air_until_it_is_taken_in, *utf::label("DER"))
{
    Diary diary;
    const auto first = diary.add(EntryKind::transferredOut, 1, {{"A", -2, "", 0, 0}}, "", {{"to", "North"}});
    const auto second = diary.add(EntryKind::transferredOut, 1, {{"A", -1, "", 0, 0}}, "", {{"to", "South"}});
    const auto third = diary.add(EntryKind::transferredOut, 1, {{"B", -1, "", 0, 0}}, "", {{"to", "South"}});
    BOOST_TEST(inTheAir(diary.entries).size() == 3U);
    const auto in = diary.add(EntryKind::transferredIn, 2, {{"A", 2, "", 0, 0}}, "", {{"sent", first}});
    diary.add(EntryKind::enteredInError, 2, {}, "", {{"of", third}});
    BOOST_REQUIRE(inTheAir(diary.entries).size() == 1U);
    BOOST_TEST(inTheAir(diary.entries)[0].id == second);
    diary.add(EntryKind::enteredInError, 2, {}, "", {{"of", in}});
    BOOST_TEST(inTheAir(diary.entries).size() == 2U);
}

BOOST_AUTO_TEST_CASE(what_is_let_go_is_first_what_was_held_for_that_person, *utf::label("DER"))
{
    Diary diary;
    const auto holds = [&] {
        std::string text;
        for (const auto& hold : holdsIn(diary.entries))
            text += hold.person + "=" + std::to_string(hold.quantity) + " ";
        return text;
    };
    diary.add(EntryKind::held, 1, {{"A", 0, "", 2, 0}}, "P1");
    diary.add(EntryKind::held, 1, {{"A", 0, "", 1, 0}}, "P2", {{"until", "2026-03-01"}});
    diary.add(EntryKind::held, 1, {{"B", 0, "", 1, 0}}, "P2");
    BOOST_TEST(holds() == "P1=2 P2=1 P2=1 ");
    diary.add(EntryKind::handedOver, 2, {{"A", -1, "pair", -1, 0}}, "P2");
    BOOST_TEST(holds() == "P1=2 P2=1 ");
    BOOST_TEST(holdsIn(diary.entries)[1].line == "B");
    const auto released = diary.add(EntryKind::released, 2, {{"A", 0, "", -1, 0}}, "");
    BOOST_TEST(holds() == "P1=1 P2=1 ");
    diary.add(EntryKind::enteredInError, 2, {{"A", 0, "", 1, 0}}, "", {{"of", released}});
    BOOST_TEST(holds() == "P1=2 P2=1 ");
}

// Three days. A: 4 at first, 2 + 2 issued on days 1 and 2, none left on day 3: 4 pieces in 2 days, 5 people.
// B: 10 at first, 1 issued on day 3: 1 piece in 3 days, 7 people.
BOOST_AUTO_TEST_CASE(days_without_stock_do_not_lower_what_a_day_takes, *utf::label("DER"))
{
    Diary diary;
    diary.add(EntryKind::opened, 0, {{"A", 4, "", 0, 0}, {"B", 10, "", 0, 0}}, "");
    for (const auto& [day, person] : {std::pair{1, "P1"}, {1, "P2"}, {2, "P3"}, {2, "P4"}})
        diary.add(EntryKind::handedOver, day, {{"A", -1, "pair", 0, 0}}, person);
    diary.add(EntryKind::declined, 2, {}, "P5");
    const auto wrong = diary.add(EntryKind::handedOver, 2, {{"B", -1, "pair", 0, 0}}, "P3");
    diary.add(EntryKind::enteredInError, 2, {{"B", 1, "pair", 0, 0}}, "P3", {{"of", wrong}});
    diary.add(EntryKind::handedOver, 3, {{"B", -1, "pair", 0, 0}}, "P6");
    diary.add(EntryKind::notNeeded, 3, {}, "P7");
    diary.add(EntryKind::received, 4, {{"A", 6, "", 0, 0}}, "");
    const std::vector<StockLine> stock{lineOf("A", 6, 8, 20), lineOf("B", 9, 2, 5), lineOf("C", 0, {}, {})};
    const auto figures = stockFigures(diary.entries, "Box", stock);
    BOOST_TEST(figures.camp.days == 3);
    BOOST_TEST(figures.camp.people == 7);
    BOOST_TEST(figures.camp.handOvers == 5);
    BOOST_TEST(figures.lines[0].issued == 4);
    BOOST_TEST(figures.lines[0].daysInStock == 2);
    BOOST_TEST(figures.lines[0].daysOfStock.value() == 6 / (4 / 2.0), boost::test_tools::tolerance(1e-12));
    BOOST_TEST(figures.lines[0].campsOfStock.value() == 6 / (4 / 5.0 * 100),
               boost::test_tools::tolerance(1e-12));
    BOOST_TEST(figures.lines[0].reorder == 14);
    BOOST_TEST(figures.lines[1].issued == 1);
    BOOST_TEST(figures.lines[1].daysInStock == 3);
    BOOST_TEST(figures.lines[1].daysOfStock.value() == 27.0, boost::test_tools::tolerance(1e-12));
    BOOST_TEST(figures.lines[1].reorder == 0);
    BOOST_TEST(!figures.lines[2].daysOfStock.has_value());
    BOOST_TEST(figures.camp.lines == 3);
    BOOST_TEST(figures.camp.linesOut == 1);
    BOOST_TEST(figures.camp.linesPlanned == 2);
    BOOST_TEST(figures.camp.linesToPlan == 0);
    BOOST_TEST(figures.camp.linesToReorder == 1);
    BOOST_TEST(stockFigures(diary.entries, "Elsewhere", stock).camp.handOvers == 0);
}

BOOST_AUTO_TEST_CASE(what_comes_back_and_people_without_a_code_are_counted, *utf::label("DER"))
{
    Diary diary;
    diary.add(EntryKind::opened, 0, {{"A", 4, "", 0, 0}}, "");
    diary.add(EntryKind::handedOver, 1, {{"A", -1, "pair", 0, 0}}, "P1");
    diary.add(EntryKind::handedOver, 1, {{"A", -1, "pair", 0, 0}}, "");
    diary.add(EntryKind::handedOver, 1, {{"A", -1, "pair", 0, 0}}, "");
    diary.add(EntryKind::returned, 2, {{"A", 1, "pair", 0, 1}}, "P1");
    const auto camp = stockFigures(diary.entries, "Box", {}).camp;
    BOOST_TEST(camp.handOvers == 3);
    BOOST_TEST(camp.returned == 1);
    BOOST_TEST(camp.people == 3); // each hand-over to nobody known is somebody
}

BOOST_AUTO_TEST_CASE(sheets_counted_by_two_say_how_right_the_book_is, *utf::label("DER"))
{
    Diary diary;
    diary.add(EntryKind::opened, 0, {{"A", 4, "", 0, 0}, {"B", 10, "", 0, 0}}, "");
    diary.add(EntryKind::counted, 1, {{"A", 0, "", 0, 0}, {"B", -1, "", 0, 0}}, "", {{"second", "CD"}});
    diary.add(EntryKind::counted, 1, {{"A", 3, "", 0, 0}}, ""); // a count edited into the file
    const auto camp = stockFigures(diary.entries, "Box", {}).camp;
    BOOST_TEST(camp.counted == 2);
    BOOST_TEST(camp.countedRight == 1);
}

BOOST_AUTO_TEST_SUITE_END()
