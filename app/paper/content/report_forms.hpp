// SPDX-License-Identifier: GPL-3.0-or-later
// The report of an audit as the bytes of a file: one way for the command line and for the desk. As a PDF it
// is drawn as any paper (paper_job.hpp).
#pragma once

#include "app/paper/content/paper.hpp"
#include "app/session/audit_report.hpp"
#include "app/translations/catalogue.hpp"

#include <optional>
#include <string>

namespace quarterstep
{

enum class ReportForm { text, page, table, json, pdf };

/// By the end of a file's name: .txt, .html, .csv, .json or .pdf; empty for any other.
[[nodiscard]] std::optional<ReportForm> reportFormOf(const std::string& file);

/// Where the papers of a report come from: the camp, on the day of the report.
[[nodiscard]] PaperSource reportSource(const Camp& camp, const AuditReport& report, const char* version);

/// The words are those of the language that is spoken now (SpokenIn); `language` has its direction. Never
/// asked for the PDF.
[[nodiscard]] std::string reportBytes(const AuditReport& report, ReportForm form, const PaperSource& source,
                                      const Language& language);

} // namespace quarterstep
