// SPDX-License-Identifier: GPL-3.0-or-later
// Ten thousand prescriptions of each format, with progress told. Baseline: the JSON library of Qt reading the
// same bytes without understanding them; for tables, cutting the lines at their commas.
#include "inventory/exchange/fhir.hpp"
#include "inventory/exchange/json_lines.hpp"
#include "inventory/exchange/mapped_table.hpp"
#include "tests/bench/plan.hpp"
#include "tests/exchange/random_persons.hpp"

#include <QJsonDocument>
#include <benchmark/benchmark.h>
#include <memory>
#include <sstream>

namespace quarterstep::bench
{

namespace
{

ImportOptions toldOptions(const std::shared_ptr<std::size_t>& told)
{
    return {"2026-11-27", [told](std::size_t done, std::size_t) { *told = done; }};
}

void planSeconds(Plan& plan, const std::string& name)
{
    plan.keep({name + "-seconds", [=](const Medians& medians) { return medians.at(name) * 1e-9; },
               Bound::atMost, 2.0});
}

void planRatio(Plan& plan, const std::string& name, const std::string& baseline, double limit)
{
    plan.keep({name + "-of-plain-reading",
               [=](const Medians& medians) { return medians.at(name) / medians.at(baseline); }, Bound::atMost,
               limit});
}

std::size_t takenOf(const std::vector<TableRow>& rows)
{
    std::size_t taken = 0;
    for (const auto& row : rows)
        taken += row.record ? 1 : 0;
    return taken;
}

} // namespace

void planExchange(Plan& plan)
{
    const auto count = static_cast<int>(plan.size(10000, 50));
    const auto persons = std::make_shared<std::vector<ExchangePerson>>(check::randomPersons(42, count));
    const auto bundle = std::make_shared<std::string>(writeFhirBundle(*persons, "2026-11-27").value);
    const auto lines = std::make_shared<std::string>(writeJsonLines(*persons).value);
    const auto table = std::make_shared<std::string>(writeFlatTable(*persons).value);
    const auto told = std::make_shared<std::size_t>(0);
    const auto expect = [&plan, persons, told](std::size_t taken) {
        if (taken != persons->size() || *told == 0)
            plan.disagree("exchange: " + std::to_string(taken) + " of " + std::to_string(persons->size()) +
                          " taken");
    };
    plan.note("exchange: FHIR " + std::to_string(bundle->size()) + " bytes, lines " +
              std::to_string(lines->size()) + ", table " + std::to_string(table->size()));
    plan.measure("exchange/qt-json", 1.0, [=] {
        auto document = QJsonDocument::fromJson(
            QByteArray::fromRawData(bundle->data(), static_cast<int>(bundle->size())));
        benchmark::DoNotOptimize(document);
    });
    plan.measure("exchange/fhir", 1.0,
                 [=] { expect(takenOf(readFhir(*bundle, "b", toldOptions(told)).value)); });
    plan.measure("exchange/json-lines", 1.0,
                 [=] { expect(takenOf(readJsonLines(*lines, "l", toldOptions(told)).value)); });
    plan.measure("exchange/cut-lines", 1.0, [=] {
        std::size_t cells = 0;
        std::istringstream stream(*table);
        for (std::string line; std::getline(stream, line);) {
            std::istringstream parts(line);
            for (std::string cell; std::getline(parts, cell, ',');)
                cells += cell.size();
        }
        benchmark::DoNotOptimize(cells);
    });
    plan.measure("exchange/table", 1.0,
                 [=] { expect(takenOf(readMappedTable(*table, "t", {}, toldOptions(told)).value.rows)); });
    for (const char* name : {"exchange/fhir", "exchange/json-lines", "exchange/table"})
        planSeconds(plan, name);
    planRatio(plan, "exchange/fhir", "exchange/qt-json", 4.0);
    planRatio(plan, "exchange/table", "exchange/cut-lines", 80.0);
}

} // namespace quarterstep::bench
