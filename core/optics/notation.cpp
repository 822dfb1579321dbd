// SPDX-License-Identifier: GPL-3.0-or-later
// Whole texts: an eye, a power, a lens, one value; and writing them.
#include "core/optics/notation.hpp"

#include "core/optics/notation_parts.hpp"

#include <array>
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

} // namespace

Parsed<WrittenEye> parseEye(const std::string& text, Eye eye)
{
    PartsReader reader(text);
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
    if (fraction.back() == '0')
        fraction.pop_back();
    std::string text = thousandths < 0 ? "-" : "+";
    text += std::to_string(size / 1000);
    text += '.';
    return text += fraction;
}

std::string writePower(const SpheroCylinder& power)
{
    if (power.cylinder == Dioptres{})
        return writeDioptres(power.sphere);
    const double axis = power.axis.thousandths() == 0 ? 180.0 : power.axis.value();
    return writeDioptres(power.sphere) + " " + writeDioptres(power.cylinder) + " x " + writeShort(axis, 3);
}

} // namespace quarterstep
