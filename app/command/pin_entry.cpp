// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/pin_entry.hpp"

#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/numbers.hpp"

#include <fcntl.h>
#include <termios.h>
#include <unistd.h>

#include <QCoreApplication>

#include <cstdlib>

namespace quarterstep
{

namespace
{

/// For whom a verb writes.
Role roleFor(const CommandLine& line)
{
    if (line.verb == "stock")
        for (const char* edits : {"--accept-edits", "--discard-edits"})
            if (line.has(edits))
                return roleAskedBy(line.verb, edits);
    return roleAskedBy(line.verb, line.arguments.empty() ? std::string() : line.arguments.front());
}

/// One line of a descriptor, byte by byte, so that what follows stays there for whoever reads next.
std::string lineFrom(int descriptor)
{
    std::string text;
    char byte = 0;
    while (text.size() <= longestPin && read(descriptor, &byte, 1) == 1 && byte != '\n')
        text += byte;
    if (!text.empty() && text.back() == '\r')
        text.pop_back();
    return text;
}

/// Keeps the terminal from showing what is typed while it lives.
class Silence
{
  public:
    explicit Silence(int terminal) : terminal_(terminal)
    {
        quiet_ = tcgetattr(terminal_, &before_) == 0;
        auto silent = before_;
        silent.c_lflag &= ~static_cast<tcflag_t>(ECHO);
        if (quiet_)
            (void)tcsetattr(terminal_, TCSAFLUSH, &silent);
    }
    Silence(const Silence&) = delete;
    Silence& operator=(const Silence&) = delete;
    ~Silence()
    {
        if (quiet_)
            (void)tcsetattr(terminal_, TCSAFLUSH, &before_);
    }

  private:
    int terminal_;
    bool quiet_ = false;
    termios before_{};
};

/// Empty when there is no terminal.
std::string typedAt(const QString& question)
{
    if (isatty(STDIN_FILENO) == 0)
        return {};
    const int terminal = open("/dev/tty", O_RDWR | O_CLOEXEC);
    if (terminal < 0)
        return {};
    std::string text;
    {
        const Silence silence(terminal);
        const auto bytes = (question + QStringLiteral(": ")).toStdString();
        (void)!write(terminal, bytes.data(), bytes.size());
        text = lineFrom(terminal);
        (void)!write(terminal, "\n", 1);
    }
    close(terminal);
    return text;
}

std::string pinFrom(const CommandLine& line, const char* option, const char* variable,
                    const QString& question)
{
    if (line.has(option)) {
        constexpr long mostDescriptors = 1'000'000;
        const auto number = parseWholeNumber(line.value(option), 0, mostDescriptors);
        if (!number)
            refuseUsage("option-value", number.complaint().sentence);
        return lineFrom(static_cast<int>(number.value()));
    }
    if (const char* set =
            std::getenv(variable)) // NOLINT(concurrency-mt-unsafe): one thread reads the command line
        return set;
    return typedAt(question);
}

void requirePinOf(const CommandLine& line, const Ledger& ledger, Role role)
{
    if (!hasPin(ledger, role))
        return;
    const auto pin = pinFrom(
        line, "--pin-fd", "QUARTERSTEP_PIN",
        commandWords(QT_TRANSLATE_NOOP("command", "PIN of the %1")).arg(QString::fromLatin1(wordOf(role))));
    if (pin.empty())
        throw errorSaying(
            "pin-missing",
            {QS_SAY("core", "this needs the PIN of the %1: type it, set QUARTERSTEP_PIN, or give it "
                            "with --pin-fd; nothing was written"),
             {wordOf(role)}},
            Exit::usage);
    requireFit(ledger, role, pin);
}

} // namespace

void requirePin(const CommandLine& line, const Camp& camp)
{
    if (camp.hasLedger())
        requirePinOf(line, camp.ledger(), roleFor(line));
}

int settlePin(const CommandLine& line, Output& out)
{
    const bool sets = line.has("--set-pin");
    const auto word = line.value(sets ? "--set-pin" : "--remove-pin");
    const auto role = roleNamed(word);
    if (!role)
        refuseUsage("option-value",
                    {QS_SAY("core", "“%1” is not a role; write optician, keeper or supervisor"), {word}});
    auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readWrite);
    out.tell(camp.findings());
    requirePinOf(line, camp.ledger(), roleChangingPinOf(camp.ledger(), *role));
    if (sets)
        setPin(camp.ledger(), *role,
               pinFrom(line, "--new-pin-fd", "QUARTERSTEP_NEW_PIN",
                       commandWords(QT_TRANSLATE_NOOP("command", "new PIN of the %1"))
                           .arg(QString::fromLatin1(wordOf(*role)))));
    else
        removePin(camp.ledger(), *role);
    if (line.has("--json"))
        out.json(QJsonObject{{"role", wordOf(*role)}, {"pin", sets}});
    else
        out.line((sets ? commandWords(QT_TRANSLATE_NOOP("command", "the PIN of the %1 is set"))
                       : commandWords(QT_TRANSLATE_NOOP("command", "no PIN is asked of the %1 any more")))
                     .arg(QString::fromLatin1(wordOf(*role))));
    return Exit::done;
}

} // namespace quarterstep
