// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/run.hpp"

#include "app/command/inputs.hpp"
#include "app/command/options.hpp"
#include "app/command/output.hpp"
#include "app/session/camp.hpp"

#include <clocale>
#include <cstring>
#include <langinfo.h>

namespace quarterstep
{
namespace
{

int runVerb(const std::vector<std::string>& arguments, Output& out)
{
    const auto line = parseCommandLine(arguments);
    if (line.verb == "version") {
        out.line(QStringLiteral("quarterstep " QUARTERSTEP_VERSION));
        return Exit::done;
    }
    return verbNamed(line.verb)->run(line, out);
}

int runCaught(const std::vector<std::string>& arguments, Output& out)
{
    try {
        return runVerb(arguments, out);
    } catch (const CampNotOpened& error) {
        out.tell(error.findings());
        return error.exitCode();
    } catch (const FilesNotRead& error) {
        return error.exitCode(); // its findings were told as they were found
    } catch (const Error& error) {
        out.tell(error.finding());
        return error.exitCode();
    } catch (const std::exception& error) {
        out.tell(Severity::error, Position{}, "unexpected",
                 {QS_SAY("core", "it cannot go on: %1"), {error.what()}});
        return Exit::unavailable;
    }
}

} // namespace

void speakUtf8()
{
    std::setlocale(LC_ALL, "");
    if (std::strcmp(nl_langinfo(CODESET), "UTF-8") != 0)
        qputenv("LC_ALL", "C.UTF-8");
}

int runCommand(const std::vector<std::string>& arguments)
{
    Output out;
    const int exit = runCaught(arguments, out);
    if (out.finish())
        return exit;
    out.tell(Severity::error, Position{}, "output-lost",
             {QS_SAY("core", "the answer could not be written to the end"), {}});
    return Exit::unavailable;
}

} // namespace quarterstep
