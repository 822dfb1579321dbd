// SPDX-License-Identifier: GPL-3.0-or-later
// Orders for a laboratory: the syntax of the Data Communication Standard of the Vision Council as public
// files show it, and the way back.
#include "core/fitting/need.hpp"
#include "core/fitting/words.hpp"
#include "inventory/exchange/order_file.hpp"
#include "inventory/text/rules_file.hpp"
#include "tests/exchange/random_persons.hpp"

#include <boost/test/unit_test.hpp>
#include <fstream>
#include <sstream>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::check;

namespace
{

PersonRecord personOf(const char* right, const char* left)
{
    PersonRecord person;
    person.person = "K-1";
    person.age = 40.0;
    person.purpose = Purpose::distance;
    person.eyes.right.final = parseEye(right, Eye::right).value();
    person.eyes.left.final = parseEye(left, Eye::left).value();
    person.eyes.right.monocularPd = 31.0;
    person.eyes.left.monocularPd = 31.5;
    return person;
}

OrderFile orderOf(const PersonRecord& person, CylinderForm form = CylinderForm::minus)
{
    const auto need = needFor(person, person.purpose, defaultRules().settings);
    BOOST_REQUIRE(static_cast<bool>(need));
    OrderFile file;
    file.job = "CAMP07-000142";
    file.order = laboratoryOrder(person, need.value(), form);
    file.rules = {"adult-distance", "1", "0123456789abcdef"};
    return file;
}

std::string essenceOf(const OrderFile& file, CylinderForm form)
{
    std::ostringstream text;
    const auto& order = file.order;
    text << file.job << '|' << order.person << '|' << wordOf(order.purpose) << '|' << order.writtenOn << '|'
         << order.vertexMm.value_or(0) << '|' << order.workingMm.value_or(0) << '|' << order.frame << '|'
         << order.frameSize << '|' << file.frame.lens << '|' << file.frame.height << '|' << file.frame.bridge
         << '|' << file.rules.profile << '|' << file.rules.version << '|' << file.rules.hash;
    for (const Eye eye : bothEyes) {
        const auto& lens = order.lenses.of(eye);
        const auto power =
            form == CylinderForm::plus ? plusCylinderForm(lens.power) : minusCylinderForm(lens.power);
        text << '\n'
             << power.sphere.thousandths() << ' ' << power.cylinder.thousandths() << ' '
             << (power.cylinder == Dioptres{} ? 0.0 : power.axis.value()) << ' '
             << (lens.addition ? lens.addition->thousandths() : -1) << ' '
             << PrismDioptres{lens.prism.in}.thousandths() << ' '
             << PrismDioptres{lens.prism.up}.thousandths() << ' ' << lens.centration.value_or(0) << ' '
             << lens.height.value_or(0) << ' ' << lens.followsFellow;
    }
    return text.str();
}

std::string codesOf(const std::vector<Finding>& findings)
{
    std::string text;
    for (const auto& finding : findings)
        text += (text.empty() ? "" : " ") + finding.code;
    return text;
}

} // namespace

BOOST_AUTO_TEST_SUITE(order_file)

BOOST_AUTO_TEST_CASE(an_order_is_written_in_records_of_both_eyes,
                     *utf::label("DER") * utf::description("syntax of public files"))
{
    auto person = personOf("-2.00 -1.25 x 175", "-2.50 -0.75 x 10 1.00 base in");
    person.writtenOn = "2026-03-01";
    const auto written = writeOrderFile(orderOf(person));
    BOOST_TEST(written.value == "JOB=CAMP07-000142\r\n"
                                "DO=B\r\n"
                                "CLIENT=K-1\r\n"
                                "SPH=-2.00;-2.50\r\n"
                                "CYL=-1.25;-0.75\r\n"
                                "AX=175;10\r\n"
                                "PRVM=0.00;1.00\r\n"
                                "PRVA=0;180\r\n"
                                "IPD=31;31.5\r\n"
                                "LTYPE=SV;SV\r\n"
                                "_PURPOSE=distance\r\n"
                                "_RXDATE=2026-03-01\r\n"
                                "_PROFILE=adult-distance 1\r\n"
                                "_RULES=0123456789abcdef\r\n");
    BOOST_TEST(codesOf(written.findings) == "order-incomplete"); // the frame
}

