// SPDX-License-Identifier: GPL-3.0-or-later
// The manual by topic: Markdown, compiled in.
#pragma once

#include <span>
#include <string_view>

namespace quarterstep
{

struct HelpTopic {
    const char* name;  ///< as typed: "notation"
    const char* words; ///< what it tells; marked for translation, context "command"
    std::string_view (*text)();
};

[[nodiscard]] std::span<const HelpTopic> helpTopics();

// The texts, one file of app/help each.
[[nodiscard]] std::string_view auditHelpText();
[[nodiscard]] std::string_view cautionsHelpText();
[[nodiscard]] std::string_view deskHelpText();
[[nodiscard]] std::string_view durabilityHelpText();
[[nodiscard]] std::string_view evidenceHelpText();
[[nodiscard]] std::string_view exchangeHelpText();
[[nodiscard]] std::string_view filesHelpText();
[[nodiscard]] std::string_view firstDayHelpText();
[[nodiscard]] std::string_view grammarHelpText();
[[nodiscard]] std::string_view matchingHelpText();
[[nodiscard]] std::string_view notationHelpText();
[[nodiscard]] std::string_view opticsHelpText();
[[nodiscard]] std::string_view paperHelpText();
[[nodiscard]] std::string_view planningHelpText();
[[nodiscard]] std::string_view powerVectorsHelpText();
[[nodiscard]] std::string_view privacyHelpText();
[[nodiscard]] std::string_view tolerancesHelpText();

} // namespace quarterstep
