// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples/generate/random.hpp"

#include <cmath>

namespace quarterstep::samples
{

Random::Random(std::uint64_t sample, std::uint64_t member)
    : state_(sample * 0x9e3779b97f4a7c15U + member * 0xd1342543de82ef95U)
{
    next();
}

std::uint64_t Random::next()
{
    state_ += 0x9e3779b97f4a7c15U;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
    return z ^ (z >> 31U);
}

double Random::uniform()
{
    return (static_cast<double>(next() >> 32U) + 0.5) / 4294967296.0;
}

int Random::between(int least, int most)
{
    return least + static_cast<int>(uniform() * (most - least + 1));
}

bool Random::chance(double probability)
{
    return uniform() < probability;
}

double Random::normal(double mean, double deviation)
{
    return mean + deviation * normalQuantile(uniform());
}

double Random::normalWithin(double mean, double deviation, double least, double most)
{
    double value = normal(mean, deviation);
    while (value < least || value > most)
        value = normal(mean, deviation);
    return value;
}

double Random::exponential(double mean)
{
    return 0.0 - mean * naturalLog(uniform());
}

int Random::pick(std::initializer_list<double> weights)
{
    double sum = 0.0;
    for (const double weight : weights)
        sum += weight;
    double rest = uniform() * sum;
    int index = 0;
    for (const double weight : weights) {
        rest -= weight;
        if (rest < 0.0)
            return index;
        ++index;
    }
    return static_cast<int>(weights.size()) - 1;
}

double naturalLog(double x)
{
    constexpr double ln2 = 0.693147180559945309417;
    int exponent = 0;
    double mantissa = std::frexp(x, &exponent); // exact
    if (mantissa < 0.7071067811865476) {
        mantissa *= 2.0;
        --exponent;
    }
    const double t = (mantissa - 1.0) / (mantissa + 1.0); // |t| < 0.1716: 12 terms reach 1e-19
    double sum = 0.0;
    for (int power = 23; power >= 1; power -= 2)
        sum = sum * t * t + 1.0 / power;
    return 2.0 * t * sum + exponent * ln2;
}

double log10Of(double x)
{
    return naturalLog(x) / 2.302585092994045684018;
}

double normalQuantile(double share)
{
    const double q = share - 0.5;
    if (std::fabs(q) <= 0.425) {
        const double r = 0.180625 - q * q;
        return q * (((59.109374720 * r + 159.29113202) * r + 50.434271938) * r + 3.3871327179) /
               (((67.187563600 * r + 78.757757664) * r + 17.895169469) * r + 1.0);
    }
    const double r =
        std::sqrt(0.0 - naturalLog(q < 0.0 ? share : 1.0 - share)) - 1.6; // share > 1e-10: r < 3.4
    const double z = (((0.17023821103 * r + 1.3067284816) * r + 2.7568153900) * r + 1.4234372777) /
                     ((0.12021132975 * r + 0.73700164250) * r + 1.0);
    return q < 0.0 ? 0.0 - z : z;
}

} // namespace quarterstep::samples