BOOST_AUTO_TEST_CASE(both_eyes_leave_in_one_cylinder_form, *utf::label("DER"))
{
    const auto person = personOf("-2.00 -1.00 x 180", "+1.00 +1.00 x 90");
    const auto minus = writeOrderFile(orderOf(person, CylinderForm::asWritten));
    BOOST_TEST(minus.value.find("SPH=-2.00;2.00\r\nCYL=-1.00;-1.00\r\nAX=180;180\r\n") != std::string::npos);
    BOOST_TEST(codesOf(minus.findings).find("order-form") != std::string::npos);
    const auto plus = writeOrderFile(orderOf(person, CylinderForm::plus));
    BOOST_TEST(plus.value.find("SPH=-3.00;1.00\r\nCYL=1.00;1.00\r\nAX=90;90\r\n") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(what_is_not_known_is_a_question_mark, *utf::label("DER"))
{
    auto person = personOf("-2.00", "-2.00 -0.50 x 10");
    person.eyes.right.monocularPd.reset();
    person.eyes.left.monocularPd.reset();
    person.eyes.right.heightMm = 18.0;
    const auto written = writeOrderFile(orderOf(person));
    BOOST_TEST(written.value.find("IPD=?;?\r\n") != std::string::npos);
    BOOST_TEST(written.value.find("OCHT=18;?\r\n") != std::string::npos);
    BOOST_TEST(written.value.find("AX=0;10\r\n") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_code_that_ascii_cannot_say_is_refused_and_other_words_lose_it, *utf::label("DER"))
{
    auto person = personOf("-2.00", "-2.00");
    person.frame = "Seeschwalbe größe 48; schwarz";
    const auto written = writeOrderFile(orderOf(person));
    BOOST_TEST(written.value.find("_FRAME=Seeschwalbe gr  e 48  schwarz\r\n") == std::string::npos);
    BOOST_TEST(codesOf(written.findings).find("order-text") != std::string::npos);
    BOOST_TEST(std::all_of(written.value.begin(), written.value.end(),
                           [](char c) { return (c >= ' ' && c <= '~') || c == '\r' || c == '\n'; }));
    person.person = "K;1";
    BOOST_TEST(!writeOrderFile(orderOf(person)).usable());
    BOOST_TEST(writeOrderFile(orderOf(person)).value.empty());
}

BOOST_AUTO_TEST_CASE(a_thousand_random_orders_go_out_and_come_back, *utf::label("PROP"))
{
    constexpr unsigned seed = 71;
    BOOST_TEST_MESSAGE("seed " << seed);
    std::mt19937 random(seed);
    int done = 0;
    for (int number = 1; done < 1000; ++number) {
        auto person = randomPerson(random, number);
        person.person = "K-" + std::to_string(number);
        person.purpose = static_cast<Purpose>(1 + number % 4);
        person.frame = number % 2 == 0 ? "Tern 48 black" : "";
        person.eyes.right.heightMm = number % 3 == 0 ? std::optional(18.0) : std::nullopt;
        const auto form = number % 2 == 0 ? CylinderForm::plus : CylinderForm::minus;
        const auto need = needFor(person, person.purpose, defaultRules().settings);
        if (!need || (!person.eyes.right.seeing() && !person.eyes.left.seeing()))
            continue; // near without an addition, or nobody to see with it
        auto file = orderOf(person, form);
        file.frame = {48.5, 32.0, 17.0, 0.0, "", "", ""};
        const auto written = writeOrderFile(file);
        const auto read = readOrderFile(written.value, "order");
        BOOST_REQUIRE(read.usable());
        BOOST_REQUIRE_EQUAL(essenceOf(read.value, form), essenceOf(file, form));
        ++done;
    }
}

BOOST_AUTO_TEST_CASE(broken_orders_are_refused_at_their_place, *utf::label("DER"))
{
    const std::string good = writeOrderFile(orderOf(personOf("-2.00 -1.25 x 175", "-2.50"))).value;
    BOOST_TEST(readOrderFile(good, "o").usable());
    const auto with = [&](const std::string& from, const std::string& to) {
        auto text = good;
        text.replace(text.find(from), from.size(), to);
        const auto read = readOrderFile(text, "o");
        for (const auto& finding : read.findings)
            BOOST_TEST(finding.position.line > 0);
        return codesOf(read.findings);
    };
    BOOST_TEST(with("DO=B\r\n", "DO=B\n") == "order-line-end");
    BOOST_TEST(with("DO=B", "DO") == "order-line");
    BOOST_TEST(with("DO=B", "do=B") == "order-label");
    BOOST_TEST(with("DO=B", "DO=B\r\nDO=B") == "order-label-twice");
    BOOST_TEST(with("DO=B", "DO=N") == "order-value");
    BOOST_TEST(with("SPH=-2.00;", "SPH=-2,00;") == "order-value");
    BOOST_TEST(with("SPH=-2.00;", "SPH=-2.00;1;") == "order-value");
    BOOST_TEST(with("K-1", "K-\xc3\xa9") == "order-ascii");
    BOOST_TEST(with("AX=175;", "AX=?;") == "axis-missing");
    BOOST_TEST(with("DO=B", "DO=B\r\nTINT=grey;grey") == "order-label-unknown");
}

BOOST_AUTO_TEST_CASE(every_label_stands_in_the_help_with_its_confidence, *utf::label("DER"))
{
    std::ifstream file(std::string(QS_SOURCE_DIR) + "/app/help/exchange.md");
    std::stringstream text;
    text << file.rdbuf();
    for (const auto& label : orderLabels()) {
        const auto row = std::string("| `") + label.label + "` | " + (label.perEye ? "R;L" : "") + " | " +
                         label.meaning + " | " + label.confidence + " |";
        BOOST_TEST(text.str().find(row) != std::string::npos, row);
    }
}

BOOST_AUTO_TEST_SUITE_END()
