// SPDX-License-Identifier: GPL-3.0-or-later
// Manual pages in the macros of man(7).
#include "app/command/command_line.hpp"
#include "app/help/topics.hpp"
#include "app/install/describe/describe.hpp"

#include <QCommandLineOption>

namespace quarterstep
{
namespace
{

/// Text as troff takes it: a backslash, a minus sign and a dot at the start of a line are commands otherwise.
QString plain(const QString& text)
{
    QString quoted = text;
    quoted.replace(QLatin1Char('\\'), QStringLiteral("\\e"));
    quoted.replace(QLatin1Char('-'), QStringLiteral("\\-"));
    quoted.replace(QLatin1Char('`'), QStringLiteral("\\(ga"));
    if (quoted.startsWith(QLatin1Char('.')) || quoted.startsWith(QLatin1Char('\'')))
        quoted.prepend(QStringLiteral("\\&"));
    return quoted;
}

QString plain(const char* text)
{
    return plain(QString::fromUtf8(text));
}

/// Broken at spaces to lines of at most 78 characters, as troff sources are written.
QString wrapped(const QString& text)
{
    constexpr qsizetype width = 78;
    QString broken;
    QString line;
    for (const auto& word : text.split(QLatin1Char(' '))) {
        if (!line.isEmpty() && line.size() + 1 + word.size() > width) {
            broken += line + QLatin1Char('\n');
            line.clear();
            if (word.startsWith(QLatin1Char('.')) || word.startsWith(QLatin1Char('\'')))
                line = QStringLiteral("\\&");
        } else if (!line.isEmpty()) {
            line += QLatin1Char(' ');
        }
        line += word;
    }
    return broken + line;
}

QString heading(const char* program, const char* words)
{
    return QStringLiteral(".\\\" made from the tables of the command line\n"
                          ".TH %1 1 \"\" \"%2 %3\" \"User commands\"\n.SH NAME\n%2 \\- %4\n")
        .arg(QString::fromUtf8(program).toUpper(), plain(program), QStringLiteral(QUARTERSTEP_VERSION),
             plain(words));
}

/// Begins with a capital and ends with a full stop.
QString asSentence(const char* words)
{
    QString text = QString::fromUtf8(words);
    text[0] = text[0].toUpper();
    return plain(text + QLatin1Char('.'));
}

QString item(const QString& what, const QString& words)
{
    return QStringLiteral(".TP\n%1\n%2\n").arg(what, wrapped(words));
}

QString verbSection(const VerbRow& verb)
{
    QString text = QStringLiteral(".SS \"quarterstep %1 [OPTIONS] %2\"\n%3\n")
                       .arg(plain(verb.name), plain(verb.arguments), wrapped(asSentence(verb.words)));
    for (const char* name : verb.options) {
        const auto& option = optionNamed(name);
        QString what = QStringLiteral("\\fB%1\\fR").arg(plain(option.name));
        if (option.values > 0)
            what += QStringLiteral(" \\fI%1\\fR").arg(plain(option.valueWords));
        text += item(what, plain(option.words));
    }
    text += QStringLiteral(".PP\n");
    for (const char* example : verb.examples)
        text += QStringLiteral(".RS 4\n.nf\n%1\n.fi\n.RE\n").arg(plain(example));
    return text;
}

QString exitStatus()
{
    const std::pair<int, const char*> rows[] = {
        {Exit::done, "done"},
        {Exit::unserved, "somebody is left without acceptable stock, or a record is incomplete"},
        {Exit::usage, "a slip in the command"},
        {Exit::badData, "bad data; the place is said as file:line:column"},
        {Exit::unavailable, "something is locked, read-only or cannot be reached"}};
    QString text = QStringLiteral(".SH EXIT STATUS\n");
    for (const auto& [code, words] : rows)
        text += item(QStringLiteral("\\fB%1\\fR").arg(code), plain(words));
    return text;
}

constexpr const char* caution = "Quarterstep supports licensed practice and local codes; it never replaces "
                                "them. Check power and centres of every "
                                "pair with a focimeter before handing over.";

QString lastSections(const char* other)
{
    return QStringLiteral(".SH CAUTIONS\n%1\n.SH SEE ALSO\n.BR %2 (1)\n")
        .arg(wrapped(plain(caution)), plain(other));
}

} // namespace

QString manualPage()
{
    QString text =
        heading("quarterstep", "match spectacle prescriptions with a stock of spectacles and lenses");
    text +=
        QStringLiteral(".SH SYNOPSIS\n.B quarterstep\n.I VERB\n[\\fIOPTIONS\\fR] [\\fIARGUMENTS\\fR]\n"
                       ".SH DESCRIPTION\n%1\n.SH VERBS\n")
            .arg(wrapped(plain(
                "Finds which stocked spectacles serve a finished prescription and how well, hands them over, "
                "keeps the stock, plans the next boxes and audits what was handed over.")));
    for (const auto& verb : verbTable())
        text += verbSection(verb);
    text += QStringLiteral(".SH TOPICS\nPages of the manual, printed by\n.BR \"quarterstep help\" :\n");
    for (const auto& topic : helpTopics())
        text += item(QStringLiteral("\\fB%1\\fR").arg(plain(topic.name)), plain(topic.words));
    text += QStringLiteral(".SH FILES\n");
    text += item(QStringLiteral("\\fBstock.yaml\\fR, \\fBrules.yaml\\fR, \\fBledger.sqlite\\fR"),
                 plain("what exists and how many, the limits, and everything that happened: a camp folder"));
    text += item(QStringLiteral("\\fB/usr/share/quarterstep/samples/orrowen_coast\\fR"),
                 plain("an invented camp to try things on; copy it to a place of your own first"));
    text += item(QStringLiteral("\\fB/usr/share/doc/quarterstep/manual\\fR"),
                 plain("the manual, as `quarterstep help` prints it"));
    text += QStringLiteral(".SH ENVIRONMENT\n");
    text += item(QStringLiteral("\\fBQUARTERSTEP_PIN\\fR, \\fBQUARTERSTEP_NEW_PIN\\fR"),
                 plain("the PIN of a role, and its new one, where no file descriptor is named"));
    return text + exitStatus() + lastSections("quarterstep-desk");
}

QString manualPageOfDesk(const QList<QCommandLineOption>& options)
{
    QString text = heading("quarterstep-desk", "the window of Quarterstep");
    text +=
        QStringLiteral(
            ".SH SYNOPSIS\n.B quarterstep\\-desk\n[\\fIOPTIONS\\fR] [\\fIFOLDER\\fR]\n.SH DESCRIPTION\n%1\n"
            ".SH OPTIONS\n")
            .arg(wrapped(plain(
                "Opens a camp folder (stock.yaml, rules.yaml and the ledger) in a window: prescriptions, the "
                "pairs that serve them, the stock and its audit.")));
    for (const auto& option : options) {
        QStringList names;
        for (const auto& name : option.names())
            names += QStringLiteral("\\fB%1\\fR")
                         .arg(plain((name.size() == 1 ? QStringLiteral("-") : QStringLiteral("--")) + name));
        QString what = names.join(QStringLiteral(", "));
        if (!option.valueName().isEmpty())
            what += QStringLiteral(" \\fI%1\\fR").arg(plain(option.valueName()));
        text += item(what, plain(option.description()));
    }
    return text + lastSections("quarterstep");
}

} // namespace quarterstep
