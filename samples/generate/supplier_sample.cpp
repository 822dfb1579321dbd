// SPDX-License-Identifier: GPL-3.0-or-later
// What an invented supplier sells to the sample camp: readers and distance pairs in more powers and centres
// than the box holds, lenses, frames, and two assorted packs. Prices and weights are invented.
#include "samples/generate/acuity_model.hpp"
#include "samples/generate/power_code.hpp"
#include "samples/generate/samples.hpp"

#include <cstdlib>

namespace quarterstep::samples
{

namespace
{

struct Frame {
    int centres;
    const char* name; ///< letter in line names
    const char* words;
};
constexpr Frame frames[] = {
    {58, "S", "lens: 46, height: 30, bridge: 15, side: 135, size: small"},
    {60, "M", "lens: 48, height: 32, bridge: 16, side: 140, size: medium"},
    {62, "M", "lens: 48, height: 32, bridge: 16, side: 140, size: medium"},
    {64, "L", "lens: 51, height: 34, bridge: 17, side: 145, size: large"},
};

std::string pair(const std::string& name, int quarters, const char* use, const Frame& frame,
                 const char* colour, const char* rest)
{
    return "  - {line: " + name + ", kind: ready-made, power: " + writtenQuarters(quarters) +
           ", use: " + use + ", centres: " + std::to_string(frame.centres) + ", " + rest +
           ",\n     frame: {" + frame.words + ", colour: " + colour + "}}\n";
}

std::string readers()
{
    std::string text = "  # Readers, six to a pack.\n";
    for (int quarters = 4; quarters <= 14; ++quarters)
        for (const auto& frame : frames)
            text += pair("N" + powerCode(quarters) + "-" + std::to_string(frame.centres) + frame.name + "-BK",
                         quarters, "near", frame, "black", "cost: 1.10, pack: 6, weight: 26");
    return text;
}

std::string distancePairs()
{
    std::string text = "  # Distance, three to a pack.\n";
    for (int quarters = -16; quarters <= 12; ++quarters)
        if (std::abs(quarters) >= 2)
            for (const auto* frame : {&frames[1], &frames[3]})
                text += pair("D" + powerCode(quarters) + "-" + std::to_string(frame->centres) + frame->name,
                             quarters, "distance", *frame, "black", "cost: 1.60, pack: 3, weight: 28");
    return text;
}

std::string lensesAndFrames()
{
    std::string text = "  # Round lenses in fours, and frames for them.\n";
    for (int quarters = -16; quarters <= 12; ++quarters) {
        const std::string name = quarters == 0 ? "L000" : "L" + powerCode(quarters);
        text += "  - {line: " + name + ", kind: lens, power: " + writtenQuarters(quarters) +
                ", shape: round 44, side: either, cost: 0.60, pack: 4, weight: 6}\n";
    }
    text += "  - {line: F-M-BK, kind: frame, takes: [round 44], axis step: 5, frame: {lens: 44, height: 36, "
            "bridge: 17, "
            "side: 140, size: medium, colour: black}, cost: 2.10, pack: 5, weight: 18}\n"
            "  - {line: F-S-BR, kind: frame, takes: [round 44], axis step: 5, frame: {lens: 44, height: 36, "
            "bridge: 14, "
            "side: 135, size: small, colour: brown}, cost: 2.10, pack: 5, weight: 17}\n";
    return text;
}

} // namespace

std::string supplierSample()
{
    return "# What the invented Gannet Row chandlery sells to camps on the Orrowen coast. Nobody sells at "
           "these\n"
           "# prices. Made by samples/generate. Prices are those of a piece, weights in grams; packs are "
           "whole.\n"
           "format: quarterstep supplier 1\n"
           "supplier: Gannet Row chandlery\n"
           "currency: shells\n"
           "lines:\n" +
           readers() + distancePairs() + lensesAndFrames() +
           "assorted packs:\n"
           "  - pack: MIX-READERS-62\n"
           "    cost: 11.50\n"
           "    holds: {N+100-62M-BK: 2, N+150-62M-BK: 2, N+200-62M-BK: 2, N+250-62M-BK: 2, N+300-62M-BK: 2, "
           "N+350-62M-BK: 2}\n"
           "  - pack: MIX-MINUS-60\n"
           "    cost: 11.00\n"
           "    holds: {D-100-60M: 2, D-150-60M: 2, D-200-60M: 2, D-250-60M: 2}\n";
}

} // namespace quarterstep::samples
