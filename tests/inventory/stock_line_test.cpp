// SPDX-License-Identifier: GPL-3.0-or-later
// One line of stock.yaml: every kind, every refusal.
#include "core/optics/notation.hpp"
#include "inventory/text/stock_file.hpp"
#include "tests/inventory/marked_text.hpp"

#include <algorithm>
#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

std::string fileWith(const std::string& line)
{
    return "format: quarterstep stock 1\nsite: x\nlines:\n  - " + line + "\n";
}

void checkLine(const std::string& marked, const std::vector<std::string>& codes)
{
    const auto text = unmarked(fileWith(marked));
    checkTold(readStockText(text.text, "stock.yaml").findings, text, codes);
}

StockLine lineOf(const std::string& line)
{
    const auto reading = readStockText(fileWith(line), "stock.yaml");
    BOOST_TEST(told(reading.findings) == std::vector<std::string>{}, boost::test_tools::per_element());
    BOOST_REQUIRE(reading.value.lines.size() == 1U);
    return reading.value.lines[0];
}

} // namespace

BOOST_AUTO_TEST_SUITE(stock_line)

BOOST_AUTO_TEST_CASE(a_count_must_be_plain_digits, *utf::label("DER"))
{
    checkLine("{line: A, kind: other, on hand: ^\"14\"}", {"count-not-plain"});
    checkLine("{line: A, kind: other, on hand: ^'14'}", {"count-not-plain"});
    checkLine("{line: A, kind: other, on hand: ^014}", {"number-leading-zero"});
    checkLine("{line: A, kind: other, on hand: ^1.5}", {"number-not-whole"});
    checkLine("{line: A, kind: other, on hand: ^-1}", {"number-negative"});
    checkLine("{line: A, kind: other, on hand: ^1e3}", {"number-not-a-number"});
    checkLine("{line: A, kind: other, on hand: ^0x10}", {"number-not-a-number"});
    checkLine("{line: A, kind: other, on hand: ^[1]}", {"not-a-text"});
    checkLine("{line: A, kind: other, on hand: ^1000000}", {"number-range"});
    checkLine("^{line: A, kind: other}", {"key-missing"});
    checkLine("line: A\n    kind: other\n    on hand: ^|\n      14\n", {"text-several-lines"});
    checkLine("line: A\n    kind: other\n    on hand: ^>-\n      14\n", {"count-not-plain"});
}

BOOST_AUTO_TEST_CASE(ready_made_pairs_have_one_power_two_or_a_bifocal_one, *utf::label("DER"))
{
    const auto pair =
        lineOf("{line: A, kind: ready-made, power: {right: \"-1.50 -0.50 x 90\", left: -2.00}, on hand: 1}");
    BOOST_TEST((pair.power.right == SpheroCylinder{Dioptres{-1.5}, Dioptres{-0.5}, AxisDegrees{90}}));
    BOOST_TEST((pair.power.left == sphereOf(-2.0)));
    BOOST_TEST(!pair.equalPowers());
    const auto bifocal = lineOf(
        "{line: A, kind: ready-made, power: {bifocal: +2.00, distance: -0.50}, use: bifocal, on hand: 1}");
    BOOST_TEST(bifocal.bifocalAddition.value().thousandths() == 2000);
    BOOST_TEST((bifocal.power.left == sphereOf(-0.5)));
    BOOST_TEST((lineOf("{line: A, kind: ready-made, power: {bifocal: 2.00}, on hand: 1}").power.right ==
                sphereOf(0.0)));
    BOOST_TEST((lineOf("{line: A, kind: ready-made, power: 0.00, on hand: 1}").power.right == sphereOf(0.0)));
    BOOST_TEST(
        (lineOf("{line: A, kind: ready-made, power: -0.12, on hand: 1}").power.right == sphereOf(-0.125)));
}

BOOST_AUTO_TEST_CASE(powers_that_are_missing_or_unclear_are_refused, *utf::label("DER"))
{
    checkLine("^{line: A, kind: ready-made, on hand: 1}", {"key-missing"});
    checkLine("{line: A, kind: ready-made, power: ^{right: +1.00}, on hand: 1}", {"key-missing"});
    checkLine("{line: A, kind: ready-made, power: ^{}, on hand: 1}", {"power-form"});
    checkLine("{line: A, kind: ready-made, power: ^{right: +1.00, left: +1.00, bifocal: +2.00}, on hand: 1}",
              {"power-form"});
    checkLine("{line: A, kind: ready-made, power: ^{right: +1.00, left: +1.00, distance: 0.00}, on hand: 1}",
              {"power-form"});
    checkLine("{line: A, kind: ready-made, power: {bifocal: ^0.00}, on hand: 1}", {"addition-range"});
    checkLine("{line: A, kind: ready-made, power: {bifocal: ^+7.00}, on hand: 1}", {"addition-range"});
    checkLine("{line: A, kind: ready-made, power: ^+2.00, use: bifocal, on hand: 1}", {"bifocal-power"});
}

