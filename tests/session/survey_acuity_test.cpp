// SPDX-License-Identifier: GPL-3.0-or-later
// Predicted loss against acuity as people came, on right eyes of a public survey: correlation, calibration by
// tenths, and the two constants of the signed cost fitted anew by age. What is measured is an association in
// people who chose to wear what they wore; it is no trial. Statistical use only, see tests/open_data/NOTICE.
#include "core/fitting/fit.hpp"
#include "tests/session/help_line.hpp"
#include "tests/session/survey_eyes.hpp"

#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>
#include <numeric>
#include <vector>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

/// The cost of one eye by the program itself.
double costOf(const RightEye& eye)
{
    Need need;
    need.age = eye.age;
    need.eyes.left.seeing = false;
    Supply supply;
    const auto error = toSpheroCylinder(eye.error);
    supply.power.right = error; // needed: plano, so that supplied is the error
    static const Profile nothingJudged;
    return judge(need, supply, nothingJudged).cost;
}

std::vector<double> ranks(const std::vector<double>& values)
{
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), 0U);
    std::sort(order.begin(), order.end(), [&](auto a, auto b) { return values[a] < values[b]; });
    std::vector<double> rank(values.size());
    for (std::size_t i = 0; i < order.size();) {
        std::size_t j = i;
        while (j < order.size() && values[order[j]] == values[order[i]])
            ++j;
        for (std::size_t k = i; k < j; ++k)
            rank[order[k]] = static_cast<double>(i + j - 1) / 2.0;
        i = j;
    }
    return rank;
}

double correlation(const std::vector<double>& a, const std::vector<double>& b)
{
    const double n = static_cast<double>(a.size());
    const double meanA = std::accumulate(a.begin(), a.end(), 0.0) / n;
    const double meanB = std::accumulate(b.begin(), b.end(), 0.0) / n;
    double ab = 0.0;
    double aa = 0.0;
    double bb = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        ab += (a[i] - meanA) * (b[i] - meanB);
        aa += (a[i] - meanA) * (a[i] - meanA);
        bb += (b[i] - meanB) * (b[i] - meanB);
    }
    return ab / std::sqrt(aa * bb);
}

} // namespace

BOOST_AUTO_TEST_SUITE(acuity)

BOOST_AUTO_TEST_CASE(predicted_loss_follows_the_acuity_people_came_with, *utf::label("DER"))
{
    BOOST_TEST(eyes().size() == 21978U);
    std::vector<double> predicted;
    std::vector<double> presenting;
    for (const auto& eye : eyes()) {
        predicted.push_back(costOf(eye));
        presenting.push_back(logMarOf(eye.code));
    }
    const double plain = correlation(predicted, presenting);
    const double ranked = correlation(ranks(predicted), ranks(presenting));
    checkStandsInHelp("Correlation of predicted loss and presenting acuity over " +
                      std::to_string(eyes().size()) + " eyes: " + fixed(plain, 2) + " (ranks " +
                      fixed(ranked, 2) + ").");
    std::vector<std::size_t> order(predicted.size());
    std::iota(order.begin(), order.end(), 0U);
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return predicted[a] < predicted[b]; });
    double before = -1.0;
    for (std::size_t tenth = 0; tenth < 10; ++tenth) {
        const std::size_t from = tenth * order.size() / 10;
        const std::size_t to = (tenth + 1) * order.size() / 10;
        double meanPredicted = 0.0;
        double meanPresenting = 0.0;
        int reach = 0;
        for (std::size_t i = from; i < to; ++i) {
            meanPredicted += predicted[order[i]];
            meanPresenting += presenting[order[i]];
            reach += lines[eyes()[order[i]].code] <= 40 ? 1 : 0;
        }
        const int count = static_cast<int>(to - from);
        meanPredicted /= count;
        meanPresenting /= count;
        checkStandsInHelp("| " + std::to_string(tenth + 1) + " | " + fixed(meanPredicted, 3) + " | " +
                          fixed(meanPresenting, 3) + " | " + percent(reach, count) + " |");
        if (tenth > 1) // the lowest tenths are all within the chart's best line
            BOOST_TEST(meanPresenting > before);
        before = meanPresenting;
    }
}

