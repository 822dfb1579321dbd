// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on the papers, as data and as text, in every language.
#include "app/paper/content/paper_words.hpp"
#include "app/paper/content/plain_text.hpp"
#include "app/paper/content/what_is_left.hpp"
#include "app/session/wording.hpp"
#include "app/translations/catalogue.hpp"
#include "tests/paper/sample_papers.hpp"

#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <QRegularExpression>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

std::vector<NamedPaper> allPapers()
{
    auto papers = notes();
    for (auto&& each : {otherPapers(), longestPapers()})
        papers.insert(papers.end(), each.begin(), each.end());
    return papers;
}

QString textOf(const Paper& paper)
{
    return plainText(paper, false, 1000);
}

const Paper& paperNamed(const std::vector<NamedPaper>& papers, const std::string& name)
{
    for (const auto& each : papers)
        if (each.name == name)
            return each.paper;
    BOOST_FAIL("no paper " << name);
    throw name;
}

bool has(const Paper& paper, const char* text)
{
    return textOf(paper).contains(QString::fromUtf8(text));
}

} // namespace

BOOST_AUTO_TEST_SUITE(paper_content)

BOOST_AUTO_TEST_CASE(a_near_pair_is_told_with_its_power_purpose_and_caution, *utf::label("DER"))
{
    const auto papers = notes();
    const auto& note = paperNamed(papers, "stock");
    for (const char* text :
         {"Glasses suggested for you", "Code: T-1", "Right eye: +2.00", "Line: N+200-62M-BK",
          "For near work only. Not for walking, riding or driving.", "by rules adult-near, version 1",
          "This is not an eye examination.", "stop wearing them and go to an eye clinic the same day"})
        BOOST_TEST(has(note, text), text);
}

BOOST_AUTO_TEST_CASE(what_is_left_is_told_for_each_eye, *utf::label("DER"))
{
    // Needs -2.25 and -2.00, gets -2.00 twice: M is +0.25 in the right eye, 0 in the left.
    const auto papers = notes();
    const auto& note = paperNamed(papers, "given");
    BOOST_TEST(has(note, "Your glasses"));
    BOOST_TEST(has(note, "Right eye: 0.25 more plus than written: far things are a little less sharp."));
    BOOST_TEST(!has(note, "Left eye: 0."));
    BOOST_TEST(has(note, "Drive only if your sight with these meets the law where you live."));
}

BOOST_AUTO_TEST_CASE(a_near_error_of_a_cylinder_is_told_in_words, *utf::label("DER"))
{
    // 0.00 -0.75 x 90, addition +2.00, needs M = +1.625; +2.00 leaves M = +0.375 and 0.75 D of cylinder.
    const auto person = reader("0.00 -0.75 x 90", "0.00 -0.75 x 90", 2.0);
    const auto answer = answered(person, {pairOf("N+200", 2.0)}, true);
    BOOST_TEST_REQUIRE(answer.pair.has_value());
    const auto lines = whatIsLeft(*answer.recommendation.need, answer.pair->fit);
    BOOST_TEST(withoutIsolates(lines.front()).toStdString() ==
               "Both eyes: 0.38 stronger than written: hold things a little nearer; 0.75 of the cylinder is "
               "not in the lens: fine lines are a little less sharp.");
}

BOOST_AUTO_TEST_CASE(each_verdict_and_both_referrals_have_a_note_of_their_own, *utf::label("PROP"))
{
    const auto papers = notes();
    BOOST_TEST(has(paperNamed(papers, "custom"), "Glasses to be made for you"));
    BOOST_TEST(has(paperNamed(papers, "none"), "No glasses needed"));
    BOOST_TEST(has(paperNamed(papers, "incomplete"), "Not finished yet"));
    BOOST_TEST(has(paperNamed(papers, "incomplete"), "near glasses need an addition"));
    BOOST_TEST(has(paperNamed(papers, "refer"), "Go to the eye clinic today, and take the letter."));
    BOOST_TEST(has(paperNamed(papers, "refer"), "Glasses wait until the clinic has seen your eyes."));
    BOOST_TEST(has(paperNamed(papers, "with"), "take the letter"));
    BOOST_TEST(has(paperNamed(papers, "with"), "What you were given"));
}

BOOST_AUTO_TEST_CASE(a_letter_tells_observation_and_wish_and_has_a_part_that_comes_back, *utf::label("PROP"))
{
    const auto papers = longestPapers();
    const auto& letter = paperNamed(papers, "letter");
    for (const char* text : {"Sees rings round lights.", "A mean sphere beyond 6.00 D.", "6/24",
                             "Please see this person in the next days", "Please return this part", "Found: "})
        BOOST_TEST(has(letter, text), text);
    for (const char* word : {"aphakia", "glaucoma", "cataract", "amblyopia", "keratoconus", "strabismus"})
        BOOST_TEST(!textOf(letter).contains(QString::fromUtf8(word), Qt::CaseInsensitive), word);
}

