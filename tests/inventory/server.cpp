// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/inventory/server.hpp"

#include "inventory/store/connection.hpp"
#include "inventory/store/entry_id.hpp"
#include "inventory/store/shared_ledger.hpp"

#include <netinet/in.h>
#include <pwd.h>
#include <sys/prctl.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <grp.h>
#include <iostream>
#include <sstream>
#include <stdexcept>
#include <thread>
#include <vector>

namespace quarterstep::test
{

namespace
{

namespace fs = std::filesystem;

/// The newest version that Debian has put here.
std::string serverPrograms()
{
    std::vector<int> versions;
    std::error_code none;
    for (const auto& folder : fs::directory_iterator("/usr/lib/postgresql", none))
        if (fs::exists(folder.path() / "bin/initdb"))
            versions.push_back(std::atoi(folder.path().filename().c_str()));
    if (versions.empty())
        return {};
    return "/usr/lib/postgresql/" + std::to_string(*std::max_element(versions.begin(), versions.end())) +
           "/bin";
}

int freePort()
{
    const int descriptor = socket(AF_INET, SOCK_STREAM, 0);
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof address;
    const bool bound = bind(descriptor, reinterpret_cast<sockaddr*>(&address), size) == 0 &&       // NOLINT
                       getsockname(descriptor, reinterpret_cast<sockaddr*>(&address), &size) == 0; // NOLINT
    close(descriptor);
    if (!bound)
        throw std::runtime_error("no free port on the loopback address");
    return ntohs(address.sin_port);
}

/// A server refuses to run as root; Debian's package brings an account for it.
const passwd* serverAccount()
{
    return geteuid() == 0 ? getpwnam("postgres") : nullptr;
}

std::vector<char*> pointersTo(std::vector<std::string>& words)
{
    std::vector<char*> pointers;
    pointers.reserve(words.size() + 1);
    for (auto& word : words)
        pointers.push_back(word.data());
    pointers.push_back(nullptr);
    return pointers;
}

/// The child: another account, the folder it may enter, and an end with its parent.
[[noreturn]] void become(std::vector<std::string> words, const std::string& home)
{
    if (const auto* account = serverAccount())
        if (setgroups(0, nullptr) != 0 || setgid(account->pw_gid) != 0 || setuid(account->pw_uid) != 0)
            _exit(126);
    prctl(PR_SET_PDEATHSIG, SIGQUIT);
    if (chdir(home.c_str()) != 0 || freopen("said", "a", stdout) == nullptr || dup2(1, 2) < 0)
        _exit(126);
    const auto arguments = pointersTo(words);
    execv(arguments[0], arguments.data());
    _exit(127);
}

} // namespace

std::unique_ptr<TestServer> TestServer::start(std::string& why, bool lasting)
{
    std::unique_ptr<TestServer> server(new TestServer);
    server->programs_ = serverPrograms();
    if (server->programs_.empty() || (geteuid() == 0 && serverAccount() == nullptr)) {
        why = "PostgreSQL is not installed (package postgresql-15)";
        return nullptr;
    }
    server->makeCluster(lasting);
    server->launch();
    return server;
}

TestServer::~TestServer()
{
    stop(SIGQUIT);
    std::error_code ignored;
    if (!home_.empty())
        fs::remove_all(home_, ignored);
}

int TestServer::run(const std::string& program, const std::string& arguments) const
{
    std::vector<std::string> words{programs_ + "/" + program};
    std::istringstream stream(arguments);
    for (std::string word; stream >> word;)
        words.push_back(word);
    std::cout.flush();
    std::fflush(nullptr); // nothing is to be said twice
    const pid_t child = fork();
    if (child == 0)
        become(words, home_);
    int status = -1;
    waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

void TestServer::makeCluster(bool lasting)
{
    const bool inMemory = !lasting && access("/dev/shm", W_OK | X_OK) == 0;
    const auto pattern = (inMemory ? fs::path("/dev/shm") : fs::temp_directory_path()) / "qs-server-XXXXXX";
    home_ = pattern.string();
    if (mkdtemp(home_.data()) == nullptr)
        throw std::runtime_error("no temporary folder");
    password_ = idText(randomId());
    std::ofstream(home_ + "/pw") << password_;
    std::ofstream(home_ + "/pgpass") << "127.0.0.1:*:*:*:" << password_ << "\n";
    chmod((home_ + "/pgpass").c_str(), 0600);
    if (const auto* account = serverAccount())
        for (const auto& path : {home_, home_ + "/pw"})
            if (chown(path.c_str(), account->pw_uid, account->pw_gid) != 0)
                throw std::runtime_error("the folder cannot be given to the server's account");
    setenv("PGPASSFILE", (home_ + "/pgpass").c_str(), 1);
    unsetenv("PGPASSWORD");
    if (run("initdb", "-D " + home_ + "/d -U keeper -A scram-sha-256 --pwfile=" + home_ +
                          "/pw -E UTF8 --locale=C -k -N") != 0)
        throw std::runtime_error("initdb failed: see " + home_ + "/said");
}

void TestServer::launch()
{
    using namespace std::chrono;
    if (port_ == 0)
        port_ = freePort();
    std::cout.flush();
    std::fflush(nullptr);
    server_ = fork();
    if (server_ == 0)
        become({programs_ + "/postgres", "-D", home_ + "/d", "-p", std::to_string(port_), "-c",
                "listen_addresses=127.0.0.1", "-c", "unix_socket_directories=" + home_},
               home_);
    const auto begin = steady_clock::now();
    while (steady_clock::now() - begin < seconds(30)) {
        try {
            const Connection answers(address("postgres", "keeper"), Connection::Access::readWrite, 2000);
            return;
        } catch (const Error&) {
            if (waitpid(server_, nullptr, WNOHANG) == server_)
                break;
            std::this_thread::sleep_for(milliseconds(30));
        }
    }
    throw std::runtime_error("the server did not start: see " + home_ + "/said");
}

void TestServer::stop(int signal)
{
    if (server_ <= 0)
        return;
    kill(server_, signal);
    waitpid(server_, nullptr, 0);
    server_ = -1;
}

void TestServer::crashAndRestart()
{
    stop(SIGQUIT); // immediate: nothing is written any more, recovery at the next start
    launch();
}

std::string TestServer::address(const std::string& database, const std::string& login) const
{
    return "postgresql://" + login + "@127.0.0.1:" + std::to_string(port_) + "/" + database;
}

void TestServer::makeDatabase(const std::string& database) const
{
    Connection(address("postgres", "keeper"), Connection::Access::readWrite, 2000)
        .execute("CREATE DATABASE " + database);
}

void TestServer::makeLedger(const std::string& database) const
{
    makeDatabase(database);
    setUpSharedLedger(address(database, "keeper"));
    Connection keeper(address(database, "keeper"), Connection::Access::readWrite, 2000);
    for (const std::string login : {"station", "supervisor"})
        if (keeper.wholeOf("SELECT count(*) FROM pg_roles WHERE rolname = '" + login + "'") == 0)
            keeper.execute(std::string("CREATE ROLE ")
                               .append(login)
                               .append(" LOGIN PASSWORD '")
                               .append(password_)
                               .append("' IN ROLE quarterstep_")
                               .append(login));
}

} // namespace quarterstep::test
