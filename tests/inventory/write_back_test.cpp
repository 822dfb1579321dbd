// SPDX-License-Identifier: GPL-3.0-or-later
// stock.yaml follows the ledger, byte by byte.
#include "inventory/store/write_back.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/inventory/stores.hpp"

#include <sys/stat.h>
#include <sys/sysmacros.h>
#include <unistd.h>

#include <iostream>
#include <random>
#include <regex>
#include <thread>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

const std::string plainStock =
    "# the box on the left\n"
    "format: quarterstep stock 1\n"
    "site: Orrowen Point box 2\n"
    "lines:   # C row first\n"
    "  - {line: A, kind: ready-made, power: +2.00, centres: 62, on hand: 10, bin: C4} # ten\n"
    "  - line: B\n"
    "    kind: ready-made\n"
    "    power: +1.00\n"
    "    on hand: 3   # three\n"
    "  - {line: C, kind: other, on hand: 100}\n";

struct CampFiles {
    TemporaryFolder folder;
    std::string stock = folder / "stock.yaml";
    Ledger ledger = openLedger(folder / "ledger.sqlite", Ledger::Mode::readWrite);
    std::string site = "Orrowen Point box 2";

    explicit CampFiles(const std::string& bytes = plainStock) { writeBytes(stock, bytes); }

    void give(const std::string& line, int delta = -1)
    {
        Entry entry;
        entry.kind = delta < 0 ? EntryKind::handedOver : EntryKind::received;
        entry.movements = {{line, delta, "pair"}};
        ledger.post(site, entry);
    }
    WriteBackResult bring() { return writeBack(folder.path(), ledger); }
    [[nodiscard]] std::string bytes() const { return readBytes(stock); }
    [[nodiscard]] int inFile(const std::string& line) const
    {
        for (const auto& read : readStockFile(stock).value.lines)
            if (read.name == line)
                return read.onHand;
        return -1;
    }
    [[nodiscard]] int inLedger(const std::string& line) const
    {
        for (const auto& balance : ledger.balances(site))
            if (balance.line == line)
                return balance.onHand;
        return -1;
    }
    void edit(const std::string& from, const std::string& to)
    {
        auto text = bytes();
        const auto at = text.find(from);
        BOOST_REQUIRE(at != std::string::npos);
        writeBytes(stock, text.replace(at, from.size(), to));
    }
};

std::string inCrlf(const std::string& text)
{
    return std::regex_replace(text, std::regex("\n"), "\r\n");
}

} // namespace

BOOST_AUTO_TEST_SUITE(write_back)

BOOST_AUTO_TEST_CASE(the_first_time_only_the_written_line_comes_in_above_lines, *utf::label("DER"))
{
    for (const auto& stock : {plainStock, inCrlf(plainStock), "\xEF\xBB\xBF" + plainStock}) {
        CampFiles camp(stock);
        const auto result = camp.bring();
        BOOST_TEST(result.replaced);
        BOOST_TEST(result.edited.empty());
        const std::string end = stock.find('\r') == std::string::npos ? "\n" : "\r\n";
        auto expected = stock;
        expected.insert(expected.find("lines:"),
                        "written: {after: 1, counts: " + countsHash(result.file.lines) + "}" + end);
        BOOST_TEST(camp.bytes() == expected);
        BOOST_TEST(!camp.bring().replaced);
    }
}

BOOST_AUTO_TEST_CASE(a_hand_over_changes_digits_position_and_hash_and_no_other_byte, *utf::label("PROP"))
{
    for (const auto& stock : {plainStock, inCrlf(plainStock), "\xEF\xBB\xBF" + plainStock}) {
        CampFiles camp(stock);
        camp.bring();
        const auto before = camp.bytes();
        camp.give("A");
        camp.give("C");
        BOOST_TEST(camp.bring().replaced);
        auto expected = std::regex_replace(before, std::regex("on hand: 100"), "on hand: 99");
        expected = std::regex_replace(expected, std::regex("on hand: 10,"), "on hand: 9,");
        expected = std::regex_replace(expected, std::regex("after: 1, counts: [0-9a-f]{8}"),
                                      "after: 3, counts: " + readStockFile(camp.stock).value.countsHash);
        BOOST_TEST(camp.bytes() == expected);
        BOOST_TEST(countsHash(readStockFile(camp.stock).value.lines) ==
                   readStockFile(camp.stock).value.countsHash);
    }
}

