// SPDX-License-Identifier: GPL-3.0-or-later
// Every sample file is read without an error, and one day of the sample shows every answer there is.
#include "core/fitting/recommendation.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/rules_file.hpp"
#include "inventory/text/stock_file.hpp"

#include <boost/test/unit_test.hpp>

#include <map>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

const std::string folder = QS_SOURCE_DIR "/samples/orrowen_coast/";

int errorsIn(const std::vector<Finding>& findings)
{
    int errors = 0;
    for (const auto& finding : findings)
        if (finding.severity == Severity::error) {
            ++errors;
            BOOST_TEST_MESSAGE(finding.position.file << ":" << finding.position.line << ":"
                                                     << finding.position.column << " "
                                                     << finding.sentence.text << " [" << finding.code << "]");
        }
    return errors;
}

} // namespace

BOOST_AUTO_TEST_SUITE(sample_readers)

BOOST_AUTO_TEST_CASE(stock_is_read_without_an_error, *utf::label("PROP"))
{
    const auto stock = readStockFile(folder + "stock.yaml");
    BOOST_TEST(errorsIn(stock.findings) == 0);
    BOOST_TEST(stock.findings.empty());
    BOOST_TEST(stock.value.lines.size() == 183U);
}

BOOST_AUTO_TEST_CASE(rules_are_read_without_a_finding, *utf::label("PROP"))
{
    const auto rules = readRulesFile(folder + "rules.yaml");
    BOOST_TEST(errorsIn(rules.findings) == 0);
    BOOST_TEST(rules.findings.empty());
    const auto* menders = rules.value.find("net-menders");
    BOOST_REQUIRE(menders != nullptr);
    BOOST_TEST(menders->of(Criterion::horizontalPrism).bands.fits->value == 0.5);
    BOOST_TEST(menders->of(Criterion::tooPlus).judged); // kept from the profile it is based on
    BOOST_TEST(!menders->of(Criterion::frameSize).judged);
}

BOOST_AUTO_TEST_CASE(every_row_of_people_is_a_record, *utf::label("PROP"))
{
    const auto table = readPrescriptionTable(folder + "people.csv", "");
    BOOST_TEST(errorsIn(table.findings) == 0);
    BOOST_TEST(table.value.rows.size() == 200U);
    BOOST_TEST(table.value.unknownColumns.empty());
    for (const auto& row : table.value.rows) {
        BOOST_TEST(errorsIn(row.findings) == 0);
        BOOST_TEST(row.record.has_value(), row.person);
    }
}

BOOST_AUTO_TEST_CASE(one_day_shows_every_verdict_and_most_people_are_served, *utf::label("PROP"))
{
    const auto stock = readStockFile(folder + "stock.yaml");
    const auto rules = readRulesFile(folder + "rules.yaml");
    const auto table = readPrescriptionTable(folder + "people.csv", "");
    std::map<Verdict, int> verdicts;
    std::map<Referral, int> referrals;
    std::map<std::string, int> reasons;
    int answers = 0;
    for (const auto& row : table.value.rows)
        for (const auto& answer : recommend(*row.record, stock.value.lines, rules.value, {})) {
            ++answers;
            ++verdicts[answer.verdict];
            ++referrals[answer.referral];
            ++reasons[answer.reasonKey];
        }
    for (const auto& [reason, count] : reasons)
        BOOST_TEST_MESSAGE(reason << " " << count);
    for (const auto verdict :
         {Verdict::stock, Verdict::custom, Verdict::none, Verdict::incomplete, Verdict::refer})
        BOOST_TEST(verdicts[verdict] >= 3);
    for (const auto referral : {Referral::no, Referral::with, Referral::before})
        BOOST_TEST(referrals[referral] >= 3);
    BOOST_TEST(verdicts[Verdict::stock] * 2 > answers);
}

BOOST_AUTO_TEST_SUITE_END()