BOOST_AUTO_TEST_CASE(a_complaint_about_a_power_points_into_it, *utf::label("DER"))
{
    for (const char* written :
         {"2.00", "\"2.00\"", "\"-1.00 -0.50 x 190\"", "-1.00 -0.50", "\"-1.00 0.50 x 10\""}) {
        std::string plain = written;
        plain.erase(std::remove(plain.begin(), plain.end(), '"'), plain.end());
        const auto complaint = parsePower(plain).complaint();
        const auto reading = readStockText(
            fileWith("{line: A, kind: ready-made, power: " + std::string(written) + ", on hand: 1}"), "s");
        BOOST_TEST_CONTEXT(written)
        {
            BOOST_REQUIRE(reading.findings.size() == 1U);
            BOOST_TEST(reading.findings[0].code == complaint.code);
            BOOST_TEST(reading.findings[0].position.line == 4);
            const int quote = complaint.offset > 0 && written[0] == '"' ? 1 : 0;
            BOOST_TEST(reading.findings[0].position.column == 40 + quote + complaint.offset);
        }
    }
}

BOOST_AUTO_TEST_CASE(lenses_say_shape_side_and_how_the_axis_is_set, *utf::label("DER"))
{
    const auto round = lineOf("{line: L+250, kind: lens, power: +2.50, shape: round 44, on hand: 6}");
    BOOST_TEST((round.side == LensSide::either));
    BOOST_TEST(round.shape == "round 44");
    BOOST_TEST(!round.anyAxis);
    const auto turned =
        lineOf("{line: LC-1, kind: lens, power: \"-1.00 -0.75\", axis: any, shape: round 44, on hand: 2}");
    BOOST_TEST(turned.anyAxis);
    BOOST_TEST(turned.power.right.cylinder.thousandths() == -750);
    const auto mounted = lineOf(
        "{line: L, kind: lens, power: \"-1.00 -0.75\", axis: 85, shape: drop 48, side: left, on hand: 2}");
    BOOST_TEST(mounted.power.left.axis.value() == 85.0);
    BOOST_TEST((mounted.side == LensSide::left));
    BOOST_TEST(lineOf("{line: L, kind: lens, power: \"-1.00 -0.75\", axis: 0, shape: round 44, on hand: 2}")
                   .power.left.axis.value() == 180.0);
    BOOST_TEST(lineOf("{line: L, kind: lens, power: \"-1.00 -0.75 x 20\", shape: round 44, on hand: 2}")
                   .power.left.axis.value() == 20.0);
}

BOOST_AUTO_TEST_CASE(lenses_without_what_mounting_needs_are_told, *utf::label("DER"))
{
    checkLine("^{line: L, kind: lens, power: +1.00, on hand: 2}", {"key-missing"});
    checkLine("^{line: L, kind: lens, shape: round 44, on hand: 2}", {"key-missing"});
    checkLine("{line: L, kind: lens, power: ^\"-1.00 -0.75\", shape: round 44, on hand: 2}",
              {"lens-axis-missing"});
    checkLine("{line: L, kind: lens, power: \"-1.00 -0.75 x 20\", axis: ^any, shape: round 44, on hand: 2}",
              {"lens-axis-twice"});
    checkLine("{line: L, kind: lens, power: \"-1.00 -0.75\", axis: ^181, shape: round 44, on hand: 2}",
              {"number-range"});
    checkLine("{line: L, kind: lens, power: +1.00, shape: round 44, side: ^both, on hand: 2}",
              {"unknown-word"});
    checkLine("^{line: L, kind: lens, power: +1.00, shape: drop 48, on hand: 2}", {"caution side-not-said"});
    checkLine("{line: L, kind: lens, power: +1.00, shape: oval 44, side: either, on hand: 2}", {});
}

BOOST_AUTO_TEST_CASE(frames_say_what_they_take_and_get_their_centres_from_their_size, *utf::label("DER"))
{
    const auto frame = lineOf("{line: F, kind: frame, takes: [round 44, oval 44], axis step: 2.5, frame: "
                              "{lens: 44, bridge: 14}, on hand: 9}");
    BOOST_TEST(frame.takes == (std::vector<std::string>{"round 44", "oval 44"}),
               boost::test_tools::per_element());
    BOOST_TEST(frame.axisStep == 2.5);
    BOOST_TEST(frame.centres.value() == 58.0); // 44 + 14
    BOOST_TEST(lineOf("{line: F, kind: frame, takes: [round 44], on hand: 9}").axisStep == 5.0);
    checkLine("^{line: F, kind: frame, on hand: 9}", {"key-missing"});
    checkLine("{line: F, kind: frame, takes: ^round 44, on hand: 9}", {"takes-not-a-list"});
    checkLine("{line: F, kind: frame, takes: ^[], on hand: 9}", {"takes-not-a-list"});
    checkLine("{line: F, kind: frame, takes: [^[round]], on hand: 9}", {"not-a-text"});
    checkLine("{line: F, kind: frame, takes: [round 44], axis step: ^0, on hand: 9}", {"number-range"});
}

