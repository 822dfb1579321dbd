// SPDX-License-Identifier: GPL-3.0-or-later
// The table of options, shared by the verbs.
#include "app/command/command_line.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <stdexcept>

namespace quarterstep
{

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
        {"--all", 0, "",
         QT_TRANSLATE_NOOP("command", "everything, not only the six best groups or what is open")},
        {"--dry-run", 0, "", QT_TRANSLATE_NOOP("command", "say what would be done and write nothing")},
        {"--skip-bad-rows", 0, "", QT_TRANSLATE_NOOP("command", "leave rows with errors out and name them")},
        {"--person", 1, "CODE", QT_TRANSLATE_NOOP("command", "the person, by the camp code")},
        {"--purpose", 1, "PURPOSE",
         QT_TRANSLATE_NOOP("command", "distance, near, intermediate or bifocal, with --person or --explain")},
        {"--lines", 1, "LINE[,LINE,LINE]",
         QT_TRANSLATE_NOOP("command",
                           "what was picked: a ready-made pair, or frame, right lens and left lens; - reads "
                           "scanned labels from standard input")},
        {"--reason", 1, "TEXT",
         QT_TRANSLATE_NOOP("command",
                           "why, in your own words: a pair outside a limit, a difference, a loss")},
        {"--acuity-right", 1, "ACUITY",
         QT_TRANSLATE_NOOP("command", "distance acuity of the right eye with this pair")},
        {"--acuity-left", 1, "ACUITY",
         QT_TRANSLATE_NOOP("command", "distance acuity of the left eye with this pair")},
        {"--near-acuity", 1, "ACUITY", QT_TRANSLATE_NOOP("command", "near acuity with this pair, as N6")},
        {"--checks", 1, "LIST",
         QT_TRANSLATE_NOOP("command", "what was checked with this pair: power,fit,instructions")},
        {"--actor", 1, "NAME", QT_TRANSLATE_NOOP("command", "who does it, for the ledger")},
        {"--check", 0, "",
         QT_TRANSLATE_NOOP("command", "check every entry of the ledger and end with 3 if one is bad")},
        {"--vertex", 2, "FROM TO", QT_TRANSLATE_NOOP("command", "also at another vertex distance, in mm")},
        {"--prism", 2, "MM_RIGHT MM_UP",
         QT_TRANSLATE_NOOP("command", "also the prism at a point of the lens, mm from its centre as seen by "
                                      "whoever faces the wearer")},
        {"--crossed", 0, "", QT_TRANSLATE_NOOP("command", "also as two crossed cylinders")},
        {"--explain", 2, "PERSON LINE[,LINE,LINE]",
         QT_TRANSLATE_NOOP("command",
                           "this pair for this person in full: crosses, every criterion, sources")},
        {"--keep-scarce", 0, "",
         QT_TRANSLATE_NOOP("command", "of pairs that are equal to a person, the one that others of the table "
                                      "need less")},
        {"--assume", 1, "LIST",
         QT_TRANSLATE_NOOP("command",
                           "what the table leaves out is taken as given: centred (PD = centres of each "
                           "pair), final (readings are final), vertex (that of the stock)")},
        {"--above", 1, "LINE[,LINE,LINE]",
         QT_TRANSLATE_NOOP("command", "with --explain: which of the two stands above the other, and why")},
        {"--form", 1, "FORM",
         QT_TRANSLATE_NOOP("command",
                           "cylinders of the laboratory order: minus (when left out), plus or as-written")},
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
         QT_TRANSLATE_NOOP(
             "command",
             "repeated readings of each eye (CSV): summed up, or their scatter goes into the chance shown")},
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
        {"--acuity", 0, "", QT_TRANSLATE_NOOP("command", "the texts are acuities, not powers")},
        {"--line", 1, "LINE", QT_TRANSLATE_NOOP("command", "one line of the stock")},
        {"--quantity", 1, "N", QT_TRANSLATE_NOOP("command", "how many pieces of --line; 1 when left out")},
        {"--from", 1, "WHO", QT_TRANSLATE_NOOP("command", "supplier, donor or site it comes from")},
        {"--to", 1, "SITE", QT_TRANSLATE_NOOP("command", "the site it goes to")},
        {"--sent", 1, "ENTRY", QT_TRANSLATE_NOOP("command", "the entry with which the other site sent it")},
        {"--note", 1, "TEXT", QT_TRANSLATE_NOOP("command", "a remark to keep with the entry")},
        {"--quarantine", 0, "", QT_TRANSLATE_NOOP("command", "into quarantine, or out of it")},
        {"--held", 0, "", QT_TRANSLATE_NOOP("command", "of the pieces held")},
        {"--to-stock", 0, "",
         QT_TRANSLATE_NOOP("command", "returned, cleaned and read: straight back to stock")},
        {"--bin", 1, "BIN", QT_TRANSLATE_NOOP("command", "a sheet for this bin alone")},
        {"--counted-by", 1, "INITIALS", QT_TRANSLATE_NOOP("command", "who counted")},
        {"--second", 1, "INITIALS", QT_TRANSLATE_NOOP("command", "the second person of a count")},
        {"--cause", 1, "WORD",
         QT_TRANSLATE_NOOP("command",
                           "damaged, missing, stolen, found, miscounted, off-label, mislabelled, sample, "
                           "given-away or recalled")},
        {"--back", 1, "LINE", QT_TRANSLATE_NOOP("command", "what comes back in an exchange")},
        {"--lot", 1, "LOT", QT_TRANSLATE_NOOP("command", "the lot it belongs to")},
        {"--until", 1, "DATE", QT_TRANSLATE_NOOP("command", "how long it is held, as 2026-03-01")},
        {"--entry", 1, "ENTRY", QT_TRANSLATE_NOOP("command", "the entry to take back")},
        {"--order", 1, "ENTRY", QT_TRANSLATE_NOOP("command", "the order, by its entry")},
        {"--camp-people", 1, "N",
         QT_TRANSLATE_NOOP("command", "people seen at one camp, for camps of stock; 100 when left out")},
        {"--priors", 1, "FILE",
         QT_TRANSLATE_NOOP("command", "thresholds and priors of slips of your own (YAML)")},
        {"--explain-entry", 1, "ENTRY",
         QT_TRANSLATE_NOOP("command", "one hand-over in full, with the arithmetic of every slip")},
        {"--folder", 1, "FOLDER", QT_TRANSLATE_NOOP("command", "a new folder for a copy of the whole camp")},
        {"--level", 1, "LEVEL",
         QT_TRANSLATE_NOOP("command",
                           "aggregate (counts, small ones hidden), rows (persons by numbers) or full")},
        {"--output", 1, "FILE",
         QT_TRANSLATE_NOOP("command", "the file to write: CSV (standard output when left out), or for print "
                                      "one that ends in .pdf or .png")},
        {"--text", 0, "", QT_TRANSLATE_NOOP("command", "the paper as lines of text")},
        {"--printer", 1, "NAME", QT_TRANSLATE_NOOP("command", "the printer to print on")},
        {"--language", 1, "CODE", QT_TRANSLATE_NOOP("command", "language of the paper: en, ar or hi")},
        {"--size", 1, "SIZE",
         QT_TRANSLATE_NOOP("command", "a4, a5, a6, roll-80, roll-58 or label; the usual one when left out")},
        {"--label-size", 1, "MMxMM",
         QT_TRANSLATE_NOOP("command", "width and height of a label; 63.5x38.1 when left out")},
        {"--large", 0, "", QT_TRANSLATE_NOOP("command", "large print")},
        {"--dpi", 1, "DOTS",
         QT_TRANSLATE_NOOP("command", "dots an inch of a picture, those of the printer; 300 when left out")},
        {"--role", 1, "ROLE",
         QT_TRANSLATE_NOOP("command", "of a quick card: optician, keeper or supervisor")},
        {"--first", 1, "LIST",
         QT_TRANSLATE_NOOP("command", "who comes first when not all can be served: children, first-pairs, "
                                      "worst-sight; the first named matters most")},
        {"--weigh", 1, "GROUP=N[,…]",
         QT_TRANSLATE_NOOP("command", "what one person of a group counts, as children=3; groups: children, "
                                      "adults, distance, near, intermediate, bifocal")},
        {"--least", 1, "GROUP=PERCENT[,…]",
         QT_TRANSLATE_NOOP("command", "serve at least this part of a group that waits, as children=80")},
        {"--told", 1, "LIST",
         QT_TRANSLATE_NOOP("command", "who was told a pair already (CSV: person, purpose, lines); kept")},
        {"--used-up", 0, "",
         QT_TRANSLATE_NOOP("command",
                           "coverage: also with the pieces that are there, first come and planned")},
        {"--prices", 0, "",
         QT_TRANSLATE_NOOP("command", "also what one more piece of each line would change")},
        {"--supplier", 1, "FILE", QT_TRANSLATE_NOOP("command", "what a supplier sells (YAML)")},
        {"--budget", 1, "MONEY",
         QT_TRANSLATE_NOOP("command", "money that may be spent, in the supplier's currency")},
        {"--weight", 1, "KG", QT_TRANSLATE_NOOP("command", "most that what is bought may weigh")},
        {"--boxes", 1, "N", QT_TRANSLATE_NOOP("command", "boxes that are carried, what is on hand included")},
        {"--box-pieces", 1, "N",
         QT_TRANSLATE_NOOP("command", "pieces that fit into a box; 60 when left out")},
        {"--people", 1, "N", QT_TRANSLATE_NOOP("command", "people who come next; 100 when left out")},
        {"--scenarios", 1, "N", QT_TRANSLATE_NOOP("command", "draws planned for; 50 when left out")},
        {"--days", 1, "N", QT_TRANSLATE_NOOP("command", "days to simulate; 200 when left out")},
        {"--line-length", 1, "N",
         QT_TRANSLATE_NOOP("command", "people planned for together; 20 when left out")},
        {"--seed", 1, "N", QT_TRANSLATE_NOOP("command", "of what is drawn by lot; 1 when left out")},
        {"--prior", 1, "N",
         QT_TRANSLATE_NOOP(
             "command",
             "mix with the published mix of a camp, weighing as N people; 30 for fewer than 100, else 0")},
        {"--boxes-list", 1, "FILE",
         QT_TRANSLATE_NOOP("command", "the packing list by box and bin to write (CSV)")},
        {"--accept-edits", 0, "",
         QT_TRANSLATE_NOOP("command", "take counts changed by hand in stock.yaml over into the ledger")},
        {"--discard-edits", 0, "",
         QT_TRANSLATE_NOOP("command", "put the ledger's counts back into stock.yaml")},
        {"--moved-here", 0, "",
         QT_TRANSLATE_NOOP("command", "this folder was moved here; the other copy is used no more")},
        {"--names", 1, "FILE",
         QT_TRANSLATE_NOOP(
             "command", "names of persons (CSV: person,name), kept beside the entries under the camp code")},
        {"--set-pin", 1, "ROLE",
         QT_TRANSLATE_NOOP("command", "ask for a PIN from now on: optician, keeper or supervisor")},
        {"--remove-pin", 1, "ROLE", QT_TRANSLATE_NOOP("command", "ask for no PIN any more")},
        {"--pin-fd", 1, "N",
         QT_TRANSLATE_NOOP("command", "read the PIN from this file descriptor; or set QUARTERSTEP_PIN")},
        {"--new-pin-fd", 1, "N",
         QT_TRANSLATE_NOOP("command",
                           "read the new PIN from this file descriptor; or set QUARTERSTEP_NEW_PIN")},
        {"--second-station", 0, "",
         QT_TRANSLATE_NOOP("command", "this folder was copied here and both are used")},
        {"--set-up", 1, "ADDRESS",
         QT_TRANSLATE_NOOP("command",
                           "make a shared ledger in the empty database of this address; with --dry-run the "
                           "script is printed")},
        {"--move-ledger", 1, "LEDGER",
         QT_TRANSLATE_NOOP("command",
                           "move everything to the shared ledger of this address, or to this new file")},
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

} // namespace quarterstep
