// SPDX-License-Identifier: GPL-3.0-or-later
// Worked people: record and box in, verdict, first candidate and key numbers out. Rows with their basis stand
// in tests/check_values/fit_cases.csv. Key numbers are printed there to a thousandth or less, so 0.0006 is
// the tolerance.
#define BOOST_TEST_MODULE fit_cases
#include <boost/test/unit_test.hpp>

#include "core/fitting/order.hpp"
#include "core/fitting/recommendation.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/rules_file.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{

constexpr double printed = 0.0006; // D, prism dioptres, mm, logMAR as printed

std::vector<std::string> split(const std::string& text, const std::string& mark)
{
    std::vector<std::string> parts;
    std::size_t from = 0;
    for (std::size_t at; (at = text.find(mark, from)) != std::string::npos; from = at + mark.size())
        parts.push_back(text.substr(from, at - from));
    parts.push_back(text.substr(from));
    for (auto& part : parts) {
        part.erase(0, part.find_first_not_of(' '));
        part.erase(part.find_last_not_of(' ') + 1);
    }
    std::erase_if(parts, [](const std::string& part) { return part.empty(); });
    return parts;
}

/// One CSV row; quotes as in RFC 4180.
std::vector<std::string> cells(const std::string& row)
{
    std::vector<std::string> result(1);
    bool quoted = false;
    for (const char c : row)
        if (c == '"')
            quoted = !quoted;
        else if (c == ',' && !quoted)
            result.emplace_back();
        else
            result.back() += c;
    return result;
}

using Row = std::map<std::string, std::string>;

std::vector<Row> readCases()
{
    std::ifstream file(QS_SOURCE_DIR "/tests/check_values/fit_cases.csv");
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
        rows.push_back(row);
    }
    return rows;
}

/// "A -1.00 c62", "frame F c58", "lens L250 +2.50", "bifocal A 0.00 +1.50 c63"; ten of each.
StockLine lineFrom(const std::string& text)
{
    auto words = split(text, " ");
    StockLine line;
    line.onHand = 10;
    line.bin = "B1";
    std::string kind = "ready-made";
    if (words[0] == "frame" || words[0] == "lens" || words[0] == "bifocal") {
        kind = words[0];
        words.erase(words.begin());
    }
    line.name = words[0];
    if (words.back()[0] == 'c')
        line.centres = std::stod(words.back().substr(1));
    if (kind == "frame") {
        line.kind = LineKind::frame;
        line.takes = {"round 44"};
        return line;
    }
    line.power.right = line.power.left = sphereOf(std::stod(words[1]));
    if (kind == "lens") {
        line.kind = LineKind::lens;
        line.shape = "round 44";
    }
    if (kind == "bifocal")
        line.bifocalAddition = Dioptres{std::stod(words[2])};
    return line;
}

PersonRecord personFrom(const Row& row)
{
    static const std::set<std::string> notColumns{"case",   "profile", "stock", "expected",
                                                  "checks", "label",   "basis"};
    std::string header;
    std::string values;
    for (const auto& [column, value] : row) {
        if (notColumns.count(column) != 0 || value.empty())
            continue;
        header += (header.empty() ? "" : ",") + column;
        values += (values.empty() ? "" : ",") + value;
    }
    const auto table = readPrescriptionText(header + "\n" + values + "\n", "case", "");
    BOOST_REQUIRE(table.usable());
    BOOST_REQUIRE_EQUAL(table.value.rows.size(), 1U);
    for (const auto& finding : table.value.rows[0].findings)
        BOOST_TEST_MESSAGE(finding.code);
    BOOST_REQUIRE(table.value.rows[0].record.has_value());
    return *table.value.rows[0].record;
}

std::string nameOf(const Candidate& candidate, const std::vector<StockLine>& stock)
{
    std::string name;
    for (const auto& part : candidate.parts)
        name += (name.empty() ? "" : "+") + stock[part.line].name;
    return name;
}

double criterion(const Fit& fit, Criterion wanted)
{
    for (const auto& result : fit.criteria)
        if (result.criterion == wanted)
            return result.measured;
    return NAN;
}

double valueOf(const Fit& fit, const std::string& field)
{
    const auto words = split(field, ".");
    if (words.size() == 2) {
        const auto& eye = fit.eyes.of(words[0] == "right" ? Eye::right : Eye::left);
        BOOST_REQUIRE(eye.has_value());
        const std::map<std::string, double> values{{"m", eye->error.m},
                                                   {"j0", eye->error.j0},
                                                   {"j45", eye->error.j45},
                                                   {"blur", eye->blur},
                                                   {"near", eye->nearError ? eye->nearError->m : NAN}};
        return values.at(words[1]);
    }
    const std::map<std::string, double> values{
        {"cost", fit.cost},
        {"step", std::floor(fit.cost / 0.02 + 1e-9)},
        {"cautions", fit.cautions},
        {"prism", fit.prism.horizontal},
        {"supplied", fit.prism.horizontal + 2.0}, // 1 base in prescribed for each eye
        {"prismLeast", fit.horizontalPrismRange ? fit.horizontalPrismRange->least : NAN},
        {"prismMost", fit.horizontalPrismRange ? fit.horizontalPrismRange->most : NAN},
        {"needDifference", criterion(fit, Criterion::needDifference)},
        {"suppliedDifference", criterion(fit, Criterion::suppliedDifference)},
        {"balance", criterion(fit, Criterion::balance)},
        {"centres", criterion(fit, Criterion::centres)},
        {"readingLevel", std::abs(fit.readingLevelPair)},
        {"readingFull", std::abs(fit.readingLevelFull)}};
    return values.at(field);
}