BOOST_AUTO_TEST_CASE(papers_are_refused_for_whom_they_are_not_for, *utf::label("PROP"))
{
    const auto grown = withAcuity(someone("-2.00", "-2.00"), "6/24", "6/6");
    const auto answer = answered(grown, {pairOf("D-200", -2.0)});
    BOOST_CHECK_EXCEPTION(referralLetter(grown, answer, sourceOfPapers()), Error,
                          [](const Error& error) { return error.finding().code == "paper-not-for"; });
    BOOST_CHECK_EXCEPTION(teacherNote(grown, answer, sourceOfPapers()), Error,
                          [](const Error& error) { return error.finding().code == "paper-not-for"; });
    auto nobody = grown;
    nobody.person.clear();
    BOOST_CHECK_EXCEPTION(handOverNote(nobody, answer, sourceOfPapers()), Error,
                          [](const Error& error) { return error.finding().code == "paper-person-empty"; });
}

BOOST_AUTO_TEST_CASE(no_paper_promises_or_names_anybody, *utf::label("PROP"))
{
    const QRegularExpression promise(QStringLiteral("\\b(safe|safely|correct|perfect|approved)\\b"),
                                     QRegularExpression::CaseInsensitiveOption);
    auto person = childOf(-2.0);
    person.guardian = "Guardian Somebody";
    const auto answer = answered(person, {pairOf("D-200", -2.0)}, true);
    const auto note = guardianNote(person, answer, sourceOfPapers());
    BOOST_TEST(!has(note, "Somebody"));
    for (const auto& each : allPapers())
        BOOST_TEST(!textOf(each.paper).contains(promise), each.name);
}

BOOST_AUTO_TEST_CASE(every_paper_tells_its_rules_and_version, *utf::label("PROP"))
{
    for (const auto& each : allPapers()) {
        BOOST_TEST((has(each.paper, "Rules 4be1a2c35d60f718, program version 0.1.0.") ||
                    has(each.paper, "Rules 4be1a2c35d60f718, program 0.1.0.")),
                   each.name);
        BOOST_TEST(has(each.paper, "not an eye examination") ==
                       (each.paper.kind != PaperKind::stockLabel && each.paper.kind != PaperKind::binLabel &&
                        each.paper.kind != PaperKind::packingList &&
                        each.paper.kind != PaperKind::countSheet && each.paper.kind != PaperKind::auditSheet),
                   each.name);
    }
}

BOOST_AUTO_TEST_CASE(a_teacher_gets_no_prescription_and_a_count_no_quantity, *utf::label("PROP"))
{
    const auto papers = otherPapers();
    BOOST_TEST(!has(paperNamed(papers, "teacher-note"), "-2.00"));
    BOOST_TEST(has(paperNamed(papers, "guardian-note"), "-2.00"));
    for (const auto& row : paperNamed(papers, "count-sheet").blocks.at(3).rows)
        BOOST_TEST((row.at(2).isEmpty() || row.at(2) == QStringLiteral("Counted")));
}

BOOST_AUTO_TEST_CASE(a_label_has_the_power_first_and_says_its_side, *utf::label("PROP"))
{
    const auto papers = otherPapers();
    const auto& near = paperNamed(papers, "label");
    BOOST_TEST((near.blocks.front().kind == BlockKind::power));
    BOOST_TEST(withoutIsolates(near.blocks.front().text).toStdString() == "+2.00");
    BOOST_TEST(withoutIsolates(near.blocks.front().value).toStdString() == "C4");
    BOOST_TEST(has(near, "NEAR"));
    BOOST_TEST(has(near, "centres 62 mm"));
    BOOST_TEST(has(paperNamed(papers, "label-sided"), "RIGHT -1.50 -0.50 x 90"));
    BOOST_TEST(has(paperNamed(papers, "label-code"), "|||| 2000000000015  N+200-62M-BK"));
    const auto longest = longestPapers();
    BOOST_TEST(has(paperNamed(longest, "label"), "LEFT -10.25 -4.25 x 165"));
}

BOOST_AUTO_TEST_CASE(a_packing_list_goes_box_by_box_with_its_sum, *utf::label("DER"))
{
    const auto papers = otherPapers();
    const auto text = textOf(paperNamed(papers, "packing-list"));
    BOOST_TEST(text.indexOf(QStringLiteral("Box 1: 4 pieces")) > 0);
    BOOST_TEST(text.indexOf(QStringLiteral("Box 2: 6 pieces")) > text.indexOf(QStringLiteral("Box 1:")));
}

BOOST_AUTO_TEST_SUITE_END()
