// SPDX-License-Identifier: GPL-3.0-or-later
// Reading acuity in the ways it is recorded. Values of counting fingers and hand movements: Holladay JT,
// J Cataract Refract Surg 2004;30:287-290.
#include "core/optics/acuity.hpp"

#include "core/optics/text_reader.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace quarterstep
{
namespace
{

constexpr double countingFingers = 2.0;
constexpr double handMovements = 3.0;
constexpr double leastLogMar = -0.5; ///< better than 20/6.3: not an eye
constexpr double mostLogMar = 3.0;
constexpr double pointsPerM = 8.0; ///< N8 is M 1.0
constexpr double leastPoints = 1.0;
constexpr double mostPoints = 96.0;

Complaint leftOver(const TextReader& reader)
{
    return {"text-left-over",
            {QS_SAY("core", "“%1” is not part of an acuity; write it as 6/9, 0.67 decimal or logMAR 0.2"),
             {reader.rest()}},
            reader.offset()};
}

Complaint notAnAcuity(const std::string& text)
{
    return {"acuity",
            {QS_SAY("core",
                    "“%1” is not an acuity; write 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL or NPL"),
             {quoted(text)}},
            0};
}

/// A finished acuity, when nothing is left over and its size is possible.
Parsed<Acuity> finished(TextReader& reader, std::optional<double> logMar, const std::string& text)
{
    reader.skipBlanks();
    if (!reader.atEnd())
        return leftOver(reader);
    if (logMar && (*logMar < leastLogMar || *logMar > mostLogMar))
        return Complaint{
            "acuity-range",
            {QS_SAY("core", "“%1” would be logMAR %2; acuity lies between logMAR -0.5 and 3: check it"),
             {quoted(text), writeShort(*logMar, 2)}},
            0};
    return Acuity{logMar ? std::optional<double>(*logMar + 0.0) : std::nullopt, text};
}

/// Letters missed or read beyond the line, "6/9-2", "6/9(+1)", "6/9 p": kept in the text, without a number.
void skipSuffix(TextReader& reader)
{
    if (reader.takeWord("partly") || reader.takeWord("part") || reader.takeWord("p"))
        return;
    const auto start = reader.mark();
    const bool bracket = reader.take(U'(');
    const bool sign = reader.take(U'-') || reader.take(U'+');
    const auto letters = sign ? reader.takeNumber() : std::nullopt;
    const bool closed = !bracket || reader.take(U')');
    if (!letters || letters->point || letters->value > 9.0 || !closed)
        reader.goBack(start);
}

/// Distances charts are read at, metres or feet; tenths (7/10) give their own value, so any of them is right.
bool isTestDistance(const WrittenNumber& top, const WrittenNumber& bottom)
{
    static constexpr std::array distances{0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 10.0, 20.0};
    if (bottom.value == 10.0 && !top.point && top.value <= 10.0)
        return true;
    return std::find(distances.begin(), distances.end(), top.value) != distances.end();
}

Parsed<Acuity> readFraction(TextReader& reader, const WrittenNumber& top, const std::string& text)
{
    const auto bottom = reader.takeNumber();
    if (!bottom || bottom->value <= 0.0 || top.value <= 0.0)
        return notAnAcuity(text);
    if (!isTestDistance(top, *bottom))
        return Complaint{
            "acuity-fraction",
            {QS_SAY("core", "no chart is read at %1; write the test distance first, as 6/9 or 20/30"),
             {top.digits}},
            top.offset};
    skipSuffix(reader);
    return finished(reader, std::log10(bottom->value / top.value), text);
}

bool takeDecimalWord(TextReader& reader)
{
    return reader.takeWord("decimal") || reader.takeWord("dec");
}

std::optional<double> takeSignedNumber(TextReader& reader)
{
    const bool minus = reader.take(U'-');
    if (!minus)
        reader.take(U'+');
    const auto number = reader.takeNumber();
    if (!number)
        return std::nullopt;
    return minus ? -number->value : number->value;
}

/// What comes after a number: another for a fraction, or the name of its scale.
Parsed<Acuity> readNumbered(TextReader& reader, const std::string& text)
{
    const auto start = reader.mark();
    const auto first = takeSignedNumber(reader);
    if (!first)
        return notAnAcuity(text);
    if (reader.takeWord("logmar"))
        return finished(reader, first, text);
    reader.goBack(start);
    const auto number = reader.takeNumber();
    if (!number)
        return notAnAcuity(text);
    if (reader.take(U'/'))
        return readFraction(reader, *number, text);
    if (takeDecimalWord(reader))
        return number->value > 0.0 ? finished(reader, logMarFromDecimal(number->value), text)
                                   : Parsed<Acuity>(notAnAcuity(text));
    reader.skipBlanks();
    if (!reader.atEnd())
        return leftOver(reader);
    return Complaint{
        "acuity-scale",
        {QS_SAY("core", "“%1” does not say its scale; write “%1 decimal” or “logMAR %1”"), {number->digits}},
        number->offset};
}

/// Counting fingers may name its distance ("CF 2 m"); one value is given to all of them.
Parsed<Acuity> readFingers(TextReader& reader, const std::string& text)
{
    if (!reader.takeWord("at"))
        reader.take(U'@');
    if (reader.takeNumber() && !reader.takeWord("m") && !reader.takeWord("cm") && !reader.takeWord("ft"))
        return notAnAcuity(text);
    return finished(reader, countingFingers, text);
}

bool takeAny(TextReader& reader, std::initializer_list<std::string_view> words)
{
    return std::any_of(words.begin(), words.end(), [&reader](auto word) { return reader.takeWord(word); });
}

/// Distance of a near test: "at 40 cm", "@ 400 mm". Sets `good` false when it starts and does not end well.
std::optional<double> takeNearDistance(TextReader& reader, bool& good)
{
    if (!reader.takeWord("at") && !reader.take(U'@'))
        return std::nullopt;
    const auto number = reader.takeNumber();
    const bool centimetres = number && reader.takeWord("cm");
    const bool millimetres = number && !centimetres && reader.takeWord("mm");
    const double distance = number ? number->value * (centimetres ? 10.0 : 1.0) : 0.0;
    good = (centimetres || millimetres) && distance >= 50.0 && distance <= 2000.0;
    return distance;
}

/// Print size in points from "N6", "M 0.8" or "0.8M".
std::optional<double> takePoints(TextReader& reader)
{
    const auto start = reader.mark();
    if (reader.take(U'n'))
        if (const auto number = reader.takeNumber())
            return number->value;
    reader.goBack(start);
    if (reader.take(U'm'))
        if (const auto number = reader.takeNumber())
            return number->value * pointsPerM;
    reader.goBack(start);
    if (const auto number = reader.takeNumber(); number && reader.takeWord("m"))
        return number->value * pointsPerM;
    return std::nullopt;
}

} // namespace

Parsed<Acuity> parseAcuity(const std::string& text)
{
    TextReader reader(text);
    reader.skipBlanks();
    if (reader.atEnd())
        return Complaint{
            "acuity-empty", {QS_SAY("core", "no acuity is written; write 6/9 or leave it out"), {}}, 0};
    if (takeAny(reader, {"npl", "nlp", "no perception of light", "no light perception", "pl", "lp",
                         "perception of light", "light perception"}))
        return finished(reader, std::nullopt, text);
    if (takeAny(reader, {"hm", "hand movements", "hand motion"}))
        return finished(reader, handMovements, text);
    if (takeAny(reader, {"cf", "counting fingers", "count fingers"}))
        return readFingers(reader, text);
    if (reader.takeWord("logmar")) {
        const auto value = takeSignedNumber(reader);
        return value ? finished(reader, value, text) : Parsed<Acuity>(notAnAcuity(text));
    }
    if (takeDecimalWord(reader)) {
        const auto number = reader.takeNumber();
        if (!number || number->value <= 0.0)
            return notAnAcuity(text);
        return finished(reader, logMarFromDecimal(number->value), text);
    }
    return readNumbered(reader, text);
}

Parsed<NearAcuity> parseNearAcuity(const std::string& text)
{
    TextReader reader(text);
    const auto points = takePoints(reader);
    if (!points || *points < leastPoints || *points > mostPoints)
        return Complaint{
            "near-acuity",
            {QS_SAY("core", "“%1” is not a near acuity; write N8, M 1.0 or 1.0M, and “at 40 cm” after it"),
             {quoted(text)}},
            0};
    bool good = true;
    const auto distance = takeNearDistance(reader, good);
    reader.skipBlanks();
    if (!good || !reader.atEnd())
        return Complaint{
            "near-acuity-distance",
            {QS_SAY("core", "the distance in “%1” is not read; write it as “at 40 cm”, 5 to 200 cm"),
             {quoted(text)}},
            reader.offset()};
    return NearAcuity{*points, distance, text};
}

double logMarFromDecimal(double decimal)
{
    return -std::log10(decimal) + 0.0;
}

double decimalFromLogMar(double logMar)
{
    return std::pow(10.0, -logMar);
}

double snellenDenominator(double logMar, double numerator)
{
    return numerator * std::pow(10.0, logMar);
}

double expectedLoss(double blur)
{
    return std::log10(1.0 + blur * blur);
}

} // namespace quarterstep
