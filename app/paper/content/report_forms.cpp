// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/content/report_forms.hpp"

#include "app/paper/content/html_page.hpp"
#include "app/paper/content/papers.hpp"
#include "app/paper/content/plain_text.hpp"

#include <QJsonDocument>
#include <QJsonObject>

#include <string_view>

namespace quarterstep
{

namespace
{
constexpr int reportColumns = 100; ///< of the text: its tables are wide
} // namespace

std::optional<ReportForm> reportFormOf(const std::string& file)
{
    constexpr std::pair<std::string_view, ReportForm> ends[] = {{".txt", ReportForm::text},
                                                                {".html", ReportForm::page},
                                                                {".csv", ReportForm::table},
                                                                {".json", ReportForm::json},
                                                                {".pdf", ReportForm::pdf}};
    for (const auto& [end, form] : ends)
        if (file.size() > end.size() && std::string_view(file).substr(file.size() - end.size()) == end)
            return form;
    return std::nullopt;
}

PaperSource reportSource(const Camp& camp, const AuditReport& report, const char* version)
{
    return {camp.site(), report.day, camp.rules().hash, version};
}

std::string reportBytes(const AuditReport& report, ReportForm form, const PaperSource& source,
                        const Language& language)
{
    if (form == ReportForm::table)
        return reportCsv(report);
    if (form == ReportForm::json)
        return QJsonDocument(reportJson(report)).toJson().toStdString();
    const auto paper = auditReportPaper(report, source);
    const auto words = form == ReportForm::page ? htmlPage(paper, language)
                                                : plainText(paper, language.rightToLeft, reportColumns);
    return words.toStdString();
}

} // namespace quarterstep
