// SPDX-License-Identifier: GPL-3.0-or-later
// The audit's report: a page that is well-formed and fetches nothing, pictures that say what their tables
// say, small counts hidden, nobody named.
#include "app/paper/content/html_page.hpp"
#include "app/paper/content/paper_words.hpp"
#include "app/paper/content/picture.hpp"
#include "app/paper/content/plain_text.hpp"
#include "app/session/audit_report.hpp"
#include "app/session/hand_over.hpp"
#include "app/session/keeping.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/paper/sample_papers.hpp"

#include <boost/test/unit_test.hpp>

#include <QRegularExpression>
#include <QXmlStreamReader>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;
using namespace quarterstep::testing;

namespace
{

const std::string sampleFolder = QS_SOURCE_DIR "/samples/orrowen_coast/";

/// The sample's day judged by the published indicator: 149 hand-overs, some at odds.
struct Audited {
    TemporaryFolder folder;
    Camp camp;
    Audited() : camp(open())
    {
        std::vector<PersonRecord> people;
        for (const auto& row : readPrescriptionTable(sampleFolder + "people.csv", "").value.rows)
            if (row.record)
                people.push_back(*row.record);
        (void)dispenseTable(camp, people, {}, "Thora B.", false);
        LotWish wish;
        wish.sample = 19;
        (void)carryOut(camp, {lotEntry(drawLot(camp, wish), "Thora B.")}, false);
    }
    [[nodiscard]] Camp open() const
    {
        for (const char* file : {"stock.yaml", "rules.yaml"})
            writeBytes(folder / file, readBytes(sampleFolder + file));
        return Camp::open(folder.path(), Ledger::Mode::readWrite);
    }
    [[nodiscard]] AuditReport report(bool detail, const std::string& profile = "strict") const
    {
        AuditOptions options;
        options.nowMs = 4'000'000'000'000;
        options.profile = profile;
        return auditReport(camp, options, detail);
    }
    [[nodiscard]] Paper paper(bool detail) const
    {
        return auditReportPaper(report(detail), sourceOfPapers());
    }
};

/// A page read by a parser: its elements, the rows of its tables and the rows its marks carry.
struct Page {
    QString error;
    QStringList elements;
    QStringList attributes;
    std::vector<QStringList> tables; ///< of each table its rows, cells joined
    std::vector<QStringList> marks;  ///< of each picture the rows of its marks
    QString text;

    explicit Page(const QString& html)
    {
        QXmlStreamReader reader(html);
        QStringList row;
        QString cell;
        bool inCell = false;
        while (!reader.atEnd()) {
            reader.readNext();
            if (reader.isStartElement()) {
                const auto name = reader.name().toString();
                elements << name;
                for (const auto& attribute : reader.attributes())
                    attributes << attribute.name().toString() + QLatin1Char('=') +
                                      attribute.value().toString();
                if (name == QLatin1String("table"))
                    tables.emplace_back();
                if (name == QLatin1String("svg"))
                    marks.emplace_back();
                if (name == QLatin1String("tr"))
                    row.clear();
                if (name == QLatin1String("td") || name == QLatin1String("th")) {
                    inCell = true;
                    cell.clear();
                }
                if (reader.attributes().hasAttribute(QLatin1String("data-row")))
                    marks.back() << reader.attributes().value(QLatin1String("data-row")).toString();
            } else if (reader.isCharacters()) {
                text += reader.text();
                if (inCell)
                    cell += reader.text();
            } else if (reader.isEndElement()) {
                const auto name = reader.name().toString();
                if (name == QLatin1String("td") || name == QLatin1String("th")) {
                    row << cell;
                    inCell = false;
                }
                if (name == QLatin1String("tr"))
                    tables.back() << row.join(QStringLiteral(" | "));
            }
        }
        if (reader.hasError())
            error = reader.errorString();
    }
};

Page pageOf(const Paper& paper, const char* language = "en")
{
    return Page(htmlPage(paper, *languageNamed(language)));
}

} // namespace

BOOST_FIXTURE_TEST_SUITE(report, Audited)

