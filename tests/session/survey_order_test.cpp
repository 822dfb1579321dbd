// SPDX-License-Identifier: GPL-3.0-or-later
// Whether acuity can tell the two constants of the signed cost from others, where pairs are compared at all:
// errors up to one dioptre. The reading behind an error scatters, so the likelihood of each eye is the mean
// over what its true error may be.
#include "core/optics/readings.hpp"
#include "tests/session/help_line.hpp"
#include "tests/session/survey_eyes.hpp"

#include <boost/test/unit_test.hpp>

#include <cmath>
#include <map>
#include <numbers>
#include <numeric>
#include <tuple>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

// Five points of Gauss and Hermite for a standard normal: exact for polynomials up to the ninth degree.
constexpr std::array<double, 5> nodes{-2.8569700138728056, -1.3556261799742659, 0.0, 1.3556261799742659,
                                      2.8569700138728056};
constexpr std::array<double, 5> weights{0.011257411327720691, 0.22207592200561266, 8.0 / 15.0,
                                        0.22207592200561266, 0.011257411327720691};

/// Standard deviations of the reading behind an error, D.
struct Scatter {
    double m;
    double j;
};

/// Eyes that are the same but for numbers below 0.05 D.
struct Alike {
    double m = 0.0;  ///< mean of the true error M given the reading
    double j2 = 0.0; ///< mean of the true J0² + J45²
    double age = 0.0;
    std::size_t code = 0;
    double count = 0.0;
};

struct Sample {
    std::vector<Alike> eyes;
    double deviation = 0.0; ///< of the true M about its mean
    double count = 0.0;
};

/// Share of a variance that is not the scatter of the reading.
double reliability(double variance, double scatter)
{
    return variance > 0.0 ? std::max(0.0, variance - scatter * scatter) / variance : 0.0;
}

double varianceOf(const std::vector<double>& values)
{
    const double n = static_cast<double>(values.size());
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / n;
    double sum = 0.0;
    for (const double value : values)
        sum += (value - mean) * (value - mean);
    return sum / n;
}

/// Eyes of an age with a blur strength of one dioptre or less. True errors are taken as normal in the sample,
/// so that given the reading they are normal about a value drawn towards the mean.
Sample sampleOf(double from, double to, const Scatter& scatter)
{
    std::vector<const RightEye*> people;
    std::vector<double> m;
    std::vector<double> j0;
    std::vector<double> j45;
    for (const auto& eye : eyes())
        if (eye.age >= from && eye.age < to && blurStrength(eye.error) <= 1.0) {
            people.push_back(&eye);
            m.push_back(eye.error.m);
            j0.push_back(eye.error.j0);
            j45.push_back(eye.error.j45);
        }
    const double mean = std::accumulate(m.begin(), m.end(), 0.0) / static_cast<double>(m.size());
    const double ofM = reliability(varianceOf(m), scatter.m);
    const double ofJ = reliability((varianceOf(j0) + varianceOf(j45)) / 2.0, scatter.j);
    Sample sample;
    sample.count = static_cast<double>(people.size());
    sample.deviation = std::sqrt(ofM) * scatter.m;
    std::map<std::tuple<long, long, double, std::size_t>, Alike> alike;
    for (const auto* eye : people) {
        const double size = cylinderSize(eye->error) / 2.0;
        Alike one{mean + ofM * (eye->error.m - mean),
                  ofJ * ofJ * size * size + 2.0 * ofJ * scatter.j * scatter.j, std::floor(eye->age),
                  eye->code, 0.0};
        one.m = std::round(one.m * 20.0) / 20.0;
        one.j2 = std::round(one.j2 * 20.0) / 20.0;
        const double ageThatCounts = from >= 40.0 && from < 60.0 ? one.age : from;
        alike
            .try_emplace({std::lround(one.m * 20.0), std::lround(one.j2 * 20.0), ageThatCounts, one.code},
                         one)
            .first->second.count += 1.0;
    }
    for (const auto& [key, one] : alike)
        sample.eyes.push_back(one);
    return sample;
}

/// Constants of the cost: k by age, c for each dioptre taken.
struct Constants {
    double (*k)(double age);
    double c;
};

struct Nuisance {
    double a = -0.17;        ///< acuity without error, logMAR
    double deviation = 0.17; ///< logMAR
    double offset = 0.2;     ///< of the instrument, D
};

/// Log-likelihood of each group of eyes alike.
std::vector<double> logLikelihoods(const Sample& sample, const Constants& constants, const Nuisance& nuisance)
{
    std::vector<double> all;
    all.reserve(sample.eyes.size());
    const double scale = 1.0 / (nuisance.deviation * std::numbers::sqrt2);
    const auto below = [&](double mean, double line) { return 0.5 * std::erfc((mean - line) * scale); };
    for (const auto& eye : sample.eyes) {
        const double k = constants.k(eye.age);
        double likelihood = 0.0;
        for (std::size_t i = 0; i < nodes.size(); ++i) {
            const double m = eye.m + sample.deviation * nodes.at(i) + nuisance.offset;
            const double d = m < 0.0 ? std::min(k, -m) : 0.0;
            const double mean = nuisance.a + std::log10(1.0 + (m + d) * (m + d) + eye.j2) + constants.c * d;
            const double upTo = eye.code + 1 == lines.size() ? 1.0 : below(mean, logMarOf(eye.code));
            likelihood +=
                weights.at(i) * (upTo - (eye.code == 0 ? 0.0 : below(mean, logMarOf(eye.code - 1))));
        }
        all.push_back(std::log(std::max(likelihood, 1e-12)));
    }
    return all;
}

