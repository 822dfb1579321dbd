// SPDX-License-Identifier: GPL-3.0-or-later
// A number that is not stated is not taken as zero: a sphere that is missing is refused.
#include "inventory/exchange/fhir_lens.hpp"

#include "inventory/exchange/fhir_words.hpp"
#include "inventory/text/numbers.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double mostSphere = 40.0;
constexpr double mostCylinder = 20.0;
constexpr double mostPrism = 30.0;
constexpr double halfTurn = 180.0;

bool hasCode(const JsonValue& product, std::string_view code)
{
    const auto codings = product.member("coding").children();
    return std::any_of(codings.begin(), codings.end(),
                       [&](const JsonValue& coding) { return coding.member("code").text() == code; });
}

/// The product that the writer puts: one coding, system and code, nothing else.
bool isOurProduct(const JsonValue& product)
{
    const auto codings = product.member("coding").children();
    return product.children().size() == 1 && codings.size() == 1 && codings[0].children().size() == 2 &&
           codings[0].member("system").text() == fhirProductSystem &&
           codings[0].member("code").text() == "lens";
}

class LensReader
{
  public:
    LensReader(const JsonValue& lens, FhirDraft& draft) : lens_(lens), draft_(draft) {}

    void read()
    {
        const auto eye = lens_.member("eye").text();
        if (eye != "right" && eye != "left") {
            refuse(lens_.member("eye") ? lens_.member("eye") : lens_,
                   {QS_SAY("core", "the eye is \"%1\"; right or left is wanted"), {shown(eye)}});
            return;
        }
        side_ = eye;
        if (draft_.places.count(side_) > 0) {
            draft_.tell(
                Severity::error, lens_, "fhir-eye-twice",
                {QS_SAY("core", "there is a second lens for the %1 eye; a resource for each purpose is "
                                "understood, with one lens an eye"),
                 {side_}});
            return;
        }
        draft_.places[side_] = lens_.place();
        readEye(draft_.record.eyes.of(side_ == "right" ? Eye::right : Eye::left));
        readProduct();
        for (const auto& element : lens_.children())
            if (std::find(fhirLensUsed.begin(), fhirLensUsed.end(), element.name()) == fhirLensUsed.end())
                draft_.keep(side_, element);
    }

  private:
    void refuse(const JsonValue& where, Sentence sentence)
    {
        draft_.tell(Severity::error, where, "fhir-element", std::move(sentence));
    }

    std::optional<double> number(const JsonValue& value, double most, bool fine = false)
    {
        if (value.kind() != JsonKind::number) {
            refuse(value, {QS_SAY("core", "%1 is \"%2\"; a number without quotes is wanted, as -1.25"),
                           {value.name(), shown(value.text())}});
            return std::nullopt;
        }
        const auto parsed = machineNumber(value.text(), most, fine);
        if (parsed)
            return parsed.value();
        draft_.tell(Severity::error, value, parsed.complaint().code, parsed.complaint().sentence);
        return std::nullopt;
    }

    void readEye(EyeRecord& eye)
    {
        const auto sphere = lens_.member("sphere");
        if (!sphere && !readState(eye.final))
            draft_.tell(
                Severity::error, lens_, "fhir-sphere-missing",
                {QS_SAY("core", "the sphere of the %1 eye is not stated; that is not zero: write 0.00 for "
                                "plano, or balance, artificial, blind or not measured as the note"),
                 {side_}});
        if (sphere)
            eye.final.power.sphere = Dioptres{number(sphere, mostSphere).value_or(0.0)};
        readCylinder(eye.final.power);
        if (const auto prism = lens_.member("prism"))
            readPrism(prism, eye.final);
        if (const auto add = lens_.member("add"))
            readAddition(add);
        if (sphere && lens_.member("note"))
            draft_.keep(side_, lens_.member("note"));
        eye.final.asWritten = eyeWords(eye.final, side_ == "right" ? Eye::right : Eye::left);
    }

    /// A note that says what the eye is, where there is no power.
    bool readState(WrittenEye& eye)
    {
        const auto notes = lens_.member("note").children();
        const auto words = notes.size() == 1 ? notes[0].member("text").text() : std::string();
        const auto read = parseEye(words);
        if (!read || read.value().state == EyeState::measured)
            return false;
        eye.state = read.value().state;
        return true;
    }

