// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/output.hpp"

#include "app/session/wording.hpp"

#include <QCoreApplication>
#include <QJsonDocument>
#include <QLocale>

#include <cstdio>

namespace quarterstep
{
namespace
{

/// Isolates keep powers left-to-right on a right-to-left screen; elsewhere they would only disturb searching.
QString forTerminal(QString text)
{
    if (QLocale().textDirection() == Qt::LeftToRight)
        text.remove(QChar(0x2066)).remove(QChar(0x2069));
    return text;
}

void write(std::FILE* stream, const QByteArray& bytes)
{
    std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stream);
}

} // namespace

void Output::line(const QString& text)
{
    write(stdout, forTerminal(text).toUtf8() + '\n');
}

void Output::text(const QString& text)
{
    write(stdout, text.toUtf8());
}

void Output::json(const QJsonArray& value)
{
    write(stdout, QJsonDocument(value).toJson());
}

void Output::json(const QJsonObject& value)
{
    write(stdout, QJsonDocument(value).toJson());
}

void Output::tell(const Finding& finding)
{
    write(stderr, forTerminal(say(finding)).toUtf8() + '\n');
}

void Output::tell(Severity severity, Position position, std::string code, Sentence sentence)
{
    Finding finding;
    finding.severity = severity;
    finding.position = std::move(position);
    finding.code = std::move(code);
    finding.sentence = std::move(sentence);
    tell(finding);
}

void Output::tell(const std::vector<Finding>& findings)
{
    for (const auto& finding : findings)
        tell(finding);
}

bool Output::finish()
{
    return std::fflush(stdout) == 0 && std::ferror(stdout) == 0;
}

QString percent(double share)
{
    return QString::number(100.0 * share, 'f', 1);
}

QString commandWords(const char* text)
{
    return QCoreApplication::translate("command", text);
}

QString commandCount(const char* text, int count)
{
    return QCoreApplication::translate("command", text, nullptr, count);
}

} // namespace quarterstep