namespace
{

struct Reached {
    int count = 0;
    int reach = 0;
    [[nodiscard]] double share() const { return 100.0 * reach / count; }
};

template <class Wanted>
Reached reached(Wanted wanted)
{
    Reached here;
    for (const auto& eye : eyes())
        if (wanted(eye)) {
            ++here.count;
            here.reach += lines[eye.code] <= 40 ? 1 : 0;
        }
    return here;
}

} // namespace

BOOST_AUTO_TEST_CASE(shares_reaching_20_40_beside_the_yardstick_of_five_cycles,
                     *utf::label("REF") *
                         utf::description("the same survey, 1999-2008, ages 12-59, tabulated apart"))
{
    struct Row {
        double from, to, bare, glasses;
    };
    for (const auto& row :
         {Row{0.0, 0.25, 98.3, 98.3}, Row{0.5, 0.75, 91.6, 92.9}, Row{0.75, 1.0, 79.7, 85.9},
          Row{1.0, 1.25, 66.0, 81.2}, Row{2.0, 2.5, 36.4, 58.4}}) {
        std::string line = "| " + fixed(row.from, 2) + "-" + fixed(row.to, 2);
        for (const bool glasses : {false, true}) {
            const auto here = reached([&](const RightEye& eye) {
                const double b = blurStrength(eye.error);
                return eye.age < 60.0 && eye.glasses == glasses && b >= row.from && b < row.to;
            });
            const double other = glasses ? row.glasses : row.bare;
            line +=
                " | " + fixed(here.share(), 1) + " (" + std::to_string(here.count) + ") | " + fixed(other, 1);
            // Where pairs are acceptable at all: within two points and two standard errors of the other
            // tables.
            const double slack = 2.0 + 200.0 * std::sqrt(other / 100.0 * (1.0 - other / 100.0) / here.count);
            if (row.to <= 1.0)
                BOOST_TEST(std::abs(here.share() - other) < slack, line);
        }
        checkStandsInHelp(line + " |");
    }
    const auto young = [](const RightEye& eye) {
        const double b = blurStrength(eye.error);
        return eye.age < 40.0 && !eye.glasses && b >= 1.0 && b < 1.25;
    };
    const auto plus = reached([&](const RightEye& eye) { return young(eye) && eye.error.m < 0.0; });
    const auto minus = reached([&](const RightEye& eye) { return young(eye) && eye.error.m > 0.0; });
    checkStandsInHelp("Bare eyes of 12-39 years, 1.00-1.25 D: " + fixed(plus.share(), 1) + " % of " +
                      std::to_string(plus.count) + " hyperopic (94.6), " + fixed(minus.share(), 1) +
                      " % of " + std::to_string(minus.count) + " myopic (55.9).");
    BOOST_TEST(plus.share() > minus.share() + 25.0); // the sign matters
}

BOOST_AUTO_TEST_SUITE_END()

// The two constants fitted anew. Model: acuity before it is cut into lines of the chart is normal about
// a + log10(1 + (M + o + d)² + J²) + c·d, d = min(k, -(M + o)) where that is minus; a, the standard deviation
// and the offset o of the instrument (no cycloplegia) are fitted beside k and c. The likelihood of a line is
// the normal share between it and the next better one. Intervals: values of k whose best likelihood is
// within 1.92.

