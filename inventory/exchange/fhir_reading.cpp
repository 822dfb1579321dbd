// SPDX-License-Identifier: GPL-3.0-or-later
// VisionPrescription and Observations to rows of the prescription table.
#include "inventory/exchange/fhir.hpp"
#include "inventory/exchange/fhir_lens.hpp"
#include "inventory/exchange/fhir_words.hpp"
#include "inventory/text/large_text.hpp"
#include "inventory/text/table_columns.hpp"
#include "inventory/text/table_dates.hpp"

#include <algorithm>
#include <deque>

namespace quarterstep
{

namespace
{

constexpr std::size_t progressStep = 256;
constexpr std::size_t dateLength = 10;

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

class FhirReader
{
  public:
    FhirReader(const std::string& name, const ImportOptions& options) : name_(name), options_(options) {}

    ImportedRows read(const std::string& bytes)
    {
        auto checked = checkLargeText(bytes, name_);
        reading_.findings = std::move(checked.findings);
        if (reading_.usable())
            readSource(checked.value);
        sortByPlace(reading_.findings);
        return std::move(reading_);
    }

  private:
    void tell(Severity severity, const JsonValue& where, std::string code, Sentence sentence)
    {
        reading_.findings.push_back({severity, where.place(), std::move(code), std::move(sentence)});
    }

    void readSource(const SourceText& source)
    {
        const auto first = source.text().find_first_not_of(" \t\r\n");
        if (first != std::string::npos && source.text()[first] == '<') {
            reading_.findings.push_back(
                {Severity::error,
                 source.at(first),
                 "fhir-xml",
                 {QS_SAY("core", "this is XML; ask for the same in JSON (application/fhir+json)"), {}}});
            return;
        }
        parse(source);
        for (const auto& document : documents_)
            collect(document.root());
        if (reading_.usable())
            readAll();
    }

    /// One value, or one a line where the first line is whole.
    void parse(const SourceText& source)
    {
        const auto lineEnd = source.text().find('\n');
        const bool lines = lineEnd != std::string::npos && JsonDocument::parse(source, 0, lineEnd).usable() &&
                           source.text().find_first_not_of(" \t\r\n", lineEnd) != std::string::npos;
        for (std::size_t begin = 0; begin < source.text().size() || begin == 0;) {
            const auto end = lines ? std::min(source.text().find('\n', begin), source.text().size())
                                   : source.text().size();
            const bool blank = source.text().find_first_not_of(" \t\r\n", begin) >= end;
            if (!lines || !blank) {
                auto parsed = JsonDocument::parse(source, begin, end);
                reading_.findings.insert(reading_.findings.end(), parsed.findings.begin(),
                                         parsed.findings.end());
                documents_.push_back(std::move(parsed.value));
            }
            begin = end + 1;
        }
    }

    void collect(const JsonValue& resource)
    {
        if (!resource)
            return;
        const auto type = resource.member("resourceType").text();
        if (type == "Bundle") {
            for (const auto& entry : resource.member("entry").children())
                if (const auto inside = entry.member("resource"))
                    collect(inside);
        } else if (type == "VisionPrescription") {
            prescriptions_.push_back(resource);
        } else if (type == "Observation") {
            observations_.push_back(resource);
        } else if (type.empty()) {
            tell(Severity::error, resource, "fhir-none",
                 {QS_SAY("core", "this is no resource of FHIR: resourceType is missing"), {}});
        } else {
            tell(Severity::note, resource, "fhir-left-out",
                 {QS_SAY("core",
                         "the resource %1 is left out: only VisionPrescription and its measures are read"),
                  {shown(type)}});
        }
    }

    void readAll()
    {
        for (const auto& resource : prescriptions_) {
            if (options_.progress && drafts_.size() % progressStep == 0)
                options_.progress(drafts_.size(), prescriptions_.size());
            if (isForUs(resource))
                readPrescription(resource);
        }
        for (std::size_t i = 0; i < drafts_.size(); ++i)
            byPerson_.emplace(drafts_[i].record.person, i);
        for (const auto& observation : observations_)
            readObservation(observation, fhirPersonOf(observation.member("subject")));
        RowEnd end(options_);
        for (auto& draft : drafts_) {
            tellKept(draft);
            end.finish(std::move(draft.record), draft.places, draft.row);
            reading_.value.push_back(std::move(draft.row));
        }
        if (options_.progress)
            options_.progress(prescriptions_.size(), prescriptions_.size());
        if (reading_.value.empty() && reading_.usable())
            reading_.findings.push_back(
                {Severity::error,
                 {name_, 1, 1},
                 "fhir-none",
                 {QS_SAY("core", "there is no prescription for spectacles to take in here"), {}}});
    }

