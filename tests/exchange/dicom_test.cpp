// SPDX-License-Identifier: GPL-3.0-or-later
// DICOM out and back, and damaged files. What others read and write is checked by dicom_check.py.
#include "inventory/exchange/dicom.hpp"
#include "tests/exchange/random_persons.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::check;

namespace
{

std::string codes(const ImportedRows& rows)
{
    std::string text;
    for (const auto& finding : rows.findings)
        text += (text.empty() ? "" : " ") + finding.code;
    for (const auto& row : rows.value)
        for (const auto& finding : row.findings)
            if (finding.severity != Severity::note)
                text += (text.empty() ? "" : " ") + finding.code;
    return text;
}

ImportedRows read(const std::vector<NamedBytes>& files)
{
    return readDicom(files, {"2026-11-27", {}});
}

} // namespace

BOOST_AUTO_TEST_SUITE(dicom)

BOOST_AUTO_TEST_CASE(a_thousand_random_prescriptions_go_out_and_come_back, *utf::label("PROP"))
{
    const auto persons = randomPersons(130, 1000);
    for (const auto& person : persons) {
        const auto written = writeDicom(person, "2026-11-27");
        BOOST_REQUIRE(written.usable());
        const auto rows = read({{"one.dcm", written.value}});
        BOOST_REQUIRE_EQUAL(rows.value.size(), 1U);
        BOOST_REQUIRE_MESSAGE(rows.value[0].record, codes(rows));
        BOOST_REQUIRE_EQUAL(essence(*rows.value[0].record), essence(person.record));
    }
}

BOOST_AUTO_TEST_CASE(damaged_files_are_refused_and_never_bring_it_down, *utf::label("PROP"))
{
    const auto good = writeDicom(randomPersons(9, 1).front(), "2026-11-27").value;
    BOOST_TEST(codes(read({{"a", ""}})) == "dicom-not");
    BOOST_TEST(codes(read({{"a", good.substr(0, 100)}})) == "dicom-not");
    BOOST_TEST(codes(read({{"a", "%PDF-1.4" + std::string(300, ' ')}})) == "dicom-not");
    int refused = 0;
    int cuts = 0;
    for (std::size_t end = 133; end < good.size(); end += 3, ++cuts)
        refused += read({{"a", good.substr(0, end)}}).usable() ? 0 : 1;
    BOOST_TEST(refused > cuts * 9 / 10, refused << " of " << cuts);
    auto other = good;
    const std::string uid = "1.2.840.10008.5.1.4.1.1.78.4";
    for (auto at = other.find(uid); at != std::string::npos; at = other.find(uid, at + 1))
        other.replace(at, uid.size(), "1.2.840.10008.5.1.4.1.1.78.3"); // keratometry
    BOOST_TEST(codes(read({{"a", other}})) == "dicom-class");
    std::string deep = good;
    for (int i = 0; i < 1100; ++i)
        deep += std::string("\xFE\xFF\x00\xE0\xFF\xFF\xFF\xFF", 8);
    BOOST_TEST(codes(read({{"a", deep}})) == "dicom-too-deep");
    std::mt19937 random(5);
    for (int i = 0; i < 2000; ++i) {
        auto text = good;
        for (int edit = 0; edit < 3; ++edit)
            text[132 + random() % (text.size() - 132)] = static_cast<char>(random() % 256);
        const auto rows = read({{"a", text}});
        for (const auto& row : rows.value)
            BOOST_TEST((row.record.has_value() || !row.findings.empty()));
    }
}

BOOST_AUTO_TEST_CASE(two_refractions_of_one_person_are_refused, *utf::label("DER"))
{
    const auto persons = randomPersons(10, 1);
    const auto bytes = writeDicom(persons.front(), "2026-11-27").value;
    BOOST_TEST(codes(read({{"a", bytes}, {"b", bytes}})).find("dicom-twice") != std::string::npos);
}

BOOST_AUTO_TEST_SUITE_END()
