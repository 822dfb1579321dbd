// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/inventory/cutting_proxy.hpp"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

#include <stdexcept>
#include <string_view>
#include <vector>

namespace quarterstep::test
{

namespace
{

sockaddr_in loopback(int port)
{
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    address.sin_port = htons(static_cast<std::uint16_t>(port));
    return address;
}

const sockaddr* plain(const sockaddr_in& address)
{
    return reinterpret_cast<const sockaddr*>(&address); // NOLINT: as the interface wants it
}

bool readable(int descriptor, int waitMs)
{
    pollfd wanted{descriptor, POLLIN, 0};
    return poll(&wanted, 1, waitMs) > 0;
}

/// What is there to read; empty at the end of the wire.
std::string chunkFrom(int descriptor)
{
    std::string bytes(65536, '\0');
    const auto count = read(descriptor, bytes.data(), bytes.size());
    bytes.resize(count > 0 ? static_cast<std::size_t>(count) : 0);
    return bytes;
}

bool sendAll(int descriptor, std::string_view bytes)
{
    while (!bytes.empty()) {
        const auto sent = send(descriptor, bytes.data(), bytes.size(), MSG_NOSIGNAL);
        if (sent <= 0)
            return false;
        bytes.remove_prefix(static_cast<std::size_t>(sent));
    }
    return true;
}

constexpr int shortWaitMs = 20;

} // namespace

CuttingProxy::CuttingProxy(int port)
    : listener_(socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0)), target_(port)
{
    auto address = loopback(0);
    socklen_t size = sizeof address;
    if (listener_ < 0 || bind(listener_, plain(address), size) != 0 || listen(listener_, 8) != 0 ||
        getsockname(listener_, reinterpret_cast<sockaddr*>(&address), &size) != 0) // NOLINT
        throw std::runtime_error("no port for the wire");
    port_ = ntohs(address.sin_port);
    thread_ = std::thread([this] { serve(); });
}

CuttingProxy::~CuttingProxy()
{
    ends_ = true;
    thread_.join();
    close(listener_);
}

void CuttingProxy::serve()
{
    std::vector<std::thread> wires;
    while (!ends_)
        if (readable(listener_, shortWaitMs))
            if (const int client = accept4(listener_, nullptr, nullptr, SOCK_CLOEXEC); client >= 0)
                wires.emplace_back([this, client] { pass(client); });
    for (auto& wire : wires)
        wire.join();
}

void CuttingProxy::pass(int client)
{
    const int server = socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    bool whole = server >= 0 && connect(server, plain(loopback(target_)), sizeof(sockaddr_in)) == 0;
    while (whole && !ends_) {
        pollfd ends[] = {{client, POLLIN, 0}, {server, POLLIN, 0}};
        if (poll(ends, 2, shortWaitMs) <= 0)
            continue;
        if (ends[0].revents != 0) {
            const auto bytes = chunkFrom(client);
            const bool commits = bytes.find(std::string("COMMIT\0", 7)) != std::string::npos;
            const auto cut = commits ? cut_.exchange(Cut::never) : Cut::never;
            if (cut != Cut::never)
                ++cuts_;
            whole = !bytes.empty() && cut != Cut::beforeCommit && sendAll(server, bytes);
            if (cut == Cut::afterCommit) {
                (void)readable(server, 10'000); // it is carried out: the answer is on its way
                whole = false;
            }
        }
        if (whole && ends[1].revents != 0) {
            const auto bytes = chunkFrom(server);
            whole = !bytes.empty() && sendAll(client, bytes);
        }
    }
    close(server);
    close(client);
}

} // namespace quarterstep::test
