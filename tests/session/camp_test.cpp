// SPDX-License-Identifier: GPL-3.0-or-later
// A camp folder, opened and worked in.
#define BOOST_TEST_MODULE camp
#include <boost/test/unit_test.hpp>

#include "app/session/camp.hpp"
#include "inventory/store/connection.hpp"
#include "inventory/store/sqlite_file.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/inventory/form_one.hpp"
#include "tests/inventory/qt_application.hpp"

#include <sys/mount.h>

#include <algorithm>
#include <iostream>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

constexpr auto readWrite = Ledger::Mode::readWrite;
constexpr auto readOnly = Ledger::Mode::readOnly;

const std::string stockText = "format: quarterstep stock 1\n"
                              "site: Orrowen Point box 2\n"
                              "lines:\n"
                              "  - {line: A, kind: ready-made, power: +2.00, on hand: 3}\n"
                              "  - {line: B, kind: ready-made, power: +2.50, on hand: 1}\n";

struct CampFolder {
    TemporaryFolder folder;
    std::string stock = folder / "stock.yaml";

    CampFolder() { writeBytes(stock, stockText); }
    [[nodiscard]] Camp open(Ledger::Mode mode) const { return Camp::open(folder.path(), mode); }
    void edit(const std::string& from, const std::string& to) const
    {
        auto text = readBytes(stock);
        BOOST_REQUIRE(text.find(from) != std::string::npos);
        writeBytes(stock, text.replace(text.find(from), from.size(), to));
    }
};

Entry oneOf(const std::string& line)
{
    Entry entry;
    entry.movements = {{line, -1, "pair"}};
    return entry;
}

bool found(const Camp& camp, const std::string& code)
{
    return std::any_of(camp.findings().begin(), camp.findings().end(),
                       [&](const Finding& finding) { return finding.code == code; });
}

} // namespace

BOOST_TEST_GLOBAL_FIXTURE(QtApplication);

BOOST_AUTO_TEST_CASE(a_folder_without_a_ledger_is_read_and_nothing_is_made, *utf::label("PROP"))
{
    const CampFolder files;
    const auto camp = files.open(readOnly);
    BOOST_TEST(!camp.hasLedger());
    BOOST_TEST(camp.site() == "Orrowen Point box 2");
    BOOST_TEST(camp.stock().size() == 2U);
    BOOST_TEST(camp.stock()[0].onHand == 3);
    BOOST_TEST(found(camp, "rules-default"));
    BOOST_TEST(camp.rules().find("school") != nullptr);
    BOOST_TEST(readBytes(files.stock) == stockText);
    BOOST_TEST(!std::filesystem::exists(files.folder / "ledger.sqlite"));
    QS_CHECK_ERROR("ledger-missing", 3, camp.ledger());
}

