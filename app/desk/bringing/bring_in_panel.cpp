// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/bringing/bring_in_panel.hpp"

#include "app/desk/bringing/meaning_words.hpp"
#include "app/desk/bringing/table_reading.hpp"
#include "app/desk/commands.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/brought_rows_model.hpp"
#include "app/desk/models/finding_list_model.hpp"
#include "app/session/wording.hpp"
#include "inventory/store/write_back.hpp"
#include "inventory/text/source_text.hpp"

#include <QCheckBox>
#include <QClipboard>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

namespace quarterstep
{

namespace
{
ImportOptions optionsTelling(const Job& job)
{
    return {todayIso(), [&job](std::size_t done, std::size_t of) {
                tellFar(job, static_cast<std::int64_t>(done), static_cast<std::int64_t>(of));
            }};
}

QString formatWords(ExchangeFormat format)
{
    switch (format) {
    case ExchangeFormat::table:
        return BringInPanel::tr("a table");
    case ExchangeFormat::jsonLines:
        return BringInPanel::tr("lines of JSON");
    case ExchangeFormat::dicom:
        return BringInPanel::tr("DICOM");
    default:
        return BringInPanel::tr("FHIR");
    }
}
} // namespace

void BringInPanel::begin(const QString& campFolder, std::function<std::set<std::string>()> waiting)
{
    if (folder_ != campFolder)
        forget();
    folder_ = campFolder;
    waiting_ = std::move(waiting);
}

void BringInPanel::forget()
{
    source_.reset();
    given_ = {};
    read_.reset();
    sourceWords_->setText(tr("Nothing is chosen yet."));
    table_->clear();
    showRead();
}

void BringInPanel::askFiles()
{
    const auto paths = QFileDialog::getOpenFileNames(
        this, tr("Prescriptions to bring in"), {},
        tr("Prescriptions (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;All files (*)"));
    if (!paths.isEmpty())
        openFiles(paths);
}

void BringInPanel::openFiles(const QStringList& paths)
{
    BringSource source;
    for (const auto& path : paths)
        source.paths.push_back(path.toStdString());
    if (!source.paths.empty())
        take(std::move(source));
}

void BringInPanel::takeClipboard()
{
    const auto text = QGuiApplication::clipboard()->text();
    if (text.trimmed().isEmpty()) {
        messages_.showError(tr("No text is in the clipboard; copy the rows with their headings first."),
                            QStringLiteral("clipboard-empty"));
        return;
    }
    take({{}, std::make_shared<const std::string>(text.toStdString())});
}

void BringInPanel::take(BringSource source)
{
    messages_.dismiss();
    sourceWords_->setText(source.paths.empty() ? tr("The clipboard")
                          : source.paths.size() == 1
                              ? ltr(QFileInfo(QString::fromStdString(source.name())).fileName())
                              : tr("%n files", nullptr, static_cast<int>(source.paths.size())));
    source_ = std::move(source);
    given_ = {};
    read();
}

void BringInPanel::askMap()
{
    const auto path =
        QFileDialog::getOpenFileName(this, tr("Use a map"), {}, tr("Maps of tables (*.map);;All files (*)"));
    if (!path.isEmpty())
        useMap(path);
}

void BringInPanel::useMap(const QString& path)
{
    runCommand(messages_, [this, &path] {
        const auto bytes = readBytes(path.toStdString());
        const auto map = readTableMap(bytes.value, path.toStdString());
        for (const auto& findings : {bytes.findings, map.findings})
            for (const auto& finding : findings)
                throw Error(finding, 3);
        given_ = map.value;
        if (source_)
            read();
    });
}

void BringInPanel::askMapTarget()
{
    const auto path = QFileDialog::getSaveFileName(
        this, tr("Save this map"), folder_ + QStringLiteral("/table.map"), tr("Maps of tables (*.map)"));
    if (!path.isEmpty())
        saveMap(path);
}

void BringInPanel::saveMap(const QString& path)
{
    if (runCommand(messages_,
                   [this, &path] { replaceFile(path.toStdString(), writeTableMap(table_->map())); }))
        messages_.showDone(tr("The map is in %1.").arg(ltr(QDir::toNativeSeparators(path))));
}

void BringInPanel::readAgain()
{
    given_ = table_->map();
    read();
}

void BringInPanel::start(const QString& words, std::function<void(const Job&)> work,
                         std::function<void(const std::exception_ptr&, bool)> ended)
{
    begunIn_ = folder_;
    busy_ = true;
    asked_ = work_.start(words, std::move(work), std::move(ended));
    showRead();
}

/// A dry run on a thread of its own. What is corrected meanwhile is read once more.
void BringInPanel::read()
{
    if (!source_ || folder_.isEmpty())
        return;
    if (busy_) {
        again_ = true;
        work_.stop(asked_);
        return;
    }
    again_ = false;
    const auto source = std::make_shared<Reading<BringSource>>();
    const auto result = std::make_shared<BroughtIn>();
    const auto work = [source, result, wanted = *source_, given = given_,
                       waiting = waiting_ ? waiting_() : std::set<std::string>()](const Job& job) {
        *source = withBytes(wanted);
        if (source->usable())
            *result = readBroughtIn(source->value, given, waiting, optionsTelling(job));
        else
            result->findings = source->findings;
    };
    start(tr("Reading…"), work, [this, source, result](const std::exception_ptr& problem, bool stopped) {
        readingEnded(source, result, problem, stopped);
    });
}

void BringInPanel::readingEnded(const std::shared_ptr<Reading<BringSource>>& source,
                                const std::shared_ptr<BroughtIn>& read, const std::exception_ptr& problem,
                                bool stopped)
{
    busy_ = false;
    if (begunIn_ != folder_) // another camp was opened meanwhile
        return;
    if (again_)
        return this->read();
    if (stopped) {
        messages_.showDone(tr("Stopped. Nothing was brought in."));
    } else if (problem) {
        runCommand(messages_, [&problem] { std::rethrow_exception(problem); });
    } else {
        if (source->usable())
            source_ = source->value;
        read_ = read;
        if (read->table)
            table_->show(*read->table);
    }
    showRead();
    Q_EMIT settled();
}

void BringInPanel::bringIn()
{
    if (busy_ || !read_ || read_->taken == 0)
        return;
    const auto path = std::make_shared<std::string>();
    const auto work = [path, read = read_, folder = folder_.toStdString()](const Job& job) {
        *path = keepBroughtIn(folder, read->rows, optionsTelling(job));
    };
    start(tr("Bringing in…"), work, [this, path](const std::exception_ptr& problem, bool stopped) {
        keepingEnded(path, problem, stopped);
    });
}

void BringInPanel::keepingEnded(const std::shared_ptr<std::string>& path, const std::exception_ptr& problem,
                                bool stopped)
{
    busy_ = false;
    again_ = false;
    if (begunIn_ != folder_) // they wait there when that camp is opened again
        return;
    if (path->empty() && stopped) {
        messages_.showDone(tr("Stopped. Nothing was brought in."));
    } else if (problem) {
        runCommand(messages_, [&problem] { std::rethrow_exception(problem); });
    } else {
        const auto brought = read_;
        forget();
        Q_EMIT broughtIn({brought, &brought->rows});
        messages_.showDone(tr("%1 brought in, %2 left out. They stand in the list and in %3.")
                               .arg(brought->taken)
                               .arg(brought->refused)
                               .arg(ltr(QFileInfo(QString::fromStdString(*path)).fileName())));
    }
    showRead();
    Q_EMIT settled();
}

void BringInPanel::showRead()
{
    const bool usable = read_ && !hasError(read_->findings);
    tableFrame_->setVisible(read_ && read_->table);
    saveMap_->setEnabled(read_ && read_->table && !busy_);
    if (busy_ || !read_)
        counted_->setText(busy_ ? tr("It is being read…")
                                : tr("Choose a file, or copy rows and take the clipboard."));
    else
        counted_->setText(tr("Read as %1: %2 to be brought in, %3 left out")
                              .arg(formatWords(read_->format))
                              .arg(read_->taken)
                              .arg(read_->refused));
    rows_->show(read_);
    bring_->setEnabled(usable && !busy_ && read_->taken > 0);
    bring_->setText(!usable || read_->refused == 0
                        ? tr("Bring them in")
                        : tr("Bring in %1, leave out %2").arg(read_->taken).arg(read_->refused));
    showFindings();
}

/// Of the chosen row; of the file as a whole while none is chosen.
void BringInPanel::showFindings()
{
    const auto* row = rows_->rowAt(rowsView_->currentIndex().row());
    auto title = row ? tr("Found about row %1 (%2)").arg(row->line).arg(ltr(row->person))
                     : tr("Found about the file as a whole");
    if (row && row->record)
        title += QLatin1Char('\n') + tr("Read as %1").arg(readingWords(*row->record));
    findingsTitle_->setText(title);
    findings_->show(row ? row->findings : read_ ? read_->findings : std::vector<Finding>{});
}

} // namespace quarterstep
