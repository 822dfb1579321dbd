// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/assumed.hpp"

#include "app/command/output.hpp"
#include "app/command/picked.hpp"

#include <QCoreApplication>

namespace quarterstep
{

CoverageAssumptions assumptionsOf(const CommandLine& line)
{
    CoverageAssumptions assumed;
    for (const auto& word : namesIn(line.value("--assume"))) {
        if (word == "centred")
            assumed.centred = true;
        else if (word == "final")
            assumed.final = true;
        else if (word == "vertex")
            assumed.vertex = true;
        else
            throw errorSaying(
                "option-value",
                {QS_SAY("core", "“%1” cannot be assumed; write centred, final or vertex"), {word}},
                Exit::usage);
    }
    return assumed;
}

QStringList assumptionWords(const CoverageAssumptions& assumed)
{
    QStringList words;
    if (assumed.centred)
        words << commandWords(QT_TRANSLATE_NOOP(
            "command", "assumed: where no PD was taken, it equals the centres of each pair"));
    if (assumed.final)
        words << commandWords(
            QT_TRANSLATE_NOOP("command", "assumed: objective readings are final, and a prescriber is named"));
    if (assumed.vertex)
        words << commandWords(
            QT_TRANSLATE_NOOP("command", "assumed: an unrecorded vertex distance is that of the stock"));
    return words;
}

} // namespace quarterstep