namespace
{

constexpr double binWidth = 0.01;
constexpr std::size_t bins = 140;

using Table = std::array<std::array<int, lines.size()>, bins>;

double lossOf(const PowerVector& error, double k, double c, double offset)
{
    const double m = error.m + offset;
    const double d = m < 0.0 ? std::min(k, -m) : 0.0;
    return std::log10(1.0 + (m + d) * (m + d) + error.j0 * error.j0 + error.j45 * error.j45) + c * d;
}

Table tableOf(const std::vector<RightEye>& people, double k, double c, double offset)
{
    Table table{};
    for (const auto& eye : people) {
        const auto bin = static_cast<std::size_t>(lossOf(eye.error, k, c, offset) / binWidth);
        ++table[std::min(bin, bins - 1)][eye.code];
    }
    return table;
}

double minusLogLikelihood(const Table& table, double a, double deviation)
{
    double sum = 0.0;
    for (std::size_t bin = 0; bin < bins; ++bin) {
        const double mean = a + (static_cast<double>(bin) + 0.5) * binWidth;
        double below = 0.0;
        for (std::size_t code = 0; code < lines.size(); ++code) {
            const double upTo =
                code + 1 == lines.size()
                    ? 1.0
                    : 0.5 * std::erfc((mean - logMarOf(code)) / (deviation * std::numbers::sqrt2));
            if (table[bin][code] > 0)
                sum -= table[bin][code] * std::log(std::max(upTo - below, 1e-12));
            below = upTo;
        }
    }
    return sum;
}

/// Least over a and the deviation, by narrowing steps.
double best(const Table& table)
{
    double a = -0.20;
    double deviation = 0.23;
    double least = minusLogLikelihood(table, a, deviation);
    for (double step = 0.04; step > 0.002;) {
        bool moved = false;
        for (const auto& [da, dd] : {std::pair{step, 0.0}, {-step, 0.0}, {0.0, step}, {0.0, -step}}) {
            if (deviation + dd < 0.05)
                continue;
            const double here = minusLogLikelihood(table, a + da, deviation + dd);
            if (here < least) {
                least = here;
                a += da;
                deviation += dd;
                moved = true;
                break;
            }
        }
        if (!moved)
            step /= 2.0;
    }
    return least;
}

constexpr std::array<double, 11> ks{0.0, 0.25, 0.5, 0.75, 1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0};
constexpr std::array<double, 5> cs{0.0, 0.05, 0.10, 0.15, 0.20};

struct Fitted {
    double k = 0.0;
    double c = 0.0;
    double least = std::numeric_limits<double>::max();
    std::map<double, double> ofK; ///< least for each k
    std::map<double, double> ofC;
};

void keep(std::map<double, double>& map, double key, double value)
{
    const auto [place, fresh] = map.emplace(key, value);
    if (!fresh)
        place->second = std::min(place->second, value);
}

Fitted fitted(const std::vector<RightEye>& people)
{
    Fitted fit;
    for (const double k : ks)
        for (const double c : cs) {
            if (k == 0.0 && c > 0.0)
                continue;
            for (int i = -3; i <= 5; ++i) {
                const double here = best(tableOf(people, k, c, 0.15 * i));
                keep(fit.ofK, k, here);
                keep(fit.ofC, c, here);
                if (here < fit.least) {
                    fit.least = here;
                    fit.k = k;
                    fit.c = c;
                }
            }
        }
    return fit;
}

double leastShipped(const std::vector<RightEye>& people)
{
    double least = std::numeric_limits<double>::max();
    for (int i = -3; i <= 5; ++i) {
        Table table{};
        for (const auto& eye : people) {
            const auto bin =
                static_cast<std::size_t>(lossOf(eye.error, shippedK(eye.age), 0.05, 0.15 * i) / binWidth);
            ++table[std::min(bin, bins - 1)][eye.code];
        }
        least = std::min(least, best(table));
    }
    return least;
}

std::string within(const std::map<double, double>& least, double best, int digits)
{
    std::vector<double> inside;
    for (const auto& [value, here] : least)
        if (here <= best + 1.92)
            inside.push_back(value);
    const auto lowest = fixed(inside.front(), digits);
    return inside.size() == 1 ? lowest : lowest + "-" + fixed(inside.back(), digits);
}

} // namespace

BOOST_AUTO_TEST_SUITE(constants)

BOOST_AUTO_TEST_CASE(the_constants_of_the_signed_cost_fitted_anew_by_age, *utf::label("DER"))
{
    struct Age {
        double from, to;
        const char* words;
        const char* shipped;
    };
    for (const auto& age :
         {Age{12, 16, "12-15", "0"}, Age{16, 40, "16-39", "1.00"}, Age{40, 50, "40-49", "1.00-0.69"},
          Age{50, 60, "50-59", "0"}, Age{60, 200, "60 and over", "0"}}) {
        std::vector<RightEye> people;
        for (const auto& eye : eyes())
            if (eye.age >= age.from && eye.age < age.to)
                people.push_back(eye);
        const auto fit = fitted(people);
        checkStandsInHelp("| " + std::string(age.words) + " | " + std::to_string(people.size()) + " | " +
                          fixed(fit.k, 2) + " (" + within(fit.ofK, fit.least, 2) + ") | " + fixed(fit.c, 2) +
                          " (" + within(fit.ofC, fit.least, 2) + ") | " + age.shipped + " | " +
                          fixed(leastShipped(people) - fit.least, 0) + " |");
    }
}

BOOST_AUTO_TEST_SUITE_END()