BOOST_AUTO_TEST_CASE(a_ledger_of_today_is_opened_while_the_files_are_read, *utf::label("PROP"))
{
    const CampFolder files;
    const auto read = readCampFilesAndLedger(files.folder.path());
    BOOST_TEST(!read.ledger.has_value()); // there is none, and none is made
    BOOST_TEST(!std::filesystem::exists(files.folder / "ledger.sqlite"));
    files.open(readWrite).post(oneOf("A"));
    auto again = readCampFilesAndLedger(files.folder.path());
    BOOST_TEST_REQUIRE(again.ledger.has_value());
    auto camp = Camp::open(std::move(again), readWrite);
    BOOST_TEST(camp.stock()[0].onHand == 2);
    camp.post(oneOf("A"));
    BOOST_TEST(camp.stock()[0].onHand == 1);
    BOOST_TEST(readBytes(files.stock).find("on hand: 1}\n  - {line: B") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_ledger_of_another_name_or_form_is_not_opened_before_the_files_are_in_order,
                     *utf::label("PROP"))
{
    const CampFolder named;
    named.open(readWrite).post(oneOf("A"));
    named.edit("site: Orrowen", "ledger: other.sqlite\nsite: Orrowen");
    auto read = readCampFilesAndLedger(named.folder.path());
    auto camp = Camp::open(std::move(read), readWrite);
    BOOST_TEST(camp.ledger().path() == (named.folder / "other.sqlite"));

    const TemporaryFolder older;
    const auto path = formTwo(older.path());
    const auto before = readBytes(path);
    writeBytes(older / "stock.yaml", "format: quarterstep stock 1\nlines: [\n");
    BOOST_CHECK_THROW((void)readCampFilesAndLedger(older.path()), CampNotOpened);
    BOOST_TEST((readBytes(path) == before)); // nothing was brought up
    BOOST_TEST(!isLedgerOfToday(path));
    BOOST_TEST(!isLedgerOfToday(older / "stock.yaml"));
    BOOST_TEST(isLedgerOfToday(named.folder / "ledger.sqlite"));
}

BOOST_AUTO_TEST_CASE(a_hand_over_reaches_ledger_counts_and_file, *utf::label("PROP"))
{
    const CampFolder files;
    auto camp = files.open(readWrite);
    const auto posted = camp.post(oneOf("A"));
    BOOST_TEST(posted.number == 2);
    BOOST_TEST(camp.stock()[*camp.lineNamed("A")].onHand == 2);
    BOOST_TEST(!camp.lineNamed("X").has_value());
    BOOST_TEST(readStockFile(files.stock).value.lines[0].onHand == 2);
    BOOST_TEST(camp.ledger().balances(camp.site()).at(0).onHand == 2);
    camp.post(oneOf("B"));
    const auto before = readBytes(files.stock);
    QS_CHECK_ERROR("stock-short", 1, camp.post(oneOf("B")));
    BOOST_TEST(readBytes(files.stock) == before);
    BOOST_TEST(camp.stock()[1].onHand == 0);
}

BOOST_AUTO_TEST_CASE(all_errors_of_both_files_are_told_at_once, *utf::label("PROP"))
{
    const CampFolder files;
    files.edit("on hand: 3", "on hand: -3");
    files.edit("power: +2.50", "power: 2.50");
    writeBytes(files.folder / "rules.yaml", "format: quarterstep rules 9\n");
    try {
        (void)files.open(readWrite);
        BOOST_ERROR("a folder with errors was opened");
    } catch (const CampNotOpened& error) {
        BOOST_TEST(error.exitCode() == 3);
        int stock = 0;
        int rules = 0;
        for (const auto& finding : error.findings())
            ++(finding.position.file == files.stock ? stock : rules);
        BOOST_TEST(stock >= 2);
        BOOST_TEST(rules >= 1);
    }
    BOOST_TEST(!std::filesystem::exists(files.folder / "ledger.sqlite"));
    QS_CHECK_ERROR("file-missing", 3, Camp::open(files.folder / "none", readWrite));
}

BOOST_AUTO_TEST_CASE(an_address_that_is_none_or_holds_a_password_is_refused, *utf::label("PROP"))
{
    const CampFolder files;
    files.edit("lines:", "ledger: postgresql://base\nlines:");
    QS_CHECK_ERROR("ledger-address", 3, files.open(readWrite));
    files.edit("//base", "//station:secret@base/camp");
    QS_CHECK_ERROR("ledger-password", 3, files.open(readOnly));
    files.edit("station:secret@base/camp", "station@base/camp?password=secret");
    QS_CHECK_ERROR("ledger-password", 3, files.open(readOnly));
}

BOOST_AUTO_TEST_CASE(counts_edited_by_hand_wait_for_the_keeper, *utf::label("PROP"))
{
    const CampFolder files;
    (void)files.open(readWrite);
    files.edit("on hand: 3", "on hand: 8");
    auto camp = files.open(readWrite);
    BOOST_REQUIRE(camp.edited().size() == 1U);
    BOOST_TEST(camp.stock()[0].onHand == 3); // the ledger's count, until accepted
    camp.post(oneOf("B"));
    BOOST_TEST(camp.edited().size() == 1U);
    BOOST_TEST(files.open(readOnly).edited().size() == 1U);
    camp.acceptEdits(camp.edited(), "counted with a second person");
    BOOST_TEST(camp.edited().empty());
    BOOST_TEST(camp.stock()[0].onHand == 8);
    files.edit("on hand: 8", "on hand: 9");
    camp.refresh();
    BOOST_REQUIRE(camp.edited().size() == 1U);
    camp.discardEdits(camp.edited());
    BOOST_TEST(camp.edited().empty());
    BOOST_TEST(readStockFile(files.stock).value.lines[0].onHand == 8);
}

BOOST_AUTO_TEST_CASE(two_open_camps_see_each_other_after_a_refresh, *utf::label("PROP"))
{
    const CampFolder files;
    auto one = files.open(readWrite);
    auto two = files.open(readWrite);
    one.post(oneOf("A"));
    two.post(oneOf("A"));
    BOOST_TEST(two.stock()[0].onHand == 1);
    one.refresh();
    BOOST_TEST(one.stock()[0].onHand == 1);
    BOOST_TEST(one.edited().empty());
}

BOOST_AUTO_TEST_CASE(a_copied_folder_can_be_read_and_then_claimed, *utf::label("PROP"))
{
    const CampFolder files;
    files.open(readWrite).post(oneOf("A"));
    TemporaryFolder copy;
    for (const auto* name : {"stock.yaml", "ledger.sqlite"})
        std::filesystem::copy_file(files.folder / name, copy / name);
    auto camp = Camp::open(copy.path(), readWrite);
    BOOST_TEST(found(camp, "ledger-moved"));
    QS_CHECK_ERROR("ledger-moved", 4, camp.post(oneOf("A")));
    camp.claimPlace();
    BOOST_TEST(!found(camp, "ledger-moved"));
    BOOST_TEST(camp.post(oneOf("A")).number == 3);
}

BOOST_AUTO_TEST_CASE(a_file_that_cannot_follow_does_not_undo_the_hand_over, *utf::label("PROP"))
{
    const CampFolder files;
    auto camp = files.open(readWrite);
    std::filesystem::rename(files.stock, files.folder / "kept.yaml");
    std::filesystem::create_symlink("kept.yaml", files.stock);
    camp.post(oneOf("A"));
    BOOST_TEST(found(camp, "stock-file-behind"));
    BOOST_TEST(camp.stock()[0].onHand == 2);
    std::filesystem::rename(files.folder / "kept.yaml", files.stock);
    BOOST_TEST(files.open(readWrite).edited().empty());
    BOOST_TEST(readStockFile(files.stock).value.lines[0].onHand == 2);
}

BOOST_AUTO_TEST_CASE(a_batch_writes_the_file_once_at_its_end, *utf::label("PROP"))
{
    const CampFolder files;
    auto camp = files.open(readWrite);
    const auto before = readBytes(files.stock);
    {
        const Camp::WriteBackPause pause(camp);
        camp.post(oneOf("A"));
        camp.post(oneOf("A"));
        BOOST_TEST(camp.stock()[0].onHand == 1);
        BOOST_TEST(readBytes(files.stock) == before);
    }
    BOOST_TEST(readStockFile(files.stock).value.lines[0].onHand == 1);
}

BOOST_AUTO_TEST_CASE(a_locked_ledger_is_told_and_nothing_changes, *utf::label("PROP"))
{
    const CampFolder files;
    auto camp = files.open(readWrite);
    Connection other(files.folder / "ledger.sqlite", Connection::Access::readWrite, 100);
    other.execute("BEGIN IMMEDIATE");
    const auto before = readBytes(files.stock);
    QS_CHECK_ERROR("ledger-locked", 4, camp.post(oneOf("A")));
    other.execute("COMMIT");
    BOOST_TEST(readBytes(files.stock) == before);
    BOOST_TEST(camp.post(oneOf("A")).number == 2);
}

BOOST_AUTO_TEST_CASE(a_folder_that_cannot_be_written_is_read, *utf::label("PROP"))
{
    TemporaryFolder folder;
    if (mount("none", folder.path().c_str(), "tmpfs", 0, "size=1m") != 0) {
        std::cerr << "SKIPPED: a read-only medium needs the right to mount\n";
        return;
    }
    writeBytes(folder / "stock.yaml", stockText);
    Camp::open(folder.path(), readWrite).post(oneOf("A"));
    BOOST_REQUIRE(mount("none", folder.path().c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, "size=1m") == 0);
    {
        const auto camp = Camp::open(folder.path(), readOnly);
        BOOST_TEST(camp.stock()[0].onHand == 2);
        BOOST_TEST(camp.ledger().checkChain().ok);
    }
    QS_CHECK_ERROR("ledger-unwritable", 4, Camp::open(folder.path(), readWrite));
    BOOST_TEST(umount(folder.path().c_str()) == 0);
}