BOOST_AUTO_TEST_CASE(places_moved_on_are_those_a_new_reading_finds, *utf::label("PROP"))
{
    CampFiles camp;
    auto last = camp.bring().file;
    const unsigned seed = std::random_device{}();
    BOOST_TEST_MESSAGE("seed " << seed);
    std::mt19937 random(seed);
    for (int round = 0; round < 60; ++round) {
        const std::string line(1, static_cast<char>('A' + random() % 3));
        const int delta = static_cast<int>(random() % 25) - 12;
        if (camp.inLedger(line) + delta < 0)
            continue;
        camp.give(line, delta);
        last = writeBack(camp.folder.path(), camp.ledger, last).file;
        const auto read = readStockFile(camp.stock).value;
        BOOST_REQUIRE(last.bytes == read.bytes);
        BOOST_REQUIRE_EQUAL(last.countsHash, read.countsHash);
        BOOST_REQUIRE_EQUAL(last.writtenAfter, read.writtenAfter);
        BOOST_REQUIRE_EQUAL(last.linesKeyBegin, read.linesKeyBegin);
        for (std::size_t i = 0; i < read.lines.size(); ++i) {
            BOOST_REQUIRE_EQUAL(last.lines[i].onHand, read.lines[i].onHand);
            BOOST_REQUIRE_EQUAL(last.countSpans[i].begin, read.countSpans[i].begin);
            BOOST_REQUIRE_EQUAL(last.countSpans[i].end, read.countSpans[i].end);
            BOOST_REQUIRE_EQUAL(camp.inLedger(read.lines[i].name), read.lines[i].onHand);
        }
        BOOST_REQUIRE_EQUAL(last.hashSpan.begin, read.hashSpan.begin);
        BOOST_REQUIRE_EQUAL(last.afterSpan.end, read.afterSpan.end);
    }
}

BOOST_AUTO_TEST_CASE(a_file_left_behind_by_a_crash_is_healed_in_silence, *utf::label("PROP"))
{
    CampFiles camp;
    camp.bring();
    camp.give("A");
    camp.give("B");
    writeBytes(camp.folder / ".stock.yaml.99-1.part", "half a fi");
    const auto result = camp.bring();
    BOOST_TEST(result.replaced);
    BOOST_TEST(result.edited.empty());
    BOOST_TEST(result.findings.empty());
    BOOST_TEST(camp.inFile("A") == 9);
    BOOST_TEST(camp.inFile("B") == 2);
    BOOST_TEST(!std::filesystem::exists(camp.folder / ".stock.yaml.99-1.part"));
}

BOOST_AUTO_TEST_CASE(a_count_edited_by_hand_is_reported_and_left_alone, *utf::label("PROP"))
{
    CampFiles camp;
    camp.bring();
    camp.edit("on hand: 3 ", "on hand: 7 ");
    camp.give("A"); // a hand-over that the file does not know of yet
    const auto first = camp.bring();
    BOOST_REQUIRE(first.edited.size() == 1U);
    BOOST_TEST(first.edited[0].line == "B");
    BOOST_TEST(first.edited[0].inFile == 7);
    BOOST_TEST(first.edited[0].inLedger == 3);
    BOOST_TEST(camp.inFile("B") == 7);
    BOOST_TEST(camp.inFile("A") == 9);
    BOOST_TEST(camp.inLedger("B") == 3);
    const auto again = writeBack(camp.folder.path(), camp.ledger, first.file);
    BOOST_REQUIRE(again.edited.size() == 1U); // still there after the file was written for another reason
    BOOST_TEST(again.edited[0].line == "B");
    BOOST_TEST(!again.replaced);
    BOOST_TEST(editedCounts(again.file, camp.ledger).size() == 1U);
}