BOOST_AUTO_TEST_CASE(centres_are_held_against_the_size_of_the_frame, *utf::label("DER"))
{
    const std::string frame = "frame: {lens: 48, bridge: 16}, on hand: 1}"; // 64 between the boxes
    checkLine("{line: A, kind: ready-made, power: +1.00, centres: 64, " + frame, {});
    checkLine("{line: A, kind: ready-made, power: +1.00, centres: 52, " + frame, {});
    checkLine("{line: A, kind: ready-made, power: +1.00, centres: ^51.9, " + frame,
              {"caution centres-implausible"});
    checkLine("{line: A, kind: ready-made, power: +1.00, centres: ^64.1, " + frame,
              {"caution centres-implausible"});
    checkLine("{line: A, kind: frame, takes: [round 48], centres: 66, " + frame, {});
    checkLine("{line: A, kind: frame, takes: [round 48], centres: ^61.9, " + frame,
              {"caution centres-implausible"});
}

BOOST_AUTO_TEST_CASE(fields_out_of_range_or_of_the_wrong_sort_are_told, *utf::label("DER"))
{
    checkLine("{line: ^\"\", kind: other, on hand: 1}", {"line-empty"});
    checkLine("{line: ^\"a\\nb\", kind: other, on hand: 1}", {"text-several-lines"});
    checkLine("^{kind: other, on hand: 1}", {"key-missing"});
    checkLine("^{line: A, on hand: 1}", {"key-missing"});
    checkLine("{line: A, kind: ^Ready-made, power: +1.00, on hand: 1}", {"unknown-word"});
    checkLine("{line: A, kind: ready-made, power: +1.00, use: ^reading, on hand: 1}", {"unknown-word"});
    checkLine("{line: A, kind: ready-made, power: +1.00, centres: ^6.2, on hand: 1}", {"number-range"});
    checkLine("{line: A, kind: ready-made, power: +1.00, centres: ^\"62,5\", on hand: 1}", {"number-comma"});
    checkLine("{line: A, kind: ready-made, power: +1.00, centres: ^.nan, on hand: 1}",
              {"number-not-a-number"});
    checkLine("{line: A, kind: ready-made, power: +1.00, centres from: ^guess, on hand: 1}",
              {"unknown-word"});
    checkLine("{line: A, kind: ready-made, power: +1.00, heights differ by: ^30, on hand: 1}",
              {"number-range"});
    checkLine("{line: A, kind: ready-made, power: +1.00, frame: ^Tern, on hand: 1}", {"not-a-map"});
    checkLine("{line: A, kind: ready-made, power: +1.00, frame: {size: ^tiny, ^color: red}, on hand: 1}",
              {"unknown-word", "unknown-key"});
    checkLine("{line: A, kind: ready-made, power: +1.00, origin: ^old, on hand: 1}", {"unknown-word"});
    checkLine("{line: A, kind: other, on hand: 1, keep: ^{least: 9, most: 3}}", {"keep-order"});
    checkLine("{line: A, kind: other, on hand: 1, keep: {least: ^x}}", {"number-not-a-number"});
    checkLine("{line: A, kind: other, on hand: 1, cost: ^1.0005}", {"number-too-fine"});
    checkLine("{line: A, kind: other, on hand: 1, cost: ^-1}", {"number-range"});
    checkLine("{line: A, kind: other, on hand: 1, bin: ^[C4]}", {"not-a-text"});
}

BOOST_AUTO_TEST_CASE(keys_that_say_nothing_for_a_kind_are_cautions, *utf::label("DER"))
{
    checkLine("{line: A, kind: ready-made, power: +1.00, axis step: ^5, on hand: 1}", {"caution key-unused"});
    checkLine("{line: A, kind: other, power: ^+1.00, on hand: 1}", {"caution key-unused"});
    checkLine("{line: A, kind: lens, power: +1.00, shape: round 44, centres: ^62, on hand: 1}",
              {"caution key-unused"});
    checkLine("{line: A, kind: frame, takes: [round 44], power: ^+1.00, on hand: 1}", {"caution key-unused"});
}

BOOST_AUTO_TEST_SUITE_END()
