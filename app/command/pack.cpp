// SPDX-License-Identifier: GPL-3.0-or-later
// pack: what to order for the next camp under a budget, and how it goes into the boxes.
#include "app/command/answers.hpp"
#include "app/command/line_choices.hpp"
#include "app/command/output.hpp"
#include "app/command/pack_answers.hpp"
#include "app/command/planning_inputs.hpp"
#include "app/command/watched_work.hpp"
#include "app/session/pack_lists.hpp"
#include "inventory/store/write_back.hpp"
#include "inventory/text/numbers.hpp"

namespace quarterstep
{
namespace
{

PackQuestion questionOf(const CommandLine& line, const Box& box, DemandRead demand, SupplierList supplier)
{
    PackQuestion question;
    question.demand = std::move(demand.demand);
    question.supplier = std::move(supplier);
    question.match = matchOptions(line, box.rules);
    question.match.assumeCentred = demand.centred;
    question.budget = thousandthsOption(line, "--budget", 0.0, 1e9).value_or(0);
    question.grams = thousandthsOption(line, "--weight", 0.0, 1e5); // thousandths of a kilogram
    if (const auto boxes = wholeOption(line, "--boxes", 1, 10000))
        question.boxes = static_cast<int>(*boxes);
    question.piecesInBox =
        static_cast<int>(wholeOption(line, "--box-pieces", 1, 100000).value_or(question.piecesInBox));
    question.people = static_cast<int>(wholeOption(line, "--people", 1, 100000).value_or(question.people));
    question.scenarios =
        static_cast<int>(wholeOption(line, "--scenarios", 1, 1000).value_or(question.scenarios));
    question.seed = static_cast<std::uint64_t>(wholeOption(line, "--seed", 0, 1000000000).value_or(1));
    question.effort.seed = question.seed;
    return question;
}

void writeLists(const CommandLine& line, const PackAnswer& answer)
{
    if (line.has("--output"))
        replaceFile(line.value("--output"), orderCsv(answer), true);
    if (line.has("--boxes-list"))
        replaceFile(line.value("--boxes-list"), boxesCsv(answer), true);
}

} // namespace

int runPack(const CommandLine& line, Output& out)
{
    const auto box = openBox(line, out);
    auto supplier = readSupplierList(line.value("--supplier"));
    out.tell(supplier.findings);
    if (!supplier.usable())
        throw FilesNotRead();
    auto demand = readDemand(line, box, out);
    const auto told = demand.told;
    const int badRows = demand.badRows;
    const auto currency = QString::fromStdString(supplier.value.currency);
    const auto question = questionOf(line, box, std::move(demand), std::move(supplier.value));
    WatchedWork work;
    const auto answer = packBoxes(box.stock, box.rules, question, work.job());
    work.done();
    if (line.has("--json"))
        out.json(jsonPacking(answer, question, told));
    else
        showPacking(answer, question, told, currency, out);
    if (!answer.nothing.empty())
        out.tell(answer.impossible ? Severity::caution : Severity::note, {}, "nothing-bought",
                 answer.nothing);
    if (!answer.impossible)
        writeLists(line, answer);
    if (badRows > 0)
        return Exit::badData;
    return answer.impossible ? Exit::unserved : Exit::done;
}

} // namespace quarterstep