// Ten were expected, somebody counted eight, then one was handed over: seven are left, whoever writes the
// file in between and however often.
BOOST_AUTO_TEST_CASE(what_moves_while_an_edited_count_waits_moves_from_that_count, *utf::label("REG"))
{
    for (const bool acceptedInTheEnd : {true, false}) {
        CampFiles camp;
        camp.bring();
        camp.edit("on hand: 10", "on hand: 8");
        BOOST_REQUIRE(camp.bring().edited.size() == 1U);
        camp.give("A");
        camp.give("B");
        const auto waiting = camp.bring().edited;
        BOOST_REQUIRE(waiting.size() == 1U);
        BOOST_TEST(waiting[0].inFile == 7);
        BOOST_TEST(waiting[0].inLedger == 9);
        BOOST_TEST(camp.inFile("A") == 7);
        BOOST_TEST(camp.bring().edited.size() == 1U);
        if (acceptedInTheEnd)
            (void)acceptEdited(camp.folder.path(), camp.ledger, waiting, "two are missing");
        else
            (void)discardEdited(camp.folder.path(), camp.ledger, waiting);
        const int left = acceptedInTheEnd ? 7 : 9;
        BOOST_TEST(camp.inLedger("A") == left);
        BOOST_TEST(camp.inFile("A") == left);
        BOOST_TEST(camp.bring().edited.empty());
    }
}

BOOST_AUTO_TEST_CASE(an_edit_that_others_hand_overs_make_equal_to_the_ledger_is_still_an_edit,
                     *utf::label("REG"))
{
    CampFiles camp;
    (void)camp.bring();
    camp.edit("on hand: 10", "on hand: 9"); // one fewer in the box than the book says
    camp.give("A");                         // by another program, which says 9 too for its own reason
    const auto result = camp.bring();
    BOOST_REQUIRE(result.edited.size() == 1U);
    BOOST_TEST(result.edited[0].inFile == 8);
    BOOST_TEST(result.edited[0].inLedger == 9);
    BOOST_TEST(camp.inFile("A") == 8);
    (void)acceptEdited(camp.folder.path(), camp.ledger, result.edited, "counted");
    BOOST_TEST(camp.inLedger("A") == 8);
    BOOST_TEST(camp.bring().edited.empty());
}

BOOST_AUTO_TEST_CASE(an_edit_accepted_just_before_a_crash_is_not_asked_about_again, *utf::label("REG"))
{
    for (const int handedOver : {0, 1}) {
        CampFiles camp;
        (void)camp.bring();
        camp.edit("on hand: 10", "on hand: 9");
        Entry counted; // as acceptEdited posts it; then the program ended
        counted.kind = EntryKind::counted;
        counted.fields = {{"counted", "9"}, {"expected", "10"}};
        counted.texts = {{"reason", "r"}};
        counted.movements = {{"A", -1, {}}};
        camp.ledger.post(camp.site, counted);
        for (int i = 0; i < handedOver; ++i)
            camp.give("A");
        BOOST_TEST(camp.bring().edited.empty());
        BOOST_TEST(camp.inFile("A") == 9 - handedOver);
        BOOST_TEST(camp.inLedger("A") == 9 - handedOver);
    }
}

BOOST_AUTO_TEST_CASE(an_edit_that_a_count_sheet_confirms_is_settled_by_it, *utf::label("PROP"))
{
    CampFiles camp;
    (void)camp.bring();
    camp.edit("on hand: 10", "on hand: 9");
    Entry counted;
    counted.kind = EntryKind::counted;
    counted.texts = {{"reason", "r"}};
    counted.movements = {{"B", 0, {}}, {"A", -1, {}}};
    camp.ledger.post(camp.site, counted);
    BOOST_TEST(camp.bring().edited.empty());
    BOOST_TEST(camp.inFile("A") == 9);
}

