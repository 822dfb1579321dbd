// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/crash_disk.hpp"

#include <fcntl.h>

#include <algorithm>
#include <cstring>
#include <fstream>
#include <iterator>

namespace quarterstep::test
{

namespace
{

constexpr std::size_t sector = 512;
constexpr std::size_t folderItself = static_cast<std::size_t>(-1);

} // namespace

std::vector<RecordedCall> readRecording(const std::string& path)
{
    std::ifstream stream(path, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(stream), {}};
    std::vector<RecordedCall> calls;
    for (std::size_t at = 0; at + sizeof(CallHead) <= bytes.size();) {
        RecordedCall call;
        std::memcpy(&call.head, bytes.data() + at, sizeof(CallHead));
        at += sizeof(CallHead);
        call.path = bytes.substr(at, call.head.pathLength);
        at += call.head.pathLength;
        call.data = bytes.substr(at, call.head.dataLength);
        at += call.head.dataLength;
        calls.push_back(std::move(call));
    }
    return calls;
}

CrashDisk::CrashDisk(std::string folder, const std::map<std::string, std::string>& certain)
    : folder_(std::move(folder))
{
    for (const auto& [name, bytes] : certain) {
        certainNames_[name] = files_.size();
        files_.push_back({bytes, {}});
    }
    names_ = certainNames_;
}

std::string CrashDisk::nameOf(const std::string& path) const
{
    return path.size() > folder_.size() ? path.substr(folder_.size() + 1) : std::string();
}

void CrashDisk::play(const RecordedCall& call)
{
    const auto& head = call.head;
    switch (head.call) {
    case Call::open:
        return open(call);
    case Call::write:
        return change(head.descriptor, {false, head.offset, call.data});
    case Call::truncate:
        return change(head.descriptor, {true, head.offset, {}});
    case Call::sync:
        return sync(head.descriptor);
    case Call::rename:
        return changeName(nameOf(call.path), nameOf(call.data), names_.at(nameOf(call.path)));
    case Call::unlink:
        return changeName(nameOf(call.path), {}, 0);
    case Call::close:
        descriptors_.erase(head.descriptor);
        return;
    case Call::mark:
        marks_ += call.data;
    }
}

void CrashDisk::open(const RecordedCall& call)
{
    const auto name = nameOf(call.path);
    if (name.empty()) {
        descriptors_[call.head.descriptor] = folderItself;
        return;
    }
    if (names_.find(name) == names_.end()) {
        files_.push_back({});
        changeName({}, name, files_.size() - 1);
    }
    descriptors_[call.head.descriptor] = names_.at(name);
    if ((call.head.offset & O_TRUNC) != 0)
        change(call.head.descriptor, {true, 0, {}});
}

void CrashDisk::change(int descriptor, Change change)
{
    files_.at(descriptors_.at(descriptor)).pending.push_back(std::move(change));
}

void CrashDisk::changeName(const std::string& removed, const std::string& added, std::size_t file)
{
    pendingNames_.push_back({removed, added, file});
    apply(names_, pendingNames_.back());
}

void CrashDisk::sync(int descriptor)
{
    const auto which = descriptors_.at(descriptor);
    if (which == folderItself) {
        certainNames_ = names_;
        pendingNames_.clear();
        return;
    }
    auto& file = files_.at(which);
    for (const auto& pending : file.pending)
        apply(file.certain, pending);
    file.pending.clear();
}

void CrashDisk::apply(Names& names, const NameChange& change)
{
    names.erase(change.removed);
    if (!change.added.empty())
        names[change.added] = change.file;
}

void CrashDisk::apply(std::string& content, const Change& change)
{
    if (change.truncation)
        return content.resize(change.offset);
    content.resize(std::max(content.size(), change.offset + change.data.size()));
    content.replace(change.offset, change.data.size(), change.data);
}

std::string CrashDisk::contentOf(const File& file, Loss loss, std::mt19937& random)
{
    auto content = file.certain;
    for (const auto& pending : file.pending) {
        if (loss == Loss::everything || (loss == Loss::someWrites && random() % 2 == 0))
            continue;
        if (loss != Loss::sectors || pending.truncation) {
            apply(content, pending);
            continue;
        }
        for (std::size_t at = 0; at < pending.data.size();) { // each sector of the disk by itself
            const auto end = std::min(pending.data.size(), at + sector - (pending.offset + at) % sector);
            if (random() % 2 == 0)
                apply(content, {false, pending.offset + at, pending.data.substr(at, end - at)});
            at = end;
        }
    }
    return content;
}

void CrashDisk::leave(const std::string& target, Loss loss, std::mt19937& random) const
{
    auto names = certainNames_;
    auto kept = loss == Loss::everything ? 0 : pendingNames_.size();
    if (loss == Loss::someWrites || loss == Loss::sectors)
        kept = random() % (pendingNames_.size() + 1);
    for (std::size_t i = 0; i < kept; ++i)
        apply(names, pendingNames_[i]);
    for (const auto& [name, file] : names) {
        if (name.size() > 4 && name.compare(name.size() - 4, 4, "-shm") == 0)
            continue;
        std::ofstream(target + "/" + name, std::ios::binary) << contentOf(files_[file], loss, random);
    }
}

} // namespace quarterstep::test
