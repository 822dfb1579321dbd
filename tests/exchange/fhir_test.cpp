// SPDX-License-Identifier: GPL-3.0-or-later
// Published examples both ways, round trips, and everything that is refused or left out.
// Examples: HL7 FHIR (R4, R5), VisionPrescription 33123 and 33124, CC0; references and identifiers are ours.
#include "inventory/exchange/fhir.hpp"
#include "inventory/exchange/json_text.hpp"
#include "tests/exchange/random_persons.hpp"

#include <boost/test/unit_test.hpp>
#include <fstream>
#include <sstream>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::check;

namespace
{

std::string fileText(const std::string& name)
{
    std::ifstream file(std::string(QS_SOURCE_DIR) + "/tests/exchange/files/" + name);
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

ImportedRows read(const std::string& text)
{
    return readFhir(text, "given.json", {"2026-11-27", {}});
}

std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    const auto at = text.find(from);
    BOOST_REQUIRE_MESSAGE(at != std::string::npos, from);
    return text.replace(at, from.size(), to);
}

/// Codes of the first row, then of the file.
std::string codes(const ImportedRows& rows)
{
    std::string text;
    const auto add = [&](const std::vector<Finding>& findings) {
        for (const auto& finding : findings) {
            BOOST_TEST(finding.position.line > 0);
            text += (text.empty() ? "" : " ") + finding.code;
        }
    };
    if (!rows.value.empty())
        add(rows.value.front().findings);
    add(rows.findings);
    return text;
}

const std::string twoEyes =
    R"({"resourceType":"VisionPrescription","status":"active","created":"2026-03-01",)"
    R"("patient":{"identifier":{"system":"urn:quarterstep:person","value":"K-1"}},)"
    R"("dateWritten":"2026-03-01","prescriber":{"display":"Osric"},"lensSpecification":[)"
    R"({"product":{"coding":[{"system":"http://terminology.hl7.org/CodeSystem/)"
    R"(ex-visionprescriptionproduct","code":"lens"}]},"eye":"right","sphere":-1.00},)"
    R"({"product":{"coding":[{"system":"http://terminology.hl7.org/CodeSystem/)"
    R"(ex-visionprescriptionproduct","code":"lens"}]},"eye":"left","sphere":-1.50}]})";

} // namespace

BOOST_AUTO_TEST_SUITE(fhir)

BOOST_AUTO_TEST_CASE(the_published_lens_example_is_read, *utf::label("REF"))
{
    const auto rows = read(fileText("vision_prescription_lens.json"));
    BOOST_REQUIRE_EQUAL(rows.value.size(), 1U);
    BOOST_REQUIRE(rows.value[0].record);
    const auto& person = *rows.value[0].record;
    BOOST_TEST(person.person == "example");
    BOOST_TEST(person.writtenOn == "2014-06-15");
    BOOST_TEST((person.eyes.right.final.power == sphereOf(-2.0)));
    BOOST_TEST((person.eyes.right.final.prism == EyePrism{0.0, -0.5}));
    BOOST_TEST(
        (person.eyes.left.final.power == SpheroCylinder{Dioptres{-1.0}, Dioptres{-0.5}, AxisDegrees{180}}));
    BOOST_TEST((person.eyes.left.final.prism == EyePrism{0.0, 0.5}));
    BOOST_TEST((person.eyes.right.addition == Dioptres{2.0}));
    BOOST_TEST((person.eyes.left.addition == Dioptres{2.0}));
    BOOST_TEST(codes(rows) == "fhir-kept fhir-left-out"); // the narrative is told
}