BOOST_AUTO_TEST_CASE(an_accepted_count_becomes_a_counted_entry, *utf::label("PROP"))
{
    CampFiles camp;
    camp.bring();
    camp.edit("on hand: 3 ", "on hand: 7 ");
    camp.edit("on hand: 100", "on hand: 1");
    const auto edited = camp.bring().edited;
    BOOST_REQUIRE(edited.size() == 2U);
    const auto result = acceptEdited(camp.folder.path(), camp.ledger, {edited[0]}, "found four more");
    BOOST_TEST(camp.inLedger("B") == 7);
    BOOST_TEST(camp.inFile("B") == 7);
    BOOST_REQUIRE(result.edited.size() == 1U);
    BOOST_TEST(result.edited[0].line == "C");
    const auto entry = camp.ledger.entriesAfter(1).at(0);
    BOOST_TEST((entry.kind == EntryKind::counted));
    BOOST_TEST(entry.texts.at("reason") == "found four more");
    BOOST_TEST(entry.movements.at(0).delta == 4);
    BOOST_TEST(acceptEdited(camp.folder.path(), camp.ledger, {edited[0]}, "twice").edited.size() == 1U);
    BOOST_TEST(camp.ledger.position() == 2); // accepting twice changes nothing
    acceptEdited(camp.folder.path(), camp.ledger, edited, "counted again");
    BOOST_TEST(camp.inLedger("C") == 1);
    BOOST_TEST(camp.bring().edited.empty());
    BOOST_TEST(camp.ledger.checkChain().ok);
}

BOOST_AUTO_TEST_CASE(what_moved_since_the_edit_stays_moved_when_it_is_accepted, *utf::label("DER"))
{
    CampFiles camp;
    camp.bring();
    camp.edit("on hand: 10,",
              "on hand: 12,"); // two more were found, then one handed over before the file followed
    camp.give("A");
    acceptEdited(camp.folder.path(), camp.ledger, {{"A", 12, 10}}, "found two");
    BOOST_TEST(camp.inLedger("A") == 11);
    BOOST_TEST(camp.inFile("A") == 11);
    BOOST_TEST(camp.bring().edited.empty());
}

BOOST_AUTO_TEST_CASE(a_discarded_count_gives_way_to_the_ledger, *utf::label("PROP"))
{
    CampFiles camp;
    camp.bring();
    const auto before = camp.bytes();
    camp.edit("on hand: 3 ", "on hand: 70 ");
    const auto edited = camp.bring().edited;
    BOOST_TEST(discardEdited(camp.folder.path(), camp.ledger, edited).edited.empty());
    BOOST_TEST(camp.bytes() == before);
    BOOST_TEST(camp.ledger.position() == 1);
}

BOOST_AUTO_TEST_CASE(a_line_added_to_the_file_is_introduced_and_one_removed_is_left_out, *utf::label("PROP"))
{
    CampFiles camp;
    camp.bring();
    camp.edit("  - {line: C, kind: other, on hand: 100}\n", "  - {line: N, kind: other, on hand: 4}\n");
    const auto result = camp.bring();
    BOOST_TEST(result.edited.empty());
    BOOST_TEST(camp.inLedger("N") == 4);
    BOOST_TEST(camp.inLedger("C") == 100);
    const auto entry = camp.ledger.entriesAfter(1).at(0);
    BOOST_TEST((entry.kind == EntryKind::opened));
    BOOST_TEST(entry.movements.size() == 1U);
    BOOST_TEST(camp.bring().edited.empty());
}

BOOST_AUTO_TEST_CASE(a_line_introduced_just_before_a_crash_is_no_edit, *utf::label("REG"))
{
    CampFiles camp;
    camp.bring();
    camp.edit("lines:   # C row first\n", "lines:   # C row first\n  - {line: N, kind: other, on hand: 4}\n");
    camp.ledger.introduce(camp.site, {{"N", 4, 0, 0}});
    camp.give("N"); // and the file never heard of it
    BOOST_TEST(camp.bring().edited.empty());
    BOOST_TEST(camp.inFile("N") == 3);
}

BOOST_AUTO_TEST_CASE(an_older_ledger_beside_a_newer_file_is_told, *utf::label("PROP"))
{
    CampFiles camp;
    camp.bring();
    camp.edit("after: 1,", "after: 12,");
    camp.edit("on hand: 10,", "on hand: 4,");
    const auto result = camp.bring();
    BOOST_REQUIRE(result.findings.size() == 1U);
    BOOST_TEST(result.findings[0].code == "ledger-behind");
    BOOST_REQUIRE(result.edited.size() == 1U);
    BOOST_TEST(result.edited[0].line == "A");
    BOOST_TEST(camp.inFile("A") == 4);
}

