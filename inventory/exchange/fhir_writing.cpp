// SPDX-License-Identifier: GPL-3.0-or-later
// Persons to VisionPrescription and Observations.
#include "inventory/exchange/fhir.hpp"
#include "inventory/exchange/fhir_lens_writing.hpp"
#include "inventory/exchange/fhir_words.hpp"
#include "inventory/text/record_text.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

constexpr const char* unitsOfMeasure = "http://unitsofmeasure.org";

std::string conceptOf(const char* system, std::string_view code, std::string_view text)
{
    return "{\"coding\":[" + fhirCoding(system, code) + "],\"text\":" + jsonQuoted(text) + "}";
}

bool isUsed(const std::string& element)
{
    return std::find(fhirUsed.begin(), fhirUsed.end(), element) != fhirUsed.end();
}

/// Which Observation a column goes to; empty for what the prescription states itself.
enum class Goes { nowhere, pupils, record };

Goes observationOf(const std::string& column)
{
    for (const char* own : {"person", "right", "left", "add_right", "add_left", "prescriber", "written_on"})
        if (column == own)
            return Goes::nowhere;
    for (const char* pd : {"pd_mm", "pd_right_mm", "pd_left_mm", "near_pd_mm"})
        if (column == pd)
            return Goes::pupils;
    return Goes::record;
}

class ResourceWriter
{
  public:
    ResourceWriter(const ExchangePerson& person, const std::string& today, std::vector<Finding>& findings)
        : person_(person.record), rules_(person.rules), today_(today), findings_(findings)
    {
        for (const auto& [column, cell] : person_.otherColumns)
            if (column.rfind(fhirColumn, 0) == 0)
                take(column.substr(fhirColumn.size()), cell);
    }

    /// The prescription; `contained` "" when its measures stand elsewhere.
    std::string prescription(const std::string& contained)
    {
        std::string object = "{";
        addJsonMember(object, "resourceType", "\"VisionPrescription\"");
        if (const auto id = keptOf("id"); !id.empty())
            addJsonMember(object, "id", id);
        addJsonMember(object, "meta", "{\"tag\":" + ruleTags() + "}");
        if (!contained.empty())
            addJsonMember(object, "contained", "[" + contained + "]");
        addJsonMember(object, "status", "\"active\"");
        addJsonMember(object, "created", keptOr("created", jsonQuoted(day())));
        addJsonMember(object, "patient", patient());
        addDateWritten(object);
        addJsonMember(object, "prescriber", prescriber());
        addJsonMember(object, "lensSpecification", "[" + lens(Eye::right) + "," + lens(Eye::left) + "]");
        for (const auto& [element, json] : kept_)
            if (!isUsed(element) && element != "id")
                addJsonMember(object, element, json);
        return object + "}";
    }

    /// The Observation of the pupils or of the rest, without its braces closed; empty when there is nothing.
    std::string observation(Goes which, bool inside)
    {
        std::string components;
        for (const auto& [column, cell] : recordCells(person_))
            if (observationOf(column) == which && !staysHere(column))
                components += (components.empty() ? "" : ",") + component(column, cell);
        if (which == Goes::record)
            for (const auto& [column, cell] : person_.otherColumns)
                if (column.rfind(fhirColumn, 0) != 0 && !cell.empty() && !isRulesColumn(column))
                    components += (components.empty() ? "" : ",") + component(column, cell);
        if (components.empty())
            return {};
        const bool pupils = which == Goes::pupils;
        std::string object = "{";
        addJsonMember(object, "resourceType", "\"Observation\"");
        if (inside)
            addJsonMember(object, "id", pupils ? "\"pupils\"" : "\"record\"");
        addJsonMember(object, "status", "\"final\"");
        addJsonMember(object, "code",
                      pupils ? conceptOf(fhirMeasureSystem, "pupillary-distance", "pupillary distance")
                             : conceptOf(fhirMeasureSystem, "refraction-record", "record of the refraction"));
        addJsonMember(object, "subject", patient());
        if (inside)
            addJsonMember(object, "focus", "[{\"reference\":\"#\"}]");
        if (!person_.writtenOn.empty())
            addJsonMember(object, "effectiveDateTime", jsonQuoted(person_.writtenOn));
        addJsonMember(object, "component", "[" + components + "]");
        return object + "}";
    }

    void tellNotCarried()
    {
        for (const auto& [column, cell] : recordCells(person_))
            if (staysHere(column))
                tellStays(person_, column, findings_);
    }

  private:
    void tell(Severity severity, const char* code, Sentence sentence)
    {
        findings_.push_back({severity, person_.position, code, std::move(sentence)});
    }

    /// A kept element goes back where it came from when its cell still is JSON.
    void take(const std::string& column, const std::string& cell)
    {
        const auto checked = checkText(cell, person_.position.file);
        const auto parsed = checked.usable() ? JsonDocument::parse(checked.value) : Reading<JsonDocument>{};
        if (!parsed.value.root() || !parsed.usable()) {
            tell(Severity::caution, "not-carried",
                 {QS_SAY("core", "the column fhir.%1 of %2 is left out: its cell is no JSON"),
                  {shown(column), shown(person_.person)}});
            return;
        }
        if (column == "patient" && fhirPersonOf(parsed.value.root()) != person_.person)
            return; // another person since
        if (column == "prescriber" && fhirPrescriberOf(parsed.value.root()) != person_.prescriber)
            return;
        const auto dot = column.find('.');
        const auto eye = column.substr(0, dot);
        if (dot != std::string::npos && (eye == "right" || eye == "left"))
            lensKept_[eye].emplace_back(fhirElementOf(std::string_view(column).substr(dot + 1)), cell);
        else
            kept_.emplace_back(fhirElementOf(column), cell);
    }