const Fit* fitNamed(const Recommendation& answer, const std::vector<StockLine>& stock,
                    const std::string& name)
{
    const bool miss = name.rfind("miss:", 0) == 0;
    const auto& list = miss ? answer.candidates.misses : answer.candidates.ranked;
    if (name == "first")
        return list.empty() ? nullptr : &list.front().fit;
    if (name == "bare")
        return answer.bareEyes ? &*answer.bareEyes : nullptr;
    for (const auto& candidate : list)
        if (nameOf(candidate, stock) == (miss ? name.substr(5) : name))
            return &candidate.fit;
    return nullptr;
}

void checkNumber(const Recommendation& answer, const std::vector<StockLine>& stock, const std::string& check)
{
    const bool hundredths = check.find('~') != std::string::npos; // printed to two decimals
    const auto sides = split(check, hundredths ? "~" : "=");
    if (sides[0] == "flag") {
        BOOST_TEST(std::any_of(answer.flags.begin(), answer.flags.end(),
                               [&](const Flag& flag) { return flag.code == sides[1]; }),
                   "flag " << sides[1]);
        return;
    }
    if (sides[0] == "interim") {
        BOOST_TEST(!answer.interim.has_value());
        return;
    }
    if (sides[0] == "pd") {
        BOOST_TEST(std::abs(answer.need->pd.least - std::stod(sides[1])) < 0.006); // printed to 0.01 mm
        return;
    }
    const auto dot = sides[0].find('.');
    const Fit* fit = fitNamed(answer, stock, sides[0].substr(0, dot));
    BOOST_REQUIRE_MESSAGE(fit != nullptr, "no candidate for " << check);
    const double measured = valueOf(*fit, sides[0].substr(dot + 1));
    BOOST_TEST(std::abs(measured - std::stod(sides[1])) < (hundredths ? 0.005 : printed),
               check << " but measured " << measured);
}

const char* wordOfVerdict(Verdict verdict)
{
    static const char* const words[] = {"stock", "custom", "none", "incomplete", "refer"};
    return words[static_cast<int>(verdict)];
}

const char* wordOfReferral(Referral referral)
{
    static const char* const words[] = {"no", "with", "before"};
    return words[static_cast<int>(referral)];
}

const char* wordOfPurpose(Purpose purpose)
{
    static const char* const words[] = {"unstated", "distance", "near", "intermediate", "bifocal", "both"};
    return words[static_cast<int>(purpose)];
}

/// expected: "purpose verdict referral reason candidates…", one a purpose, separated by ';'; '-' = no
/// candidate.
void checkAnswer(const Recommendation& answer, const std::vector<StockLine>& stock,
                 const std::string& expected)
{
    const auto words = split(expected, " ");
    BOOST_TEST(wordOfPurpose(answer.purpose) == words[0]);
    BOOST_TEST(wordOfVerdict(answer.verdict) == words[1], answer.reason.text);
    BOOST_TEST(wordOfReferral(answer.referral) == words[2]);
    if (words[3] != "*")
        BOOST_TEST(answer.reasonKey == words[3]);
    std::vector<std::string> names;
    names.reserve(answer.candidates.ranked.size());
    for (const auto& candidate : answer.candidates.ranked)
        names.push_back(nameOf(candidate, stock));
    for (std::size_t i = 4; i < words.size(); ++i) {
        if (words[i] == "-")
            BOOST_TEST(names.empty());
        else
            BOOST_TEST((i - 4 < names.size() && names[i - 4] == words[i]),
                       words[i] << " expected at place " << i - 4);
    }
}

} // namespace

BOOST_AUTO_TEST_CASE(worked_people_get_the_answers_of_the_published_cases,
                     *utf::label("REF") *
                         utf::description("basis of each row in tests/check_values/fit_cases.csv"))
{
    const auto rows = readCases();
    BOOST_TEST(rows.size() == 24U);
    for (const auto& row : rows) {
        BOOST_TEST_CONTEXT("case " << row.at("case"))
        {
            std::vector<StockLine> stock;
            for (const auto& text : split(row.at("stock"), " / "))
                stock.push_back(lineFrom(text));
            MatchOptions options;
            options.profile = row.at("profile");
            const auto answers = recommend(personFrom(row), stock, defaultRules(), options);
            const auto expected = split(row.at("expected"), ";");
            BOOST_REQUIRE_EQUAL(answers.size(), expected.size());
            for (std::size_t i = 0; i < answers.size(); ++i)
                checkAnswer(answers[i], stock, expected[i]);
            for (const auto& check : split(row.at("checks"), ";"))
                checkNumber(answers.front(), stock, check);
        }
    }
}

BOOST_AUTO_TEST_CASE(an_on_trial_pair_is_handed_over_after_the_acuity_with_it_and_refused_when_short,
                     *utf::label("DER") * utf::description("IAPB: acuity within one line; WHO 6/12"))
{
    const auto rows = readCases();
    const auto row =
        std::find_if(rows.begin(), rows.end(), [](const Row& r) { return r.at("case") == "P12"; });
    BOOST_REQUIRE(row != rows.end());
    std::vector<StockLine> stock;
    for (const auto& text : split(row->at("stock"), " / "))
        stock.push_back(lineFrom(text));
    const auto answerWith = [&](const char* acuity) {
        MatchOptions options;
        options.trial.emplace();
        options.trial->distance = {parseAcuity(acuity).value(), parseAcuity(acuity).value()};
        return recommend(personFrom(*row), stock, defaultRules(), options).front();
    };
    BOOST_TEST((answerWith("6/7.5").verdict == Verdict::stock)); // one line below 6/6
    BOOST_TEST((answerWith("6/12").verdict == Verdict::custom)); // three lines below 6/6
}
