// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/sqlite_file.hpp"

#include "inventory/store/entry_id.hpp"
#include "inventory/store/finding_at.hpp"
#include "inventory/store/migrations.hpp"
#include "inventory/store/place.hpp"

#include <fcntl.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <chrono>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <string_view>

namespace quarterstep
{

namespace
{

Error cannotMake(const std::string& path, int reason)
{
    return errorAt(path, "ledger-unwritable",
                   {QS_SAY("core", "the ledger cannot be made: %1; check the rights of the folder"),
                    {std::strerror(reason)}},
                   4);
}

constexpr auto oldEnough = std::chrono::minutes(1);

} // namespace

void makeEmptyFile(const std::string& path)
{
    const auto unnamed = path + "." + idText(randomId()) + ".new";
    const int descriptor = ::open(unnamed.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (descriptor < 0)
        throw cannotMake(path, errno);
    int failed = fsync(descriptor) == 0 ? 0 : errno;
    close(descriptor);
    if (failed == 0 && renameat2(AT_FDCWD, unnamed.c_str(), AT_FDCWD, path.c_str(), RENAME_NOREPLACE) != 0) {
        failed = errno;
        if (failed == EINVAL || failed == ENOSYS) // a file system that only knows links
            failed = link(unnamed.c_str(), path.c_str()) == 0 ? 0 : errno;
        unlink(unnamed.c_str());
    }
    if (failed == EEXIST)
        return; // another program was quicker
    if (failed == 0 && !syncFolder(folderOf(path)))
        failed = errno;
    if (failed != 0)
        throw cannotMake(path, failed);
}

void removeUnnamed(const std::string& path)
{
    namespace fs = std::filesystem;
    const auto begin = fs::path(path).filename().string() + ".";
    const std::string end = ".new";
    const auto length = begin.size() + 36 + end.size();
    std::error_code failed;
    for (const auto& file : fs::directory_iterator(folderOf(path), failed)) {
        const auto name = file.path().filename().string();
        if (name.size() != length || name.compare(0, begin.size(), begin) != 0 ||
            name.compare(length - end.size(), end.size(), end) != 0 ||
            idBytes(name.substr(begin.size(), 36)).empty())
            continue;
        std::error_code gone;
        const bool old = fs::file_time_type::clock::now() - fs::last_write_time(file, gone) > oldEnough;
        if (file.is_regular_file(gone) && file.file_size(gone) == 0 && !gone && old)
            fs::remove(file, gone);
    }
}

/// SQLite, file format, 1.3: user version at 60, application id at 68, the highest byte first.
bool isLedgerOfToday(const std::string& path)
{
    constexpr std::string_view magic("SQLite format 3\0", 16);
    std::array<char, 72> head{};
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0)
        return false;
    const auto got = ::read(descriptor, head.data(), head.size());
    ::close(descriptor);
    const auto number = [&head](std::size_t at) {
        std::int64_t value = 0;
        for (std::size_t i = at; i < at + 4; ++i)
            value = value << 8 | static_cast<unsigned char>(head[i]);
        return value;
    };
    return got == static_cast<ssize_t>(head.size()) && std::string_view(head.data(), magic.size()) == magic &&
           number(60) == ledgerVersion && number(68) == ledgerApplicationId;
}

} // namespace quarterstep
