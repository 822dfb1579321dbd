// SPDX-License-Identifier: GPL-3.0-or-later
// Decimals keep two places, since FHIR takes trailing zeros for precision.
#include "inventory/exchange/fhir_lens_writing.hpp"

#include "inventory/exchange/fhir_words.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double axisOfZero = 180.0;

bool isUsedOfLens(const std::string& element)
{
    return std::find(fhirLensUsed.begin(), fhirLensUsed.end(), element) != fhirLensUsed.end();
}

/// Whole degrees, as the standard takes them.
std::string axisText(const PersonRecord& person, double axis, std::vector<Finding>& findings)
{
    const double whole = std::round(axis);
    if (std::abs(axis - whole) > 1e-9)
        findings.push_back({Severity::caution,
                            person.position,
                            "fhir-axis-rounded",
                            {QS_SAY("core", "axis %1 of %2 leaves as %3: FHIR takes whole degrees"),
                             {decimalText(axis), shown(person.person), std::to_string(std::lround(axis))}}});
    return std::to_string(std::lround(whole < 1.0 ? axisOfZero : whole));
}

std::string prismText(const EyePrism& prism)
{
    std::string parts;
    const auto add = [&](double value, const char* plus, const char* minus) {
        parts.append(parts.empty() ? "" : ",")
            .append("{\"amount\":")
            .append(decimalText(std::abs(value)))
            .append(",\"base\":\"")
            .append(value < 0.0 ? minus : plus)
            .append("\"}");
    };
    if (prism.in != 0.0 || prism.up == 0.0)
        add(prism.in, "in", "out");
    if (prism.up != 0.0)
        add(prism.up, "up", "down");
    return "[" + parts + "]";
}

} // namespace

std::string fhirKept(const FhirKept& kept, std::string_view element)
{
    for (const auto& [name, json] : kept)
        if (name == element)
            return json;
    return {};
}

std::string fhirCoding(const char* system, std::string_view code)
{
    return "{\"system\":" + jsonQuoted(system) + ",\"code\":" + jsonQuoted(code) + "}";
}

std::string writeFhirLens(const PersonRecord& person, Eye side, const FhirKept& kept,
                          std::vector<Finding>& findings)
{
    const auto& eye = person.eyes.of(side);
    const auto product = fhirKept(kept, "product");
    std::string object = "{";
    addJsonMember(object, "product",
                  product.empty() ? "{\"coding\":[" + fhirCoding(fhirProductSystem, "lens") + "]}" : product);
    addJsonMember(object, "eye", side == Eye::right ? "\"right\"" : "\"left\"");
    if (eye.seeing()) {
        const auto& power = eye.final.power;
        const auto keptAxis = fhirKept(kept, "axis");
        const bool toric = power.cylinder != Dioptres{};
        addJsonMember(object, "sphere", decimalText(power.sphere.value()));
        if (toric || !keptAxis.empty())
            addJsonMember(object, "cylinder", toric ? decimalText(power.cylinder.value()) : "0.00");
        if (toric || !keptAxis.empty())
            addJsonMember(object, "axis", toric ? axisText(person, power.axis.value(), findings) : keptAxis);
        if (eye.final.prism)
            addJsonMember(object, "prism", prismText(*eye.final.prism));
    }
    if (eye.addition)
        addJsonMember(object, "add", decimalText(eye.addition->value()));
    if (!eye.seeing())
        addJsonMember(object, "note", "[{\"text\":" + jsonQuoted(eyeWords(eye.final, side)) + "}]");
    else if (const auto note = fhirKept(kept, "note"); !note.empty())
        addJsonMember(object, "note", note);
    for (const auto& [element, json] : kept)
        if (!isUsedOfLens(element))
            addJsonMember(object, element, json);
    return object + "}";
}

} // namespace quarterstep