    void readCylinder(SpheroCylinder& power)
    {
        const auto cylinder = lens_.member("cylinder");
        const auto axis = lens_.member("axis");
        const double value = cylinder ? number(cylinder, mostCylinder).value_or(0.0) : 0.0;
        power.cylinder = Dioptres{value};
        if (!axis && value != 0.0)
            draft_.tell(Severity::error, cylinder, "axis-missing",
                        {QS_SAY("core", "cylinder %1 has no axis; write it with its axis, as %1 x 90"),
                         {cylinder.text()}});
        if (axis && value == 0.0)
            draft_.keep(side_, axis);
        if (!axis || value == 0.0)
            return;
        const auto degrees = number(axis, halfTurn);
        if (degrees && *degrees != std::round(*degrees))
            refuse(axis, {QS_SAY("core", "axis %1 is not a whole number of degrees"), {axis.text()}});
        if (degrees) // the standard allows -180 to 180
            power.axis = AxisDegrees{*degrees <= 0.0 ? *degrees + halfTurn : *degrees};
        if (degrees && *degrees <= -halfTurn)
            power.axis = AxisDegrees{halfTurn};
    }

    void readPrism(const JsonValue& prism, WrittenEye& eye)
    {
        if (prism.kind() != JsonKind::array) {
            refuse(prism, {QS_SAY("core", "prism is a list of amounts and bases"), {}});
            return;
        }
        EyePrism sum;
        for (const auto& part : prism.children()) {
            const auto base = part.member("base").text();
            const auto amount = number(part.member("amount") ? part.member("amount") : part, mostPrism, true);
            if (!amount)
                continue;
            if (*amount < 0.0)
                refuse(part, {QS_SAY("core", "the prism %1 is below zero; turn its base instead"),
                              {part.member("amount").text()}});
            const bool horizontal = base == "in" || base == "out";
            if (!horizontal && base != "up" && base != "down") {
                refuse(part,
                       {QS_SAY("core", "the base is \"%1\"; up, down, in or out is wanted"), {shown(base)}});
                continue;
            }
            double& component = horizontal ? sum.in : sum.up;
            component += (base == "in" || base == "up" ? 1.0 : -1.0) * *amount;
            for (const auto& element : part.children())
                if (element.name() != "amount" && element.name() != "base")
                    draft_.tell(
                        Severity::caution, element, "fhir-left-out",
                        {QS_SAY("core", "\"%1\" inside a prism is not used"), {shown(element.name())}});
        }
        eye.prism = EyePrism{sum.in + 0.0, sum.up + 0.0};
    }

    void readAddition(const JsonValue& add)
    {
        const auto value = number(add, mostSphere);
        if (!value)
            return;
        const auto said = setField(draft_.record, "add_" + side_, writeDioptres(Dioptres{*value}));
        if (said)
            draft_.tell(Severity::error, add, said->code, said->sentence);
        draft_.places["add_" + side_] = add.place();
    }

    void readProduct()
    {
        const auto product = lens_.member("product");
        if (!hasCode(product, "lens"))
            draft_.tell(
                Severity::caution, product ? product : lens_, "fhir-product",
                {QS_SAY("core", "the product is not coded as lens or contact; it is read as a spectacle "
                                "lens"),
                 {}});
        if (product && !isOurProduct(product))
            draft_.keep(side_, product);
    }

    JsonValue lens_;
    FhirDraft& draft_;
    std::string side_;
};

} // namespace

void FhirDraft::tell(Severity severity, const JsonValue& where, std::string code, Sentence sentence)
{
    row.findings.push_back({severity, where.place(), std::move(code), std::move(sentence)});
}

void FhirDraft::keep(const std::string& eye, const JsonValue& element)
{
    record.otherColumns.emplace_back(fhirColumnOf(eye, element.name()), jsonCompact(element.raw()));
    kept.push_back((eye.empty() ? "" : eye + " ") + element.name());
}

bool fhirContactLens(const JsonValue& lens)
{
    return hasCode(lens.member("product"), "contact") ||
           std::any_of(fhirContactOnly.begin(), fhirContactOnly.end(),
                       [&](std::string_view name) { return static_cast<bool>(lens.member(name)); });
}

void readFhirLens(const JsonValue& lens, FhirDraft& draft)
{
    LensReader(lens, draft).read();
}

} // namespace quarterstep