    /// Left out on purpose, and said so: contact lenses, and what is not in force.
    bool isForUs(const JsonValue& resource)
    {
        const auto lenses = resource.member("lensSpecification").children();
        const auto status = resource.member("status").text();
        if (std::any_of(lenses.begin(), lenses.end(), fhirContactLens)) {
            tell(Severity::caution, resource, "fhir-contact-lens",
                 {QS_SAY("core",
                         "the prescription of %1 is left out: it is for contact lenses, whose powers and "
                         "curves are no spectacles'"),
                  {shown(fhirPersonOf(resource.member("patient")))}});
            return false;
        }
        if (status == "entered-in-error" || status == "cancelled" || status == "draft") {
            tell(Severity::caution, resource, "fhir-not-active",
                 {QS_SAY("core", "the prescription of %1 is left out: its status is %2"),
                  {shown(fhirPersonOf(resource.member("patient"))), status}});
            return false;
        }
        return true;
    }

    void readPrescription(const JsonValue& resource)
    {
        auto& draft = drafts_.emplace_back();
        draft.record.position = resource.place();
        checkModifiers(resource, draft);
        readPatient(resource.member("patient"), draft);
        readPrescriber(resource.member("prescriber"), draft);
        readDates(resource, draft);
        readLenses(resource, draft);
        for (const auto& element : resource.children()) {
            const auto name = element.name();
            if (name == "text")
                draft.tell(Severity::note, element, "fhir-left-out",
                           {QS_SAY("core", "the narrative is left out: it repeats what is coded"), {}});
            else if (std::find(fhirUsed.begin(), fhirUsed.end(), name) == fhirUsed.end())
                draft.keep("", element);
        }
        for (const auto& inside : resource.member("contained").children())
            if (inside.member("resourceType").text() == "Observation")
                readMeasures(inside, draft);
            else
                draft.tell(
                    Severity::caution, inside, "fhir-left-out",
                    {QS_SAY("core", "the resource %1 is left out: only VisionPrescription and its measures "
                                    "are read"),
                     {shown(inside.member("resourceType").text())}});
    }

    /// What may change the meaning of all the rest is never passed over.
    void checkModifiers(const JsonValue& resource, FhirDraft& draft)
    {
        auto places = resource.member("lensSpecification").children();
        places.push_back(resource);
        for (const auto& place : places)
            for (const char* name : {"modifierExtension", "implicitRules"})
                if (const auto found = place.member(name))
                    draft.tell(
                        Severity::error, found, "fhir-modifier",
                        {QS_SAY("core", "%1 may change what the prescription means, and is not understood; "
                                        "ask for it without"),
                         {name}});
        const auto status = resource.member("status");
        if (status.text() != "active")
            draft.tell(Severity::error, status ? status : resource, "fhir-status",
                       {QS_SAY("core", "the status is \"%1\"; active is wanted"), {shown(status.text())}});
        for (const auto& element : resource.member("meta").children())
            if (!hasRules(element))
                draft.tell(Severity::note, element, "fhir-left-out",
                           {QS_SAY("core", "meta.%1 is left out: it belongs to the sender's copy"),
                            {shown(element.name())}});
    }

    /// The tags of the rules that the writer puts.
    static bool hasRules(const JsonValue& element)
    {
        const auto tags = element.children();
        return element.name() == "tag" && std::all_of(tags.begin(), tags.end(), [](const JsonValue& tag) {
                   const auto system = tag.member("system").text();
                   return system == fhirRulesSystem || system == fhirRulesHashSystem;
               });
    }

    static void readPatient(const JsonValue& patient, FhirDraft& draft)
    {
        draft.record.person = fhirPersonOf(patient);
        if (!draft.record.person.empty())
            draft.places["person"] = patient.place();
        const auto identifier = patient.member("identifier");
        const bool ours = patient.children().size() == 1 && identifier.children().size() == 2 &&
                          identifier.member("system").text() == fhirPersonSystem;
        if (patient && !ours)
            draft.keep("", patient);
    }

