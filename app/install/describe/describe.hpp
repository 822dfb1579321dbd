// SPDX-License-Identifier: GPL-3.0-or-later
// The command line described for others: manual pages and the completions of three shells. Everything comes
// from the tables of verbs, options and topics that parsing and help use, so that nothing can drift.
#pragma once

#include <QString>

#include <string>
#include <vector>

class QCommandLineOption;

namespace quarterstep
{

/// Words that may stand after an option; empty when anything may.
[[nodiscard]] std::vector<std::string> choicesAfter(const std::string& option);

/// Words that may stand first after a verb, without an option; empty when anything may.
[[nodiscard]] std::vector<std::string> choicesOfVerb(const std::string& verb);

/// What a word asks for, by its name in the tables ("FOLDER", "TABLE", "FILE.pdf").
enum class Asked { nothing, file, folder, words };
[[nodiscard]] Asked askedBy(const std::string& valueWords);

/// A manual page in man(7) macros, section 1. UTF-8; no locale, no date of the day.
[[nodiscard]] QString manualPage();
/// That of the desk, of its own options.
[[nodiscard]] QString manualPageOfDesk(const QList<QCommandLineOption>& options);

/// Scripts to be read by the shell.
[[nodiscard]] QString completionForBash();
[[nodiscard]] QString completionForZsh();
[[nodiscard]] QString completionForFish();

} // namespace quarterstep
