// SPDX-License-Identifier: GPL-3.0-or-later
// What the prescription itself states: who, when, by whom, both lenses; everything else is kept or told.
#include "inventory/exchange/fhir_prescription.hpp"

#include "inventory/exchange/fhir_words.hpp"
#include "inventory/text/table_columns.hpp"
#include "inventory/text/table_dates.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

constexpr std::size_t dateLength = 10;
constexpr std::array<const char*, 2> modifiers{"modifierExtension", "implicitRules"};

/// What an Observation of ours has.
constexpr std::array<std::string_view, 8> measuresUsed{
    "resourceType", "id", "status", "code", "subject", "focus", "effectiveDateTime", "component"};

/// Columns that Observations may fill: all but those that the prescription itself states.
bool fromObservation(const std::string& column)
{
    for (const char* own :
         {"person", "right", "left", "add", "add_right", "add_left", "prescriber", "written_on"})
        if (column == own)
            return false;
    return true;
}

bool hasSystem(const JsonValue& value, std::string_view system)
{
    const auto codings = value.member("coding").children();
    return std::any_of(codings.begin(), codings.end(),
                       [&](const JsonValue& coding) { return coding.member("system").text() == system; });
}

/// The extension by which the writer says that something is not known, and nothing else.
bool isAbsent(const JsonValue& value)
{
    const auto parts = value.children();
    return parts.size() == 1 && parts[0].name() == "extension" && parts[0].children().size() == 1 &&
           parts[0].children()[0].member("url").text() == fhirAbsentReason;
}

class PrescriptionReader
{
  public:
    PrescriptionReader(const JsonValue& resource, FhirDraft& draft) : resource_(resource), draft_(draft) {}

    void read()
    {
        draft_.record.position = resource_.place();
        checkModifiers();
        readMeta();
        readPatient(resource_.member("patient"));
        readPrescriber(resource_.member("prescriber"));
        readDates();
        readLenses();
        keepOthers();
        readContained();
    }

  private:
    /// What may change the meaning of all the rest is never passed over.
    void checkModifiers()
    {
        auto places = resource_.member("lensSpecification").children();
        places.push_back(resource_);
        for (const auto& place : places)
            for (const char* name : modifiers)
                if (const auto found = place.member(name))
                    draft_.tell(
                        Severity::error, found, "fhir-modifier",
                        {QS_SAY("core", "%1 may change what the prescription means, and is not understood; "
                                        "ask for it without"),
                         {name}});
        const auto status = resource_.member("status");
        if (status.text() != "active")
            draft_.tell(Severity::error, status ? status : resource_, "fhir-status",
                        {QS_SAY("core", "the status is \"%1\"; active is wanted"), {shown(status.text())}});
    }

    void readMeta()
    {
        for (const auto& element : resource_.member("meta").children())
            if (!takeRules(element))
                draft_.tell(Severity::note, element, "fhir-left-out",
                            {QS_SAY("core", "meta.%1 is left out: it belongs to the sender's copy"),
                             {shown(element.name())}});
    }

    /// The tags that the writer puts, and no other.
    bool takeRules(const JsonValue& element)
    {
        RulesStamp stamp;
        if (element.name() != "tag")
            return false;
        for (const auto& tag : element.children()) {
            const auto system = tag.member("system").text();
            if (system == fhirRulesSystem) {
                stamp.profile = tag.member("code").text();
                stamp.version = tag.member("version").text();
            } else if (system == fhirRulesHashSystem) {
                stamp.hash = tag.member("code").text();
            } else {
                return false;
            }
        }
        keepRules(draft_.record, stamp);
        return true;
    }

    void readPatient(const JsonValue& patient)
    {
        draft_.record.person = fhirPersonOf(patient);
        if (!draft_.record.person.empty())
            draft_.places["person"] = patient.place();
        const auto identifier = patient.member("identifier");
        const bool ours = patient.children().size() == 1 && identifier.children().size() == 2 &&
                          identifier.member("system").text() == fhirPersonSystem;
        if (patient && !ours)
            draft_.keep("", patient);
    }

    void readPrescriber(const JsonValue& prescriber)
    {
        const auto parts = prescriber.children();
        draft_.record.prescriber = fhirPrescriberOf(prescriber);
        if (prescriber && !isAbsent(prescriber) && (parts.size() != 1 || parts[0].name() != "display"))
            draft_.keep("", prescriber);
    }