BOOST_AUTO_TEST_CASE(a_page_is_well_formed_and_fetches_nothing, *utf::label("PROP"))
{
    for (const bool detail : {false, true})
        for (const auto& language : languagesShipped()) {
            const SpokenIn spoken(language);
            const auto html = htmlPage(paper(detail), language);
            const Page page(html);
            BOOST_TEST(page.error.isEmpty(), page.error.toStdString());
            for (const char* fetching : {"script", "link", "img", "iframe", "object", "image", "use"})
                BOOST_TEST(!page.elements.contains(QLatin1String(fetching)), fetching);
            BOOST_TEST(!html.contains(QRegularExpression(QStringLiteral("(src|href)=|url\\(|@import"))));
            BOOST_TEST(page.attributes.contains(QStringLiteral("dir=") +
                                                QLatin1String(language.rightToLeft ? "rtl" : "ltr")));
            BOOST_TEST(html.contains(QStringLiteral("prefers-color-scheme:dark")));
        }
}

BOOST_AUTO_TEST_CASE(every_picture_says_what_its_table_says, *utf::label("PROP"))
{
    for (const bool detail : {false, true}) {
        const auto page = pageOf(paper(detail));
        BOOST_TEST((!detail || page.marks.size() >= 4)); // on the site's page one group alone may be left
        for (const auto& marks : page.marks) {
            BOOST_TEST(!marks.empty());
            const bool found =
                std::any_of(page.tables.begin(), page.tables.end(), [&](const QStringList& rows) {
                    return std::all_of(marks.begin(), marks.end(),
                                       [&](const QString& mark) { return rows.contains(mark); });
                });
            BOOST_TEST(found, marks.join(QLatin1Char('\n')).toStdString());
        }
    }
}

BOOST_AUTO_TEST_CASE(a_mark_stands_where_its_figures_say, *utf::label("DER"))
{
    const std::vector<GroupTally> groups{{"a", {50, 5}}, {"b", {200, 40}}};
    const auto twin = funnelTwin(funnelChart(groups, 0.18), "Funnel", "Group");
    std::vector<QPointF> places;
    for (const auto& part : twin.picture.parts)
        if (part.kind == PicturePart::Kind::mark)
            places.push_back(part.points.front());
    BOOST_REQUIRE_EQUAL(places.size(), 2U);
    // Axes begin 16 mm from the left; 50 and 200 hand-overs, 10 % and 20 %: four times as far, twice as high.
    const double bottom = twin.picture.height - 10.0;
    BOOST_TEST(std::abs((places[1].x() - 16.0) / (places[0].x() - 16.0) - 4.0) < 1e-6);
    BOOST_TEST(std::abs((bottom - places[1].y()) / (bottom - places[0].y()) - 2.0) < 1e-6);
    for (const auto& part : twin.picture.parts)
        for (const auto& point : part.points) {
            BOOST_TEST(point.x() >= 0.0);
            BOOST_TEST(point.x() <= twin.picture.width);
            BOOST_TEST(point.y() >= 0.0);
            BOOST_TEST(point.y() <= twin.picture.height);
        }
}

BOOST_AUTO_TEST_CASE(curves_runs_and_weeks_have_their_tables_too, *utf::label("PROP"))
{
    const auto plan = planOf(19, 2, 0.05, 0.25);
    const std::vector<GPoint> runs{{4, "e", false}, {200, "f", false}};
    const std::vector<GroupTally> weeks{{"2026-03-02", {400, 20}}, {"2026-03-09", {500, 60}}};
    for (const auto& twin :
         {curveTwin(operatingCurve(plan.plan, 60), plan, "c"), runsTwin(gSeries(runs, 3, {209, 2}), "g"),
          pChartTwin(pChart(weeks, 80.0 / 900.0), "p")}) {
        std::size_t marks = 0;
        for (const auto& part : twin.picture.parts)
            if (part.kind == PicturePart::Kind::mark) {
                ++marks;
                BOOST_TEST((std::find(twin.rows.begin(), twin.rows.end(), part.row) != twin.rows.end()));
            }
        BOOST_TEST(marks == twin.rows.size() - 1);
        BOOST_TEST(Page(svgOf(twin.picture)).error.isEmpty());
    }
}

