// SPDX-License-Identifier: GPL-3.0-or-later
// What the place Audit saves is what the command line writes, byte by byte; the chain is checked in the
// background and told as the command line tells it.
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/places/audit_charts.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/audit_reports.hpp"
#include "app/desk/places/bench_panel.hpp"
#include "app/paper/content/plain_text.hpp"
#include "app/session/camp.hpp"
#include "app/session/lot.hpp"
#include "tests/desk/given_camp.hpp"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTest>
#include <QTranslator>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{

struct Ran {
    QByteArray out;
    QByteArray err;
};

Ran runProgram(const QStringList& words)
{
    QProcess program;
    program.start(QStringLiteral(QS_PROGRAM), words);
    BOOST_TEST_REQUIRE(program.waitForFinished(60'000));
    return {program.readAllStandardOutput(), program.readAllStandardError()};
}

/// A PDF without the moment at which it was made. (Where glyphs stand in it follows a hash table:
/// desk_test_main.)
QByteArray withoutMoment(const QByteArray& pdf)
{
    static const QRegularExpression moments(QStringLiteral("/CreationDate \\([^)]*\\)"));
    return QString::fromLatin1(pdf).remove(moments).toLatin1();
}

struct ReportDesk : AuditDesk {
    ReportDesk() : reports(named<AuditReports>(window, "auditReports")) { window.audit().showView(2); }

    QByteArray saved(bool detail, const char* name)
    {
        QSignalSpy ended(&reports, &AuditReports::ended);
        reports.save(detail, folder.path() + QLatin1Char('/') + QLatin1String(name));
        BOOST_TEST((ended.count() > 0 || ended.wait(60'000)));
        BOOST_TEST(window.messages().code().toStdString() == "");
        return folder.read(QLatin1String(name));
    }
    QByteArray sheet(const std::string& lot, const char* name)
    {
        QSignalSpy ended(&reports, &AuditReports::ended);
        reports.saveSheet(lot, folder.path() + QLatin1Char('/') + QLatin1String(name));
        BOOST_TEST((ended.count() > 0 || ended.wait(60'000)));
        return folder.read(QLatin1String(name));
    }

    AuditReports& reports;
};

/// The language the window speaks, as the program tells it; other cases leave theirs.
struct Spoken {
    explicit Spoken(const char* code) { qApp->setProperty("quarterstepLanguage", QLatin1String(code)); }
    ~Spoken() { qApp->setProperty("quarterstepLanguage", before); }
    const QVariant before = qApp->property("quarterstepLanguage");
};

void compareReports(ReportDesk& desk, const QStringList& language)
{
    for (const bool detail : {false, true}) {
        QStringList words{QStringLiteral("audit"), QStringLiteral("report"), QStringLiteral("--camp"),
                          desk.folder.path()};
        words += language;
        if (detail)
            words << QStringLiteral("--detail");
        BOOST_TEST((desk.saved(detail, "desk.txt") == runProgram(words).out));
        for (const char* end : {"html", "csv", "pdf"}) {
            const auto name = QStringLiteral("line.%1").arg(QLatin1String(end));
            const auto ran = runProgram(words + QStringList{QStringLiteral("--output"),
                                                            desk.folder.path() + QLatin1Char('/') + name});
            BOOST_TEST(!ran.err.contains("error:"), ran.err.toStdString());
            const auto mine =
                desk.saved(detail, QStringLiteral("desk.%1").arg(QLatin1String(end)).toLatin1().constData());
            BOOST_TEST(mine.size() > 400, end);
            BOOST_TEST((withoutMoment(mine) == withoutMoment(desk.folder.read(name))), end);
        }
        if (language.isEmpty())
            BOOST_TEST((desk.saved(detail, "desk.json") ==
                        runProgram(words + QStringList{QStringLiteral("--json")}).out));
    }
}

} // namespace

BOOST_AUTO_TEST_SUITE(audit_papers)

BOOST_AUTO_TEST_CASE(reports_are_those_of_the_command_line, *utf::label("PROP"))
{
    const Spoken english("en");
    ReportDesk desk;
    compareReports(desk, {});
    const auto page = desk.folder.read(QStringLiteral("desk.html"));
    BOOST_TEST(page.contains("<html"));
    BOOST_TEST(!page.contains(">AB<")); // initials of whoever handed over
}

BOOST_AUTO_TEST_CASE(in_arabic_too, *utf::label("PROP"))
{
    const Spoken arabic("ar");
    QTranslator translator;
    BOOST_TEST_REQUIRE(translator.load(QStringLiteral(QS_ARABIC)));
    QApplication::installTranslator(&translator);
    QApplication::setLayoutDirection(Qt::RightToLeft);
    {
        ReportDesk desk;
        compareReports(desk, {QStringLiteral("--language"), QStringLiteral("ar")});
    }
    QApplication::removeTranslator(&translator);
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

BOOST_AUTO_TEST_CASE(the_sheet_of_a_lot_is_that_of_the_command_line, *utf::label("PROP"))
{
    const Spoken english("en");
    ReportDesk desk;
    named<BenchPanel>(desk.window, "benchPanel").draw(1, desk.folder.path() + QStringLiteral("/first.csv"));
    const auto lot = lotNamed(Camp::open(desk.folder.path().toStdString(), Ledger::Mode::readOnly), {}).id;
    const auto id = QString::fromStdString(lot);
    const auto camp = QStringList{QStringLiteral("--camp"), desk.folder.path(), QStringLiteral("--lot"), id};
    const auto sheet = desk.sheet(lot, "again.csv");
    BOOST_TEST((sheet == desk.folder.read(QStringLiteral("first.csv"))));
    BOOST_TEST(
        (sheet == runProgram(QStringList{QStringLiteral("audit"), QStringLiteral("sheet")} + camp).out));
    const auto print = QStringList{QStringLiteral("print"), QStringLiteral("audit-sheet")} + camp;
    BOOST_TEST(
        (desk.sheet(lot, "sheet.txt") == runProgram(print + QStringList{QStringLiteral("--text")}).out));
    runProgram(print +
               QStringList{QStringLiteral("--output"), desk.folder.path() + QStringLiteral("/line.pdf")});
    BOOST_TEST((withoutMoment(desk.sheet(lot, "sheet.pdf")) ==
                withoutMoment(desk.folder.read(QStringLiteral("line.pdf")))));
    (void)desk.sheet("no such lot", "again.csv");
    BOOST_TEST(desk.window.messages().code().toStdString() == "lot-not-drawn");
}

BOOST_AUTO_TEST_CASE(a_report_that_is_stopped_writes_nothing, *utf::label("PROP"))
{
    ReportDesk desk;
    QSignalSpy ended(&desk.reports, &AuditReports::ended);
    desk.reports.save(true, desk.folder.path() + QStringLiteral("/stopped.html"));
    named<QPushButton>(desk.window, "stopWorkButton").click();
    BOOST_TEST((ended.count() > 0 || ended.wait(20'000)));
    BOOST_TEST(!QFile::exists(desk.folder.path() + QStringLiteral("/stopped.html")));
}

BOOST_AUTO_TEST_CASE(without_a_printer_one_is_asked_for, *utf::label("PROP"))
{
    ReportDesk desk;
    desk.reports.print(false);
    BOOST_TEST(desk.window.messages().isVisible());
}

BOOST_AUTO_TEST_CASE(a_chart_is_saved_as_a_picture_and_as_its_numbers, *utf::label("PROP"))
{
    ReportDesk desk;
    desk.window.audit().showView(1);
    auto& charts = *desk.window.findChild<AuditCharts*>();
    for (int kind = 0; kind < named<QComboBox>(desk.window, "chartKindBox").count(); ++kind) {
        named<QComboBox>(desk.window, "chartKindBox").setCurrentIndex(kind);
        const auto paper = plainText(auditChartPaper(charts.onPaper(), {}), false);
        BOOST_TEST(paper.contains(named<QComboBox>(desk.window, "chartKindBox").currentText()), kind);
        for (const auto& [name, begins] : {std::pair{"chart.png", QByteArray("\x89PNG\r\n\x1a\n")},
                                           std::pair{"chart.pdf", QByteArray("%PDF-1.")}}) {
            QSignalSpy ended(&desk.reports, &AuditReports::ended);
            charts.save(desk.folder.path() + QLatin1Char('/') + QLatin1String(name));
            BOOST_TEST((ended.count() > 0 || ended.wait(60'000)));
            const auto bytes = desk.folder.read(QLatin1String(name));
            BOOST_TEST(bytes.startsWith(begins), kind << name);
            BOOST_TEST(bytes.size() > 4000, kind << name);
        }
        charts.save(desk.folder.path() + QStringLiteral("/chart.csv"));
        const auto rows = desk.folder.read(QStringLiteral("chart.csv")).split('\n');
        BOOST_TEST(rows.front().count(',') >= 2, kind);
    }
    const auto reasons = desk.folder.read(QStringLiteral("chart.csv")); // the last one: why not
    BOOST_TEST(reasons.contains("100.0"), reasons.toStdString());
    const auto paper = charts.onPaper(); // the same figures on paper, beside the bars
    BOOST_TEST(paper.whyNot.isEmpty());
    BOOST_TEST(paper.twin.rows.size() ==
               static_cast<std::size_t>(desk.folder.read(QStringLiteral("chart.csv")).count('\n')));
    BOOST_TEST(paper.twin.picture.parts.size() == 3 * (paper.twin.rows.size() - 1) + 1);
    BOOST_TEST(!reasons.contains("\xe2\x81\xa6")); // no marks of direction in files
    BOOST_TEST(desk.window.messages().code().toStdString() == "");
}

BOOST_AUTO_TEST_CASE(keys_print_a_chart_and_say_that_there_is_no_printer, *utf::label("PROP"))
{
    ReportDesk desk;
    QSignalSpy ended(&desk.reports, &AuditReports::ended);
    QTest::keyClick(&desk.window, Qt::Key_P, Qt::ControlModifier);
    BOOST_TEST(named<QWidget>(desk.window, "printChartButton").isVisible()); // its view comes into sight
    BOOST_TEST(ended.count() == 1);
    BOOST_TEST(desk.window.messages().text().contains(QStringLiteral("No printer")));
}

BOOST_AUTO_TEST_CASE(a_whole_record_is_checked_in_the_background, *utf::label("PROP"))
{
    AuditDesk desk;
    QSignalSpy ended(&desk.window.audit(), &AuditPlace::chainCheckEnded);
    QTest::keyClick(&desk.window, Qt::Key_F6);
    BOOST_TEST(desk.window.work().running());
    BOOST_TEST(!named<QPushButton>(desk.window, "chainButton").isEnabled());
    BOOST_TEST((ended.count() > 0 || ended.wait(20'000)));
    BOOST_TEST(desk.label("auditChain").contains(QStringLiteral("whole: 3 entries")),
               desk.label("auditChain").toStdString());
    BOOST_TEST(named<QPushButton>(desk.window, "chainButton").isEnabled());
}

BOOST_AUTO_TEST_CASE(a_check_can_be_stopped, *utf::label("PROP"))
{
    AuditDesk desk;
    QSignalSpy ended(&desk.window.audit(), &AuditPlace::chainCheckEnded);
    named<QPushButton>(desk.window, "chainButton").click();
    named<QPushButton>(desk.window, "stopWorkButton").click();
    BOOST_TEST((ended.count() > 0 || ended.wait(20'000)));
    BOOST_TEST(desk.label("auditChain").contains(QStringLiteral("stopped")),
               desk.label("auditChain").toStdString());
}

BOOST_AUTO_TEST_CASE(a_broken_chain_is_told_as_the_command_line_tells_it, *utf::label("PROP"))
{
    const GivenCamp given;
    given.changeWords();
    DeskWindow window;
    window.resize(1366, 768);
    window.show();
    BOOST_TEST_REQUIRE(QTest::qWaitForWindowExposed(&window));
    BOOST_TEST_REQUIRE(window.openCamp(given.folder.path()));
    QTest::keyClick(&window, Qt::Key_3, Qt::AltModifier);
    window.audit().waitForAudit();
    const auto audited =
        runProgram({QStringLiteral("audit"), QStringLiteral("--camp"), given.folder.path()}).err;
    const auto chain = [&window] { return named<QLabel>(window, "auditChain").text().toUtf8(); };
    BOOST_TEST(!chain().isEmpty());
    BOOST_TEST(audited.contains(chain()), audited.toStdString() << " | " << chain().toStdString());
    QSignalSpy ended(&window.audit(), &AuditPlace::chainCheckEnded);
    window.audit().checkChain();
    BOOST_TEST((ended.count() > 0 || ended.wait(20'000)));
    const auto checked = runProgram({QStringLiteral("stock"), QStringLiteral("--check"),
                                     QStringLiteral("--camp"), given.folder.path()})
                             .err;
    BOOST_TEST(checked.contains(chain()), checked.toStdString() << " | " << chain().toStdString());
    BOOST_TEST(window.messages().code().toStdString() == "chain-broken");
}

BOOST_AUTO_TEST_SUITE_END()
