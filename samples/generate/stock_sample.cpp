// SPDX-License-Identifier: GPL-3.0-or-later
// The box of the sample camp. Steps and ranges follow what is published about camps' stock: readers +1.00 to
// +4.00, distance mostly -0.50 to -4.00 (Vincent JE, Optom Vis Sci 2006;83:803-810; Ramke J, Optom Vis Sci
// 2009;86:1104-1111). Quantities are weights set by eye, with a small random part.
#include "samples/generate/acuity_model.hpp"
#include "samples/generate/power_code.hpp"
#include "samples/generate/random.hpp"
#include "samples/generate/samples.hpp"

#include <algorithm>
#include <cstdlib>
#include <span>

namespace quarterstep::samples
{

namespace
{

constexpr std::uint64_t stockStream = 20;

struct Size {
    const char* letter;
    const char* name;
    const char* boxes; ///< lens, height, bridge, side
};
constexpr Size small{"S", "small", "lens: 46, height: 30, bridge: 15, side: 135"};
constexpr Size medium{"M", "medium", "lens: 48, height: 32, bridge: 16, side: 140"};
constexpr Size large{"L", "large", "lens: 51, height: 34, bridge: 17, side: 145"};
constexpr Size child{"C", "small", "lens: 42, height: 30, bridge: 15, side: 125"};

struct Colour {
    const char* code;
    const char* name;
};
constexpr Colour black{"BK", "black"};
constexpr Colour brown{"BR", "brown"};
constexpr Colour blue{"BL", "blue"};

/// Hundredths as a price or a length: 145 -> "1.45".
std::string hundredths(int value)
{
    const int fraction = value % 100;
    return std::to_string(value / 100) + (fraction < 10 ? ".0" : ".") + std::to_string(fraction);
}

class Box
{
  public:
    void say(const std::string& text) { text_ += text; }
    void section(const std::string& comment) { text_ += "\n  # " + comment + "\n"; }
    void nextTray(char letter)
    {
        tray_ = letter;
        bin_ = 0;
    }
    std::string nextBin() { return tray_ + std::to_string(++bin_); }
    Random& random() { return random_; }
    [[nodiscard]] const std::string& text() const { return text_; }

    void pair(const std::string& name, const std::string& power, const char* use, int centres,
              const Size& size, const Colour& colour, const std::string& rest)
    {
        say("  - {line: " + name + ", kind: ready-made, power: " + power + ", use: " + use +
            ", centres: " + std::to_string(centres) + ", " + rest + ",\n     frame: {" + size.boxes +
            ", size: " + size.name + ", colour: " + colour.name + "}}\n");
    }

    /// "bin: …, on hand: …, keep: {…}, cost: …"
    std::string holding(int pieces, int price)
    {
        return "bin: " + nextBin() + ", on hand: " + std::to_string(pieces) +
               ", keep: {least: " + std::to_string(std::max(1, pieces / 3)) +
               ", most: " + std::to_string(std::max(2, pieces * 3 / 2)) + "}, cost: " + hundredths(price);
    }

    /// A count near `expected`: plus or minus a third of it.
    int about(int expected)
    {
        const int swing = expected / 3;
        return std::max(0, expected + random_.between(0 - swing, swing));
    }

