// SPDX-License-Identifier: GPL-3.0-or-later
// The site's report stays on one page of A4, with as many weeks and classes as there are.
#include "app/paper/content/papers.hpp"
#include "app/paper/render/layout.hpp"
#include "app/session/audit_report.hpp"
#include "tests/paper/sample_papers.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

/// Thirty weeks, every class, a lot, looks: as long as it gets.
AuditReport longestReport(std::int64_t aWeek = 100)
{
    AuditReport report;
    report.site = "Orrowen Point harbour hall, box 2 of 14, upper floor";
    report.day = "2026-12-31";
    report.first = "2026-03-01";
    report.last = "2026-12-30";
    report.handOvers = 3000;
    report.all = {"", 3000, 150};
    std::vector<GroupTally> weeks;
    for (int i = 10; i < 40; ++i)
        weeks.push_back({"2026-03-" + std::to_string(i), {aWeek, aWeek / 20 + i % 7}});
    ReportBreakdown byWeek{"week", {}, funnelChart(weeks, 0.05)};
    for (const auto& week : weeks)
        byWeek.groups.push_back({week.name, week.tally.judged, week.tally.mismatches});
    report.breakdowns.push_back(byWeek);
    report.weeks = pChart(weeks, 0.05);
    report.runs = gSeries(std::vector<GPoint>{{10, "", false}}, 3, {3000, 150});
    for (const auto step : {NextStep::refraction, NextStep::dispensing, NextStep::bin, NextStep::supplier}) {
        ReportStep each{step, {}};
        for (const auto& info : auditClasses())
            if (info.step == step)
                each.classes.push_back({info.kind, 12});
        report.steps.push_back(each);
    }
    for (const auto& stage : stagesOfFollowUp())
        report.due.push_back({stage.word, 40});
    report.met = 300;
    report.wearing = 210;
    report.people = 4000;
    for (auto* cells : {&report.before, &report.after})
        for (const char* name : {"met", "under-met", "unmet", "no-need", "other-cause", "unknown"})
            cells->push_back({name, 400});
    Lot lot;
    lot.plan = planOf(19, 2, 0.05, 0.25);
    lot.size = 149;
    lot.atMs = 1'790'000'000'000;
    report.lots = {lot};
    return report;
}

} // namespace

BOOST_AUTO_TEST_SUITE(report_page)

BOOST_AUTO_TEST_CASE(the_site_report_stays_on_one_page, *utf::label("PROP"))
{
    for (const auto& language : languagesShipped()) {
        const SpokenIn spoken(language);
        PaperJob job;
        job.language = &language;
        job.papers = {auditReportPaper(longestReport(300), sourceOfPapers())}; // with a p-chart
        BOOST_TEST(layOut(job).pages.size() == 1U, language.code);
        job.papers = {auditReportPaper(longestReport(), sourceOfPapers())};
        const auto laid = layOut(job);
        BOOST_TEST(laid.pages.size() == 1U, language.code);
        for (const auto& mark : laid.pages.front().marks) {
            BOOST_TEST(mark.place.bottom() <= laid.pages.front().height);
            BOOST_TEST(mark.place.right() <= laid.pages.front().width);
        }
    }
}

BOOST_AUTO_TEST_CASE(a_picture_stays_with_its_table, *utf::label("PROP"))
{
    auto report = longestReport();
    report.detail = true;
    for (const char* by : {"site", "purpose", "kind"}) {
        report.breakdowns.push_back(report.breakdowns.front());
        report.breakdowns.back().by = by;
    }
    PaperJob job;
    job.language = languageNamed("en");
    job.papers = {auditReportPaper(report, sourceOfPapers())};
    const auto laid = layOut(job);
    BOOST_TEST(laid.pages.size() > 2U);
    for (const auto& page : laid.pages)
        for (const auto& mark : page.marks)
            if (mark.kind ==
                MarkKind::picture) // words stand below it on the same page: at least the first row
                BOOST_TEST(std::any_of(page.marks.begin(), page.marks.end(), [&](const Mark& other) {
                    return other.kind == MarkKind::line && other.place.top() > mark.place.bottom();
                }));
}

BOOST_AUTO_TEST_SUITE_END()
