// SPDX-License-Identifier: GPL-3.0-or-later
// The bytes of a DICOM file before its library sees them.
#pragma once

#include <string>

namespace quarterstep
{

/// Bytes before the letters DICM (PS3.10, 7.1).
inline constexpr std::size_t dicomPreamble = 128;

/// Whether the letters DICM stand where they belong.
[[nodiscard]] bool isDicom(const std::string& bytes);
/// Items of sequences, counted by their marks, in either order of bytes.
[[nodiscard]] std::size_t dicomItems(const std::string& bytes);
/// Whether all lengths of a file lie inside it: the library reserves what a length says before it reads. Only
/// what is understood here to the last byte goes on; explicit or implicit value representations, little
/// endian.
[[nodiscard]] bool dicomSound(const std::string& bytes);

} // namespace quarterstep
