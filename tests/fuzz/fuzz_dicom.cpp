// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a DICOM file: no crash, no hang; what is taken is within its limits.
#include "inventory/exchange/dicom.hpp"

#include "tests/fuzz/checks.hpp"

#include <cmath>

using namespace quarterstep;
using fuzz::require;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    // The preamble of zeros and the mark are given: what matters stands behind.
    const std::string text = std::string(128, '\0') + "DICM" + std::string(data, data + size);
    const auto rows = readDicom({{"given", text}}, {"2026-11-27", {}});
    fuzz::checkFindings(rows.findings, 1);
    for (const auto& row : rows.value) {
        fuzz::checkFindings(row.findings, 1);
        require(row.record.has_value() || hasError(row.findings), "a row that is not taken says why");
        if (!row.record)
            continue;
        for (const Eye eye : bothEyes) {
            const auto& power = row.record->eyes.of(eye).final.power;
            require(std::fabs(power.sphere.value()) <= 40.0, "a sphere within 40");
            require(std::fabs(power.cylinder.value()) <= 20.0, "a cylinder within 20");
        }
    }
    return 0;
}
