// SPDX-License-Identifier: GPL-3.0-or-later
// Whole texts: an eye, a power, a lens, one value; and writing them.
#include "core/optics/notation.hpp"

#include "core/optics/angle.hpp"
#include "core/optics/notation_parts.hpp"

#include <array>
#include <cmath>
#include <cstdlib>

namespace quarterstep
{
namespace
{

struct StateWord {
    std::string_view word;
    EyeState state;
};

constexpr std::array stateWords{
    StateWord{"balance", EyeState::balance},           StateWord{"bal", EyeState::balance},
    StateWord{"artificial eye", EyeState::artificial}, StateWord{"artificial", EyeState::artificial},
    StateWord{"prosthesis", EyeState::artificial},     StateWord{"blind", EyeState::blind},
    StateWord{"not measured", EyeState::notMeasured},
};

struct EyeWord {
    std::string_view word;
    std::optional<Eye> eye; ///< empty: both
};

constexpr std::array eyeWords{
    EyeWord{"right", Eye::right}, EyeWord{"od", Eye::right},  EyeWord{"re", Eye::right},
    EyeWord{"r", Eye::right},     EyeWord{"left", Eye::left}, EyeWord{"os", Eye::left},
    EyeWord{"le", Eye::left},     EyeWord{"l", Eye::left},    EyeWord{"ou", std::nullopt},
};

/// The word for an eye that the text begins with, a colon after it taken too.
const EyeWord* takeEyeWord(PartsReader& reader)
{
    for (const auto& each : eyeWords)
        if (reader.head.takeWord(each.word)) {
            (void)reader.head.take(U':');
            return &each;
        }
    return nullptr;
}

Complaint otherEye(Eye asked)
{
    if (asked == Eye::right)
        return {"eye-other",
                {QS_SAY("core", "this text says it is the left eye, and stands for the right"), {}},
                0};
    return {
        "eye-other", {QS_SAY("core", "this text says it is the right eye, and stands for the left"), {}}, 0};
}

Complaint emptyEye()
{
    return {"empty-eye",
            {QS_SAY("core", "nothing is written for this eye; write its power, or balance, artificial, blind "
                            "or not measured"),
             {}},
            0};
}

Complaint emptyPower()
{
    return {"number", {QS_SAY("core", "no power is written; write it as +2.00, -0.75 or 0.00"), {}}, 0};
}

bool nothingWritten(PartsReader& reader)
{
    reader.head.skipBlanks();
    return reader.head.atEnd();
}

std::optional<EyeState> takeState(PartsReader& reader)
{
    for (const auto& [word, state] : stateWords)
        if (reader.head.takeWord(word))
            return state;
    return std::nullopt;
}

/// Two decimals that are read as an eighth with its last digit dropped.
bool readAsEighth(long hundredths)
{
    return hundredths == 12 || hundredths == 37 || hundredths == 62 || hundredths == 87;
}

std::string signedText(long thousandths, const std::string& fraction)
{
    return (thousandths < 0 ? "-" : "+") + std::to_string(std::labs(thousandths) / 1000) + "." + fraction;
}

std::string writeAxis(AxisDegrees axis)
{
    return writeShort(axis.thousandths() == 0 ? 180.0 : axis.value(), 3);
}

/// Two decimals without sign; a size that rounds to nothing is empty.
std::string writeSize(double size)
{
    const long hundredths = std::lround(std::fabs(size) * 100.0);
    if (hundredths == 0)
        return {};
    return std::to_string(hundredths / 100) + "." + std::to_string(100 + hundredths % 100).substr(1);
}

} // namespace

Parsed<WrittenEye> parseEye(const std::string& text, Eye eye)
{
    PartsReader reader(text);
    if (const auto* word = takeEyeWord(reader); word != nullptr && word->eye && *word->eye != eye)
        return otherEye(eye);
    if (nothingWritten(reader))
        return emptyEye();
    WrittenEye written;
    written.asWritten = text;
    if (const auto state = takeState(reader)) {
        written.state = *state;
        return reader.finish() ? Parsed<WrittenEye>(written) : Parsed<WrittenEye>(*reader.complaint);
    }
    bool axisGiven = true;
    const auto power = reader.takePower(true, axisGiven);
    if (!power)
        return *reader.complaint;
    written.power = *power;
    written.prism = reader.takePrism(eye);
    if (!reader.complaint)
        written.addition = reader.takeAddition();
    if (!written.prism && written.addition && !reader.complaint)
        written.prism = reader.takePrism(eye);
    return reader.finish() ? Parsed<WrittenEye>(written) : Parsed<WrittenEye>(*reader.complaint);
}

std::optional<Eye> eyeNamed(const std::string& text)
{
    PartsReader reader(text);
    const auto* word = takeEyeWord(reader);
    return word == nullptr ? std::nullopt : word->eye;
}

Parsed<SpheroCylinder> parsePower(const std::string& text)
{
    PartsReader reader(text);
    if (nothingWritten(reader))
        return emptyPower();
    bool axisGiven = true;
    const auto power = reader.takePower(true, axisGiven);
    if (!power || !reader.finish())
        return *reader.complaint;
    return *power;
}

Parsed<LensPower> parseLensPower(const std::string& text)
{
    PartsReader reader(text);
    if (nothingWritten(reader))
        return emptyPower();
    LensPower lens;
    const auto power = reader.takePower(false, lens.axisGiven);
    if (!power || !reader.finish())
        return *reader.complaint;
    lens.power = *power;
    return lens;
}

Parsed<Dioptres> parseDioptres(const std::string& text, bool signNeeded)
{
    PartsReader reader(text);
    if (nothingWritten(reader))
        return emptyPower();
    const auto role = signNeeded ? PartsReader::Role::signedValue : PartsReader::Role::addition;
    const auto value = reader.takeDioptres(role);
    if (value && !reader.head.takeWord("ds"))
        (void)reader.head.takeWord("d");
    if (!value || !reader.finish())
        return *reader.complaint;
    return *value;
}

std::string writeDioptres(Dioptres power)
{
    const long thousandths = power.thousandths();
    if (thousandths == 0)
        return "0.00";
    const long size = std::labs(thousandths);
    std::string fraction = std::to_string(1000 + size % 1000).substr(1);
    if (fraction.back() == '0' && !readAsEighth(size % 1000 / 10))
        fraction.pop_back();
    return signedText(thousandths, fraction);
}

std::string writeTruncated(Dioptres power)
{
    const long thousandths = power.thousandths();
    const long hundredths = std::labs(thousandths) % 1000 / 10;
    if (std::labs(thousandths) % 10 != 5 || !readAsEighth(hundredths))
        return writeDioptres(power);
    return signedText(thousandths, std::to_string(100 + hundredths).substr(1));
}

std::string writePower(const SpheroCylinder& power)
{
    if (power.cylinder == Dioptres{})
        return writeDioptres(power.sphere);
    return writeDioptres(power.sphere) + " " + writeDioptres(power.cylinder) + " x " + writeAxis(power.axis);
}

std::string writePlusForm(const SpheroCylinder& power)
{
    return writePower(plusCylinderForm(power));
}

std::string writeCrossed(const SpheroCylinder& power)
{
    if (power.cylinder == Dioptres{})
        return writeDioptres(power.sphere);
    const auto minus = minusCylinderForm(power);
    const auto across = foldAxis(minus.axis.value() + 90.0);
    return writeDioptres(minus.sphere + minus.cylinder) + " DC x " + writeAxis(minus.axis) + " / " +
           writeDioptres(minus.sphere) + " DC x " + writeAxis(across);
}

std::string writePrism(const EyePrism& prism)
{
    const std::string across = writeSize(prism.in);
    const std::string along = writeSize(prism.up);
    std::string text = across.empty() ? "" : across + (prism.in > 0.0 ? " base in" : " base out");
    if (!along.empty())
        text += (text.empty() ? "" : " ") + along + (prism.up > 0.0 ? " base up" : " base down");
    return text.empty() ? "0.00" : text;
}

std::string writePrismDegrees(const EyePrism& prism, Eye eye)
{
    const auto single = baseOf(prism, eye);
    const std::string size = writeSize(single.amount);
    if (size.empty())
        return "0.00";
    return size + " base " + std::to_string(std::lround(single.degrees) % 360);
}

} // namespace quarterstep
