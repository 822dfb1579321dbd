// SPDX-License-Identifier: GPL-3.0-or-later
// Completions for bash, zsh and fish.
#include "app/command/command_line.hpp"
#include "app/install/describe/describe.hpp"

#include <QStringList>

namespace quarterstep
{
namespace
{

QString joined(const std::vector<std::string>& words)
{
    QStringList list;
    for (const auto& word : words)
        list += QString::fromStdString(word);
    return list.join(QLatin1Char(' '));
}

QString verbsJoined()
{
    std::vector<std::string> names;
    for (const auto& verb : verbTable())
        names.emplace_back(verb.name);
    return joined(names);
}

QString optionsJoined(const VerbRow& verb)
{
    return joined({verb.options.begin(), verb.options.end()});
}

/// In single quotes for a shell.
QString quoted(const char* text)
{
    return QLatin1Char('\'') + QString::fromUtf8(text).replace(QLatin1Char('\''), QStringLiteral("'\\''")) +
           QLatin1Char('\'');
}

/// The bash commands that answer a question of this kind.
QString bashAnswer(Asked asked, const std::vector<std::string>& choices)
{
    if (!choices.empty())
        return QStringLiteral("mapfile -t COMPREPLY < <(compgen -W \"%1\" -- \"$word\")")
            .arg(joined(choices));
    if (asked == Asked::file)
        return QStringLiteral(
            "compopt -o filenames 2> /dev/null; mapfile -t COMPREPLY < <(compgen -f -- \"$word\")");
    if (asked == Asked::folder)
        return QStringLiteral(
            "compopt -o filenames 2> /dev/null; mapfile -t COMPREPLY < <(compgen -d -- \"$word\")");
    return {};
}

QString bashOptionCases()
{
    QString text;
    QStringList free;
    for (const auto& option : optionTable()) {
        const auto choices = choicesAfter(option.name);
        if (option.values > 0 && choices.empty() && askedBy(option.valueWords) == Asked::words)
            free += QString::fromUtf8(option.name);
        else if (option.values > 0)
            text += QStringLiteral("    %1)\n        %2\n        return ;;\n")
                        .arg(QString::fromUtf8(option.name), bashAnswer(askedBy(option.valueWords), choices));
    }
    return text + QStringLiteral("    %1) return ;;\n").arg(free.join(QStringLiteral(" | ")));
}

/// How zsh asks for a value: ":words:action".
QString zshQuestion(const char* words, const std::vector<std::string>& choices)
{
    QString action = QStringLiteral(" ");
    if (!choices.empty())
        action = QStringLiteral("(%1)").arg(joined(choices));
    else if (askedBy(words) == Asked::file)
        action = QStringLiteral("_files");
    else if (askedBy(words) == Asked::folder)
        action = QStringLiteral("_files -/");
    QString name = QString::fromUtf8(words);
    return QStringLiteral(":%1:%2").arg(name.remove(QLatin1Char(':')), action);
}

QString zshText(const char* text)
{
    QString words = QString::fromUtf8(text);
    for (const QChar special : {QLatin1Char('\\'), QLatin1Char('['), QLatin1Char(']'), QLatin1Char(':')})
        words.replace(special, QString(QLatin1Char('\\')) + special);
    return words;
}

QString zshVerb(const VerbRow& verb)
{
    QString text = QStringLiteral("    %1) _arguments").arg(QString::fromUtf8(verb.name));
    for (const char* name : verb.options) {
        const auto& option = optionNamed(name);
        QString spec = QStringLiteral("%1[%2]").arg(QString::fromUtf8(name), zshText(option.words));
        for (int value = 0; value < option.values; ++value)
            spec += zshQuestion(option.valueWords, choicesAfter(name));
        text += QStringLiteral(" \\\n        ") + quoted(spec.toUtf8().constData());
    }
    const auto choices = choicesOfVerb(verb.name);
    if (!choices.empty())
        text += QStringLiteral(" \\\n        ") +
                quoted((QLatin1Char('1') + zshQuestion(verb.arguments, choices)).toUtf8().constData());
    if (askedBy(verb.arguments) == Asked::file)
        text += QStringLiteral(" \\\n        '*:file:_files'");
    return text + QStringLiteral(" ;;\n");
}

QString fishValue(const char* words, const std::vector<std::string>& choices)
{
    if (!choices.empty())
        return QStringLiteral(" -x -a '%1'").arg(joined(choices));
    switch (askedBy(words)) {
    case Asked::nothing:
        return {};
    case Asked::file:
        return QStringLiteral(" -r -F");
    case Asked::folder:
        return QStringLiteral(" -x -a '(__fish_complete_directories)'");
    case Asked::words:
        return QStringLiteral(" -x");
    }
    return {};
}

QString fishQuoted(const char* text)
{
    QString words = QString::fromUtf8(text);
    words.replace(QLatin1Char('\\'), QStringLiteral("\\\\"));
    return QLatin1Char('\'') + words.replace(QLatin1Char('\''), QStringLiteral("\\'")) + QLatin1Char('\'');
}

} // namespace

QString completionForBash()
{
    QString text =
        QStringLiteral("# bash completion of quarterstep, made from its tables\n_quarterstep()\n{\n"
                       "    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]}\n"
                       "    COMPREPLY=()\n    if [ \"$COMP_CWORD\" = 1 ]; then\n"
                       "        mapfile -t COMPREPLY < <(compgen -W \"%1 --help --version\" -- \"$word\")\n  "
                       "      return\n    fi\n"
                       "    case $before in\n%2    esac\n    local options='' firsts='' files=''\n"
                       "    case ${COMP_WORDS[1]} in\n")
            .arg(verbsJoined(), bashOptionCases());
    for (const auto& verb : verbTable())
        text += QStringLiteral("    %1) options=\"%2\" firsts=\"%3\" files=%4 ;;\n")
                    .arg(QString::fromUtf8(verb.name), optionsJoined(verb), joined(choicesOfVerb(verb.name)),
                         askedBy(verb.arguments) == Asked::file ? QStringLiteral("yes") : QString());
    return text +
           QStringLiteral(
               "    esac\n    local each\n    for each in \"${COMP_WORDS[@]:2:COMP_CWORD-2}\"; do\n"
               "        case \" $firsts \" in *\" $each \"*) firsts='' ;; esac\n    done\n    case $word "
               "in\n    -*) mapfile -t COMPREPLY < <(compgen -W \"$options\" -- "
               "\"$word\") ;;\n"
               "    *)\n        [ -z \"$firsts\" ] || mapfile -t COMPREPLY < <(compgen -W \"$firsts\" "
               "-- "
               "\"$word\")\n"
               "        if [ ${#COMPREPLY[@]} = 0 ] && [ -n \"$files\" ]; then\n"
               "            compopt -o filenames 2> /dev/null\n"
               "            mapfile -t COMPREPLY < <(compgen -f -- \"$word\")\n        fi ;;\n    esac\n}\n"
               "complete -F _quarterstep quarterstep\n");
}

QString completionForZsh()
{
    QString text = QStringLiteral(
        "#compdef quarterstep\n# zsh completion of quarterstep, made from its tables\n_quarterstep()\n{\n"
        "    if (( CURRENT == 2 )); then\n        local -a verbs=(\n");
    for (const auto& verb : verbTable())
        text += QStringLiteral("            %1\n")
                    .arg(quoted((std::string(verb.name) + ":" + verb.words).c_str()));
    text += QStringLiteral(
        "        )\n        _describe verb verbs\n        return\n    fi\n    local verb=${words[2]}\n"
        "    shift words\n    (( CURRENT-- ))\n    case $verb in\n");
    for (const auto& verb : verbTable())
        text += zshVerb(verb);
    return text + QStringLiteral("    esac\n}\n_quarterstep \"$@\"\n");
}

QString completionForFish()
{
    QString text = QStringLiteral(
        "# fish completion of quarterstep, made from its tables\ncomplete -c quarterstep -f\n");
    for (const auto& verb : verbTable())
        text += QStringLiteral("complete -c quarterstep -n __fish_use_subcommand -a %1 -d %2\n")
                    .arg(QString::fromUtf8(verb.name), fishQuoted(verb.words));
    for (const auto& verb : verbTable()) {
        const auto when = QStringLiteral("complete -c quarterstep -n '__fish_seen_subcommand_from %1'")
                              .arg(QString::fromUtf8(verb.name));
        for (const char* name : verb.options) {
            const auto& option = optionNamed(name);
            text += QStringLiteral("%1 -l %2%3 -d %4\n")
                        .arg(when, QString::fromUtf8(name + 2),
                             fishValue(option.valueWords, choicesAfter(name)), fishQuoted(option.words));
        }
        if (const auto choices = choicesOfVerb(verb.name); !choices.empty())
            text += QStringLiteral("%1 -a '%2'\n").arg(when, joined(choices));
        if (askedBy(verb.arguments) == Asked::file)
            text += QStringLiteral("%1 -F\n").arg(when);
    }
    return text;
}

} // namespace quarterstep
