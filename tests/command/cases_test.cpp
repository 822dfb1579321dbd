// SPDX-License-Identifier: GPL-3.0-or-later
// Every file of tests/command/cases: exit code, both outputs, and which files changed.
#include "tests/command/case_runner.hpp"

#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <set>

namespace utf = boost::unit_test;

namespace quarterstep::check
{
namespace
{

std::string joined(const std::vector<std::string>& lines, const char* separator)
{
    std::string text;
    for (const auto& line : lines)
        text += line + separator;
    return text;
}

std::set<std::string> changedFiles(const std::map<std::string, std::string>& before,
                                   const std::map<std::string, std::string>& after)
{
    std::set<std::string> changed;
    for (const auto& [path, bytes] : before)
        if (const auto now = after.find(path); now == after.end() || now->second != bytes)
            changed.insert(path);
    for (const auto& [path, bytes] : after)
        if (before.count(path) == 0)
            changed.insert(path);
    return changed;
}

} // namespace

BOOST_AUTO_TEST_SUITE(command_line)

BOOST_TEST_DECORATOR(*utf::label("DER") * utf::description("one case a file in tests/command/cases"))
BOOST_DATA_TEST_CASE(a_command_answers_as_its_case_says, utf::data::make(allCases()), file)
{
    BOOST_TEST_REQUIRE(file.lines("command").size() == 1U);
    BOOST_TEST_REQUIRE(file.lines("status").size() == 1U);
    CaseRunner runner(file);
    runner.prepare();
    const auto before = runner.snapshot();
    runner.block();
    const auto ran = runner.run(wordsOf(file.lines("command").front()), joined(file.lines("input"), "\n"));
    runner.unblock();
    BOOST_TEST(ran.status == std::stoi(file.lines("status").front()));
    if (file.has("stdout"))
        BOOST_TEST(matches(file.lines("stdout"), ran.out), "standard output was:\n" << ran.out);
    BOOST_TEST(matches(file.lines("stderr"), ran.err), "standard error was:\n" << ran.err);
    std::set<std::string> expected;
    for (const auto& path : file.lines("changed"))
        expected.insert(path);
    const auto changed = changedFiles(before, runner.snapshot());
    BOOST_TEST(changed == expected, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(marks_in_expected_lines_stand_for_any_text, *utf::label("DER"))
{
    BOOST_TEST(matches({"a…c"}, "abc\n"));
    BOOST_TEST(matches({"a…c"}, "ac\n"));
    BOOST_TEST(!matches({"a…c"}, "abd\n"));
    BOOST_TEST(!matches({"abc"}, "abcd\n"));
    BOOST_TEST(!matches({"…ab"}, "b\n"));
    BOOST_TEST(matches({"...", "b"}, "x\ny\nb\n"));
    BOOST_TEST(!matches({"a"}, "a\nb\n"));
    BOOST_TEST(matches({}, ""));
    BOOST_TEST(!matches({}, "a\n"));
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep::check
