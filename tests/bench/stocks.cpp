// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/stocks.hpp"

#include "inventory/text/csv.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/source_text.hpp"

#include <charconv>
#include <cmath>
#include <fstream>
#include <random>
#include <sstream>

namespace quarterstep::bench
{

namespace
{

double between(std::mt19937& random, double least, double most)
{
    return least + (most - least) * (static_cast<double>(random()) / 4294967296.0);
}

double quarter(double size)
{
    return std::round(size * 4.0) / 4.0;
}

StockLine lineOf(LineKind kind, std::size_t number)
{
    StockLine line;
    line.kind = kind;
    line.name = "L" + std::to_string(number);
    line.onHand = 2;
    line.centres = 62.0;
    return line;
}

StockLine frameOf(double centres)
{
    auto frame = lineOf(LineKind::frame, 0);
    frame.centres = centres;
    frame.takes = {"round"};
    return frame;
}

StockLine lensOf(std::size_t number, const SpheroCylinder& power)
{
    auto lens = lineOf(LineKind::lens, number);
    lens.power = {power, power};
    lens.shape = "round";
    return lens;
}

double numberOf(const std::string& text)
{
    double number = 0.0;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return number;
}

SpheroCylinder powerOf(const std::vector<std::string>& cells, std::size_t first)
{
    const double axis = numberOf(cells[first + 2]);
    return {Dioptres{numberOf(cells[first])}, Dioptres{numberOf(cells[first + 1])},
            AxisDegrees{axis > 0.0 ? axis : 180.0}};
}

std::string textOf(const char* name)
{
    std::ifstream file(std::string(QS_SOURCE_DIR "/tests/open_data/") + name);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

} // namespace

std::vector<StockLine> lensStock(std::size_t count)
{
    std::mt19937 random(7);
    std::vector<StockLine> stock{frameOf(62.0)};
    for (std::size_t i = 1; i <= count; ++i) {
        const double sphere = quarter(between(random, -6.0, 4.0));
        const double cylinder = quarter(between(random, -2.0, 0.0));
        const double axis = 5.0 * static_cast<double>(1U + random() % 36U);
        stock.push_back(lensOf(i, {Dioptres{sphere}, Dioptres{cylinder}, AxisDegrees{axis}}));
    }
    return stock;
}

std::vector<StockLine> lensesThatNeverPair(std::size_t count)
{
    std::mt19937 random(8);
    std::vector<StockLine> stock{frameOf(67.0)};
    for (std::size_t i = 1; i <= count; ++i)
        stock.push_back(
            lensOf(i, {Dioptres{between(random, -3.6, -2.55)}, Dioptres{between(random, -0.2, -0.01)},
                       AxisDegrees{between(random, 1.0, 180.0)}}));
    return stock;
}

std::vector<StockLine> oneOffStock(std::size_t count)
{
    std::mt19937 random(9);
    std::vector<StockLine> stock;
    stock.reserve(count);
    for (std::size_t i = 0; i < count; ++i) {
        auto line = lineOf(LineKind::readyMade, i);
        const double sphere = between(random, -6.0, 4.0);
        for (const Eye eye : bothEyes)
            line.power.of(eye) = {Dioptres{sphere + between(random, -1.0, 1.0)},
                                  Dioptres{between(random, -2.0, 0.0)},
                                  AxisDegrees{between(random, 1.0, 180.0)}};
        stock.push_back(std::move(line));
    }
    return stock;
}

std::vector<StockLine> regularStock(std::size_t count)
{
    std::vector<StockLine> stock;
    for (std::size_t i = 0; stock.size() < count * 8 / 10; ++i) {
        auto pair = lineOf(LineKind::readyMade, i);
        pair.power.right = sphereOf(static_cast<double>(i % 41) / 4.0 - 6.0);
        pair.power.left = pair.power.right;
        pair.centres = 58.0 + 2.0 * static_cast<double>(i / 41 % 5);
        pair.frame.sizeClass = i / 205 % 2 == 0 ? "medium" : "large";
        stock.push_back(std::move(pair));
    }
    while (stock.size() < count * 19 / 20) {
        const std::size_t i = stock.size();
        auto lens = lensOf(i, {Dioptres{static_cast<double>(i % 41) / 4.0 - 6.0},
                               Dioptres{static_cast<double>(i / 41 % 5) / -4.0}, AxisDegrees{180.0}});
        lens.anyAxis = true;
        stock.push_back(std::move(lens));
    }
    while (stock.size() < count) {
        auto frame = frameOf(58.0 + 2.0 * static_cast<double>(stock.size() % 5));
        frame.name = "F" + std::to_string(stock.size());
        stock.push_back(std::move(frame));
    }
    return stock;
}

std::vector<StockLine> wornStock(std::size_t most)
{
    std::istringstream text(textOf("survey_worn_glasses.csv"));
    std::vector<StockLine> stock;
    std::string row;
    std::getline(text, row);
    while (stock.size() < most && std::getline(text, row)) {
        std::vector<std::string> cells;
        std::istringstream columns(row);
        for (std::string cell; std::getline(columns, cell, ',');)
            cells.push_back(cell);
        auto line = lineOf(LineKind::readyMade, stock.size());
        line.power = {powerOf(cells, 4), powerOf(cells, 7)};
        stock.push_back(std::move(line));
    }
    return stock;
}

std::vector<PersonRecord> surveyPeople(std::size_t most)
{
    const auto table = readPrescriptionText(textOf("survey_need_glasses.csv"), "survey", "");
    std::vector<PersonRecord> people;
    for (const auto& row : table.value.rows)
        if (row.record && people.size() < most) {
            people.push_back(*row.record);
            people.back().distancePd = 62.0;
        }
    return people;
}

PersonRecord adultNeeding(const SpheroCylinder& right, const SpheroCylinder& left)
{
    PersonRecord person;
    person.person = "bench";
    person.age = 30.0;
    person.purpose = Purpose::distance;
    person.eyes.right.final.power = right;
    person.eyes.left.final.power = left;
    person.distancePd = 62.0;
    return person;
}

} // namespace quarterstep::bench
