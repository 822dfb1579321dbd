// SPDX-License-Identifier: GPL-3.0-or-later
// DICOM at the desk: read by the program that has its library, whose answer is taken up again as rows.
#pragma once

#include "app/session/exchange.hpp"

class QByteArray;

namespace quarterstep
{

/// Runs `quarterstep-dicom import` over the files. Errors: dicom-program-missing, dicom-answer, and what that
/// program found. What the progress throws ends the program.
[[nodiscard]] ImportedRows importDicomFiles(const std::vector<std::string>& paths,
                                            const ImportOptions& options);

/// The rows of the answer (`--json`) of that program: records from their cells, with the findings that came
/// with them. Error: dicom-answer.
[[nodiscard]] ImportedRows rowsOfAnswer(const QByteArray& json, const ImportOptions& options);

} // namespace quarterstep
