// SPDX-License-Identifier: GPL-3.0-or-later
// What `import` and `export` are given by the program that links the library for DICOM.
#pragma once

#include "inventory/exchange/dicom.hpp"

namespace quarterstep
{

/// How DICOM is read and written; empty in the program that has no library for it.
struct DicomWays {
    ImportedRows (*read)(const std::vector<NamedBytes>& files, const ImportOptions& options) = nullptr;
    Reading<std::string> (*write)(const ExchangePerson& person, const std::string& today) = nullptr;
};

/// Called once by the program that has the library.
void exchangeDicomWith(const DicomWays& ways);
/// The ways of this program; where it has none, goes on in quarterstep-dicom with the same words. Throws
/// Error dicom-program-missing (4).
[[nodiscard]] const DicomWays& dicomWays();

} // namespace quarterstep
