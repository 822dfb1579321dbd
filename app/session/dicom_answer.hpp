// SPDX-License-Identifier: GPL-3.0-or-later
// DICOM at the desk: read and written by the program that has its library, whose answers are taken up again.
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

/// One Subjective Refraction a person, in their order, written by `quarterstep-dicom export` under the rules
/// of a file (empty: those built in). Errors: dicom-program-missing, dicom-answer, dicom-rules (the file
/// names other rules than the person), and what that program found. What the progress throws ends the
/// program.
[[nodiscard]] Reading<std::vector<std::string>>
exportDicomFiles(std::span<const ExchangePerson> persons, const std::string& rulesPath,
                 const std::function<void(std::size_t done, std::size_t of)>& progress);

} // namespace quarterstep
