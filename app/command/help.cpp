// SPDX-License-Identifier: GPL-3.0-or-later
// help: examples first, then verbs or options, from the table; a topic is a page of the manual.
#include "app/command/options.hpp"
#include "app/command/output.hpp"
#include "app/help/topics.hpp"
#include "inventory/text/yaml_map.hpp"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>

namespace quarterstep
{
namespace
{

constexpr int column = 26; ///< where words begin

void row(Output& out, const QString& name, const QString& words)
{
    // A long name has a line of its own.
    if (name.size() >= column) {
        out.line(QStringLiteral("  ") + name);
        out.line(QString(column + 2, QLatin1Char(' ')) + words);
    } else {
        out.line(QStringLiteral("  ") + name.leftJustified(column) + words);
    }
}

void examples(const VerbRow& verb, Output& out)
{
    for (const char* example : verb.examples)
        out.line(QStringLiteral("  ") + QString::fromUtf8(example));
}

void showVerb(const VerbRow& verb, Output& out)
{
    out.line(
        QStringLiteral("quarterstep %1: %2").arg(QString::fromUtf8(verb.name), commandWords(verb.words)));
    out.line({});
    examples(verb, out);
    out.line({});
    out.line(QStringLiteral("quarterstep %1 [OPTIONS] %2")
                 .arg(QString::fromUtf8(verb.name), QString::fromUtf8(verb.arguments)));
    for (const char* name : verb.options) {
        const auto& option = optionNamed(name);
        row(out,
            QStringLiteral("%1 %2").arg(QString::fromUtf8(option.name), QString::fromUtf8(option.valueWords)),
            commandWords(option.words));
    }
    if (verb.arguments == std::string("TABLE"))
        row(out, QString::fromUtf8(verb.arguments),
            commandWords(QT_TRANSLATE_NOOP("command", "prescription table (CSV); - reads standard input")));
    if (std::string(verb.arguments).find("LIST") != std::string::npos)
        row(out, QStringLiteral("LIST"),
            commandWords(QT_TRANSLATE_NOOP("command",
                                           "lines and quantities (CSV or YAML), or scanned lines, one a row; "
                                           "- reads standard input")));
    if (verb.arguments == std::string("TEXT…"))
        row(out, QString::fromUtf8(verb.arguments),
            commandWords(
                QT_TRANSLATE_NOOP("command", "one eye each, as written; - reads lines of standard input")));
}

/// A page as it is printed: of a picture only what it shows, in words.
QString printed(const HelpTopic& topic)
{
    static const QRegularExpression picture(QStringLiteral("!\\[([^\\]]*)\\]\\([^)]*\\)"));
    auto text = QString::fromUtf8(topic.text().data(), static_cast<qsizetype>(topic.text().size())).trimmed();
    return text.replace(
        picture, QStringLiteral("[%1]").arg(
                     commandWords(QT_TRANSLATE_NOOP("command", "picture: %1")).arg(QStringLiteral("\\1"))));
}

/// Pages that have the word, those with most of it first; three at most.
std::vector<const char*> pagesWith(const std::string& word)
{
    constexpr std::size_t most = 3;
    constexpr qsizetype shortest = 3; // letters; "of" stands everywhere
    std::vector<std::pair<qsizetype, const char*>> found;
    const auto wanted = QString::fromStdString(word);
    if (wanted.size() < shortest)
        return {};
    for (const auto& topic : helpTopics()) {
        const auto text = QString::fromUtf8(topic.text().data(), static_cast<qsizetype>(topic.text().size()));
        if (const auto times = text.count(wanted, Qt::CaseInsensitive); times > 0)
            found.emplace_back(times, topic.name);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& one, const auto& other) { return one.first > other.first; });
    found.resize(std::min(found.size(), most));
    std::vector<const char*> names;
    names.reserve(found.size());
    for (const auto& [times, name] : found)
        names.push_back(name);
    return names;
}

Error unknownHelp(const std::string& word)
{
    std::vector<const char*> topics;
    for (const auto& topic : helpTopics())
        topics.push_back(topic.name);
    auto names = topics;
    for (const auto& verb : verbTable())
        names.push_back(verb.name);
    if (const auto nearest = nearestWord(word, names); !nearest.empty())
        return usageError("help-unknown", {QS_SAY("core", "there is no help on “%1”; did you mean “%2”? type "
                                                          "`quarterstep help %2`"),
                                           {word, nearest}});
    if (const auto pages = pagesWith(word); !pages.empty())
        return usageError("help-unknown", {QS_SAY("core", "there is no page on “%1”; it stands in %2: type "
                                                          "`quarterstep help %3`"),
                                           {word, listed(pages), pages.front()}});
    return usageError(
        "help-unknown",
        {QS_SAY("core", "there is no help on “%1”; pages are %2: type `quarterstep help %3`, or "
                        "`quarterstep help` for the verbs"),
         {word, listed(topics), topics.front()}});
}

} // namespace

void showHelp(const VerbRow* verb, Output& out)
{
    if (verb != nullptr) {
        showVerb(*verb, out);
        return;
    }
    out.line(commandWords(QT_TRANSLATE_NOOP(
        "command",
        "Quarterstep finds which stocked spectacles serve a finished prescription, and how well.")));
    out.line({});
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "Examples:")));
    for (const auto& each : verbTable())
        examples(each, out);
    out.line({});
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "Verbs:")));
    for (const auto& each : verbTable())
        row(out, QString::fromUtf8(each.name), commandWords(each.words));
    out.line({});
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "Topics of `quarterstep help`:")));
    for (const auto& topic : helpTopics())
        row(out, QString::fromUtf8(topic.name), commandWords(topic.words));
    out.line({});
    out.line(commandWords(QT_TRANSLATE_NOOP(
        "command", "Ends with 0 when done, 1 when somebody is left without acceptable stock or "
                   "incomplete, 2 for a slip in the command, 3 for bad data, 4 when something "
                   "is locked or cannot be reached.")));
}

int runHelp(const CommandLine& line, Output& out)
{
    if (line.arguments.empty()) {
        showHelp(nullptr, out);
        return Exit::done;
    }
    const std::string& word = line.arguments.front();
    const VerbRow* verb = verbNamed(word);
    if (verb != nullptr)
        showHelp(verb, out);
    for (const auto& topic : helpTopics())
        if (word == topic.name) {
            if (verb != nullptr)
                out.line({});
            out.line(printed(topic));
            return Exit::done;
        }
    if (verb == nullptr)
        throw unknownHelp(word);
    return Exit::done;
}

} // namespace quarterstep
