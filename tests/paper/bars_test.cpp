// SPDX-License-Identifier: GPL-3.0-or-later
// Bars are read back from the painted page by another program: zbarimg (package zbar-tools), at the dots of
// label printers. Without that program the cases say so and check nothing.
#include "app/paper/render/bar_code.hpp"
#include "app/paper/render/layout.hpp"
#include "app/paper/render/render.hpp"
#include "tests/paper/sample_papers.hpp"

#include <boost/test/unit_test.hpp>

#include <QImage>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

constexpr double mmPerInch = 25.4;

bool canRead()
{
    const bool there = !QStandardPaths::findExecutable(QStringLiteral("zbarimg")).isEmpty();
    BOOST_WARN_MESSAGE(there, "SKIPPED: zbarimg is not installed (package zbar-tools)");
    return there;
}

/// What the reader reads, a line a code: "CODE-128:N+200…".
QStringList readBack(const QImage& picture)
{
    const QTemporaryDir folder;
    const auto file = folder.filePath(QStringLiteral("page.png"));
    BOOST_TEST_REQUIRE(picture.save(file));
    QProcess reader;
    reader.start(QStringLiteral("zbarimg"), {QStringLiteral("--quiet"), file});
    BOOST_TEST_REQUIRE(reader.waitForFinished());
    auto lines =
        QString::fromUtf8(reader.readAllStandardOutput()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    lines.sort();
    return lines;
}

QStringList readBack(const std::vector<Paper>& papers, PaperSize size, int dots, const char* language = "en")
{
    PaperJob job;
    job.papers = papers;
    job.size = size;
    job.language = languageNamed(language);
    job.dotsPerInch = dots;
    QStringList lines;
    for (const auto& page : layOut(job).pages)
        lines += readBack(pictureOf(page, dots / mmPerInch));
    return lines;
}

StockLine named(const std::string& name, const std::string& code = {})
{
    auto line = pairOf(name, 2.0);
    line.use = "near";
    line.bin = "C4";
    line.code = code;
    return line;
}

} // namespace

BOOST_AUTO_TEST_SUITE(paper_bars)

BOOST_AUTO_TEST_CASE(labels_are_read_back_at_the_dots_of_label_printers, *utf::label("DER"))
{
    if (!canRead())
        return;
    for (const int dots : {203, 300})
        for (const auto size : {PaperSize::label, PaperSize::roll80, PaperSize::roll58, PaperSize::a4})
            for (const char* name : {"N+200-62M-BK", "L+250", "LC-100-075", "D-1150-64L-BR"}) {
                const auto read = readBack({stockLabel(named(name), sourceOfPapers())}, size, dots);
                BOOST_TEST(read.join(QLatin1Char(' ')).toStdString() == std::string("CODE-128:") + name,
                           dots << " dots, size " << static_cast<int>(size));
            }
}

BOOST_AUTO_TEST_CASE(codes_of_digits_are_read_back_as_such, *utf::label("DER"))
{
    if (!canRead())
        return;
    for (const int dots : {203, 300})
        for (const auto size : {PaperSize::label, PaperSize::roll80, PaperSize::roll58}) {
            const auto read =
                readBack({stockLabel(named("N+200-62M-BK", "2000000000015"), sourceOfPapers())}, size, dots);
            BOOST_TEST(read.join(QLatin1Char(' ')).toStdString() == "EAN-13:2000000000015",
                       dots << " dots, size " << static_cast<int>(size));
        }
}

BOOST_AUTO_TEST_CASE(a_sheet_of_labels_holds_each_of_them, *utf::label("DER"))
{
    if (!canRead())
        return;
    std::vector<Paper> papers;
    QStringList expected;
    for (int i = 0; i < 21; ++i) {
        const auto name = "N+" + std::to_string(100 + 25 * i) + "-62M-BK";
        papers.push_back(stockLabel(named(name), sourceOfPapers()));
        expected << QStringLiteral("CODE-128:") + QString::fromStdString(name);
    }
    expected.sort();
    for (const int dots : {203, 300})
        BOOST_TEST(readBack(papers, PaperSize::a4, dots).join(QLatin1Char(' ')).toStdString() ==
                   expected.join(QLatin1Char(' ')).toStdString());
}

BOOST_AUTO_TEST_CASE(the_code_of_a_person_is_read_back_from_notes_in_every_language, *utf::label("DER"))
{
    if (!canRead())
        return;
    for (const auto& language : languagesShipped()) {
        const SpokenIn spoken(language);
        for (const auto size : {PaperSize::a6, PaperSize::roll80, PaperSize::roll58})
            for (const int dots : {203, 300})
                BOOST_TEST(readBack({notes().front().paper}, size, dots, language.code)
                                   .join(QLatin1Char(' '))
                                   .toStdString() == "CODE-128:T-1",
                           language.code << " at " << dots);
    }
}

BOOST_AUTO_TEST_CASE(what_has_no_bars_gets_none, *utf::label("PROP"))
{
    BOOST_TEST(barCodeOf("").modules.empty());
    BOOST_TEST(barCodeOf("Zürich").modules.empty());
    BOOST_TEST(barCodeOf("2000000000016").modules.empty());
    BOOST_TEST(barCodeOf("2000000000015").modules.size() == 95U); // ISO/IEC 15420: 3 + 42 + 5 + 42 + 3
    // ISO/IEC 15417: start, symbols, check of 11 modules each, stop of 13
    BOOST_TEST(barCodeOf("A").modules.size() == 11U * 3U + 13U);
}

BOOST_AUTO_TEST_SUITE_END()