  private:
    Random random_{stockStream, 1};
    std::string text_;
    char tray_ = 'A';
    int bin_ = 0;
};

const Size& sizeFor(int centres)
{
    return centres <= 57 ? child : centres <= 58 ? small : centres <= 62 ? medium : large;
}

/// How sure the centres are: measured on half of the deliveries, read off the label on most others.
std::string centresFrom(Random& random)
{
    switch (random.pick({0.5, 0.4, 0.1})) {
    case 0:
        return "centres from: measured, heights differ by: " +
               hundredths(50 * random.pick({0.7, 0.25, 0.05}));
    case 1:
        return "centres from: label";
    default:
        return "centres from: assumed";
    }
}

/// Readers of one power, in each centre distance and two colours.
void readersOf(Box& box, int quarters, std::span<const int> centres, std::span<const Colour> colours,
               int pieces)
{
    for (const int distance : centres)
        for (const auto& colour : colours) {
            const auto& size = sizeFor(distance);
            const int usual = distance == 60 || distance == 62 ? pieces : (pieces * 2 + 2) / 3;
            box.pair(
                "N" + powerCode(quarters) + "-" + std::to_string(distance) + size.letter + "-" + colour.code,
                writtenQuarters(quarters), "near", distance, size, colour,
                centresFrom(box.random()) + ", " + box.holding(box.about(usual), 105 + 5 * (quarters / 4)));
        }
}

void readers(Box& box)
{
    constexpr int usual[] = {58, 60, 62, 64};
    constexpr int middle[] = {60, 62};
    constexpr int wide[] = {66};
    constexpr Colour two[] = {black, brown};
    constexpr Colour one[] = {brown};
    constexpr Colour third[] = {blue};
    // +1.00, +1.25 … +3.00: whole and half steps are bought more.
    constexpr int weights[] = {7, 4, 9, 5, 10, 5, 8, 4, 6};
    box.section("Readers: the label is the whole near power. One tray a power, centres from narrow to wide.");
    for (int quarters = 4; quarters <= 12; ++quarters) {
        box.nextTray(static_cast<char>('A' + quarters - 4));
        readersOf(box, quarters, usual, two, weights[quarters - 4]);
    }
    box.section("Readers for wide faces, and the two strong powers (more prism when the centres are off).");
    box.nextTray('J');
    for (const int quarters : {6, 8, 10})
        readersOf(box, quarters, wide, third, 5);
    for (const int quarters : {14, 16})
        readersOf(box, quarters, middle, one, 2);
}

void distancePairs(Box& box)
{
    box.section("Distance, minus, for adults.");
    box.nextTray('K');
    for (const int quarters : {-2, -3, -4, -5, -6, -7, -8, -9, -10, -11, -12, -14, -16})
        for (const int centres : {60, 64}) {
            const auto& size = centres == 60 ? medium : large;
            const int pieces = quarters >= -8 ? 5 : 3;
            box.pair("D" + powerCode(quarters) + "-" + std::to_string(centres) + size.letter,
                     writtenQuarters(quarters), "distance", centres, size, black,
                     centresFrom(box.random()) + ", " + box.holding(box.about(pieces), 160));
        }
    box.section("Distance, minus, for children: narrow frames.");
    box.nextTray('L');
    for (const int quarters : {-4, -6, -8, -10, -12})
        for (const int centres : {54, 57})
            box.pair("D" + powerCode(quarters) + "-" + std::to_string(centres) + "C",
                     writtenQuarters(quarters), "distance", centres, child, blue,
                     centresFrom(box.random()) + ", " + box.holding(box.about(3), 175));
    box.section("Distance, plus.");
    box.nextTray('M');
    for (const int quarters : {3, 4, 6, 8, 10, 12})
        box.pair("D" + powerCode(quarters) + "-62M", writtenQuarters(quarters), "distance", 62, medium, brown,
                 centresFrom(box.random()) + ", " + box.holding(box.about(4), 160));
}

void unusualPairs(Box& box)
{
    box.section("Bifocals: the small segment is pasted on, the power named is the addition.");
    box.nextTray('P');
    for (const int addition : {6, 8, 10}) {
        const std::string power = "{bifocal: " + writtenQuarters(addition) + "}";
        box.pair("B" + powerCode(addition) + "-62M", power, "bifocal", 62, medium, brown,
                 "centres from: label, " + box.holding(box.about(4), 320));
    }
    box.pair("B-100+200-62M", "{bifocal: +2.00, distance: -1.00}", "bifocal", 62, medium, black,
             "centres from: label, " + box.holding(2, 320));
    box.section("One-off pairs: each lens read with the focimeter, written here as read.");
    box.say(
        "  - {line: X-001, kind: ready-made, power: {right: -1.50 -0.50 x 90, left: \"-2.00\"}, use: "
        "distance, "
        "centres: 62,\n     centres from: measured, heights differ by: 0.50, origin: new, bin: Q1, on hand: "
        "1, "
        "frame: {size: medium, colour: black}}\n"
        "  - {line: X-002, kind: ready-made, power: {right: +2.00, left: +2.75}, use: near, centres: 61,\n"
        "     centres from: measured, heights differ by: 0.00, origin: new, bin: Q2, on hand: 1, "
        "frame: {size: medium, colour: brown}}\n"
        "  - {line: X-003, kind: ready-made, power: {right: -3.25 -0.75 x 180, left: -2.75 -1.00 x 175}, "
        "use: distance, centres: 64,\n     centres from: measured, heights differ by: 1.00, origin: used, "
        "bin: Q3, "
        "on hand: 1, frame: {size: large}, note: donated; washed and read}\n"
        "  - {line: X-004, kind: ready-made, power: {right: +1.12 -0.37 x 12, left: +1.25}, use: distance, "
        "centres: 63,\n     centres from: measured, heights differ by: 0.50, origin: used, bin: Q4, on hand: "
        "1, "
        "frame: {size: medium}, note: donated; washed and read}\n");
}

void lenses(Box& box)
{
    box.section("Round lenses that snap into the frames below; the same lens serves either side.");
    box.nextTray('R');
    const auto lens = [&box](int quarters, int pieces) {
        const std::string name = quarters == 0 ? "L000" : "L" + powerCode(quarters);
        box.say("  - {line: " + name + ", kind: lens, power: " + writtenQuarters(quarters) +
                ", shape: round 44, side: either, " + box.holding(box.about(pieces), 60) + "}\n");
    };
    for (int quarters = -24; quarters < -12; quarters += 2)
        lens(quarters, 3);
    for (int quarters = -12; quarters <= 12; ++quarters)
        lens(quarters, quarters % 2 == 0 ? 8 : 6);
    for (int quarters = 14; quarters <= 16; quarters += 2)
        lens(quarters, 3);
    box.section("Round lenses with a cylinder: the axis is set when the lens is mounted.");
    box.nextTray('S');
    for (const int sphere : {-8, -4, 0, 4})
        for (const int cylinder : {-3, -5, -8})
            box.say("  - {line: LC" + powerCode(sphere) + powerCode(cylinder) + ", kind: lens, power: \"" +
                    writtenQuarters(sphere) + " " + writtenQuarters(cylinder) +
                    "\", axis: any, shape: round 44, side: either, " + box.holding(box.about(4), 140) +
                    "}\n");
}

void framesAndOthers(Box& box)
{
    box.section(
        "Frames for the round lenses. Marks on the rim every 5 degrees (every 10 on the plain ones).");
    box.nextTray('T');
    const auto frame = [&box](const char* name, const char* boxes, const char* rest, int pieces) {
        box.say(std::string("  - {line: ") + name + ", kind: frame, takes: [round 44], frame: {" + boxes +
                "}, " + rest + ", " + box.holding(pieces, 210) + "}\n");
    };
    frame("F-C-BL", "lens: 44, height: 36, bridge: 11, side: 125, size: small, colour: blue", "axis step: 5",
          10);
    frame("F-S-BR", "lens: 44, height: 36, bridge: 14, side: 135, size: small, colour: brown", "axis step: 5",
          9);
    frame("F-M-BK", "lens: 44, height: 36, bridge: 17, side: 140, size: medium, colour: black",
          "axis step: 5", 14);
    frame("F-M-BR", "lens: 44, height: 36, bridge: 17, side: 140, size: medium, colour: brown",
          "axis step: 5", 10);
    frame("F-L-BK", "lens: 44, height: 36, bridge: 20, side: 145, size: large, colour: black", "axis step: 5",
          10);
    frame("F-P-BK", "lens: 44, height: 36, bridge: 18, side: 140, size: medium, model: Plain, colour: black",
          "axis step: 10, centres: 61.5", 4);
    box.section("Counted like the rest, never matched to a prescription.");
    box.say("  - {line: CASE-HARD, kind: other, bin: U1, on hand: 60, cost: 0.40, note: for children}\n"
            "  - {line: CASE-SOFT, kind: other, bin: U2, on hand: 120, cost: 0.15}\n"
            "  - {line: CORD, kind: other, bin: U3, on hand: 45, cost: 0.20, note: for boat crews and small "
            "children}\n");
}

} // namespace

std::string stockSample()
{
    Box box;
    box.say(
        "# The box of the Orrowen Point camp, an invented programme on an invented coast.\n"
        "# Made by samples/generate; people may edit it by hand like any stock file. The program changes\n"
        "# the digits after \"on hand\" and the line \"written\", nothing else.\n"
        "format: quarterstep stock 1\n"
        "site: Orrowen Point box 2\n"
        "ledger: ledger.sqlite\n"
        "lines:\n");
    readers(box);
    distancePairs(box);
    unusualPairs(box);
    lenses(box);
    framesAndOthers(box);
    return box.text();
}

} // namespace quarterstep::samples
