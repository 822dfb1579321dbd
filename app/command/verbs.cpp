// SPDX-License-Identifier: GPL-3.0-or-later
// The table of verbs. That of their options stands in option_table.cpp.
#include "app/command/command_line.hpp"

#include <QCoreApplication>

#include <limits>

namespace quarterstep
{
namespace
{

constexpr std::size_t anyNumber = std::numeric_limits<std::size_t>::max();

} // namespace

const std::vector<VerbRow>& verbTable()
{
    static const std::vector<VerbRow> table{
        {"match",
         QT_TRANSLATE_NOOP("command", "which stocked pair serves each person, and how well"),
         "TABLE",
         1,
         1,
         {"--camp", "--stock", "--rules", "--profile", "--all", "--json"},
         {},
         {"quarterstep match --camp orrowen people.csv",
          "quarterstep match --stock stock.yaml --json people.csv"},
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
         {"--camp", "--line", "--check", "--camp-people", "--accept-edits", "--discard-edits", "--moved-here",
          "--second-station", "--reason", "--dry-run", "--json"},
         {"--camp"},
         {"quarterstep stock --camp orrowen", "quarterstep stock --camp orrowen --line N+200-62M-BK"},
         runStock},
        {"receive",
         QT_TRANSLATE_NOOP("command", "a delivery into the box, by list, by scanning or one line"),
         "[LIST]",
         0,
         1,
         {"--camp", "--line", "--quantity", "--from", "--note", "--quarantine", "--actor", "--dry-run",
          "--json"},
         {"--camp"},
         {"quarterstep receive --camp orrowen delivery.csv",
          "quarterstep receive --camp orrowen --line L+250 --quantity 6"},
         runReceive},
        {"count",
         QT_TRANSLATE_NOOP("command", "a blind sheet to count by, or the sheet two persons filled in"),
         "[LIST]",
         0,
         1,
         {"--camp", "--bin", "--counted-by", "--second", "--reason", "--cause", "--line", "--quantity",
          "--dry-run", "--json"},
         {"--camp"},
         {"quarterstep count --camp orrowen > sheet.csv",
          "quarterstep count --camp orrowen --counted-by AB --second CD sheet.csv"},
         runCount},
        {"transfer",
         QT_TRANSLATE_NOOP("command", "out to another site, in from one; alone: what is in the air"),
         "[out|in [LIST]]",
         0,
         2,
         {"--camp", "--to", "--from", "--sent", "--line", "--quantity", "--note", "--actor", "--dry-run",
          "--json"},
         {"--camp"},
         {"quarterstep transfer --camp orrowen out --to \"Tamsin Bay box 1\" list.csv",
          "quarterstep transfer --camp orrowen"},
         runTransfer},
        {"record",
         QT_TRANSLATE_NOOP("command",
                           "one thing that happened: returned, exchanged, written-off, held, quarantined, "
                           "released, not-needed, declined, incomplete, adjusted, referred, "
                           "entered-in-error"),
         "KIND",
         1,
         1,
         {"--camp", "--line", "--quantity", "--person", "--back", "--cause", "--reason", "--note", "--lot",
          "--until", "--held", "--quarantine", "--to-stock", "--entry", "--actor", "--dry-run", "--json"},
         {"--camp"},
         {"quarterstep record --camp orrowen written-off --line L+250 --cause damaged",
          "quarterstep record --camp orrowen entered-in-error --person 0042 --reason \"wrong person\""},
         runRecord},
        {"order",
         QT_TRANSLATE_NOOP("command",
                           "custom spectacles: ordered, arrived, checked, delivered, remade, not-collected; "
                           "alone: the open orders"),
         "[STEP]",
         0,
         1,
         {"--camp", "--person", "--order", "--line", "--reason", "--note", "--actor", "--all", "--dry-run",
          "--json"},
         {"--camp"},
         {"quarterstep order --camp orrowen ordered --person 0042 --line F-M-BK",
          "quarterstep order --camp orrowen"},
         runOrder},
        {"coverage",
         QT_TRANSLATE_NOOP("command", "how many of a table the stock serves, and why not the others"),
         "TABLE",
         1,
         1,
         {"--camp", "--stock", "--rules", "--profile", "--json"},
         {},
         {"quarterstep coverage --stock stock.yaml people.csv"},
         runCoverage},
        {"convert",
         QT_TRANSLATE_NOOP("command", "written powers in both cylinder forms and as power vectors"),
         "TEXT…",
         1,
         anyNumber,
         {"--vertex", "--prism", "--crossed", "--acuity", "--json"},
         {},
         {"quarterstep convert \"-1.25 -0.50 x 90\"", "quarterstep convert --acuity 6/9 \"0.5 decimal\""},
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
         QT_TRANSLATE_NOOP("command", "this help, or that of one verb"),
         "[VERB]",
         0,
         1,
         {},
         {},
         {"quarterstep help match"},
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