BOOST_AUTO_TEST_CASE(the_site_page_hides_small_counts_and_the_detail_does_not, *utf::label("PROP"))
{
    const auto site = report(false);
    const auto full = report(true);
    int hidden = 0;
    const auto compare = [&](const ShownCount& shown, const ShownCount& exact) {
        BOOST_REQUIRE(exact.has_value());
        if (!shown)
            ++hidden;
        else
            BOOST_TEST((*shown == 0 || *shown >= 5));
    };
    for (std::size_t i = 0; i < site.breakdowns.size(); ++i)
        for (std::size_t j = 0; j < site.breakdowns[i].groups.size(); ++j) {
            const auto& group = site.breakdowns[i].groups[j];
            compare(group.judged, full.breakdowns[i].groups[j].judged);
            compare(group.mismatches, full.breakdowns[i].groups[j].mismatches);
            if (group.shown()) // what is left must not tell it either
                BOOST_TEST(
                    (*group.judged - *group.mismatches == 0 || *group.judged - *group.mismatches >= 5));
        }
    for (std::size_t i = 0; i < site.steps.size(); ++i)
        for (std::size_t j = 0; j < site.steps[i].classes.size(); ++j)
            compare(site.steps[i].classes[j].count, full.steps[i].classes[j].count);
    for (std::size_t i = 0; i < site.before.size(); ++i)
        compare(site.before[i].count, full.before[i].count);
    BOOST_TEST(hidden > 5); // four hand-overs were bifocal
    for (const auto& breakdown : site.breakdowns)
        for (const auto& point : breakdown.funnel.points)
            BOOST_TEST((point.tally.mismatches == 0 || point.tally.mismatches >= 5)); // nor does a picture
    BOOST_TEST(site.findings.empty());
    BOOST_TEST(!full.findings.empty());
}

BOOST_AUTO_TEST_CASE(few_mismatches_in_all_leave_no_chart_on_the_site_page, *utf::label("DER"))
{
    const auto calm = report(false, {}); // by the rules of the day nothing is at odds
    BOOST_TEST(*calm.all.mismatches == 0);
    BOOST_TEST(!calm.runs.drawn());
    BOOST_TEST(!calm.weeks.drawn());
    BOOST_TEST(pageOf(auditReportPaper(calm, sourceOfPapers())).error.isEmpty());
}

BOOST_AUTO_TEST_CASE(nobody_is_named_and_nothing_accuses, *utf::label("PROP"))
{
    for (const bool detail : {false, true}) {
        const auto text =
            plainText(paper(detail), false, 1000) + QString::fromStdString(reportCsv(report(detail)));
        BOOST_TEST(!text.contains(QStringLiteral("Thora")));
        for (const char* word : {"fault", "blame", "guilty", "careless", "worst", "mistake by"})
            BOOST_TEST(!text.contains(QLatin1String(word), Qt::CaseInsensitive), word);
    }
    BOOST_TEST(!plainText(paper(false), false, 1000).contains(QRegularExpression(QStringLiteral("W-\\d"))));
}

BOOST_AUTO_TEST_CASE(an_empty_ledger_has_a_report_that_says_so, *utf::label("DER"))
{
    TemporaryFolder empty;
    for (const char* file : {"stock.yaml", "rules.yaml"})
        writeBytes(empty / file, readBytes(sampleFolder + file));
    const auto opened = Camp::open(empty.path(), Ledger::Mode::readWrite);
    AuditOptions options;
    options.nowMs = 4'000'000'000'000;
    const auto nothing = auditReport(opened, options, true);
    BOOST_TEST(nothing.handOvers == 0);
    BOOST_TEST(!nothing.weeks.drawn());
    const auto page = pageOf(auditReportPaper(nothing, sourceOfPapers()));
    BOOST_TEST(page.error.isEmpty());
    BOOST_TEST(page.text.contains(QStringLiteral("Nothing was found.")));
}

BOOST_AUTO_TEST_CASE(text_in_a_page_is_escaped_and_isolates_become_elements, *utf::label("DER"))
{
    BOOST_TEST(htmlText(QStringLiteral("a<b & \"c\"")).toStdString() == "a&lt;b &amp; &quot;c&quot;");
    BOOST_TEST(htmlText(QStringLiteral("\u2066-1.00 x 90\u2069")).toStdString() ==
               "<bdi dir=\"ltr\">-1.00 x 90</bdi>");
}

BOOST_AUTO_TEST_SUITE_END()
