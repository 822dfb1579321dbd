// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/place.hpp"
#include "inventory/store/connection.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <sys/vfs.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <fstream>

namespace quarterstep
{

namespace
{

/// linux/magic.h and the file systems' own headers.
constexpr std::uint64_t networkMagics[] = {
    0x6969,     // NFS
    0x517B,     // SMB
    0xFF534D42, // CIFS
    0xFE534D42, // SMB2
    0x01021997, // 9P
    0x00C36400, // Ceph
    0x5346414F, // AFS
    0x73757245, // Coda
};

std::string machineId()
{
    std::ifstream file("/etc/machine-id");
    std::string id;
    std::getline(file, id);
    return id;
}

} // namespace

std::string folderOf(const std::string& path)
{
    const auto slash = path.rfind('/');
    if (slash == std::string::npos)
        return ".";
    return slash == 0 ? "/" : path.substr(0, slash);
}

PlaceMark placeOf(const std::string& path)
{
    PlaceMark mark;
    mark.machine = machineId();
    const auto folder = folderOf(path);
    struct stat status {
    };
    if (stat(folder.c_str(), &status) == 0) {
        mark.folder = std::to_string(status.st_ino);
        mark.volume = "device " + std::to_string(status.st_dev);
    }
    struct statfs system {
    };
    std::uint64_t id = 0;
    if (statfs(folder.c_str(), &system) == 0)
        std::memcpy(&id, &system.f_fsid, sizeof id);
    if (id != 0) // outlives a restart, where device numbers may be dealt anew
        mark.volume = "system " + std::to_string(id);
    return mark;
}

std::optional<FileIdentity> identityOf(const std::string& path)
{
    struct stat status {
    };
    if (stat(path.c_str(), &status) != 0)
        return std::nullopt;
    return FileIdentity{status.st_dev, status.st_ino};
}

bool isNetworkFileSystem(std::uint64_t magic)
{
    for (const auto known : networkMagics)
        if ((magic & 0xFFFFFFFF) == known)
            return true;
    return false;
}

void refuseNetworkPlace(const std::string& path)
{
    struct statfs system {
    };
    const auto folder = folderOf(path);
    const bool answered = statfs(path.c_str(), &system) == 0 || statfs(folder.c_str(), &system) == 0;
    if (answered && isNetworkFileSystem(static_cast<std::uint64_t>(system.f_type)))
        throw ledgerError(path, "ledger-network",
                          {QS_SAY("core", "a ledger file cannot be kept safely on a network share; keep the camp "
                                          "folder on this machine, or share a PostgreSQL ledger between stations"),
                           {}},
                          4);
}

bool syncFolder(const std::string& folder)
{
    const int descriptor = open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor < 0)
        return false;
    const bool synced = fsync(descriptor) == 0 || errno == EINVAL; // some file systems know no such call
    close(descriptor);
    return synced;
}

} // namespace quarterstep
