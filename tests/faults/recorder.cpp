// SPDX-License-Identifier: GPL-3.0-or-later
// Preloaded into a program: records the calls that change files under one folder, in their order, and text
// written to standard output as marks. It can also fail or kill the program at the n-th such call.
// QS_RECORD_FOLDER: the folder; QS_RECORD_LOG: where to write; QS_RECORD_FAULT: kill:N | tear:N | full:N |
// broken:N | readonly:N | short:N | removed:N | clock:N (tear: half of the n-th write, then killed; full:
// ENOSPC; broken: EIO; readonly: EROFS from then on; short: the n-th write takes half and says so; removed:
// the folder gets another name, FOLDER.gone; clock: from then on it is a day earlier). Not seen: writev,
// shared mappings, O_TMPFILE, linkat; none is used where the order counts.
#include "tests/faults/recording.hpp"

#include <cerrno>
#include <csignal>
#include <cstdarg>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <dlfcn.h>
#include <fcntl.h>
#include <string>
#include <string_view>
#include <sys/syscall.h>
#include <unistd.h>
#include <utility>

using quarterstep::test::Call;
using quarterstep::test::CallHead;

namespace
{

bool followed[4096];
std::size_t cutTo = 0;    ///< bytes that the write at hand takes, 0 = all
bool clockIsBack = false; ///< by a day

template <class Function>
Function* next(const char* name)
{
    return reinterpret_cast<Function*>(dlsym(RTLD_NEXT, name));
}

bool isFollowed(int descriptor)
{
    return descriptor >= 0 && descriptor < 4096 && followed[descriptor];
}

bool isUnderFolder(const char* path)
{
    static const char* folder = getenv("QS_RECORD_FOLDER");
    return folder != nullptr && path != nullptr && strncmp(path, folder, strlen(folder)) == 0;
}

void record(Call call, int descriptor, std::uint64_t offset, std::string_view path, std::string_view data)
{
    static const char* name = getenv("QS_RECORD_LOG");
    static const long log = name == nullptr ? -1
                                            : syscall(SYS_openat, AT_FDCWD, name,
                                                      O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
    if (log < 0)
        return;
    CallHead head;
    head.call = call;
    head.descriptor = descriptor;
    head.offset = offset;
    head.pathLength = static_cast<std::uint32_t>(path.size());
    head.dataLength = static_cast<std::uint32_t>(data.size());
    std::string bytes(reinterpret_cast<const char*>(&head), sizeof head);
    bytes.append(path).append(data);
    syscall(SYS_write, log, bytes.data(), bytes.size());
}

/// Counts a call; true = this one shall fail (errno is set). Kills when that is asked for.
bool faultHere(int descriptor, const void* data, std::size_t size, long offset)
{
    static const std::string fault = getenv("QS_RECORD_FAULT") != nullptr ? getenv("QS_RECORD_FAULT") : "";
    static const auto colon = fault.find(':');
    static const long at = colon == std::string::npos ? 0 : atol(fault.c_str() + colon + 1);
    static long count = 0;
    const auto kind = fault.substr(0, colon);
    if (at == 0 || ((kind == "tear" || kind == "short") && size < 2) || ++count < at ||
        (count > at && kind != "readonly"))
        return false;
    if (kind == "readonly") {
        errno = EROFS;
        return true;
    }
    if (kind == "short")
        cutTo = size / 2;
    if (kind == "clock")
        clockIsBack = true;
    if (kind == "removed") {
        const std::string folder = getenv("QS_RECORD_FOLDER");
        syscall(SYS_rename, folder.c_str(), (folder + ".gone").c_str());
    }
    if (kind == "short" || kind == "clock" || kind == "removed")
        return false;
    if (kind == "tear") {
        if (offset >= 0)
            syscall(SYS_pwrite64, descriptor, data, size / 2, offset);
        else
            syscall(SYS_write, descriptor, data, size / 2);
    }
    if (kind == "tear" || kind == "kill")
        raise(SIGKILL);
    errno = kind == "full" ? ENOSPC : EIO;
    return true;
}

/// How much of a write goes through.
std::size_t allowed(std::size_t size)
{
    const auto most = std::exchange(cutTo, 0);
    return most == 0 ? size : most;
}

int opened(int descriptor, const char* path, int flags)
{
    if (descriptor < 0 || descriptor >= 4096)
        return descriptor;
    followed[descriptor] = isUnderFolder(path);
    if (followed[descriptor])
        record(Call::open, descriptor, static_cast<std::uint64_t>(flags), path, {});
    return descriptor;
}

int openRecorded(const char* name, const char* path, int flags, mode_t mode)
{
    if (isUnderFolder(path) && (flags & O_CREAT) != 0 && faultHere(-1, nullptr, 0, -1))
        return -1;
    return opened(next<int(const char*, int, ...)>(name)(path, flags, mode), path, flags);
}

ssize_t pwriteRecorded(const char* name, int descriptor, const void* data, std::size_t size, off_t offset)
{
    if (isFollowed(descriptor) && faultHere(descriptor, data, size, offset))
        return -1;
    const auto done =
        next<ssize_t(int, const void*, std::size_t, off_t)>(name)(descriptor, data, allowed(size), offset);
    if (done > 0 && isFollowed(descriptor))
        record(Call::write, descriptor, static_cast<std::uint64_t>(offset), {},
               {static_cast<const char*>(data), static_cast<std::size_t>(done)});
    return done;
}

int truncateRecorded(const char* name, int descriptor, off_t length)
{
    if (isFollowed(descriptor) && faultHere(descriptor, nullptr, 0, -1))
        return -1;
    const int result = next<int(int, off_t)>(name)(descriptor, length);
    if (result == 0 && isFollowed(descriptor))
        record(Call::truncate, descriptor, static_cast<std::uint64_t>(length), {}, {});
    return result;
}

int syncRecorded(const char* name, int descriptor)
{
    if (isFollowed(descriptor) && faultHere(descriptor, nullptr, 0, -1))
        return -1;
    const int result = next<int(int)>(name)(descriptor);
    if (result == 0 && isFollowed(descriptor))
        record(Call::sync, descriptor, 0, {}, {});
    return result;
}

mode_t modeOf(int flags, va_list arguments)
{
    return (flags & O_CREAT) != 0 ? va_arg(arguments, mode_t) : 0;
}

} // namespace

extern "C" {

int open(const char* path, int flags, ...)
{
    va_list arguments;
    va_start(arguments, flags);
    const auto mode = modeOf(flags, arguments);
    va_end(arguments);
    return openRecorded("open", path, flags, mode);
}

int open64(const char* path, int flags, ...)
{
    va_list arguments;
    va_start(arguments, flags);
    const auto mode = modeOf(flags, arguments);
    va_end(arguments);
    return openRecorded("open64", path, flags, mode);
}

int close(int descriptor)
{
    if (isFollowed(descriptor)) {
        followed[descriptor] = false;
        record(Call::close, descriptor, 0, {}, {});
    }
    return next<int(int)>("close")(descriptor);
}

ssize_t write(int descriptor, const void* data, std::size_t size)
{
    if (isFollowed(descriptor) && faultHere(descriptor, data, size, -1))
        return -1;
    const auto done = next<ssize_t(int, const void*, std::size_t)>("write")(descriptor, data, allowed(size));
    if (done <= 0 || (descriptor != STDOUT_FILENO && !isFollowed(descriptor)))
        return done;
    const std::string_view written{static_cast<const char*>(data), static_cast<std::size_t>(done)};
    if (descriptor == STDOUT_FILENO)
        record(Call::mark, -1, 0, {}, written);
    else
        record(Call::write, descriptor, static_cast<std::uint64_t>(lseek(descriptor, 0, SEEK_CUR) - done), {},
               written);
    return done;
}

ssize_t pwrite(int descriptor, const void* data, std::size_t size, off_t offset)
{
    return pwriteRecorded("pwrite", descriptor, data, size, offset);
}

ssize_t pwrite64(int descriptor, const void* data, std::size_t size, off64_t offset)
{
    return pwriteRecorded("pwrite64", descriptor, data, size, offset);
}

int ftruncate(int descriptor, off_t length) noexcept
{
    return truncateRecorded("ftruncate", descriptor, length);
}

int ftruncate64(int descriptor, off64_t length) noexcept
{
    return truncateRecorded("ftruncate64", descriptor, length);
}

int fsync(int descriptor)
{
    return syncRecorded("fsync", descriptor);
}

int fdatasync(int descriptor)
{
    return syncRecorded("fdatasync", descriptor);
}

int rename(const char* from, const char* to) noexcept
{
    if (isUnderFolder(to) && faultHere(-1, nullptr, 0, -1))
        return -1;
    const int result = next<int(const char*, const char*)>("rename")(from, to);
    if (result == 0 && isUnderFolder(to))
        record(Call::rename, -1, 0, from, to);
    return result;
}

int renameat2(int fromFolder, const char* from, int toFolder, const char* to, unsigned flags) noexcept
{
    if (isUnderFolder(to) && faultHere(-1, nullptr, 0, -1))
        return -1;
    using Function = int(int, const char*, int, const char*, unsigned);
    const int result = next<Function>("renameat2")(fromFolder, from, toFolder, to, flags);
    if (result == 0 && isUnderFolder(to))
        record(Call::rename, -1, 0, from, to);
    return result;
}

int unlink(const char* path) noexcept
{
    if (isUnderFolder(path) && faultHere(-1, nullptr, 0, -1))
        return -1;
    const int result = next<int(const char*)>("unlink")(path);
    if (result == 0 && isUnderFolder(path))
        record(Call::unlink, -1, 0, path, {});
    return result;
}

int clock_gettime(clockid_t clock, timespec* now) noexcept
{
    const auto result = static_cast<int>(syscall(SYS_clock_gettime, clock, now));
    if (result == 0 && clock == CLOCK_REALTIME && clockIsBack)
        now->tv_sec -= 86'400;
    return result;
}

} // extern "C"
