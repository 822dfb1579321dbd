// SPDX-License-Identifier: GPL-3.0-or-later
// What a disk may hold after a power cut: recorded calls played back onto files of which only the synced part
// is certain. A sync of a file covers its data; names (made, renamed, removed) last only up to a sync of the
// folder, and reach the disk in their order. Shared-memory files are left out: they do not outlive a restart.
#pragma once

#include "tests/faults/recording.hpp"

#include <map>
#include <random>
#include <string>
#include <vector>

namespace quarterstep::test
{

struct RecordedCall {
    CallHead head;
    std::string path;
    std::string data;
};

[[nodiscard]] std::vector<RecordedCall> readRecording(const std::string& path);

class CrashDisk
{
  public:
    /// `certain`: files that were there and synced before (name -> bytes).
    CrashDisk(std::string folder, const std::map<std::string, std::string>& certain);

    void play(const RecordedCall& call);
    [[nodiscard]] const std::string& marks() const { return marks_; }

    enum class Loss { everything, nothing, someWrites, sectors };
    /// Writes one possible state into an empty folder.
    void leave(const std::string& target, Loss loss, std::mt19937& random) const;

  private:
    struct Change {
        bool truncation = false;
        std::size_t offset = 0; ///< or the length
        std::string data;
    };
    struct File {
        std::string certain;
        std::vector<Change> pending;
    };
    using Names = std::map<std::string, std::size_t>;
    struct NameChange {
        std::string removed;
        std::string added;
        std::size_t file = 0;
    };

    void open(const RecordedCall& call);
    void sync(int descriptor);
    void change(int descriptor, Change change);
    void changeName(const std::string& removed, const std::string& added, std::size_t file);
    [[nodiscard]] std::string nameOf(const std::string& path) const;
    [[nodiscard]] static std::string contentOf(const File& file, Loss loss, std::mt19937& random);
    static void apply(Names& names, const NameChange& change);
    static void apply(std::string& content, const Change& change);

    std::string folder_;
    std::vector<File> files_;
    Names certainNames_;
    Names names_;
    std::vector<NameChange> pendingNames_;
    std::map<int, std::size_t> descriptors_;
    std::string marks_;
};

} // namespace quarterstep::test
