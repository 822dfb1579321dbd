// SPDX-License-Identifier: GPL-3.0-or-later
// Hand-worked people, each criterion just inside, at and just outside each limit: the measured size, its
// band, the band of the whole pair and the verdict. Rows with their working and source stand in
// tests/check_values/fit_golden.csv; golden_arithmetic.py works the numbers and bands out again without us.
#define BOOST_TEST_MODULE golden
#include <boost/test/unit_test.hpp>

#include "core/fitting/criteria/table.hpp"
#include "core/fitting/recommendation.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/rules_file.hpp"
#include "inventory/text/stock_file.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <map>
#include <set>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{

constexpr double printed = 0.0006; // measured values are printed to a ten-thousandth; prism to a thousandth

using Row = std::map<std::string, std::string>;

/// One CSV row; quotes as in RFC 4180.
std::vector<std::string> cells(const std::string& row)
{
    std::vector<std::string> result(1);
    bool quoted = false;
    for (std::size_t i = 0; i < row.size(); ++i)
        if (row[i] == '"' && quoted && i + 1 < row.size() && row[i + 1] == '"')
            result.back() += row[++i];
        else if (row[i] == '"')
            quoted = !quoted;
        else if (row[i] == ',' && !quoted)
            result.emplace_back();
        else
            result.back() += row[i];
    return result;
}

std::vector<Row> readRows()
{
    std::ifstream file(QS_SOURCE_DIR "/tests/check_values/fit_golden.csv");
    std::string line;
    std::getline(file, line);
    const auto header = cells(line);
    std::vector<Row> rows;
    while (std::getline(file, line)) {
        const auto values = cells(line);
        BOOST_REQUIRE_EQUAL(values.size(), header.size());
        Row row;
        for (std::size_t i = 0; i < header.size(); ++i)
            row[header[i]] = values[i];
        rows.push_back(std::move(row));
    }
    return rows;
}

PersonRecord personOf(const Row& row)
{
    static const std::set<std::string> notColumns{
        "criterion", "profile", "trial_right", "trial_left", "trial_near", "stock", "working", "measured",
        "limits",    "band",    "fit",         "verdict",    "why",        "label", "source",  "case"};
    std::string header = "person";
    std::string values = row.at("case");
    for (const auto& [column, value] : row) {
        if (notColumns.count(column) != 0 || value.empty())
            continue;
        header += "," + column;
        values += "," + value;
    }
    const auto table = readPrescriptionText(header + "\n" + values + "\n", "golden", "");
    BOOST_REQUIRE(table.usable());
    BOOST_REQUIRE(table.value.rows.at(0).record.has_value());
    return *table.value.rows[0].record;
}

std::vector<StockLine> stockOf(const Row& row)
{
    std::string text = "format: quarterstep stock 1\nsite: golden\nlines:\n";
    std::string rest = row.at("stock");
    for (std::size_t at; !rest.empty();) {
        at = rest.find(" / ");
        text += "  - " + rest.substr(0, at) + "\n";
        rest = at == std::string::npos ? std::string() : rest.substr(at + 3);
    }
    const auto reading = readStockText(text, "golden");
    for (const auto& finding : reading.findings)
        BOOST_TEST_MESSAGE(finding.code);
    BOOST_REQUIRE(reading.usable());
    return reading.value.lines;
}

std::optional<TrialAcuity> trialOf(const Row& row)
{
    TrialAcuity trial;
    if (!row.at("trial_right").empty())
        trial.distance = {parseAcuity(row.at("trial_right")).value(),
                          parseAcuity(row.at("trial_left")).value()};
    if (!row.at("trial_near").empty())
        trial.near = parseNearAcuity(row.at("trial_near")).value();
    if (!trial.distance.right && !trial.near)
        return {};
    return trial;
}

const char* word(Band band)
{
    constexpr const char* words[] = {"fits", "caution", "on_trial", "fails", "shown", "not_measured"};
    return words[static_cast<std::size_t>(band)];
}

const char* word(Verdict verdict)
{
    constexpr const char* words[] = {"stock", "custom", "none", "incomplete", "refer"};
    return words[static_cast<std::size_t>(verdict)];
}

std::string filled(const Sentence& sentence)
{
    std::string text = sentence.text;
    for (std::size_t i = 0; i < sentence.arguments.size(); ++i)
        if (const auto at = text.find("%" + std::to_string(i + 1)); at != std::string::npos)
            text.replace(at, 2, sentence.arguments[i]);
    return text;
}

/// The worse of the two eyes.
const CriterionResult* resultOf(const Fit& fit, const std::string& name)
{
    const CriterionResult* worst = nullptr;
    for (const auto& result : fit.criteria)
        if (infoOf(result.criterion).name == name &&
            (worst == nullptr || result.measured > worst->measured + 1e-9))
            worst = &result;
    return worst;
}

void checkRow(const Row& row)
{
    MatchOptions options;
    options.profile = row.at("profile");
    options.trial = trialOf(row);
    const auto stock = stockOf(row);
    const auto answers = recommend(personOf(row), stock, defaultRules(), options);
    BOOST_REQUIRE_EQUAL(answers.size(), 1U);
    const auto& answer = answers.front();
    BOOST_TEST(word(answer.verdict) == row.at("verdict"), word(answer.verdict)
                                                              << ": " << filled(answer.reason));
    const auto& lists = answer.candidates;
    const auto& list = lists.ranked.empty() ? lists.misses : lists.ranked;
    BOOST_REQUIRE(!list.empty());
    const auto& fit = list.front().fit;
    BOOST_TEST(word(fit.band) == row.at("fit"));
    const auto* result = resultOf(fit, row.at("criterion"));
    BOOST_REQUIRE(result != nullptr);
    BOOST_TEST(std::abs(result->measured - std::stod(row.at("measured"))) < printed,
               "measured " << result->measured << ", by hand " << row.at("measured"));
    BOOST_TEST(word(result->band) == row.at("band"));
    BOOST_TEST(!result->source.empty());
}

} // namespace

BOOST_AUTO_TEST_CASE(each_criterion_holds_inside_at_and_outside_each_limit,
                     *utf::label("DER") *
                         utf::description("working and source of each row in fit_golden.csv"))
{
    const auto rows = readRows();
    BOOST_TEST(rows.size() >= 60U);
    std::set<std::string> criteria;
    for (const auto& row : rows)
        BOOST_TEST_CONTEXT(row.at("case") << " " << row.at("criterion"))
        {
            criteria.insert(row.at("criterion"));
            checkRow(row);
        }
    BOOST_TEST(criteria.size() == criterionCount); // none left out
}
