// SPDX-License-Identifier: GPL-3.0-or-later
// The only place that knows the option library. A power begins with a minus like an option does, so that
// powers are marked before parsing and unmarked after it.
#include "app/command/options.hpp"

#include "inventory/text/yaml_map.hpp"

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>

#include <algorithm>

namespace quarterstep
{
namespace
{

constexpr char mark = '\x01';

/// "-1.25 …", "-.50", "- / -0.75" and "-" are texts; "-x" and "--x" are options.
bool isText(const std::string& argument)
{
    if (argument == "-")
        return true;
    return argument.size() > 1 && argument[0] == '-' &&
           std::string("0123456789., /").find(argument[1]) != std::string::npos;
}

std::string unmarked(std::string text)
{
    if (!text.empty() && text.front() == mark)
        text.erase(0, 1);
    return text;
}

Sentence unknownSentence(const std::string& word, const std::string& nearest, const char* plain,
                         const char* near)
{
    return nearest.empty() ? Sentence{plain, {word}} : Sentence{near, {word, nearest}};
}

Error unknownOption(const VerbRow& verb, const std::string& typed)
{
    const std::string word = typed.substr(0, typed.find('='));
    return usageError(
        "option-unknown",
        unknownSentence(word, nearestWord(word, verb.options),
                        QS_SAY("core", "there is no option “%1” here; `quarterstep help` lists them"),
                        QS_SAY("core", "there is no option “%1” here; did you mean “%2”?")));
}

/// Gives the library the verb's options; what it reads lands in `line`.
void addOptions(CLI::App& app, const VerbRow& verb, CommandLine& line)
{
    for (const char* name : verb.options) {
        const auto& row = optionNamed(name);
        if (row.values == 0)
            app.add_flag_callback(row.name, [&line, &row] { line.flags.insert(row.name); });
        else
            app.add_option(row.name, line.values[row.name])->expected(row.values)->allow_extra_args(false);
    }
    app.add_option("ARGUMENTS", line.arguments);
}

/// An option that the verb does not have; empty when there is none.
std::string firstUnknown(const VerbRow& verb, const std::vector<std::string>& arguments)
{
    for (const auto& argument : arguments) {
        if (argument == "--")
            return "";
        if (argument.size() < 2 || argument[0] != '-')
            continue;
        const std::string name = argument.substr(0, argument.find('='));
        if (std::none_of(verb.options.begin(), verb.options.end(), [&](auto known) { return name == known; }))
            return name;
    }
    return "";
}

void checkComplete(const VerbRow& verb, const CommandLine& line)
{
    for (const char* needed : verb.needed)
        if (line.value(needed).empty())
            throw usageError("option-missing",
                             {QS_SAY("core", "`%1` needs %2; see `quarterstep help %1`"),
                              {verb.name, std::string(needed) + " " + optionNamed(needed).valueWords}});
    if (line.arguments.size() < verb.least)
        throw usageError("arguments-missing", {QS_SAY("core", "`%1` needs %2; see `quarterstep help %1`"),
                                               {verb.name, verb.arguments}});
    if (line.arguments.size() > verb.most)
        throw usageError("arguments-too-many",
                         {QS_SAY("core", "“%1” is one too many; put a text with blanks into quotes"),
                          {line.arguments[verb.most]}});
}

CommandLine parseVerb(const VerbRow& verb, const std::vector<std::string>& arguments)
{
    CommandLine line;
    line.verb = verb.name;
    std::vector<std::string> marked;
    marked.reserve(arguments.size());
    for (const auto& argument : arguments)
        marked.push_back(isText(argument) ? mark + argument : argument);
    if (const auto unknown = firstUnknown(verb, marked); !unknown.empty())
        throw unknownOption(verb, unknown);
    CLI::App app;
    app.set_help_flag();
    addOptions(app, verb, line);
    std::reverse(marked.begin(), marked.end()); // the library takes its arguments from the back
    try {
        app.parse(marked);
    } catch (const CLI::ParseError& error) {
        throw usageError("option-value",
                         {QS_SAY("core", "the options are not understood: %1"), {error.what()}});
    }
    std::erase_if(line.values, [](const auto& entry) { return entry.second.empty(); });
    for (auto& [name, values] : line.values)
        std::transform(values.begin(), values.end(), values.begin(), unmarked);
    std::transform(line.arguments.begin(), line.arguments.end(), line.arguments.begin(), unmarked);
    checkComplete(verb, line);
    return line;
}

Error unknownVerb(const std::string& word)
{
    std::vector<const char*> names;
    for (const auto& verb : verbTable())
        names.push_back(verb.name);
    return usageError("verb-unknown",
                      unknownSentence(word, nearestWord(word, names),
                                      QS_SAY("core", "there is no verb “%1”; `quarterstep help` lists them"),
                                      QS_SAY("core", "there is no verb “%1”; did you mean “%2”?")));
}

} // namespace

CommandLine parseCommandLine(const std::vector<std::string>& arguments)
{
    CommandLine help;
    help.verb = "help";
    if (arguments.empty())
        return help;
    const std::string& first = arguments.front();
    if (first == "--version") {
        CommandLine version;
        version.verb = "version";
        return version;
    }
    if (first == "--help" || first == "-h")
        return help;
    const VerbRow* verb = verbNamed(first);
    if (verb == nullptr)
        throw unknownVerb(first);
    const std::vector<std::string> rest(arguments.begin() + 1, arguments.end());
    if (std::any_of(rest.begin(), rest.end(),
                    [](const auto& word) { return word == "--help" || word == "-h"; })) {
        help.arguments = {first};
        return help;
    }
    return parseVerb(*verb, rest);
}

} // namespace quarterstep
