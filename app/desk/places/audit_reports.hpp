// SPDX-License-Identifier: GPL-3.0-or-later
// The report of the audit and the worksheet of a lot, saved or printed: the bytes that `quarterstep audit
// report`, `audit sheet` and `print audit-sheet` write, made while the window is alive.
#pragma once

#include "app/paper/content/chart_paper.hpp"
#include "app/paper/content/paper_job.hpp"
#include "app/session/audit_report.hpp"

#include <QWidget>

#include <functional>

class QPushButton;

namespace quarterstep
{

class LongWork;
class MessageBar;

class AuditReports final : public QWidget
{
    Q_OBJECT

  public:
    AuditReports(MessageBar& messages, LongWork& work, QWidget* parent = nullptr);

    /// Reports of this camp from now on; null: none. It must live as long as it is shown.
    void take(Camp* camp);
    /// Whether there is a ledger to report of may have changed.
    void refresh();

    /// By the end of the name: text (.txt), a page for a browser (.html), a table (.csv), JSON (.json) or a
    /// PDF.
    void save(bool detail, const QString& file);
    /// On the printer of the settings.
    void print(bool detail);
    /// The worksheet of a lot: to be filled in at the bench (.csv), or on paper (.pdf, .txt).
    void saveSheet(const std::string& lot, const QString& file);
    /// One chart, into a PDF or a PNG by the end of the name; without a name on the printer of the settings.
    void drawChart(const ChartOnPaper& chart, const QString& file);

  public Q_SLOTS:
    void askAndSave(bool detail);

  Q_SIGNALS:
    /// A save or a print has ended, well or not.
    void ended();

  private:
    using Then = std::function<void(const AuditReport&)>;
    [[nodiscard]] QString chosenPrinter();
    void gather(bool detail, Then then);
    void write(const AuditReport& report, const QString& file);
    /// `target`: file or printer, for the message.
    void draw(PaperJob job, const QString& target);
    void wrote(const QString& file, const std::string& bytes);

    MessageBar& messages_;
    LongWork& work_;
    Camp* camp_ = nullptr;
    QList<QPushButton*> buttons_;
};

} // namespace quarterstep
