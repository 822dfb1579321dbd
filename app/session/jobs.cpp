// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/jobs.hpp"

#include "core/finding.hpp"

#include <exception>

namespace quarterstep
{

void throwIfStopped(const Job& job)
{
    if (job.stopped())
        throw errorSaying("cancelled", {QS_SAY("core", "stopped as asked; nothing was written"), {}}, 1);
}

void tellFar(const Job& job, std::int64_t done, std::int64_t of)
{
    throwIfStopped(job);
    if (job.done)
        job.done(static_cast<std::size_t>(done), static_cast<std::size_t>(of));
}

void inParallel(std::size_t count, const Job& job, const std::function<void(std::size_t)>& work)
{
    std::atomic<std::size_t> next{0};
    std::atomic<bool> failed{false};
    std::exception_ptr first;
    const auto pull = [&](bool telling, std::exception_ptr& kept) {
        try {
            for (std::size_t i = next++; i < count && !failed && !job.stopped(); i = next++) {
                work(i);
                if (telling && job.done)
                    job.done(std::min(next.load(), count), count);
            }
        } catch (...) {
            kept = std::current_exception();
            failed = true;
        }
    };
    std::exception_ptr second;
    if (count > 1) {
        std::thread helper([&] { pull(false, second); });
        pull(true, first);
        helper.join();
    } else {
        pull(true, first);
    }
    if (first || second)
        std::rethrow_exception(first ? first : second);
    throwIfStopped(job);
}

PiecesDone::PiecesDone(std::size_t pieces, const Job& job)
    : job_(job), thousandths_(pieces), maker_(std::this_thread::get_id())
{
}

bool PiecesDone::tell(std::size_t piece, double part)
{
    constexpr int whole = 1000;
    thousandths_[piece] = static_cast<int>(whole * part);
    if (job_.done && std::this_thread::get_id() == maker_) {
        std::size_t sum = 0;
        for (const auto& one : thousandths_)
            sum += static_cast<std::size_t>(one.load());
        job_.done(sum, whole * thousandths_.size());
    }
    return !job_.stopped();
}

Job PiecesDone::quiet() const
{
    Job job;
    job.cancelled = job_.cancelled;
    return job;
}

} // namespace quarterstep
