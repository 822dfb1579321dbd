// SPDX-License-Identifier: GPL-3.0-or-later
// One cell at a time: the same setters serve the table and the desk.
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/table_columns.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

/// Code and offset of the complaint, or "".
std::string refusal(const std::string& column, const std::string& text)
{
    PersonRecord record;
    const auto complaint = setField(record, column, text);
    return complaint ? complaint->code + " " + std::to_string(complaint->offset) : std::string();
}

std::string codeOnly(const std::string& column, const std::string& text)
{
    const std::string refused = refusal(column, text);
    return refused.substr(0, refused.find(' '));
}

} // namespace

BOOST_AUTO_TEST_SUITE(prescription_cells)

BOOST_AUTO_TEST_CASE(pupillary_distances_in_the_wrong_unit_or_form_are_told, *utf::label("DER"))
{
    PersonRecord record;
    const auto cm = setField(record, "pd_mm", "6.2");
    BOOST_REQUIRE(cm.has_value());
    BOOST_TEST(cm->code == "pd-in-cm");
    BOOST_TEST(cm->sentence.arguments.at(1) == "62");
    BOOST_TEST(setField(record, "pd_mm", "6,25")->sentence.arguments.at(1) == "62.5");
    BOOST_TEST(!record.distancePd.has_value());
    for (const char* column : {"pd_mm", "near_pd_mm"}) {
        BOOST_TEST(codeOnly(column, "620") == "pd-range");
        BOOST_TEST(codeOnly(column, "0") == "pd-range");
        BOOST_TEST(codeOnly(column, "-62") == "pd-range");
        BOOST_TEST(codeOnly(column, "19.9") == "pd-range");
        BOOST_TEST(codeOnly(column, "100.1") == "pd-range");
        BOOST_TEST(codeOnly(column, "31/31") == "pd-two-numbers");
        BOOST_TEST(codeOnly(column, "62 mm") == "number-not-a-number");
        BOOST_TEST(refusal(column, "62,5").empty());
        BOOST_TEST(refusal(column, "20").empty());
        BOOST_TEST(refusal(column, "100").empty());
    }
    BOOST_TEST(codeOnly("pd_right_mm", "62") == "pd-range");
    BOOST_TEST(codeOnly("pd_left_mm", "3.1") == "pd-in-cm");
    BOOST_TEST(refusal("pd_left_mm", "31").empty());
}

BOOST_AUTO_TEST_CASE(numbers_out_of_range_are_refused, *utf::label("DER"))
{
    BOOST_TEST(codeOnly("age", "121") == "number-range");
    BOOST_TEST(codeOnly("age", "-1") == "number-range");
    BOOST_TEST(codeOnly("age", "ten") == "number-not-a-number");
    BOOST_TEST(refusal("age", "0.5").empty());
    BOOST_TEST(refusal("age", "120").empty());
    BOOST_TEST(codeOnly("working_mm", "40") == "number-range"); // cm
    BOOST_TEST(codeOnly("intermediate_mm", "60") == "number-range");
    BOOST_TEST(codeOnly("vertex_mm", "0.012") == "number-range");
}

BOOST_AUTO_TEST_CASE(words_outside_the_list_are_refused_with_the_list, *utf::label("DER"))
{
    for (const char* column : {"purpose", "lens_implant", "cycloplegia", "source", "frame_size", "signs"}) {
        PersonRecord record;
        const auto complaint = setField(record, column, "perhaps");
        BOOST_TEST_CONTEXT(column)
        {
            BOOST_REQUIRE(complaint.has_value());
            BOOST_TEST(complaint->code == "unknown-word");
            BOOST_TEST(complaint->sentence.arguments.size() == 2U);
        }
    }
    BOOST_TEST(refusal("purpose", "Near").empty());
    BOOST_TEST(refusal("signs", "pain; stare; squint") == "unknown-word 6");
    BOOST_TEST(refusal("signs", "  pain; stare") == "unknown-word 8");
}

BOOST_AUTO_TEST_CASE(all_signs_are_read_once_each, *utf::label("DER"))
{
    PersonRecord record;
    BOOST_TEST(
        !setField(record, "signs",
                  "sudden loss; pain;red eye ; flashes or floaters; double vision; white pupil; squint; "
                  "cycloplegia wanted; pain;")
             .has_value());
    BOOST_TEST((record.signs == std::vector<Sign>{Sign::suddenLoss, Sign::pain, Sign::redEye,
                                                  Sign::flashesOrFloaters, Sign::doubleVision,
                                                  Sign::whitePupil, Sign::squint, Sign::cycloplegiaWanted}));
}

BOOST_AUTO_TEST_CASE(words_for_implants_purposes_and_sources_set_what_they_say, *utf::label("DER"))
{
    PersonRecord record;
    (void)setField(record, "lens_implant", "both");
    BOOST_TEST((record.eyes.right.lensImplant && record.eyes.left.lensImplant));
    (void)setField(record, "lens_implant", "right");
    BOOST_TEST((record.eyes.right.lensImplant && !record.eyes.left.lensImplant));
    (void)setField(record, "lens_implant", "no");
    BOOST_TEST((!record.eyes.right.lensImplant && !record.eyes.left.lensImplant));
    (void)setField(record, "source", "objective");
    BOOST_TEST(record.objectiveOnly);
    (void)setField(record, "purpose", "intermediate");
    BOOST_TEST((record.purpose == Purpose::intermediate));
    (void)setField(record, "purpose", "bifocal");
    BOOST_TEST((record.purpose == Purpose::bifocal));
    (void)setField(record, "cycloplegia", "yes");
    BOOST_TEST(record.cycloplegia.value());
}