double total(const Sample& sample, const std::vector<double>& each)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < each.size(); ++i)
        sum += sample.eyes[i].count * each[i];
    return sum;
}

/// The most likely a, deviation and offset from one start, by narrowing steps.
std::pair<double, Nuisance> climbed(const Sample& sample, const Constants& constants, Nuisance at)
{
    double most = total(sample, logLikelihoods(sample, constants, at));
    for (double step = 0.04; step > 0.003;) {
        bool moved = false;
        for (const double sign : {1.0, -1.0})
            for (auto part : {&Nuisance::a, &Nuisance::deviation, &Nuisance::offset}) {
                Nuisance other = at;
                other.*part += sign * (part == &Nuisance::offset ? 2.0 * step : step);
                if (other.deviation < 0.04)
                    continue;
                if (const double here = total(sample, logLikelihoods(sample, constants, other));
                    here > most) {
                    most = here;
                    at = other;
                    moved = true;
                }
            }
        if (!moved)
            step /= 2.0;
    }
    return {most, at};
}

std::vector<double> fitted(const Sample& sample, const Constants& constants)
{
    const auto low = climbed(sample, constants, {-0.17, 0.17, 0.1});
    const auto high = climbed(sample, constants, {-0.17, 0.17, 0.45});
    return logLikelihoods(sample, constants, low.first > high.first ? low.second : high.second);
}

double none(double /*age*/)
{
    return 0.0;
}

template <int hundredths>
double always(double /*age*/)
{
    return hundredths / 100.0;
}

/// What was shipped before for 50 to 59 years: half of the least amplitude, kept to one dioptre.
double halfLeastAmplitude(double age)
{
    return std::clamp((15.0 - 0.25 * age) / 4.0, 0.0, 1.0);
}

struct Rival {
    const char* words;
    Constants constants;
};

const std::array<Rival, 7> rivals{{{"0", {none, 0.0}},
                                   {"0.25, 0.05", {always<25>, 0.05}},
                                   {"0.50, 0.05", {always<50>, 0.05}},
                                   {"0.50, 0.20", {always<50>, 0.20}},
                                   {"1.00, 0.05", {always<100>, 0.05}},
                                   {"1.00, 0.10", {always<100>, 0.10}},
                                   {"1.00, 0.20", {always<100>, 0.20}}}};

struct Gain {
    double likelihood = 0.0;
    double z = 0.0; ///< against its own standard error, eyes being drawn anew
};

/// By how much the data like `other` more than `one`.
Gain gainOf(const Sample& sample, const std::vector<double>& other, const std::vector<double>& one)
{
    Gain gain;
    double squares = 0.0;
    for (std::size_t i = 0; i < one.size(); ++i) {
        const double difference = other[i] - one[i];
        gain.likelihood += sample.eyes[i].count * difference;
        squares += sample.eyes[i].count * difference * difference;
    }
    const double variance = squares - gain.likelihood * gain.likelihood / sample.count;
    gain.z = variance > 1e-9 ? gain.likelihood / std::sqrt(variance) : 0.0;
    return gain;
}

Scatter published()
{
    const auto covariance = publishedRepeatability(Method::autorefractor).covariance();
    return {std::sqrt(covariance.mm), std::sqrt(covariance.j00)};
}

} // namespace

BOOST_AUTO_TEST_SUITE(order)

BOOST_AUTO_TEST_CASE(near_the_limits_acuity_cannot_tell_the_shipped_constants_from_others, *utf::label("DER"))
{
    struct Age {
        double from, to;
        const char* words;
        const char* shipped;
    };
    for (const auto& age : {Age{12, 16, "12-15", "0"}, Age{16, 40, "16-39", "1.00, 0.05"},
                            Age{40, 50, "40-49", "1.00-0.69, 0.05"}, Age{50, 60, "50-59", "0"},
                            Age{60, 200, "60 and over", "0"}}) {
        std::string cells;
        for (const Scatter& scatter : {published(), Scatter{0.0, 0.0}}) {
            const auto sample = sampleOf(age.from, age.to, scatter);
            const auto shipped = fitted(sample, {shippedK, 0.05});
            const Rival* best = nullptr;
            Gain most{-1e9, 0.0};
            for (const auto& rival : rivals)
                if (const auto gain = gainOf(sample, fitted(sample, rival.constants), shipped);
                    gain.likelihood > most.likelihood) {
                    most = gain;
                    best = &rival;
                }
            if (cells.empty())
                cells = std::to_string(std::lround(sample.count)) + " | " + age.shipped;
            cells += std::string(" | ") + best->words + " | " + fixed(std::max(0.0, most.likelihood), 1);
        }
        checkStandsInHelp("| " + std::string(age.words) + " | " + cells + " |");
    }
}

BOOST_AUTO_TEST_CASE(from_fifty_on_the_data_are_against_forgiving_minus, *utf::label("DER"))
{
    for (const double m : {published().m, 0.17, 0.0}) {
        const Scatter scatter{m, m / published().m * published().j};
        const auto sample = sampleOf(50.0, 60.0, scatter);
        const auto gain =
            gainOf(sample, fitted(sample, {none, 0.0}), fitted(sample, {halfLeastAmplitude, 0.05}));
        BOOST_TEST(gain.likelihood > 3.0); // outside the 95 % of a chi-square with two degrees of freedom
        checkStandsInHelp("| " + fixed(m, 2) + " | " + fixed(gain.likelihood, 1) + " | " + fixed(gain.z, 1) +
                          " |");
    }
}

BOOST_AUTO_TEST_SUITE_END()