    static void readPrescriber(const JsonValue& prescriber, FhirDraft& draft)
    {
        const auto parts = prescriber.children();
        draft.record.prescriber = fhirPrescriberOf(prescriber);
        const bool absent = parts.size() == 1 && parts[0].name() == "extension" &&
                            parts[0].children().size() == 1 &&
                            parts[0].children()[0].member("url").text() == fhirAbsentReason;
        if (prescriber && !absent && (parts.size() != 1 || parts[0].name() != "display"))
            draft.keep("", prescriber);
    }

    static void readDates(const JsonValue& resource, FhirDraft& draft)
    {
        const auto written = resource.member("dateWritten");
        const auto text = written.text();
        draft.places["written_on"] = written ? written.place() : resource.place();
        if (parseIsoDate(text.substr(0, dateLength)))
            draft.record.writtenOn = text.substr(0, dateLength);
        else if (written)
            draft.tell(Severity::caution, written, "fhir-date",
                       {QS_SAY("core", "\"%1\" is no whole date; how old the prescription is stays open"),
                        {shown(text)}});
        if (written && text != draft.record.writtenOn)
            draft.keep("", written);
        const auto created = resource.member("created");
        if (created && created.text() != text && !draft.record.writtenOn.empty())
            draft.keep("", created);
    }

    static void readLenses(const JsonValue& resource, FhirDraft& draft)
    {
        const auto lenses = resource.member("lensSpecification");
        for (const auto& lens : lenses.children())
            readFhirLens(lens, draft);
        for (const char* eye : {"right", "left"})
            if (draft.places.try_emplace(eye, lenses ? lenses.place() : resource.place()).second) {
                draft.tell(
                    Severity::error, lenses ? lenses : resource, "fhir-eye-missing",
                    {QS_SAY("core", "nothing is stated for the %1 eye; ask for it: a power, or that it is a "
                                    "balance lens, artificial, blind or not measured"),
                     {eye}});
            }
    }

    static void tellKept(FhirDraft& draft)
    {
        std::string names;
        for (const auto& name : draft.kept)
            names += (names.empty() ? "" : ", ") + name;
        if (!names.empty())
            draft.row.findings.push_back({Severity::note,
                                          draft.record.position,
                                          "fhir-kept",
                                          {QS_SAY("core", "kept without being used: %1"), {shown(names)}}});
    }

    void readObservation(const JsonValue& observation, const std::string& person)
    {
        const auto leftOut = [&](const char* words) {
            tell(Severity::caution, observation, "fhir-left-out",
                 {words, {shown(observation.member("code").member("text").text()), shown(person)}});
        };
        const auto found = byPerson_.find(person);
        if (observation.member("status").text() == "entered-in-error")
            leftOut(QS_SAY("core", "the observation %1 of %2 is left out: it was entered in error"));
        else if (!hasSystem(observation.member("code"), fhirMeasureSystem))
            leftOut(QS_SAY("core", "the observation %1 of %2 is left out: its code is not known here"));
        else if (found == byPerson_.end())
            leftOut(QS_SAY("core",
                           "the observation %1 of %2 is left out: no prescription of theirs is taken in"));
        else
            readMeasures(observation, drafts_[found->second]);
    }

    static void readMeasures(const JsonValue& observation, FhirDraft& draft)
    {
        for (const auto& component : observation.member("component").children()) {
            const auto codings = component.member("code").member("coding").children();
            const auto column = codings.empty() ? std::string() : codings[0].member("code").text();
            const auto quantity = component.member("valueQuantity").member("value");
            const auto text = quantity ? quantity.text() : component.member("valueString").text();
            if (columnNamed(column) == nullptr || !fromObservation(column)) {
                draft.record.otherColumns.emplace_back(column, text);
                continue;
            }
            draft.places[column] = component.place();
            if (const auto said = setField(draft.record, column, text))
                draft.tell(Severity::error, component, said->code, said->sentence);
        }
    }

    std::string name_;
    const ImportOptions& options_;
    std::deque<JsonDocument> documents_;
    std::vector<JsonValue> prescriptions_;
    std::vector<JsonValue> observations_;
    std::vector<FhirDraft> drafts_;
    std::map<std::string, std::size_t> byPerson_;
    ImportedRows reading_;
};

} // namespace

ImportedRows readFhir(const std::string& bytes, const std::string& name, const ImportOptions& options)
{
    return FhirReader(name, options).read(bytes);
}

} // namespace quarterstep
