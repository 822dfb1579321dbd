// SPDX-License-Identifier: GPL-3.0-or-later
// A power on a right-to-left page is painted as on any other: -5.00 painted as 5.00- is a wrong pair.
#include "app/paper/render/layout.hpp"
#include "app/paper/render/render.hpp"
#include "app/session/wording.hpp"
#include "tests/paper/sample_papers.hpp"

#include <boost/test/unit_test.hpp>

#include <QImage>

#include <algorithm>
#include <cstring>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

/// The inked part of one mark alone on a page.
QImage inkOfMark(const QString& text, bool rightToLeft)
{
    Mark mark;
    mark.text = text;
    mark.rightToLeft = rightToLeft;
    mark.alignment = rightToLeft ? Qt::AlignRight : Qt::AlignLeft;
    mark.place = {500.0, 500.0, 9000.0, 800.0};
    const auto picture = pictureOf({10000.0, 2000.0, {mark}}, 8.0);
    int first = picture.width(), last = -1;
    for (int x = 0; x < picture.width(); ++x)
        for (int y = 0; y < picture.height(); ++y)
            if (qGray(picture.pixel(x, y)) < 128) {
                first = std::min(first, x);
                last = std::max(last, x);
            }
    BOOST_TEST_REQUIRE(last >= first);
    return picture.copy(first, 0, last - first + 1, picture.height());
}

/// Alike but for the edge of a dot: the ink begins at another fraction of one on the other side of the page.
bool alike(const QImage& a, const QImage& b)
{
    if (std::abs(a.width() - b.width()) > 1)
        return false;
    const auto darkRows = [](const QImage& image, int x) {
        int dark = 0;
        for (int y = 0; y < image.height(); ++y)
            dark += (255 - qGray(image.pixel(x, y)));
        return dark;
    };
    // Ink of each tenth of the width, from the left: a sign on the wrong side moves it.
    for (int part = 0; part < 10; ++part) {
        int inkA = 0, inkB = 0;
        for (int x = part * a.width() / 10; x < (part + 1) * a.width() / 10; ++x)
            inkA += darkRows(a, x);
        for (int x = part * b.width() / 10; x < (part + 1) * b.width() / 10; ++x)
            inkB += darkRows(b, x);
        if (std::abs(inkA - inkB) > 255 * 10 + std::max(inkA, inkB) / 8)
            return false;
    }
    return true;
}

bool sameBothWays(const QString& text)
{
    return alike(inkOfMark(text, false), inkOfMark(text, true));
}

} // namespace

BOOST_AUTO_TEST_SUITE(direction_of_paper)

BOOST_AUTO_TEST_CASE(the_test_sees_the_fault_it_looks_for, *utf::label("PROP"))
{
    BOOST_TEST(!sameBothWays(QStringLiteral("-5.00")));
    BOOST_TEST(!sameBothWays(QStringLiteral("-1.25 -0.50 x 90")));
}

BOOST_AUTO_TEST_CASE(every_power_of_a_prescription_is_painted_alike_on_both_pages, *utf::label("PROP"))
{
    for (const char* text : {"-5.00", "-1.25 -0.50 x 90", "+2.00", "N+200-62M-BK", "6/9", "2026-03-01"})
        BOOST_TEST(sameBothWays(ltr(QString::fromUtf8(text))), text);
    const auto& arabic = *languageNamed("ar");
    const SpokenIn spoken(arabic);
    int powers = 0;
    for (const auto& papers : {notes(), otherPapers(), longestPapers()})
        for (const auto& each : papers)
            for (const auto& block : each.paper.blocks)
                for (const auto& row : block.rows)
                    for (const auto& cell : row)
                        if (cell.startsWith(QChar(0x2066)) && !cell.contains(QLatin1Char('\n'))) {
                            ++powers;
                            BOOST_TEST(sameBothWays(cell), cell.toStdString());
                        }
    BOOST_TEST(powers > 30);
}

BOOST_AUTO_TEST_CASE(an_arabic_page_is_turned_but_for_its_bars, *utf::label("PROP"))
{
    PaperJob job;
    job.papers = {notes().front().paper};
    job.size = PaperSize::a6;
    job.language = languageNamed("en");
    const auto english = layOut(job);
    job.language = languageNamed("ar");
    const auto arabic = layOut(job);
    BOOST_TEST_REQUIRE(english.pages.front().marks.size() == arabic.pages.front().marks.size());
    for (std::size_t i = 0; i < english.pages.front().marks.size(); ++i) {
        const auto& left = english.pages.front().marks[i];
        const auto& right = arabic.pages.front().marks[i];
        BOOST_TEST(std::abs(left.place.left() - (english.pages.front().width - right.place.right())) < 0.5);
        BOOST_TEST((left.modules == right.modules));
    }
}

BOOST_AUTO_TEST_SUITE_END()
