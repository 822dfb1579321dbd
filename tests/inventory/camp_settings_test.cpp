// SPDX-License-Identifier: GPL-3.0-or-later
#define BOOST_TEST_MODULE camp_settings
#include <boost/test/unit_test.hpp>

#include "inventory/text/camp_settings.hpp"

using namespace quarterstep;
namespace utf = boost::unit_test;

BOOST_AUTO_TEST_CASE(what_is_written_is_read_back_alike, *utf::label("PROP"))
{
    for (const auto cylinder : {ShownCylinder::minus, ShownCylinder::plus})
        for (int acuity = 0; acuity <= static_cast<int>(ShownAcuity::logMar); ++acuity)
            for (const bool sample : {false, true})
                for (const auto* profile : {"", "net-menders", "a \"quoted\\ name: #1"}) {
                    const CampSettings settings{cylinder, static_cast<ShownAcuity>(acuity), profile, sample};
                    const auto read = readCampSettingsText(writeCampSettings(settings), "desk.yaml");
                    BOOST_TEST(read.findings.empty());
                    BOOST_TEST((read.value == settings));
                }
}

BOOST_AUTO_TEST_CASE(errors_stand_at_their_place_all_in_one_run, *utf::label("PROP"))
{
    const auto read = readCampSettingsText(
        "format: quarterstep desk 1\ncylinder: sideways\nacuity: 6/6\ncolour: red\n", "desk.yaml");
    BOOST_TEST_REQUIRE(read.findings.size() == 3U);
    const std::pair<const char*, int> expected[] = {
        {"unknown-word", 2}, {"unknown-word", 3}, {"unknown-key", 4}};
    for (std::size_t i = 0; i < 3; ++i) {
        BOOST_TEST(read.findings[i].code == expected[i].first);
        BOOST_TEST(read.findings[i].position.line == expected[i].second);
        BOOST_TEST(read.findings[i].position.column > 0);
    }
    BOOST_TEST(!readCampSettingsText("format: something else\n", "desk.yaml").usable());
}

BOOST_AUTO_TEST_CASE(a_folder_without_the_file_has_the_usual_settings, *utf::label("PROP"))
{
    const auto read = readCampSettings("/no-such-folder");
    BOOST_TEST(read.findings.empty());
    BOOST_TEST((read.value == CampSettings{}));
}
