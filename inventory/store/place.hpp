// SPDX-License-Identifier: GPL-3.0-or-later
// Where a ledger lives: the mark of its place, the identity of its file, and places that cannot keep it safely.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace quarterstep
{

/// Mark of the folder a ledger lives in. A copy of the folder has another mark; a folder that was merely
/// renamed keeps it.
struct PlaceMark {
    std::string machine; ///< id of the operating system's installation; empty when it has none
    std::string volume;  ///< file system; its device number where the file system has no id
    std::string folder;  ///< inode
    bool operator==(const PlaceMark&) const = default;
};

/// Of the folder that holds `path`.
[[nodiscard]] PlaceMark placeOf(const std::string& path);

/// Device and inode: two names with the same identity are the same file.
struct FileIdentity {
    std::uint64_t device = 0;
    std::uint64_t inode = 0;
    bool operator==(const FileIdentity&) const = default;
};

/// Empty when nothing is there.
[[nodiscard]] std::optional<FileIdentity> identityOf(const std::string& path);

/// True for the magic number (statfs) of a file system shared over a network, where file locks and the shared
/// memory of a ledger cannot be trusted.
[[nodiscard]] bool isNetworkFileSystem(std::uint64_t magic);

/// Throws Error ledger-network (4) when `path` lies, or would lie, on such a file system.
void refuseNetworkPlace(const std::string& path);

/// The folder part of a path, "." when there is none.
[[nodiscard]] std::string folderOf(const std::string& path);
/// fsync on a folder, so that names made or changed in it last. False when it failed.
[[nodiscard]] bool syncFolder(const std::string& folder);

} // namespace quarterstep
