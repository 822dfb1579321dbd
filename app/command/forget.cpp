// SPDX-License-Identifier: GPL-3.0-or-later
// forget: erases a person. Chain and counts stay as they are.
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/session/leaving.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

void tellUnreached(const Camp& camp, const Forgotten& found, Output& out)
{
    out.tell(
        Severity::caution, {camp.folder(), 0, 0}, "copies-not-reached",
        {QS_SAY("core",
                "copies and backups of this folder, ledgers it was merged into, exported tables and paper "
                "are not reached; deal with them too"),
         {}});
    for (const auto& copy : copiesBeside(camp))
        out.tell(
            Severity::caution, {copy, 0, 0}, "copies-not-reached",
            {QS_SAY("core",
                    "this copy of an older form still has everything; delete it when it is not needed any "
                    "more"),
             {}});
    if (found.older > 0)
        out.tell(
            Severity::caution, {camp.ledger().path(), 0, 0}, "words-in-chain",
            {QS_SAY("core", "%1 entries of an older form have their reason in the chain itself; it cannot be "
                            "blanked"),
             {std::to_string(found.older)}});
}

} // namespace

int runForget(const CommandLine& line, Output& out)
{
    const auto code = line.arguments.front();
    auto camp = openForWork(line, out);
    const auto found = camp.ledger().toForget(code);
    if (!found.known && found.entries == 0)
        throw errorSaying("person-unknown", {QS_SAY("core", "nobody in the ledger has the code %1"), {code}},
                          Exit::badData);
    if (!line.has("--dry-run"))
        (void)camp.ledger().forgetPerson(code);
    tellUnreached(camp, found, out);
    if (line.has("--json")) {
        out.json(QJsonObject{{"person", jsonText(code)},
                             {"name_erased", found.known},
                             {"texts_blanked", static_cast<qint64>(found.texts)},
                             {"entries_kept", static_cast<qint64>(found.entries)},
                             {"dry_run", line.has("--dry-run")}});
        return Exit::done;
    }
    out.line(commandWords(QT_TRANSLATE_NOOP(
                              "command", "%1: name erased %2, reasons and notes blanked %3; %4 entries stay "
                                         "under the code with what was prescribed and given"))
                 .arg(ltr(code))
                 .arg(found.known ? 1 : 0)
                 .arg(found.texts)
                 .arg(found.entries));
    if (line.has("--dry-run"))
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
    return Exit::done;
}

} // namespace quarterstep