BOOST_AUTO_TEST_CASE(a_refused_cell_leaves_the_record_as_it_was, *utf::label("PROP"))
{
    PersonRecord record;
    BOOST_REQUIRE(!setField(record, "pd_mm", "62"));
    BOOST_REQUIRE(!setField(record, "add", "+2.00"));
    BOOST_REQUIRE(!setField(record, "right", "-1.00"));
    BOOST_TEST(setField(record, "pd_mm", "620").has_value());
    BOOST_TEST(setField(record, "add", "-2.00").has_value());
    BOOST_TEST(setField(record, "right", "1.00").has_value());
    BOOST_TEST(record.distancePd.value() == 62.0);
    BOOST_TEST(record.eyes.left.addition.value().thousandths() == 2000);
    BOOST_TEST((record.eyes.right.final.power == sphereOf(-1.0)));
}

BOOST_AUTO_TEST_CASE(empty_text_clears_every_column, *utf::label("PROP"))
{
    const std::vector<std::pair<const char*, const char*>> samples{{"age", "5"},
                                                                   {"pd_mm", "62"},
                                                                   {"add", "2.00"},
                                                                   {"right", "-1.00"},
                                                                   {"va_best_left", "6/6"},
                                                                   {"near_best", "N6"},
                                                                   {"worn_right", "-1.00"},
                                                                   {"signs", "pain"},
                                                                   {"written_on", "2026-01-01"},
                                                                   {"lens_implant", "both"},
                                                                   {"purpose", "near"},
                                                                   {"source", "objective"},
                                                                   {"cycloplegia", "no"},
                                                                   {"frame_size", "small"},
                                                                   {"guardian", "x"},
                                                                   {"pd_left_mm", "31"},
                                                                   {"near_left", "+2.00"},
                                                                   {"objective_left", "-1.00"},
                                                                   {"worn_add", "1.00"}};
    for (const auto& [column, text] : samples) {
        PersonRecord record;
        const PersonRecord empty;
        BOOST_TEST_CONTEXT(column)
        {
            BOOST_TEST(!setField(record, column, text).has_value());
            BOOST_TEST(!setField(record, column, "  ").has_value());
        }
        BOOST_TEST(record.age.has_value() == false);
        BOOST_TEST(record.distancePd.has_value() == false);
        BOOST_TEST(!record.eyes.left.addition.has_value());
        BOOST_TEST(record.eyes.right.final.asWritten.empty());
        BOOST_TEST((record.eyes.left.acuity.best == empty.eyes.left.acuity.best));
        BOOST_TEST((record.nearBest == empty.nearBest));
        BOOST_TEST(!record.eyes.right.worn.has_value());
        BOOST_TEST(record.signs.empty());
        BOOST_TEST(record.writtenOn.empty());
        BOOST_TEST(!record.eyes.right.lensImplant);
        BOOST_TEST((record.purpose == Purpose::unstated));
        BOOST_TEST(!record.objectiveOnly);
        BOOST_TEST(!record.cycloplegia.has_value());
        BOOST_TEST(record.frameSize.empty());
        BOOST_TEST(record.guardian.empty());
        BOOST_TEST(!record.eyes.left.monocularPd.has_value());
        BOOST_TEST(!record.eyes.left.nearPower.has_value());
        BOOST_TEST(!record.eyes.left.objective.has_value());
        BOOST_TEST(!record.wornAddition.has_value());
    }
}

BOOST_AUTO_TEST_CASE(complaints_point_into_the_text_as_typed, *utf::label("DER"))
{
    const auto inner = parseEye("-1.00 -0.50 x 190").complaint();
    BOOST_TEST(inner.offset > 0);
    BOOST_TEST(refusal("right", "-1.00 -0.50 x 190") == inner.code + " " + std::to_string(inner.offset));
    BOOST_TEST(refusal("right", "  -1.00 -0.50 x 190") ==
               inner.code + " " + std::to_string(inner.offset + 2));
    BOOST_TEST(codeOnly("colour", "red") == "column-unknown");
    BOOST_TEST(codeOnly("written_on", "yesterday") == "date-form");
    BOOST_TEST(codeOnly("va_best_right", "0.5") == parseAcuity("0.5").complaint().code);
    BOOST_TEST(codeOnly("near_best", "small") == parseNearAcuity("small").complaint().code);
    BOOST_TEST(codeOnly("worn_left", "1.00") == parsePower("1.00").complaint().code);
}

BOOST_AUTO_TEST_CASE(no_column_is_named_twice, *utf::label("PROP"))
{
    for (const auto& column : tableColumns())
        BOOST_TEST((columnNamed(column.name) == &column));
}

BOOST_AUTO_TEST_SUITE_END()
