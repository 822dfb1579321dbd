// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a written prescription, power, value or acuity: no crash, no undefined behaviour, no hang;
// what is accepted is within its limits and reads back from what is written; what is refused says why in few
// words.
#include "core/optics/acuity.hpp"
#include "core/optics/notation.hpp"

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

using namespace quarterstep;

namespace
{

void require(bool good, const char* what)
{
    if (good)
        return;
    std::fprintf(stderr, "broken: %s\n", what);
    std::abort();
}

std::size_t characters(const std::string& text)
{
    std::size_t count = 0;
    for (const char byte : text)
        count += (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U ? 1U : 0U;
    return count;
}

void checkComplaint(const Complaint& complaint, const std::string& text)
{
    require(!complaint.code.empty(), "a refusal has a code");
    require(!complaint.sentence.empty(), "a refusal says why");
    require(complaint.offset >= 0 && static_cast<std::size_t>(complaint.offset) <= text.size(),
            "the place of a refusal lies in the text");
    for (const auto& argument : complaint.sentence.arguments)
        require(characters(argument) <= 40, "a refusal quotes at most 40 characters");
}

void checkPower(const SpheroCylinder& power)
{
    require(std::fabs(power.sphere.value()) <= 40.0, "sphere within 40");
    require(std::fabs(power.cylinder.value()) <= 20.0, "cylinder within 20");
    require(power.axis.value() > 0.0 && power.axis.value() <= 180.0, "axis in (0, 180]");
    const auto again = parsePower(writePower(power));
    require(static_cast<bool>(again), "a written power is read");
    require(again.value() == power, "a written power reads back the same");
    require(static_cast<bool>(parseDioptres(writeTruncated(power.sphere), true)),
            "a truncated value is read");
    require(parseDioptres(writeTruncated(power.sphere), true).value() == power.sphere,
            "and reads back the same");
    const auto plus = parsePower(writePlusForm(power));
    if (plus) // refused only where the other form leaves the limits
        require(plus.value() == plusCylinderForm(power), "the plus form reads back");
}

void checkEye(const std::string& text, Eye eye)
{
    const auto read = parseEye(text, eye);
    if (!read) {
        checkComplaint(read.complaint(), text);
        return;
    }
    require(read.value().asWritten == text, "the text is kept");
    if (read.value().state != EyeState::measured)
        return;
    checkPower(read.value().power);
    if (read.value().addition)
        require(read.value().addition->value() >= 0.0, "an addition is not negative");
    if (read.value().prism) {
        const auto prism = *read.value().prism;
        const auto again = parseEye("0.00 " + writePrism(prism), eye);
        require(static_cast<bool>(again), "a written prism is read");
        const auto back = again.value().prism.value_or(EyePrism{});
        require(std::fabs(back.in - prism.in) < 0.0051 && std::fabs(back.up - prism.up) < 0.0051,
                "a written prism reads back to a hundredth");
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string text(data, data + size);
    checkEye(text, Eye::right);
    checkEye(text, Eye::left);
    if (const auto eye = eyeNamed(text))
        require(!parseEye(text, *eye == Eye::right ? Eye::left : Eye::right),
                "the other eye's text is refused");
    if (const auto power = parsePower(text))
        checkPower(power.value());
    else
        checkComplaint(power.complaint(), text);
    if (const auto lens = parseLensPower(text); lens && lens.value().axisGiven)
        checkPower(lens.value().power);
    for (const bool sign : {false, true})
        if (const auto value = parseDioptres(text, sign))
            require(parseDioptres(writeDioptres(value.value()), true).value() == value.value(),
                    "a written value reads back");
    if (const auto acuity = parseAcuity(text))
        require(!acuity.value().logMar || std::isfinite(*acuity.value().logMar), "an acuity is finite");
    else
        checkComplaint(acuity.complaint(), text);
    if (const auto near = parseNearAcuity(text); !near)
        checkComplaint(near.complaint(), text);
    return 0;
}