BOOST_AUTO_TEST_CASE(the_published_lens_example_leaves_as_it_came, *utf::label("REF"))
{
    const auto text = fileText("vision_prescription_lens.json");
    const auto rows = read(text);
    const auto written =
        writeFhirAlone({*rows.value.at(0).record, {"adult-distance", "1", "00"}}, "2026-11-27");
    const auto ours = checkText(written.value, "ours");
    const auto theirs = checkText(text, "theirs");
    const auto our = JsonDocument::parse(ours.value);
    const auto their = JsonDocument::parse(theirs.value);
    for (const auto& element : their.value.root().children()) {
        const auto name = element.name();
        const auto back = our.value.root().member(name);
        if (name == "text" || name == "lensSpecification")
            continue;
        BOOST_TEST(back.text() == (back.kind() == JsonKind::text ? element.text() : std::string(back.raw())));
        BOOST_TEST(static_cast<bool>(back), name);
    }
    const auto lenses = our.value.root().member("lensSpecification").children();
    BOOST_REQUIRE_EQUAL(lenses.size(), 2U);
    BOOST_TEST(lenses[0].member("sphere").raw() == "-2.00"); // trailing zeros stay
    BOOST_TEST(lenses[0].member("prism").raw() == R"([{"amount":0.50,"base":"down"}])");
    BOOST_TEST(lenses[0].member("add").raw() == "2.00");
    BOOST_TEST(lenses[1].member("cylinder").raw() == "-0.50");
    BOOST_TEST(lenses[1].member("axis").raw() == "180");
    BOOST_TEST(our.value.root().member("identifier").raw() ==
               R"([{"system":"urn:example:prescriptions","value":"15013"}])");
}

BOOST_AUTO_TEST_CASE(contact_lenses_are_left_out_with_a_reason_and_the_rest_is_taken, *utf::label("REF"))
{
    const auto contact = fileText("vision_prescription_contact.json");
    const auto alone = read(contact);
    BOOST_TEST(alone.value.empty());
    BOOST_TEST(codes(alone) == "fhir-contact-lens fhir-none");
    const auto bundle =
        read(R"({"resourceType":"Bundle","type":"collection","entry":[{"resource":)" + contact +
             R"(},{"resource":)" + twoEyes + R"(},{"resource":{"resourceType":"Patient","id":"p"}}]})");
    BOOST_REQUIRE_EQUAL(bundle.value.size(), 1U);
    BOOST_TEST(bundle.value[0].person == "K-1");
    BOOST_TEST(bundle.value[0].record.has_value());
    BOOST_TEST(codes(bundle) == "fhir-contact-lens fhir-left-out");
}

BOOST_AUTO_TEST_CASE(a_thousand_random_prescriptions_go_out_and_come_back, *utf::label("PROP"))
{
    constexpr unsigned seed = 20261127;
    BOOST_TEST_MESSAGE("seed " << seed);
    const auto persons = randomPersons(seed, 1000);
    const auto bundle = writeFhirBundle(persons, "2026-11-27");
    BOOST_TEST(bundle.findings.empty());
    const auto rows = read(bundle.value);
    BOOST_REQUIRE_EQUAL(rows.value.size(), persons.size());
    for (std::size_t i = 0; i < persons.size(); ++i) {
        BOOST_REQUIRE(rows.value[i].record);
        BOOST_REQUIRE_EQUAL(essence(*rows.value[i].record), essence(persons[i].record));
        const bool dated = !persons[i].record.writtenOn.empty(); // the day it left stands for an undated one
        BOOST_TEST(rows.value[i].record->otherColumns.size() == (dated ? 3U : 4U)); // the rules
    }
    for (std::size_t i = 0; i < 100; ++i) {
        const auto alone = read(writeFhirAlone(persons[i], "2026-11-27").value);
        BOOST_REQUIRE_EQUAL(essence(*alone.value.at(0).record), essence(persons[i].record));
    }
}

BOOST_AUTO_TEST_CASE(a_table_made_of_it_reads_the_same, *utf::label("PROP"))
{
    const auto persons = randomPersons(77, 200);
    const auto rows = read(writeFhirBundle(persons, "2026-11-27").value);
    const auto table = readPrescriptionText(tableText(rows.value), "people.csv", "2026-11-27");
    BOOST_TEST(table.usable());
    BOOST_REQUIRE_EQUAL(table.value.rows.size(), persons.size());
    for (std::size_t i = 0; i < persons.size(); ++i)
        BOOST_REQUIRE_EQUAL(essence(*table.value.rows[i].record), essence(persons[i].record));
}

