// SPDX-License-Identifier: GPL-3.0-or-later
// Prescriptions that leave at the desk: all in one file, or one file a person in a folder.
#pragma once

#include "app/session/exchange.hpp"
#include "app/session/jobs.hpp"

#include <QString>

namespace quarterstep
{

/// Letters, figures and dashes of a code, at most 40: it becomes part of a file's name.
[[nodiscard]] QString fileWord(const std::string& person);

struct SendOut {
    ExchangeFormat as = ExchangeFormat::fhir;
    std::string path;       ///< the file, replaced where it is there; or the folder
    bool fileEach = false;  ///< dicom: CODE.dcm for each person into the folder, never over another file
    std::string campFolder; ///< where its rules.yaml is, for dicom
    bool dryRun = false;    ///< says what would be found and writes nothing; needs no path
};

struct SentOut {
    std::vector<Finding> findings; ///< with an error nothing was written
    std::size_t files = 0;
};

/// Writes persons with the rules that go with them. Dicom without `fileEach` takes one. Throws Error:
/// cancelled (nothing was written), file-exists, file-unwritable.
[[nodiscard]] SentOut sendOut(const SendOut& wanted, const FittingRules& rules,
                              std::vector<PersonRecord> persons, const Job& job);

} // namespace quarterstep
