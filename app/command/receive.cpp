// SPDX-License-Identifier: GPL-3.0-or-later
// receive: a delivery into the box, by list, by scanning or one line. The whole list is read first.
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"

namespace quarterstep
{

int runReceive(const CommandLine& line, Output& out)
{
    auto rows = rowsOf(line, line.arguments.empty() ? "" : line.arguments.front(), out);
    auto camp = openForWork(line, out);
    (void)keepGoodRows(line, takeNames(camp, rows), rows, out);
    Delivery delivery;
    delivery.actor = line.value("--actor");
    delivery.from = line.value("--from");
    delivery.note = line.value("--note");
    delivery.lot = line.value("--lot");
    delivery.quarantine = line.has("--quarantine");
    return carryOutAndShow(line, camp, deliveryOf(rows, delivery), out);
}

} // namespace quarterstep
