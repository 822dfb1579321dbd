// SPDX-License-Identifier: GPL-3.0-or-later
// What the papers share: their words (context "paper"), blocks, the foot, the prescription, the cautions.
#pragma once

#include "app/paper/content/paper.hpp"
#include "app/paper/content/papers.hpp"

namespace quarterstep
{

[[nodiscard]] QString paperWords(const char* text);
/// A sentence of core with each argument in an isolate of its own.
[[nodiscard]] QString told(const Sentence& sentence);
/// Text somebody typed: it may run in either direction, and does not turn what stands round it (U+2068).
[[nodiscard]] QString typed(const std::string& text);
/// A whole number.
[[nodiscard]] QString figure(std::int64_t value);

[[nodiscard]] Block titled(const QString& text);
[[nodiscard]] Block headed(const QString& text);
[[nodiscard]] Block saying(const QString& text);
[[nodiscard]] Block warning(const QString& text);
[[nodiscard]] Block field(const QString& name, const QString& value);
[[nodiscard]] Block toWrite(const QString& name);
[[nodiscard]] Block smallPrint(const QString& text);
[[nodiscard]] Block barsOf(const std::string& text);

[[nodiscard]] QString eyeName(Eye eye);
/// "-1.25 -0.50 x 90", in an isolate.
[[nodiscard]] QString powerWords(const SpheroCylinder& power);
/// Both eyes as written, the addition beside each where there is one.
[[nodiscard]] Block prescriptionTable(const PersonRecord& person);
/// What the glasses are for, in plain words.
[[nodiscard]] QString purposeWords(Purpose purpose);
/// What a pair for this purpose must not be used for.
[[nodiscard]] QString purposeCaution(Purpose purpose);

/// Code, day and place: at the head of every paper about a person. Throws Error paper-person-empty (3) for a
/// person without a code.
void addHead(const PersonRecord& person, const PaperSource& source, std::vector<Block>& blocks);
/// "Suggested from the prescription of … by rules …; not an eye examination".
void addPersonFoot(const PersonRecord& person, const PersonAnswer& answer, const PaperSource& source,
                   std::vector<Block>& blocks);
/// Place, day, rules and version of papers that judge nobody.
void addFoot(const PaperSource& source, std::vector<Block>& blocks);

} // namespace quarterstep
