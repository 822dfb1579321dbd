// SPDX-License-Identifier: GPL-3.0-or-later
// Throw-away camp folders for tests of the store, the session and of faults.
#pragma once

#include "core/finding.hpp"

#include <boost/test/unit_test.hpp>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

namespace quarterstep::test
{

/// A folder of its own, gone at the end.
class TemporaryFolder
{
  public:
    TemporaryFolder()
    {
        std::string pattern = (std::filesystem::temp_directory_path() / "qs-store-XXXXXX").string();
        path_ = mkdtemp(pattern.data());
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    ~TemporaryFolder()
    {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    [[nodiscard]] const std::string& path() const { return path_; }
    [[nodiscard]] std::string operator/(const std::string& name) const { return path_ + "/" + name; }

  private:
    std::string path_;
};

inline std::string readBytes(const std::string& path)
{
    std::ifstream stream(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

inline void writeBytes(const std::string& path, const std::string& bytes)
{
    std::ofstream(path, std::ios::binary) << bytes;
}

/// Code and exit of the Error that `act` throws; "nothing" and 0 when it throws none.
template <class Act>
std::pair<std::string, int> errorOf(const Act& act)
{
    try {
        act();
    } catch (const Error& error) {
        return {error.finding().code, error.exitCode()};
    }
    return {"nothing", 0};
}

} // namespace quarterstep::test

#define QS_CHECK_ERROR(code, exitCode, ...)                                                                  \
    do {                                                                                                     \
        const auto found = ::quarterstep::test::errorOf([&] { (void)(__VA_ARGS__); });                       \
        BOOST_TEST(found.first == (code));                                                                   \
        BOOST_TEST(found.second == (exitCode));                                                              \
    } while (false)
