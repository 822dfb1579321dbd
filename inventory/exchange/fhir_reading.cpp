// SPDX-License-Identifier: GPL-3.0-or-later
// VisionPrescription and Observations to rows of the prescription table.
#include "inventory/exchange/fhir.hpp"
#include "inventory/exchange/fhir_prescription.hpp"
#include "inventory/exchange/fhir_words.hpp"
#include "inventory/text/large_text.hpp"

#include <algorithm>
#include <deque>

namespace quarterstep
{

namespace
{

constexpr std::size_t progressStep = 256;

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
            tellEnvelope(resource);
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

    /// What a Bundle says of itself and of its entries: refused where it may change the rest, else told.
    void tellEnvelope(const JsonValue& bundle)
    {
        std::string names;
        const auto add = [&](const std::string& name) {
            if (names.find(name) == std::string::npos)
                names += (names.empty() ? "" : ", ") + name;
        };
        for (const auto& element : bundle.children()) {
            const auto name = element.name();
            if (name == "implicitRules")
                tell(Severity::error, element, "fhir-modifier",
                     {QS_SAY("core", "%1 may change what the prescription means, and is not understood; ask "
                                     "for it without"),
                      {name}});
            else if (name != "resourceType" && name != "type" && name != "entry")
                add(name);
        }
        for (const auto& entry : bundle.member("entry").children())
            for (const auto& element : entry.children())
                if (element.name() != "fullUrl" && element.name() != "resource")
                    add("entry." + element.name());
        if (!names.empty())
            tell(Severity::note, bundle, "fhir-left-out",
                 {QS_SAY("core", "of the Bundle left out: %1; it belongs to the sender's envelope"),
                  {shown(names)}});
    }

    void readAll()
    {
        for (const auto& resource : prescriptions_) {
            if (options_.progress && drafts_.size() % progressStep == 0)
                options_.progress(drafts_.size(), prescriptions_.size());
            if (isForUs(resource))
                readFhirPrescription(resource, drafts_.emplace_back());
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
        const auto found = byPerson_.find(person);
        const char* refused = fhirMeasuresRefused(observation);
        if (refused == nullptr && found == byPerson_.end())
            refused =
                QS_SAY("core", "the observation %1 of %2 is left out: no prescription of theirs is taken in");
        if (refused == nullptr)
            readFhirMeasures(observation, drafts_[found->second]);
        else
            tell(Severity::caution, observation, "fhir-left-out",
                 {refused, {shown(observation.member("code").member("text").text()), shown(person)}});
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