BOOST_AUTO_TEST_CASE(unknown_elements_come_back_through_a_table, *utf::label("PROP"))
{
    const auto text =
        replaced(replaced(twoEyes, R"("status")", R"("encounter":{"reference":"Encounter/e-9"},"status")"),
                 R"("sphere":-1.50)", R"("sphere":-1.50,"brand":"clear, hard","_sphere":{"id":"s"})");
    const auto rows = read(text);
    BOOST_TEST(codes(rows) == "fhir-kept");
    const auto table = readPrescriptionText(tableText(rows.value), "people.csv", "2026-11-27");
    const auto again = writeFhirAlone({*table.value.rows.at(0).record, {}}, "2026-11-27").value;
    BOOST_TEST(again.find(R"("encounter":{"reference":"Encounter/e-9"})") != std::string::npos);
    BOOST_TEST(again.find(R"("brand":"clear, hard")") != std::string::npos);
    BOOST_TEST(again.find(R"("_sphere":{"id":"s"})") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(what_leaves_says_by_which_rules, *utf::label("DER"))
{
    const auto persons = randomPersons(5, 2);
    const auto text = writeFhirBundle(persons, "2026-11-27").value;
    BOOST_TEST(text.find(R"("system":"urn:quarterstep:rules","version":"1","code":"adult-distance")") !=
               std::string::npos);
    BOOST_TEST(text.find("0123456789abcdef") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(what_is_not_in_force_is_left_out, *utf::label("DER"))
{
    for (const char* status : {"entered-in-error", "cancelled", "draft"}) {
        const auto rows = read(replaced(twoEyes, "active", status));
        BOOST_TEST(rows.value.empty());
        BOOST_TEST(codes(rows) == "fhir-not-active fhir-none", status);
    }
    BOOST_TEST(codes(read(replaced(twoEyes, "active", "on-hold"))) == "fhir-status");
}

BOOST_AUTO_TEST_CASE(what_cannot_be_read_is_refused_at_its_place, *utf::label("DER"))
{
    const std::pair<std::string, std::string> slips[] = {
        {R"("sphere":-1.00)", R"("sphere":"-1.00")"},
        {R"("sphere":-1.00)", R"("sphere":-100)"},
        {R"("sphere":-1.00)", R"("sphere":-1.0001)"},
        {R"("sphere":-1.00)", R"("cylinder":-1.00,"axis":90)"},
        {R"("sphere":-1.00)", R"("sphere":-1.00,"cylinder":-1.00)"},
        {R"("sphere":-1.00)", R"("sphere":-1.00,"cylinder":-1.00,"axis":181)"},
        {R"("sphere":-1.00)", R"("sphere":-1.00,"cylinder":-1.00,"axis":90.5)"},
        {R"("sphere":-1.00)", R"("sphere":-1.00,"add":-2)"},
        {R"("sphere":-1.00)", R"("sphere":-1.00,"prism":[{"amount":1,"base":"nasal"}])"},
        {R"("sphere":-1.00)", R"("sphere":-1.00,"prism":[{"base":"in"}])"},
        {R"("eye":"left")", R"("eye":"right")"},
        {R"("eye":"left")", R"("eye":"OS")"},
        {R"("status")", R"("implicitRules":"urn:x","status")"},
        {R"("status")", R"("modifierExtension":[{"url":"urn:x"}],"status")"},
        {R"("value":"K-1")", R"("value":"")"},
        {R"("dateWritten":"2026-03-01")", R"("dateWritten":"2027-03-01")"},
    };
    const char* expected[] = {"fhir-element",
                              "number-range",
                              "number-too-fine",
                              "fhir-sphere-missing",
                              "axis-missing",
                              "number-range",
                              "fhir-element",
                              "addition-negative",
                              "fhir-element",
                              "fhir-element",
                              "fhir-eye-twice fhir-eye-missing",
                              "fhir-element fhir-eye-missing",
                              "fhir-modifier",
                              "fhir-modifier",
                              "person-empty",
                              "date-future"};
    for (std::size_t i = 0; i < std::size(slips); ++i) {
        const auto rows = read(replaced(twoEyes, slips[i].first, slips[i].second));
        const auto told = codes(rows);
        BOOST_REQUIRE_EQUAL(rows.value.size(), 1U);
        BOOST_TEST(!rows.value[0].record, slips[i].second);
        for (std::stringstream words(expected[i]); words.good();) {
            std::string code;
            words >> code;
            BOOST_TEST(told.find(code) != std::string::npos, slips[i].second << " told " << told);
        }
    }
}

BOOST_AUTO_TEST_CASE(an_eye_without_a_power_needs_its_word, *utf::label("DER"))
{
    const auto rows = read(replaced(twoEyes, R"("sphere":-1.50)", R"("note":[{"text":"balance"}])"));
    BOOST_REQUIRE(rows.value.at(0).record);
    BOOST_TEST((rows.value[0].record->eyes.left.final.state == EyeState::balance));
    BOOST_TEST(codes(read(replaced(twoEyes, R"("sphere":-1.50)", R"("note":[{"text":"see me"}])"))) ==
               "fhir-sphere-missing");
}

BOOST_AUTO_TEST_CASE(axes_of_the_standard_become_those_of_the_trade,
                     *utf::label("REF") * utf::description("R4 allows -180 to 180"))
{
    for (const auto& [given, read_] :
         {std::pair{"0", 180.0}, {"-1", 179.0}, {"-90", 90.0}, {"-180", 180.0}, {"1", 1.0}}) {
        const auto rows = read(replaced(twoEyes, R"("sphere":-1.50)",
                                        std::string(R"("sphere":-1.50,"cylinder":-1,"axis":)") + given));
        BOOST_REQUIRE(rows.value.at(0).record);
        BOOST_TEST(rows.value[0].record->eyes.left.final.power.axis.value() == read_);
    }
}

BOOST_AUTO_TEST_CASE(observations_of_others_are_told, *utf::label("DER"))
{
    const auto bundle = [](const std::string& observation) {
        return read(R"({"resourceType":"Bundle","type":"collection","entry":[{"resource":)" + twoEyes +
                    R"(},{"resource":)" + observation + "}]}");
    };
    const std::string pupils =
        R"({"resourceType":"Observation","status":"final","code":{"coding":[{"system":"urn:quarterstep:measure",)"
        R"("code":"pupillary-distance"}]},"subject":{"identifier":{"value":"K-1"}},"component":[{"code":{"coding":)"
        R"([{"system":"urn:quarterstep:measure","code":"pd_mm"}]},"valueQuantity":{"value":62.5}}]})";
    BOOST_TEST(bundle(pupils).value.at(0).record->distancePd.value() == 62.5);
    BOOST_TEST(codes(bundle(replaced(pupils, "final", "entered-in-error"))) == "fhir-left-out");
    BOOST_TEST(codes(bundle(replaced(pupils, "urn:quarterstep:measure", "urn:other"))) == "fhir-left-out");
    BOOST_TEST(codes(bundle(replaced(pupils, "K-1", "K-2"))) == "fhir-left-out");
    BOOST_TEST(codes(bundle(replaced(pupils, "62.5", "6.25"))) == "pd-in-cm");
}

BOOST_AUTO_TEST_CASE(one_resource_a_line_is_read_too, *utf::label("DER"))
{
    const auto rows = read(twoEyes + "\n" + replaced(twoEyes, "K-1", "K-2") + "\n\n");
    BOOST_TEST(rows.value.size() == 2U);
    BOOST_TEST(rows.value.at(1).line == 2);
    BOOST_TEST(codes(read(twoEyes + "\n" + twoEyes)) == "");
    BOOST_TEST(!read(twoEyes + "\n" + twoEyes).value.at(1).record); // the same person twice
}

BOOST_AUTO_TEST_CASE(xml_and_broken_json_are_refused, *utf::label("DER"))
{
    BOOST_TEST(codes(read("<VisionPrescription/>")) == "fhir-xml");
    BOOST_TEST(codes(read("{\"resourceType\": ")) == "json-syntax");
    BOOST_TEST(codes(read("{\"a\":1,\"a\":2}")) == "json-name-twice");
    BOOST_TEST(codes(read("{\"a\":\"\\ud800\"}")) == "json-surrogate");
    BOOST_TEST(codes(read(std::string(100, '['))) == "json-too-deep");
    BOOST_TEST(codes(read("{}")) == "fhir-none");
    BOOST_TEST(codes(read("")) == "json-syntax");
}

BOOST_AUTO_TEST_SUITE_END()
