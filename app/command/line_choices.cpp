// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/line_choices.hpp"

#include "app/command/answers.hpp"
#include "app/command/output.hpp"
#include "app/command/picked.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/numbers.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace quarterstep
{
namespace
{

Error refused(const std::string& word, const char* text)
{
    return errorSaying("option-value", {text, {word}}, Exit::usage);
}

Priority priorityNamed(const std::string& word)
{
    for (const auto priority : {Priority::firstPairs, Priority::children, Priority::worstSight})
        if (word == jsonWord(priority))
            return priority;
    throw refused(word, QS_SAY("core", "“%1” cannot come first; write children, first-pairs or worst-sight"));
}

/// "children=3" as a group and a number.
std::pair<GroupChoice, long> groupIn(const std::string& word, long least, long most)
{
    const auto equals = word.find('=');
    const auto name = word.substr(0, equals);
    const auto number = equals == std::string::npos ? Parsed<long>(Complaint{})
                                                    : parseWholeNumber(word.substr(equals + 1), least, most);
    GroupChoice group;
    if (name == "children" || name == "adults")
        group.child = name == "children";
    else
        group.purpose = purposeNamed(name);
    if (!number || (!group.child && !group.purpose))
        throw refused(word, QS_SAY("core",
                                   "“%1” is not understood; write a group (children, adults, distance, near, "
                                   "intermediate or bifocal), = and a whole number, as children=3"));
    return {group, number.value()};
}

/// The same group, whether it came by --weigh or --least.
GroupChoice& groupAmong(std::vector<GroupChoice>& groups, const GroupChoice& wanted)
{
    for (auto& group : groups)
        if (group.child == wanted.child && group.purpose == wanted.purpose)
            return group;
    groups.push_back(wanted);
    return groups.back();
}

QString groupWords(const GroupChoice& group)
{
    if (group.child)
        return commandWords(*group.child ? QT_TRANSLATE_NOOP("command", "children")
                                         : QT_TRANSLATE_NOOP("command", "adults"));
    return say(*group.purpose);
}

QString priorityWords(Priority priority)
{
    switch (priority) {
    case Priority::firstPairs:
        return commandWords(QT_TRANSLATE_NOOP("command", "first pairs before second pairs"));
    case Priority::children:
        return commandWords(QT_TRANSLATE_NOOP("command", "children before adults"));
    case Priority::worstSight:
        return commandWords(QT_TRANSLATE_NOOP("command", "the worst sight without a pair first"));
    }
    return {};
}

} // namespace

const char* jsonWord(Priority priority)
{
    constexpr const char* words[] = {"first-pairs", "children", "worst-sight"};
    return words[static_cast<std::size_t>(priority)];
}

const char* jsonWord(PlanMethod method)
{
    constexpr const char* words[] = {"minimum-cost flow", "linear program and rounding",
                                     "linear program and whole search"};
    return words[static_cast<std::size_t>(method)];
}

PlanOptions planOptions(const CommandLine& line, const Settings& settings)
{
    PlanOptions options;
    std::vector<Priority> named;
    for (const auto& word : namesIn(line.value("--first")))
        named.push_back(priorityNamed(word));
    options.priorities = prioritiesOf(settings, std::move(named));
    for (const auto& word : namesIn(line.value("--weigh"))) {
        const auto [group, weight] = groupIn(word, 1, 100);
        groupAmong(options.groups, group).weight = static_cast<int>(weight);
    }
    for (const auto& word : namesIn(line.value("--least"))) {
        const auto [group, percent] = groupIn(word, 0, 100);
        groupAmong(options.groups, group).floor = static_cast<double>(percent) / 100.0;
    }
    options.gains = line.has("--prices");
    return options;
}

QStringList choiceWords(const PlanOptions& options)
{
    QStringList words;
    for (const auto priority : options.priorities)
        words << priorityWords(priority);
    for (const auto& group : options.groups) {
        if (group.weight != 1)
            words << commandWords(QT_TRANSLATE_NOOP("command", "%1 count %2 times"))
                         .arg(groupWords(group))
                         .arg(group.weight);
        if (group.floor > 0.0)
            words << commandWords(
                         QT_TRANSLATE_NOOP("command", "%1: at least %2 in a hundred of those who wait"))
                         .arg(groupWords(group))
                         .arg(qRound(100.0 * group.floor));
    }
    return words;
}

QString proofWords(const Proof& proof)
{
    const auto number = [](double value) { return QString::number(value, 'f', 0); };
    if (proof.proved())
        return commandWords(QT_TRANSLATE_NOOP("command", "proved: no plan serves more than %1 (%2)"))
            .arg(number(proof.bound), QString::fromLatin1(jsonWord(proof.method)));
    return commandWords(QT_TRANSLATE_NOOP(
                            "command", "not proved: no plan serves more than %1, this one %2; gap %3 % (%4)"))
        .arg(number(proof.bound), number(proof.reached), QString::number(100.0 * proof.gap(), 'f', 2),
             QString::fromLatin1(jsonWord(proof.method)));
}

QJsonObject jsonProof(const Proof& proof)
{
    return {{"bound", jsonNumber(proof.bound)}, {"reached", jsonNumber(proof.reached)},
            {"gap", jsonNumber(proof.gap())},   {"loss_bound_logmar", jsonNumber(proof.lossBound)},
            {"proved", proof.proved()},         {"method", QString::fromLatin1(jsonWord(proof.method))}};
}

} // namespace quarterstep
