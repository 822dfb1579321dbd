// SPDX-License-Identifier: GPL-3.0-or-later
// What the sample promises in samples/README.md, counted in the text itself.
#include "samples/generate/samples.hpp"

#include <boost/test/unit_test.hpp>

#include <cstdlib>
#include <map>
#include <set>
#include <sstream>
#include <vector>

namespace utf = boost::unit_test;
using namespace quarterstep::samples;

namespace
{

std::vector<std::string> cellsOf(const std::string& line)
{
    std::vector<std::string> cells(1);
    for (const char c : line) {
        if (c == ',')
            cells.emplace_back();
        else
            cells.back() += c;
    }
    return cells;
}

/// Rows by column name.
std::vector<std::map<std::string, std::string>> people()
{
    std::istringstream text(peopleSample());
    std::string line;
    std::getline(text, line);
    const auto names = cellsOf(line);
    std::vector<std::map<std::string, std::string>> rows;
    while (std::getline(text, line)) {
        const auto cells = cellsOf(line);
        BOOST_REQUIRE_EQUAL(cells.size(), names.size());
        auto& row = rows.emplace_back();
        for (std::size_t i = 0; i < cells.size(); ++i)
            row[names[i]] = cells[i];
    }
    return rows;
}

/// Every number that follows `key` in the stock.
std::vector<int> countsAfter(const std::string& text, const std::string& key)
{
    std::vector<int> counts;
    for (auto at = text.find(key); at != std::string::npos; at = text.find(key, at + 1))
        counts.push_back(std::atoi(text.c_str() + at + key.size()));
    return counts;
}

} // namespace

BOOST_AUTO_TEST_SUITE(generated_files)

BOOST_AUTO_TEST_CASE(the_box_holds_at_least_160_lines_and_about_1200_pieces, *utf::label("PROP"))
{
    const auto counts = countsAfter(stockSample(), "on hand: ");
    int pieces = 0;
    for (const int count : counts)
        pieces += count;
    BOOST_TEST(counts.size() >= 160U);
    BOOST_TEST(pieces >= 1100);
    BOOST_TEST(pieces <= 1300);
}

BOOST_AUTO_TEST_CASE(no_line_name_is_used_twice, *utf::label("PROP"))
{
    const auto text = stockSample();
    std::set<std::string> names;
    for (auto at = text.find("{line: "); at != std::string::npos; at = text.find("{line: ", at + 1))
        BOOST_TEST(names.insert(text.substr(at + 7, text.find(',', at) - at - 7)).second);
    BOOST_TEST(names.size() == countsAfter(text, "on hand: ").size());
}

BOOST_AUTO_TEST_CASE(two_hundred_people_come_each_with_a_code_of_their_own, *utf::label("PROP"))
{
    std::set<std::string> codes;
    for (const auto& row : people())
        codes.insert(row.at("person"));
    BOOST_TEST(codes.size() == 200U);
}

BOOST_AUTO_TEST_CASE(
    near_minus_and_plus_are_wanted_as_camps_report_within_four_points,
    *utf::label("REF") *
        utf::description("Vincent JE, Optom Vis Sci 2006;83:803-810: 84, 10, 6 % of pairs given"))
{
    double near = 0.0;
    double minus = 0.0;
    double plus = 0.0;
    for (const auto& row : people()) {
        const auto& purpose = row.at("purpose");
        if (purpose != "distance")
            ++near;
        const bool adultOrFinal = row.at("source") != "objective" && row.at("signs").empty();
        const auto& right =
            std::isalpha(static_cast<unsigned char>(row.at("right")[0])) ? row.at("left") : row.at("right");
        if ((purpose == "distance" || purpose == "both" || purpose.empty()) && adultOrFinal &&
            row.at("worn_right").empty() && std::abs(std::atof(right.c_str())) >= 0.75)
            ++(right[0] == '-' ? minus : plus);
    }
    const double all = near + minus + plus;
    BOOST_TEST_MESSAGE("near " << near << ", minus " << minus << ", plus " << plus);
    BOOST_TEST(std::abs(near / all - 0.84) < 0.04);
    BOOST_TEST(std::abs(minus / all - 0.10) < 0.04);
    BOOST_TEST(std::abs(plus / all - 0.06) < 0.04);
}

BOOST_AUTO_TEST_CASE(nobody_reaches_more_without_than_with_the_final, *utf::label("PROP"))
{
    const auto line = [](const std::string& text) {
        constexpr const char* chart[] = {"6/6",  "6/7.5", "6/9",  "6/12", "6/18",
                                         "6/24", "6/36",  "6/60", "3/60", "CF 1 m"};
        for (int i = 0; i < 10; ++i)
            if (text == chart[i])
                return i;
        return -1;
    };
    for (const auto& row : people())
        for (const std::string side : {"right", "left"}) {
            const auto& unaided = row.at("va_unaided_" + side);
            const auto& best = row.at("va_best_" + side);
            BOOST_TEST(unaided.empty() == best.empty());
            if (!best.empty())
                BOOST_TEST(line(best) >= 0);
            BOOST_TEST(line(unaided) >= line(best), row.at("person") << " " << unaided << " " << best);
        }
}

BOOST_AUTO_TEST_SUITE_END()
