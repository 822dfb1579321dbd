// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/powers_ltr.hpp"

#include "app/session/wording.hpp"

#include <QRegularExpression>

#include <algorithm>

namespace quarterstep
{

QString powersLtr(const QString& text)
{
    const auto turns = [](QChar letter) {
        return letter.direction() == QChar::DirR || letter.direction() == QChar::DirAL;
    };
    if (std::none_of(text.begin(), text.end(), turns))
        return text;
    // What is kept already, and names that begin with a letter, are passed over; then: numbers that follow
    // each other with a sign, and an axis. A number alone, without a sign, cannot be turned round.
    static const QRegularExpression runs(
        QStringLiteral("[\\x{2066}\\x{2068}][^\\x{2069}]*\\x{2069}|[A-Za-z][A-Za-z0-9+\\-_./:=]*|"
                       "([+\\-\\x{2212}]?\\d[\\d.,]*(?:[ \\x{A0}]?[+\\-\\x{2212}]\\d[\\d.]*)*"
                       "(?:[ \\x{A0}]?[x\u00D7@][ \\x{A0}]?\\d[\\d.]*)?)"));
    static const QRegularExpression signs(QStringLiteral("[+\\-\\x{2212}x\u00D7@]"));
    QString kept;
    qsizetype done = 0;
    for (auto found = runs.globalMatch(text); found.hasNext();) {
        const auto run = found.next();
        auto power = run.captured(1);
        while (power.endsWith(QLatin1Char('.')) || power.endsWith(QLatin1Char(',')))
            power.chop(1); // of the sentence
        if (!power.contains(signs))
            continue;
        kept += text.mid(done, run.capturedStart() - done) + ltr(power);
        done = run.capturedStart() + power.size();
    }
    return kept + text.mid(done);
}

} // namespace quarterstep