    [[nodiscard]] std::string keptOf(std::string_view element) const { return fhirKept(kept_, element); }
    [[nodiscard]] std::string keptOr(std::string_view element, const std::string& other) const
    {
        const auto found = keptOf(element);
        return found.empty() ? other : found;
    }

    [[nodiscard]] const std::string& day() const
    {
        return person_.writtenOn.empty() ? today_ : person_.writtenOn;
    }

    [[nodiscard]] std::string ruleTags() const
    {
        return "[{\"system\":" + jsonQuoted(fhirRulesSystem) + ",\"version\":" + jsonQuoted(rules_.version) +
               ",\"code\":" + jsonQuoted(rules_.profile) + "}," +
               fhirCoding(fhirRulesHashSystem, rules_.hash) + "]";
    }

    [[nodiscard]] std::string patient() const
    {
        return keptOr("patient", "{\"identifier\":{\"system\":" + jsonQuoted(fhirPersonSystem) +
                                     ",\"value\":" + jsonQuoted(person_.person) + "}}");
    }

    static std::string absent()
    {
        return "{\"extension\":[{\"url\":" + jsonQuoted(fhirAbsentReason) + ",\"valueCode\":\"unknown\"}]}";
    }

    [[nodiscard]] std::string prescriber() const
    {
        return keptOr("prescriber", person_.prescriber.empty()
                                        ? absent()
                                        : "{\"display\":" + jsonQuoted(person_.prescriber) + "}");
    }

    void addDateWritten(std::string& object) const
    {
        const auto kept = keptOf("dateWritten");
        const auto why = keptOf("_dateWritten");
        if (!kept.empty() || !person_.writtenOn.empty())
            addJsonMember(object, "dateWritten", kept.empty() ? jsonQuoted(person_.writtenOn) : kept);
        if (!why.empty())
            addJsonMember(object, "_dateWritten", why);
        else if (kept.empty() && person_.writtenOn.empty())
            addJsonMember(object, "_dateWritten", absent());
    }

    std::string lens(Eye side)
    {
        return writeFhirLens(person_, side, lensKept_[side == Eye::right ? "right" : "left"], findings_);
    }

    /// A distance in millimetres as a quantity, anything else in its words.
    static std::string component(const std::string& column, const std::string& cell)
    {
        std::string object = "{";
        addJsonMember(object, "code", "{\"coding\":[" + fhirCoding(fhirMeasureSystem, column) + "]}");
        const bool length = column.size() > 3 && column.compare(column.size() - 3, 3, "_mm") == 0;
        if (length && machineNumber(cell, 1e6, true))
            addJsonMember(object, "valueQuantity",
                          "{\"value\":" + cell + ",\"unit\":\"mm\",\"system\":" + jsonQuoted(unitsOfMeasure) +
                              ",\"code\":\"mm\"}");
        else
            addJsonMember(object, "valueString", jsonQuoted(cell));
        return object + "}";
    }

    const PersonRecord& person_;
    const RulesStamp& rules_;
    const std::string& today_;
    std::vector<Finding>& findings_;
    FhirKept kept_;
    std::map<std::string, FhirKept> lensKept_;
};

} // namespace

Reading<std::string> writeFhirBundle(std::span<const ExchangePerson> persons, const std::string& today)
{
    Reading<std::string> written;
    auto& text = written.value;
    text = "{\"resourceType\":\"Bundle\",\"type\":\"collection\",\"entry\":[";
    std::size_t number = 0;
    bool first = true;
    for (const auto& person : persons) {
        ResourceWriter writer(person, today, written.findings);
        const auto count = std::to_string(++number);
        const auto add = [&](const char* what, const std::string& resource) {
            if (resource.empty())
                return;
            text.append(first ? "\n" : ",\n")
                .append(R"({"fullUrl":"urn:quarterstep:)")
                .append(what)
                .append(":")
                .append(count)
                .append(R"(","resource":)")
                .append(resource)
                .append("}");
            first = false;
        };
        add("prescription", writer.prescription({}));
        add("pupils", writer.observation(Goes::pupils, false));
        add("record", writer.observation(Goes::record, false));
        writer.tellNotCarried();
    }
    text += first ? "]}\n" : "\n]}\n";
    return written;
}

Reading<std::string> writeFhirAlone(const ExchangePerson& person, const std::string& today)
{
    Reading<std::string> written;
    ResourceWriter writer(person, today, written.findings);
    auto contained = writer.observation(Goes::pupils, true);
    if (const auto record = writer.observation(Goes::record, true); !record.empty())
        contained += (contained.empty() ? "" : ",") + record;
    written.value = writer.prescription(contained) + "\n";
    writer.tellNotCarried();
    return written;
}

} // namespace quarterstep
