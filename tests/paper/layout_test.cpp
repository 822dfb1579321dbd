// SPDX-License-Identifier: GPL-3.0-or-later
// Every paper on every size, in every language, usual and as long as it gets: nothing leaves its page,
// nothing stands on something else, and no line of words is wider than its place.
#include "app/paper/render/layout.hpp"
#include "app/paper/render/words_shape.hpp"
#include "tests/paper/sample_papers.hpp"

#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <functional>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

bool isLabelPaper(const Paper& paper)
{
    return paper.kind == PaperKind::stockLabel || paper.kind == PaperKind::binLabel;
}

PaperJob jobOf(const Paper& paper, PaperSize size, const char* language, int dots = 0)
{
    PaperJob job;
    job.papers = {paper};
    job.size = size;
    job.language = languageNamed(language);
    job.dotsPerInch = dots;
    return job;
}

/// Room for what a font paints beyond its box, units.
constexpr double slack = 5.0;

void expectInside(const LaidOut& laid, const std::string& what)
{
    BOOST_TEST_REQUIRE(!laid.pages.empty(), what);
    for (const auto& page : laid.pages) {
        const QRectF sheet(0.0, 0.0, page.width, page.height);
        for (const auto& mark : page.marks) {
            BOOST_TEST(sheet.contains(mark.place.adjusted(0.0, 0.0, 0.1, 0.1)),
                       what << ": " << mark.text.toStdString());
            if (mark.kind != MarkKind::words)
                continue;
            const WordsShape shape(mark);
            BOOST_TEST(shape.widest() <= mark.place.width() + slack, what << ": " << shape.widest() << " in "
                                                                          << mark.place.width() << ": "
                                                                          << mark.text.toStdString());
            BOOST_TEST(shape.height() <= mark.place.height() + slack,
                       what << ": " << mark.text.toStdString());
        }
    }
}

/// The ink of words: where it stands in the place it was given.
QRectF inkOf(const Mark& mark)
{
    if (mark.kind != MarkKind::words)
        return mark.place;
    const double width = std::min(WordsShape(mark).widest(), mark.place.width());
    double left = mark.place.left();
    if (mark.alignment & Qt::AlignRight)
        left = mark.place.right() - width;
    if (mark.alignment & Qt::AlignHCenter)
        left += (mark.place.width() - width) / 2.0;
    return {left, mark.place.top(), width, mark.place.height()};
}

void expectApart(const LaidOut& laid, const std::string& what)
{
    for (const auto& page : laid.pages) {
        std::vector<std::pair<QRectF, QString>> inks;
        for (const auto& mark : page.marks)
            if (mark.kind == MarkKind::words || mark.kind == MarkKind::bars)
                inks.emplace_back(inkOf(mark), mark.text);
        for (std::size_t i = 0; i < inks.size(); ++i)
            for (std::size_t j = i + 1; j < inks.size(); ++j) {
                const auto common = inks[i].first.intersected(inks[j].first);
                if (common.width() >= 1.0 && common.height() >= 1.0)
                    BOOST_ERROR(what << ": " << inks[i].second.toStdString() << " stands on "
                                     << inks[j].second.toStdString());
            }
    }
}

using Papers = std::vector<NamedPaper> (*)();

void onEverySize(const Papers& papers, const char* language)
{
    const SpokenIn spoken(*languageNamed(language));
    for (const auto& each : papers())
        for (const auto size : {PaperSize::a4, PaperSize::a5, PaperSize::a6, PaperSize::roll80,
                                PaperSize::roll58, PaperSize::label}) {
            if (size == PaperSize::label && !isLabelPaper(each.paper))
                continue;
            const auto what = std::string(language) + " " + each.name + " on size " +
                              std::to_string(static_cast<int>(size));
            BOOST_TEST_CHECKPOINT(what);
            const auto laid = layOut(jobOf(each.paper, size, language, 203));
            expectInside(laid, what);
            expectApart(laid, what);
        }
}

} // namespace

BOOST_AUTO_TEST_SUITE(paper_layout)

BOOST_AUTO_TEST_CASE(nothing_is_clipped_in_any_language, *utf::label("PROP"))
{
    for (const auto& language : languagesShipped())
        for (const Papers papers : {notes, otherPapers, longestPapers})
            onEverySize(papers, language.code);
}

BOOST_AUTO_TEST_CASE(nothing_is_clipped_in_large_print, *utf::label("PROP"))
{
    for (const auto& each : longestPapers()) {
        auto job = jobOf(each.paper, usualSize(each.paper.kind), "en");
        job.large = true;
        expectInside(layOut(job), "large " + each.name);
    }
}

BOOST_AUTO_TEST_CASE(the_power_is_the_largest_thing_on_a_label, *utf::label("PROP"))
{
    for (const auto& each : otherPapers()) {
        if (each.paper.kind != PaperKind::stockLabel)
            continue;
        const auto laid = layOut(jobOf(each.paper, PaperSize::label, "en", 203));
        const auto& marks = laid.pages.front().marks;
        const auto largest = std::max_element(marks.begin(), marks.end(), [](const Mark& a, const Mark& b) {
            return a.points * (a.kind == MarkKind::words) < b.points * (b.kind == MarkKind::words);
        });
        BOOST_TEST(largest->text.toStdString() == each.paper.blocks.front().text.toStdString(), each.name);
    }
}

BOOST_AUTO_TEST_CASE(the_part_that_comes_back_stands_on_one_page, *utf::label("PROP"))
{
    for (const auto& papers : {otherPapers(), longestPapers()})
        for (const auto& each : papers) {
            if (each.paper.kind != PaperKind::letter)
                continue;
            int cut = -1, signature = -1;
            const auto laid = layOut(jobOf(each.paper, PaperSize::a5, "en"));
            for (std::size_t page = 0; page < laid.pages.size(); ++page)
                for (const auto& mark : laid.pages[page].marks) {
                    cut = mark.kind == MarkKind::dashes ? static_cast<int>(page) : cut;
                    signature = mark.text == QStringLiteral("Signature") ? static_cast<int>(page) : signature;
                }
            BOOST_TEST(cut >= 0);
            BOOST_TEST(cut == signature);
        }
}

BOOST_AUTO_TEST_CASE(a_label_that_holds_too_little_is_refused, *utf::label("PROP"))
{
    auto job = jobOf(stockLabel(longestLine(), sourceOfPapers()), PaperSize::label, "en");
    job.label = {20.0, 15.0};
    BOOST_CHECK_EXCEPTION(layOut(job), Error,
                          [](const Error& error) { return error.finding().code == "label-too-small"; });
}

BOOST_AUTO_TEST_CASE(a_name_too_long_for_bars_is_told_and_stands_in_words, *utf::label("PROP"))
{
    const auto laid = layOut(jobOf(stockLabel(longestLine(), sourceOfPapers()), PaperSize::label, "en", 203));
    BOOST_TEST(laid.withoutBars.size() == 1U);
    BOOST_TEST(std::none_of(laid.pages.front().marks.begin(), laid.pages.front().marks.end(),
                            [](const Mark& mark) { return mark.kind == MarkKind::bars; }));
}

BOOST_AUTO_TEST_SUITE_END()
