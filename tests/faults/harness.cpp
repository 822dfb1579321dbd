// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/harness.hpp"

#include "app/session/camp.hpp"
#include "tests/inventory/folder.hpp"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <sstream>
#include <stdexcept>

namespace quarterstep::test
{

const std::string driverStock = "# two lines are enough\n"
                                "format: quarterstep stock 1\n"
                                "site: Box\n"
                                "lines:\n"
                                "  - {line: A, kind: ready-made, power: +2.00, on hand: 1000} # near\n"
                                "  - {line: B, kind: ready-made, power: +2.50, on hand: 1000}\n";

FastFolder::FastFolder()
{
    std::string pattern = access("/dev/shm", W_OK) == 0
                              ? "/dev/shm/qs-faults-XXXXXX"
                              : (std::filesystem::temp_directory_path() / "qs-faults-XXXXXX").string();
    path_ = mkdtemp(pattern.data());
}

FastFolder::~FastFolder()
{
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

bool longRun()
{
    return std::getenv("QS_LONG") != nullptr;
}

void readAcks(const std::string& text, DriverRun& run)
{
    std::istringstream lines(text.substr(0, text.rfind('\n') + 1));
    std::string word;
    std::string id;
    std::int64_t number = 0;
    while (lines >> word >> number >> id) {
        run.acked.push_back(id);
        run.position = number;
    }
}

namespace
{

/// The environment of the driver: ours, the recorder preloaded when it is wanted.
std::vector<std::string> environmentOf(const DriverOrder& order)
{
    std::vector<std::string> environment;
    for (char** entry = environ; *entry != nullptr; ++entry)
        if (const std::string text = *entry; text.rfind("ASAN_OPTIONS=", 0) != 0)
            environment.push_back(text);
    if (order.fault.empty() && order.log.empty())
        return environment;
    environment.push_back("LD_PRELOAD=" QS_RECORDER);
    environment.push_back("ASAN_OPTIONS=verify_asan_link_order=0:detect_leaks=0");
    environment.push_back("QS_RECORD_FOLDER=" + order.folder);
    if (!order.log.empty())
        environment.push_back("QS_RECORD_LOG=" + order.log);
    if (!order.fault.empty())
        environment.push_back("QS_RECORD_FAULT=" + order.fault);
    return environment;
}

std::vector<char*> pointersOf(std::vector<std::string>& texts)
{
    std::vector<char*> pointers;
    for (auto& text : texts)
        pointers.push_back(text.data());
    pointers.push_back(nullptr);
    return pointers;
}

pid_t start(const DriverOrder& order, int output)
{
    std::vector<std::string> words{QS_DRIVER, order.folder, std::to_string(order.handOvers), order.way};
    auto environment = environmentOf(order);
    auto arguments = pointersOf(words);
    auto variables = pointersOf(environment);
    const pid_t child = fork();
    if (child == 0) {
        dup2(output, STDOUT_FILENO);
        close(STDERR_FILENO); // what it says there is not judged
        execve(QS_DRIVER, arguments.data(), variables.data());
        _exit(127);
    }
    return child;
}

std::string judge(const std::string& folder, const DriverRun& run, bool fileMayBeBehind)
{
    const auto path = folder + "/stock.yaml";
    const auto reading = readStockFile(path);
    if (!reading.usable())
        return "stock.yaml is gone or torn: " + reading.findings.front().code;
    const auto& file = reading.value;
    if (file.bytes != driverStock && countsHash(file.lines) != file.countsHash)
        return "stock.yaml is a mixture";
    if (!fileMayBeBehind && run.position > 0 && file.writtenAfter < run.position)
        return "stock.yaml is older than an acknowledged hand-over";
    auto camp = Camp::open(folder, Ledger::Mode::readWrite);
    if (camp.ledger().moved())
        camp.claimPlace();
    if (const auto chain = camp.ledger().checkChain(); !chain.ok)
        return "the chain is broken: " + chain.what;
    for (const auto& id : run.acked)
        if (!camp.ledger().entry(id))
            return "an acknowledged hand-over is lost";
    if (!camp.edited().empty())
        return "a count looks edited";
    int left = 0;
    for (const auto& line : camp.stock())
        left += line.onHand;
    int given = 0;
    for (const auto& entry : camp.ledger().entriesAfter(0))
        given += entry.kind == EntryKind::handedOver ? 1 : 0;
    if (driverPieces - left != given)
        return "pieces gone and hand-overs differ";
    int inFile = 0;
    for (const auto& line : readStockFile(path).value.lines)
        inFile += line.onHand;
    return inFile == left ? "" : "stock.yaml did not heal";
}

} // namespace

DriverRun runDriver(const DriverOrder& order)
{
    int ends[2] = {-1, -1};
    if (pipe2(ends, O_CLOEXEC) != 0)
        throw std::runtime_error("no pipe");
    const pid_t child = start(order, ends[1]);
    close(ends[1]);
    DriverRun run;
    std::string text;
    char buffer[4096];
    for (ssize_t count = 0; (count = read(ends[0], buffer, sizeof buffer)) > 0;) {
        text.append(buffer, static_cast<std::size_t>(count));
        if (order.killAfterAcks >= 0 && std::count(text.begin(), text.end(), '\n') >= order.killAfterAcks) {
            usleep(static_cast<useconds_t>(order.killAfterMicros));
            kill(child, SIGKILL);
        }
    }
    close(ends[0]);
    int status = 0;
    waitpid(child, &status, 0);
    run.killed = WIFSIGNALED(status);
    run.exitCode = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    readAcks(text, run);
    return run;
}

std::string violationIn(const std::string& folder, const DriverRun& run, bool fileMayBeBehind)
{
    try {
        return judge(folder, run, fileMayBeBehind);
    } catch (const Error& error) {
        return "cannot be opened: " + error.finding().code;
    }
}

} // namespace quarterstep::test
