// SPDX-License-Identifier: GPL-3.0-or-later
// The manual keeps its word: every command in a ```console block of app/help answers as printed there, and
// every text in the tables of the notation is accepted or refused as the table says.
// A block that names a file (```csv readings.csv) makes that file; `camp` is the small camp of these tests;
// "# ends with 3" behind a command is its exit code, 0 where nothing is said.
#include "core/optics/acuity.hpp"
#include "core/optics/notation.hpp"
#include "tests/command/case_runner.hpp"

#include <algorithm>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>
#include <filesystem>

namespace utf = boost::unit_test;

namespace quarterstep::check
{
namespace
{

struct Example {
    std::string command;
    int status = 0;
    std::vector<std::string> answer; ///< standard output, then standard error
};

struct HelpPage {
    std::string name;
    CaseFile files; ///< what its commands find
    std::vector<Example> examples;
};

std::ostream& operator<<(std::ostream& out, const HelpPage& page)
{
    return out << page.name;
}

std::string helpText(const std::string& page)
{
    return contentOf(std::string(QS_SOURCE_DIR) + "/app/help/" + page);
}

Example exampleOf(const std::string& line)
{
    static const std::string mark = " # ends with ";
    Example example;
    const auto at = line.find(mark);
    example.command = line.substr(2, at == std::string::npos ? at : at - 2);
    if (at != std::string::npos)
        example.status = std::stoi(line.substr(at + mark.size()));
    return example;
}

HelpPage pageOf(const std::string& name)
{
    HelpPage page{name, {name, "", {{"camp", "", {}}}}, {}};
    std::string block;
    for (const auto& line : linesOf(helpText(name))) {
        if (line.rfind("```", 0) == 0) {
            block = block.empty() ? line.substr(3) + " " : "";
            const auto blank = block.find(' ');
            if (!block.empty() && blank + 1 < block.size())
                page.files.sections.push_back(
                    {"file", block.substr(blank + 1, block.size() - blank - 2), {}});
        } else if (block == "console " && line.rfind("$ ", 0) == 0) {
            page.examples.push_back(exampleOf(line));
        } else if (block == "console ") {
            page.examples.back().answer.push_back(line);
        } else if (block.find(' ') + 1 < block.size()) {
            page.files.sections.back().lines.push_back(line);
        }
    }
    return page;
}

std::vector<HelpPage> allPages()
{
    std::vector<HelpPage> pages;
    for (const auto& entry : std::filesystem::directory_iterator(std::string(QS_SOURCE_DIR) + "/app/help"))
        if (entry.path().extension() == ".md")
            pages.push_back(pageOf(entry.path().filename().string()));
    std::sort(pages.begin(), pages.end(), [](const auto& a, const auto& b) { return a.name < b.name; });
    return pages;
}

/// Texts between backticks in the first column of the table whose header row is `header`.
std::vector<std::string> firstColumn(const std::string& page, const std::string& header)
{
    std::vector<std::string> texts;
    bool inside = false;
    for (const auto& line : linesOf(helpText(page))) {
        inside = line == header || (inside && line.rfind("|", 0) == 0);
        const auto cell = inside ? line.substr(1, line.find(" | ", 1)) : std::string();
        for (auto at = cell.find('`'); at != std::string::npos;) {
            const auto end = cell.find('`', at + 1);
            texts.push_back(cell.substr(at + 1, end - at - 1));
            at = cell.find('`', end + 1);
        }
    }
    return texts;
}

} // namespace

BOOST_AUTO_TEST_SUITE(help_examples)

BOOST_TEST_DECORATOR(*utf::label("DER") * utf::description("console blocks of app/help"))
BOOST_DATA_TEST_CASE(every_command_of_the_manual_answers_as_printed, utf::data::make(allPages()), page)
{
    for (const auto& example : page.examples) {
        CaseRunner runner(page.files); // each in a fresh folder
        runner.prepare();
        const auto ran = runner.run(wordsOf(example.command));
        BOOST_TEST(ran.status == example.status, example.command);
        BOOST_TEST(matches(example.answer, ran.out + ran.err), example.command << " answered:\n"
                                                                               << ran.out << ran.err);
    }
}

BOOST_AUTO_TEST_CASE(pages_with_examples_have_them, *utf::label("DER"))
{
    for (const char* name : {"notation.md", "optics.md", "tolerances.md"})
        BOOST_TEST(pageOf(name).examples.size() >= 5U, name);
}

BOOST_AUTO_TEST_CASE(tables_of_the_notation_hold, *utf::label("DER"))
{
    const auto accepted = firstColumn("notation.md", "| written | read as |");
    const auto refused = firstColumn("notation.md", "| written | refused because |");
    const auto acuities = firstColumn("notation.md", "| written | logMAR |");
    BOOST_TEST(accepted.size() >= 15U);
    BOOST_TEST(refused.size() >= 12U);
    BOOST_TEST(acuities.size() >= 15U);
    for (const auto& text : accepted) {
        const std::string whole = text.rfind("Add", 0) == 0 ? "plano " + text : text;
        BOOST_TEST(static_cast<bool>(parseEye(whole, eyeNamed(whole).value_or(Eye::right))), text);
    }
    for (const auto& text : refused)
        BOOST_TEST(!parseEye(text.rfind("ADD", 0) == 0 ? "plano " + text : text), text);
    for (const auto& text : acuities)
        BOOST_TEST((parseAcuity(text) || parseNearAcuity(text)), text);
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep::check
