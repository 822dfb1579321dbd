// SPDX-License-Identifier: GPL-3.0-or-later
// The table of verbs and options.
#include "app/command/command_line.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <limits>
#include <stdexcept>

namespace quarterstep
{
namespace
{

constexpr std::size_t anyNumber = std::numeric_limits<std::size_t>::max();

} // namespace

const std::vector<OptionRow>& optionTable()
{
    static const std::vector<OptionRow> table{
        {"--camp", 1, "FOLDER",
         QT_TRANSLATE_NOOP("command", "the camp folder: stock.yaml, rules.yaml and the ledger")},
        {"--stock", 1, "FILE", QT_TRANSLATE_NOOP("command", "a stock file alone, without a ledger")},
        {"--rules", 1, "FILE",
         QT_TRANSLATE_NOOP("command", "rules of fit to go with --stock; the usual ones when left out")},
        {"--profile", 1, "NAME",
         QT_TRANSLATE_NOOP(
             "command", "rules to judge by: school, adult-distance, adult-near, strict or the camp's own")},
        {"--json", 0, "", QT_TRANSLATE_NOOP("command", "answer in JSON")},
        {"--all", 0, "", QT_TRANSLATE_NOOP("command", "every line, not only the six best groups")},
        {"--dry-run", 0, "", QT_TRANSLATE_NOOP("command", "say what would be done and write nothing")},
        {"--skip-bad-rows", 0, "", QT_TRANSLATE_NOOP("command", "leave rows with errors out and name them")},
        {"--person", 1, "CODE", QT_TRANSLATE_NOOP("command", "hand over to this person of the table only")},
        {"--purpose", 1, "PURPOSE",
         QT_TRANSLATE_NOOP("command", "distance, near, intermediate or bifocal, with --person or --explain")},
        {"--lines", 1, "LINE[,LINE,LINE]",
         QT_TRANSLATE_NOOP("command",
                           "what was picked: a ready-made pair, or frame, right lens and left lens")},
        {"--reason", 1, "TEXT", QT_TRANSLATE_NOOP("command", "why this pair, when it is outside a limit")},
        {"--acuity-right", 1, "ACUITY",
         QT_TRANSLATE_NOOP("command", "distance acuity of the right eye with this pair")},
        {"--acuity-left", 1, "ACUITY",
         QT_TRANSLATE_NOOP("command", "distance acuity of the left eye with this pair")},
        {"--near-acuity", 1, "ACUITY", QT_TRANSLATE_NOOP("command", "near acuity with this pair, as N6")},
        {"--checks", 1, "LIST",
         QT_TRANSLATE_NOOP("command", "what was checked with this pair: power,fit,instructions")},
        {"--actor", 1, "NAME", QT_TRANSLATE_NOOP("command", "who hands over, for the ledger")},
        {"--check", 0, "",
         QT_TRANSLATE_NOOP("command", "check every entry of the ledger and end with 3 if one is bad")},
        {"--vertex", 2, "FROM TO", QT_TRANSLATE_NOOP("command", "also at another vertex distance, in mm")},
        {"--prism", 2, "MM_RIGHT MM_UP",
         QT_TRANSLATE_NOOP("command", "also the prism at a point of the lens, mm from its centre as seen by "
                                      "whoever faces the wearer")},
        {"--crossed", 0, "", QT_TRANSLATE_NOOP("command", "also as two crossed cylinders")},
        {"--over", 1, "POWER",
         QT_TRANSLATE_NOOP("command", "also together with this power: worn and found over it, or crossed")},
        {"--meridian", 1, "DEGREES", QT_TRANSLATE_NOOP("command", "also the power along a meridian")},
        {"--decentre", 2, "IN UP",
         QT_TRANSLATE_NOOP("command", "also where to move the centre for a prism, Δ base in and base up "
                                      "(out and down negative)")},
        {"--near", 1, "POWER",
         QT_TRANSLATE_NOOP("command", "also the addition that makes this near power of it")},
        {"--loss", 0, "",
         QT_TRANSLATE_NOOP("command",
                           "also the acuity lost if this were the error left over, by each model")},
        {"--readings", 1, "FILE",
         QT_TRANSLATE_NOOP("command", "instead of texts: repeated readings of each eye, summed up (CSV)")},
        {"--finals", 1, "TABLE",
         QT_TRANSLATE_NOOP("command", "with --readings: compared with the final prescriptions of a table")},
        {"--age", 1, "YEARS",
         QT_TRANSLATE_NOOP("command", "instead of texts: near additions usual at this age, by each model")},
        {"--amplitude", 1, "DIOPTRES",
         QT_TRANSLATE_NOOP("command", "near additions from a measured amplitude of accommodation")},
        {"--working", 1, "MM",
         QT_TRANSLATE_NOOP("command", "working distance from the spectacle plane; 400 when left out")},
        {"--box", 3, "LENS BETWEEN PD",
         QT_TRANSLATE_NOOP("command", "instead of texts: centration of a frame, boxed sizes in mm")},
        {"--surfaces", 4, "FRONT BACK MM INDEX",
         QT_TRANSLATE_NOOP("command", "instead of texts: vertex powers of a thick lens")},
        {"--set", 1, "NAME", QT_TRANSLATE_NOOP("command", "tolerance set; ansi-z80.1-2015 when left out")},
        {"--tolerances", 1, "FILE", QT_TRANSLATE_NOOP("command", "tolerance sets of your own (YAML)")},
        {"--explain", 2, "PERSON LINE[,LINE,LINE]",
         QT_TRANSLATE_NOOP("command",
                           "this pair for this person in full: crosses, every criterion, sources")},
        {"--assume", 1, "LIST",
         QT_TRANSLATE_NOOP("command",
                           "what the table leaves out is taken as given: centred (PD = centres of each "
                           "pair), final (readings are final), vertex (that of the stock)")},
        {"--above", 1, "LINE[,LINE,LINE]",
         QT_TRANSLATE_NOOP("command", "with --explain: which of the two stands above the other, and why")},
        {"--readings", 1, "FILE",
         QT_TRANSLATE_NOOP("command", "repeated readings (CSV): their scatter goes into the chance shown")},
        {"--form", 1, "FORM",
         QT_TRANSLATE_NOOP("command",
                           "cylinders of the laboratory order: minus (when left out), plus or as-written")},
        {"--acuity", 0, "", QT_TRANSLATE_NOOP("command", "the texts are acuities, not powers")},
    };
    return table;
}

const OptionRow& optionNamed(const std::string& name)
{
    const auto& table = optionTable();
    const auto found =
        std::find_if(table.begin(), table.end(), [&](const auto& row) { return name == row.name; });
    if (found == table.end())
        throw std::logic_error("verb with an option that is not in the table: " + name);
    return *found;
}

const std::vector<VerbRow>& verbTable()
{
    static const std::vector<VerbRow> table{
        {"match",
         QT_TRANSLATE_NOOP("command", "which stocked pair serves each person, and how well"),
         "TABLE",
         1,
         1,
         {"--camp", "--stock", "--rules", "--profile", "--all", "--explain", "--above", "--purpose",
          "--acuity-right", "--acuity-left", "--near-acuity", "--readings", "--form", "--json"},
         {},
         {"quarterstep match --camp orrowen people.csv",
          "quarterstep match --stock stock.yaml --json people.csv",
          "quarterstep match --camp orrowen --explain 0042 N+200-62M-BK people.csv"},
         runMatch},
        {"dispense",
         QT_TRANSLATE_NOOP("command",
                           "hand over: the best acceptable pair to each person in order, or one picked pair"),
         "TABLE",
         1,
         1,
         {"--camp", "--profile", "--person", "--purpose", "--lines", "--reason", "--acuity-right",
          "--acuity-left", "--near-acuity", "--checks", "--actor", "--skip-bad-rows", "--dry-run", "--json"},
         {"--camp"},
         {"quarterstep dispense --camp orrowen --dry-run people.csv",
          "quarterstep dispense --camp orrowen --person 0042 --lines N+200-62M-BK people.csv"},
         runDispense},
        {"stock",
         QT_TRANSLATE_NOOP("command", "what is in the box and what the ledger says"),
         "",
         0,
         0,
         {"--camp", "--check", "--json"},
         {"--camp"},
         {"quarterstep stock --camp orrowen"},
         runStock},
        {"coverage",
         QT_TRANSLATE_NOOP("command", "how many of a table the stock serves, and why not the others"),
         "TABLE",
         1,
         1,
         {"--camp", "--stock", "--rules", "--profile", "--assume", "--json"},
         {},
         {"quarterstep coverage --stock stock.yaml people.csv",
          "quarterstep coverage --stock stock.yaml --assume centred,final,vertex survey.csv"},
         runCoverage},
        {"convert",
         QT_TRANSLATE_NOOP("command", "written powers in both cylinder forms and as power vectors"),
         "TEXT…",
         0,
         anyNumber,
         {"--vertex", "--prism", "--decentre", "--crossed", "--over", "--meridian", "--near", "--loss",
          "--acuity", "--readings", "--finals", "--age", "--amplitude", "--working", "--box", "--surfaces",
          "--json"},
         {},
         {"quarterstep convert \"-1.25 -0.50 x 90\"", "quarterstep convert --acuity 6/9 \"0.5 decimal\"",
          "quarterstep convert --readings readings.csv", "quarterstep convert --age 52"},
         runConvert},
        {"verify",
         QT_TRANSLATE_NOOP("command", "what a focimeter reads against what was ordered, by a tolerance set"),
         "ORDER READING [ORDER_LEFT READING_LEFT]",
         2,
         4,
         {"--set", "--tolerances", "--json"},
         {},
         {"quarterstep verify \"-2.00 -1.00 x 90\" \"-2.12 -1.00 x 94\""},
         runVerify},
        {"help",
         QT_TRANSLATE_NOOP("command", "this help, or that of one verb or topic"),
         "[VERB | TOPIC]",
         0,
         1,
         {},
         {},
         {"quarterstep help match", "quarterstep help notation"},
         runHelp},
    };
    return table;
}

const VerbRow* verbNamed(const std::string& name)
{
    for (const auto& verb : verbTable())
        if (name == verb.name)
            return &verb;
    return nullptr;
}

} // namespace quarterstep