BOOST_AUTO_TEST_CASE(the_rights_of_the_file_are_kept, *utf::label("PROP"))
{
    CampFiles camp;
    BOOST_REQUIRE(chmod(camp.stock.c_str(), 0640) == 0);
    camp.bring();
    struct stat status {
    };
    BOOST_REQUIRE(stat(camp.stock.c_str(), &status) == 0);
    BOOST_TEST((status.st_mode & 07777) == 0640);
}

BOOST_AUTO_TEST_CASE(a_link_instead_of_the_file_is_refused, *utf::label("PROP"))
{
    CampFiles camp;
    std::filesystem::rename(camp.stock, camp.folder / "elsewhere.yaml");
    std::filesystem::create_symlink("elsewhere.yaml", camp.stock);
    QS_CHECK_ERROR("not-a-regular-file", 4, (void)camp.bring());
    BOOST_TEST(readBytes(camp.folder / "elsewhere.yaml") == plainStock);
}

BOOST_AUTO_TEST_CASE(a_file_with_errors_is_never_written, *utf::label("PROP"))
{
    CampFiles camp;
    camp.bring();
    camp.edit("on hand: 3 ", "on hand: -3 ");
    const auto before = camp.bytes();
    camp.give("A");
    const auto found = errorOf([&] { (void)camp.bring(); });
    BOOST_TEST(found.second == 3);
    BOOST_TEST(camp.bytes() == before);
}

BOOST_AUTO_TEST_CASE(the_folder_lock_keeps_others_waiting_and_then_out, *utf::label("PROP"))
{
    TemporaryFolder folder;
    {
        const FolderLock lock(folder.path());
        QS_CHECK_ERROR("folder-locked", 4, FolderLock(folder.path(), 50));
        std::thread([&] { QS_CHECK_ERROR("folder-locked", 4, FolderLock(folder.path(), 50)); }).join();
    }
    QS_CHECK_ERROR("nothing", 0, FolderLock(folder.path(), 50));
    QS_CHECK_ERROR("folder-locked", 4, FolderLock(folder / "none", 50));
}

BOOST_AUTO_TEST_CASE(writers_at_once_leave_the_file_as_the_ledger_says, *utf::label("PROP"))
{
    CampFiles camp;
    camp.bring();
    std::vector<std::thread> writers;
    for (int i = 0; i < 4; ++i)
        writers.emplace_back([&] {
            auto own = openLedger(camp.folder / "ledger.sqlite", Ledger::Mode::readWrite);
            for (int k = 0; k < 10; ++k) {
                Entry entry;
                entry.movements = {{"C", -1, "pair"}};
                own.post(camp.site, entry);
                (void)writeBack(camp.folder.path(), own);
            }
        });
    for (auto& writer : writers)
        writer.join();
    BOOST_TEST(camp.inFile("C") == 60);
    BOOST_TEST(camp.inLedger("C") == 60);
    BOOST_TEST(!camp.bring().replaced);
}

BOOST_AUTO_TEST_CASE(only_a_regular_file_is_replaced, *utf::label("PROP"))
{
    TemporaryFolder folder;
    replaceFile(folder / "new", "one");
    replaceFile(folder / "new", "two");
    BOOST_TEST(readBytes(folder / "new") == "two");
    std::filesystem::create_symlink("new", folder / "link");
    replaceFile(folder / "link", "three");
    BOOST_TEST(std::filesystem::is_symlink(folder / "link"));
    BOOST_TEST(readBytes(folder / "new") == "three");
    QS_CHECK_ERROR("file-unwritable", 4, replaceFile(folder / "none/x", "one"));
    QS_CHECK_ERROR("file-unwritable", 4, replaceFile(folder.path(), "one"));
    if (mknod((folder / "null").c_str(), S_IFCHR | 0666, makedev(1, 3)) != 0) {
        std::cerr << "SKIPPED: a device node of its own needs root\n";
        return;
    }
    QS_CHECK_ERROR("nothing", 0, replaceFile(folder / "null", "gone"));
    BOOST_TEST(std::filesystem::is_character_file(folder / "null"));
}

BOOST_AUTO_TEST_SUITE_END()