    void readDates()
    {
        const auto written = resource_.member("dateWritten");
        const auto text = written.text();
        draft_.places["written_on"] = written ? written.place() : resource_.place();
        if (parseIsoDate(text.substr(0, dateLength)))
            draft_.record.writtenOn = text.substr(0, dateLength);
        else if (written)
            draft_.tell(Severity::caution, written, "fhir-date",
                        {QS_SAY("core", "\"%1\" is no whole date; how old the prescription is stays open"),
                         {shown(text)}});
        if (written && text != draft_.record.writtenOn)
            draft_.keep("", written);
        if (const auto why = resource_.member("_dateWritten"); why && !isAbsent(why))
            draft_.keep("", why);
        if (const auto created = resource_.member("created"); created && created.text() != text)
            draft_.keep("", created); // of an undated prescription the only day there is
    }

    void readLenses()
    {
        const auto lenses = resource_.member("lensSpecification");
        for (const auto& lens : lenses.children())
            readFhirLens(lens, draft_);
        for (const char* eye : {"right", "left"})
            if (draft_.places.try_emplace(eye, lenses ? lenses.place() : resource_.place()).second)
                draft_.tell(
                    Severity::error, lenses ? lenses : resource_, "fhir-eye-missing",
                    {QS_SAY("core", "nothing is stated for the %1 eye; ask for it: a power, or that it is a "
                                    "balance lens, artificial, blind or not measured"),
                     {eye}});
    }

    void keepOthers()
    {
        for (const auto& element : resource_.children()) {
            const auto name = element.name();
            if (name == "text")
                draft_.tell(Severity::note, element, "fhir-left-out",
                            {QS_SAY("core", "the narrative is left out: it repeats what is coded"), {}});
            else if (std::find(fhirUsed.begin(), fhirUsed.end(), name) == fhirUsed.end())
                draft_.keep("", element);
        }
    }

    void readContained()
    {
        for (const auto& inside : resource_.member("contained").children()) {
            const auto type = inside.member("resourceType").text();
            const char* refused = type == "Observation" ? fhirMeasuresRefused(inside) : nullptr;
            if (type != "Observation")
                draft_.tell(
                    Severity::caution, inside, "fhir-left-out",
                    {QS_SAY("core", "the resource %1 is left out: only VisionPrescription and its measures "
                                    "are read"),
                     {shown(type)}});
            else if (refused != nullptr)
                draft_.tell(
                    Severity::caution, inside, "fhir-left-out",
                    {refused,
                     {shown(inside.member("code").member("text").text()), shown(draft_.record.person)}});
            else
                readFhirMeasures(inside, draft_);
        }
    }

    const JsonValue& resource_;
    FhirDraft& draft_;
};

void tellLeft(const JsonValue& observation, FhirDraft& draft)
{
    std::string names;
    for (const auto& element : observation.children())
        if (std::find(measuresUsed.begin(), measuresUsed.end(), element.name()) == measuresUsed.end())
            names += (names.empty() ? "" : ", ") + element.name();
    if (!names.empty())
        draft.tell(Severity::note, observation, "fhir-left-out",
                   {QS_SAY("core", "of an observation left out: %1"), {shown(names)}});
}

} // namespace

void readFhirPrescription(const JsonValue& resource, FhirDraft& draft)
{
    PrescriptionReader(resource, draft).read();
}

const char* fhirMeasuresRefused(const JsonValue& observation)
{
    if (observation.member("status").text() == "entered-in-error")
        return QS_SAY("core", "the observation %1 of %2 is left out: it was entered in error");
    if (!hasSystem(observation.member("code"), fhirMeasureSystem))
        return QS_SAY("core", "the observation %1 of %2 is left out: its code is not known here");
    for (const char* name : modifiers)
        if (observation.member(name))
            return QS_SAY("core",
                          "the observation %1 of %2 is left out: something in it may change its meaning");
    return nullptr;
}

void readFhirMeasures(const JsonValue& observation, FhirDraft& draft)
{
    tellLeft(observation, draft);
    for (const auto& component : observation.member("component").children()) {
        const auto codings = component.member("code").member("coding").children();
        const auto column = codings.empty() ? std::string() : codings[0].member("code").text();
        const auto quantity = component.member("valueQuantity").member("value");
        const auto text = quantity ? quantity.text() : component.member("valueString").text();
        if (column.empty()) {
            draft.tell(Severity::caution, component, "fhir-left-out",
                       {QS_SAY("core", "a measure without a code is left out: \"%1\""), {shown(text)}});
            continue;
        }
        if (columnNamed(column) == nullptr || !fromObservation(column)) {
            draft.record.otherColumns.emplace_back(column, text);
            continue;
        }
        draft.places[column] = component.place();
        if (const auto said = setField(draft.record, column, text))
            draft.tell(Severity::error, component, said->code, said->sentence);
    }
}

} // namespace quarterstep
