// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/audit_reports.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/places/bench_panel.hpp"
#include "app/desk/places/desk_papers.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/settings/preferences.hpp"
#include "app/desk/shell/wrap_layout.hpp"
#include "app/paper/content/lot_rows.hpp"
#include "app/paper/content/plain_text.hpp"
#include "app/paper/content/report_forms.hpp"
#include "app/paper/render/render.hpp"
#include "app/session/keeping.hpp"
#include "app/session/wording.hpp"
#include "inventory/store/write_back.hpp"

#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
/// A name without an ending gets that of the kind that was chosen: "Paper (*.pdf)".
QString withEnding(const QString& file, const QString& kind)
{
    if (reportFormOf(file.toStdString()))
        return file;
    const auto from = kind.indexOf(QStringLiteral("*."));
    return file + (from < 0 ? QStringLiteral(".html") : kind.mid(from + 1).remove(QLatin1Char(')')));
}
} // namespace

AuditReports::AuditReports(MessageBar& messages, LongWork& work, QWidget* parent)
    : QWidget(parent), messages_(messages), work_(work)
{
    setObjectName(QStringLiteral("auditReports"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(hinted(
        BenchPanel::tr("Report: no names and no initials; small counts are hidden on the page for the site."),
        QStringLiteral("reportHint")));
    auto* row = new WrapLayout;
    const std::vector<Act> acts{
        {"siteReportButton", BenchPanel::tr("Page for the site…"),
         tr("For everybody at the site: text, page for a browser, PDF, table or JSON (Ctrl+S)"),
         [this] { askAndSave(false); }},
        {"detailReportButton", BenchPanel::tr("In detail…"), BenchPanel::tr("Everything, for the supervisor"),
         [this] { askAndSave(true); }},
        {"printReportButton", tr("Print"), tr("Prints the page for the site on the printer of the settings"),
         [this] { print(false); }}};
    buttons_ = buttonsIn(*row, this, acts);
    column->addLayout(row);
    take(nullptr);
}

void AuditReports::take(Camp* camp)
{
    camp_ = camp;
    refresh();
}

void AuditReports::refresh()
{
    for (auto* button : buttons_)
        button->setEnabled(camp_ != nullptr && camp_->hasLedger());
}

void AuditReports::askAndSave(bool detail)
{
    if (camp_ == nullptr || !camp_->hasLedger())
        return;
    const auto name = detail ? QStringLiteral("audit-detail.html") : QStringLiteral("audit-site.html");
    QString kind;
    const auto file = QFileDialog::getSaveFileName(
        this, BenchPanel::tr("Report"), QDir(QString::fromStdString(camp_->folder())).filePath(name),
        QStringList{BenchPanel::tr("Pages (*.html)"), tr("Paper (*.pdf)"), tr("Text (*.txt)"),
                    BenchPanel::tr("Tables (*.csv)"), tr("Data (*.json)")}
            .join(QStringLiteral(";;")),
        &kind);
    if (!file.isEmpty())
        save(detail, withEnding(file, kind));
}

/// The ledger is read by a reader of its own; what was found is put into words here, where the language is.
void AuditReports::gather(bool detail, Then then)
{
    if (camp_ == nullptr)
        return;
    const auto found = std::make_shared<AuditReport>();
    const auto work = [found, detail, folder = camp_->folder(),
                       nowMs = QDateTime::currentMSecsSinceEpoch()](const Job& job) {
        AuditOptions options;
        options.nowMs = nowMs;
        options.job = job;
        *found = auditReport(Camp::open(folder, Ledger::Mode::readOnly), options, detail);
    };
    work_.start(BenchPanel::tr("Writing the report…"), work,
                [this, found, folder = camp_->folder(),
                 then = std::move(then)](const std::exception_ptr& problem, bool stopped) {
                    const bool here = camp_ != nullptr && camp_->folder() == folder; // no other was opened
                    const bool well = !stopped && here && runCommand(messages_, [&] {
                        if (problem)
                            std::rethrow_exception(problem);
                        then(*found);
                    });
                    if (!well)
                        Q_EMIT ended();
                });
}

void AuditReports::save(bool detail, const QString& file)
{
    gather(detail, [this, file](const AuditReport& report) { write(report, file); });
}

/// Empty, and told, when none is chosen.
QString AuditReports::chosenPrinter()
{
    auto printer = readPreferences().printer;
    if (printer.isEmpty()) {
        messages_.showError(tr("No printer is chosen; choose one in the settings (Ctrl+,), or save a PDF."),
                            {});
        Q_EMIT ended();
    }
    return printer;
}

void AuditReports::print(bool detail)
{
    const auto printer = chosenPrinter();
    if (printer.isEmpty())
        return;
    gather(detail, [this, printer](const AuditReport& report) {
        PaperJob job;
        job.printer = printer.toStdString();
        job.papers = {auditReportPaper(report, reportSource(*camp_, report, QUARTERSTEP_VERSION))};
        draw(std::move(job), printer);
    });
}

void AuditReports::write(const AuditReport& report, const QString& file)
{
    const auto source = reportSource(*camp_, report, QUARTERSTEP_VERSION);
    const auto form = reportFormOf(file.toStdString()).value_or(ReportForm::page);
    if (form != ReportForm::pdf)
        return wrote(file, reportBytes(report, form, source, *windowLanguage()));
    PaperJob job;
    job.output = file.toStdString();
    job.papers = {auditReportPaper(report, source)};
    draw(std::move(job), file);
}

void AuditReports::wrote(const QString& file, const std::string& bytes)
{
    replaceFile(file.toStdString(), bytes, true);
    messages_.showDone(tr("Written: %1").arg(ltr(QDir::toNativeSeparators(file))));
    Q_EMIT ended();
}

void AuditReports::drawChart(const ChartOnPaper& chart, const QString& file)
{
    PaperJob job;
    job.output = file.toStdString();
    if (file.isEmpty())
        job.printer = chosenPrinter().toStdString();
    if (camp_ == nullptr || (job.output.empty() && job.printer.empty()))
        return;
    job.papers = {auditChartPaper(chart, sourceOf(*camp_))};
    const auto target = file.isEmpty() ? QString::fromStdString(job.printer) : file;
    draw(std::move(job), target);
}

void AuditReports::draw(PaperJob job, const QString& target)
{
    job.language = windowLanguage();
    job.size = usualSize(job.papers.front().kind);
    const auto work = [job = std::move(job)](const Job& watched) {
        drawPapers(job, [&watched](int done, int total) {
            if (watched.done)
                watched.done(static_cast<std::size_t>(done), static_cast<std::size_t>(total));
            return !watched.stopped();
        });
    };
    work_.start(tr("Drawing the pages…"), work,
                [this, target](const std::exception_ptr& problem, bool stopped) {
                    if (!stopped)
                        runCommand(messages_, [&] {
                            if (problem)
                                std::rethrow_exception(problem);
                            messages_.showDone(tr("Written: %1").arg(ltr(QDir::toNativeSeparators(target))));
                        });
                    Q_EMIT ended();
                });
}

void AuditReports::saveSheet(const std::string& lot, const QString& file)
{
    const bool well =
        camp_ != nullptr && runCommand(messages_, [this, &lot, &file] {
            if (file.endsWith(QLatin1String(".csv")))
                return wrote(file, benchSheetText(lot, sheetOf(*camp_, lotNamed(*camp_, lot))));
            const auto paper = auditSheet(lotRows(*camp_, lot), sourceOf(*camp_));
            if (!file.endsWith(QLatin1String(".pdf")))
                return wrote(file, plainText(paper, windowLanguage()->rightToLeft).toStdString());
            PaperJob job;
            job.output = file.toStdString();
            job.papers = {paper};
            draw(std::move(job), file);
        });
    if (!well)
        Q_EMIT ended();
}

} // namespace quarterstep
