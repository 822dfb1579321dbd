// SPDX-License-Identifier: GPL-3.0-or-later
// Safe replacement of a file, and the lock of a folder.
#include "inventory/store/finding_at.hpp"
#include "inventory/store/place.hpp"
#include "inventory/store/write_back.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <chrono>
#include <cstdio>
#include <cstring>
#include <thread>

namespace quarterstep
{

namespace
{

/// Closes on every way out.
struct Descriptor {
    int number;
    ~Descriptor()
    {
        if (number >= 0)
            close(number);
    }
};

/// 0, or the errno of what failed.
int writeAll(int descriptor, const std::string& bytes)
{
    std::size_t done = 0;
    while (done < bytes.size()) {
        const auto count = write(descriptor, bytes.data() + done, bytes.size() - done);
        if (count > 0)
            done += static_cast<std::size_t>(count);
        else if (count < 0 && errno != EINTR)
            return errno;
    }
    return 0;
}

/// 0, or the errno of what failed. Rights and owner follow the file replaced where the file system knows
/// them.
int writeTemporary(const std::string& temporary, const std::string& bytes, const struct stat* old,
                   bool ownerOnly)
{
    const Descriptor file{open(temporary.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600)};
    if (file.number < 0)
        return errno;
    if (old != nullptr) {
        (void)!fchown(file.number, old->st_uid, old->st_gid);
        (void)!fchmod(file.number, old->st_mode & 07777);
    } else if (!ownerOnly) {
        const auto mask = umask(0);
        umask(mask);
        (void)!fchmod(file.number, 0666 & ~mask);
    }
    if (const int failed = writeAll(file.number, bytes))
        return failed;
    return fsync(file.number) == 0 ? 0 : errno;
}

void writeStraight(const std::string& path, const std::string& bytes)
{
    const Descriptor file{open(path.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0666)};
    if (file.number < 0)
        throw fileUnwritable(path, errno);
    if (const int failed = writeAll(file.number, bytes))
        throw fileUnwritable(path, failed);
}

} // namespace

void replaceFile(const std::string& path, const std::string& bytes, bool ownerOnly)
{
    struct stat old {
    };
    const bool there = lstat(path.c_str(), &old) == 0;
    if (there && !S_ISREG(old.st_mode))
        return writeStraight(path, bytes);
    static std::atomic<unsigned> count{0};
    const auto folder = folderOf(path);
    const auto name = path.substr(path.rfind('/') == std::string::npos ? 0 : path.rfind('/') + 1);
    const auto temporary =
        folder + "/." + name + "." + std::to_string(getpid()) + "-" + std::to_string(++count) + ".part";
    int failed = writeTemporary(temporary, bytes, there ? &old : nullptr, ownerOnly);
    if (failed == 0 && std::rename(temporary.c_str(), path.c_str()) != 0)
        failed = errno;
    if (failed != 0) {
        if (failed != EEXIST)
            unlink(temporary.c_str());
        throw fileUnwritable(path, failed);
    }
    if (!syncFolder(folder))
        throw errorAt(
            path, "file-unwritable",
            {QS_SAY("core", "the file was replaced, but the disk does not say that this will last: %1"),
             {std::strerror(errno)}},
            4);
}

FolderLock::FolderLock(const std::string& folder, int waitMs)
{
    descriptor_ = open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    int reason = descriptor_ < 0 ? errno : 0;
    for (int waited = 0; reason == 0 && flock(descriptor_, LOCK_EX | LOCK_NB) != 0; waited += 5) {
        if (errno == EINTR)
            continue;
        if (errno != EWOULDBLOCK || waited >= waitMs)
            reason = errno;
        else
            std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    if (reason == 0)
        return;
    if (descriptor_ >= 0)
        close(descriptor_);
    if (reason == EWOULDBLOCK)
        throw errorAt(
            folder, "folder-locked",
            {QS_SAY("core", "another program is writing in this folder; wait a moment and repeat"), {}}, 4);
    throw errorAt(folder, "folder-locked",
                  {QS_SAY("core", "the folder cannot be locked: %1; check its name and rights"),
                   {std::strerror(reason)}},
                  4);
}

FolderLock::~FolderLock()
{
    close(descriptor_); // lets go of the lock as well
}

} // namespace quarterstep
