// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/ledger_news.hpp"

#include "inventory/store/connection.hpp"

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace quarterstep
{

namespace
{

constexpr auto betweenLooks = std::chrono::milliseconds(500);
constexpr int lockWaitMs = 2000;

} // namespace

struct LedgerNews::Inside {
    explicit Inside(std::string place) : location(std::move(place)), thread([this] { look(); }) {}

    void look()
    {
        std::unique_ptr<Connection> connection; // belongs to this thread
        do {
            try {
                if (!connection)
                    connection =
                        std::make_unique<Connection>(location, Connection::Access::readWrite, lockWaitMs);
                position = connection->wholeOf("SELECT coalesce(max(position), 0) FROM entry");
            } catch (const Error&) { // told when somebody works with the ledger; the next look may find it
                connection.reset();
            }
        } while (!isOver());
    }

    /// After half a second, or as soon as it is over.
    bool isOver()
    {
        std::unique_lock lock(mutex);
        return end.wait_for(lock, betweenLooks, [this] { return over; });
    }

    std::string location;
    std::atomic<std::int64_t> position{0};
    std::mutex mutex;
    std::condition_variable end;
    bool over = false;
    std::thread thread; // after what it works with
};

LedgerNews::LedgerNews(const std::string& location) : inside_(std::make_unique<Inside>(location)) {}

LedgerNews::~LedgerNews()
{
    {
        const std::lock_guard lock(inside_->mutex);
        inside_->over = true;
    }
    inside_->end.notify_all();
    inside_->thread.join();
}

std::int64_t LedgerNews::position() const
{
    return inside_->position;
}

} // namespace quarterstep
