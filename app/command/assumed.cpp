// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/assumed.hpp"

#include "app/command/output.hpp"
#include "app/command/picked.hpp"

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

} // namespace quarterstep
