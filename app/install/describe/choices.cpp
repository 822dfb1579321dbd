// SPDX-License-Identifier: GPL-3.0-or-later
// Which words may be typed where. The words themselves are those of the tables.
#include "app/command/command_line.hpp"
#include "app/help/topics.hpp"
#include "app/install/describe/describe.hpp"
#include "app/session/pins.hpp"
#include "app/translations/catalogue.hpp"
#include "core/fitting/words.hpp"
#include "core/record/entry.hpp"
#include "inventory/text/rules_file.hpp"

#include <QStringList>

#include <algorithm>

namespace quarterstep
{
namespace
{

/// "papers: note, letter, label; alone: …" → note, letter, label.
std::vector<std::string> listedIn(const char* words)
{
    QString text = QString::fromUtf8(words);
    text = text.mid(text.indexOf(QLatin1String(": ")) + 2);
    text = text.left(text.indexOf(QLatin1Char(';')));
    std::vector<std::string> listed;
    for (const auto& word : text.split(QStringLiteral(", ")))
        listed.push_back(word.trimmed().toStdString());
    return listed;
}

std::vector<std::string> purposes()
{
    return {wordOf(Purpose::distance), wordOf(Purpose::near), wordOf(Purpose::intermediate),
            wordOf(Purpose::bifocal)};
}

/// Those built in; a camp's own may be typed as well.
std::vector<std::string> profiles()
{
    std::vector<std::string> names;
    for (const auto& profile : defaultRules().profiles)
        names.push_back(profile.name);
    return names;
}

std::vector<std::string> languages()
{
    std::vector<std::string> codes;
    for (const auto& language : languagesShipped())
        codes.emplace_back(language.code);
    return codes;
}

} // namespace

std::vector<std::string> choicesAfter(const std::string& option)
{
    if (option == "--purpose")
        return purposes();
    if (option == "--role" || option == "--set-pin" || option == "--remove-pin")
        return {wordOf(Role::optician), wordOf(Role::keeper), wordOf(Role::supervisor)};
    if (option == "--profile")
        return profiles();
    if (option == "--language")
        return languages();
    if (option == "--form")
        return {"minus", "plus", "as-written"};
    if (option == "--level")
        return {"aggregate", "rows", "full"};
    if (option == "--size")
        return {"a4", "a5", "a6", "roll-80", "roll-58", "label"};
    if (option == "--cause")
        return {causesOfLoss().begin(), causesOfLoss().end()};
    return {};
}

std::vector<std::string> choicesOfVerb(const std::string& verb)
{
    std::vector<std::string> choices;
    if (verb == "help") {
        for (const auto& each : verbTable())
            choices.emplace_back(each.name);
        for (const auto& topic : helpTopics())
            choices.emplace_back(topic.name);
    } else if (verb == "transfer") {
        choices = {"out", "in"};
    } else if (const auto* row = verbNamed(verb);
               row != nullptr && (verb == "record" || verb == "order" || verb == "print")) {
        choices = listedIn(row->words);
    }
    return choices;
}

Asked askedBy(const std::string& valueWords)
{
    if (valueWords.empty())
        return Asked::nothing;
    const auto holds = [&](const char* word) { return valueWords.find(word) != std::string::npos; };
    if (holds("FOLDER"))
        return Asked::folder;
    if (holds("FILE") || holds("TABLE") || valueWords == "LEDGER" || valueWords == "[LEDGER]" ||
        valueWords == "[LIST]" || holds("[LIST]]") || holds("| LIST"))
        return Asked::file;
    return Asked::words;
}

} // namespace quarterstep
